import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import { createRef, ref } from 'lit/directives/ref.js';
import type { TakeHow } from '../../core/document/take-sets.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { shownName } from '../car/shown-names.words.js';
import { focusSentence } from '../element/keep-focus.js';
import { derivedText } from '../element/left-out.js';
import { NAMES } from './paste.labels.js';
import { sheetProblem, summary, takenText } from './paste.words.js';
import { dropTarget } from './paste-drop.js';
import { isText, textOf } from './paste-file.js';
import { renderCellPanel, renderColumnPanel } from './paste-panels.js';
import { FIRST_ROWS, MORE_ROWS, renderPreview } from './paste-preview.js';
import { renderQuantity, renderQuestions, renderSetNames, renderZero } from './paste-questions.js';
import { renderHowTo } from './paste-sample.js';
import { PasteState, type SheetReader } from './paste-state.js';
import { renderButton, renderTake, takeReadings } from './paste-take.js';
import { renderUnread } from './paste-unread.js';
import type { ReadingsHost } from './readings-host.js';

export { pasteStyles } from './paste.styles.js';

/** A pasted or dropped sheet of readings: shown as it was understood, asked about, then taken in one step. */
export class PasteSheet {
  #app: ReadingsHost;
  #state: PasteState;
  #dialog = createRef<HTMLDialogElement>();
  #isOpen = false;
  /** The column or the cell whose panel is open. */
  #panel: number | readonly [number, number] | undefined;
  #rows = FIRST_ROWS;
  /** The user has own readings and is asked what becomes of them. */
  #isAsking = false;
  #fileProblem = '';

  /** @param load fetches what reads a sheet; given by tests only */
  constructor(app: ReadingsHost, load: () => Promise<SheetReader> = () => import('./sheet-reader.js')) {
    this.#app = app;
    this.#state = new PasteState(app, load);
  }

  /**
   * Handlers by event name, for whatever a sheet may be pasted on or dropped on: usually the element itself. What belongs into a
   * field that has the focus is left to it.
   */
  readonly dropTarget = dropTarget({
    isOwn: (event) => event.composedPath().includes(this.#dialog.value!),
    onText: (text) => this.open(text),
    onFile: (file) => void this.#openFile(file),
  });

  /** @param text replaces what was pasted before, which can be had back */
  open(text?: string): void {
    this.#isOpen = true;
    this.#fileProblem = '';
    if (text !== undefined && text !== this.#state.text) this.#replace(text);
    // Units and readings may have changed since it was closed.
    else void this.#state.read();
    void this.#app.host.updateComplete.then(() => {
      const dialog = this.#dialog.value;
      if (dialog && !dialog.open) dialog.showModal();
      dialog?.scrollTo(0, 0);
      // With a text there the keypad of a phone would only cover what became of it.
      this.#focus(this.#state.text ? '#paste-title' : '#paste-text');
    });
  }

  render(): TemplateResult {
    return html`<dialog
      class="paste"
      ${ref(this.#dialog)}
      aria-labelledby="paste-title"
      @close=${this.#closed}
      @click=${this.#outside}
      @paste=${this.dropTarget.paste}
      @dragover=${this.dropTarget.dragover}
      @drop=${this.dropTarget.drop}
    >
      <h2 id="paste-title" tabindex="-1">
        <span class="title">${NAMES.title}</span><small>${shownName(this.#app.setup.cornerName)}</small>
      </h2>
      ${this.#isOpen ? this.#renderBody() : nothing}
    </dialog>`;
  }

