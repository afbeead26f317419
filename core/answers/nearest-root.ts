/** Steps either way in which a root is looked for. */
const STEPS = 12;
const MOST_STEPS = 60;

interface Tried {
  amount: number;
  miss: number;
}

/**
 * The root nearest to 0 of a smooth function, by steps outward and Illinois' rule.
 *
 * @param miss NaN where there is none; beyond it nothing is looked for
 * @param between low ≤ 0 ≤ high
 * @param close |miss| at which an amount is the root
 */
export function nearestRoot(
  miss: (amount: number) => number,
  [low, high]: readonly [number, number],
  close: number,
): number | undefined {
  const start = { amount: 0, miss: miss(0) };
  if (Math.abs(start.miss) <= close) return 0;
  const roots = [low, high].flatMap((end) => {
    let last: Tried = start;
    for (let i = 1; i <= STEPS && end !== 0; i++) {
      const amount = (end * i) / STEPS;
      const here = { amount, miss: miss(amount) };
      if (Number.isNaN(here.miss)) break;
      if (last.miss * here.miss <= 0) return [illinois(miss, last, here, close)];
      last = here;
    }
    return [];
  });
  return roots.sort((a, b) => Math.abs(a) - Math.abs(b))[0];
}

/** Regula falsi that halves a stuck end's weight. */
function illinois(miss: (amount: number) => number, from: Tried, to: Tried, close: number): number {
  let [a, b] = [from, to];
  for (let i = 0; i < MOST_STEPS; i++) {
    const amount = (a.amount * b.miss - b.amount * a.miss) / (b.miss - a.miss);
    const here = { amount, miss: miss(amount) };
    if (!(Math.abs(here.miss) > close)) return amount;
    a = here.miss * b.miss < 0 ? b : { ...a, miss: a.miss / 2 };
    b = here;
  }
  return b.amount;
}

/** The amount of the least |miss| between two ends, by steps and golden sections about the best of them; NaN counts as most. */
export function leastMiss(miss: (amount: number) => number, [low, high]: readonly [number, number]): number {
  const size = (amount: number) => {
    const here = Math.abs(miss(amount));
    return Number.isNaN(here) ? Number.POSITIVE_INFINITY : here;
  };
  const amounts = Array.from({ length: STEPS + 1 }, (_, i) => low + ((high - low) * i) / STEPS);
  const sizes = amounts.map(size);
  const best = sizes.indexOf(Math.min(...sizes));
  if (best === 0 || best === STEPS) return amounts[best]!;
  let [a, b] = [amounts[best - 1]!, amounts[best + 1]!];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 40; i++) {
    const [x, y] = [b - golden * (b - a), a + golden * (b - a)];
    if (size(x) < size(y)) b = y;
    else a = x;
  }
  return (a + b) / 2;
}
