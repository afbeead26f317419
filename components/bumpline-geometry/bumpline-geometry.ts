import type { Setup } from '../../core/document/setup.js';
import { SheetElement } from '../element/sheet-element.js';
import type { GeometryApp } from './geometry-app.js';
import type { WorkbenchAnswer } from './geometry-view.js';

/**
 * What do a corner's links do over travel, and what do parts change of it?
 *
 * Data: the `corner` property, a JSON script or a table of hard points inside, and sets of parts in the `setups` property or of the car; else an
 * invented example.
 * What a user changes replaces it value by value.
 *
 * @element bumpline-geometry
 * @reads points, corner, car
 * @slot - A table of hard points or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineGeometry extends SheetElement<GeometryApp, WorkbenchAnswer> {
  static override properties = {
    drop: {},
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
   * Hard points of a strut or a double wishbone: the object that the JSON script holds.
   * @holds Corner of core/linkage/corner.ts
   */
  declare corner: unknown;
  /** Sets of parts that are put on these links, with or without readings. */
  declare setups: readonly Setup[] | undefined;

  /** The newest good answer; undefined while there is none. */
  get answer(): WorkbenchAnswer | undefined {
    return this.app?.answer;
  }

  /** @ignore */
  readonly words: string = 'geometry';

  protected override async fetchApp(): Promise<GeometryApp> {
    const { GeometryApp } = await import('./geometry-app.js');
    return new GeometryApp(this);
  }
}
