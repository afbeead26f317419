import type { ToeWindow } from './toe-window.js';

/** Of a polynomial in the amount over a usual range, and over a short one: toe is that smooth. */
const [NODES, FEWER_NODES] = [13, 7];
/** Of a short range, mm. */
const SHORT_MM = 12;
/** By how much it may miss the linkage itself at its ends, degrees. */
const CLOSE_DEG = 1e-7;

/**
 * Toe over a window for every amount of a range as a polynomial: a dozen amounts are asked of the linkage, what lies between is
 * arithmetic.
 *
 * @param isDriven sweeps `over` with an amount, and says whether all of it can be driven
 * @returns puts toe and its rate with an amount into `over`; undefined where no polynomial follows the linkage, as near to where a link
 *   runs out
 */
export function toeByAmount(
  over: ToeWindow,
  isDriven: (amount: number) => boolean,
  [low, high]: readonly [number, number],
): ((amount: number) => void) | undefined {
  const { toe, rate } = over;
  const count = toe.length;
  const nodes = high - low < SHORT_MM ? FEWER_NODES : NODES;
  // Chebyshev's nodes of the first kind, and their barycentric weights (Berrut and Trefethen, SIAM Review 46, 2004): at an angle of
  // (2j + 1)π/2n, w_j = (−1)^j sin of that.
  const angles = Array.from({ length: nodes }, (_, j) => ((2 * j + 1) * Math.PI) / (2 * nodes));
  const amounts = angles.map((angle) => (low + high) / 2 - ((high - low) / 2) * Math.cos(angle));
  const weights = angles.map((angle, j) => (j % 2 ? -1 : 1) * Math.sin(angle));
  const samples = new Float64Array(2 * count * nodes);
  for (const [j, amount] of amounts.entries()) {
    if (!isDriven(amount)) return undefined;
    samples.set(toe, 2 * count * j);
    samples.set(rate, 2 * count * j + count);
  }
  const shares = new Float64Array(nodes);
  const interpolate = (amount: number) => {
    const hit = amounts.indexOf(amount);
    let whole = 0;
    for (let j = 0; j < nodes; j++) {
      shares[j] = hit < 0 ? weights[j]! / (amount - amounts[j]!) : Number(j === hit);
      whole += shares[j]!;
    }
    toe.fill(0);
    rate.fill(0);
    for (let j = 0; j < nodes; j++) {
      const share = shares[j]! / whole;
      const from = 2 * count * j;
      for (let i = 0; i < count; i++) {
        toe[i]! += share * samples[from + i]!;
        rate[i]! += share * samples[from + count + i]!;
      }
    }
  };
  const isClose = (amount: number) => {
    if (!isDriven(amount)) return false;
    const exact = toe.slice();
    interpolate(amount);
    return exact.every((one, i) => Math.abs(one - toe[i]!) < CLOSE_DEG);
  };
  return isClose(low) && isClose(high) ? interpolate : undefined;
}
