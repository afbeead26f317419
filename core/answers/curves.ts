import type { SolvedSource, TriedSource } from '../curve-sources/solved-source.js';
import { InputError } from '../quantity/problem.js';

/** The curves of a source, for who answers from them elsewhere. */
export type SourceCurves = Omit<SolvedSource, 'links'>;

/** @throws InputError with all that is wrong with the source */
export function curves({ source }: { source: TriedSource }): SourceCurves {
  if ('problems' in source) throw new InputError(source.problems);
  const { links: _, ...known } = source;
  return known;
}
