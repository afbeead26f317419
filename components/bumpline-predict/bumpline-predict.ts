import type { PredictSaid } from '../../core/answers/predict.js';
import type { Setup } from '../../core/document/setup.js';
import type { Reading } from '../../core/readings/reading.js';
import { SheetElement } from '../element/sheet-element.js';
import type { Shown } from '../element/shown.js';
import type { PredictApp } from './predict-app.js';

/**
 * What would parts do that are not fitted yet, on a car measured once with a tape and a gauge?
 *
 * Data: the `corner` property or a JSON script inside, with readings of the car as it stands: the `readings` property or a table
 * inside; the parts are a set of the car or of the `setups` property. Else an invented example.
 *
 * @element bumpline-predict
 * @reads corner, readings, car
 * @slot - A JSON script of a corner and a table of readings: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplinePredict extends SheetElement<PredictApp, PredictSaid> {
  static override readonly shows: readonly Shown[] = ['sentence', 'chart', 'table'];
  static override properties = {
    readings: { attribute: false },
    setups: { attribute: false },
    corner: { attribute: false },
    over: {},
    drop: {},
  };

  /** Readings of camber with the car as it stands, in place of a table. */
  declare readings: readonly Reading[] | undefined;
  /** Sets of parts that could be put on. */
  declare setups: readonly Setup[] | undefined;
  /**
   * Hard points of a strut or a double wishbone: the object that the JSON script holds.
   * @holds Corner of core/linkage/corner.ts
   */
  declare corner: unknown;
  /**
   * The bump from the drop over which the change is told: `40`, `1.5 in`.
   * @quantity travel
   * @default 40
   */
  declare over: string | number | undefined;
  /**
   * By how much hub centre to arch lip has shrunk; negative: raised. `30`, `1.25 in`.
   * @quantity drop
   * @default 30
   */
  declare drop: string | number | undefined;

  /** The newest good answer; undefined while there is none. */
  get answer(): PredictSaid | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'predict';

  protected override async fetchApp(): Promise<PredictApp> {
    const { PredictApp } = await import('./predict-app.js');
    return new PredictApp(this);
  }
}
