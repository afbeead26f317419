import type { SolvableSource } from '../../core/answers/camber-source.js';
import type { LoweringRequest } from '../../core/answers/lowering.js';
import type { AnySource } from '../../core/answers/lowering-by-readings.js';
import { InputError } from '../../core/quantity/problem.js';
import type { AskOptions } from '../../core/worker/protocol.js';

export type Asked = LoweringRequest<AnySource>;
type Askable = LoweringRequest<SolvableSource>;

/**
 * Makes a request what the core for lowering answers. What only some cars need comes only for them: the check of hard points, and
 * the fit of readings with a core of its own.
 */
export function ready(request: Asked, options: AskOptions): Askable | Promise<Askable> {
  const { source } = request;
  if (source.kind === 'readings') {
    return withSource(
      request,
      import('./fitted-source.js').then(({ fittedSource }) => fittedSource(source, options)),
    );
  }
  if (source.kind !== 'corner') return { ...request, source };
  return withSource(
    request,
    import('../../core/document/check-corner.js').then(({ checkCorner }) => ({
      kind: 'checked',
      corner: checkCorner(source.corner),
    })),
  );
}

/** What is wrong with a source is told together with what is wrong with the rest. */
async function withSource(request: Asked, coming: Promise<SolvableSource>): Promise<Askable> {
  try {
    return { ...request, source: await coming };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ...request, source: { kind: 'refused', problems: error.problems } };
  }
}
