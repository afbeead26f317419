import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Setup } from '../../core/document/setup.js';
import { DEFAULT_DOUBTS, DOUBT_KEYS, type ReadingDoubts } from '../../core/readings/doubts.js';
import { type DoubtKey, doubtFields, doubtsText, doubtText } from '../element/doubts.words.js';
import { type Display, lower } from '../element/sentence.js';
import type { Drafts } from './drafts.js';
import { NAMES } from './inputs.labels.js';

export interface InstrumentsOptions {
  setup: Setup;
  drafts: Drafts;
  display: Display;
  /** Before the name of each field in drafts and problems. */
  path: string;
  onSet: (label: string, recipe: (setup: Setup) => Setup) => void;
  /** A text was left that says nothing yet. */
  onText: () => void;
}

/** The set with one of them said, or left to the default. */
export function withDoubt(setup: Setup, key: DoubtKey, plusMinus: number): Setup {
  const { doubts: { [key]: _, ...others } = {}, ...rest } = setup;
  const doubts: ReadingDoubts = plusMinus === DEFAULT_DOUBTS[key] ? others : { ...others, [key]: plusMinus };
  return Object.keys(doubts).length > 0 ? { ...rest, doubts } : rest;
}

/** Forgets what was typed for a set that is no longer the one under this path: it would stand in the fields of another. */
export function forgetInstruments(drafts: Drafts, path: string): void {
  for (const key of DOUBT_KEYS) drafts.drop(path + key);
}

/** How far the instruments of one set can be trusted: folded, as most leave it as it is. */
export function renderInstruments(options: InstrumentsOptions): TemplateResult {
  const { setup, display } = options;
  return html`<details class="instruments">
    <summary>${NAMES.instruments}: ${doubtsText(setup.doubts, display)}</summary>
    <p class="note">${NAMES.instrumentsNote}</p>
    ${DOUBT_KEYS.map((key) => renderField(key, options))}
  </details>`;
}

function renderField(
  key: DoubtKey,
  { setup, drafts, display, path, onSet, onText }: InstrumentsOptions,
): TemplateResult {
  const { label, quantity, hint } = doubtFields()[key];
  const at = `${path}${key}`;
  const stated = setup.doubts?.[key] ?? DEFAULT_DOUBTS[key];
  const left = ({ target }: Event) => {
    const text = (target as HTMLInputElement).value;
    // An emptied field is what stands there by itself.
    const plusMinus = text.trim() === '' ? DEFAULT_DOUBTS[key] : drafts.type(at, text, quantity, display.units);
    if (text.trim() === '') drafts.drop(at);
    else drafts.leave(at, quantity, display.units);
    if (plusMinus !== undefined && plusMinus !== stated) onSet(lower(label), (set) => withDoubt(set, key, plusMinus));
    onText();
  };
  return html`<label class="instrument">
    <span>${label}</span>
    <input
      class="text"
      type="text"
      inputmode="decimal"
      autocomplete="off"
      .value=${live(drafts.text(at) ?? doubtText(key, stated, display))}
      aria-invalid=${drafts.problem(at) ? 'true' : 'false'}
      @change=${left}
    />
    <small>${hint}</small>
  </label>`;
}
