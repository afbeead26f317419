import { formatQuantity } from '../../core/quantity/format.js';
import { type Display, show, upper } from '../element/sentence.js';
import { LABELS } from './bumpline-compare.labels.js';
import type { Told } from './bumpline-compare.words.js';
import { heightName } from './height-name.js';
import type { Reaches } from './what-reaches.js';

/** Where the readings end, and what could be compared instead. */
export function reachText({ at, end, isSolid }: Reaches, { names, own, heights }: Told, display: Display): string {
  const { reach } = LABELS;
  const name = upper(names[at.curve]!);
  const drop = heights[at.height]!;
  const where = formatQuantity(end, 'travel', display.units, { language: display.language, sign: 'always' }).text;
  const left = end - drop;
  const ends = isSolid ? reach.solid(where) : at.curve === own ? reach.curve(name, where) : reach.readings(name, where);
  const height = heightName(drop, display);
  return left > 0 ? reach.left(ends, show(left, 'travel', display), height) : reach.above(ends, height);
}
