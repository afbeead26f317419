/**
 * Asks along ascending steps for what a rising function is at them, as far as that can lie between two ends: from a guess outward until it
 * lies outside on either side. Where a step cannot be had, or does not rise from the one before, all of them are asked.
 *
 * @param at undefined where it cannot be had; asked once a step
 */
export function* columnSteps(
  steps: readonly number[],
  guess: number | undefined,
  at: (step: number) => number | undefined,
  [least, most]: readonly [number, number],
): Generator<undefined, void> {
  if (steps.length === 0) return;
  const known = new Map<number, number | undefined>();
  const ask = (i: number) => {
    if (!known.has(i)) known.set(i, at(steps[i]!));
    return known.get(i);
  };
  let isRising = guess !== undefined;
  const start = isRising ? nearestOf(steps, guess!) : 0;
  const outward = function* (by: 1 | -1): Generator<undefined, void> {
    let last: number | undefined;
    for (let i = start; isRising && i >= 0 && i < steps.length; i += by) {
      const here = ask(i);
      yield;
      if (here === undefined || (last !== undefined && by * (here - last) <= 0)) isRising = false;
      else if (by > 0 ? here > most : here < least) return;
      last = here;
    }
  };
  yield* outward(1);
  yield* outward(-1);
  for (let i = 0; !isRising && i < steps.length; i++) {
    ask(i);
    yield;
  }
}

function nearestOf(steps: readonly number[], guess: number): number {
  let best = 0;
  for (const [i, step] of steps.entries()) if (Math.abs(step - guess) < Math.abs(steps[best]! - guess)) best = i;
  return best;
}
