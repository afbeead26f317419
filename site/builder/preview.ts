import type { SnippetTag } from '../../components/publish/snippet.js';
import { BUILDER } from './builder.words.js';
import type { Host } from './choices.js';
import { nameOf } from './options.js';
import type { Previewed } from './said.js';

/* A page of somebody else's, made in a frame: what is pasted there has no style sheet, no script and no width of this page. */

/** How those pages look. */
const STYLES: Readonly<Record<Host, string>> = {
  plain: 'body { margin: 20px; background: #fff; color: #222; font: 17px/1.6 Georgia, serif }',
  narrow: 'body { margin: 12px; background: #fff; color: #222; font: 15px/1.5 Arial, sans-serif }',
  dark: ':root { color-scheme: dark } body { margin: 20px; background: #14171c; color: #e6e3dc; font: 17px/1.6 system-ui, sans-serif }',
};

const SCRIPT = '../embed/bumpline-standalone.js';
/** A pause in typing after which the preview follows, ms. */
const PAUSE_MS = 400;
const LEAST_PX = 160;

const pageOf = (host: Host): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${BUILDER.previewOf(BUILDER.hosts[host])}</title><style>${STYLES[host]}</style><script type="module" src="${SCRIPT}"></script></head><body><p>${BUILDER.before}</p><div id="here"></div><p>${BUILDER.after}</p></body></html>`;

/** What came of a preview. */
export interface Shown {
  element: Previewed;
  /** That it takes, px. */
  height: number;
}

/** One page with the snippet on it; made anew for another kind of page, and changed in place for everything else. */
export class Preview {
  readonly #frame: HTMLIFrameElement;
  readonly #onShown: (shown: Shown) => void;
  #host: Host | undefined;
  #html = '';
  #isLoaded = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #tag: SnippetTag = 'bumpline-lowering';
  #round = 0;

  /** @param onShown called when what is shown has its answer */
  constructor(frame: HTMLIFrameElement, onShown: (shown: Shown) => void) {
    this.#frame = frame;
    this.#onShown = onShown;
    frame.addEventListener('load', () => {
      this.#isLoaded = this.#host !== undefined;
      this.#follow();
      this.#put();
    });
  }

  show(host: Host, tag: SnippetTag, html: string): void {
    this.#tag = tag;
    const isOther = html !== this.#html;
    this.#html = html;
    if (host !== this.#host) {
      this.#host = host;
      this.#isLoaded = false;
      this.#frame.className = host;
      this.#frame.title = BUILDER.previewOf(BUILDER.hosts[host]);
      this.#frame.srcdoc = pageOf(host);
    } else if (isOther) {
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => this.#put(), PAUSE_MS);
    }
  }

  #put(): void {
    const place = this.#page?.getElementById('here');
    if (!this.#isLoaded || !place) return;
    place.innerHTML = this.#html;
    void this.#tell(++this.#round);
  }

  get #page(): Document | null {
    return this.#frame.contentDocument;
  }

  /** As high as what stands in it: nobody scrolls twice. */
  #follow(): void {
    const root = this.#page?.body;
    if (!root) return;
    const { ResizeObserver: Observer } = this.#frame.contentWindow as unknown as typeof globalThis;
    new Observer(() => {
      setTimeout(() => {
        this.#frame.style.height = `${Math.max(LEAST_PX, Math.ceil(root.getBoundingClientRect().height) + 40)}px`;
      });
    }).observe(root);
  }

  async #tell(round: number): Promise<void> {
    const view = this.#frame.contentWindow as unknown as typeof globalThis;
    await view.customElements.whenDefined(this.#tag);
    // A div has its element once the script has come.
    await new Promise((resolve) => setTimeout(resolve));
    const element = this.#page?.querySelector<Previewed>(this.#tag);
    if (!element) return;
    await element.settled;
    if (round === this.#round) this.#onShown({ element, height: element.offsetHeight });
  }
}

/** Of the page that an element is on, what its frame is called. */
export const titleOf = (tag: SnippetTag): string => BUILDER.titles[nameOf(tag) as keyof typeof BUILDER.titles];
