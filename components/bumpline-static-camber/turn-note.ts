import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import { type Display, lower, show } from '../element/sentence.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import type { TurnFigures } from './costs.js';
import { type InTurn, turnOf } from './in-turn.js';
import type { StaticCamberView } from './static-camber-view.js';

/** Which turn the figures are of, and the way to another; why there are none. */
export function renderTurnNote(
  { answeredCar, display }: Pick<StaticCamberView, 'answeredCar' | 'display'>,
  { problems, fault, found }: Pick<InTurn, 'problems' | 'fault' | 'found'>,
  onShow: (key: string) => void,
): TemplateResult {
  const [problem] = problems;
  const roll = found && found !== 'coming' ? found.roll : turnOf(answeredCar).roll;
  const solid = found && found !== 'coming' ? solidText(found, display) : '';
  const text = fault
    ? NAMES.turnFault
    : problem
      ? problemText(problem, roll, display)
      : roll === undefined
        ? NAMES.turnComing
        : turnText(answeredCar, roll, display);
  return html`<p class="note in-turn">${text}${solid ? html` <b class="solid">${solid}</b>` : nothing}
    <button type="button" class="text-button roll" @click=${() => onShow('turn.roll')}>${NAMES.sheets.roll.change}</button>
  </p>`;
}

/** That the outer wheel is solid on its stop before it leans so: as the car is, else with some of the ways. */
function solidText({ bump, solid }: TurnFigures, display: Display): string {
  const size = (mm: number) => show(mm, 'travel', display);
  if (bump && bump.taken > bump.left)
    return NAMES.turnSolid(size(bump.taken), size(Math.max(0, bump.left)), size(bump.taken - bump.left));
  return solid.length > 0 ? NAMES.turnSolidWith(solid.map((way) => lower(NAMES.shorts[way])).join(', ')) : '';
}

function problemText({ path, value, limit = 0 }: Problem, roll: number | undefined, display: Display): string {
  const angle = (degrees: number) => show(degrees, 'roll', display);
  if (path === 'steer.radius')
    return NAMES.turnTight(
      show(Number(value), 'radius', display),
      show(Math.ceil(limit * 10 - 1e-9) / 10, 'radius', display),
    );
  if (path.startsWith('turn.')) return NAMES.turnNoRoll;
  return NAMES.turnBeyond(angle(roll ?? Number(value)), angle(limit));
}

function turnText(car: CarDocument, degrees: number, display: Display): string {
  const { by, tyreRoll, steer } = turnOf(car);
  const angle = show(degrees, 'roll', display);
  const roll =
    by === 'load'
      ? NAMES.turnAt(angle, show(car.turn!.load!.lateral!, 'lateral', display))
      : by === 'marks'
        ? NAMES.turnMarks(angle)
        : angle;
  return NAMES.turnNote(
    roll,
    tyreRoll ? NAMES.turnTyres(show(tyreRoll, 'roll', display)) : '',
    steer && 'radius' in steer
      ? NAMES.turnRadius(show(steer.radius, 'radius', display), show(steer.wheelbase, 'wheelbase', display))
      : NAMES.turnStraight,
  );
}
