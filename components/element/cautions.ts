import type { TemplateResult } from 'lit';
import { worded, words } from '../../core/quantity/words.js';
import { renderCautionList } from './caution-list.js';
import { FIRST_CAUTIONS } from './first-cautions.js';
import { PART_CAUTIONS } from './part-cautions.js';
import { TRAVEL_CAUTIONS } from './travel-cautions.js';
import { WHEEL_CAUTIONS } from './wheel-cautions.js';

/** English cautions of dialogs alone. */
export const OF_DIALOGS = words('element/cautions', {
  hardTurn:
    'Turns this hard belong on a closed course, by its rules, never on the road. The driver only drives; a logger keeps the figure.',
  onCourse:
    'On a closed course, by its rules, never on the road. Somebody else takes the picture, from where spectators may stand; the driver only drives. Fit and read cable ties on level ground: engine off, parking brake on, wheels chocked, no part of you under the car.',
});

/** All cautions, by the place where the risk is: short and specific. Those of an element come with its first answer, the rest with its dialogs. */
export const CAUTIONS = worded(() => ({
  ...FIRST_CAUTIONS,
  ...TRAVEL_CAUTIONS,
  ...PART_CAUTIONS,
  ...WHEEL_CAUTIONS,
  ...OF_DIALOGS,
}));

export type CautionId = keyof typeof CAUTIONS;

/** What a dialog warns of, where the hand is. */
export const renderCautions = (cautions: readonly CautionId[], label: string): TemplateResult =>
  renderCautionList(
    cautions.map((one) => CAUTIONS[one]),
    label,
  );
