import { html, nothing, type TemplateResult } from 'lit';
import { withSetApart } from '../../core/document/setup-edits.js';
import type { DataWarning } from '../../core/readings/warnings/data-warning.js';
import type { Fix } from '../../core/readings/warnings/fix.js';
import { shownName } from '../car/shown-names.words.js';
import { inTime } from '../delivery/in-time.js';
import { keepFocus } from '../element/keep-focus.js';
import { dropTarget } from '../paste/paste-drop.js';
import { textOf } from '../paste/paste-file.js';
import type { PasteSheet } from '../paste/paste-sheet.js';
import { withWords } from '../words/fetch-words.js';
import { NAMES } from './bumpline-readings.labels.js';
import type { dataWarningText } from './data-warnings.words.js';
import { mended } from './fixes.js';
import type { ReadingGrid } from './reading-grid.js';
import type { ReadingsView } from './readings-view.js';

/** More at once would be a wall; the rest are counted. */
const DATA_WARNINGS_SHOWN = 3;

/**
 * The parts that come only when they are wanted: the grid, the sheet for pasting, and what looks wrong in the readings, which is
 * looked for when the first chart stands.
 */
export class LateParts {
  #app: ReadingsView;
  #grid: ReadingGrid | undefined;
  #paste: PasteSheet | undefined;
  #looker: { find: (app: ReadingsView) => DataWarning[]; words: typeof dataWarningText } | undefined;
  #found: { answer: unknown; warnings: DataWarning[] } | undefined;
  #showsAll = false;
  isGridOpen = false;
  /** What did not come, for people. */
  #missing: string | undefined;
  settled: Promise<void>;

  constructor(app: ReadingsView) {
    this.#app = app;
    this.settled = this.#fetchLooker();
    const { host } = app;
    const { paste, dragover, drop } = dropTarget({
      isOwn: (event) => event.composedPath().some((at) => at instanceof HTMLDialogElement),
      onText: (text) => void this.openPaste(text),
      onFile: (file) => void textOf(file).then((text) => this.openPaste(text)),
    });
    host.addEventListener('paste', paste);
    host.addEventListener('dragover', dragover);
    host.addEventListener('drop', drop);
  }

  /** Fetches again what looks for what is wrong. */
  retry(): void {
    if (!this.#looker) this.settled = this.#fetchLooker();
  }

  /** In a task of its own: nobody waits for it, and with the first chart it would hold a slow phone's thread. */
  async #fetchLooker(): Promise<void> {
    try {
      await new Promise((resolve) => setTimeout(resolve));
      const { dataWarningsIn, dataWarningText } = await withWords(
        inTime(import('./data-warnings.words.js')),
        'dialogs',
      );
      this.#looker = {
        find: ({ answer, answeredSetup: setup }) =>
          answer && setup
            ? dataWarningsIn(
                answer.used.map((index) => setup.readings[index]!),
                answer.fit,
              )
            : [],
        words: dataWarningText,
      };
      this.#app.host.requestUpdate();
    } catch (error) {
      console.warn('Bumpline: what looks wrong in the readings could not be looked for.', error);
    }
  }

  get warnings(): DataWarning[] {
    const { answer } = this.#app;
    if (!this.#looker || !answer) return [];
    if (this.#found?.answer !== answer) this.#found = { answer, warnings: this.#looker.find(this.#app) };
    return this.#found.warnings;
  }

  renderDataWarnings(): TemplateResult | typeof nothing {
    const { warnings } = this;
    const { answer, answeredSetup: setup, display } = this.#app;
    if (warnings.length === 0 || !answer || !setup) return nothing;
    const some = answer.used.map((index) => setup.readings[index]!);
    const shown = this.#showsAll ? warnings : warnings.slice(0, DATA_WARNINGS_SHOWN);
    return html`<ul class="queries" aria-label=${NAMES.wrong}>
      ${shown.map((warning) => {
        const { text, remedy, fix } = this.#looker!.words(warning, some, { ...display, quantity: setup.quantity });
        return html`<li>
          ${text} ${remedy} ${fix ? html`<button type="button" class="button" @click=${() => this.#mend(fix, answer.used)}>${fix.label}</button>` : nothing}
        </li>`;
      })}
      ${
        warnings.length > shown.length
          ? html`<li><button type="button" class="text-button" @click=${() => {
              this.#showsAll = true;
              this.#app.host.requestUpdate();
            }}>${NAMES.more(warnings.length - shown.length)}</button></li>`
          : nothing
      }
    </ul>`;
  }

  #mend(fix: Fix & { label: string }, used: readonly number[]): void {
    if (fix.kind === 'new-set') {
      const name = `${this.#app.setup.name}, ${fix.passes.map((pass) => shownName(pass)).join(', ')}`;
      const apart = fix.indexes.map((i) => used[i]!);
      this.#app.changeSets(fix.label, (car) => withSetApart(car, apart, name));
    } else this.#app.editShown(fix.label, (shown) => mended(shown, fix, used));
    void keepFocus(this.#app);
  }

  async toggleGrid(): Promise<void> {
    this.isGridOpen = !this.isGridOpen;
    this.#app.host.requestUpdate();
    await this.#get(async () => {
      if (this.#grid) return;
      const { ReadingGrid, gridStyles } = await withWords(import('./reading-grid.js'), 'dialogs');
      this.#app.addStyles(gridStyles);
      this.#grid = new ReadingGrid(this.#app);
    });
    await this.#app.host.updateComplete;
    if (this.isGridOpen) this.#grid?.begin();
  }

  renderGrid(): TemplateResult | typeof nothing {
    if (this.#missing) return html`<p class="problems" role="alert">${this.#missing}</p>`;
    return this.isGridOpen && this.#grid ? this.#grid.render() : nothing;
  }

  async openPaste(text?: string): Promise<void> {
    await this.#get(async () => {
      if (this.#paste) return;
      const { PasteSheet, pasteStyles } = await withWords(import('../paste/paste-sheet.js'), 'dialogs');
      this.#app.addStyles(pasteStyles);
      this.#paste = new PasteSheet(this.#app);
    });
    await this.#app.host.updateComplete;
    this.#paste?.open(text);
  }

  renderPaste(): TemplateResult | typeof nothing {
    return this.#paste?.render() ?? nothing;
  }

  async #get(fetch: () => Promise<void>): Promise<void> {
    try {
      await fetch();
      this.#missing = undefined;
    } catch (error) {
      console.warn('Bumpline: a part could not be fetched.', error);
      this.#missing = NAMES.missing;
    }
    this.#app.host.requestUpdate();
  }
}
