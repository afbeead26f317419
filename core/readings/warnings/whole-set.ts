import type { CurveFit } from '../../curve/curve-fit.js';
import { derivative, horner } from '../../curve/polynomial.js';
import { studentTQuantile } from '../../math/student-t.js';
import type { Reading } from '../reading.js';
import { type DataWarning, type DataWarningOf, LIMITS } from './data-warning.js';
import { passNames, passOf, stepOf } from './robust-fit.js';

/** What the set shows as a whole. Not to be told while single readings are wrong, which alone would show the same. */
export function wholeSet(readings: readonly Reading[], fit: CurveFit | undefined): DataWarning[] {
  const warnings: DataWarning[] = [];
  if (!fit) return warnings;
  const add = (warning: DataWarning) => warnings.push(warning);
  const chosen = fit.candidates.find(({ degree }) => degree === fit.degree);
  const squares = ({ residualSd, dof }: CurveFit['candidates'][number]) => residualSd ** 2 * dof;
  // One power more, or two where the next is even or odd by itself.
  const better = fit.candidates.find(
    (one) =>
      chosen &&
      one.dof > 1 &&
      (one.degree === fit.degree + 1 || one.degree === fit.degree + 2) &&
      squares(chosen) - squares(one) >
        studentTQuantile(1 - LIMITS.patternLevel / 2, one.dof) ** 2 *
          Math.max(one.residualSd, LIMITS.leastScatter / 2) ** 2,
  );
  if (better) add({ kind: 'pattern', readings: [], degree: fit.degree, better: better.degree });

  const values = readings.map(({ value }) => value);
  const span = Math.max(...values) - Math.min(...values);
  const step = stepOf(values);
  const isCoarse = step > 0 && values.length > 5 && span > 0 && span < LIMITS.coarseSpan * step;
  if (isCoarse) add({ kind: 'coarse', readings: [], step });
  const { sd, dof } = fit.repeatability ?? { sd: fit.residualSd, dof: fit.dof };
  // An SD from few readings is itself known to one part in √(2 dof).
  if (!isCoarse && dof > 2 && sd > LIMITS.repeatability * (1 + 2 / Math.sqrt(2 * dof))) {
    add({ kind: 'repeatability', readings: [], sd, limit: LIMITS.repeatability });
  }
  const { scatter } = fit;
  const drift = driftTold(fit);
  if (drift) add({ kind: 'drift', readings: [], drift: drift.value });
  const apart = passApart(readings, fit);
  if (apart) add(apart);
  // A curve that is too stiff, or a pass that runs apart, makes neighbours go together as well.
  if (!better && !apart && scatter.chance < LIMITS.correlatedLevel) {
    const effective = Math.max(1, Math.round(scatter.effectiveReadings));
    add({ kind: 'correlated', readings: [], count: readings.length, effective });
  }
  const { value = 0, standardError = 0 } = fit.upLessDown ?? {};
  // A pass there and back that drifted reads the second half by half the drift higher.
  const isDrift =
    drift &&
    Math.abs(value) <
      Math.abs(drift.value) / 2 + LIMITS.driftErrors * Math.hypot(standardError, drift.standardError / 2);
  if (!isDrift && Math.abs(value) > Math.max(LIMITS.upDownErrors * standardError, LIMITS.upDownDegrees)) {
    add({ kind: 'up-down', readings: [], upLessDown: value });
  }
  return warnings;
}

/** A drift that is more than the scatter, and more than any gauge has. */
export const driftTold = ({ drift }: CurveFit): CurveFit['drift'] =>
  drift && Math.abs(drift.value) > Math.max(LIMITS.driftErrors * drift.standardError, LIMITS.driftDegrees)
    ? drift
    : undefined;

/** The pass that runs most at a slope of its own, where one does. */
function passApart(readings: readonly Reading[], fit: CurveFit): DataWarningOf<'pass-apart'> | undefined {
  const names = passNames(readings);
  const { curve, residuals, scatter, residualSd } = fit;
  if (names.length < 2 || curve.kind !== 'polynomial') return undefined;
  const slopes = derivative(curve.coefficients);
  /** Degrees per mm. */
  const slopeAt = (travel: number) => horner(slopes, (travel - curve.centre) / curve.scale) / curve.scale;
  // Residuals that go together make slopes of their own.
  const error = residualSd * Math.sqrt((1 + scatter.correlation) / (1 - scatter.correlation));
  let most: number = LIMITS.apartErrors;
  let found: DataWarningOf<'pass-apart'> | undefined;
  for (const pass of names) {
    const own = [...readings.keys()].filter((i) => passOf(readings[i]!) === pass && !readings[i]!.again);
    const travels = own.map((i) => readings[i]!.travel);
    const middle = travels.reduce((sum, travel) => sum + travel, 0) / travels.length;
    const span = Math.max(...travels) - Math.min(...travels);
    const squares = travels.reduce((sum, travel) => sum + (travel - middle) ** 2, 0);
    const slope = own.reduce((sum, i) => sum + (readings[i]!.travel - middle) * residuals[i]!, 0) / squares;
    // The curve follows each pass by its share.
    const degrees = (slope * span * names.length) / (names.length - 1);
    const errors = (Math.abs(slope) * Math.sqrt(squares * (names.length / (names.length - 1)))) / error;
    if (!(errors > most && Math.abs(degrees) > LIMITS.apartDegrees)) continue;
    most = errors;
    const ends = [Math.min(...travels), Math.max(...travels)].map(slopeAt);
    const mm = degrees / (ends[1]! - ends[0]!);
    found = {
      kind: 'pass-apart',
      readings: own,
      pass,
      degrees,
      ...(Math.abs(mm) <= LIMITS.apartMm && { mm }),
      ...(names.length === 2 && { other: names.find((name) => name !== pass)! }),
    };
  }
  return found;
}
