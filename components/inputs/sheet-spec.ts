import type { CarDocument } from '../../core/document/car.js';
import { type Driveway, HOW_SURE as LIMITS } from '../../core/driveway/driveway.js';
import type { Problem } from '../../core/quantity/problem.js';
import { QUANTITIES, type Quantity } from '../../core/quantity/quantities.js';
import type { CautionId } from '../element/cautions.js';
import type { Display } from '../element/sentence.js';

/** One number of a sheet: three of them make a hard point. */
export interface SheetField {
  /** Path of its value in problems, e.g. `lowerArm.ball.2`. */
  path: string;
  label: string;
  quantity: Quantity;
  /** Can be negative on a real car: the field gets a key for the sign, which number pads lack. */
  signed?: boolean;
  /** What counts while nothing is typed: of values that most cars do not have, or that another sheet has given. */
  otherwise?(car: CarDocument): number | undefined;
  /** Without it the rest of an optional sheet says nothing: it is taken back with all of them alone. */
  needed?: boolean;
  /** What is wrong with a value by itself, before any question is asked of the car. */
  check?(value: number): Problem | undefined;
  /** Whose its value is, in words, where a sheet's fields can be of different people. */
  whose?(car: CarDocument): string;
}

/** One thing to give: what opens when its balloon, its row or its word is pressed. */
export interface SheetSpec {
  key: string;
  title: string;
  /** Its balloon in the drawing. */
  number?: number;
  fields: SheetField[];
  howTo: string;
  caution?: CautionId | readonly CautionId[];
  /** Whether it can be left out again. */
  optional?: boolean;
  /** Values given, or undefined. */
  read(car: CarDocument): readonly number[] | undefined;
  write(car: CarDocument, values: readonly number[] | undefined): CarDocument;
  /** Each field counts by itself: what of them is given, and how to give some. Only that which is given is ever written. */
  partly?: {
    read(car: CarDocument): readonly (number | undefined)[];
    write(car: CarDocument, values: readonly (number | undefined)[]): CarDocument;
  };
  /** Its values as a list shows them, each marked by whether it is the user's own. */
  parts?(car: CarDocument, display: Display): readonly { text: string; isOwn: boolean }[];
  /** Its values as a list says them, where that is not one after the other. */
  summary?(values: readonly number[], display: Display): string;
  /** What stands in while nothing is given. `taken`: what the last answer took for each driveway measurement. */
  standIn?(car: CarDocument, taken?: Driveway['taken']): readonly number[] | undefined;
  /** Has a "how sure": where its ± is kept, in the field's unit. Writing changes nothing while there is no value. */
  doubt?: { read(car: CarDocument): number | undefined; write(car: CarDocument, plusMinus: number): CarDocument };
  /** Questions with a few answers to choose from. */
  options?: readonly OptionGroup[];
  /** Taken out, the sheet has nothing to be about any more. */
  goesWhole?: boolean;
  /** They are asked before the fields: what is measured depends on them. */
  optionsFirst?: boolean;
  /** What one text typed into a field says of several: `225/45R17`. */
  spread?(text: string): readonly (number | undefined)[] | undefined;
  /** What can be taken over from another sheet at one press. */
  copy?: { label: string; offers(car: CarDocument): boolean; write(car: CarDocument): CarDocument };
  /** What can be given in its place: the other sheet's key, and how to ask for it. */
  instead?: { key: string; label: string };
}

export interface OptionGroup {
  legend: string;
  /** Short answers, side by side in one row. */
  inRow?: boolean;
  /** `short`: as a list says it. */
  items: readonly { id: string; label: string; short: string }[];
  read(car: CarDocument): string;
  write(car: CarDocument, id: string): CarDocument;
  /** Which of them a car can have; default all. Where it is none, the question is not asked. */
  offers?(car: CarDocument, id: string): boolean;
}

export const offered = ({ items, offers }: OptionGroup, car: CarDocument): OptionGroup['items'] =>
  offers ? items.filter(({ id }) => offers(car, id)) : items;

/** Answers to "how sure?", as 95 % half-widths in mm, and of a gauge in degrees. Common practice, no source. */
export const HOW_SURE = {
  length: [
    { id: 'careful', plusMinus: LIMITS.length.careful },
    { id: 'tape', plusMinus: LIMITS.length.tape },
    { id: 'guess', plusMinus: LIMITS.length.guess },
  ],
  angle: [
    { id: 'careful', plusMinus: LIMITS.angle.careful },
    { id: 'gauge', plusMinus: LIMITS.angle.gauge },
    { id: 'guess', plusMinus: LIMITS.angle.guess },
  ],
  toe: [
    { id: 'careful', plusMinus: LIMITS.toe.careful },
    { id: 'gauge', plusMinus: LIMITS.toe.gauge },
    { id: 'guess', plusMinus: LIMITS.toe.guess },
  ],
} as const;

/** What "how sure" is counted in. */
export const scaleOf = ({ fields }: SheetSpec): keyof typeof HOW_SURE => {
  const { quantity } = fields[0]!;
  if (QUANTITIES[quantity].dimension === 'length') return 'length';
  return quantity === 'toe' ? 'toe' : 'angle';
};
