import type { Problem } from '../../quantity/problem.js';
import type { UnitSystem } from '../../quantity/units.js';
import type { OverBase } from '../over-base.js';
import type { Reading, ReadingQuantity } from '../reading.js';

/** What a column of a pasted sheet or a page's table holds. */
export type ColumnRole =
  /** Wheel travel, bump positive. */
  | 'travel'
  /** A height that shrinks in bump: hub centre to arch lip. Becomes travel once it is known which height is zero. */
  | 'height'
  /** The angle. */
  | 'value'
  /** Long form: the name of the parts, or of the pass, that the row belongs to. */
  | 'pass'
  /** Long form: whether the wheel was going up or down. */
  | 'going'
  /** A reference on the body. */
  | 'body'
  /** Two figures over a base, of dials or of a tape: toe. */
  | 'dialFront'
  | 'dialRear'
  /** Worked out from others: an average, a spread, a difference. Left out. */
  | 'derived'
  /** Kept in the preview, not used. */
  | 'other';

/** `thou`: thousandths of an inch, as dials count them. */
export type CellUnit = 'mm' | 'cm' | 'in' | 'thou' | 'degrees' | 'arcminutes';

export interface SheetColumn {
  /** As written; empty without a heading. */
  heading: string;
  role: ColumnRole;
  /** Of cells that name none themselves. */
  unit?: CellUnit;
  /** With one column a pass; of a sheet with several sets of parts, the pass within its set. */
  pass?: string;
  /** The name of its set of parts, where the sheet holds more than one. */
  set?: string;
  going?: 'up' | 'down';
  /** Who said what the column holds. */
  by: 'user' | 'heading' | 'figures';
}

/** How one cell was understood. */
export interface SheetCell {
  /** As it was pasted. */
  text: string;
  state: /** Became part of a reading, or of its pass, height, direction. */
    | 'read'
    | 'heading'
    | 'empty'
    /** Seen and left out: another column, a line that is no reading; `why` says which. */
    | 'left-out'
    /** Can be read in more than one way; `question` asks. Its first choice counts until it is answered. */
    | 'asked'
    /** Cannot be read. */
    | 'problem';
  /** mm or degrees, signed as it counts. */
  value?: number;
  /** Index into the readings that it became part of. */
  reading?: number;
  problem?: Problem;
  /** Id of a question. */
  question?: string;
  why?: 'other-column' | 'no-height' | 'no-value' | 'not-a-reading' | 'derived';
}

/** Readings of one set of parts, as indexes into the readings of the sheet. */
export interface SheetSet {
  /** Empty where the sheet holds one set and does not name it. */
  name: string;
  readings: number[];
}

/** Figures of the sheet that others give: left out. */
export interface SheetDerived {
  kind: 'average' | 'median' | 'spread' | 'difference' | 'copy';
  /** As headed, or as its rows are called. */
  label: string;
  column: number;
  /** The columns that it is made of; empty where only its name tells what it is. */
  of: number[];
}

/** Something that the sheet does not say and that is not guessed. */
export interface SheetQuestion {
  /** `comma`, `minutes`, `zero`, `height-or-travel`, `sets`, `unit:3`, … : the key of its answer. */
  id: string;
  code: /** 1,500: fifteen hundred, or one and a half? */
    | 'comma'
    /** 1.30: 1.30° or 1°30′? */
    | 'minutes'
    /** Travel or hub-to-arch height? */
    | 'height-or-travel'
    /** Which height is called zero? Answered by a number, mm. */
    | 'zero'
    /** Does a positive figure mean bump or droop? */
    | 'bump-sign'
    /** All values positive where camber is usually negative, or the other way: top in or top out? */
    | 'value-sign'
    /** mm or in; degrees or arc minutes? */
    | 'unit'
    /** Columns of toe that nothing names: front and rear by dials or by a tape, passes, or sets of parts? */
    | 'pairs'
    /** How far the two dials, or places, stand apart. Answered by a number, mm. */
    | 'base'
    /** Does the front figure grow as the front of the wheel moves inboard, or outboard? `by` says of what. */
    | 'front-sign'
    /** Two sets of parts, or passes of one? */
    | 'sets'
    /** Called an average, and not that of what stands beside it: left out, or readings? */
    | 'average'
    /** Toe of both wheels together, or of one? */
    | 'total';
  /** The cells it is about: [row, column]. */
  cells: [number, number][];
  /** Of `sets` and `pairs`: the columns of each, or, in one column, the first and the last row of each. */
  groups?: { columns: number[]; rows?: [number, number] }[];
  /** Of `sets`: they differ by more than their scatter allows. */
  isApart?: boolean;
  /** Of `front-sign`: what the headings name. */
  by?: 'dials' | 'tape';
  /** Of a number: between which mm an answer lies. */
  range?: readonly [least: number, most: number];
  /** Nothing in the sheet speaks for what counts meanwhile: no readings are to be taken by it. */
  isGuess?: true;
  /** The text of one of them. */
  example: string;
  /** What can be answered; empty where a number is asked for. `value` shows what the example becomes, mm or degrees. */
  choices: { id: string; value?: number }[];
  /** The answer that counts now: the user's, else the likeliest. A number is written with a decimal point. */
  chosen?: string;
  /** Whether the user has answered it. */
  isAnswered: boolean;
}

export interface Understanding {
  quantity: ReadingQuantity;
  form: 'column-a-pass' | 'long';
  columns: SheetColumn[];
  /** Every cell of the sheet, row by row, as long as the longest row. Nothing is missing from it. */
  cells: SheetCell[][];
  questions: SheetQuestion[];
  /** How the two figures of each reading were read, where they are kept with it as its `pair`. */
  overBase?: OverBase;
  /** In the sheet's order; those that can be read with the answers that count now. */
  readings: Reading[];
  /** Which of them belong to which set of parts; one where there are readings and nothing tells them apart. Passes are told within a set. */
  sets: SheetSet[];
  /** What was left out because other figures give it. */
  derived: SheetDerived[];
  /** Of the sheet as a whole: no column of heights, no readings at all. */
  problems: Problem[];
}

export interface UnderstandOptions {
  quantity: ReadingQuantity;
  /** Of figures without a unit. */
  units: UnitSystem;
  /** Of a published table: its decimal mark decides and nothing is asked. */
  language?: string;
  /** By question id; `order: 'any'`, which nobody is asked, of a table whose rows stand in no order that tells a direction. */
  answers?: Readonly<Record<string, string>>;
  /** What the user says of a column, by its number. */
  columns?: Readonly<Record<number, Partial<Pick<SheetColumn, 'role' | 'unit' | 'pass' | 'set' | 'going'>>>>;
}
