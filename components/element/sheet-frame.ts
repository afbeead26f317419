import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import type { Announcer } from '../shared/announce.js';
import { FIRST_CAUTIONS } from '../shared/first-cautions.js';

/** What lies under the sentence and comes later. */
export interface LateBody {
  readonly notes: Problem[];
  /** Resolves when what comes late of it has come. */
  readonly settled: Promise<unknown>;
  render(): TemplateResult;
  renderTools(): TemplateResult;
  renderSheet?(): TemplateResult | typeof nothing;
}

export interface SheetFrame {
  state: string;
  title: string;
  /** The corner it is about, and whose numbers these are. */
  corner: string;
  owner: string;
  /** The page's own data cannot be read or makes no answer: its words stand, and no number of another car. */
  isUnread: boolean;
  hasAnswer: boolean;
  sentence: TemplateResult;
  caution: keyof typeof FIRST_CAUTIONS;
  body: LateBody | undefined;
  announcer: Announcer;
}

/** Shown where the owner of the numbers would be. */
const UNREAD = 'this page’s data cannot be read';

/** Should what came late throw, the sentence and its caution stand all the same, and the reader is told. */
function safely<T>(render: () => T): T | TemplateResult {
  try {
    return render();
  } catch (error) {
    console.error('Bumpline: a part could not be drawn.', error);
    return html`<p class="queries" role="alert">A part of this could not be drawn. That is our fault; your numbers are kept.</p>`;
  }
}

/** The frame of every sheet: head, sentence with its caution, then what comes later; until there is an answer the page's own words. */
export function renderFrame(frame: SheetFrame): TemplateResult {
  const { state, title, corner, owner, isUnread, hasAnswer, sentence, caution, body, announcer } = frame;
  const isEmpty = isUnread || state === 'waiting' || (state === 'fault' && !hasAnswer);
  return html`<article class="sheet" data-state=${state} aria-label=${title}>
      <header class="head">
        <p><b>${corner}</b> · <span class="owner">${isUnread ? UNREAD : owner}</span></p>
        ${safely(() => body?.renderTools()) ?? html`<span class="tools-room"></span>`}
      </header>
      ${sentence} ${hasAnswer ? html`<p class="cautions first" role="note">${FIRST_CAUTIONS[caution]}</p>` : nothing}
      ${safely(() => body?.render()) ?? nothing} ${isEmpty ? html`<slot></slot>` : nothing}
    </article>
    ${safely(() => body?.renderSheet?.()) ?? nothing} ${announcer.render()}`;
}
