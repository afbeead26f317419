import { inverse, Matrix } from 'ml-matrix';
import type { RegressionReading } from './independent-regression.js';

/*
 * The doubt of a curve of readings, by dense matrices of a general-purpose library (ml-matrix), to compare the project's own with.
 * Nothing is imported from core/. The model: powers of travel, a zero for each pass, up against down where a pass has both, and a drift
 * that is the same in all passes where it is asked for. Textbook formulas (Draper and Smith, Applied Regression Analysis; Rao and
 * Toutenburg, Linear Models, on E eᵀAe = σ² tr(AMRM); from memory): M = I − X(XᵀX)⁻¹Xᵀ, e = My, Cov b = (XᵀX)⁻¹XᵀVX(XᵀX)⁻¹.
 * What is a rule of this project and no theorem: how far an estimated correlation is raised, what is left of the degrees of freedom,
 * what passes that run apart count, and the doubts that nobody stated.
 */

const SCALE_MM = 50;
const NORMAL_95 = 1.959964;

export interface DoubtOptions {
  /** Whether a drift stands in the model; else it is allowed for. */
  hasDrift?: boolean;
  /** Half-widths of 95 %: per cent, per cent, mm, degrees. */
  gaugeScale?: number;
  tapeScale?: number;
  zeroHeight?: number;
  drift?: number;
}

/** One cause, or several that share their degrees of freedom. */
export interface Variance {
  id: string;
  variance: number;
  dof: number;
}

export interface Doubted {
  value: number;
  variances: Variance[];
}

export interface DoubtedFit {
  correlation: number;
  dof: number;
  residualSd: number;
  drift: number | undefined;
  /** Σ weight · curve(travel) of weights that sum to nothing. */
  contrast(weights: readonly (readonly [travel: number, weight: number])[]): Doubted;
}

export const changeOf = (fit: DoubtedFit, to: number, from: number): Doubted =>
  fit.contrast([
    [to, 1],
    [from, -1],
  ]);

/** Of two that know nothing of each other. */
export const differenceOf = (a: Doubted, b: Doubted): Doubted => ({
  value: a.value - b.value,
  variances: [...a.variances, ...b.variances],
});

/** Standard uncertainty, and degrees of freedom by Welch and Satterthwaite (GUM, JCGM 100:2008, G.2b); causes of equal dof are one. */
export function combined({ variances }: Doubted): { u: number; dof: number } {
  const byDof = new Map<number, number>();
  for (const { variance, dof } of variances) byDof.set(dof, (byDof.get(dof) ?? 0) + variance);
  const all = [...byDof.values()].reduce((sum, one) => sum + one, 0);
  const sum = [...byDof].reduce((total, [dof, variance]) => total + (variance / all) ** 2 / dof, 0);
  return { u: Math.sqrt(all), dof: 1 / sum };
}

const trace = (matrix: Matrix) => matrix.diagonal().reduce((sum, one) => sum + one, 0);

