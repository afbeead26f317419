import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { emptySetup, removeSetup, renameSetup, withSetupAt } from '../../core/document/setup-edits.js';
import { MOST_SETUPS, ownSetups } from '../../core/document/setup-in-use.js';
import { keepFocus } from '../element/keep-focus.js';
import { forgetInstruments, renderInstruments } from '../inputs/instruments.js';
import type { PasteSheet } from '../paste/paste-sheet.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { LABELS } from './bumpline-compare.labels.js';
import { withoutChoice } from './chosen-cells.js';
import type { CompareView } from './compare-view.js';

const { sets: NAMES } = LABELS;

/** Of a set's instruments, in drafts and problems. */
const pathOf = (index: number): string => `doubts.${index}.`;

/** Sets of parts added in place, from a sheet that is pasted or typed: named in their columns, renamed and taken out below. */
export class OwnSets {
  readonly #app: CompareView;
  #paste: PasteSheet | undefined;
  /** Why nothing came of it, for people. */
  #trouble: string | undefined;

  constructor(app: CompareView) {
    this.#app = app;
  }

  #change(label: string, recipe: (car: CarDocument) => CarDocument): void {
    const app = this.#app;
    app.change('setups', label, (car) => {
      const next = recipe(car);
      return label === NAMES.added || next.setups?.length !== car.setups?.length ? withoutChoice(next) : next;
    });
    app.endStep();
  }

  #remove(index: number): void {
    const { drafts, car } = this.#app;
    // Those behind it move up, and their texts would stand with other sets.
    for (let i = index; i < ownSetups(car).length; i++) forgetInstruments(drafts, pathOf(i));
    this.#change(NAMES.removed, (all) => removeSetup(all, index));
    void keepFocus(this.#app);
  }

  /** The sheet takes readings for sets that stand beside those that are there. */
  #readingsHost(): ReadingsHost {
    const app = this.#app;
    const empty = (): Setup => emptySetup('Readings', 'camber', app.cornerName);
    return {
      host: app.host,
      announcer: app.announcer,
      isOwn: true,
      keepsAll: true,
      get display() {
        return app.display;
      },
      get car() {
        return app.car;
      },
      get setup() {
        return empty();
      },
      edit: () => {},
      changeSets: (_label, recipe) => this.#change(NAMES.added, recipe),
      endStep: () => app.endStep(),
    };
  }

  async open(): Promise<void> {
    const app = this.#app;
    try {
      if (!this.#paste) {
        const { PasteSheet, pasteStyles } = await import('../paste/paste-sheet.js');
        app.addStyles(pasteStyles);
        this.#paste = new PasteSheet(this.#readingsHost());
      }
      this.#trouble = undefined;
    } catch (error) {
      console.warn('Bumpline: a part could not be fetched.', error);
      this.#trouble = NAMES.missing;
    }
    app.host.requestUpdate();
    await app.host.updateComplete;
    this.#paste?.open();
  }

  renderButton(): TemplateResult | typeof nothing {
    const { host, car } = this.#app;
    if (host.curves || (car.setups ?? []).length >= MOST_SETUPS) return nothing;
    return html`<button type="button" class="button add-set" @click=${() => void this.open()}>${NAMES.add}</button>
      ${this.#trouble ? html`<p class="problems" role="alert">${this.#trouble}</p>` : nothing}`;
  }

  /** Names and removal, where the sets are the user's. */
  renderList(): TemplateResult | typeof nothing {
    const own = ownSetups(this.#app.car);
    if (!own.some(({ quantity }) => quantity === 'camber') || this.#app.host.curves) return nothing;
    return html`<details class="own-sets" open>
      <summary>${own.some(({ givenBy }) => givenBy) ? NAMES.allSets : NAMES.sets}</summary>
      ${own.map((setup, index) => {
        const { name, quantity, givenBy } = setup;
        if (quantity !== 'camber') return nothing;
        const rename = ({ target }: Event) =>
          this.#change(NAMES.renamed, (car) => renameSetup(car, index, (target as HTMLInputElement).value));
        return html`<div class="own-set" role="group" aria-label=${name}>
          <input class="text words name" type="text" autocomplete="off" maxlength="60" aria-label=${NAMES.name} .value=${live(name)} @change=${rename} />
          ${givenBy === 'page' ? html`<small>${NAMES.ofPage}</small>` : nothing}
          <button type="button" class="button" aria-label="${NAMES.remove}: ${name}" title=${NAMES.remove} @click=${() => this.#remove(index)}>×</button>
          ${this.#renderDoubts(setup, index)}
        </div>`;
      })}
    </details>`;
  }

  #renderDoubts(setup: Setup, index: number): TemplateResult {
    const { drafts, display, host } = this.#app;
    return renderInstruments({
      setup,
      drafts,
      display,
      path: pathOf(index),
      onSet: (label, recipe) => this.#change(label, (car) => withSetupAt(car, index, recipe)),
      onText: () => host.requestUpdate(),
    });
  }

  renderSheet(): TemplateResult | typeof nothing {
    return this.#paste?.render() ?? nothing;
  }
}
