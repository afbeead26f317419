import type { ChangeEnd, ChangeId, JustClear } from '../../core/answers/just-clear.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { TravelBudget } from '../../core/travel/budget.js';
import type { WheelComparison } from '../../core/wheel/compare-wheels.js';
import type { Place } from '../../core/wheel/place.js';
import { tyreDimensions } from '../../core/wheel/tyre-dimensions.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { isInner } from './bumpline-clearance.words.js';

const { changes: TITLES, ends: WORDS } = NAMES;

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
      texts: [{ main: WORDS.idle, more: WORDS.idleWhy }],
    };
  }
  if (ends.length === 0) {
    const main = clears ? WORDS.endless : WORDS.notAlone;
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
  return isInward && !places.some(isInner) ? [{ main: WORDS.unseen, more: WORDS.unseenWhy }] : [];
}

function rounded(id: ChangeId, { by }: ChangeEnd, clears: boolean): Pick<ChangeEnd, 'by'> {
  if (by === undefined) return {};
  const size = Math.abs(by) / STEP[id];
  return { by: Math.sign(by) * (clears ? Math.floor(size) : Math.ceil(size)) * STEP[id] };
}

type Write = (end: ChangeEnd, clears: boolean, changed: Changed, display: Display) => ChangeText;

const ENDS: Record<ChangeId, Write> = {
  plane: ({ by = 0 }, clears, { wheels }, display) => {
    const { offset, spacer = 0 } = wheels.after.spec;
    const size = show(Math.abs(by), 'offset', display);
    // Offsets are stamped in mm everywhere.
    const et = (mm: number) => `ET\u202f${formatNumber(mm, 1, display.language)}`;
    const more = show(spacer + by, 'offset', display);
    const how =
      by > 0
        ? WORDS.offsetOrSpacer(et(offset - by), et(offset), spacer > 0 ? more : size)
        : spacer + by > 0
          ? WORDS.spacer(more, show(spacer, 'offset', display))
          : WORDS.offset(spacer > 0, et(offset - by - spacer), et(offset));
    return { main: WORDS.plane(clears, size, by < 0), more: WORDS.planeHow(how) };
  },
  width: (end, clears, changed, display) => tyreWords('width', end, clears, changed, display),
  diameter: (end, clears, changed, display) => tyreWords('diameter', end, clears, changed, display),
  camber: ({ by = 0 }, clears, _, display) => ({
    main: WORDS.upTo(clears, WORDS.camber(show(Math.abs(by), 'camberChange', display), by < 0)),
    more: WORDS.camberHow,
  }),
  bump: ({ by = 0, bump }, clears, { budget }, display) => {
    const size = show(Math.abs(by), 'travel', display);
    if (clears || !bump) return { main: WORDS.later(size), more: WORDS.laterHow };
    const { solid, touch } = budget.bump;
    const whole = (mm: number) => show(Math.max(0, Math.round(mm)), 'travel', display);
    const left = WORDS.left(whole(bump.left), whole(solid!.left));
    const touched = bump.touchLeft !== undefined && touch ? WORDS.touch(whole(bump.touchLeft), whole(touch.left)) : '';
    // Rounded up: thinner ones would not do.
    const packers =
      bump.packers === undefined ? '' : WORDS.packers(show(Math.ceil(bump.packers * 10) / 10, 'gap', display));
    return { main: WORDS.limited(size), more: `${packers}${left}${touched}` };
  },
  drop: ({ by = 0 }, clears, _, display) => ({
    main: WORDS.upTo(clears, WORDS.drop(show(Math.abs(by), 'drop', display), by < 0)),
    more: '',
  }),
};

/** The size that one would buy first, then the number. */
function tyreWords(
  of: 'width' | 'diameter',
  { by, size }: ChangeEnd,
  clears: boolean,
  { wheels: { after } }: Changed,
  display: Display,
): ChangeText {
  const number =
    by === undefined
      ? ''
      : WORDS.tyre(clears, show(Math.abs(by), 'travel', display), WORDS[of][by < 0 ? 0 : 1], WORDS.across[of]);
  if (size === undefined) return { main: number, more: clears ? WORDS.noNext : WORDS.noSize };
  const { freeDiameter, size: read } = tyreDimensions(size);
  const lower = Math.round((2 * after.freeRadius - freeDiameter) * 5) / 10;
  const sits = Math.abs(lower) < 0.05 ? '' : WORDS.sits(show(Math.abs(lower), 'travel', display), lower > 0);
  const brake = read.rimCode === after.dimensions.size.rimCode ? '' : WORDS.brake;
  return { main: WORDS.size(size), more: `${brake}${sits}${number && ` (${number})`}` };
}
