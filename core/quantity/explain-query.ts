import type { Query, QueryCode } from '../document/unusual.js';
import type { ExplainOptions } from './explain.js';
import { formatQuantity } from './format.js';
import { METRIC } from './units.js';
import { words } from './words.js';

/** @param size the value as people read it; without its sign where the sentence says the direction. */
export type QueryWords = (size: string, query: Query) => string;

const linkAt = (path: Query['path']) => (path.startsWith('tieRod') ? 'tie rod' : 'arm');

/** English words of what looks unusual. */
export const QUERY = words('quantity/explain-query', {
  texts: {
    track: (size) => `the track would be ${size}`,
    height: (size) => `it is ${size} above the ground`,
    'radius-differs': (size) => `the wheel centre’s height and the loaded radius differ by ${size}`,
    length: (size, { path }) => `the ${linkAt(path)} is ${size} long`,
    slope: (size, { path, value }) => `the ${linkAt(path)} slopes ${size} ${value < 0 ? 'down' : 'up'} to the wheel`,
    'damper-lean': (size, { value }) => `the damper leans ${size} ${value < 0 ? 'outboard' : 'inboard'} at the top`,
    caster: (size) => `caster is ${size}`,
    kingpin: (size) => `kingpin inclination is ${size}`,
    'scrub-radius': (size) => `the scrub radius is ${size}`,
  } satisfies Record<QueryCode, QueryWords>,
  whole: (label: string, text: string): string =>
    `${label}: ${text}, which is unusual on a road car. Check for swapped digits; if it is right, carry on.`,
});
const SIGNED: QueryCode[] = ['caster', 'kingpin', 'scrub-radius'];

/**
 * Two plain sentences for a query: the figure with its name, and what to do.
 *
 * @param options.label name of the point or number for people; the query's path by default
 */
export function explainQuery(
  query: Query,
  { label, unitSystem = METRIC, language }: Pick<ExplainOptions, 'label' | 'unitSystem' | 'language'> = {},
): string {
  const { code, path, value, quantity } = query;
  const shown = SIGNED.includes(code) ? value : Math.abs(value);
  const size = formatQuantity(shown, quantity, unitSystem, { language }).text;
  return QUERY.whole(label || path, QUERY.texts[code](size, query));
}
