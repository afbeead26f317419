import type { Questions } from './bridge.js';
import { repliedValue } from './errors.js';
import { JoinedLayers, type Layer } from './layer.js';
import type { AnswerOf, Reply } from './protocol.js';

/** Those that are not answered in steps. */
type AtOnce = {
  [N in keyof Questions]: ReturnType<Questions[N]> extends Generator ? never : N;
}[keyof Questions];

const here = new JoinedLayers();

/**
 * Answers on the page's own thread, at once, from what was solved already: for what is worked out faster than it is sent. The layers
 * are the functions that the worker is made of, so there is one formula, wherever it runs.
 *
 * @param request its `source`, if it has one, is what was solved, not what it was solved from
 * @throws InputError, WorkerFault
 */
export function answerHere<N extends AtOnce>(
  layers: readonly Layer[],
  question: N,
  request: Parameters<Questions[N]>[0],
): AnswerOf<Questions, N> {
  here.join(layers);
  const asked = 'source' in request ? { ...request, source: { solved: request.source } } : request;
  return repliedValue(here.core.answer(0, question, asked as never) as Reply<AnswerOf<Questions, N>>);
}
