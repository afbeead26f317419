import type { Vector3 } from '../linkage/corner.js';
import { FIXED_TO, type Place } from '../wheel/place.js';
import { LENGTH, RATIO } from './field-ranges.js';
import { name, number, type Text, tuple, word } from './link-text.js';

const length = number(LENGTH);
const point = tuple<Vector3>(length, length, length);

/** A place of the arch without how sure it is. */
export type Spot = Omit<Place, 'plusMinus' | 'share'>;
const fixedTo = word(FIXED_TO);
const kind = word(['bodywork', 'chassis'] as const);
const way = word(['clock', 'outer', 'inner', 'point', 'tread', 'tread-outer', 'tread-inner'] as const);
const wayOf = ({ from, beyond }: Exclude<Spot['at'], { point: unknown }>) =>
  beyond ? (from ? (`tread-${from}` as const) : 'tread') : (from ?? 'clock');
const onClock = tuple(number(RATIO), length, length);

/**
 * Name, what it is fixed to, what it is, then `clock` (or the sidewall that was named; of a distance beyond the old tread `tread`,
 * `tread-outer`, `tread-inner`), hours, distance, out; or `point`, x, y, z.
 */
export const spot: Text<Spot> = {
  write: ({ at, ...place }) =>
    [
      name.write(place.name),
      place.fixedTo,
      place.is,
      ...('point' in at
        ? ['point', point.write(at.point)]
        : [wayOf(at), onClock.write([at.clock, at.distance, at.out])]),
    ].join(','),
  read(text) {
    const [nameText = '', fixed = '', is = '', wayText = '', ...figures] = text.split(',');
    const from = way.read(wayText);
    const place = { name: name.read(nameText), fixedTo: fixedTo.read(fixed), is: kind.read(is) };
    if (from === 'point') return { ...place, at: { point: point.read(figures.join(',')) } };
    const [clock, distance, out] = onClock.read(figures.join(','));
    const isTread = from.startsWith('tread');
    const side = from.replace(/^tread-?/, '');
    const sidewall = side === 'outer' || side === 'inner' ? { from: side as 'outer' | 'inner' } : {};
    return { ...place, at: { clock, distance, out, ...sidewall, ...(isTread && { beyond: 'tread' as const }) } };
  },
};
