/**
 * Two tasks timed in turn, A B B A, so that a machine whose speed drifts slows both alike. Ratios within a quad can be trusted,
 * the times themselves only roughly.
 *
 * @param {() => void} a
 * @param {() => void} b
 * @param {number} quads
 * @returns {ReturnType<typeof summary>}
 */
export function abba(a, b, quads) {
  for (let i = 0; i < 3; i++) {
    a();
    b();
  }
  return summary(Array.from({ length: quads }, () => [time(a), time(b), time(b), time(a)]));
}

/**
 * @param {[a1: number, b1: number, b2: number, a2: number][]} quads ms, in the order they were timed
 * @returns {{ a: number, b: number, ratio: number, quartiles: [number, number] }} medians: ms of one run of each, and b ÷ a within a
 *   quad, with the quartiles of that
 */
export function summary(quads) {
  const sorted = (of) => quads.map(of).sort(ascending);
  const ratios = sorted(([a1, b1, b2, a2]) => (b1 + b2) / (a1 + a2));
  return {
    a: quantile(
      sorted(([a1, , , a2]) => (a1 + a2) / 2),
      0.5,
    ),
    b: quantile(
      sorted(([, b1, b2]) => (b1 + b2) / 2),
      0.5,
    ),
    ratio: quantile(ratios, 0.5),
    quartiles: [quantile(ratios, 0.25), quantile(ratios, 0.75)],
  };
}

/** @returns {number} ms that a task takes */
export function time(task) {
  const start = performance.now();
  task();
  return performance.now() - start;
}

/** Times of single runs, ms, ascending. `task` gets the run's number. */
export function times(task, runs) {
  return Array.from({ length: runs }, (_, i) => time(() => task(i))).sort(ascending);
}

/**
 * Between two values by a straight line: Hyndman and Fan's seventh definition (The American Statistician 50, 1996).
 *
 * @param {readonly number[]} sorted ascending
 * @param {number} share 0 to 1
 */
export function quantile(sorted, share) {
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)], sorted[Math.ceil(at)]];
  return low + (at - Math.floor(at)) * (high - low);
}

const ascending = (x, y) => x - y;
