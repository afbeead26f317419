import { curveOf } from '../curve/curve.js';
import type { Prediction } from '../document/predictions.js';
import { type ReadSet, readSet } from '../learn/read-set.js';
import { chiSquareTail } from '../math/chi-square-tail.js';
import { interpolate } from '../math/interpolate.js';
import { solveInPlace } from '../math/solve.js';
import { dot } from '../math/sums.js';
import { InputError } from '../quantity/problem.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import type { ReadingDoubts } from '../readings/doubts.js';
import type { Reading } from '../readings/reading.js';
import { plusMinus95 } from '../uncertainty/combine.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import type { Doubted } from './lowering.js';

/** Does what was measured with the parts on agree with what was predicted of them? */
export interface AgreementRequest {
  /** As it was kept: mm from stock height, degrees of change from its drop, half-widths of 95 % intervals. */
  prediction: Pick<Prediction, 'start' | 'step' | 'change' | 'plusMinus' | 'drop' | 'over' | 'quantity'>;
  /** With the parts on. */
  readings: readonly Reading[];
  doubts?: ReadingDoubts;
  /** How far below stock height the car stood at the readings' travel zero, mm. Default 0. */
  zeroAt?: number;
  /** Where it may have been instead: tried where the two do not agree. */
  orZeroAt?: number;
}

export interface AgreementAnswer {
  /** How many of the readings stand where something was predicted, and of these inside its band: prediction and one reading's scatter. */
  readings: number;
  inside: number;
  /** Of the differences against both ±, the zero of every pass free; and the chance of one as large where nothing is wrong. */
  chiSquare: number;
  dof: number;
  chance: number;
  /** They would agree with the readings' travel zero at that height instead, mm below stock height. */
  fitsFrom?: number;
  /** Over the bump that was asked then, or as much of it as was read: mm from stock height and degrees. None where that is less than half. */
  change?: { from: number; over: number; predicted: Doubted; measured: Doubted; difference: Doubted };
  /** The readings as changes from where the car stands, each pass's zero taken off: mm from stock height, degrees. */
  travel: Float64Array;
  value: Float64Array;
}

/**
 * Readings laid over a prediction. What a prediction is off by is off alike at neighbouring travels: its ± is taken as one unknown in
 * bump and one in droop, each growing as the band does. What gauge, tape and passes add are the unknowns that learning from readings has.
 *
 * @throws InputError of the readings (`too-few` where fewer than 4 heights stand within what was predicted)
 */
export function agreement({ orZeroAt, ...request }: AgreementRequest): AgreementAnswer {
  const found = laidOver(request);
  if (orZeroAt === undefined || orZeroAt === (request.zeroAt ?? 0) || agrees(found)) return found;
  const other = unlessRefused(() => laidOver({ ...request, zeroAt: orZeroAt }));
  const isBetter = other !== undefined && agrees(other) && other.chance > found.chance;
  return isBetter ? { ...found, fitsFrom: orZeroAt } : found;
}

/** Below this chance readings and prediction do not agree. */
const APART = 0.05;

const agrees = ({ chance, change }: AgreementAnswer): boolean =>
  chance >= APART && (!change || Math.abs(change.difference.value) <= (change.difference.plusMinus ?? 0));

