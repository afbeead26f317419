const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Where a function of one number is least between two, by golden sections (Kiefer 1953): it may have one dip there; of several
 * one is found. Neither end is asked.
 *
 * @param within how near the place has to be known
 */
export function least(
  f: (x: number) => number,
  from: number,
  to: number,
  within: number,
): { x: number; value: number } {
  let [low, high] = from < to ? [from, to] : [to, from];
  let x = high - GOLDEN * (high - low);
  let y = low + GOLDEN * (high - low);
  let [atX, atY] = [f(x), f(y)];
  while (high - low > within) {
    if (atX <= atY) {
      high = y;
      [y, atY] = [x, atX];
      x = high - GOLDEN * (high - low);
      atX = f(x);
    } else {
      low = x;
      [x, atX] = [y, atY];
      y = low + GOLDEN * (high - low);
      atY = f(y);
    }
  }
  return atX <= atY ? { x, value: atX } : { x: y, value: atY };
}
