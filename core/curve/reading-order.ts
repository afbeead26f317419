import type { Reading } from '../readings/reading.js';
import { passOrderOf } from '../readings/wheel-direction.js';
import { ordersByReturn } from './order-by-return.js';

/** Over about so many mm of travel friction is taken up after a turn; a guess that does for 15 mm straight. */
const TURN_MM = 8;

/** A reading on its way into the fit, in an order of its own. */
export interface OrderedRow {
  travel: number;
  going: 'up' | 'down' | undefined;
  again: boolean;
  /** Place in time inside its pass; undefined where the order given is not that of reading. */
  time: number | undefined;
}

/** What is known of the order in which the readings of the passes were taken. */
export interface ReadingOrder {
  /** Rows next to each other in time, run by run: a pass, or each way of one. */
  runs: number[][];
  /** Share of the pass that lies behind each row, −½ to ½; 0 where it is not known which end came first. */
  progress: Float64Array;
  /** The same of passes of which it is not known, as if all of them had gone up. */
  unknownProgress: Float64Array;
  /** Legendre's second polynomial over each way, positive going up: friction that is least where the wheel turns back. */
  loop: Float64Array;
  /** What is left of the way before each turn: friction that is taken up within some millimetres. */
  turn: Float64Array;
  /** Whether some height was read early in one pass and late in it or in another, so that drift shows. */
  isDriftSeen: boolean;
}

/** In time: by what was told, else lowest first. */
function inTime(rows: readonly OrderedRow[], pass: readonly number[], isDown: boolean): number[] {
  const side = isDown ? -1 : 1;
  return [...pass].sort((a, b) => {
    const [one, other] = [rows[a]!, rows[b]!];
    if (one.time !== undefined && other.time !== undefined) return one.time - other.time;
    return Number(one.again) - Number(other.again) || side * (one.travel - other.travel) || a - b;
  });
}

/** Spreads −½ to ½ over rows in time, equal heights alike, as it is not known which was first. */
function spread(rows: readonly OrderedRow[], run: readonly number[], out: Float64Array, share = 1): void {
  const last = run.length - 1;
  for (let from = 0; from <= last; ) {
    const [first, isTimed] = [rows[run[from]!]!, rows[run[from]!]!.time !== undefined];
    let to = from;
    const isSame = ({ travel, again }: OrderedRow) => travel === first.travel && again === first.again;
    while (!isTimed && to < last && isSame(rows[run[to + 1]!]!)) to++;
    for (let i = from; i <= to; i++) out[run[i]!] = last > 0 ? share * ((from + to) / 2 / last - 0.5) : 0;
    from = to + 1;
  }
}

/** @param passes rows of each pass */
export function readingOrder(rows: readonly OrderedRow[], passes: readonly (readonly number[])[]): ReadingOrder {
  const zeros = () => new Float64Array(rows.length);
  const order: ReadingOrder = {
    runs: [],
    progress: zeros(),
    unknownProgress: zeros(),
    loop: zeros(),
    turn: zeros(),
    isDriftSeen: false,
  };
  const seen = new Set<string>();
  for (const pass of passes) {
    const ways = (['up', 'down', undefined] as const).map((going) => pass.filter((i) => rows[i]!.going === going));
    const [up, down] = ways as [number[], number[], number[]];
    const isTimed = pass.every((i) => rows[i]!.time !== undefined);
    const again = pass.find((i) => rows[i]!.again);
    const returns = isTimed || again === undefined ? [] : ordersByReturn(rows, pass, again);
    if (returns.length > 0) {
      order.runs.push(returns[0]!);
      for (const run of returns) {
        const share = zeros();
        spread(rows, run, share);
        for (const i of pass) order.progress[i]! += share[i]! / returns.length;
      }
      order.isDriftSeen = true;
    } else if (!isTimed && up.length > 0 && down.length > 0) {
      // Which way came first is not known: what it would add to one of them, their difference takes.
      for (const [way, of] of ways.entries()) {
        if (of.length === 0) continue;
        const run = inTime(rows, of, way === 1);
        order.runs.push(run);
        if (way < 2) spread(rows, run, order.progress, of.length / pass.length);
      }
      order.isDriftSeen = true;
    } else {
      const isDown = down.length > 0 || (up.length === 0 && again !== undefined && isHighEnd(rows, pass, again));
      const run = inTime(rows, pass, isDown);
      order.runs.push(run);
      const isKnown = isTimed || up.length + down.length > 0 || again !== undefined;
      spread(rows, run, isKnown ? order.progress : order.unknownProgress);
      order.isDriftSeen ||= again !== undefined || isTimed;
    }
    for (const [way, of] of [up, down].entries()) {
      if (of.length === 0) continue;
      seen.add(String(way));
      const heights = of.map((i) => rows[i]!.travel);
      const [low, high] = [Math.min(...heights), Math.max(...heights)];
      for (const i of of) {
        const z = high > low ? (2 * rows[i]!.travel - low - high) / (high - low) : 0;
        order.turn[i] =
          (way === 0 ? -0.5 : 0.5) * Math.exp(-(way === 0 ? rows[i]!.travel - low : high - rows[i]!.travel) / TURN_MM);
        order.loop[i] = ((way === 0 ? 1 : -1) * (3 * z * z - 1)) / 4;
      }
    }
  }
  const isBoth = seen.size === 2;
  if (!isBoth) order.loop.fill(0);
  if (!isBoth) order.turn.fill(0);
  order.isDriftSeen ||= isBoth;
  return order;
}

/** Whether what was read once more is the highest of its pass rather than the lowest. */
function isHighEnd(rows: readonly OrderedRow[], pass: readonly number[], again: number): boolean {
  const heights = pass.map((i) => rows[i]!.travel);
  return 2 * rows[again]!.travel > Math.min(...heights) + Math.max(...heights);
}

/** Readings that stand in the order in which they were taken: which way each went is told by the order where nobody said it. */
export function withWays(readings: readonly Reading[]): Reading[] {
  const told = [...readings];
  const passes = new Map<string | undefined, number[]>();
  readings.forEach(({ pass }, i) => {
    const of = passes.get(pass);
    if (of) of.push(i);
    else passes.set(pass, [i]);
  });
  for (const pass of passes.values()) {
    if (pass.some((i) => readings[i]!.going)) continue;
    const { directions } = passOrderOf(pass.map((i) => readings[i]!.travel));
    directions?.forEach((going, k) => {
      told[pass[k]!] = { ...readings[pass[k]!]!, going };
    });
  }
  return told;
}
