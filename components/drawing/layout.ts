import { type BalloonBox, COLUMN, columnHeight, placeBalloons } from './balloons.js';
import { type ChipBox, chipWidth, placeChips } from './chips.js';
import {
  arrowData,
  type Box,
  breakData,
  circleData,
  hatchData,
  hatchLines,
  type Px,
  pathData,
  roundedWay,
  stretchInside,
} from './geometry.js';
import type {
  AngleItem,
  BalloonItem,
  ChipItem,
  DimensionItem,
  Drawing,
  Item,
  LabelItem,
  Look,
  NoteItem,
  Point,
} from './items.js';
import { arc, disc } from './outline.js';
import { lineHeight, placeTexts, type TextBox, type TextRequest, textWidth } from './text.js';

/** A drawing on a sheet of a given width: everything in px, y down, inside [0, width] × [0, height]. */
export interface Layout {
  title: string;
  width: number;
  height: number;
  /** px per mm. */
  scale: number;
  shapes: Shape[];
  texts: TextBox[];
  balloons: BalloonBox[];
  chips: ChipBox[];
}

/** One path; `look` is its list of classes. A broken construction line carries the class `break`. */
export interface Shape {
  d: string;
  look: string;
}

const PAD = 10;
const NOTE_SIZE = 12;
const HATCH_GAP = 6;
const GROUND_DEPTH = 8;

/** How tall a drawing may be: sentence, drawing and slider share a phone's screen, and a wide sheet stays inside a laptop's. */
export const heightLimit = (widthPx: number): number => Math.min(560, 360 + ((widthPx - 330) * 200) / 230);

const classes = (look: Look, fallback: Look['weight'] = 'wide'): string =>
  [look.ink ?? 'ink', look.weight ?? fallback, look.dash, look.fill && `fill-${look.fill}`].filter(Boolean).join(' ');

const angleArc = ({ centre, radius, from, to }: AngleItem): Point[] =>
  arc(centre, radius, ((90 - from) * Math.PI) / 180, ((90 - to) * Math.PI) / 180, 12);

/** The ends of a dimension line, mm. */
function dimensionEnds({ from, to, along, at }: DimensionItem): [Point, Point] {
  const on = ([right, up]: Point): Point => (along === 'up' ? [at, up] : [right, at]);
  if (along !== 'line') return [on(from), on(to)];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const aside: Point = [((to[1] - from[1]) * at) / length, ((from[0] - to[0]) * at) / length];
  return [
    [from[0] + aside[0], from[1] + aside[1]],
    [to[0] + aside[0], to[1] + aside[1]],
  ];
}

/** The points of an item that must be on the sheet. */
function pointsOf(item: Item): readonly Point[] {
  switch (item.kind) {
    case 'path':
      return item.points;
    case 'body':
      return item.outlines.flat();
    case 'circle':
      return disc(item.at, item.radius ?? 0);
    case 'dimension':
      return [item.from, item.to, ...dimensionEnds(item)];
    case 'angle':
      return angleArc(item);
    case 'construction':
      return [item.from];
    case 'label':
    case 'balloon':
      return [item.at];
    case 'chip':
      return [item.home];
    default:
      return [];
  }
}

/** Note rows from the bottom edge of the picture; a row in which two notes would touch gets another below it. */
function layNotes(notes: readonly Pick<NoteItem, 'text' | 'row' | 'align'>[], top: number, width: number): TextBox[] {
  const height = lineHeight(NOTE_SIZE);
  const room = width - 8;
  const rows: { row: number; used: number; sides: string }[] = [];
  return notes
    .toSorted((a, b) => a.row - b.row)
    .map(({ text, row, align }) => {
      const wide = textWidth(text, NOTE_SIZE, false);
      let line = rows.findIndex((r) => r.row === row && !r.sides.includes(align) && r.used + wide + 8 <= room);
      if (line < 0) line = rows.push({ row, used: 0, sides: '' }) - 1;
      rows[line]!.used += wide;
      rows[line]!.sides += align;
      const x = align === 'start' ? 4 : width - 4 - wide;
      return {
        x,
        y: top + line * height,
        width: wide,
        height,
        text,
        size: NOTE_SIZE,
        bold: false,
        ink: 'soft',
        anchor: align,
      };
    });
}

