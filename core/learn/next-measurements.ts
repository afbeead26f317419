import { buildLinkage } from '../linkage/build-linkage.js';
import { type HardPointKey, hardPointKeys } from '../linkage/corner.js';
import { movedBy } from '../linkage/corner-source.js';
import { sweepDerivatives } from '../linkage/derivatives.js';
import { sweepTravel } from '../linkage/sweep.js';
import { solveInPlace } from '../math/solve.js';
import { dot } from '../math/sums.js';
import type { LearntCorner } from './learn-corner.js';
import { slopesOfSet } from './set-model.js';

/** A further measurement, and what it would leave of the doubt that was asked about. */
export interface NextMeasurement {
  id: 'toeSweep' | 'otherWay' | 'moreTravel' | 'caster' | 'rodLength' | `point.${HardPointKey}`;
  /** Standard uncertainty afterwards over that of today, 0 to 1: expected, whatever it reads. */
  left: number;
}

/** How well each could be measured, as standard uncertainties: degrees, mm. Common practice, no source. */
const TOE_SD = 0.05;
const CASTER_SD = 0.15;
const ROD_SD = 1;
const POINT_SD = 1;
const MORE_MM = 10;
/** Of a gauge's zero, degrees: unknown. */
const ZERO_SD = 20;
const NUDGE = 0.1;

/** Rows of further readings: what each unknown does to them, in their standard deviations; and what a zero of their own does. */
interface Further {
  id: NextMeasurement['id'];
  rows: Float64Array[];
  zero?: number;
}

/**
 * What further measurement narrows an answer most, by the covariance alone: no reading has to be taken to know it (Lindley, Annals of
 * Mathematical Statistics 27, 1956; of linear Gaussian models the gain does not depend on what is read).
 *
 * @param asked how the answer changes with each unknown of the links, per standard uncertainty beforehand, in the order of
 *   `learnt.estimated.unknowns.sources`
 * @returns those that leave less than all of it, best first
 */
export function nextMeasurements(learnt: LearntCorner, asked: Float64Array): NextMeasurement[] {
  const { estimated } = learnt;
  const { factor, passes } = estimated;
  const answer = new Float64Array(passes.length + asked.length);
  answer.set(asked, passes.length);
  // In coordinates in which everything is of unit variance and independent.
  const own = Float64Array.from(factor, (column) => dot(column, answer));
  const before = dot(own, own);
  if (!(before > 0)) return [];
  const all = furtherOf(learnt).map(({ id, rows, zero }): NextMeasurement => {
    const seen = rows.map((row) => Float64Array.from(factor, (column) => dot(column, row)));
    const n = rows.length;
    const matrix = new Float64Array(n * n);
    const across = Float64Array.from(seen, (row) => dot(row, own));
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        matrix[i * n + j] = dot(seen[i]!, seen[j]!) + (i === j ? 1 : 0) + (zero === undefined ? 0 : zero ** 2);
      }
    }
    const solved = across.slice();
    if (!solveInPlace(matrix, solved, n)) return { id, left: 1 };
    return { id, left: Math.sqrt(Math.max(0, 1 - dot(across, solved) / before)) };
  });
  // Of the points the best: nobody measures all of them again.
  const best = (list: NextMeasurement[]) => list.sort((a, b) => a.left - b.left);
  const [point] = best(all.filter(({ id }) => id.startsWith('point.')));
  return best([...all.filter(({ id }) => !id.startsWith('point.')), ...(point ? [point] : [])]).filter(
    ({ left }) => left < 0.99,
  );
}

