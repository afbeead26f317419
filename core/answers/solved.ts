import type { MovedLinks, TriedSource } from '../curve-sources/solved-source.js';

/** What a source comes to, as plain data for who answers from it elsewhere: all but what would solve its links again. */
export type SolvedData = TriedSource<MovedLinks>;

/** What is wrong with a source is an answer too: it is told together with what is wrong with the rest of a question. */
export function solved({ source }: { source: TriedSource }): SolvedData {
  if ('problems' in source || !source.links) return source;
  const { links, ...known } = source;
  const { corner, motion, rollCentreHeight, reach } = links;
  return { ...known, links: { corner, motion, rollCentreHeight, reach } };
}
