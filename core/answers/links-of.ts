import type { SolvedLinks, TriedSource } from '../curve-sources/solved-source.js';
import { InputError, type Problem } from '../quantity/problem.js';

/** @throws InputError of what is wrong with the source, or besides */
export function linksOf(source: TriedSource, problems: Problem[] = []): SolvedLinks {
  if ('problems' in source) throw new InputError([...problems, ...source.problems]);
  if (!source.links) throw new InputError([...problems, { code: 'wrong-shape', path: 'source', value: undefined }]);
  if (problems.length > 0) throw new InputError(problems);
  return source.links;
}
