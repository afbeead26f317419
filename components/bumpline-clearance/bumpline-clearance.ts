import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import type { Fit } from '../../core/document/fit.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import type { TravelLimits } from '../../core/travel/travel-limits.js';
import { VERSION } from '../../core/version.js';
import type { CarModel } from '../shared/car-model.js';
import { theme } from '../shared/theme.js';
import type { ElementState } from './bumpline-clearance.words.js';
import type { ClearanceApp } from './clearance-app.js';

/**
 * Does this tyre clear at full bump, and which limit comes first?
 *
 * Data: wheels by attribute, or `fit` and `limits` as properties or as a JSON script inside; else an invented example. What a user
 * changes replaces it. How the wheel moves comes from the car, which other elements may share.
 *
 * @element bumpline-clearance
 * @slot - A JSON script with `fit`, `limits` and `drop`, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 */
export class BumplineClearance extends LitElement {
  static readonly version = VERSION;
  static override styles = [theme];
  static override properties = {
    drop: {},
    wheelBefore: { attribute: 'wheel-before' },
    wheelAfter: { attribute: 'wheel-after' },
    lock: {},
    limits: {},
    units: {},
    angles: {},
    theme: { reflect: true },
    fit: { attribute: false },
    car: { attribute: false },
    carId: { attribute: 'car-id' },
    keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
  };

  /** By how much hub centre to arch lip has shrunk; mm, or with a unit: `30`, `1.25 in`. */
  declare drop: string | number | undefined;
  /** The wheel that was on when the places were measured: size, rim width in inches, offset in mm, spacer: `205/55R16, 6.5, 45`. */
  declare wheelBefore: string | undefined;
  /** The wheel that is asked about, written likewise. */
  declare wheelAfter: string | undefined;
  /** Steering at full lock, degrees. */
  declare lock: string | number | undefined;
  /** Lengths in `mm` (default) or `in`. */
  declare units: UnitSystem['length'];
  /** Angles in `degrees` (default) or `arcminutes`. */
  declare angles: UnitSystem['angle'];
  /** `light` or `dark`; default: the reader's preference. */
  declare theme: 'light' | 'dark' | undefined;
  /** Wheels, places and margins. */
  declare fit: Fit | undefined;
  /** What ends wheel travel, as found where the car stands: an object, or `stop-gap 22; stop-length 50`. */
  declare limits: TravelLimits | string | undefined;
  /** Reads a car from the page's address and keeps it there, so that a reload or a sent link shows the same. */
  declare keepInAddress: boolean;
  /** State shared with other elements. Without it that of the `bumpline-car` around this, if there is one. */
  declare car: CarModel | undefined;
  /** Id of a `bumpline-car` that this does not stand in. */
  declare carId: string | undefined;

  #app: ClearanceApp | undefined;
  #coming: Promise<void> | undefined;

  constructor() {
    super();
    this.units = 'mm';
    this.angles = 'degrees';
    this.keepInAddress = false;
  }

  /** The newest good answer. */
  get answer(): DrawnClearance | undefined {
    return this.#app?.answer;
  }

  /** Everything that is wrong now, of the page's data and of what was typed. */
  get problems(): Problem[] {
    return this.#app?.problems ?? [];
  }

  get state(): ElementState {
    return this.#app?.state ?? 'waiting';
  }

  /** Resolves when everything given so far is answered and rendered, the steering too. Never rejects. */
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
      const { ClearanceApp } = await import('./clearance-app.js');
      this.#app = new ClearanceApp(this);
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
