import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import type { Reading } from '../../core/readings/reading.js';
import { VERSION } from '../../core/version.js';
import type { CarModel } from '../shared/car-model.js';
import { theme } from '../shared/theme.js';
import type { ElementState } from './bumpline-readings.words.js';
import type { ReadingsApp } from './readings-app.js';

/**
 * What curve do my readings make, and how far can I trust it?
 *
 * Data: the `readings` property or a table of readings inside; else an invented example. The first reading a user gives begins
 * a set of their own.
 *
 * This class is the shell: it registers quickly, shows its light DOM, and fetches the rest.
 *
 * @element bumpline-readings
 * @slot - A table of readings: the data, and what readers without scripts see.
 * @fires bumpline-change - what a user changed
 * @fires bumpline-answer - a new answer stands on the sheet
 */
export class BumplineReadings extends LitElement {
  static readonly version = VERSION;
  static override styles = [theme];
  static override properties = {
    over: {},
    quantity: {},
    degree: {},
    units: {},
    angles: {},
    theme: { reflect: true },
    readings: { attribute: false },
    car: { attribute: false },
    carId: { attribute: 'car-id' },
    keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
  };

  /** The travel from zero over which the change is said; mm, or with a unit: `25`, `1 in`. */
  declare over: string | number | undefined;
  /** What the gauge read: `camber` (default) or `toe`. */
  declare quantity: 'camber' | 'toe' | undefined;
  /** Of the curve; without it the evidence decides. */
  declare degree: string | number | undefined;
  /** Lengths in `mm` (default) or `in`. */
  declare units: UnitSystem['length'];
  /** Angles in `degrees` (default) or `arcminutes`. */
  declare angles: UnitSystem['angle'];
  /** `light` or `dark`; default: the reader's preference. */
  declare theme: 'light' | 'dark' | undefined;
  /** Readings as data, in place of a table. */
  declare readings: readonly Reading[] | undefined;
  /** Reads a car from the page's address and keeps it there, so that a reload or a sent link shows the same. */
  declare keepInAddress: boolean;
  /** State shared with other elements. */
  declare car: CarModel | undefined;
  /** Id of the `bumpline-car` whose state it is. */
  declare carId: string | undefined;

  #app: ReadingsApp | undefined;
  #coming: Promise<void> | undefined;

  constructor() {
    super();
    this.units = 'mm';
    this.angles = 'degrees';
    this.keepInAddress = false;
  }

  /** The newest good answer. */
  get answer(): ReadingsAnswer | undefined {
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
      const { ReadingsApp } = await import('./readings-app.js');
      this.#app = new ReadingsApp(this);
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
