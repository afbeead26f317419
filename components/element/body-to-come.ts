import type { LitElement } from 'lit';
import type { adoptedStyles } from '../theme/adopted-styles.js';
import { withWords } from '../words/fetch-words.js';
import { type Coming, LateFile } from './late-file.js';
import { nextTask } from './next-task.js';
import type { OutOfSight } from './out-of-sight.js';
import type { LateBody } from './sheet-frame.js';
import type { SheetHost } from './sheet-view.js';

/** What lies under the sentence: fetched when the first answer is under way, made when the element is near, and shown a task later. */
export class ComingBody {
  /** That is shown. */
  body: LateBody | undefined;
  readonly #host: LitElement & Pick<SheetHost, 'speak' | 'words'>;
  readonly #addStyles: ReturnType<typeof adoptedStyles>;
  readonly #outOfSight: OutOfSight;
  readonly #file: LateFile;
  #new: (() => LateBody) | undefined;
  /** Before it is shown: making it and drawing it would hold the thread together. */
  #made: LateBody | undefined;
  #showing: Promise<void> | undefined;

  /** @param load fetches it, and says how it is made */
  constructor(
    host: LitElement & Pick<SheetHost, 'speak' | 'words'>,
    addStyles: ReturnType<typeof adoptedStyles>,
    outOfSight: OutOfSight,
    load: () => Promise<() => LateBody>,
  ) {
    this.#host = host;
    this.#addStyles = addStyles;
    this.#outOfSight = outOfSight;
    const fetch = async () => {
      this.#new = await withWords(load(), 'late', `${host.words}/late`);
      this.#showing = this.#outOfSight.first.then(async () => {
        this.#make();
        await nextTask();
        this.show();
      });
    };
    this.#file = new LateFile(fetch, () => host.requestUpdate());
  }

  get state(): Coming {
    return this.#file.state;
  }

  /** Resolves when its file has come or counts as lost. */
  fetched(): Promise<void> {
    return this.#file.get();
  }

  /** Resolves when it is shown, near as the element is by then, or when its file counts as lost. */
  async shown(): Promise<void> {
    await this.#outOfSight.first;
    await this.#file.get();
    await this.#showing;
    if (this.body) await this.#host.updateComplete;
  }

  /** With its styles at once: a body that is made puts parts of its own into the sentence. */
  #make(): void {
    this.#host.speak();
    this.#made ??= this.#new?.();
    if (this.#made) this.#addStyles(...this.#made.styles);
  }

  /** Shows it, if its file has come, wherever the element is. */
  show(): void {
    this.#make();
    if (this.body || !this.#made) return;
    this.body = this.#made;
    const inside = this.#host.renderRoot.querySelector<HTMLElement>('.inside');
    if (inside) this.body.enter(inside);
    this.#host.requestUpdate();
  }

  /** Fetches again what did not come. */
  retry(): void {
    this.body?.retry?.();
    if (this.state === 'lost') void this.#file.get();
  }
}
