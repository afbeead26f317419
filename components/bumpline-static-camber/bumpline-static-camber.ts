import type { StaticCamberAnswer } from '../../core/answers/static-camber.js';
import type { Setup } from '../../core/document/setup.js';
import { SheetElement } from '../element/sheet-element.js';
import type { Shown } from '../element/shown.js';
import type { StaticCamberApp } from './static-camber-app.js';

/**
 * Which way of adding static camber costs what elsewhere?
 *
 * Data: the `corner` property, a JSON script or a table of hard points, with a set of parts of the car or of the `setups` property on;
 * else an invented example.
 *
 * @element bumpline-static-camber
 * @reads points, corner, car
 * @slot - A table of hard points, or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineStaticCamber extends SheetElement<StaticCamberApp, StaticCamberAnswer> {
  static override readonly shows: readonly Shown[] = ['sentence', 'table'];
  static override properties = {
    by: {},
    drop: {},
    over: {},
    corner: { attribute: false },
    setups: { attribute: false },
  };

  /**
   * Static camber to add; negative for more negative camber: `-1`, `-1°30′`.
   * @quantity partAngle
   * @least -6
   * @most 6
   * @default -1
   */
  declare by: string | number | undefined;
  /**
   * By how much hub centre to arch lip has shrunk; negative: raised. `30`, `1.25 in`.
   * @quantity drop
   * @default 30
   */
  declare drop: string | number | undefined;
  /**
   * The bump over which camber gain is told, and the bump and droop over which bump steer is: `40`, `1.5 in`.
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

  /** The newest good answer; undefined while there is none. */
  get answer(): StaticCamberAnswer | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'static-camber';

  protected override async fetchApp(): Promise<StaticCamberApp> {
    const { StaticCamberApp } = await import('./static-camber-app.js');
    return new StaticCamberApp(this);
  }
}
