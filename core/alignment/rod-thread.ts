import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { ROD_THREADS, type RodThread } from './rod-threads.js';

/** A tie rod's adjustment. */
export interface ThreadAsked {
  /** Between two crests of its thread, mm: the lead of a single-start thread (ISO 68-1's P). */
  pitch: number;
  thread: RodThread;
}

/** How far a rod is to be turned. */
export interface TurnsAnswer {
  /** Positive: longer. */
  turns: number;
  /** Half-width of its 95 % interval; left out where the length's was. */
  plusMinus?: number;
  /** By which a turn changes the rod's length, mm. */
  perTurn: number;
}

/**
 * Turns for a change of a rod's length. A turn moves a single-start thread by its pitch; a sleeve moves on both its threads at once, and so
 * by twice the pitch.
 *
 * @param longer mm; negative: shorter; half-width of its 95 % interval
 * @throws InputError from `alignment.pitch`, `alignment.thread`, `longer`
 */
export function turnsOf(longer: { value: number; plusMinus?: number }, { pitch, thread }: ThreadAsked): TurnsAnswer {
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  check('alignment.pitch', pitch, QUANTITIES.threadPitch.min, QUANTITIES.threadPitch.max);
  check('longer', longer.value, QUANTITIES.partLength.min, QUANTITIES.partLength.max);
  if (!ROD_THREADS.includes(thread)) {
    const code = thread === undefined ? 'missing' : 'unknown-name';
    problems.push({ code, path: 'alignment.thread', value: thread, names: ROD_THREADS });
  }
  if (problems.length > 0) throw new InputError(problems);
  const perTurn = thread === 'pair' ? 2 * pitch : pitch;
  const { value, plusMinus } = longer;
  return { turns: value / perTurn, ...(plusMinus !== undefined && { plusMinus: plusMinus / perTurn }), perTurn };
}
