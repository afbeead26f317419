/** What a canvas draws with, by meaning: what the theme's private properties come to on this page, now. */
const NAMES = ['ink', 'soft', 'hair', 'paper', 'now', 'before', 'limit'] as const;
export type ChartColours = Record<(typeof NAMES)[number], string> & { family: string };

/** What of the reader's settings changes colours. */
const WATCHED = ['prefers-color-scheme:dark', 'forced-colors:active', 'prefers-contrast:more'];

/**
 * Reads colours and type off an element's own style, and again whenever they become others: by the page's scheme or its author's
 * properties, the reader's theme, forced colours, more contrast, paper.
 */
export class ChartColourReader {
  readonly #probes: Record<(typeof NAMES)[number], HTMLElement>;
  readonly #place: HTMLElement;
  readonly #queries = [...WATCHED.map((query) => matchMedia(`(${query})`)), matchMedia('print')];
  readonly #changed: () => void;
  #last = '';

  /** @param place in the element's shadow, in its styles */
  constructor(place: HTMLElement, changed: () => void) {
    this.#place = document.createElement('span');
    this.#place.className = 'chart-probes';
    this.#place.setAttribute('aria-hidden', 'true');
    this.#probes = Object.fromEntries(
      NAMES.map((name) => {
        const probe = document.createElement('i');
        probe.className = name;
        this.#place.append(probe);
        return [name, probe];
      }),
    ) as Record<(typeof NAMES)[number], HTMLElement>;
    place.append(this.#place);
    this.#changed = changed;
    this.#last = JSON.stringify(this.read());
    // A probe's colour is let over in a moment: what changes it, whatever it is, is told by that.
    this.#place.addEventListener('transitionend', this.#look);
    for (const query of this.#queries) query.addEventListener('change', this.#look);
  }

  destroy(): void {
    for (const query of this.#queries) query.removeEventListener('change', this.#look);
    this.#place.remove();
  }

  read(): ChartColours {
    const found = NAMES.map((name) => [name, getComputedStyle(this.#probes[name]).color]);
    return { ...Object.fromEntries(found), family: getComputedStyle(this.#place).fontFamily } as ChartColours;
  }

  readonly #look = (): void => {
    const now = JSON.stringify(this.read());
    if (now === this.#last) return;
    this.#last = now;
    this.#changed();
  };
}
