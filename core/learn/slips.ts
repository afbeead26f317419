import type { Rows } from '../curve/fit-rows.js';
import { dot } from '../math/sums.js';
import type { Goodness } from './goodness.js';
import type { Estimated } from './learn.js';
import { asOfMany } from './pulls.js';

/** A gauge that moved on its mount: all readings of a pass from one on are off by as much. */
export interface Slip {
  /** Which of the sets, from 0. */
  set: number;
  /** Its name. */
  pass: string;
  /** Index, as given, of the first reading after it, in the order in which they were taken as far as that is known. */
  from: number;
  /** Degrees. */
  size: number;
  /** Of `size`, in its standard uncertainties. */
  sigma: number;
  /** Its square is what the step takes off the sum of squares. */
  score: number;
}

/** A step is looked for at every reading: of as many, in about one clean set of a hundred there is one larger (bench `learn`). */
const TOLD = 3.75;
/** What no gauge shows, degrees. */
const LEAST_DEG = 0.04;

/** Steps inside passes that neither links nor what is stated of gauge and tape account for; at most one a pass. */
export function slipsOf(estimated: Estimated, { perDof, dof }: Pick<Goodness, 'perDof' | 'dof'>): Slip[] {
  const { sets, residuals, columns, factor } = estimated;
  const found: Slip[] = [];
  const ofFew = asOfMany(TOLD, dof - 1);
  let from = 0;
  for (const [k, { rows, sd }] of sets.entries()) {
    for (const [p, { name }] of rows.passes.entries()) {
      const inPass = rows.order
        .map((index, row) => ({ index, row }))
        .filter(({ row }) => rows.passOf[row] === p)
        .sort((a, b) => taken(rows, a.row) - taken(rows, b.row) || rows.travel[a.row]! - rows.travel[b.row]!);
      let worst: Slip | undefined;
      for (let cut = 1; cut < inPass.length; cut++) {
        const step = new Float64Array(residuals.length);
        for (const { row } of inPass.slice(cut)) step[from + row] = 1 / sd;
        const { size, score } = scored(step, residuals, columns, factor);
        // A step makes the scatter look larger than it is: what is left without it is what counts (externally studentised).
        const sigma = (ofFew * score) / Math.sqrt(Math.max(1e-9, (perDof * dof - score ** 2) / (dof - 1)));
        if (Math.abs(sigma) > Math.abs(worst?.sigma ?? TOLD) && Math.abs(size) > LEAST_DEG) {
          worst = { set: k, pass: name, from: inPass[cut]!.index, size, sigma, score };
        }
      }
      if (worst) found.push(worst);
    }
    from += rows.n;
  }
  return found;
}

/** When in its pass a row was read; by height where nothing is known of it. */
const taken = ({ taken: { progress, unknownProgress } }: Rows, row: number) => progress[row]! + unknownProgress[row]!;

/**
 * One more column in the model: its size by generalised least squares, since the covariance of the readings is 1 + J Jᵀ and its inverse
 * 1 − J Σ Jᵀ (Woodbury).
 */
function scored(
  step: Float64Array,
  residuals: Float64Array,
  columns: readonly Float64Array[],
  factor: readonly Float64Array[],
): { size: number; score: number } {
  const across = Float64Array.from(columns, (column) => dot(column, step));
  const seen = factor.reduce((sum, column) => sum + dot(column, across) ** 2, 0);
  const told = dot(step, step) - seen;
  // Nothing of it is left once a pass's own zero is free.
  if (!(told > 1e-6 * dot(step, step))) return { size: 0, score: 0 };
  const score = dot(step, residuals);
  return { size: score / told, score: score / Math.sqrt(told) };
}
