import type { CompareRequest } from '../../core/answers/compare.js';
import { bumpTravelOf, type CarDocument, dropBy } from '../../core/document/car.js';
import { readLengthAttribute, readLengthsAttribute } from '../../core/quantity/attribute.js';
import type { InputError, Problem } from '../../core/quantity/problem.js';
import type { CompareAttributes } from './compare-view.js';

/** What the inside wheel does is looked at over so much droop, mm. */
export const DROOP_MM = 20;
const USUAL_HEIGHTS: readonly number[] = [0, 25];
const USUAL_OVER_MM = 40;

type Page = Pick<CompareAttributes, 'heights' | 'over'>;

const readHeights = ({ heights }: Page) => readLengthsAttribute(heights ?? '', 'drop', 'heights');
const readOver = ({ over }: Page) =>
  over === undefined || over === null ? undefined : readLengthAttribute(String(over), 'travel', 'over');

/** What of a page's heights and bump cannot be read, as long as nobody has chosen others. */
export function settingProblems({ compare }: CarDocument, page: Page): Problem[] {
  const over = compare?.over === undefined ? readOver(page) : undefined;
  const heights = compare?.heights === undefined ? readHeights(page) : [];
  return [...(over ? [over] : []), ...heights].flatMap((read) => (read.ok ? [] : [read.problem]));
}

/**
 * The drops that are compared: those chosen here, else the page's that can be read; of two the lower one is the drop that a user gave
 * elsewhere, which is one number on all pages.
 */
export function heightsOf(car: CarDocument, page: Page): readonly number[] {
  if (car.compare?.heights) return car.compare.heights;
  const read = readHeights(page).flatMap((one) => (one.ok ? one.value : []));
  const [first, ...others] = read.length > 0 ? read : USUAL_HEIGHTS;
  const isTheirs = dropBy(car) === 'user' && others.length === 1 && car.drop !== first;
  return [first!, ...(isTheirs ? [car.drop] : others)];
}

/** The bump over which changes are compared, mm. */
export function overOf({ compare }: CarDocument, page: Page): number {
  const read = readOver(page);
  return compare?.over ?? (read?.ok ? read.value : USUAL_OVER_MM);
}

/** Travel from stock height at which the suspension is solid, where somebody gave bump travel: with shorter springs it stays there. */
export function solidOf(car: CarDocument): number | undefined {
  const bumpTravel = bumpTravelOf(car);
  return bumpTravel === undefined || car.lowered === 'dampers' ? undefined : bumpTravel + (car.measuredAt ?? 0);
}

/** What the core is asked: the curves at each height, over that bump and some droop, up to where the suspension is solid. */
export function compareRequest({
  curves,
  heights,
  over,
  solid,
}: Pick<CompareRequest, 'curves' | 'heights'> & { over: number; solid: number | undefined }): CompareRequest {
  return { curves, heights, bump: over, droop: DROOP_MM, ...(solid !== undefined && { solid }) };
}

/** What is wrong with what was asked, by the names that the page has for it. */
export const requestProblems = ({ problems }: InputError): Problem[] =>
  problems.map((problem) => (problem.path === 'bump' ? { ...problem, path: 'over' } : problem));
