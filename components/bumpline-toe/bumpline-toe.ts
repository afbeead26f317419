import type { ToeAnswer } from '../../core/answers/toe.js';
import type { Setup } from '../../core/document/setup.js';
import type { Reading } from '../../core/readings/reading.js';
import { SheetElement } from '../element/sheet-element.js';
import type { ToeApp } from './toe-app.js';

/**
 * How much does the wheel steer itself in bump, and what flattens it?
 *
 * Data: the `readings` property or a table of toe readings inside; else the `corner` property, a JSON script or a table of hard points,
 * with a set of parts of the car or of the `setups` property on; else an invented example.
 *
 * @element bumpline-toe
 * @reads points, readings, corner, car
 * @slot - A table of toe readings or of hard points, or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineToe extends SheetElement<ToeApp, ToeAnswer> {
  static override properties = {
    drop: {},
    over: {},
    corner: { attribute: false },
    setups: { attribute: false },
    readings: { attribute: false },
  };

  /**
   * By how much hub centre to arch lip has shrunk; negative: raised. `30`, `1.25 in`.
   * @quantity drop
   * @default 30
   */
  declare drop: string | number | undefined;
  /**
   * The bump from where the car stands over which the sentence tells how far the wheel turns; negative: droop. `40`, `1.5 in`.
   * @quantity travel
   * @default 40
   */
  declare over: string | number | undefined;
  /**
   * Hard points of a strut or a double wishbone: the object that the JSON script holds.
   * @holds Corner of core/linkage/corner.ts
   */
  declare corner: unknown;
  /** Sets of parts that are put on these links. */
  declare setups: readonly Setup[] | undefined;
  /** Readings of toe as data, in place of a table. */
  declare readings: readonly Reading[] | undefined;

  /** The newest good answer; undefined while there is none. */
  get answer(): ToeAnswer | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'toe';

  protected override async fetchApp(): Promise<ToeApp> {
    const { ToeApp } = await import('./toe-app.js');
    return new ToeApp(this);
  }
}
