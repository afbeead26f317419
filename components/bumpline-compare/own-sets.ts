import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { addParts, emptySetup, removeSetup, renameSetup, withSetupAt } from '../../core/document/setup-edits.js';
import { isPartsOnly, MOST_SETUPS, ownSetups } from '../../core/document/setup-in-use.js';
import { keepFocus } from '../element/keep-focus.js';
import { upper } from '../element/sentence.js';
import { forgetInstruments, renderInstruments } from '../inputs/instruments.js';
import { amountAskedOf } from '../parts/amount-asked.js';
import { AmountFinder } from '../parts/amount-finder.js';
import type { PartEntry } from '../parts/part-entries.js';
import { PARTS } from '../parts/parts.labels.js';
import type { PartsEdit } from '../parts/parts-edit.js';
import { focusPart, renderPartChoices, renderParts } from '../parts/parts-editor.js';
import { partsText } from '../parts/parts-text.js';
import type { PasteSheet } from '../paste/paste-sheet.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { withWords } from '../words/fetch-words.js';
import { LABELS } from './bumpline-compare.labels.js';
import { withoutChoice } from './chosen-cells.js';
import type { CompareView } from './compare-view.js';

const { sets: NAMES } = LABELS;

/** Of a set's parts, in drafts and problems. */
const partsPath = (index: number): string => `setups.${index}.`;
/** Of a set's instruments, in drafts and problems. */
const pathOf = (index: number): string => `doubts.${index}.`;

/** Sets of parts added in place, from a sheet that is pasted or typed: named in their columns, renamed and taken out below. */
export class OwnSets {
  readonly #app: CompareView;
  readonly #finder: AmountFinder;
  #paste: PasteSheet | undefined;
  /** Why nothing came of it, for people. */
  #trouble: string | undefined;
  /** Resolves when the set that is being added is there. */
  settled: Promise<void> = Promise.resolve();
  /** Which part a new set begins with is being chosen. */
  #isChoosing = false;
  /** The set whose parts were added last: these are open. */
  #unfolded: number | undefined;

  constructor(app: CompareView) {
    this.#app = app;
    this.#finder = new AmountFinder(app.host);
  }

  #change(label: string, recipe: (car: CarDocument) => CarDocument): void {
    const app = this.#app;
    app.change('setups', label, (car) => {
      const next = recipe(car);
      return label === NAMES.added || next.setups?.length !== car.setups?.length ? withoutChoice(next) : next;
    });
    app.endStep();
  }

  /** A set of parts begins with one part; its amount is waited for. */
  async #addParts(entry: PartEntry): Promise<void> {
    const app = this.#app;
    this.#isChoosing = false;
    // What is assumed of where a part stands goes by the car's own links.
    const corner = app.corner ?? (await app.curves.bareCorner());
    const name = upper(PARTS.kinds[entry.key].short);
    this.#change(NAMES.addedParts, (car) => addParts(car, name, [entry.begin(corner)]));
    const index = (app.car.setups ?? []).length - 1;
    this.#unfolded = index;
    app.host.requestUpdate();
    void focusPart({ host: app.host, path: partsPath(index) }, 0, entry);
  }

  #edit(setup: Setup, index: number): PartsEdit {
    const app = this.#app;
    const { host, drafts, display, corner, model } = app;
    return {
      host,
      drafts,
      display,
      path: partsPath(index),
      setup,
      corner,
      problems: app.wrong.find((one) => one.setup === setup)?.problems ?? [],
      ...this.#finder.of(amountAskedOf(model, app.car, app.heights[app.cells.to.height] ?? app.car.drop)),
      change: (label, recipe, step) => {
        // Without its last part the set is nothing.
        const isEmpty = recipe(setup).parts?.length === 0 && setup.readings.length === 0;
        if (isEmpty) this.#remove(index);
        else app.change('setups', label, (car) => withSetupAt(car, index, recipe), step);
      },
      cancel: (step) => model.cancelStep(step),
      begin: () => model.endStep(),
      end: () => app.endStep(),
    };
  }

  #remove(index: number): void {
    const { drafts, car } = this.#app;
    drafts.dropAll('setups.');
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
        const { PasteSheet, pasteStyles } = await withWords(import('../paste/paste-sheet.js'), 'dialogs');
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
      ${
        car.curve
          ? nothing
          : html`<button type="button" class="button add-parts" aria-expanded=${this.#isChoosing} @click=${() => {
              this.#isChoosing = !this.#isChoosing;
              host.requestUpdate();
            }}>${NAMES.addParts}</button>`
      }
      ${this.#trouble ? html`<p class="problems" role="alert">${this.#trouble}</p>` : nothing}`;
  }

  /** Which part a new set begins with. */
  renderChooser(): TemplateResult | typeof nothing {
    if (!this.#isChoosing) return nothing;
    return html`<div class="first-part" role="group" aria-label=${NAMES.choose}>
      <p class="note">${NAMES.choose}</p>
      ${renderPartChoices(this.#app.corner, (entry) => {
        this.settled = this.#addParts(entry);
      })}
    </div>`;
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
          ${isPartsOnly(setup) ? this.#renderParts(setup, index) : this.#renderDoubts(setup, index)}
        </div>`;
      })}
    </details>`;
  }

  #renderParts(setup: Setup, index: number): TemplateResult {
    const { car, display, wrong } = this.#app;
    if (car.curve) return html`<p class="note">${NAMES.noLinks}</p>`;
    const isOpen = this.#unfolded === index || wrong.some((one) => one.setup === setup);
    const isOnly = ownSetups(car).filter(isPartsOnly).length === 1;
    return html`<details class="own-parts" ?open=${isOpen || isOnly}>
      <summary>${NAMES.parts(partsText(setup.parts!, display))}</summary>
      ${renderParts(this.#edit(setup, index))}
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
