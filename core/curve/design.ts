import type { Columns } from '../math/qr.js';
import type { Reading } from '../readings/reading.js';

/** The readings in an order of their own, and the columns of the model, nested by degree. */
export interface Design {
  /** Indexes into the readings as given: sorted, so that their order changes nothing, not even a rounding. */
  order: number[];
  /** Names of the passes, sorted. */
  passes: string[];
  /** How many columns stand before those of the curve's bend: the constant, passes, up and down. */
  columns: Columns;
  kinds: ('constant' | 'pass' | 'going' | 'power')[];
  value: Float64Array;
  centre: number;
  scale: number;
}

const name = ({ pass = '' }: Reading): string => pass;
/** Half of the difference between the ways belongs to each. */
const WAY = { up: 0.5, down: -0.5 };

function compare(a: Reading, b: Reading): number {
  return (
    (name(a) < name(b) ? -1 : name(a) > name(b) ? 1 : 0) ||
    a.travel - b.travel ||
    a.value - b.value ||
    (a.going ?? '').localeCompare(b.going ?? '', 'en')
  );
}

/**
 * One column each for the constant, all passes but one (so coded that offsets sum to zero), the way, and Legendre polynomials of
 * travel scaled to −1 … 1: nearly orthogonal, and those of a lower degree are the first of those of a higher.
 */
export function designOf(readings: readonly Reading[], degree: number): Design {
  const order = readings.map((_, index) => index).sort((a, b) => compare(readings[a]!, readings[b]!) || a - b);
  const sorted = order.map((index) => readings[index]!);
  const passes = [...new Set(sorted.map(name))];
  const travels = sorted.map(({ travel }) => travel);
  const low = Math.min(...travels);
  const high = Math.max(...travels);
  const centre = (low + high) / 2;
  const scale = (high - low) / 2 || 1;
  const column = (of: (reading: Reading) => number) => Float64Array.from(sorted, of);
  const last = passes.at(-1);
  const ways = new Set(sorted.map(({ going }) => going));
  const nuisance = passes
    .slice(0, -1)
    .map((pass) => column((reading) => (name(reading) === pass ? 1 : name(reading) === last ? -1 : 0)));
  const going =
    ways.has('up') && ways.has('down') ? [column((reading) => (reading.going ? WAY[reading.going] : 0))] : [];
  const powers: Columns = [];
  const x = column(({ travel }) => (travel - centre) / scale);
  let before = column(() => 0);
  let now = column(() => 1);
  for (let k = 0; k < degree; k++) {
    const next = now.map((value, i) => ((2 * k + 1) * x[i]! * value - k * before[i]!) / (k + 1));
    powers.push(next);
    before = now;
    now = next;
  }
  return {
    order,
    passes,
    columns: [column(() => 1), ...nuisance, ...going, ...powers],
    kinds: [
      'constant',
      ...nuisance.map(() => 'pass' as const),
      ...going.map(() => 'going' as const),
      ...powers.map(() => 'power' as const),
    ],
    value: column(({ value }) => value),
    centre,
    scale,
  };
}

/** Row k: the Legendre polynomial of degree k as power coefficients, low power first. */
export function legendreRows(degree: number): number[][] {
  const rows = [[1], [0, 1]];
  for (let k = 1; k < degree; k++) {
    rows.push(
      Array.from(
        { length: k + 2 },
        (_, i) => ((2 * k + 1) * (rows[k]![i - 1] ?? 0) - k * (rows[k - 1]![i] ?? 0)) / (k + 1),
      ),
    );
  }
  return rows.slice(0, degree + 1);
}

/** Power coefficients over t of one that is given over (t − centre)/scale, low power first. */
export function unscaled(coefficients: ArrayLike<number>, centre: number, scale: number): Float64Array {
  const out = new Float64Array(coefficients.length);
  // Horner's rule on polynomials: out ← out·(t − centre)/scale + c.
  for (let k = coefficients.length - 1; k >= 0; k--) {
    for (let i = out.length - 1; i >= 0; i--) out[i] = ((out[i - 1] ?? 0) - centre * out[i]!) / scale;
    out[0]! += coefficients[k]!;
  }
  return out;
}
