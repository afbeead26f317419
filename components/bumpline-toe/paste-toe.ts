import { html, nothing, type TemplateResult } from 'lit';
import { emptySetup } from '../../core/document/setup-edits.js';
import type { PasteSheet } from '../paste/paste-sheet.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { NAMES } from './bumpline-toe.labels.js';
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
      changeSets: (_label, recipe) => view.change('setups', NAMES.pasted, recipe),
      endStep: () => view.endStep(),
    };
  }

  render(): TemplateResult | typeof nothing {
    if (this.#isLost) return html`<p class="problems" role="alert">${NAMES.missing}</p>`;
    return this.#sheet?.render() ?? nothing;
  }
}
