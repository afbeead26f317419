import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import type { Fitment } from '../../core/document/fitment.js';
import type { TravelLimits } from '../../core/travel/travel-limits.js';
import { SheetElement } from '../element/sheet-element.js';
import type { ClearanceApp } from './clearance-app.js';

/**
 * Does this tyre clear at full bump, and which limit comes first?
 *
 * Data: wheels by attribute, or `fit` and `limits` as properties or as a JSON script inside; else an invented example. What a user
 * changes replaces it. How the wheel moves comes from the car, which other elements may share, or from the script's hard points.
 *
 * @element bumpline-clearance
 * @reads fitment, car
 * @tells Corner of core/linkage/corner.ts
 * @slot - A JSON script with `fit`, `limits`, `drop` and `corner` (hard points), and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineClearance extends SheetElement<ClearanceApp, DrawnClearance> {
  static override properties = {
    drop: {},
    wheelBefore: { attribute: 'wheel-before' },
    wheelAfter: { attribute: 'wheel-after' },
    lock: {},
    limits: {},
    fit: { attribute: false },
  };

  /**
   * By how much hub centre to arch lip has shrunk; negative: raised. `30`, `1.25 in`.
   * @quantity drop
   * @default 30
   */
  declare drop: string | number | undefined;
  /** The old wheel, which was on when the places were measured: size, rim width in inches, offset in mm, and a spacer in mm if there is one: `205/55R16, 6.5, 45`. */
  declare wheelBefore: string | undefined;
  /** The new wheel, written likewise. */
  declare wheelAfter: string | undefined;
  /**
   * How far the wheel turns at full lock; 0 for a rear axle.
   * @quantity steer
   */
  declare lock: string | number | undefined;
  /** Wheels, places and margins: the object under `fit` of the JSON script. */
  declare fit: Fitment | undefined;
  /**
   * What ends travel, as found at the car, in one line: `stop-gap 22; stop-length 50`. The names are those of `TravelLimits`, with
   * hyphens. Lengths are in mm, or carry their unit. As a property it takes the object as well.
   */
  declare limits: TravelLimits | string | undefined;

  /** The newest good answer; undefined while there is none. */
  get answer(): DrawnClearance | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'clearance';

  protected override async fetchApp(): Promise<ClearanceApp> {
    const { ClearanceApp } = await import('./clearance-app.js');
    return new ClearanceApp(this);
  }
}
