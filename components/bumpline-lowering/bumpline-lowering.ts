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
 * @reads points, corner, car
 * @tells TravelLimits of core/travel/travel-limits.ts
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

  /**
   * By how much hub centre to arch lip has shrunk; negative: raised. `30`, `1.25 in`.
   * @quantity drop
   * @default 30
   */
  declare drop: string | number | undefined;
  /**
   * How sure you are of the drop: half-width of its 95 % interval. Left out, the drop counts as exact.
   * @quantity plusMinusLength
   */
  declare dropPlusMinus: string | number | undefined;
  /**
   * How far the wheel can rise at stock height before the stop is solid. Left out, or once a reader gives a car of their own, bump left
   * is not told until they give theirs.
   * @quantity travel
   */
  declare bumpTravel: string | number | undefined;
  /**
   * What ends travel, as found at the car, in one line: `stop-gap 22; stop-length 50; stroke-bump 52`. The names are those of
   * `TravelLimits`, with hyphens. Lengths are in mm, or carry their unit.
   */
  declare limits: string | undefined;
  /** Name of the set of parts that it is about, where the car around it has several. Left out: the one in use. */
  declare setup: string | undefined;
  /** A curve in place of points: coefficients of camber in degrees over travel in mm, constant first: `-0.5 -0.0136 0.00011`. It needs a `domain`. */
  declare coefficients: string | undefined;
  /**
   * The two travels between which the coefficients hold: `-60 80`.
   * @quantity travel list
   */
  declare domain: string | undefined;
  /**
   * Hard points of a strut: the object that the JSON script holds.
   * @holds Corner of core/linkage/corner.ts
   */
  declare corner: unknown;
  /** A camber curve with its doubt, as `bumpline/core` makes it. */
  declare curve: CurveData | undefined;

  /** The newest good answer; undefined while there is none. */
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
