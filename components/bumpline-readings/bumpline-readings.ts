import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { Reading } from '../../core/readings/reading.js';
import { SheetElement } from '../element/sheet-element.js';
import type { Shown } from '../element/shown.js';
import type { ReadingsApp } from './readings-app.js';

/**
 * What curve do my readings make, and how far can I trust it?
 *
 * Data: the `readings` property or a table of readings inside; else an invented example. The first reading a user gives begins
 * a set of their own.
 *
 * @element bumpline-readings
 * @slot - A table of readings: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineReadings extends SheetElement<ReadingsApp, ReadingsAnswer> {
  static override readonly shows: readonly Shown[] = ['sentence', 'chart', 'table'];
  static override properties = {
    over: {},
    quantity: {},
    degree: {},
    readings: { attribute: false },
  };

  /** The travel from zero over which the change is said; mm, or with a unit: `25`, `1 in`. */
  declare over: string | number | undefined;
  /** What the gauge read: `camber` (default) or `toe`. */
  declare quantity: 'camber' | 'toe' | undefined;
  /** Of the curve; without it the evidence decides. */
  declare degree: string | number | undefined;
  /** Readings as data, in place of a table. */
  declare readings: readonly Reading[] | undefined;

  /** The newest good answer. */
  get answer(): ReadingsAnswer | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'readings';

  protected override async fetchApp(): Promise<ReadingsApp> {
    const { ReadingsApp } = await import('./readings-app.js');
    return new ReadingsApp(this);
  }
}
