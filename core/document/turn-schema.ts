import * as v from 'valibot';
import { ROLL_LOAD_RANGES, TIE_RANGES, TURN_RANGES } from './field-ranges.js';
import { RATES_ARE, ROLL_WAYS } from './roll-ways.js';
import { maybe, numbers, record } from './schema-shapes.js';

/**
 * What is asked of a turn: suspension roll and what the tyres add, degrees; its radius and the wheelbase, m; the track, mm, where no
 * hard points tell it; the static camber that is set again at the drop, and the inclination to the road that is wanted, degrees; what a
 * photo shows of roll. Each way to come by the roll keeps what was given for it; `rollFrom` names the one that counts.
 */
export const turnSchema = record({
  ...numbers(TURN_RANGES),
  rollFrom: maybe(v.picklist(ROLL_WAYS)),
  marks: maybe(record(numbers(TIE_RANGES))),
  load: maybe(record({ ...numbers(ROLL_LOAD_RANGES), rates: maybe(v.picklist(RATES_ARE)) })),
});
