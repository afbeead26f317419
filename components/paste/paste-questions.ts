import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Parsed } from '../../core/quantity/parse.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import type { SheetQuestion, Understanding } from '../../core/readings/table/understanding.js';
import type { Display } from '../element/sentence.js';
import { cellsText, NAMES } from './paste.labels.js';
import { cellProblem, choiceName, hintOf, lengthName, questionText } from './paste.words.js';
import { setNameLabel } from './paste-sets.words.js';
import type { PasteState } from './paste-state.js';
import type { ZeroQuestion } from './readings-host.js';
import { ZERO } from './zero.words.js';

/** What the sheet leaves open, each with its answers as buttons; the one that counts meanwhile says so. */
export function renderQuestions(state: PasteState, display: Display): TemplateResult | typeof nothing {
  const { understanding } = state;
  if (!understanding?.questions.length) return nothing;
  return html`<ol class="questions" aria-label=${NAMES.questions}>
    ${understanding.questions.map((question) => html`<li>${renderQuestion(question, understanding, state, display)}</li>`)}
  </ol>`;
}

/** Of which angle the sheet is, where either is taken. */
export function renderQuantity(state: PasteState): TemplateResult | typeof nothing {
  const { understanding, takesEither } = state;
  if (!understanding || !takesEither) return nothing;
  return html`<div class="choices which" role="group" aria-label=${NAMES.ofWhich}>
    <span>${NAMES.ofWhich}</span>
    ${(['camber', 'toe'] as const).map((one) => renderAnswer(NAMES[one], false, one === understanding.quantity, () => state.sayQuantity(one)))}
  </div>`;
}

/** Names for sets that the sheet does not name: a field each, where they stand in columns of their own. */
export function renderSetNames(state: PasteState): TemplateResult | typeof nothing {
  const { columns = [], sets = [] } = state.understanding ?? {};
  if (sets.length < 2) return nothing;
  const fields = sets.map(({ name }, i) => {
    const at = columns.flatMap((column, c) => (column.role !== 'derived' && column.set === name ? [c] : []));
    const isSaid = at.some((c) => state.said(c)?.set !== undefined);
    return { at, name: isSaid ? name : '', isOpen: isSaid || name === `Set ${i + 1}`, fallback: name };
  });
  if (!fields.some(({ isOpen, at }) => isOpen && at.length > 0)) return nothing;
  return html`<div class="set-names">
    ${fields.map(({ at, name, isOpen, fallback }) =>
      isOpen && at.length > 0
        ? html`<label>
            <span>${setNameLabel(at)}</span>
            <input class="text words" autocomplete="off" maxlength="60" placeholder=${fallback} .value=${live(name)}
              @change=${(event: Event) => state.nameSet(at, (event.target as HTMLInputElement).value.trim())} />
          </label>`
        : nothing,
    )}
  </div>`;
}

function renderQuestion(
  question: SheetQuestion,
  understanding: Understanding,
  state: PasteState,
  display: Display,
): TemplateResult {
  const { id, code, cells, choices } = question;
  const hint = hintOf(question, understanding);
  return html`<div role="group" aria-labelledby="question-${id}">
    <p id="question-${id}">
      ${questionText(question, understanding)}
      ${code === 'comma' || code === 'minutes' || code === 'unit' ? html`<small>${cellsText(cells)}</small>` : nothing}
    </p>
    ${hint ? html`<p class="hint">${hint}</p>` : nothing}
    <div class="choices">
      ${
        choices.length > 0
          ? choices.map((choice, index) => {
              const isChosen = choice.id === question.chosen;
              return renderAnswer(
                choiceName(question, index, understanding, display),
                isChosen,
                isChosen && question.isAnswered,
                () => state.answer(id, choice.id),
              );
            })
          : renderNumber(question, state, { ...display, units: unitsOf(question, understanding, display) })
      }
    </div>
  </div>`;
}