/**
 * Lays a drawing out on a sheet `widthPx` wide, at most `tallPx` tall without its notes (290 to 620; other widths work as far as there is room for text). Pure and deterministic.
 * No text or balloon touches another, and nothing leaves the sheet.
 */
export function layout(drawing: Drawing, widthPx: number, tallPx = heightLimit(widthPx)): Layout {
  const { items, extent } = drawing;
  const balloonItems = items.filter((item): item is BalloonItem => item.kind === 'balloon');
  const noteItems = items.filter((item): item is NoteItem => item.kind === 'note');
  const ground = items.find((item) => item.kind === 'ground');

  const points = [...extent, ...items.flatMap(pointsOf)];
  const rights = points.map((point) => point[0]);
  const ups = points.map((point) => point[1]);
  const lower: Point = [Math.min(...rights), Math.min(...ups, ground?.height ?? Number.POSITIVE_INFINITY)];
  const upper: Point = [Math.max(...rights), Math.max(...ups)];
  const chipItems = items.filter((item): item is ChipItem => item.kind === 'chip');
  const margin = Math.max(PAD, ...chipItems.map(({ text }) => chipWidth(text) / 2 + 2));
  const column = (side: string) => (balloonItems.some((balloon) => balloon.side === side) ? COLUMN : margin);
  const left = column('left');
  const room = widthPx - left - column('right');
  const notesHeight = Math.max(0, ...layNotes(noteItems, 0, widthPx).map((note) => note.y + note.height)) + 2;
  const below = (ground ? GROUND_DEPTH : PAD) + 4;
  const most = Math.min(tallPx, (drawing.tallest ?? Number.POSITIVE_INFINITY) * widthPx);
  const tall = most - PAD - below - notesHeight;
  const scale = Math.min(room / (upper[0] - lower[0]), tall / (upper[1] - lower[1]));
  const bottom = PAD + Math.max(scale * (upper[1] - lower[1]), columnHeight(balloonItems));
  const shift = left + (room - scale * (upper[0] - lower[0])) / 2;
  const toPx = (point: Point): Px => [shift + scale * (point[0] - lower[0]), bottom - scale * (point[1] - lower[1])];

  const frame: Box = { x: left, y: PAD, width: room, height: bottom - PAD };
  const shapes: Shape[] = [];
  const lines: [Px, Px][] = [];
  const hatching: (readonly [Px, Px])[] = [];
  const requests: TextRequest[] = [];
  const draw = (d: string, look: string) => shapes.push({ d, look });
  const addLines = (corners: readonly Px[], closed = false) =>
    corners.forEach((corner, i) => {
      if (i || closed) lines.push([corners.at(i - 1)!, corner]);
    });
  const polyline = (corners: readonly Px[], look: string, closed = false, round = 0) => {
    draw(pathData(corners, closed, round), look);
    addLines(roundedWay(corners, closed, round), closed);
  };

  for (const item of items) {
    switch (item.kind) {
      case 'path': {
        const corners = item.points.map(toPx);
        polyline(corners, classes(item), item.closed, scale * (item.round ?? 0));
        if (item.hatch) {
          draw(hatchData(corners, HATCH_GAP), `${item.ink ?? 'ink'} narrow hatch`);
          hatching.push(...hatchLines(corners, HATCH_GAP));
        }
        break;
      }
      case 'body': {
        const outlines = item.outlines.map((outline) => outline.map(toPx));
        draw(outlines.map((outline) => pathData(outline, true)).join(''), `${classes(item)} body`);
        for (const outline of outlines) addLines(outline, true);
        break;
      }
      case 'circle': {
        const radius = item.radiusPx ?? scale * (item.radius ?? 0);
        draw(circleData(toPx(item.at), radius), classes(item));
        addLines(disc(item.at, radius / scale).map(toPx), true);
        break;
      }
      case 'ground': {
        const y = toPx([0, item.height])[1];
        const strip: Px[] = [
          [4, y],
          [widthPx - 4, y],
          [widthPx - 4, y + GROUND_DEPTH],
          [4, y + GROUND_DEPTH],
        ];
        draw(hatchData(strip, HATCH_GAP), 'ink narrow hatch');
        polyline(strip.slice(0, 2), 'ink wide');
        break;
      }
      case 'angle':
        polyline(angleArc(item).map(toPx), classes(item, 'narrow'));
        break;
      case 'construction': {
        const from = toPx(item.from);
        const target = item.target?.every(Number.isFinite) ? toPx(item.target) : undefined;
        const onSheet =
          target &&
          target[0] > frame.x &&
          target[0] < frame.x + frame.width &&
          target[1] > frame.y &&
          target[1] < frame.y + frame.height;
        if (onSheet) {
          polyline([from, target], classes(item, 'narrow'));
          draw(circleData(target, 3), 'ink wide fill-solid');
          break;
        }
        const length = Math.hypot(...item.direction);
        const way: Px = [item.direction[0] / length, -item.direction[1] / length];
        const leave = stretchInside(from, way, frame)?.[1] ?? 0;
        const end: Px = [from[0] + Math.max(0, leave) * way[0], from[1] + Math.max(0, leave) * way[1]];
        polyline([from, end], classes(item, 'narrow'));
        draw(breakData(end, way), `${item.ink ?? 'ink'} narrow break`);
        break;
      }
      case 'dimension': {
        const feet = [toPx(item.from), toPx(item.to)];
        const ends = dimensionEnds(item).map(toPx) as [Px, Px];
        const length = Math.hypot(ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]);
        if (length < 2) break;
        const ink = item.ink ?? 'ink';
        const outside = length < 24;
        feet.forEach((foot, i) => {
          const end = ends[i]!;
          const other = ends[1 - i]!;
          const reach = Math.hypot(end[0] - foot[0], end[1] - foot[1]) || 1;
          const away: Px = [(end[0] - foot[0]) / reach, (end[1] - foot[1]) / reach];
          const beyond = (px: number, from: Px): Px => [from[0] + px * away[0], from[1] + px * away[1]];
          polyline([beyond(3, foot), beyond(4, end)], `${ink} narrow`);
          const sign = outside ? -1 : 1;
          const way: Px = [(sign * (end[0] - other[0])) / length, (sign * (end[1] - other[1])) / length];
          draw(arrowData(end, way), `${ink} narrow fill-solid`);
          if (outside) polyline([end, [end[0] - 13 * way[0], end[1] - 13 * way[1]]], `${ink} narrow`);
        });
        polyline(ends, `${ink} narrow`);
        if (item.text === undefined) break;
        const middle: Px = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2];
        const places = item.along === 'up' ? (['e', 'w', 'ne', 'nw'] as const) : (['n', 's', 'ne', 'nw'] as const);
        const { text, keepsClear } = item;
        requests.push({ at: middle, text, size: 13, bold: true, ink, places, optional: false, keepsClear });
        break;
      }
      case 'label':
        requests.push(requestOf(item, toPx(item.at)));
        break;
    }
  }

  const balloons = placeBalloons(balloonItems, toPx, widthPx, PAD - 4, bottom);
  lines.push(...balloons.map(({ leader }): [Px, Px] => [...leader]));
  const sheet: Box = { x: 2, y: 2, width: widthPx - 4, height: bottom - 4 };
  const chips = placeChips(chipItems, toPx, { ...sheet, height: bottom + below - 4 });
  lines.push(...chips.flatMap(({ leader }): [Px, Px][] => (leader ? [[...leader]] : [])));
  const { placed, left: homeless } = placeTexts(
    requests.toSorted((a, b) => Number(a.optional) - Number(b.optional)),
    sheet,
    [...balloons, ...chips],
    lines,
    hatching,
  );
  for (const { leader, ink } of placed) if (leader) draw(pathData(leader), `${ink} narrow`);
  const extra = homeless.map(({ text }) => ({ text, row: Number.POSITIVE_INFINITY, align: 'start' as const }));
  const notes = layNotes([...noteItems, ...extra], bottom + below, widthPx);
  const height = Math.ceil(Math.max(bottom + below, ...notes.map((note) => note.y + note.height)) + 2);
  return { title: drawing.title, width: widthPx, height, scale, shapes, texts: [...placed, ...notes], balloons, chips };
}

const requestOf = (item: LabelItem, at: Px): TextRequest => {
  const value = item.size === 'value';
  const { text, places, ink = 'ink', optional = false, keepsClear } = item;
  return { at, text, size: value ? 16 : 13, bold: value, ink, places, optional, keepsClear };
};
