import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import { SheetElement } from '../element/sheet-element.js';
import type { LoweringApp } from './lowering-app.js';

/**
 * What does lowering do to camber, and what is left in bump?
 *
 * Data: the `corner` or `curve` property, `coefficients` and `domain`, a JSON script or a table of hard points inside; else an
 * invented example. What a user changes replaces it value by value.
 *
 * @element bumpline-lowering
 * @slot - A table of hard points or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineLowering extends SheetElement<LoweringApp, LoweringAnswer> {
  static override properties = {
    drop: {},
    dropPlusMinus: { attribute: 'drop-plus-minus' },
    bumpTravel: { attribute: 'bump-travel' },
    limits: {},
    setup: {},
    coefficients: {},
    domain: {},
    corner: { attribute: false },
    curve: { attribute: false },
  };

  /** By how much hub centre to arch lip has shrunk; mm, or with a unit: `30`, `1.25 in`. */
  declare drop: string | number | undefined;
  /** Half-width of the drop's 95 % interval. */
  declare dropPlusMinus: string | number | undefined;
  /** Usable bump travel at reference height, at the wheel. Without it nothing is said of what is left. */
  declare bumpTravel: string | number | undefined;
  /** What ends travel, as found where the car stands: `stop-gap 22; stop-length 50`. */
  declare limits: string | undefined;
  /** Name of the set of parts that it is about, where the car has several; else the one in use. */
  declare setup: string | undefined;
  /** Of camber over travel, degrees and mm, constant term first: `-0.5 -0.0136 0.00011`. */
  declare coefficients: string | undefined;
  /** Travels between which the coefficients hold, mm: `-60 80`. */
  declare domain: string | undefined;
  /** Hard points, as JSON of a corner. */
  declare corner: unknown;
  /** A fitted camber curve with its doubt. */
  declare curve: CurveData | undefined;

  /** The newest good answer. */
  get answer(): LoweringAnswer | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'lowering';

  protected override async fetchApp(): Promise<LoweringApp> {
    const { LoweringApp } = await import('./lowering-app.js');
    return new LoweringApp(this);
  }
}
