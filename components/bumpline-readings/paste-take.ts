import { html, nothing, type TemplateResult } from 'lit';
import { MOST_READINGS } from '../../core/readings/reading.js';
import type { Understanding } from '../../core/readings/understanding.js';
import { furtherPasses } from './further-passes.js';
import { NAMES } from './paste.labels.js';
import { assumption, assumptionsText, haveText, takeText, tooMany } from './paste.words.js';
import type { ReadingsHost } from './readings-host.js';

export interface TakeOptions {
  /** The user has own readings and is asked what becomes of them. */
  isAsking: boolean;
  onAsk: (isAsking: boolean) => void;
  onTake: (add: boolean) => void;
  onClose: () => void;
}

const hasOwn = ({ isOwn, setup }: ReadingsHost): boolean => isOwn && setup.readings.length > 0;

export const renderButton = (name: string, onClick: () => void, kind = ''): TemplateResult =>
  html`<button type="button" class="button ${kind}" @click=${onClick}>${name}</button>`;

/** The foot of the sheet: what is assumed, and the button that takes the readings; then what becomes of those already there. */
export function renderTake(
  understanding: Understanding,
  app: ReadingsHost,
  { isAsking, onAsk, onTake, onClose }: TakeOptions,
): TemplateResult {
  const { readings, questions } = understanding;
  const own = app.setup.readings;
  if (isAsking) {
    const isTooMany = own.length + readings.length > MOST_READINGS;
    return html`<p class="assumed">${haveText(own)} ${isTooMany ? tooMany(MOST_READINGS) : nothing}</p>
      ${isTooMany ? nothing : renderButton(NAMES.add, () => onTake(true), 'main wide')}
      ${renderButton(NAMES.replace, () => onTake(false))} ${renderButton(NAMES.back, () => onAsk(false))}`;
  }
  const isPossible = readings.length > 0 && readings.length <= MOST_READINGS;
  const assumed = isPossible
    ? questions.flatMap((question) =>
        question.isAnswered ? [] : (assumption(question, understanding, app.reading) ?? []),
      )
    : [];
  return html`${assumed.length > 0 ? html`<p class="assumed" id="paste-assumed">${assumptionsText(assumed)}</p>` : nothing}
    ${renderButton(NAMES.close, onClose)}
    <button
      type="button"
      id="paste-take"
      class="button main"
      aria-describedby=${assumed.length > 0 ? 'paste-assumed' : nothing}
      ?disabled=${!isPossible}
      @click=${() => (hasOwn(app) ? onAsk(true) : onTake(false))}
    >
      ${takeText(readings)}
    </button>`;
}

/** One step of undo. */
export function takeReadings({ quantity, readings }: Understanding, app: ReadingsHost, add: boolean): void {
  const label = add ? NAMES.addLabel : hasOwn(app) ? NAMES.replaceLabel : NAMES.takeLabel;
  app.edit(label, (setup) => {
    if (add) return { ...setup, readings: [...setup.readings, ...furtherPasses(setup.readings, readings)] };
    // Whichever were set aside, they are gone.
    const { setAside: _, ...rest } = setup;
    return { ...rest, quantity, readings };
  });
  app.endStep();
}
