import { choleskyOfSum } from '../math/qr.js';
import { InputError } from '../quantity/problem.js';
import type { Reading } from '../readings/reading.js';
import type { Source } from '../uncertainty/estimate.js';
import { checkReadings } from './check-readings.js';
import type { Candidate, CurveFit, PassOffset } from './curve-fit.js';
import { doubtOf } from './fit-doubt.js';
import { decompose, type Extra, type Model, type Solution, solve } from './fit-model.js';
import type { FitOptions } from './fit-options.js';
import { repeatability, studentised } from './fit-residuals.js';
import { arrange, mostHeights, shifted } from './fit-rows.js';
import { effectsOf } from './fit-sources.js';
import { scatterOf } from './scatter.js';

export type { FitOptions } from './fit-options.js';

/**
 * The curve of readings: *value = curve(travel) + offset of the pass*, and beside it, where the readings tell it, half the difference
 * between going up and going down, the drift of the gauge's zero along a pass, and friction at the turns. Least squares, equal
 * weights, one residual for all.
 *
 * The degree by evidence is the best by AICc (Hurvich and Tsai, Biometrika 76, 1989) **and one more**. A linkage is no polynomial: the
 * criterion stops where the error of the form drowns in the scatter, and its band then leaves that error out.
 *
 * The doubt of the curve holds, each a source of its own:
 * - the scatter of the readings, with the correlation between neighbours in time that the residuals show, and with what the passes run
 *   apart in slope;
 * - how the gauge's zero lay from pass to pass, which moves a value and no change; with a single pass it is not known and not in it;
 * - the scales of gauge and tape, and the height zero of the set: `gaugeScale`, `tapeScale` in %, `zeroHeight` in mm;
 * - drift: told by passes that return to their first height (`again`) or run both ways in an order that is known; else `drift` is the
 *   allowance, in degrees from a pass's first reading to its last;
 * - friction, where both ways are told and differ.
 *
 * The options are 95 % bounds, by default those of `DEFAULT_DOUBTS`; 0 takes one out, `plain` all of them. The order of the readings
 * says nothing and changes nothing, not even in the last digit, unless `inOrder` says that each pass stands as it was taken; without it
 * a pass told to go up or down is taken to have been read by height.
 *
 * Over random three-dimensional linkages whose readings have all of this, drawn from the stated doubt, the 95 % band of a change holds
 * the truth in 93 to 97 % over 25 and 50 mm of bump, seeds 1 to 3 (`node test/bench/run.mjs fit`, where every case stands by name, with
 * those beyond an allowance). A body that creeps up with the wheel counts with the tape. Not in it: what is beyond the stated doubt,
 * and friction where no direction is told.
 *
 * `residualSd`, `dof`, `coefficientSd` are of plain least squares, as a regression library has them. Readings that do not belong: the
 * largest externally studentised residual is beyond Student's t at 1 % shared among all readings (Bonferroni: one honest series in a
 * hundred has one accused; at a fixed limit of 3 it would be every third series of 150). The worst is set aside before the rest is
 * judged, up to a tenth of all and 20, as a wrong reading at an end drags its neighbours along.
 *
 * @throws InputError with everything wrong with readings (`readings.3.travel`) and options; else `readings` with their number where
 * there are too few, or, with `other: 'travel'`, with the most heights that any pass has; or `degree`, whose limit is the highest
 * that these readings tell with something left to judge it by
 */
