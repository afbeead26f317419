import { html, nothing, type TemplateResult } from 'lit';
import { MOST_SETUPS, ownSetups } from '../../core/document/setup-in-use.js';
import { type TakeHow, takeSets } from '../../core/document/take-sets.js';
import { MOST_READINGS } from '../../core/readings/reading.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { NAMES } from './paste.labels.js';
import { assumption, assumptionsText, haveText, takeText } from './paste.words.js';
import type { ReadingsHost } from './readings-host.js';

export interface TakeOptions {
  /** The user has own readings and is asked what becomes of them. */
  isAsking: boolean;
  /** What was typed as an answer is none. */
  hasWrong: boolean;
  onAsk: (isAsking: boolean) => void;
  onTake: (how: TakeHow) => void;
  onClose: () => void;
}

const hasOwn = ({ isOwn, setup, keepsAll }: ReadingsHost): boolean => isOwn && setup.readings.length > 0 && !keepsAll;

export const renderButton = (name: string, onClick: () => void, kind = ''): TemplateResult =>
  html`<button type="button" class="button ${kind}" @click=${onClick}>${name}</button>`;

/** The foot of the sheet: what is assumed, and the button that takes the readings; then what becomes of those already there. */
export function renderTake(
  understanding: Understanding,
  app: ReadingsHost,
  { isAsking, hasWrong, onAsk, onTake, onClose }: TakeOptions,
): TemplateResult {
  const { readings, questions, sets, quantity } = understanding;
  const own = app.setup.readings;
  const room = MOST_SETUPS - ownSetups(app.car).length;
  if (isAsking) {
    const isTooMany = own.length + readings.length > MOST_READINGS;
    const isOne = sets.length === 1;
    return html`<p class="assumed">${haveText(app.setup)} ${isOne && isTooMany ? NAMES.take.tooMany(MOST_READINGS) : nothing}
        ${room < sets.length ? NAMES.take.tooManySets(MOST_SETUPS) : nothing}</p>
      ${isOne && !isTooMany && quantity === app.setup.quantity ? renderButton(NAMES.add, () => onTake('add'), 'main wide') : nothing}
      ${
        room < sets.length
          ? nothing
          : renderButton(isOne ? NAMES.beside : NAMES.besideMany, () => onTake('beside'), isOne ? 'wide' : 'main wide')
      }
      ${room < sets.length - 1 ? nothing : renderButton(NAMES.replace, () => onTake('replace'))}
      ${renderButton(NAMES.back, () => onAsk(false))}`;
  }
  const isOpen = questions.some(({ isGuess }) => isGuess);
  const isPossible =
    !isOpen &&
    !hasWrong &&
    readings.length > 0 &&
    readings.length <= MOST_READINGS &&
    (hasOwn(app) || room >= sets.length);
  const assumed = isPossible
    ? questions.flatMap((question) =>
        question.isAnswered ? [] : (assumption(question, understanding, app.display) ?? []),
      )
    : [];
  return html`${room < sets.length && !hasOwn(app) ? html`<p class="assumed">${NAMES.take.tooManySets(MOST_SETUPS)}</p>` : nothing}
    ${assumed.length > 0 ? html`<p class="assumed" id="paste-assumed">${assumptionsText(assumed)}</p>` : nothing}
    ${renderButton(NAMES.close, onClose)}
    <button
      type="button"
      id="paste-take"
      class="button main"
      aria-describedby=${assumed.length > 0 ? 'paste-assumed' : nothing}
      ?disabled=${!isPossible}
      @click=${() => (hasOwn(app) ? onAsk(true) : onTake(app.keepsAll ? 'beside' : 'replace'))}
    >
      ${hasWrong ? NAMES.correctFirst : isOpen ? NAMES.sayZero : takeText(understanding)}
    </button>`;
}

/** One step of undo. */
export function takeReadings(
  { quantity, readings, sets, overBase }: Understanding,
  app: ReadingsHost,
  how: TakeHow,
): void {
  const label =
    how === 'add' ? NAMES.addLabel : hasOwn(app) && how === 'replace' ? NAMES.replaceLabel : NAMES.takeLabel;
  const taken = sets.map((set) => ({
    name: set.name,
    quantity,
    readings: set.readings.map((i) => readings[i]!),
    ...(overBase && { overBase }),
  }));
  app.changeSets(label, (car) => takeSets(car, taken, how));
  app.endStep();
}
