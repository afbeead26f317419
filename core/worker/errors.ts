import { InputError } from '../quantity/problem.js';
import type { Ask, AskForReply, QuestionRecord } from './protocol.js';

/** Something is wrong with the program, not with what the user gave: the computation threw, stood still or died. */
export class WorkerFault extends Error {
  override name = 'WorkerFault';
}

/** Gives replies their error classes back. */
export function asking<Q extends QuestionRecord>(askForReply: AskForReply<Q>): Ask<Q> {
  return async (question, request, options) => {
    const reply = await askForReply(question, request, options);
    if (reply.ok) return reply.value;
    throw 'problems' in reply ? new InputError(reply.problems) : new WorkerFault(reply.fault);
  };
}
