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
 * @reads readings, car
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

  /**
   * The travel from zero over which the sentence tells the change: `25`, `1 in`. Left out: 25, or as far as the readings go.
   * @quantity travel
   */
  declare over: string | number | undefined;
  /**
   * What the gauge read.
   * @default camber
   */
  declare quantity: 'camber' | 'toe' | undefined;
  /**
   * The highest power of travel in the curve, a whole number. Left out, or `auto`: the readings decide.
   * @least 1
   * @most 10
   */
  declare degree: string | number | undefined;
  /** Readings as data, in place of a table; those of one `pass` share the gauge's zero. */
  declare readings: readonly Reading[] | undefined;

  /** The newest good answer; undefined while there is none. */
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
