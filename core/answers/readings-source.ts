import { curveFrom } from '../curve/curve.js';
import { type FitOptions, fitCurve } from '../curve/fit.js';
import { InputError } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { DOUBT_KEYS, type ReadingDoubts } from '../readings/doubts.js';
import type { Reading } from '../readings/reading.js';
import type { FittedSource } from './camber-source.js';
import { reZeroedCurve } from './re-zero.js';

/** Readings of camber. A gauge on the hub reads the wheel's inclination: its camber as long as it points straight ahead. */
export interface ReadingsSource extends Pick<FitOptions, 'inOrder' | 'plain'> {
  kind: 'readings';
  readings: readonly Reading[];
  /** Of the curve; without it the evidence decides. */
  degree?: number;
  /** Drop from stock height, mm, at which the wheel stood where the readings call travel zero. Default 0. */
  zeroAt?: number;
  /** How far gauge, tape and zero height can be trusted. */
  doubts?: ReadingDoubts;
}

let remembered: { source: ReadingsSource; fitted: FittedSource }[] = [];
const REMEMBERED_AT_MOST = 4;

const isSame = (a: ReadingsSource, b: ReadingsSource): boolean =>
  (['degree', 'zeroAt', 'inOrder', 'plain'] as const).every((key) => a[key] === b[key]) &&
  DOUBT_KEYS.every((key) => a.doubts?.[key] === b.doubts?.[key]) &&
  a.readings.length === b.readings.length &&
  a.readings.every((one, i) => {
    const other: Partial<Reading> = b.readings[i] ?? {};
    return (['travel', 'value', 'pass', 'going', 'again'] as const).every((key) => one[key] === other[key]);
  });

/**
 * The curve of some readings, counted from stock height. Dragging a height asks for the same again and again: the last few
 * fits are remembered.
 *
 * @throws InputError with every problem of the readings.
 */
export function fitReadings(source: ReadingsSource): FittedSource {
  const { readings, degree, zeroAt = 0, doubts, inOrder, plain } = source;
  // What is no list is for the fit to refuse.
  const known = Array.isArray(readings) ? remembered.find((one) => isSame(one.source, source)) : undefined;
  if (known) return known.fitted;
  const { min, max } = QUANTITIES.drop;
  if (typeof zeroAt !== 'number') throw new InputError([{ code: 'not-a-number', path: 'zeroAt', value: zeroAt }]);
  if (!(zeroAt >= min && zeroAt <= max)) {
    throw new InputError([{ code: 'out-of-range', path: 'zeroAt', value: zeroAt, limit: zeroAt < min ? min : max }]);
  }
  const fit = fitCurve(readings, {
    ...doubts,
    ...(degree !== undefined && { degree }),
    ...(inOrder !== undefined && { inOrder }),
    ...(plain !== undefined && { plain }),
  });
  const curve = curveFrom(fit.curve);
  const points = {
    degree: fit.degree,
    travel: Float64Array.from(readings, ({ travel }) => travel + zeroAt),
    value: fit.residuals.map((residual, i) => curve.value(readings[i]!.travel) + residual),
  };
  const fitted: FittedSource = { kind: 'fitted', curve: reZeroedCurve(fit.curve, zeroAt), readings: points };
  // A copy: whoever asked may change their own list.
  const kept = { ...source, readings: readings.map((reading) => ({ ...reading })) };
  remembered = [...remembered.slice(1 - REMEMBERED_AT_MOST), { source: kept, fitted }];
  return fitted;
}
