import type { SolvableSource } from '../../core/answers/camber-source.js';
import type { AnySource } from '../../core/answers/lowering-by-readings.js';
import { InputError } from '../../core/quantity/problem.js';
import type { AskOptions } from '../../core/worker/protocol.js';

type Solvable<R extends { source: AnySource }> = Omit<R, 'source'> & { source: SolvableSource };

/**
 * Makes a request what a core function about linkages answers. What only some cars need comes only for them: the check of hard
 * points, and the fit of readings with a core of its own.
 */
export function ready<R extends { source: AnySource }>(
  request: R,
  options: AskOptions,
): Solvable<R> | Promise<Solvable<R>> {
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
async function withSource<R extends { source: AnySource }>(
  request: R,
  coming: Promise<SolvableSource>,
): Promise<Solvable<R>> {
  try {
    return { ...request, source: await coming };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ...request, source: { kind: 'refused', problems: error.problems } };
  }
}
