import type { CurveData } from '../../core/curve/curve-data.js';
import { type CarDocument, EMPTY_CAR, type GivenCurve, type Heights } from '../../core/document/car.js';
import { give, isBare, isUsers, valuesOf } from '../../core/document/provenance.js';
import { takeCorner } from '../../core/document/take-corner.js';
import { readLengthAttribute, readLengthsAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { LightDom } from './light-dom.js';

/** What a page says about one corner, by attribute, property and light DOM. Attributes are locale-free, mm and degrees. */
export interface PageSource {
  corner?: unknown;
  curve?: CurveData | undefined;
  coefficients?: string | undefined;
  domain?: string | undefined;
  light: LightDom;
}

export interface PageHeights {
  drop?: string | number | undefined;
  dropPlusMinus?: string | number | undefined;
  bumpTravel?: string | number | undefined;
}

/** The corner or curve a page gives: property before attributes before light DOM, else nothing (the example). */
export function sourceOf(page: PageSource): {
  car: Pick<CarDocument, 'given' | 'whole' | 'curve'>;
  problems: Problem[];
} {
  const nothing = { given: { points: {} } };
  if (page.corner !== undefined && page.corner !== null) return { car: takeCorner(page.corner), problems: [] };
  if (page.curve) return { car: { ...nothing, curve: { kind: 'curve', curve: page.curve } }, problems: [] };
  if (page.coefficients !== undefined) {
    const { curve, problems } = readCoefficients(page.coefficients, page.domain);
    return { car: { ...nothing, curve }, problems };
  }
  const { json, given, problems } = page.light;
  if (json !== undefined) return { car: takeCorner(json), problems };
  return { car: given ? { given } : nothing, problems };
}

/** Numbers by spaces or commas, as JSON writes them, whatever is none reaching the solver as NaN; and two travels. */
function readCoefficients(
  coefficients: string,
  domain: string | undefined,
): { curve: GivenCurve; problems: Problem[] } {
  const list = (text: string) =>
    text
      .split(/[\s,;]+/)
      .filter((part) => part !== '')
      .map(Number);
  const problems: Problem[] = [];
  const read = readLengthsAttribute(domain ?? '', 'travel', 'domain');
  const ends = read.flatMap((one) => (one.ok ? one.value : []));
  problems.push(...read.flatMap((one) => (one.ok ? [] : one.problem)));
  if (read.length !== 2) {
    problems.push({ code: domain === undefined ? 'missing' : 'wrong-shape', path: 'domain', value: domain });
  }
  return { curve: { kind: 'coefficients', coefficients: list(coefficients), domain: [ends[0]!, ends[1]!] }, problems };
}

/** Drop, its doubt and bump travel from attributes. What cannot be read is a problem, and the example's value stands in. */
export function heightsOf(page: PageHeights): { car: Heights; problems: Problem[] } {
  const problems: Problem[] = [];
  const read = (text: string | number | undefined, quantity: Quantity, path: string) => {
    if (text === undefined || text === null) return undefined;
    const parsed = readLengthAttribute(String(text), quantity, path);
    if (parsed.ok) return parsed.value;
    problems.push(parsed.problem);
    return undefined;
  };
  const drop = read(page.drop, 'drop', 'drop');
  const dropPlusMinus = read(page.dropPlusMinus, 'plusMinusLength', 'dropPlusMinus');
  const bumpTravel = read(page.bumpTravel, 'travel', 'bumpTravel');
  return {
    car: {
      ...(drop !== undefined && { drop }),
      ...(dropPlusMinus !== undefined && { dropPlusMinus }),
      ...(bumpTravel !== undefined && { bumpTravel }),
    },
    problems,
  };
}

/**
 * The document a page describes, with the heights, readings, wheels, places and limits of the one that was there.
 *
 * @param sparesUsers keeps all that a user gave: a page's corner stands in for the rest of theirs
 */
export function carOf(
  { car: { given, ...source } }: ReturnType<typeof sourceOf>,
  before: CarDocument,
  sparesUsers: boolean,
): CarDocument {
  const hasPoints = source.whole !== undefined || Object.keys(given.points).length > 0;
  if (sparesUsers && isUsers(before, 'corner')) {
    return isBare(given) || source.whole !== undefined ? before : give(before, 'corner', 'page', () => ({ given }));
  }
  const { corner: _, way, ...others } = before.provenance;
  const { curve: __, whole: ___, ...kept } = before;
  const isWayKept = sparesUsers && way?.by === 'user';
  return {
    ...EMPTY_CAR,
    ...(sparesUsers && kept),
    drop: before.drop,
    ...(before.dropPlusMinus !== undefined && { dropPlusMinus: before.dropPlusMinus }),
    ...valuesOf(before, 'bumpTravel'),
    ...valuesOf(before, 'setups'),
    ...valuesOf(before, 'fit'),
    by: isWayKept ? before.by : hasPoints ? 'points' : before.by === 'readings' ? 'readings' : 'driveway',
    given,
    ...source,
    provenance: {
      ...others,
      ...((hasPoints || !isBare(given)) && { corner: { by: 'page' } }),
      ...(isWayKept && { way }),
    },
  };
}