function laidOver({ prediction, readings, doubts = {}, zeroAt = 0 }: AgreementRequest): AgreementAnswer {
  const { start, step, drop, over, quantity } = prediction;
  const [change, plusMinus] = [Float64Array.from(prediction.change), Float64Array.from(prediction.plusMinus)];
  const travels = change.map((_, i) => start + i * step);
  const last = travels.at(-1)!;
  const within = readings.filter(({ travel }) => travel + zeroAt >= start && travel + zeroAt <= last);
  if (within.length === 0)
    throw new InputError([{ code: 'too-few', path: 'readings', value: 0, limit: 4, other: 'travel' }]);
  const set = readSet(
    {
      quantity,
      readings: within,
      parts: [],
      alignment: 'as-fitted',
      allowances: doubts,
      inOrder: false,
      raisedBy: zeroAt,
    },
    'fitted',
  );
  const { rows, values, sd } = set;
  const at = rows.travel.map((travel) => travel + zeroAt);
  const predicted = at.map((travel) => interpolate(travels, change, travel));
  const doubt = (travel: number) => interpolate(travels, plusMinus, travel) / NORMAL_95;
  const residual = values.map((value, i) => value - predicted[i]!);
  const modes = [true, false].map((isBump) => at.map((travel) => (travel > drop === isBump ? doubt(travel) : 0)));
  const weighed = solvedBy(covariance([...set.nuisances.map(({ column }) => column), ...modes], sd), residual);
  const chiSquare = dot(residual, weighed);
  const dof = rows.n - rows.passes.length;
  const zero = zeroOf(set, weighed);
  const value = values.map((one, i) => one - zero[i]!);
  const isInside = (i: number) => Math.abs(value[i]! - predicted[i]!) <= NORMAL_95 * Math.hypot(doubt(at[i]!), sd);
  const found = changeOf(set, { drop, over, zeroAt }, (travel) => ({
    value: interpolate(travels, change, travel),
    mode: (travel > drop ? 1 : -1) * doubt(travel),
  }));
  return {
    readings: rows.n,
    inside: [...rows.travel.keys()].filter(isInside).length,
    chiSquare,
    dof,
    chance: chiSquareTail(chiSquare, dof),
    ...(found && { change: found }),
    travel: at,
    value,
  };
}

/** What the zeros of passes, and up against down, take off each reading: their most likely sizes. */
function zeroOf({ nuisances, rows }: ReadSet, weighed: Float64Array): Float64Array {
  const own = nuisances.filter(({ id }) => id.includes('.zero.') || id.endsWith('.way'));
  const sizes = own.map(({ column }) => dot(column, weighed));
  return Float64Array.from({ length: rows.n }, (_, i) =>
    own.reduce((sum, { column }, j) => sum + sizes[j]! * column[i]!, 0),
  );
}

function covariance(columns: readonly Float64Array[], sd: number): Float64Array {
  const n = columns[0]!.length;
  const all = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const sum = columns.reduce((part, column) => part + column[i]! * column[j]!, i === j ? sd ** 2 : 0);
      all[i * n + j] = sum;
      all[j * n + i] = sum;
    }
  }
  return all;
}

function solvedBy(matrix: Float64Array, right: Float64Array): Float64Array {
  const found = right.slice();
  solveInPlace(matrix, found, right.length);
  return found;
}

/** The change over the bump that was asked, by a curve through the readings alone. */
function changeOf(
  { fit }: ReadSet,
  { drop, over, zeroAt }: { drop: number; over: number; zeroAt: number },
  predictedAt: (travel: number) => { value: number; mode: number },
): AgreementAnswer['change'] {
  const curve = curveOf(fit.curve);
  const [low, high] = curve.domain.map((end) => end + zeroAt) as [number, number];
  const clipped = (travel: number) => Math.min(high, Math.max(low, travel));
  const [from, to] = [clipped(drop), clipped(drop + over)];
  if (Math.abs(to - from) < Math.abs(over) / 2) return undefined;
  const estimate = curve.changeEstimate(to - zeroAt, from - zeroAt);
  const measured = { value: estimate.value, plusMinus: plusMinus95(estimate, fit.curve.sources) };
  const [a, b] = [predictedAt(from), predictedAt(to)];
  const isOneSide = from === drop || from > drop === to > drop;
  const sd = isOneSide ? Math.abs(b.mode - a.mode) : Math.hypot(a.mode, b.mode);
  const predicted = { value: b.value - a.value, plusMinus: NORMAL_95 * sd };
  const difference = {
    value: measured.value - predicted.value,
    plusMinus: Math.hypot(measured.plusMinus, predicted.plusMinus),
  };
  return { from, over: to - from, predicted, measured, difference };
}
