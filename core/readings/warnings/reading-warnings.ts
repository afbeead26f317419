import { studentTQuantile } from '../../math/student-t.js';
import type { Reading } from '../reading.js';
import { type DataWarning, type DataWarningOf, LIMITS } from './data-warning.js';
import { asTaken, FAR_UNIT, SIGNS, SMALL_UNITS, type Turn, turned } from './pass-warnings.js';
import {
  passOf,
  quantile,
  type Row,
  robustFit,
  type Shape,
  shapeOf,
  type WeightedFit,
  weightedFit,
} from './robust-fit.js';

interface Guess {
  turn: Turn;
  kind: 'wrong-sign' | 'decimal-slip' | 'mixed-units';
  /** How much less it is to be expected than a sign left out, in squares of scatter (−2 ln of odds). */
  unlikely: number;
}
const guess = (kind: Guess['kind'], unlikely: number, turn: Turn): Guess => ({ turn, kind, unlikely });

/** What else a reading may be. */
const GUESSES: readonly Guess[] = [
  guess('wrong-sign', 4, SIGNS[0]!),
  guess('wrong-sign', 0, SIGNS[1]!),
  ...SMALL_UNITS.map((turn) => guess('mixed-units', 3, turn)),
  ...[10, 0.1, 0.01].map((factor) => guess('decimal-slip', 1, { of: 'value', factor })),
];
const FAR_GUESSES: readonly Guess[] = [
  guess('mixed-units', 0, FAR_UNIT),
  guess('decimal-slip', 2, { of: 'travel', factor: 0.1 }),
];
/** That a reading is simply wild: more so the further out, as with Cauchy's law of this width, degrees. */
const WILD = 8;
const WILD_DEGREES = 0.5;
/** That a figure ends in a zero, which was not written. */
const ZERO_LEFT_OUT = 2 * Math.log(10);
/** That a height stands twice in a pass by chance. */
const TWICE = 6;

/** How far a row lies from what the rest makes of it, in standard deviations. NaN where the rest knows nothing of it. */
const off = (row: Row, rest: WeightedFit, { least }: Shape) => {
  const spread = Math.sqrt(1 + rest.leverage(row));
  return spread < Infinity ? Math.abs(rest.residual(row)) / (Math.max(rest.sd, least) * spread) : NaN;
};

/**
 * Which rows do not belong: starting from those near the robust curve, the nearest of the others is taken in as long as it belongs to
 * what is in already (Hadi and Simonoff, Journal of the American Statistical Association 88, 1993).
 */
function outliersOf(rows: readonly Row[], shape: Shape): { rest: WeightedFit; out: number[] } {
  const { residuals, scatter } = robustFit(rows, shape);
  const weights = Float64Array.from(residuals, (one) => (Math.abs(one) <= LIMITS.belongs * scatter ? 1 : 0));
  const critical = (dof: number) => studentTQuantile(1 - LIMITS.outlierLevel / 2 / rows.length, dof);
  for (;;) {
    const rest = weightedFit(rows, shape, weights);
    let [least, nearest] = [Infinity, -1];
    rows.forEach((row, i) => {
      if (weights[i]) return;
      const error = off(row, rest, shape);
      // A row that cannot be judged is not accused.
      const far = error >= 0 ? error : -1;
      if (far < least) [least, nearest] = [far, i];
    });
    if (nearest < 0) return { rest, out: [] };
    if (rest.dof >= LIMITS.judgingDof && least > critical(rest.dof)) {
      return { rest, out: rows.flatMap((_, i) => (weights[i] ? [] : [i])) };
    }
    weights[nearest] = 1;
  }
}

/** Decimal places with which a figure is written; 4 where it was converted. */
const placesOf = (value: number) =>
  [0, 1, 2, 3].find((places) => Math.abs(value * 10 ** places - Math.round(value * 10 ** places)) < 1e-6) ?? 4;

/** What the rows say of single ones among them. */
function judge(rows: readonly Row[], readings: readonly Reading[]) {
  const shape = shapeOf(rows);
  const { rest, out } = outliersOf(rows, shape);
  const inside = rows.flatMap(({ travel }, i) => (out.includes(i) ? [] : [travel]));
  // A little further: the row may be the last of its pass.
  const margin = (Math.max(...inside) - Math.min(...inside)) / 8;
  const [low, high] = [Math.min(...inside) - margin, Math.max(...inside) + margin];
  const usualPlaces = quantile(
    readings.map(({ value }) => placesOf(value)),
    0.9,
  );
  const isTwice = (i: number) =>
    rows.some(({ travel, group }, j) => j !== i && travel === rows[i]!.travel && group === rows[i]!.group);
  const offOf = (row: Row) => off(row, rest, shape);
  const isInside = ({ travel }: Row) => travel >= low && travel <= high;
  /** What would let a row belong, the likeliest first; less likely than that it is wild, it is none. */
  const guessesOf = (row: Row, isDoubled: boolean, guesses = GUESSES) => {
    const wild = WILD + 2 * Math.log(1 + (rest.residual(row) / WILD_DEGREES) ** 2);
    return guesses
      .flatMap(({ turn, kind, unlikely }) => {
        const { of, factor } = turn;
        const made = turned(row, turn);
        if (of === 'travel' && !isInside(made)) return [];
        const error = offOf(made);
        if (!(error < LIMITS.belongs)) return [];
        let score = error ** 2 + unlikely;
        // What shrinks any figure to nearly nothing fits easily where little is expected.
        if (of === 'value') score -= 2 * Math.log(Math.abs(factor));
        if (of === 'travel' && isDoubled) score -= TWICE;
        if (kind === 'decimal-slip' && of === 'value') {
          // The figures stay when the point slips: one place fewer each time it goes to the right.
          const places = placesOf(made.value);
          if (factor < 1 && places > usualPlaces) return [];
          if (factor > 1 && placesOf(row.value) <= usualPlaces) score += ZERO_LEFT_OUT;
        }
        return score < wild ? [{ turn, kind, score }] : [];
      })
      .sort((a, b) => a.score - b.score);
  };
  return { rest, out, offOf, guesses: (i: number) => guessesOf(rows[i]!, isTwice(i)), guessesOf, high, low };
}

