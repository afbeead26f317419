import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { VERSION } from '../../core/version.js';
import type { CarModel } from '../shared/car-model.js';
import { theme } from '../shared/theme.js';
import type { ElementState } from './bumpline-lowering.words.js';
import type { LoweringApp } from './lowering-app.js';

/**
 * What does lowering do to camber, and what is left in bump?
 *
 * Data: the `corner` or `curve` property, `coefficients` and `domain`, a JSON script or a table of hard points inside; else an
 * invented example. What a user changes replaces it value by value.
 *
 * This class is the shell: it registers quickly, shows its light DOM, and fetches the rest.
 *
 * @element bumpline-lowering
 * @slot - A table of hard points or a JSON script: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 */
export class BumplineLowering extends LitElement {
  static readonly version = VERSION;
  static override styles = [theme];
  static override properties = {
    drop: {},
    dropPlusMinus: { attribute: 'drop-plus-minus' },
    bumpTravel: { attribute: 'bump-travel' },
    limits: {},
    setup: {},
    coefficients: {},
    domain: {},
    units: {},
    angles: {},
    theme: { reflect: true },
    corner: { attribute: false },
    curve: { attribute: false },
    car: { attribute: false },
    carId: { attribute: 'car-id' },
    keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
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
  /** Lengths in `mm` (default) or `in`. */
  declare units: UnitSystem['length'];
  /** Angles in `degrees` (default) or `arcminutes`. */
  declare angles: UnitSystem['angle'];
  /** `light` or `dark`; default: the reader's preference. */
  declare theme: 'light' | 'dark' | undefined;
  /** Hard points, as JSON of a corner. */
  declare corner: unknown;
  /** A fitted camber curve with its doubt. */
  declare curve: CurveData | undefined;
  /** Reads a car from the page's address and keeps it there, so that a reload or a sent link shows the same. */
  declare keepInAddress: boolean;
  /** State shared with other elements. Without it that of the `bumpline-car` around this, if there is one. */
  declare car: CarModel | undefined;
  /** Id of a `bumpline-car` that this does not stand in. */
  declare carId: string | undefined;

  #app: LoweringApp | undefined;
  #coming: Promise<void> | undefined;

  constructor() {
    super();
    this.units = 'mm';
    this.angles = 'degrees';
    this.keepInAddress = false;
  }

  /** The newest good answer. */
  get answer(): LoweringAnswer | undefined {
    return this.#app?.answer;
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
      const { LoweringApp } = await import('./lowering-app.js');
      this.#app = new LoweringApp(this);
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
