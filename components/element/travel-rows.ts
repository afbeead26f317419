import { formatNumber } from '../../core/quantity/format.js';
import type { LimitAt, TravelBudget } from '../../core/travel/budget.js';
import type { LoadAnswer } from '../../core/travel/loads.js';
import { limitName } from './limit-name.js';
import { type Display, show } from './sentence.js';

/** What the links alone would allow is often far beyond what any damper does, mm. */
const FURTHEST_MM = 150;

/** What the corner carries, how it rides, and where a load takes it. */
export function loadRows(answer: LoadAnswer, factor: number, display: Display): { label: string; text: string }[] {
  const { sprungMass, staticLoad, wheelRate, rideFrequency, travelAtLoad, reaches, stopCompression, shortOfSolid } =
    answer;
  const size = (mm: number) => show(Math.round(mm), 'travel', display);
  const taken = `${answer.atLeast ? 'at least ' : ''}${size(travelAtLoad)} of bump`;
  const { shortOfSolidPlusMinus: plusMinus } = answer;
  const short = plusMinus === undefined ? size : (mm: number) => show(mm, 'travel', display, plusMinus);
  const solid = shortOfSolid === undefined ? '' : `, ${short(shortOfSolid)} short of solid`;
  const ends = {
    none: `${taken}, clear of the stop${solid}`,
    stop: `${taken}, ${stopCompression < 0.5 ? 'on the stop' : `${size(stopCompression)} of the rod into the stop`}${solid}`,
    solid: `${taken}: solid, and more than that it cannot carry on its springs`,
  };
  return [
    {
      label: 'Sprung weight of this corner',
      text: `${show(Math.round(sprungMass), 'mass', display)}, ${show(Math.round(staticLoad), 'load', display)}`,
    },
    { label: 'Wheel rate at ride height', text: show(wheelRate, 'springRate', display) },
    { label: 'Ride frequency', text: show(rideFrequency, 'frequency', display) },
    { label: `Under ${formatNumber(factor, 2, display.language)} times the static load`, text: ends[reaches] },
  ];
}

/** What is left both ways, and what ends it. */
export function budgetRows(
  { bump, droop, changes }: TravelBudget,
  display: Display,
): { label: string; text: string }[] {
  const size = (mm: number, plusMinus?: number) =>
    show(plusMinus === undefined ? Math.round(mm) : mm, 'travel', display, plusMinus);
  const left = ({ left: mm, plusMinus, atLeast }: Omit<LimitAt, 'id'>) =>
    `${atLeast ? 'at least ' : ''}${size(Math.abs(mm), plusMinus)}`;
  const isReal = (travel: number) => Math.abs(travel) < FURTHEST_MM;
  const rows: { label: string; text: string }[] = [];
  const { touch, solid } = bump;
  if (touch) {
    const label = 'Bump to first touch of the stop';
    rows.push(
      touch.left < 0
        ? { label, text: `none: it is pressed by ${size(-touch.left)} already` }
        : { label, text: left(touch) },
    );
  }
  if (solid && isReal(solid.travel)) {
    const by = limitName(solid.governedBy);
    const past = solid.left < 0;
    rows.push({
      label: 'Bump to solid',
      text: past ? `${size(-solid.left)} past ${by}` : `${left(solid)}, ended by ${by}`,
    });
    const shares = solid.contributions ?? [];
    if (shares.length > 1 || shares[0]?.id === 'stopUsable') {
      const percent = (share: number) => `${formatNumber(share * 100, 0, display.language)}\u202f%`;
      const text = shares.map(({ label: cause, share }) => `${cause} ${percent(share)}`).join(', ');
      rows.push({ label: 'What its ± is made of', text });
    }
  }
  for (const limit of bump.limits) {
    if (limit.id === solid?.governedBy || !isReal(limit.travel)) continue;
    rows.push({ label: `Bump to ${limitName(limit.id)}`, text: left(limit) });
  }
  if (droop.solid && isReal(droop.solid.travel)) {
    rows.push({ label: 'Droop', text: `${left(droop.solid)}, ended by ${limitName(droop.solid.governedBy)}` });
  }
  for (const { drop, direction, from, to } of changes) {
    const at = show(Math.round(drop * 10) / 10, 'drop', display);
    rows.push({
      label: `Lowered ${at} or more`,
      text: `${direction} is ended by ${limitName(to)}, not ${limitName(from)}`,
    });
  }
  return rows;
}
