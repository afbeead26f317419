import { arrange, type Rows } from '../curve/fit-rows.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import { sweepTravel } from '../linkage/sweep.js';
import type { ReadingDoubts } from '../readings/doubts.js';
import type { Reading } from '../readings/reading.js';
import { MORE_MM } from './further-sizes.js';
import type { LearntCorner } from './learn-corner.js';
import { nuisancesOf, type ReadSet, USUAL_DOF } from './read-set.js';
import { linkageOf } from './set-model.js';

/** Of the slope of the links' own curve, mm either side. */
const BESIDE_MM = 0.5;
/** One side is missing where it was read less than this share as far as the other. */
const ONE_SIDED = 0.5;
/** Heights of a side that was not read. */
const OF_SIDE = 4;
/** A toe gauge's scatter, degrees. Common practice, no source. */
const TOE_SD = 0.05;
/** Of readings, what a curve through them takes: it is of the third degree as a rule. */
const OF_CURVE = 3;
/** Of a name that no pass has. */
const NEW_PASS = 'further';

/** Readings that nobody has taken yet: where, in which pass, going which way. */
export type Planned = Omit<Reading, 'value'>;

export type PlanId = 'otherWay' | 'anotherPass' | 'moreTravel' | 'otherSide' | 'toeSweep';

export interface Plan {
  id: PlanId;
  quantity: 'camber' | 'toe';
  readings: Planned[];
}

/** What could be read besides: another pass, more travel, the side that is missing, toe. */
export function plansOf({ estimated: { sets } }: Pick<LearntCorner, 'estimated'>): Plan[] {
  const stock = sets.find(({ quantity, parts }) => quantity === 'camber' && parts.length === 0);
  const toe = sets.some(({ quantity }) => quantity === 'toe');
  const plans: Plan[] = [];
  const sweep = (heights: readonly number[], going: 'up' | 'down' | undefined): Planned[] =>
    heights.map((travel) => ({ travel, pass: NEW_PASS, ...(going && { going }) }));
  const heights = [...new Set((stock ?? sets[0]!).rows.travel)].sort((a, b) => a - b);
  if (!toe) plans.push({ id: 'toeSweep', quantity: 'toe', readings: sweep(heights, 'up') });
  if (!stock) return plans;
  const add = (id: PlanId, readings: Planned[]) => plans.push({ id, quantity: 'camber', readings });
  const ups = passesGoing(stock, 'up');
  const downs = passesGoing(stock, 'down');
  // Of passes whose way nobody said it is held that they went up.
  if (downs === 0 || ups + downs < stock.rows.passes.length) add('otherWay', sweep(heights, 'down'));
  else if (ups === 0) add('otherWay', sweep(heights, 'up'));
  else add('anotherPass', sweep(heights, downs <= ups ? 'down' : 'up'));
  const [low, high] = [heights[0]!, heights.at(-1)!];
  add('moreTravel', inPasses(stock, [low - MORE_MM, high + MORE_MM]));
  const far = Math.max(-low, high);
  const other = -low < ONE_SIDED * far ? [-far, low] : high < ONE_SIDED * far ? [high, far] : undefined;
  if (other) {
    const [from, to] = other as [number, number];
    const side = Array.from({ length: OF_SIDE }, (_, i) => from + ((to - from) * (from < 0 ? i : i + 1)) / OF_SIDE);
    add('otherSide', inPasses(stock, side));
  }
  return plans;
}

/** Passes that were read going one way at all. */
const passesGoing = ({ readings }: ReadSet, way: 'up' | 'down'): number =>
  new Set(readings.filter(({ going }) => going === way).map(({ pass }) => pass ?? '')).size;

/** The same heights in every pass, the way it went. */
function inPasses({ readings }: ReadSet, heights: readonly number[]): Planned[] {
  const names = [...new Set(readings.map(({ pass }) => pass))];
  return names.flatMap((pass) => {
    const going = readings.find((one) => one.pass === pass && one.going)?.going;
    return heights.map((travel) => ({ travel, ...(pass !== undefined && { pass }), ...(going && { going }) }));
  });
}

/**
 * The sets as they would be with planned readings among them: what each of these would be is no matter, but where it stands is, and so
 * what gauge, tape and passes may add to it.
 *
 * @returns undefined where the links do not reach
 */
export function setsWith(
  { estimated: { sets, unknowns, at, passes } }: Pick<LearntCorner, 'estimated'>,
  { quantity, readings }: Plan,
  toeAllowances: ReadingDoubts,
): ReadSet[] | undefined {
  const place = sets.findIndex((set) => set.quantity === quantity && set.parts.length === 0);
  const own = sets[place];
  const like = own ?? sets.find(({ parts }) => parts.length === 0) ?? sets[0]!;
  const links = at.subarray(passes.length);
  const all = [...(own?.readings ?? []), ...readings.map((one) => ({ ...one, value: 0 }))];
  const rows = arrange(all, own?.inOrder ?? false);
  const heights = [...new Set(rows.travel)].sort((a, b) => a - b);
  const { raisedBy } = like;
  const linkage = own ? linkageOf(unknowns, links, own) : buildLinkage(unknowns.known.corner, { isOpen: true });
  const near = Float64Array.from(
    heights.flatMap((travel) => [-BESIDE_MM, 0, BESIDE_MM].map((by) => travel + raisedBy + by)),
  );
  const swept = sweepTravel(linkage, near)[quantity];
  if (!swept.every(Number.isFinite)) return undefined;
  const nth = (travel: number) => 3 * nearestOf(heights, travel);
  const curve = {
    value: (travel: number) => swept[nth(travel) + 1]!,
    slope: (travel: number) => (swept[nth(travel) + 2]! - swept[nth(travel)]!) / (2 * BESIDE_MM),
  };
  const name = own?.name ?? `${quantity}.0`;
  const allowances = own?.allowances ?? toeAllowances;
  const sd = own?.sd ?? TOE_SD;
  const set: ReadSet = {
    ...like,
    ...{ quantity, name, allowances, rows, sd, readings: all, parts: own?.parts ?? [] },
    travels: Float64Array.from(heights, (travel) => travel + raisedBy),
    at: Int32Array.from(rows.travel, (travel) => heights.indexOf(travel)),
    values: rows.value,
    dof: own ? own.dof + dofOf(rows) - dofOf(own.rows) : Math.max(1, USUAL_DOF + dofOf(rows) - OF_CURVE),
    nuisances: nuisancesOf(rows, curve, { quantity, allowances }, name),
  };
  return own ? sets.map((one) => (one === own ? set : one)) : [...sets, set];
}

/** Readings that say something of the scatter. */
const dofOf = ({ n, passes }: Rows): number => n - passes.length;

const nearestOf = (heights: readonly number[], travel: number): number =>
  heights.reduce((best, height, i) => (Math.abs(height - travel) < Math.abs(heights[best]! - travel) ? i : best), 0);
