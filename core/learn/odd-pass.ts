import { fTail } from '../math/f-tail.js';
import { dot } from '../math/sums.js';
import type { Goodness } from './goodness.js';
import type { Estimated } from './learn.js';
import type { Slip } from './slips.js';

/** A pass whose curve is another than that of all the rest: of another car, with other parts, or misread as a whole. */
export interface OddPass {
  /** Which of the sets, from 0. */
  set: number;
  /** Its name. */
  pass: string;
  /** What it has of its own against the rest, as a sum of squares over its degrees of freedom: about 1 where it belongs. */
  perDof: number;
  /** Degrees of freedom. */
  dof: number;
  /** The chance of one as large of a pass that belongs. */
  chance: number;
  /** All of it goes away with the pass begun so much higher, mm: further than anybody is mistaken by. */
  height?: number;
  /** There are two passes, and either may be the one. */
  isEither: boolean;
}

/** Below this chance, of all passes together, one does not belong: in one of a thousand clean sets. */
const ODD = 0.001;
/** Of a pass begun further off than this, mm, the height is no slip of the tape: other parts or another car move the curve as much. */
const MOST_HEIGHT_MM = 15;
/** A curve of its own, beside what another height does: so many of Legendre's polynomials over its travel. */
const SHAPES = 3;
/** Fewer readings have no shape. */
const LEAST_READINGS = 4;

/** What was found in passes, each by what explains it best. */
export interface PassFaults {
  odd?: OddPass;
  slips: Slip[];
}

/**
 * What is wrong inside passes, and with whole ones. Each pass is given a curve of its own in turn, by generalised least squares as for a
 * slip, and what that takes off the sum of squares is judged by the rest (F test). Of a slip, another starting height and a curve of its own
 * the one stands that Akaike's criterion prefers; where a whole pass is off, no slip is told of it.
 */
export function passFaults(
  estimated: Estimated,
  { perDof, dof }: Pick<Goodness, 'perDof' | 'dof'>,
  slips: readonly Slip[],
): PassFaults {
  const { sets, residuals } = estimated;
  const odd: OddPass[] = [];
  const told: Slip[] = [];
  const all = perDof * dof;
  // Of a model with so many numbers more that takes so much off; less is better.
  const badness = (count: number, taken: number) => dof * Math.log(Math.max(1e-9, 1 - taken / all)) + 2 * count;
  let from = 0;
  for (const [set, { rows, sd, nuisances }] of sets.entries()) {
    for (const [p, { name, count }] of rows.passes.entries()) {
      const slip = slips.find((one) => one.set === set && one.pass === name);
      if (rows.passes.length < 2 || count < LEAST_READINGS) {
        if (slip) told.push(slip);
        continue;
      }
      const inPass = (of: (row: number) => number) => {
        const column = new Float64Array(residuals.length);
        for (let row = 0; row < rows.n; row++) if (rows.passOf[row] === p) column[from + row] = of(row) / sd;
        return column;
      };
      const height = nuisances.find(({ id }) => id.endsWith(`.height.${name}`));
      const shapes = Array.from(
        { length: Math.min(SHAPES, count - 1) },
        (_, k) => (row: number) => legendre(k + 1, rows.x[row]!),
      );
      const columns = [...(height ? [inPass((row) => height.column[row]! / height.unit)] : []), ...shapes.map(inPass)];
      const { taken, first } = takenBy(columns, estimated);
      const own = taken.reduce((sum, one) => sum + one, 0);
      const ofHeight = height ? taken[0]! : 0;
      const free = Math.max(1, dof - taken.length);
      const left = Math.max(1e-9, all - own) / free;
      const chanceOf = (sum: number, count: number) => fTail(sum / count / left, count, free);
      const chance = chanceOf(own, taken.length);
      const isHeight = height !== undefined && chanceOf(own - ofHeight, taken.length - 1) * rows.passes.length >= ODD;
      const byCurve = badness(taken.length, own);
      const byHeight = height ? badness(1, ofHeight) : Number.POSITIVE_INFINITY;
      const bySlip = slip ? badness(2, slip.score ** 2) : Number.POSITIVE_INFINITY;
      if (slip && bySlip < Math.min(byCurve, byHeight)) {
        told.push(slip);
        continue;
      }
      if (chance * rows.passes.length >= ODD || (isHeight && Math.abs(first) <= MOST_HEIGHT_MM)) continue;
      odd.push({
        ...{ set, pass: name, perDof: own / taken.length / left, dof: taken.length, chance },
        ...(isHeight && { height: first }),
        isEither: rows.passes.length === 2,
      });
    }
    from += rows.n;
  }
  const [worst] = odd.sort((a, b) => b.perDof - a.perDof);
  return worst ? { odd: worst, slips: told.filter(({ set }) => set !== worst.set) } : { slips: told };
}

const legendre = (k: number, x: number): number =>
  k === 1 ? x : k === 2 ? (3 * x * x - 1) / 2 : (5 * x ** 3 - 3 * x) / 2;

/**
 * What columns more in the model take off the sum of squares, each after those before it, and how much of the first there is by itself; the
 * inverse covariance is 1 − J Σ Jᵀ (Woodbury).
 */
function takenBy(
  more: readonly Float64Array[],
  { residuals, columns, factor }: Estimated,
): { taken: number[]; first: number } {
  const seen = more.map((one) => {
    const across = Float64Array.from(columns, (column) => dot(column, one));
    return Float64Array.from(factor, (column) => dot(column, across));
  });
  const matrix = more.map((a, i) => more.map((b, j) => dot(a, b) - dot(seen[i]!, seen[j]!)));
  const score = more.map((one) => dot(one, residuals));
  const first = score[0]! / matrix[0]![0]!;
  const taken = more.map((one, j) => {
    const pivot = matrix[j]![j]!;
    if (!(pivot > 1e-6 * dot(one, one))) return 0;
    for (let i = j + 1; i < more.length; i++) {
      const by = matrix[i]![j]! / pivot;
      for (let k = j; k < more.length; k++) matrix[i]![k]! -= by * matrix[j]![k]!;
      score[i]! -= by * score[j]!;
    }
    return score[j]! ** 2 / pivot;
  });
  return { taken, first };
}
