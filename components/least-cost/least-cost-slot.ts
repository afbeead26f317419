import { html, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import { inOwnTask } from '../element/after-paint.js';
import { LateFile } from '../element/late-file.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { withWords } from '../words/fetch-words.js';
import type { LeastCostPanel } from './least-cost-panel.js';
import type { LeastCostView, TurnOf } from './least-cost-question.js';
import { SLOT } from './slot.labels.js';

/** Where the panel stands under an element about links: it comes when the first answer is there. */
export class LeastCostSlot {
  readonly #file: LateFile;
  #panel: LeastCostPanel | undefined;
  #sheetOf: ((key: string) => SheetSpec | undefined) | undefined;
  #coming: Promise<void> | undefined;

  readonly #view: LeastCostView;

  /**
   * @param turnOf the turn of a car; its roll is held where nothing makes it
   * @param isOwn whether what is wrong with a typed figure is told here
   */
  constructor(view: LeastCostView, turnOf: TurnOf, isOwn: (problem: Problem) => boolean) {
    this.#view = view;
    this.#file = new LateFile(
      async () => {
        const { LeastCostPanel, leastCostSheet, leastCostStyles } = await withWords(
          import('./least-cost-panel.js'),
          'dialogs',
        );
        view.addStyles(leastCostStyles);
        this.#sheetOf = leastCostSheet;
        this.#panel = new LeastCostPanel(view, turnOf, isOwn);
      },
      () => view.host.requestUpdate(),
    );
    this.#coming = new Promise((resolve) => inOwnTask(() => void this.#file.get().then(resolve)));
  }

  get settled(): Promise<unknown> {
    return (this.#coming ?? Promise.resolve()).then(() => this.#panel?.settled);
  }

  /** What is wrong with values that are asked here, each by itself. */
  get valueProblems(): readonly Problem[] {
    return this.#panel?.valueProblems ?? [];
  }

  sheetOf(key: string): SheetSpec | undefined {
    return this.#sheetOf?.(key);
  }

  /** Fetches again what did not come, and asks again what came to a fault. */
  retry(): void {
    if (this.#panel) this.#panel.retry();
    else this.#coming = this.#file.get();
  }

  render(onShow: (key: string) => void): TemplateResult {
    const isLost = this.#file.state === 'lost';
    // Open where it answers something.
    return html`<details class="least-cost" ?open=${this.#view.car.turn?.wanted !== undefined}>
      <summary>${SLOT.title}</summary>
      <p class="note">${SLOT.intro}</p>
      ${this.#panel ? this.#panel.render(onShow) : html`<p class="note">${isLost ? SLOT.lost : SLOT.coming}</p>`}
    </details>`;
  }
}
