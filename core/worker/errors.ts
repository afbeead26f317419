import { InputError } from '../quantity/problem.js';
import type { Ask, AskForReply, QuestionRecord, Reply } from './protocol.js';

/** Something is wrong with the program, not with what the user gave: the computation threw, stood still or died. */
export class WorkerFault extends Error {
  override name = 'WorkerFault';
}

/** What a reply says. @throws InputError, WorkerFault: a reply has lost their classes on the way */
export function repliedValue<T>(reply: Reply<T>): T {
  if (reply.ok) return reply.value;
  throw 'problems' in reply ? new InputError(reply.problems) : new WorkerFault(reply.fault);
}

/** Gives replies their error classes back. */
export const asking =
  <Q extends QuestionRecord>(askForReply: AskForReply<Q>): Ask<Q> =>
  async (question, request, options) =>
    repliedValue(await askForReply(question, request, options));
