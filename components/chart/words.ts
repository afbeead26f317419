import { type MeasureText, namedAtEdge } from './edge-names.js';
import { dropLine, type Field, regionBox } from './field.js';
import {
  alongLine,
  aroundPoint,
  type Box,
  inRegion,
  type LabelBox,
  type Point,
  placeLabels,
  spread,
} from './labels.js';
import { type ChartModel, type ChartSeries, valueAt } from './model.js';

/** A label on the chart with the place found for it. */
export interface Word {
  text: string;
  ink: 'ink' | 'soft' | 'now' | 'before' | 'limit';
  weight: 400 | 600;
  /** Written under the lines: the name of a hatched ground is part of the ground. */
  ground: boolean;
  place: LabelBox;
}

type Wish = Omit<Word, 'place'> & { places: LabelBox[] };

export const LABEL_HEIGHT = 18;
const MARKER_RADIUS = 7;

const weightOf = (kind: string): 400 | 600 => (kind === 'now' ? 600 : 400);

/** The part of a series inside the plot, to its very ends, CSS px. */
function polyline(series: ChartSeries, [from, to]: [number, number], field: Field): Point[] {
  const inside = [...series.x].filter((x) => x > from && x < to);
  return [from, ...inside, to].flatMap((x) => {
    const y = valueAt(series, x);
    return Number.isFinite(y) ? [{ x: field.x(x), y: field.y(y) }] : [];
  });
}

function sides({ left, top, width, height }: Box): Point[][] {
  return [left, left + width].map((x) => [
    { x, y: top },
    { x, y: top + height },
  ]);
}

function regionWishes(model: ChartModel, field: Field, measure: MeasureText): Wish[] {
  return model.regions.flatMap((region): Wish[] => {
    const box = regionBox(field, region);
    if (!box || !region.label) return [];
    const places = inRegion(box, measure(region.label, 400), LABEL_HEIGHT, 5, field);
    const ink = region.kind === 'limit' ? 'limit' : 'soft';
    return [{ text: region.label, ink, weight: 400, ground: true, places }];
  });
}

function seriesWishes(model: ChartModel, field: Field, lines: Point[][], margin: number, measure: MeasureText): Wish[] {
  const edge = margin > 0 ? namedAtEdge(model) : [];
  const end = model.x.domain[1];
  const centres = edge.map((series) => field.y(valueAt(series, end)));
  const spaced = spread(centres, LABEL_HEIGHT, field.top, field.top + field.height);
  return model.series.flatMap((series, index): Wish[] => {
    if (!series.label) return [];
    const weight = weightOf(series.role);
    const width = measure(series.label, weight);
    const row = edge.indexOf(series);
    const places =
      row < 0
        ? alongLine(lines[index]!, width, LABEL_HEIGHT, 4)
        : [{ left: field.left + field.width + 8, top: spaced[row]! - LABEL_HEIGHT / 2, width, height: LABEL_HEIGHT }];
    return [{ text: series.label, ink: series.role, weight, ground: false, places }];
  });
}

function markerWishes(model: ChartModel, field: Field, measure: MeasureText): Wish[] {
  return model.markers.flatMap(({ x, y, label, kind }): Wish[] => {
    if (!label) return [];
    const weight = weightOf(kind);
    const at = { x: field.x(x), y: field.y(y) };
    const places = aroundPoint(at, measure(label, weight), LABEL_HEIGHT, MARKER_RADIUS + 1);
    return [{ text: label, ink: kind === 'turn' ? 'ink' : kind, weight, ground: false, places }];
  });
}

function pointWishes(model: ChartModel, field: Field, measure: MeasureText): Wish[] {
  return (model.points ?? []).flatMap(({ x, y, label, role }): Wish[] => {
    if (!label) return [];
    let last = -1;
    x.forEach((at, i) => {
      if (Number.isFinite(y[i]!) && (last < 0 || at > x[last]!)) last = i;
    });
    if (last < 0) return [];
    const at = { x: field.x(x[last]!), y: field.y(y[last]!) };
    const places = aroundPoint(at, measure(label, 400), LABEL_HEIGHT, MARKER_RADIUS + 1);
    return [{ text: label, ink: role === 'contact' ? 'ink' : role, weight: 400, ground: false, places }];
  });
}

/**
 * All labels of a chart, none on another and none on a marker; what finds no place is left out.
 * @param margin width kept free right of the plot for the lines' names, CSS px; 0: they stand along the lines.
 */
export function placeWords(model: ChartModel, field: Field, margin: number, measure: MeasureText): Word[] {
  const lines = model.series.map((series) => polyline(series, model.x.domain, field));
  const wishes = [
    ...regionWishes(model, field, measure),
    ...seriesWishes(model, field, lines, margin, measure),
    ...markerWishes(model, field, measure),
    ...pointWishes(model, field, measure),
  ];
  const drops = model.markers
    .filter(({ kind }) => kind !== 'limit')
    .map((marker) => {
      const [from, to] = dropLine(field, marker);
      // The cursor rests here, from top to bottom.
      return marker.kind === 'now' ? [{ x: from.x, y: field.top }, to] : [from, to];
    });
  const edges = model.regions.flatMap((region) => {
    const box = regionBox(field, region);
    return box ? sides(box) : [];
  });
  const chosen = placeLabels(
    wishes.map(({ places }) => places),
    {
      within: { left: field.left + 3, top: field.top, width: field.width + margin, height: field.height - 2 },
      obstacles: model.markers.map(({ x, y }) => ({
        left: field.x(x) - MARKER_RADIUS,
        top: field.y(y) - MARKER_RADIUS,
        width: 2 * MARKER_RADIUS,
        height: 2 * MARKER_RADIUS,
      })),
      lines,
      hairlines: [...drops, ...edges],
    },
  );
  return wishes.flatMap(({ places: _, ...word }, index) => {
    const place = chosen[index];
    return place ? [{ ...word, place }] : [];
  });
}
