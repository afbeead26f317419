import type { CurveFit } from '../../curve/curve-fit.js';
import { horner } from '../../curve/polynomial.js';
import { mean } from '../../math/sums.js';
import type { Reading } from '../reading.js';
import { type DataWarning, type DataWarningOf, LIMITS } from './data-warning.js';
import { asTaken } from './pass-warnings.js';
import { median, passNames, passOf, type Row, type WeightedFit } from './robust-fit.js';

const indexesOf = (readings: readonly Reading[], pass: string) =>
  [...readings.keys()].filter((i) => passOf(readings[i]!) === pass);

/** Degrees per mm where the curve is steepest, between the heights that were read. */
function steepest(rows: readonly Row[], rest: WeightedFit): number {
  const travels = rows.map(({ travel }) => travel);
  const [low, high] = [Math.min(...travels), Math.max(...travels)];
  const at = (travel: number) => -rest.residual({ ...rows[0]!, travel, value: 0 });
  const steps = 20;
  const step = (high - low) / steps;
  let most = 0;
  for (let k = 0; step && k < steps; k++) {
    most = Math.max(most, Math.abs(at(low + (k + 1) * step) - at(low + k * step)) / step);
  }
  return most;
}

/** Where the reference on the body moved: inside a pass from its first third to its last, else from the usual to one pass. */
export function bodyMoved(
  readings: readonly Reading[],
  rows: readonly Row[],
  rest: WeightedFit,
): DataWarningOf<'body-moved'>[] {
  const passes = passNames(readings).flatMap((pass) => {
    const taken = asTaken(readings, indexesOf(readings, pass)).filter((i) => readings[i]!.body !== undefined);
    return taken.length > 0 ? [{ pass, taken, bodies: taken.map((i) => readings[i]!.body!) }] : [];
  });
  if (passes.length === 0) return [];
  const rate = steepest(rows, rest);
  const warnings: DataWarningOf<'body-moved'>[] = [];
  const tell = (pass: string, taken: number[], mm: number, more: { isWithin: boolean; other?: string }) => {
    if (Math.abs(mm) <= LIMITS.bodyMm) return;
    warnings.push({ kind: 'body-moved', readings: taken, pass, mm, degrees: Math.abs(mm) * rate, ...more });
  };
  for (const { pass, taken, bodies } of passes) {
    const third = Math.ceil(bodies.length / 3);
    tell(pass, taken, mean(bodies.slice(-third)) - mean(bodies.slice(0, third)), { isWithin: true });
  }
  const middles = passes.map(({ bodies }) => median(bodies));
  passes.forEach(({ pass, taken }, i) => {
    if (i === 0 || warnings.some((warning) => warning.pass === pass)) return;
    tell(pass, taken, middles[i]! - middles[i - 1]!, { isWithin: false, other: passes[i - 1]!.pass });
  });
  return warnings;
}

/** One height more than once in a pass and direction, unless most heights of the pass are: then it was meant. */
export function duplicates(readings: readonly Reading[]): DataWarningOf<'duplicate'>[] {
  return passNames(readings).flatMap((pass) => {
    const byHeight = new Map<string, number[]>();
    for (const i of indexesOf(readings, pass)) {
      const { travel, going } = readings[i]!;
      const key = `${travel.toFixed(2)} ${going}`;
      byHeight.set(key, [...(byHeight.get(key) ?? []), i]);
    }
    const twice = [...byHeight.values()].filter(({ length }) => length > 1);
    if (twice.length * 3 > byHeight.size) return [];
    return twice.map((indexes): DataWarningOf<'duplicate'> => {
      const values = new Set(indexes.map((i) => readings[i]!.value));
      return { kind: 'duplicate', readings: indexes, isSameValue: values.size === 1 };
    });
  });
}

/** Numbers of the smallest model that is fitted: level and slope, a zero for each further pass. */
const SMALLEST = 2;

/** Too few, a pass of one or two, a wide gap. */
export function thin(readings: readonly Reading[], fit: CurveFit | undefined): DataWarning[] {
  const passes = passNames(readings);
  const warnings: DataWarning[] = [];
  const dof = fit?.dof ?? readings.length - SMALLEST - (passes.length - 1);
  if (dof < LIMITS.fewDof && readings.length > 0) {
    warnings.push({ kind: 'few-readings', readings: [], dof: Math.max(0, dof), more: LIMITS.fewDof - dof });
  }
  if (passes.length > 1) {
    for (const pass of passes) {
      const indexes = indexesOf(readings, pass);
      if (indexes.length < 3) warnings.push({ kind: 'short-pass', readings: indexes, pass });
    }
  }
  if (fit?.curve.kind !== 'polynomial') return warnings;
  const { coefficients, centre, scale } = fit.curve;
  const heights = [...new Set(readings.map(({ travel }) => travel))].sort((a, b) => a - b);
  const steps = heights.slice(1).map((height, i) => height - heights[i]!);
  const usual = median(steps);
  const at = (t: number) => horner(coefficients, (t - centre) / scale);
  steps.forEach((step, i) => {
    const [from, to] = [heights[i]!, heights[i + 1]!];
    const bend = Math.abs(at((from + to) / 2) - (at(from) + at(to)) / 2);
    if (step < LIMITS.gapSteps * usual || bend < LIMITS.gapBend) return;
    const ends = [...readings.keys()].filter((k) => readings[k]!.travel === from || readings[k]!.travel === to);
    warnings.push({ kind: 'gap', readings: ends, from, to, bend });
  });
  return warnings;
}
