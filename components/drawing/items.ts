/**
 * A workshop drawing as plain data. Lengths are millimetres on the page's own axes: the first number runs to the right (in a front view
 * y, outboard), the second up (z, with the ground at 0). What must stay legible at every scale (joints, marks, text) is sized in px by the
 * layout. Line types after ISO 128-2, dimensions after ISO 129-1, item references after ISO 6433.
 */
export type Point = readonly [right: number, up: number];

/** Colour by meaning, never by name; see components/theme/theme.ts. */
export type Ink = 'ink' | 'soft' | 'hair' | 'now' | 'before' | 'limit' | 'contact' | 'next';

export interface Look {
  /** ISO 128 knows two: wide for visible outlines, narrow for everything that explains. 'none' draws the fill alone. */
  weight?: 'wide' | 'narrow' | 'none';
  /** 'chain' (dash-dot): axes and constructions; 'dashed': something that is not there now. */
  dash?: 'chain' | 'dashed';
  ink?: Ink;
  fill?: 'sheet' | 'paper' | 'tyre' | 'wash' | 'solid';
}

export const centreLine = { weight: 'narrow', dash: 'chain' } as const satisfies Look;
export const ghost = { weight: 'narrow', dash: 'dashed', ink: 'before' } as const satisfies Look;

/** Where a label stands, seen from its point: compass directions on the page. */
export type CompassDirection = 'n' | 'ne' | 'e' | 'se' | 's' | 'sw' | 'w' | 'nw';

/** A line, polyline or polygon. `round` (mm) rounds its corners; `hatch` fills a closed one with 45° lines (solid or forbidden). */
export interface PathItem extends Look {
  kind: 'path';
  points: readonly Point[];
  closed?: boolean;
  round?: number;
  hatch?: boolean;
}

/** Several closed outlines, all turning the same way, drawn as the one body they cover together. */
export interface BodyItem extends Look {
  kind: 'body';
  outlines: readonly (readonly Point[])[];
}

/** A circle of a true radius (mm), or a joint of a fixed size on the page (px). */
export interface CircleItem extends Look {
  kind: 'circle';
  at: Point;
  radius?: number;
  radiusPx?: number;
}

/** The ground: a wide line across the whole sheet at that height, hatched below. */
export interface GroundItem {
  kind: 'ground';
  height: number;
}

/**
 * A dimension between two points, measured along the page's vertical ('up') or horizontal ('right'); the dimension line stands at `at` on
 * the other axis. Along 'line' it is the true length, and `at` says how far to the right of the way from `from` to `to` the dimension
 * line stands. Below 2 px there is nothing to show and it is left out, its text too. A value that is a button is a chip of its own.
 */
export interface DimensionItem {
  kind: 'dimension';
  from: Point;
  to: Point;
  along: 'up' | 'right' | 'line';
  at: number;
  text?: string;
  ink?: Ink;
  /** Its text keeps off every line and hatching; see LabelItem. */
  keepsClear?: boolean;
}

/** An arc from one direction to another about `centre`; directions in degrees from straight up, positive to the right. */
export interface AngleItem extends Look {
  kind: 'angle';
  centre: Point;
  radius: number;
  from: number;
  to: number;
}

/**
 * A construction line that starts at `from`. It ends at `target` when that is on the sheet; otherwise it runs along `direction` to the
 * edge and ends in a break line. No target: the lines of the construction are parallel.
 */
export interface ConstructionItem extends Look {
  kind: 'construction';
  from: Point;
  direction: Point;
  target?: Point | undefined;
}

/** Text at a point; the first of `places` that is free and crosses the fewest lines wins. An optional one gives way to the rest. */
export interface LabelItem {
  kind: 'label';
  at: Point;
  text: string;
  places: readonly CompassDirection[];
  ink?: Ink;
  size?: 'value' | 'label';
  optional?: boolean;
  /** It stands on no line and no hatching: further away if need be, with a leader to its point (ISO 129-1). */
  keepsClear?: boolean;
}

/** Small print under the drawing, in rows. */
export interface NoteItem {
  kind: 'note';
  text: string;
  row: number;
  align: 'start' | 'end';
}

/** `next`: the user's, and worth measuring again; `wanted`: not theirs yet, and the next to measure. */
export type BalloonState = 'example' | 'yours' | 'problem' | 'next' | 'wanted';

/** An item reference: a numbered circle in one of the two columns, a leader to its point, and a button to press. */
export interface BalloonItem {
  kind: 'balloon';
  key: string;
  number: number;
  at: Point;
  /** Where the point is at reference: the balloon's place follows this one, so that it stays put while the mechanism moves. */
  home: Point;
  side: 'left' | 'right';
  state: BalloonState;
  /** What a screen reader says after the number. */
  label: string;
}

/** The value of a dimension as a button, on its dimension line. */
export interface ChipItem {
  kind: 'chip';
  key: string;
  text: string;
  /** What the value belongs to now: when the chip has to stand aside, a leader goes there. */
  at: Point;
  /** Where it belongs at reference: the chip's place follows this one, so that it stays put while the mechanism moves. */
  home: Point;
  /** The way its dimension line runs: it makes room along it first. */
  along: 'up' | 'right';
  state: BalloonState;
  /** What a screen reader says before the value. */
  label: string;
}

export type Item =
  | PathItem
  | BodyItem
  | CircleItem
  | GroundItem
  | DimensionItem
  | AngleItem
  | ConstructionItem
  | LabelItem
  | NoteItem
  | BalloonItem
  | ChipItem;

export interface Drawing {
  /** What a screen reader says instead of the picture. */
  title: string;
  items: readonly Item[];
  /** Room that is kept whatever is drawn, mm: lower left and upper right corner. The scale is steady as long as the items stay inside. */
  extent: readonly [lower: Point, upper: Point];
  /** How tall it may be, as a share of its width. Default: as the sheet allows. */
  tallest?: number;
}