  #renderBody(): TemplateResult {
    const { status, text, before, understanding } = this.#state;
    return html`${status === 'empty' ? renderHowTo(this.#app.display, this.#app.setup.quantity) : nothing}
      <textarea
        id="paste-text"
        class=${status === 'empty' ? '' : 'short'}
        rows=${status === 'empty' ? 8 : 3}
        wrap="off"
        spellcheck="false"
        autocomplete="off"
        autocapitalize="off"
        aria-label=${NAMES.text}
        aria-describedby=${status === 'empty' ? 'paste-how' : nothing}
        .value=${live(text)}
        @input=${this.#typed}
      ></textarea>
      <div class="choices">
        <label class="button file">
          ${NAMES.file}<input class="visually-hidden" type="file" accept=".csv,.tsv,.txt,text/*" @change=${this.#chose} />
        </label>
        ${text ? renderButton(NAMES.empty, () => this.#replace('', '#paste-text')) : nothing}
        ${before === undefined ? nothing : renderButton(NAMES.before, () => this.#replace(before, '#paste-title'))}
      </div>
      ${this.#fileProblem ? html`<p class="problem" role="alert">${this.#fileProblem}</p>` : nothing}
      <p class="summary" id="paste-summary" tabindex="-1" aria-live="polite">
        ${status === 'waiting' ? NAMES.waiting : understanding ? summary(understanding, this.#app.display) : nothing}
      </p>
      ${understanding?.derived.length ? html`<p class="hint" id="paste-derived">${derivedText(understanding)}</p>` : nothing}
      ${
        status === 'unfetched'
          ? html`<div role="alert">
              <p class="problem">${NAMES.unfetched}</p>
              ${renderButton(NAMES.retry, () => void this.#state.read())}
            </div>`
          : nothing
      }
      ${status === 'fault' ? html`<p class="problem" role="alert">${NAMES.fault} ${this.#state.fault}</p>` : nothing}
      ${understanding ? this.#renderUnderstanding(understanding) : nothing}
      <div class="buttons">${
        understanding
          ? renderTake(understanding, this.#app, {
              isAsking: this.#isAsking,
              hasWrong: this.#state.hasWrong,
              onAsk: (isAsking) => this.#ask(isAsking),
              onTake: (how) => this.#take(understanding, how),
              onClose: this.#close,
            })
          : renderButton(NAMES.close, this.#close)
      }</div>`;
  }

  #renderUnderstanding(understanding: Understanding): TemplateResult {
    const display = this.#app.display;
    const { mended } = this.#state;
    const panel = this.#panel;
    return html`${understanding.problems.map((problem) => html`<p class="problem">${sheetProblem(problem, understanding)}</p>`)}
      ${renderQuantity(this.#state)} ${renderQuestions(this.#state, display)} ${renderZero(this.#app.zero)} ${renderSetNames(this.#state)} ${renderUnread(understanding, display, (r, c) => this.#openPanel([r, c]))}
      ${
        panel === undefined
          ? nothing
          : typeof panel === 'number'
            ? renderColumnPanel(panel, understanding, this.#state, this.#closePanel)
            : renderCellPanel(panel, understanding, this.#state, display, this.#closePanel)
      }
      ${this.#state.isTurned ? html`<p class="hint">${NAMES.turned}</p>` : nothing}
      ${guard([understanding, this.#rows, panel, display.units, display.language], () =>
        renderPreview({
          understanding,
          display,
          mended,
          most: this.#rows,
          open: typeof panel === 'number' ? panel : undefined,
          onColumn: (column) => this.#openPanel(column),
          onCell: (row, column) => this.#openPanel([row, column]),
          onMore: () => {
            this.#rows += MORE_ROWS;
            this.#focus('.preview');
          },
        }),
      )}`;
  }

  #ask(isAsking: boolean): void {
    this.#isAsking = isAsking;
    this.#focus(isAsking ? '.buttons .button' : '#paste-take');
  }

  #take(understanding: Understanding, how: TakeHow): void {
    takeReadings(understanding, this.#app, how);
    this.#state.clear();
    this.#close();
    void focusSentence(this.#app.host, true);
    this.#app.announcer.announce(takenText(understanding, how));
  }

  #replace(text: string, focus?: string): void {
    this.#panel = undefined;
    this.#isAsking = false;
    this.#rows = FIRST_ROWS;
    this.#state.setText(text, true);
    if (focus) this.#focus(focus);
  }

  readonly #typed = (event: Event): void => {
    const { value } = event.target as HTMLTextAreaElement;
    this.#fileProblem = '';
    const isPasted = (event as InputEvent).inputType === 'insertFromPaste';
    this.#isAsking = false;
    if (isPasted && !this.#state.text.trim()) this.#replace(value, '#paste-summary');
    else this.#state.setText(value, isPasted);
  };

  readonly #chose = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    // The same file can be chosen again, after it was changed.
    input.value = '';
    void this.#openFile(file);
  };

  async #openFile(file: File | undefined): Promise<void> {
    if (!file) return;
    let problem = '';
    try {
      const text = await textOf(file);
      if (isText(text)) return this.open(text);
      problem = NAMES.noText(file.name);
    } catch {
      problem = NAMES.noFile;
    }
    this.open();
    this.#fileProblem = problem;
    this.#app.host.requestUpdate();
  }

  #openPanel(panel: number | readonly [number, number]): void {
    const same = panel === this.#panel;
    this.#panel = same ? undefined : panel;
    if (!same) this.#focus('#panel-first');
    else this.#app.host.requestUpdate();
  }

  readonly #closePanel = (): void => {
    const panel = this.#panel;
    this.#panel = undefined;
    this.#focus(typeof panel === 'number' ? `#head-${panel}` : `#cell-${panel?.join('-')}`);
  };

  /** After the next rendering; where that is gone, the line that sums up. */
  #focus(selector: string): void {
    this.#app.host.requestUpdate();
    void this.#app.host.updateComplete.then(() => {
      const dialog = this.#dialog.value;
      const found =
        dialog?.querySelector<HTMLElement>(selector) ?? dialog?.querySelector<HTMLElement>('#paste-summary');
      found?.focus({ preventScroll: selector === '#paste-title' });
    });
  }

  readonly #close = (): void => this.#dialog.value?.close();

  readonly #closed = (): void => {
    this.#isOpen = false;
    this.#panel = undefined;
    this.#isAsking = false;
    this.#rows = FIRST_ROWS;
    this.#app.host.requestUpdate();
  };

  readonly #outside = (event: MouseEvent): void => {
    if (event.target === this.#dialog.value) this.#close();
  };
}
