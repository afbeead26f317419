const MOST_STEPS = 80;

/** A place and what a function is there. */
export type At = readonly [x: number, value: number];

/**
 * Where a continuous function meets a target between two places on either side of it, by the Illinois rule (Dowell and Jarratt, BIT 11,
 * 1971), a call of the function a step.
 *
 * @param close how near to the target its value has to come
 */
export function* illinoisSteps(
  of: (x: number) => number,
  target: number,
  [from, fromValue]: At,
  [to, toValue]: At,
  close: number,
): Generator<undefined, At> {
  let [a, missA] = [from, fromValue - target];
  let [b, missB] = [to, toValue - target];
  if (missA === 0) return [a, target];
  for (let i = 0; i < MOST_STEPS && missB !== 0; i++) {
    const x = b - (missB * (b - a)) / (missB - missA);
    const miss = of(x) - target;
    if (Math.abs(miss) < close || x === a || x === b) return [x, miss + target];
    if (miss < 0 === missB < 0) missA /= 2;
    else [a, missA] = [b, missB];
    [b, missB] = [x, miss];
    yield;
  }
  return [b, missB + target];
}