const mixedUnits = (readings: number[], { of, factor, unit }: Turn, pass: string): DataWarningOf<'mixed-units'> => ({
  kind: 'mixed-units',
  readings,
  of,
  factor,
  unit: unit!,
  isWholePass: false,
  pass,
});

/**
 * Readings of a pass that are written in another unit, two or more: a block of them looks like a gauge that slipped, so this is asked
 * first. Turns them in `rows`.
 */
export function unitWarnings(rows: Row[], readings: readonly Reading[]): DataWarningOf<'mixed-units'>[] {
  const { out, guesses, offOf, low, high } = judge(rows, readings);
  if (out.length < 2) return [];
  const warnings: DataWarningOf<'mixed-units'>[] = [];
  const told = new Set<number>();
  for (const turn of SMALL_UNITS) {
    const isSo = (i: number) => guesses(i).some((one) => one.turn === turn);
    for (const pass of new Set(out.map((i) => passOf(readings[i]!)))) {
      const mine = out.filter((i) => passOf(readings[i]!) === pass && !told.has(i));
      // One cause for several is likelier than a slip in each.
      const sure = turn.unit === 'degrees' ? mine.filter((i) => guesses(i)[0]?.turn === turn) : mine.filter(isSo);
      if (sure.length < 2) continue;
      const all = new Set(mine.filter(isSo));
      if (turn.of === 'travel') {
        // Of a block of heights in inches those near zero hardly differ: where all are so small, they are of it.
        rows.forEach((row, i) => {
          const made = turned(row, turn);
          const isSmall = row.travel !== 0 && made.travel >= low && made.travel <= high;
          if (passOf(readings[i]!) === pass && isSmall && offOf(made) < LIMITS.belongs) all.add(i);
        });
      }
      for (const i of all) {
        told.add(i);
        rows[i] = turned(rows[i]!, turn);
      }
      warnings.push(mixedUnits([...all], turn, pass));
    }
  }
  return warnings;
}

/** What single readings are told of, and what the readings that belong make of any other. */
export function readingWarnings(
  rows: readonly Row[],
  readings: readonly Reading[],
): { warnings: DataWarning[]; rest: WeightedFit; ofFar: (row: Row, i: number, reading: Reading) => DataWarning[] } {
  const { rest, out, offOf, guesses, guessesOf } = judge(rows, readings);
  const warnings: DataWarning[] = [];
  const told = new Set<number>();
  for (const i of out) {
    if (told.has(i)) continue;
    told.add(i);
    const reading = readings[i]!;
    const [best] = guesses(i);
    const partner = partnerOf(i, rows, readings, offOf);
    // One exchange explains two readings; one that explains a neighbour which nearly belongs anyhow is worth less.
    if (partner !== undefined && !told.has(partner) && (out.includes(partner) || !best || best.turn.of === 'travel')) {
      warnings.push({ kind: 'swapped', readings: [i, partner].sort((a, b) => a - b) });
      told.add(partner);
    } else if (!best) {
      warnings.push({ kind: 'outlier', readings: [i], expected: reading.value - rest.residual(rows[i]!) });
    } else warnings.push(explained(best, i, reading));
  }
  /** Of heights far outside all others: told where these explain them. */
  const ofFar = (row: Row, i: number, reading: Reading) => {
    const [best] = guessesOf(row, false, FAR_GUESSES);
    return best ? [explained(best, i, reading)] : [];
  };
  return { warnings, rest, ofFar };
}

function explained({ kind, turn }: Pick<Guess, 'kind' | 'turn'>, i: number, reading: Reading): DataWarning {
  if (kind === 'mixed-units') return mixedUnits([i], turn, passOf(reading));
  return { kind, readings: [i], of: turn.of, proposed: turned(reading, turn)[turn.of] };
}

/** The neighbour in the pass with which a reading changed places: after that both belong, as they stand neither does. */
function partnerOf(
  i: number,
  rows: readonly Row[],
  readings: readonly Reading[],
  offOf: (row: Row) => number,
): number | undefined {
  const order = asTaken(
    readings,
    [...rows.keys()].filter((j) => rows[j]!.group === rows[i]!.group),
  );
  const place = order.indexOf(i);
  return [order[place - 1], order[place + 1]].find((j) => {
    if (j === undefined) return false;
    const [mine, its] = [rows[i]!, rows[j]!];
    return (
      offOf(its) > LIMITS.belongs - 0.5 &&
      // That both belong then is hardly chance.
      offOf({ ...mine, value: its.value }) < LIMITS.belongs + 1 &&
      offOf({ ...its, value: mine.value }) < LIMITS.belongs + 1
    );
  });
}