/** From where heights are counted: no sheet says it, and a shift by the drop is a part that seems to do something else. */
export function renderZero(zero: ZeroQuestion | undefined): TemplateResult | typeof nothing {
  if (!zero) return nothing;
  const { choices, chosen, isAnswered, choose } = zero;
  return html`<div role="group" class="zero-question" aria-labelledby="question-from">
    <p id="question-from">${ZERO.ask}</p>
    <p class="hint">${ZERO.hint}</p>
    <div class="choices">
      ${choices.map(({ at, name }) => renderAnswer(name, at === chosen, at === chosen && isAnswered, () => choose(at)))}
    </div>
  </div>`;
}

const renderAnswer = (name: string, isChosen: boolean, isAnswered: boolean, onAnswer: () => void): TemplateResult =>
  html`<button type="button" class="button answer" aria-pressed=${isAnswered} ?data-chosen=${isChosen} @click=${onAnswer}>
    ${isAnswered ? html`<span aria-hidden="true">✓ </span>` : nothing}${name}${
      isChosen && !isAnswered ? html` <small>${NAMES.assumed}</small>` : nothing
    }
  </button>`;

/** A number is asked for in the sheet's own unit: the eye is on the sheet. */
function unitsOf({ cells }: SheetQuestion, { columns }: Understanding, { units }: Display): UnitSystem {
  const unit = columns[cells[0]?.[1] ?? -1]?.unit;
  return unit === undefined ? units : { ...units, length: unit === 'in' || unit === 'thou' ? 'in' : 'mm' };
}

/** A length: the likeliest as a button, any other in a field. */
function renderNumber(question: SheetQuestion, state: PasteState, { units, language }: Display): TemplateResult {
  const { id, chosen, isAnswered, range, isGuess } = question;
  const draft = state.drafts.get(id);
  const formatted =
    chosen === undefined ? undefined : formatQuantity(Number(chosen), 'coordinate', units, { language });
  const read = (text: string): Parsed => {
    const found = state.reader!.parseQuantity(text, 'coordinate', units, id);
    if (!range) return found;
    const [least, most] = range;
    if (!found.ok) {
      const { limit } = found.problem;
      return limit === undefined
        ? found
        : { ok: false, problem: { ...found.problem, limit: limit < least ? least : most } };
    }
    const { value } = found;
    if (value >= least && value <= most) return found;
    return { ok: false, problem: { code: 'out-of-range', path: id, value, limit: value < least ? least : most } };
  };
  const parsed = draft?.isDone ? read(draft.text) : undefined;
  const problem = parsed && !parsed.ok ? parsed.problem : undefined;
  /** A figure counts as soon as it is one; what is wrong with it is told once it is typed out. */
  const settle = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    const found = read(text);
    state.type(id, text, found.ok ? String(found.value) : undefined, event.type === 'change');
  };
  const take = (event: Event) => {
    const field = (event.currentTarget as Element).parentElement!.querySelector('input');
    state.answer(id, chosen!);
    // The button is gone once it is pressed.
    field?.focus();
  };
  return html`${
    formatted && !isAnswered && !isGuess
      ? html`<button type="button" class="button answer" data-chosen @click=${take}>${formatted.text} <small>${NAMES.assumed}</small></button>`
      : nothing
  }
    <span class="entry-box">
      <input
        class="text"
        id="answer-${id}"
        autocomplete="off"
        inputmode=${units.length === 'mm' ? 'decimal' : nothing}
        placeholder=${formatted && !isAnswered && !isGuess ? NAMES.other : nothing}
        aria-labelledby="question-${id}"
        aria-invalid=${problem ? 'true' : nothing}
        aria-describedby=${problem ? `wrong-${id}` : nothing}
        .value=${live(draft?.text ?? (isAnswered && formatted ? formatted.value : ''))}
        @input=${settle}
        @change=${settle}
      /><span class="unit" aria-hidden="true">${units.length}</span>
    </span>
    ${problem ? html`<p class="problem" id="wrong-${id}">${cellProblem(lengthName(question), problem, 'coordinate', { units, language })}</p>` : nothing}`;
}
