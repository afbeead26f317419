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

  /** Static camber that is to be added, negative for more negative camber; degrees: `-1`, `-1°30′`. */
  declare by: string | number | undefined;
  /** By how much hub centre to arch lip has shrunk; mm, or with a unit: `30`, `1.25 in`. */
  declare drop: string | number | undefined;
  /** The bump over which the change of camber is told, and either way bump steer; mm, or with a unit: `40`, `1.5 in`. */
  declare over: string | number | undefined;
  /** Hard points of a strut or a double wishbone, as JSON of a corner. */
  declare corner: unknown;
  /** Sets of parts that are put on these links. */
  declare setups: readonly Setup[] | undefined;

  /** The newest good answer. */
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
