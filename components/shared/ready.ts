import type { SolvableSource } from '../../core/answers/camber-source.js';
import type { AnySource } from '../../core/answers/lowering-by-readings.js';
import type { Corner } from '../../core/linkage/corner.js';
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
  // Once it is there, a drag must not wait a frame for it.
  if (check) return { ...request, source: checked(check, source.corner) };
  return withSource(
    request,
    import('../../core/document/check-corner.js').then(({ checkCorner }) => {
      check = checkCorner;
      return checked(checkCorner, source.corner);
    }),
  );
}

type Check = (corner: unknown) => Corner;
let check: Check | undefined;

const refused = ({ problems }: InputError): SolvableSource => ({ kind: 'refused', problems });

function checked(by: Check, corner: unknown): SolvableSource {
  try {
    return { kind: 'checked', corner: by(corner) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refused(error);
  }
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
    return { ...request, source: refused(error) };
  }
}
