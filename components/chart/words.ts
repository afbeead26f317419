import { type MeasureText, namedAtEdge } from './edge-names.js';
import { type ChartFrame, dropLine, type Field, regionBox } from './field.js';
import {
  alongLine,
  aroundPoint,
  type Box,
  hidesCurve,
  inRegion,
  isOnSomething,
  type LabelBox,
  type Point,
  placeLabels,
  type Surroundings,
  spread,
} from './labels.js';
import { type ChartModel, type ChartSeries, valueAt } from './model.js';

/** A label on the chart with the place found for it. */
export interface Word {
  text: string;
  ink: 'ink' | 'soft' | 'now' | 'before' | 'limit';
  weight: 400 | 600;
  /** It stands on something that a plate of its own has to hide. */
  plate: boolean;
  place: LabelBox;
}

type Wish = Omit<Word, 'place' | 'plate'> & { places: LabelBox[] };

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
    return [{ text: region.label, ink, weight: 400, places }];
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
    return [{ text: series.label, ink: series.role, weight, places }];
  });
}

function markerWishes(model: ChartModel, field: Field, measure: MeasureText): Wish[] {
  return model.markers.flatMap(({ x, y, label, kind }): Wish[] => {
    if (!label) return [];
    const weight = weightOf(kind);
    const at = { x: field.x(x), y: field.y(y) };
    const places = aroundPoint(at, measure(label, weight), LABEL_HEIGHT, MARKER_RADIUS + 1);
    return [{ text: label, ink: kind === 'turn' ? 'ink' : kind, weight, places }];
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
    return [{ text: label, ink: role === 'contact' ? 'ink' : role, weight: 400, places }];
  });
}

/** The bounds of a doubt, inside the plot. */
const boundsOf = (model: ChartModel, field: Field): Point[][] =>
  model.bands.flatMap(({ of, low, high }) => {
    const series = model.series.find(({ id }) => id === of);
    return series ? [low, high].map((y) => polyline({ ...series, y }, model.x.domain, field)) : [];
  });

const across = ({ left, width }: Field, y: number): Point[] => [
  { x: left, y },
  { x: left + width, y },
];

function zeroLine(field: Field): Point[][] {
  const y = field.y(0);
  const { top, height } = field;
  if (!(y > top && y < top + height)) return [];
  return [across(field, y)];
}

const READING_RADIUS = 5;

const square = (x: number, y: number, half: number): Box => ({
  left: x - half,
  top: y - half,
  width: 2 * half,
  height: 2 * half,
});

/** All single readings. */
const readingsOf = (model: ChartModel, field: Field): Box[] =>
  (model.points ?? []).flatMap(({ x, y }) =>
    [...x.keys()]
      .filter((i) => Number.isFinite(y[i]!))
      .map((i) => square(field.x(x[i]!), field.y(y[i]!), READING_RADIUS)),
  );

/**
 * All labels of a chart, none on another, on a marker or on a curve, and off thinner lines and hatching as long as there is room; what
 * finds no place is left out.
 * The frame's margin is kept free right of the plot for the lines' names; 0: they stand along the lines.
 */
export function placeWords(
  model: ChartModel,
  { field, margin, yTicks }: Pick<ChartFrame, 'field' | 'margin' | 'yTicks'>,
  measure: MeasureText,
): Word[] {
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
  const grounds = model.regions.flatMap((region) => regionBox(field, region) ?? []);
  const edges = grounds.flatMap(sides);
  const around: Surroundings = {
    within: { left: field.left + 1, top: field.top, width: field.width + margin, height: field.height - 2 },
    obstacles: model.markers.map(({ x, y }) => square(field.x(x), field.y(y), MARKER_RADIUS)),
    lines,
    hairlines: [...drops, ...edges, ...boundsOf(model, field), ...zeroLine(field)],
    faint: yTicks.map(({ at }) => across(field, field.y(at))),
    grounds,
    marks: readingsOf(model, field),
  };
  const chosen = placeLabels(
    wishes.map(({ places }) => places),
    around,
  );
  return wishes.flatMap(({ places: _, ...word }, index) => {
    const place = chosen[index];
    return place && !hidesCurve(place, around) ? [{ ...word, place, plate: isOnSomething(place, around) }] : [];
  });
}
