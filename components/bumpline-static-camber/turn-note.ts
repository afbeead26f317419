import { html, type TemplateResult } from 'lit';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { type InTurn, turnOf } from './in-turn.js';
import type { StaticCamberView } from './static-camber-view.js';

/** Which turn the figures are of, and the way to another; why there are none. */
export function renderTurnNote(
  { answeredCar, display }: Pick<StaticCamberView, 'answeredCar' | 'display'>,
  { problems, fault }: Pick<InTurn, 'problems' | 'fault'>,
  onShow: (key: string) => void,
): TemplateResult {
  const { roll, tyreRoll, steer } = turnOf(answeredCar);
  const angle = (degrees: number) => show(degrees, 'roll', display);
  const [problem] = problems;
  const text = fault
    ? NAMES.turnFault
    : problem
      ? problem.path === 'steer.radius'
        ? NAMES.turnTight(show(Number(problem.value), 'radius', display), show(problem.limit ?? 0, 'radius', display))
        : NAMES.turnBeyond(angle(roll), angle(problem.limit ?? 0))
      : NAMES.turnNote(
          angle(roll),
          tyreRoll ? NAMES.turnTyres(angle(tyreRoll)) : '',
          steer && 'radius' in steer
            ? NAMES.turnRadius(show(steer.radius, 'radius', display), show(steer.wheelbase, 'wheelbase', display))
            : NAMES.turnStraight,
        );
  return html`<p class="note in-turn">${text}
    <button type="button" class="text-button roll" @click=${() => onShow('turn.roll')}>${NAMES.sheets.roll.change}</button>
  </p>`;
}
