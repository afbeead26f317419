import type { End, TravelBudget } from '../../core/travel/budget.js';
import { limitName } from './limit-name.js';
import { type Reader, show } from './sentence.js';

/** What the links alone would allow is often far beyond what any damper does, mm. */
const FURTHEST_MM = 150;

/** What is left both ways, and what ends it. */
export function budgetRows({ bump, droop, changes }: TravelBudget, reader: Reader): { label: string; text: string }[] {
  const size = (mm: number, plusMinus?: number) =>
    show(plusMinus === undefined ? Math.round(mm) : mm, 'travel', reader, plusMinus);
  const left = ({ left: mm, plusMinus, atLeast }: Omit<End, 'governedBy'>) =>
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
  }
  for (const limit of bump.limits) {
    if (limit.id === solid?.governedBy || !isReal(limit.travel)) continue;
    rows.push({ label: `Bump to ${limitName(limit.id)}`, text: left(limit) });
  }
  if (droop.solid && isReal(droop.solid.travel)) {
    rows.push({ label: 'Droop', text: `${left(droop.solid)}, ended by ${limitName(droop.solid.governedBy)}` });
  }
  for (const { drop, direction, from, to } of changes) {
    const at = show(Math.round(drop * 10) / 10, 'drop', reader);
    rows.push({
      label: `Lowered ${at} or more`,
      text: `${direction} is ended by ${limitName(to)}, not ${limitName(from)}`,
    });
  }
  return rows;
}
