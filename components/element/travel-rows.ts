import { formatNumber } from '../../core/quantity/format.js';
import type { LimitAt, TravelBudget } from '../../core/travel/budget.js';
import type { LoadAnswer } from '../../core/travel/loads.js';
import { causeName } from './causes.words.js';
import { limitName } from './limits.words.js';
import { PARTS } from './parts.labels.js';
import { type Display, show } from './sentence.js';

/** What the links alone would allow is often far beyond what any damper does, mm. */
const FURTHEST_MM = 150;

/** What the corner carries, how it rides, and where a load takes it. */
export function loadRows(answer: LoadAnswer, factor: number, display: Display): { label: string; text: string }[] {
  const { sprungMass, staticLoad, wheelRate, rideFrequency, travelAtLoad, reaches, stopCompression, shortOfSolid } =
    answer;
  const { loads: words } = PARTS;
  const size = (mm: number) => show(Math.round(mm), 'travel', display);
  const taken = words.taken(size(travelAtLoad), answer.atLeast === true);
  const { shortOfSolidPlusMinus: plusMinus } = answer;
  const short = plusMinus === undefined ? size : (mm: number) => show(mm, 'travel', display, plusMinus);
  const solid = shortOfSolid === undefined ? '' : words.short(short(shortOfSolid));
  const ends = {
    none: words.clear(taken, solid),
    stop: stopCompression < 0.5 ? words.onStop(taken, solid) : words.inStop(taken, size(stopCompression), solid),
    solid: words.solid(taken),
  };
  return [
    {
      label: words.sprung,
      text: `${show(Math.round(sprungMass), 'mass', display)}, ${show(Math.round(staticLoad), 'load', display)}`,
    },
    { label: words.wheelRate, text: show(wheelRate, 'springRate', display) },
    { label: words.frequency, text: show(rideFrequency, 'frequency', display) },
    { label: words.under(formatNumber(factor, 2, display.language)), text: ends[reaches] },
  ];
}

/** What is left both ways, and what ends it. */
export function budgetRows(
  { bump, droop, changes }: TravelBudget,
  display: Display,
): { label: string; text: string }[] {
  const size = (mm: number, plusMinus?: number) =>
    show(plusMinus === undefined ? Math.round(mm) : mm, 'travel', display, plusMinus);
  const { travel: words } = PARTS;
  const left = ({ left: mm, plusMinus, atLeast }: Omit<LimitAt, 'id'>) => {
    const text = size(Math.abs(mm), plusMinus);
    return atLeast ? words.atLeast(text) : text;
  };
  const isReal = (travel: number) => Math.abs(travel) < FURTHEST_MM;
  const rows: { label: string; text: string }[] = [];
  const { touch, solid } = bump;
  if (touch) {
    const label = words.touch;
    rows.push(touch.left < 0 ? { label, text: words.pressed(size(-touch.left)) } : { label, text: left(touch) });
  }
  if (solid && isReal(solid.travel)) {
    const by = limitName(solid.governedBy);
    const past = solid.left < 0;
    rows.push({
      label: words.solid,
      text: past ? words.past(size(-solid.left), by) : words.endedBy(left(solid), by),
    });
    const shares = solid.contributions ?? [];
    if (shares.length > 1 || shares[0]?.id === 'stopUsable') {
      const percent = (share: number) => `${formatNumber(share * 100, 0, display.language)}\u202f%`;
      const text = shares.map(({ label: cause, share }) => `${causeName(cause)} ${percent(share)}`).join(', ');
      rows.push({ label: words.shares, text });
    }
  }
  for (const limit of bump.limits) {
    if (limit.id === solid?.governedBy || !isReal(limit.travel)) continue;
    rows.push({ label: words.bumpTo(limitName(limit.id)), text: left(limit) });
  }
  if (droop.solid && isReal(droop.solid.travel)) {
    rows.push({ label: words.droop, text: words.endedBy(left(droop.solid), limitName(droop.solid.governedBy)) });
  }
  for (const { drop, direction, from, to } of changes) {
    const at = show(Math.round(drop * 10) / 10, 'drop', display);
    rows.push({
      label: words.lowered(at),
      text: words.changes(direction, limitName(to), limitName(from)),
    });
  }
  return rows;
}
