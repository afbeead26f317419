import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, dropBy } from '../../core/document/car.js';
import { emptySetup } from '../../core/document/setup-edits.js';
import { withToe } from '../../core/document/toe-settings.js';
import type { PasteSheet } from '../paste/paste-sheet.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { NAMES } from './bumpline-toe.labels.js';
import { withZero } from './toe-kit.js';
import type { ToeView } from './toe-view.js';

/** Takes readings of toe from a sheet that is pasted or dropped; what takes them comes only then. */
export class PasteToe {
  readonly #view: ToeView;
  #sheet: PasteSheet | undefined;
  #isLost = false;

  constructor(view: ToeView) {
    this.#view = view;
  }

  async open(): Promise<void> {
    const view = this.#view;
    try {
      if (!this.#sheet) {
        const { PasteSheet, pasteStyles } = await import('../paste/paste-sheet.js');
        view.addStyles(pasteStyles);
        this.#sheet = new PasteSheet(this.#readingsHost());
      }
      this.#isLost = false;
    } catch (error) {
      console.warn('Bumpline: a part could not be fetched.', error);
      this.#isLost = true;
    }
    view.host.requestUpdate();
    await view.host.updateComplete;
    this.#sheet?.open();
  }

  /** The sheet takes readings for sets that stand beside those that are there. */
  #readingsHost(): ReadingsHost {
    const view = this.#view;
    return {
      host: view.host,
      announcer: view.announcer,
      isOwn: true,
      keepsAll: true,
      get display() {
        return view.display;
      },
      get car() {
        return view.car;
      },
      get setup() {
        return emptySetup(NAMES.readings, 'toe', view.car.cornerName);
      },
      edit: () => {},
      changeSets: (_label, recipe) => {
        view.change('setups', NAMES.pasted, (car) => asRead(recipe(car), car));
        // The answer stands above what was pasted, and readings need less room than a page kept for links.
        view.host.style.minHeight = '0';
        void view.host.updateComplete.then(() => view.host.scrollIntoView({ block: 'start' }));
      },
      endStep: () => view.endStep(),
    };
  }

  render(): TemplateResult | typeof nothing {
    if (this.#isLost) return html`<p class="problems" role="alert">${NAMES.missing}</p>`;
    return this.#sheet?.render() ?? nothing;
  }
}

/** The readings are heard, and were begun where the car stands: of a car that somebody lowered, that is their zero. */
function asRead(car: CarDocument, before: CarDocument): CarDocument {
  const heard = withToe(car, { from: undefined });
  return dropBy(before) === 'user' && before.drop !== 0 ? withZero(heard, before.drop) : heard;
}
