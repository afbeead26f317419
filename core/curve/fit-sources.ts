import { choleskyOfSum } from '../math/qr.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../readings/doubts.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { disturbed, type Model, type Solution } from './fit-model.js';
import { derivative } from './polynomial.js';
import type { Scatter } from './scatter.js';

/** A cause of doubt beside the scatter, and what it does to the coefficients in powers of x: sensitivity × standard uncertainty. */
export interface Effect {
  source: Source;
  on: Float64Array;
}

const PER_CENT = 0.01;

/**
 * What readings of one gauge and one tape have in common, so that it never averages out. A gauge that shows too much multiplies every
 * angle; a tape that shows too little stretches travel from its zero, t → t (1 + ε), which changes the curve by ε t dc/dt; a zero
 * that is off moves it, by δ dc/dt; and a gauge's zero that wanders in each pass alike is fitted as part of the curve.
 */
export function effectsOf(model: Model, solution: Solution, { apart }: Scatter, doubts: ReadingDoubts): Effect[] {
  const { centre, scale, taken, isOfPairs } = model.rows;
  const { coefficients } = solution;
  const effects: Effect[] = [];
  const add = (id: keyof ReadingDoubts, label: string, unit: number, on: () => Float64Array) => {
    const u = ((doubts[id] ?? DEFAULT_DOUBTS[id]) * unit) / NORMAL_95;
    if (u > 0) {
      effects.push({ source: { id, label, dof: Number.POSITIVE_INFINITY }, on: on().map((part) => part * u) });
    }
  };
  const slope = () => Float64Array.from([...derivative(coefficients), 0], (part) => part / scale);
  const isAsked = model.extras.includes('drift');
  // Where the readings tell it, what is left is that of passes whose first end nobody told.
  const untold = isAsked ? taken.unknownProgress : taken.progress.map((known, i) => known + taken.unknownProgress[i]!);
  if (untold.some((one) => one !== 0)) {
    add('drift', isOfPairs ? 'the drift of dials or tape inside a pass' : 'the gauge’s drift inside a pass', 1, () =>
      disturbed(model, solution, untold),
    );
  }
  add('gaugeScale', isOfPairs ? 'the scale of dials or tape' : 'the gauge’s scale', PER_CENT, () => coefficients);
  // t dc/dt = (centre + scale x)/scale · dc/dx.
  add('tapeScale', 'the tape’s scale', PER_CENT, () =>
    slope().map((part, k, all) => centre * part + scale * (all[k - 1] ?? 0)),
  );
  add('zeroHeight', 'the zero height', 1, slope);
  if (apart.sd > 0) {
    const parts = apart.columns.map((column) => disturbed(model, solution, column).map((part) => part * apart.sd));
    const n = coefficients.length;
    // Many passes are no more directions than the curve has.
    const factor = choleskyOfSum(parts, n);
    const few =
      parts.length <= n ? parts : parts.slice(0, n).map((_, k) => coefficients.map((__, i) => factor[i * n + k]!));
    few.forEach((on, k) => {
      effects.push({ source: { id: `apart.${k}`, label: 'passes that run apart', dof: apart.dof }, on });
    });
  }
  return effects;
}