export function fitCurve(readings: readonly Reading[], options: FitOptions = {}): CurveFit {
  checkReadings(readings, options);
  const first = attempt(readings, options, false);
  const outliers = outliersBy(first, readings, options);
  // One wild reading at an end would be taken for friction there.
  const whole = outliers.length > 0 || options.plain ? first : attempt(readings, options, true);
  if (!whole.chosen) throw refusal(whole, options);
  const { model, candidates, chosen, solution, t } = whole;

  const { degree, residualSd, dof, adjustedRSquared, left } = chosen;
  const { n, order, passes, low, high, centre, scale, squares } = model.rows;
  const { extras } = model;
  const { coefficients } = solution;
  const scatter = scatterOf(model.rows, solution, options.plain ?? false);
  const { parts, weightErrors, offsets } = doubtOf(
    { rows: model.rows, extra: extras.length, degree },
    solution,
    scatter,
  );
  const alone = doubtOf({ rows: model.rows, extra: extras.length, degree }, solution, {
    correlation: 0,
    variance: residualSd ** 2,
  });
  const powerParts = alone.parts.map((part) => shifted(part, centre, scale));
  const isMany = passes.length > 1;
  const zeroSd = isMany ? levelSd(offsets) : 0;
  const effects = options.plain ? [] : effectsOf(model, solution, scatter, options);
  if (isMany) {
    const source = { id: 'zero', label: "gauge's zero in each pass", dof: passes.length - 1 };
    effects.unshift({ source, on: new Float64Array(degree + 1).fill(zeroSd, 0, 1) });
  }
  const sources = Array.from(
    coefficients,
    (_, k): Source => ({ id: `fit.${k}`, label: 'scatter of readings', dof: scatter.dof }),
  );
  const repeated = repeatability(solution, model);
  const beside = (extra: (typeof extras)[number]) => {
    const at = extras.indexOf(extra);
    return { value: solution.weights[at]!, standardError: weightErrors[at]! };
  };
  const asGiven = (values: Float64Array) => {
    const given = new Float64Array(n);
    order.forEach((index, i) => {
      given[index] = values[i]!;
    });
    return given;
  };
  return {
    degree,
    powerCoefficients: shifted(coefficients, centre, scale),
    coefficientSd: coefficients.map((_, k) => Math.hypot(...powerParts.map((part) => part[k]!))),
    rSquared: 1 - left / squares,
    adjustedRSquared,
    residualSd,
    dof,
    scatter: {
      correlation: scatter.correlation,
      effectiveReadings: scatter.effectiveReadings,
      dof: scatter.dof,
      durbinWatson: scatter.durbinWatson,
      chance: scatter.chance,
    },
    zeroSd,
    passOffsets: isMany ? offsets : [],
    ...(repeated && { repeatability: repeated }),
    ...(extras.includes('direction') && { upLessDown: beside('direction') }),
    ...(extras.includes('drift') && {
      drift: {
        ...beside('drift'),
        ofReading: asGiven(model.rows.taken.progress.map((share) => share * beside('drift').value)),
      },
    }),
    candidates: candidates.map(({ left: _, ...candidate }) => candidate),
    residuals: asGiven(solution.residuals),
    studentised: asGiven(t),
    strangers: outliers.sort((a, b) => a - b),
    curve: {
      kind: 'polynomial',
      quantity: options.quantity ?? 'camber',
      domain: [low, high],
      sources: [...sources, ...effects.map(({ source }) => source)],
      centre,
      scale,
      coefficients,
      factor: choleskyOfSum(parts, degree + 1),
      ...(effects.length > 0 && { effects: Float64Array.from(effects.flatMap(({ on }) => [...on])) }),
    },
  };
}

/** Where there are more, something else is wrong, and each costs a fit. */
const MOST_OUTLIERS = 20;

type Judged = Candidate & { left: number };

/**
 * A fit, or, without one chosen, what is known of why there is none. `worst`: index, as given, of the reading that belongs least, where
 * it does not.
 */
type Attempt = { model: Model; candidates: Judged[]; worst?: number | undefined } & (
  | { chosen?: never; solution?: never; t?: never }
  | { chosen: Judged; solution: Solution; t: Float64Array }
);

/**
 * A drift is estimated where the readings tell it at least half as well (in squares) as one height read again at the end of one pass does.
 */
const DRIFT_TOLD = 0.25;

/** Indexes of readings that do not belong, the worst first. */
function outliersBy(whole: Attempt, readings: readonly Reading[], options: FitOptions): number[] {
  const outliers: number[] = [];
  let rest = [...readings.keys()];
  for (let next = whole; next.worst !== undefined && outliers.length < Math.min(rest.length / 10, MOST_OUTLIERS); ) {
    outliers.push(rest[next.worst]!);
    rest = rest.filter((i) => i !== outliers.at(-1));
    next = attempt(
      rest.map((i) => readings[i]!),
      options,
      false,
    );
  }
  return outliers;
}

