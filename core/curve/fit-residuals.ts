import { studentTQuantile } from '../math/student-t.js';
import type { Model, Solution } from './fit-model.js';
import type { Rows } from './fit-rows.js';

/** Chance that a series without an outlier has one told, shared among all readings by Bonferroni's bound. */
const FALSE_ALARM = 0.01;
/** A reading with less freedom than this decides its own fit. */
const FREE = 1e-9;

/**
 * Externally studentised residuals (Belsley, Kuh and Welsch, Regression Diagnostics, 1980, 2.1), and the row that belongs least
 * where it does not.
 *
 * @param left sum of squared residuals
 */
export function studentised(
  { residuals, q }: Solution,
  { n, passOf, passes, size }: Rows,
  left: number,
  dof: number,
): { t: Float64Array; worst: number | undefined } {
  const rounding = (1e-12 * size) ** 2;
  const t = residuals.map((residual, i) => {
    const free = q.reduce((rest, column) => rest - column[i]! ** 2, 1 - 1 / passes[passOf[i]!]!.count);
    return dof < 2 || free < FREE
      ? NaN
      : residual / Math.sqrt(Math.max((left - residual ** 2 / free) / (dof - 1), rounding) * free);
  });
  let most = dof < 2 ? Infinity : studentTQuantile(1 - FALSE_ALARM / 2 / n, dof - 1);
  let worst: number | undefined;
  t.forEach((value, i) => {
    if (Math.abs(value) > most) {
      most = Math.abs(value);
      worst = i;
    }
  });
  return { t, worst };
}

/**
 * Scatter of readings repeated at one height, with the fit's offsets, drift and difference between up and down taken off. Exact where
 * every pass has every height.
 */
export function repeatability(
  { offsets, weights }: Solution,
  { rows: { travel, passOf, value }, extras, terms }: Model,
): { sd: number; dof: number } | undefined {
  const heights = new Map<number, number[]>();
  travel.forEach((height, i) => {
    const repeats = heights.get(height);
    if (repeats) repeats.push(i);
    else heights.set(height, [i]);
  });
  const involved = new Set<number>();
  let dof = 1 - extras.length;
  let squares = 0;
  for (const repeats of heights.values()) {
    if (repeats.length < 2) continue;
    const values = repeats.map((i) => {
      const pass = passOf[i]!;
      const beside = extras.map((_, k) => weights[k]! * (terms[k]!.column[i]! + terms[k]!.means[pass]!));
      return beside.reduce((rest, one) => rest - one, value[i]! - offsets[pass]!);
    });
    const mean = values.reduce((a, b) => a + b) / values.length;
    for (const repeat of values) squares += (repeat - mean) ** 2;
    for (const i of repeats) involved.add(passOf[i]!);
    dof += values.length - 1;
  }
  dof -= involved.size;
  return involved.size > 0 && dof > 0 ? { sd: Math.sqrt(squares / dof), dof } : undefined;
}
