import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import type { ClearanceView } from './clearance-view.js';
import { type DrawnWheels, gapIn, type Steered } from './drawn-wheels.js';
import { steerText } from './pose-sliders.js';

/** Nearer than this to a named height one is there, mm. */
const NEAR_MM = 0.5;

/** Where the wheel is drawn, and its gap to the place there, new and old. @param travel mm */
export function poseText(
  { selected, display, answer }: Pick<ClearanceView, 'selected' | 'display' | 'answer'>,
  drawn: DrawnWheels,
  steered: Steered,
  travel: number,
): string | undefined {
  if (selected === undefined || !answer) return undefined;
  const { picture: words } = NAMES;
  const size = (mm: number) => show(Math.abs(mm), 'travel', display);
  const gap = gapIn(drawn, steered, selected, travel);
  const before = gapIn(drawn, steered, selected, travel, 'before');
  const solid = answer.budget.bump.solid?.travel;
  const by = travel - answer.drop;
  const where =
    solid !== undefined && Math.abs(travel - solid) < NEAR_MM
      ? words.at.full
      : Math.abs(by) < NEAR_MM
        ? words.at.ride
        : words.inTravel(show(Math.round(Math.abs(by)), 'travel', display), by > 0);
  const steer = answer.isSteered ? `, ${steerText((drawn.asked.isLeft ? 1 : -1) * steered.steer, drawn)}` : '';
  return `${where}${steer}: ${gap < 0 ? words.inside(size(gap)) : words.gap(size(gap))}, ${words.old(size(before), before < 0)}`;
}