function furtherOf({ estimated, known }: LearntCorner): Further[] {
  const { unknowns, passes, sets } = estimated;
  const { sources } = unknowns;
  const { corner } = known;
  const first = passes.length;
  const count = first + sources.length;
  const row = (ofLinks: (s: number) => number, sd: number): Float64Array => {
    const all = new Float64Array(count);
    sources.forEach((source, s) => {
      if (!source.part && !source.isOfPartsAlone) all[first + s] = ofLinks(s) / sd;
    });
    return all;
  };
  const further: Further[] = [];
  const stock = sets.find(({ parts, quantity }) => parts.length === 0 && quantity === 'camber');

  if (!sets.some(({ quantity }) => quantity === 'toe')) {
    const travels = stock?.travels ?? Float64Array.of(-40, -20, 0, 20, 40);
    const { keys, toe } = sweepDerivatives(corner, buildLinkage(corner, { isOpen: true }), travels);
    const rows = [...travels].flatMap((_, i) => {
      const one = row((s) => byMoves(sources[s]!.moves, keys, toe, i), TOE_SD);
      return one.every(Number.isFinite) ? [one] : [];
    });
    further.push({ id: 'toeSweep', rows, zero: ZERO_SD / TOE_SD });
  }
  if (stock) {
    // One pass more, the other way: what drifts alike shows.
    const slopes = slopesOfSet(unknowns, estimated.at.subarray(first), stock);
    const [way] = stock.rows.direction;
    const last = Math.max(1, stock.travels.length - 1);
    const rows = [...stock.travels].map((_, i) => {
      const one = row((s) => slopes[s]![i]!, stock.sd);
      const at = stock.at.indexOf(i);
      passes.forEach(({ id, columns, unit }, j) => {
        const column = columns[sets.indexOf(stock)];
        if (!column || id.includes('.zero.') || id.includes('.height.') || id.includes('.drift.')) return;
        const isDrift = id === 'drift';
        one[j] = (isDrift ? unit * (0.5 - i / last) : id.endsWith('.way') ? -column[at]! : column[at]!) / stock.sd;
      });
      return one;
    });
    if (way === 0) further.push({ id: 'otherWay', rows, zero: ZERO_SD / stock.sd });
    const [low, high] = [stock.travels[0]! - MORE_MM, stock.travels.at(-1)! + MORE_MM];
    const beyond = sweepDerivatives(corner, buildLinkage(corner, { isOpen: true }), Float64Array.of(low, high));
    const middle = (s: number) => slopes[s]!.reduce((sum, one) => sum + one, 0) / stock.travels.length;
    const sd = stock.sd * Math.sqrt((1 + 1 / stock.travels.length) / stock.rows.passes.length);
    further.push({
      id: 'moreTravel',
      rows: [0, 1]
        .map((i) => row((s) => byMoves(sources[s]!.moves, beyond.keys, beyond.camber, i) - middle(s), sd))
        .filter((one) => one.every(Number.isFinite)),
    });
  }
  const slopeOf = (figure: (of: typeof corner) => number) => (s: number) =>
    (figure(movedBy(corner, sources[s]!, NUDGE)) - figure(movedBy(corner, sources[s]!, -NUDGE))) / (2 * NUDGE);
  const caster = slopeOf((of) => sweepTravel(buildLinkage(of, { isOpen: true }), [0]).caster[0]!);
  further.push({ id: 'caster', rows: [row(caster, CASTER_SD)] });
  const rod = slopeOf(({ tieRod: { inner, outer } }) => Math.hypot(...inner.map((one, axis) => outer[axis]! - one)));
  further.push({ id: 'rodLength', rows: [row(rod, ROD_SD)] });
  for (const key of hardPointKeys(corner)) {
    const rows = [0, 1, 2].map((axis) => row((s) => sources[s]!.moves[key]?.[axis] ?? 0, POINT_SD));
    further.push({ id: `point.${key}`, rows });
  }
  return further.filter(({ rows }) => rows.length > 0);
}

const byMoves = (
  moves: Partial<Record<HardPointKey, readonly [number, number, number]>>,
  keys: readonly HardPointKey[],
  by: Float64Array,
  at: number,
): number =>
  keys.reduce(
    (sum, key, k) =>
      sum + (moves[key] ?? []).reduce((all, mm, axis) => all + mm * by[3 * (at * keys.length + k) + axis]!, 0),
    0,
  );
