import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import type { Comparison } from '../../core/answers/compare.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import type { Setup } from '../../core/document/setup.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { VERSION } from '../../core/version.js';
import type { CarModel } from '../shared/car-model.js';
import { theme } from '../shared/theme.js';
import type { ElementState } from './bumpline-compare.words.js';
import type { CompareApp } from './compare-app.js';

/** A camber curve under its parts' name. */
export interface NamedCurve {
  name: string;
  curve: CurveData;
  shares?: string;
  /** Of parts on a linkage: whether the tie rod was corrected with them. It decides where they break even. */
  tieRod?: 'corrected' | 'not corrected';
}

/**
 * Part or height: what does each change, and where do they break even?
 *
 * Data: a table of readings inside with one column a set of parts, the `setups` property, or the sets of the car; else an invented
 * example.
 *
 * @element bumpline-compare
 * @slot - A table of readings, one column a set of parts: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 */
export class BumplineCompare extends LitElement {
  static readonly version = VERSION;
  static override styles = [theme];
  static override properties = {
    over: {},
    heights: {},
    units: {},
    angles: {},
    theme: { reflect: true },
    setups: { attribute: false },
    curves: { attribute: false },
    car: { attribute: false },
    carId: { attribute: 'car-id' },
    keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
  };

  /** The bump from each height over which camber changes are compared; mm, or with a unit: `40`, `1.5 in`. */
  declare over: string | number | undefined;
  /** Drops from stock height, mm, the reference's own first: `0, 25`. */
  declare heights: string | undefined;
  /** Lengths in `mm` (default) or `in`. */
  declare units: UnitSystem['length'];
  /** Angles in `degrees` (default) or `arcminutes`. */
  declare angles: UnitSystem['angle'];
  /** `light` or `dark`; default: the reader's preference. */
  declare theme: 'light' | 'dark' | undefined;
  /** Sets of parts with their readings, in place of a table. */
  declare setups: readonly Setup[] | undefined;
  /** Curves made elsewhere, in place of readings: of linkages with parts, of coefficients. Those with one text in `shares` share their sources. */
  declare curves: readonly NamedCurve[] | undefined;
  /** Reads a car from the page's address and keeps it there, so that a reload or a sent link shows the same. */
  declare keepInAddress: boolean;
  /** State shared with other elements. Without it that of the `bumpline-car` around this, if there is one. */
  declare car: CarModel | undefined;
  /** Id of a `bumpline-car` that this does not stand in. */
  declare carId: string | undefined;

  #app: CompareApp | undefined;
  #coming: Promise<void> | undefined;

  constructor() {
    super();
    this.units = 'mm';
    this.angles = 'degrees';
    this.keepInAddress = false;
  }

  /** The newest good answer. */
  get answer(): Comparison | undefined {
    return this.#app?.answer?.comparison;
  }

  /** Everything that is wrong now, of the page's data and of what was typed. */
  get problems(): Problem[] {
    return this.#app?.problems ?? [];
  }

  get state(): ElementState {
    return this.#app?.state ?? 'waiting';
  }

  /** Resolves when everything given so far is answered and rendered. Never rejects. */
  get settled(): Promise<void> {
    return (async () => {
      await this.#coming;
      do {
        await this.updateComplete;
        await this.#app?.settle();
      } while (!(await this.updateComplete));
    })();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#coming ??= this.#fetch();
  }

  async #fetch(): Promise<void> {
    try {
      const { CompareApp } = await import('./compare-app.js');
      this.#app = new CompareApp(this);
      this.requestUpdate();
    } catch (error) {
      // The light DOM stays: data, and the author's own words.
      console.warn('Bumpline: the calculator could not be fetched; its page shows the plain numbers.', error);
    }
  }

  protected override willUpdate(changed: PropertyValues): void {
    this.#app?.willUpdate(changed);
  }

  protected override render(): TemplateResult {
    return this.#app?.render() ?? html`<slot></slot>`;
  }
}