function attempt(readings: readonly Reading[], options: FitOptions, hasTurn: boolean): Attempt {
  const { degree = 'auto', maxDegree = 6, inOrder = false, plain = false } = options;
  const rows = arrange(readings, inOrder);
  const degrees = Math.max(maxDegree, degree === 'auto' ? 1 : degree);
  const wanted = new Set<Extra>(plain ? [] : ['loop']);
  if (!plain && rows.taken.isDriftSeen) wanted.add('drift');
  if (hasTurn) wanted.add('turn');
  for (;;) {
    const model = decompose(rows, degrees, wanted);
    const found = attemptBy(model, degree);
    const dropped = found.solution ? unfit(found) : model.extras.find((extra) => wanted.has(extra));
    if (!dropped || !wanted.delete(dropped)) return found;
  }
}

/** What costs more beside the curve than it is worth: a drift that the readings hardly tell, friction at the turns that they do not show. */
function unfit({ model: { extras }, chosen, solution }: Attempt): Extra | undefined {
  const { weights, inverse } = solution!;
  const isShown = (extra: Extra, errors: number) => {
    const at = extras.indexOf(extra);
    return at < 0 || Math.abs(weights[at]!) > errors * chosen!.residualSd * Math.sqrt(squaresAt(inverse, at));
  };
  if (!isShown('turn', TURN_TOLD)) return 'turn';
  if (!isShown('loop', LOOP_TOLD)) return 'loop';
  const drift = extras.indexOf('drift');
  return drift >= 0 && squaresAt(inverse, drift) * DRIFT_TOLD > 1 ? 'drift' : undefined;
}

/** In standard errors. */
const TURN_TOLD = 2.5;
const LOOP_TOLD = 1;

const squaresAt = (columns: readonly Float64Array[], at: number): number =>
  columns.reduce((sum, column) => sum + column[at]! ** 2, 0);

function attemptBy(model: Model, degree: number | 'auto'): Attempt {
  const { rows } = model;
  const candidates = candidatesOf(model);
  const best = candidates.reduce((a, b) => (b.criterion < a.criterion ? b : a), candidates[0]!);
  const chosen = candidates[(degree === 'auto' ? Math.min((best?.degree ?? 0) + 1, candidates.length) : degree) - 1];
  if (!chosen) return { model, candidates };
  const solution = solve(model, chosen.degree);
  const { t, worst } = studentised(solution, rows, chosen.left, chosen.dof);
  return { model, candidates, chosen, solution, t, worst: worst === undefined ? worst : rows.order[worst] };
}

function refusal({ model: { rows, extras }, candidates }: Attempt, { degree }: FitOptions): InputError {
  const [code, path] = ['too-few', 'readings'] as const;
  const least = Math.max(1, rows.passes.length) + extras.length + 2;
  const heights = mostHeights(rows);
  return new InputError([
    candidates.length > 0
      ? { code: 'out-of-range', path: 'degree', value: degree, limit: candidates.length }
      : rows.n < least
        ? { code, path, value: rows.n, limit: least }
        : { code, path, value: heights, limit: heights + 1, other: 'travel' },
  ]);
}

/** Every degree that can be told and leaves something to judge it by, with the sum of squares it leaves. */
function candidatesOf({ rows, extras, told, z }: Model): Judged[] {
  const { n, passes, size, squares } = rows;
  const extra = extras.length;
  /** What rounding leaves of values that a polynomial meets exactly. */
  const rounding = n * (1e-15 * size) ** 2;
  return Array.from({ length: Math.max(0, Math.min(told, n - passes.length - extra - 1)) }, (_, i) => {
    const dof = n - passes.length - extra - i - 1;
    let left = 0;
    for (let k = n - 1; k > i + extra; k--) left += z[k]! ** 2;
    // The variance is one parameter more.
    const parameters = n - dof + 1;
    return {
      degree: i + 1,
      criterion:
        dof > 2 ? n * Math.log(Math.max(left, rounding) / n) + (2 * parameters * n) / (n - parameters - 1) : NaN,
      residualSd: Math.sqrt(left / dof),
      dof,
      adjustedRSquared: 1 - left / dof / (squares / (n - 1)),
      left,
    };
  });
}

/** Standard uncertainty of the mean of the passes' zeros, by their own scatter. */
const levelSd = (offsets: readonly PassOffset[]): number =>
  Math.sqrt(offsets.reduce((sum, { offset }) => sum + offset * offset, 0) / (offsets.length - 1) / offsets.length);
