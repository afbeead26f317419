import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, withDrop } from '../../core/document/car.js';
import { fitSetup } from '../../core/document/setup-in-use.js';
import { withToe } from '../../core/document/toe-settings.js';
import { leadsToPage } from '../element/leads-to-page.js';
import { LABELS } from './bumpline-compare.labels.js';
import { cellName } from './bumpline-compare.words.js';
import type { CompareView } from './compare-view.js';

/** The way on to a page that tells why a wheel steers itself and what flattens it, with the cell's height and parts in hand. */
export class ToeLink {
  readonly #view: CompareView;
  #address: typeof import('../car/address.js') | undefined;
  #isAsked = false;
  /** Resolves when the link leads there with the car. */
  settled: Promise<void> = Promise.resolve();

  constructor(view: CompareView) {
    this.#view = view;
  }

  /** Where the page says which page that is, and the cell has toe. */
  render(): TemplateResult | typeof nothing {
    const { host, cells, answer, display } = this.#view;
    const { toePage } = host;
    const { curve, height } = cells.to;
    if (!toePage || !leadsToPage(toePage) || !answer?.comparison.cells[curve]?.[height]?.toeChange) return nothing;
    if (!this.#isAsked) this.settled = this.#fetch();
    this.#isAsked = true;
    const drop = answer.request.heights[height]!;
    const name = cellName(cells.to, { names: answer.names, heights: answer.request.heights }, display);
    const href = this.#address?.linkInto(toePage, this.#carAt(curve, drop)) ?? toePage;
    return html`<p class="toe-link"><a href=${href}>${LABELS.costs.toeLink(name)}</a></p>`;
  }

  #carAt(curve: number, drop: number): CarDocument {
    const { car, compared } = this.#view;
    const setup = compared.rows[curve]?.setup;
    const index = setup ? (car.setups ?? []).indexOf(setup) : -1;
    // What was tried with other parts says nothing of these, and readings of toe nothing of links.
    const bare = withToe(car, { from: 'links', amount: undefined, rack: undefined });
    return withDrop(fitSetup(bare, index < 0 ? undefined : index), drop);
  }

  async #fetch(): Promise<void> {
    try {
      this.#address = await import('../car/address.js');
      this.#view.host.requestUpdate();
    } catch {
      // The page is reached without the car.
    }
  }
}
