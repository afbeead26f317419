import type { Setup } from '../../core/document/setup.js';
import { SheetElement } from '../element/sheet-element.js';
import type { CorneringApp } from './cornering-app.js';
import type { TurnOnSheet } from './cornering-view.js';

/**
 * What does the tyre see on the road in a turn?
 *
 * Data: the `corner` property, a JSON script or a table of hard points or measurements inside, with a set of parts of the car or of the
 * `setups` property on; else an invented example.
 *
 * @element bumpline-cornering
 * @reads points, corner, car
 * @slot - A table of hard points or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineCornering extends SheetElement<CorneringApp, TurnOnSheet> {
  static override properties = {
    drop: {},
    roll: {},
    corner: { attribute: false },
    setups: { attribute: false },
  };

  /**
   * By how much hub centre to arch lip has shrunk; negative: raised. `30`, `1.25 in`.
   * @quantity drop
   * @default 30
   */
  declare drop: string | number | undefined;
  /**
   * Body roll on the springs: `2.5`. A reader who works it out from cable ties or lateral acceleration takes its place.
   * @quantity roll
   * @default 3
   */
  declare roll: string | number | undefined;
  /**
   * Hard points of a strut or a double wishbone: the object that the JSON script holds.
   * @holds Corner of core/linkage/corner.ts
   */
  declare corner: unknown;
  /** Sets of parts that are put on these links. */
  declare setups: readonly Setup[] | undefined;

  /** The newest good answer; undefined while there is none. */
  get answer(): TurnOnSheet | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'cornering';

  protected override async fetchApp(): Promise<CorneringApp> {
    const { CorneringApp } = await import('./cornering-app.js');
    return new CorneringApp(this);
  }
}
