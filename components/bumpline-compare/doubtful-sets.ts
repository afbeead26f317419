import { html, nothing, type TemplateResult } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import { withSetupAt } from '../../core/document/setup-edits.js';
import { ownSetups } from '../../core/document/setup-in-use.js';
import { ACCUSING, type DataWarning } from '../../core/readings/warnings/data-warning.js';
import type { Fix } from '../../core/readings/warnings/fix.js';
import { mended } from '../bumpline-readings/fixes.js';
import { shownName } from '../car/shown-names.words.js';
import { inTime } from '../delivery/in-time.js';
import { keepFocus } from '../element/keep-focus.js';
import { withWords } from '../words/fetch-words.js';
import { LABELS } from './bumpline-compare.labels.js';
import type { CompareView } from './compare-view.js';

const { wrong: NAMES } = LABELS;

type Looker = typeof import('../bumpline-readings/data-warnings.words.js');

/** More at once would be a wall. */
const SHOWN = 3;

interface Looked {
  /** Of each reading that was looked at, its index in the set. */
  used: number[];
  warnings: DataWarning[];
}

/** Readings of the sets compared that look wrong: a slip of one sign makes two curves that nobody can tell apart. Looked for once the table stands. */
export class DoubtfulSets {
  readonly #view: CompareView;
  readonly #looked = new WeakMap<Setup, Looked>();
  #looker: Looker | undefined;
  settled: Promise<void>;

  constructor(view: CompareView) {
    this.#view = view;
    this.settled = this.#fetch();
  }

  /** Fetches again what looks for it. */
  retry(): void {
    if (!this.#looker) this.settled = this.#fetch();
  }

  async #fetch(): Promise<void> {
    try {
      await new Promise((resolve) => setTimeout(resolve));
      this.#looker = await withWords(inTime(import('../bumpline-readings/data-warnings.words.js')), 'dialogs');
      this.#view.host.requestUpdate();
    } catch (error) {
      console.warn('Bumpline: what looks wrong in the readings could not be looked for.', error);
    }
  }

  #look(setup: Setup, { dataWarningsIn }: Looker): Looked {
    const known = this.#looked.get(setup);
    if (known) return known;
    const aside = new Set(setup.setAside);
    const used = [...setup.readings.keys()].filter((i) => !aside.has(i));
    const readings = used.map((i) => setup.readings[i]!);
    const looked = { used, warnings: dataWarningsIn(readings, undefined).filter(({ kind }) => ACCUSING.has(kind)) };
    this.#looked.set(setup, looked);
    return looked;
  }

  #mend(setup: Setup, fix: Fix & { label: string }, used: readonly number[]): void {
    this.#view.change('setups', fix.label, (car) =>
      withSetupAt(car, ownSetups(car).indexOf(setup), (shown) => mended(shown, fix, used)),
    );
    void keepFocus(this.#view);
  }

  render(): TemplateResult | typeof nothing {
    const looker = this.#looker;
    const { setups, car, isExample, host, display } = this.#view;
    if (!looker || isExample || host.curves) return nothing;
    const own = ownSetups(car);
    const all = setups.flatMap((setup) => {
      const { used, warnings } = this.#look(setup, looker);
      return warnings.map((warning) => ({ setup, used, warning }));
    });
    if (all.length === 0) return nothing;
    return html`<ul class="queries" aria-label=${NAMES.title}>
      ${all.slice(0, SHOWN).map(({ setup, used, warning }) => {
        const readings = used.map((i) => setup.readings[i]!);
        const { text, remedy, fix } = looker.dataWarningText(warning, readings, display);
        return html`<li>
            <b>${shownName(setup.name)}:</b> ${text} ${remedy}
            ${fix && own.includes(setup) ? html`<button type="button" class="button" @click=${() => this.#mend(setup, fix, used)}>${fix.label}</button>` : nothing}
          </li>`;
      })}
      ${all.length > SHOWN ? html`<li>${NAMES.more(all.length - SHOWN)}</li>` : nothing}
    </ul>`;
  }
}
