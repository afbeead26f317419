import { type CSSResultGroup, html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import { shownName } from '../car/shown-names.words.js';
import { renderCautionList } from './caution-list.js';
import { SHARED } from './first.words.js';
import { FIRST_CAUTIONS, GENERAL_CAUTIONS } from './first-cautions.js';
import type { Coming } from './late-file.js';
import type { OnceAPage } from './once-a-page.js';
import type { SheetView } from './sheet-view.js';
import { shownOf } from './shown.js';

/** What lies under the sentence and comes later. */
export interface LateBody {
  readonly styles: readonly CSSResultGroup[];
  readonly notes: Problem[];
  /** Resolves when what comes late of it has come. */
  readonly settled: Promise<unknown>;
  /** Resolves when nothing of it waits for a frame any more. */
  readonly painted: Promise<void>;
  render(): TemplateResult;
  renderTools(): TemplateResult;
  renderSheet?(): TemplateResult | typeof nothing;
  /** It will be in the next rendering, inside of this. */
  enter(inside: HTMLElement): void;
  /** The next rendering is whole. */
  hurry(): void;
  /** It is printed. */
  print?(): void;
  /** Fetches again what did not come of it. */
  retry?(): void;
}

/** What of a sheet's frame is its element's own. */
export interface SheetFrame {
  title: string;
  /** The corner it is about, and whose numbers these are. */
  corner: string;
  owner: string;
  sentence: TemplateResult;
  /** Under the sentence: what the answer is not. */
  caution: 'predicted' | 'clearByHand';
  /** What can hurt somebody who does what this element is about; each once. */
  hazards: readonly string[];
}

/** Should what came late throw, the sentence and its caution stand all the same, and the reader is told. */
function safely<T>(render: () => T): T | TemplateResult {
  try {
    return render();
  } catch (error) {
    console.error('Bumpline: a part could not be drawn.', error);
    return html`<p class="queries" role="alert">${SHARED.undrawn}</p>`;
  }
}

/** Whether the page says anything inside an element that a reader sees. */
const hasWords = (host: HTMLElement): boolean =>
  [...host.childNodes].some(
    (node) => !(node instanceof HTMLScriptElement || node instanceof Comment) && node.textContent?.trim(),
  );

/**
 * The frame of every sheet: head, sentence with its caution, what comes later, and at its end the element's own hazards, which wait for
 * nothing that comes later; until there is an answer, and where the page's own data cannot be read, the page's own words and no number of
 * another car. Ours run from left to right on every page,
 * because a minus stands before its figure; the page's own stand outside, in its own direction and type.
 */
export function renderFrame(
  {
    state,
    answer,
    isUnread,
    announcer,
    model,
    host,
  }: Pick<SheetView, 'state' | 'answer' | 'isUnread' | 'announcer' | 'model' | 'host'>,
  { title, corner, owner, sentence, caution, hazards }: SheetFrame,
  late: LateBody | Coming,
  general: Pick<OnceAPage, 'isFirst'>,
): TemplateResult {
  const body = typeof late === 'string' ? undefined : late;
  const sign = late === 'slow' || late === 'lost' ? SHARED[late] : undefined;
  const hasAnswer = answer !== undefined;
  const isWaiting = state === 'waiting' && !model.address?.isLinked;
  const isEmpty = isUnread || isWaiting || (state === 'fault' && !hasAnswer);
  // Where only a part is shown they are folded: an element that says them openly goes before.
  const isCompact = shownOf(host.show) !== undefined;
  const isGeneral = general.isFirst(!isEmpty && !isCompact) || isCompact;
  // Words that say the answer already are not pushed down by a line that only promises it.
  if (isWaiting && sign === undefined && model.undoLabel === undefined && hasWords(host)) return html`<slot></slot>`;
  // The announcer first: it is the one that speaks, whatever else has a status.
  return html`<div class="inside" dir="ltr" lang=${host.spokenLanguage}>
    ${announcer.render()}
    <article class="sheet ${isCompact ? 'is-compact' : ''} ${body || sign !== undefined ? '' : 'is-coming'}" part="sheet" data-state=${state} aria-label=${title}>
      <header class="head" part="head">
        <p><b>${shownName(corner)}</b> · <span class="owner">${isUnread ? SHARED.unread : owner}</span></p>
        ${safely(() => body?.renderTools()) ?? html`<span class="tools-room"></span>`}
      </header>
      ${sentence} ${hasAnswer ? html`<p class="cautions first" role="note">${FIRST_CAUTIONS[caution]}</p>` : nothing}
      ${sign === undefined ? nothing : html`<p class="late" role="status">${sign}</p>`}
      ${safely(() => body?.render()) ?? nothing}
      ${!isEmpty && !isCompact && !body && late !== 'lost' ? html`<div class="body-room"></div>` : nothing}
      ${isEmpty ? nothing : renderCautionList([...new Set([...hazards, ...(isGeneral ? GENERAL_CAUTIONS : [])])], `${SHARED.cautions}: ${title}`, isCompact ? SHARED.beforeWork : undefined)}
    </article>
    ${safely(() => body?.renderSheet?.()) ?? nothing}
  </div>
  ${isEmpty ? html`<slot></slot>` : nothing}`;
}
