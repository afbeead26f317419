import type { Comparison } from '../../core/answers/compare.js';
import type { Setup } from '../../core/document/setup.js';
import { SheetElement } from '../element/sheet-element.js';
import type { Shown } from '../element/shown.js';
import type { CompareApp } from './compare-app.js';
import type { NamedCurve } from './compare-view.js';

export type { NamedCurve };

/**
 * Part or height: what does each change, and where do they break even?
 *
 * Data: a table of readings inside with one column a set of parts, the `setups` property, or the sets of the car, those of parts alone put on the
 * car's own links; and the car's own curve where hard points, measurements or a curve of it were given; else an invented example.
 *
 * @element bumpline-compare
 * @reads sets, car
 * @slot - A table of readings, one column a set of parts: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 * @fires bumpline-problem - what is wrong has changed
 */
export class BumplineCompare extends SheetElement<CompareApp, Comparison> {
  static override readonly shows: readonly Shown[] = ['sentence', 'chart', 'table'];
  static override properties = {
    over: {},
    heights: {},
    setups: { attribute: false },
    curves: { attribute: false },
    toePage: { attribute: 'toe-page' },
  };

  /**
   * The bump from each height over which camber changes are compared: `40`, `1.5 in`.
   * @quantity travel
   * @default 40
   */
  declare over: string | number | undefined;
  /**
   * Drops from stock height, the reference's own first: `0, 25`. Of two, the second gives way to the drop of a reader's own car.
   * @quantity drop list
   * @default 0, 25
   */
  declare heights: string | undefined;
  /** Sets of parts with their readings, in place of a table. */
  declare setups: readonly Setup[] | undefined;
  /** Curves from `bumpline/core`, in place of readings: of coefficients, or of hard points with parts on them (`partCurve`). */
  declare curves: readonly NamedCurve[] | undefined;
  /** Address of a page of yours with a `bumpline-toe` that keeps the car in its address. A cell that tells toe then leads there, with its height and parts. */
  declare toePage: string | undefined;

  /** The newest good answer; undefined while there is none. */
  get answer(): Comparison | undefined {
    return this.app?.answer?.comparison;
  }

  /** @ignore */
  readonly words: string = 'compare';

  protected override async fetchApp(): Promise<CompareApp> {
    const { CompareApp } = await import('./compare-app.js');
    return new CompareApp(this);
  }
}
