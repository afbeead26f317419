import { html, type TemplateResult } from 'lit';
import { LateFile } from '../element/late-file.js';
import type { SheetView } from '../element/sheet-view.js';
import { withWords } from '../words/fetch-words.js';
import type { TakeAlongThings } from './savable.js';
import { SLOT } from './slot.labels.js';
import type { TakeAlong } from './take-along.js';

/** The fold that what is taken along stands in: what is in it comes when it is opened. */
export class TakeAlongSlot {
  readonly #things: TakeAlongThings;
  readonly #file: LateFile;
  #inside: TakeAlong | undefined;
  #isWanted = false;

  constructor(view: SheetView, things: TakeAlongThings) {
    this.#things = things;
    this.#file = new LateFile(
      async () => {
        const { TakeAlong, takeAlongStyles } = await withWords(import('./take-along.js'), 'dialogs');
        view.addStyles(takeAlongStyles);
        this.#inside = new TakeAlong(view, things);
      },
      () => view.host.requestUpdate(),
    );
  }

  /** Resolves when it has come, where it is wanted. */
  get settled(): Promise<unknown> {
    return Promise.resolve(this.#isWanted && this.#file.get()).then(() => this.#inside?.settled);
  }

  /** Fetches again what did not come. */
  retry(): void {
    if (this.#isWanted) void this.#file.get();
  }

  render(): TemplateResult {
    const { pictures, restsOn } = this.#things;
    const isRead = restsOn.sets.length > 0;
    const title = pictures.length === 0 ? 'readings' : isRead ? 'both' : 'pictures';
    const opened = ({ target }: Event) => {
      this.#isWanted ||= (target as HTMLDetailsElement).open;
      this.retry();
    };
    return html`<details class="take-along" @toggle=${opened}>
      <summary>${SLOT[title]}</summary>
      ${this.#inside?.render() ?? html`<p class="note">${this.#file.state === 'lost' ? SLOT.lost : SLOT.coming}</p>`}
    </details>`;
  }
}
