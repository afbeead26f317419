/** What the order in which a pass was read tells. */
export interface PassOrder {
  /** It ends with its first height read again. */
  isBack: boolean;
  /** Which way the wheel was going at each height; absent where the order does not look like sweeps. */
  directions?: ('up' | 'down')[];
}

/**
 * @param travels mm, in the order in which they were read
 * @param direction which way the pass is said to have gone: one that is listed from its other end did not begin where the list does
 */
export function passOrderOf(travels: readonly number[], direction?: 'up' | 'down'): PassOrder {
  const isBack = endsWhereItBegan(travels, direction);
  // A height read again at the end is no sweep: the rest is.
  const sweep = wheelDirectionByOrder(isBack ? travels.slice(0, -1) : travels);
  return { isBack, ...(sweep && { directions: travels.map((_, i) => sweep[Math.min(i, sweep.length - 1)]!) }) };
}

/** The first and the last of an ascending pass that ends where it began lie this close, as a share of its range. */
const SAME = 0.05;
/** Fewer make no pass that one could come back from. */
const LEAST = 4;

/** A step back over this much of the range begins a new sweep. */
const RESTART = 0.75;

/**
 * Which way the wheel was going at each height, told by the order alone: a reading belongs to the step that led to it, the first
 * of a sweep to the step after it.
 *
 * @param travels mm, in the order in which they were read
 * @returns undefined where the order does not look like sweeps: fewer than three steps the same way between turns
 */
function wheelDirectionByOrder(travels: readonly number[]): ('up' | 'down')[] | undefined {
  const count = travels.length;
  if (count < 3) return undefined;
  const range = rangeOf(travels);
  const steps = travels.slice(1).map((travel, i) => travel - travels[i]!);
  const isRestart = (i: number) => {
    const [before, step, after] = [steps[i - 1], steps[i]!, steps[i + 1]];
    return (
      before !== undefined &&
      after !== undefined &&
      Math.abs(step) >= RESTART * range &&
      before * step < 0 &&
      after * step < 0
    );
  };
  const directions: number[] = travels.map((_, i) => {
    // A height read again belongs to the step before it.
    let at = i - 1;
    while (at >= 0 && steps[at] === 0) at--;
    if (at >= 0 && !isRestart(at)) return Math.sign(steps[at]!);
    at = i;
    while (at < steps.length && steps[at] === 0) at++;
    return Math.sign(steps[at] ?? 0);
  });
  let run = 0;
  for (let i = 0; i < count; i++) {
    run++;
    if (i + 1 < count && directions[i + 1] === directions[i]) continue;
    if (directions[i] === 0 || run < 2 || (run < 3 && i + 1 < count)) return undefined;
    run = 0;
  }
  return directions.map((sign) => (sign > 0 ? 'up' : 'down'));
}

const rangeOf = (travels: readonly number[]): number => Math.max(...travels) - Math.min(...travels);

/** Whether a pass ends with its first height read again: one way all along, and then back to where it began. */
function endsWhereItBegan(travels: readonly number[], direction?: 'up' | 'down'): boolean {
  if (travels.length < LEAST) return false;
  const sweep = travels.slice(0, -1);
  const way = Math.sign(sweep[1]! - sweep[0]!);
  if (direction && way !== (direction === 'up' ? 1 : -1)) return false;
  const isOneWay = sweep.slice(1).every((travel, i) => (travel - sweep[i]!) * way > 0);
  return isOneWay && Math.abs(travels.at(-1)! - travels[0]!) <= SAME * rangeOf(sweep);
}
