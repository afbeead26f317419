import type { ChangeEnd, ChangeId, JustClear } from '../../core/answers/just-clear.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { TravelBudget } from '../../core/travel/budget.js';
import type { WheelComparison } from '../../core/wheel/compare-wheels.js';
import type { Place } from '../../core/wheel/place.js';
import { tyreDimensions } from '../../core/wheel/tyre-dimensions.js';
import { type Display, show } from '../element/sentence.js';
import { isInner } from './bumpline-clearance.words.js';

/** What a row is about, from a wheel that does not clear and from one that does. */
const TITLES: Record<ChangeId, readonly [out: string, further: string]> = {
  plane: ['Offset or spacer', 'Offset or spacer'],
  width: ['Narrower tyre', 'Wider tyre'],
  diameter: ['Smaller tyre', 'Larger tyre'],
  camber: ['Camber', 'Camber'],
  bump: ['Less bump', 'More bump'],
  drop: ['Height', 'Height'],
};

const STEP: Record<ChangeId, number> = { plane: 0.1, width: 0.1, diameter: 0.1, camber: 0.01, bump: 0.1, drop: 0.1 };

export interface Changed {
  wheels: WheelComparison;
  budget: TravelBudget;
  places: readonly Place[];
}

/** What is to be changed, and what there is to know of it. */
export interface ChangeText {
  main: string;
  more: string;
}

/** One row of "what would just clear", or of how far one can still go: a text for each end. */
export function changeRow(
  { id, ends, isIdle }: JustClear,
  clears: boolean,
  changed: Changed,
  display: Display,
): { label: string; texts: ChangeText[] } {
  const label = TITLES[id][clears ? 1 : 0];
  if (isIdle) {
    return {
      label,
      texts: [{ main: 'changes nothing', more: ': with shorter springs full bump is where the stop is' }],
    };
  }
  if (ends.length === 0) {
    const main = clears ? 'no end within what one can buy or set' : 'not by this alone';
    return { label, texts: [{ main, more: '' }, ...(clears ? unseen(id, ends, clears, changed) : [])] };
  }
  // Rounded to the side that still clears: what is shown must itself clear.
  const texts = ends.map((end) => ENDS[id]({ ...end, ...rounded(id, end, clears) }, clears, changed, display));
  return { label, texts: [...texts, ...unseen(id, ends, clears, changed)] };
}

/** Of a wheel that is moved to a side where nothing was measured nobody knows what it meets. */
function unseen(id: ChangeId, ends: readonly ChangeEnd[], clears: boolean, { places }: Changed): ChangeText[] {
  if (id !== 'plane' && id !== 'width' && id !== 'camber') return [];
  // A narrower tyre leaves more there.
  const isInward = clears || (id !== 'width' && ends.some(({ by = 0 }) => by < 0));
  return isInward && !places.some(isInner)
    ? [{ main: 'inner side not looked at', more: ': no place there was measured' }]
    : [];
}

function rounded(id: ChangeId, { by }: ChangeEnd, clears: boolean): Pick<ChangeEnd, 'by'> {
  if (by === undefined) return {};
  const size = Math.abs(by) / STEP[id];
  return { by: Math.sign(by) * (clears ? Math.floor(size) : Math.ceil(size)) * STEP[id] };
}

type Words = (end: ChangeEnd, clears: boolean, changed: Changed, display: Display) => ChangeText;

const upTo = (clears: boolean): string => (clears ? 'up to ' : '');

const ENDS: Record<ChangeId, Words> = {
  plane: ({ by = 0 }, clears, { wheels }, display) => {
    const { offset, spacer = 0 } = wheels.after.spec;
    const size = show(Math.abs(by), 'offset', display);
    // Offsets are stamped in mm everywhere.
    const et = (mm: number) => `ET\u202f${formatNumber(mm, 1, display.language)}`;
    const how =
      by > 0
        ? `${et(offset - by)} in place of ${et(offset)}, or ${spacer > 0 ? `a spacer of ${show(spacer + by, 'offset', display)}` : `a spacer of ${size}`}`
        : spacer + by > 0
          ? `a spacer of ${show(spacer + by, 'offset', display)} in place of ${show(spacer, 'offset', display)}`
          : `${spacer > 0 ? 'no spacer and ' : ''}${et(offset - by - spacer)} in place of ${et(offset)}`;
    return { main: `${clears ? 'up to' : 'wheels'} ${size} further ${by < 0 ? 'in' : 'out'}`, more: `: ${how}` };
  },
  width: (end, clears, changed, display) =>
    tyreWords(end, clears, changed, display, 'across the sidewalls', ['narrower', 'wider']),
  diameter: (end, clears, changed, display) =>
    tyreWords(end, clears, changed, display, 'in diameter', ['smaller', 'larger']),
  camber: ({ by = 0 }, clears, _, display) => ({
    main: `${upTo(clears)}${show(Math.abs(by), 'camberChange', display)} ${by < 0 ? 'more' : 'less'} negative camber`,
    more: ', set at the top mount',
  }),
  bump: ({ by = 0, bump }, clears, { budget }, display) => {
    const size = show(Math.abs(by), 'travel', display);
    if (clears || !bump) return { main: `full bump up to ${size} later`, more: ', by a shorter stop' };
    const { solid, touch } = budget.bump;
    const whole = (mm: number) => show(Math.max(0, Math.round(mm)), 'travel', display);
    const left = `bump to solid ${whole(bump.left)} in place of ${whole(solid!.left)}`;
    const touched =
      bump.touchLeft !== undefined && touch
        ? `, to first touch of the stop ${whole(bump.touchLeft)} in place of ${whole(touch.left)}`
        : '';
    // Rounded up: thinner ones would not do.
    const packers =
      bump.packers === undefined
        ? ''
        : ` (packers of ${show(Math.ceil(bump.packers * 10) / 10, 'gap', display)} on the rod)`;
    return { main: `bump limited by ${size}`, more: `${packers}: ${left}${touched}` };
  },
  drop: ({ by = 0 }, clears, _, display) => ({
    main: `${upTo(clears)}${show(Math.abs(by), 'drop', display)} ${by < 0 ? 'higher' : 'lower'}`,
    more: '',
  }),
};

/** The size that one would buy first, then the number. */
function tyreWords(
  { by, size }: ChangeEnd,
  clears: boolean,
  { wheels: { after } }: Changed,
  display: Display,
  across: string,
  [less, more]: readonly [string, string],
): ChangeText {
  const number =
    by === undefined
      ? ''
      : `${clears ? 'up to' : 'at least'} ${show(Math.abs(by), 'travel', display)} ${by < 0 ? less : more} ${across}`;
  if (size === undefined)
    return { main: number, more: clears ? '; the next size is too large' : '; no size for this rim is' };
  const { freeDiameter, size: read } = tyreDimensions(size);
  const lower = Math.round((2 * after.freeRadius - freeDiameter) * 5) / 10;
  const sits =
    Math.abs(lower) < 0.05
      ? ''
      : `, the car sits ${show(Math.abs(lower), 'travel', display)} ${lower > 0 ? 'lower' : 'higher'}`;
  const brake = read.rimCode === after.dimensions.size.rimCode ? '' : ', if the brake fits inside the smaller rim';
  return { main: `${size} clears by the numbers`, more: `${brake}${sits}${number && ` (${number})`}` };
}
