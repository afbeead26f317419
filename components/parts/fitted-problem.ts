import type { CarDocument } from '../../core/document/car.js';
import { setupOn } from '../../core/document/setup-in-use.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { shownName } from '../car/shown-names.words.js';
import type { Display } from '../element/sentence.js';
import { FITTED } from './fitted.labels.js';

/** Which part a problem of the core is of, and where in it: `parts.1.mm` → 1, `mm`. */
export function placeOf({ path }: Problem): { at: number; path: string } | undefined {
  const found = /^parts\.(\d+)(?:\.(.+))?$/.exec(path);
  return found ? { at: Number(found[1]), path: found[2] ?? '' } : undefined;
}

/** The link that a problem says no longer reaches, for people. */
export const linkName = ({ other }: Problem): string | undefined =>
  other !== undefined && other in FITTED.links ? FITTED.links[other as keyof typeof FITTED.links] : other;

/**
 * What is wrong with the parts that an answer has on; undefined of any other problem, or where none are on. Where parts are not edited,
 * without what their editor knows of them.
 */
export function fittedProblemText(
  problem: Problem,
  car: CarDocument,
  { units, language }: Display,
): string | undefined {
  const setup = setupOn(car);
  const place = placeOf(problem);
  if (!setup || !(place || problem.path === 'alignment')) return undefined;
  const data = place && setup.parts?.[place.at];
  const text = data
    ? explainProblem(problem, {
        label: FITTED.what[data.part],
        otherLabel: linkName(problem),
        unitSystem: units,
        language,
      })
    : FITTED.cannotSet[problem.other === 'camber' ? 'camber' : 'toe'];
  return `${shownName(setup.name)}: ${text}`;
}
