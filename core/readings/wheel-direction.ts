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
  // Where a height read again at the end ends no sweep, the rest may be sweeps; it is reached as it was at first.
  const sweep = wheelDirectionByOrder(travels) ?? (isBack ? wheelDirectionByOrder(travels.slice(0, -1)) : undefined);
  return {
    isBack,
    ...(sweep && { directions: travels.map((_, i) => (isBack && i === travels.length - 1 ? sweep[0]! : sweep[i]!)) }),
  };
}

/** The first and the last of a pass that ends where it began lie this close, as a share of its range. */
const SAME = 0.05;
/** The same of a pass that began inside its range, where other heights lie near as well, mm: by eye on a tape, twice. */
const SAME_MM = 2;
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

/**
 * Whether a pass ends with its first height read again, in whatever order the others came. There and back from one end of the range is
 * no return: its last height is the end of the way back.
 */
function endsWhereItBegan(travels: readonly number[], direction?: 'up' | 'down'): boolean {
  if (travels.length < LEAST) return false;
  const sweep = travels.slice(0, -1);
  const [first, last] = [travels[0]!, travels.at(-1)!];
  const way = Math.sign(sweep.find((travel) => travel !== first)! - first);
  if (direction && way !== (direction === 'up' ? 1 : -1)) return false;
  const near = SAME * rangeOf(sweep);
  const off = Math.abs(last - first);
  if (off > near) return false;
  if (isOneWay(sweep, way)) return true;
  // Of heights in no order two that only lie near one another may well be two.
  if (off > 0 && !(off <= SAME_MM && isFromMiddle(sweep, way))) return false;
  const [low, high] = [Math.min(...sweep), Math.max(...sweep)];
  const isAtEnd = Math.min(first - low, high - first) <= near;
  return low < high && !(isAtEnd && wheelDirectionByOrder(travels));
}

const isOneWay = (travels: readonly number[], way: number): boolean =>
  travels.slice(1).every((travel, i) => (travel - travels[i]!) * way > 0);

/** Fewer show no order in which two halves were read. */
const LEAST_OF_HALVES = 5;

/** From the first height all one way to an end, and then what lies on its other side, all one way as well. */
function isFromMiddle(travels: readonly number[], way: number): boolean {
  const turn = travels.findIndex((travel, i) => i > 0 && (travel - travels[i - 1]!) * way <= 0);
  const beyond = travels.slice(turn);
  return (
    travels.length >= LEAST_OF_HALVES &&
    turn > 0 &&
    beyond.every((travel) => (travel - travels[0]!) * way < 0) &&
    (isOneWay(beyond, way) || isOneWay(beyond, -way))
  );
}
