import { JoinedLayers, type Layer } from './layer.js';
import type { Reply } from './protocol.js';

const here = new JoinedLayers();

/**
 * Answers on the page's own thread, at once, from what was solved already: for what is worked out faster than it is sent. The layers
 * are the functions that the worker is made of, so there is one formula, wherever it runs.
 *
 * @param question one that is not answered in steps
 * @param request its `source`, if it has one, is what was solved, not what it was solved from
 */
export function answerHere<Answer>(
  layers: readonly Layer[],
  question: string,
  request: Record<string, unknown>,
): Reply<Answer> {
  here.join(layers);
  const asked = request.source ? { ...request, source: { solved: request.source } } : request;
  return here.core.answer(0, question, asked as never) as Reply<Answer>;
}
