/**
 * Two tasks timed in turn, A B B A, so that a machine whose speed drifts slows both alike. Ratios within a quad can be trusted,
 * the times themselves only roughly.
 *
 * @param {() => void} a
 * @param {() => void} b
 * @param {number} quads
 * @returns {{ a: number, b: number, ratio: number }} medians: ms of one run of each, and b ÷ a within a quad
 */
export function abba(a, b, quads) {
  const time = (task) => {
    const start = performance.now();
    task();
    return performance.now() - start;
  };
  for (let i = 0; i < 3; i++) {
    a();
    b();
  }
  const found = Array.from({ length: quads }, () => {
    const [a1, b1, b2, a2] = [time(a), time(b), time(b), time(a)];
    return { a: (a1 + a2) / 2, b: (b1 + b2) / 2, ratio: (b1 + b2) / (a1 + a2) };
  });
  const of = (name) => quantile(found.map((quad) => quad[name]).sort(ascending), 0.5);
  return { a: of('a'), b: of('b'), ratio: of('ratio') };
}

/** Times of single runs, ms, ascending. `task` gets the run's number. */
export function times(task, runs) {
  return Array.from({ length: runs }, (_, i) => {
    const start = performance.now();
    task(i);
    return performance.now() - start;
  }).sort(ascending);
}

/** @param {number[]} sorted ascending */
export const quantile = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];

const ascending = (x, y) => x - y;