export function independentDoubt(
  readings: readonly RegressionReading[],
  degree: number,
  { hasDrift = false, gaugeScale = 1, tapeScale = 1, zeroHeight = 2, drift = 0.13 }: DoubtOptions = {},
): DoubtedFit {
  const n = readings.length;
  const names = [...new Set(readings.map(({ pass }) => pass))];
  const passes = names.map((name) => [...readings.keys()].filter((i) => readings[i]!.pass === name));
  const isBoth = (rows: readonly number[]) => new Set(rows.map((i) => readings[i]!.going)).size > 1;
  // In time: each way of a pass by itself where it went both.
  const runs = passes.flatMap((rows) =>
    (isBoth(rows) ? ['up', 'down'] : [readings[rows[0]!]!.going]).map((going) =>
      rows
        .filter((i) => readings[i]!.going === going)
        .sort(
          (a, b) =>
            Number(readings[a]!.again ?? false) - Number(readings[b]!.again ?? false) ||
            (readings[a]!.travel - readings[b]!.travel) * (going === 'down' ? -1 : 1),
        ),
    ),
  );
  const progress = new Array<number>(n).fill(0);
  for (const run of runs) {
    const whole = passes.find((rows) => rows.includes(run[0]!))!;
    run.forEach((i, k) => {
      progress[i] = run.length > 1 ? (run.length / whole.length) * (k / (run.length - 1) - 0.5) : 0;
    });
  }
  const column = (of: (reading: RegressionReading, i: number) => number) => readings.map(of);
  const columns = [
    ...Array.from({ length: degree }, (_, k) => column(({ travel }) => (travel / SCALE_MM) ** (k + 1))),
    ...passes.map((rows) => column((_, i) => (rows.includes(i) ? 1 : 0))),
    ...(passes.some(isBoth) ? [column(({ going }) => (going === 'up' ? 0.5 : -0.5))] : []),
    ...(hasDrift ? [progress] : []),
  ];
  const x = new Matrix(columns).transpose();
  const y = Matrix.columnVector(readings.map(({ value }) => value));
  const toWeights = inverse(x.transpose().mmul(x)).mmul(x.transpose());
  const weights = toWeights.mmul(y).to1DArray();
  const m = Matrix.sub(Matrix.eye(n), x.mmul(toWeights));

  // Slopes of the passes by themselves, over the whole range from −1 to 1.
  const travels = readings.map(({ travel }) => travel);
  const [low, high] = [Math.min(...travels), Math.max(...travels)];
  const slopes =
    passes.length < 2
      ? []
      : passes
          .filter(({ length }) => length >= 3)
          .map((rows) => {
            const mean = rows.reduce((sum, i) => sum + travels[i]!, 0) / rows.length;
            return column(({ travel }, i) => (rows.includes(i) ? (2 * (travel - mean)) / (high - low) : 0));
          });
  const room = n - columns.length;
  const own: Matrix[] = [];
  if (room - slopes.length >= 8 && room >= 3 * slopes.length) {
    for (const slope of slopes) {
      let left = m.mmul(Matrix.columnVector(slope));
      for (const one of own) left = Matrix.sub(left, Matrix.mul(one, one.dot(left)));
      const length = left.norm('frobenius');
      if (length > 0.2 * Math.hypot(...slope)) own.push(Matrix.mul(left, 1 / length));
    }
  }
  const rest = own.reduce((matrix, one) => Matrix.sub(matrix, one.mmul(one.transpose())), m);

  const near = Matrix.zeros(n, n);
  for (const run of runs)
    run.slice(1).forEach((i, k) => {
      near.set(i, run[k]!, 0.5);
      near.set(run[k]!, i, 0.5);
    });
  const matrixOf = (rho: number) => {
    const matrix = Matrix.eye(n);
    for (const run of runs)
      run.forEach((i, a) => {
        run.forEach((j, b) => {
          matrix.set(i, j, rho ** Math.abs(a - b));
        });
      });
    return matrix;
  };
  const e = rest.mmul(y);
  const squares = e.dot(e);
  const found = e.dot(near.mmul(e)) / squares;
  const lack = (rho: number) => {
    const expected = rest.mmul(matrixOf(rho)).mmul(rest);
    return trace(near.mmul(expected)) / trace(expected) - found;
  };
  let [least, most] = [0, 0.85];
  let correlation = 0;
  if (lack(0) < 0 && lack(most) - lack(0) >= 0.05) {
    if (lack(most) < 0) least = most;
    while (most - least > 1e-7) {
      const middle = (least + most) / 2;
      if (lack(middle) < 0) least = middle;
      else most = middle;
    }
    correlation = Math.min(0.85, 1.5 * least);
  }
  const r = matrixOf(correlation);
  const mr = rest.mmul(r);
  const variance = squares / trace(mr);
  const told = trace(mr) ** 2 / trace(mr.mmul(mr));
  const dof = Math.max(Math.min(told, 4), 0.6 * told);
  const covariance = Matrix.mul(toWeights.mmul(r).mmul(toWeights.transpose()), variance);

  const ownSquares = own.reduce((sum, one) => sum + one.dot(y) ** 2, 0);
  const byScatter = own.reduce((sum, one) => sum + variance * one.dot(r.mmul(one)), 0);
  const bySlopes = own.reduce(
    (sum, one) => slopes.reduce((more, slope) => more + one.dot(Matrix.columnVector(slope)) ** 2, sum),
    0,
  );
  const excess = Math.max(0, ownSquares - byScatter);
  const apart = excess > 0 ? (excess / bySlopes) * (excess / ownSquares) : 0;
  const moved = (by: readonly number[]) => toWeights.mmul(Matrix.columnVector([...by])).to1DArray();
  const effects = slopes.map(moved);
  const drifted = moved(progress);

  const u = (plusMinus: number) => plusMinus / NORMAL_95;
  return {
    correlation,
    dof,
    residualSd: Math.sqrt(m.mmul(y).dot(y) / (n - columns.length)),
    drift: hasDrift ? weights.at(-1)! : undefined,
    contrast(of) {
      const along = (shape: (power: number, k: number, travel: number) => number) =>
        Array.from({ length: degree }, (_, k) =>
          of.reduce((sum, [travel, weight]) => sum + weight * shape((travel / SCALE_MM) ** (k + 1), k + 1, travel), 0),
        );
      const times = (shape: readonly number[], by: readonly number[]) =>
        shape.reduce((sum, one, k) => sum + one * by[k]!, 0);
      const shape = along((power) => power);
      const value = times(shape, weights);
      // d/dt of (t/s)^k is k (t/s)^(k − 1)/s.
      const slope = along((_, k, travel) => (k * (travel / SCALE_MM) ** (k - 1)) / SCALE_MM);
      const stretched = along((power, k) => k * power);
      const full = Matrix.columnVector(columns.map((_, k) => shape[k] ?? 0));
      const all: Variance[] = [
        { id: 'scatter', variance: full.dot(covariance.mmul(full)), dof },
        { id: 'gaugeScale', variance: (u(gaugeScale / 100) * value) ** 2, dof: Infinity },
        { id: 'tapeScale', variance: (u(tapeScale / 100) * times(stretched, weights)) ** 2, dof: Infinity },
        { id: 'zeroHeight', variance: (u(zeroHeight) * times(slope, weights)) ** 2, dof: Infinity },
        ...effects.map((effect) => ({
          id: 'apart',
          variance: apart * times(shape, effect) ** 2,
          dof: own.length + 3,
        })),
      ];
      if (!hasDrift) all.push({ id: 'drift', variance: (u(drift) * times(shape, drifted)) ** 2, dof: Infinity });
      return { value, variances: all.filter((one) => one.variance > 0) };
    },
  };
}
