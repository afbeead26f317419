import type { CarDocument } from '../../core/document/car.js';
import { fitmentByUser, limitsInUse, ownEnds } from '../../core/document/limits-in-use.js';
import { gave } from '../../core/document/provenance.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { CornerLoads, TravelLimits } from '../../core/travel/travel-limits.js';
import { type Display, show } from '../element/sentence.js';
import type { SheetSpec } from './sheet-spec.js';

type LimitKey = Exclude<keyof TravelLimits, 'stopGap' | 'stopGapPlusMinus'>;
type LoadKey = Exclude<keyof CornerLoads, 'stopPoints'>;
/** `otherwise`: what counts while nothing is typed. */
type Field = readonly [label: string, quantity: Quantity, otherwise?: number];

interface Words {
  title: string;
  howTo: string;
  caution?: SheetSpec['caution'];
  /** Of two values what a list says of the second. */
  second?: string;
}

/** Values of one group of the car, each in a field of its own: all of a sheet's are given together. */
function sheet(
  group: 'limits' | 'loads',
  fields: Readonly<Record<string, Field>>,
  { title, howTo, caution, second }: Words,
  doubt?: SheetSpec['doubt'],
): SheetSpec {
  const keys = Object.keys(fields);
  const read = (from: object | undefined) => {
    const given = (from ?? {}) as Record<string, number | undefined>;
    if (keys.every((key) => given[key] === undefined)) return undefined;
    const values = keys.map((key) => given[key] ?? fields[key]![2]);
    return values.every((value) => value !== undefined) ? (values as number[]) : undefined;
  };
  return {
    key: `${group}.${keys[0]}`,
    title,
    howTo,
    ...(caution && { caution }),
    optional: true,
    fields: keys.map((key) => {
      const [label, quantity, otherwise] = fields[key]!;
      return {
        path: `${group}.${key}`,
        label,
        quantity,
        ...(otherwise !== undefined && { otherwise: () => otherwise }),
      };
    }),
    // A page's is not the user's own: it stands in.
    read: (car) => read(gave(car, 'fit', 'user')[group]),
    standIn: (car) => read(group === 'limits' ? limitsInUse(car) : car.loads),
    write: (car, values) =>
      fitmentByUser(car, (begun) => {
        const rest: Record<string, unknown> = { ...begun[group] };
        keys.forEach((key, index) => {
          if (values) rest[key] = values[index];
          else delete rest[key];
        });
        return { [group]: rest };
      }),
    ...(doubt && { doubt }),
    ...(second && {
      summary: ([first, more]: readonly number[], display: Display) => {
        const [one, other] = [first!, more!].map((value, i) => show(value, fields[keys[i]!]![1], display));
        return more ? `${one}, ${other} ${second}` : one!;
      },
    }),
  };
}

const limit = (fields: Partial<Record<LimitKey, Field>>, words: Words) =>
  sheet('limits', fields as Record<string, Field>, words);
const load = (fields: Partial<Record<LoadKey, Field>>, words: Words) =>
  sheet('loads', fields as Record<string, Field>, words);

/** How sure one is of the gap to the stop: kept with the other limits. */
export const STOP_GAP_DOUBT: NonNullable<SheetSpec['doubt']> = {
  read: (car: CarDocument) => ownEnds(car).limits?.stopGapPlusMinus,
  write: (car, plusMinus) =>
    fitmentByUser(car, ({ limits }) => ({ limits: { ...limits, stopGapPlusMinus: plusMinus } })),
};

/** What ends wheel travel besides the gap to the stop. */
export const LIMIT_SHEETS: readonly SheetSpec[] = [
  limit(
    { stopLength: ['Length of the stop as made', 'gap'], stopTrimmed: ['Cut off it', 'gap', 0] },
    {
      title: 'Bump stop',
      second: 'cut off',
      howTo:
        'Its length off the car and uncompressed, and what somebody has cut off since; 0 for nothing. The gap is the one you find with it cut. A stop that is cut too far lets the damper hit its own end and break.',
    },
  ),
  limit(
    { stopUsable: ['Share of its length', 'share'] },
    {
      title: 'How far the stop gives',
      howTo:
        'Which share of the stop’s length is pressed together when it is solid: 0.5 for half, which is usual for foam (common practice, no source). Until you give it, half is taken, and the ± holds anything from a third to two thirds. What you give counts as known: leave it empty unless its maker says it or you pressed one.',
    },
  ),
  limit(
    { strokeBump: ['Rod still to go in', 'gap'] },
    {
      title: 'Damper stroke left in bump',
      howTo:
        'How far the rod can still go in, from where the car stands, before the damper itself bottoms. From its maker, or with the damper off the car: push the bare rod in by hand until it stops.',
      caution: 'spring',
    },
  ),
  limit(
    { strokeDroop: ['Rod still to come out', 'gap'] },
    {
      title: 'Damper stroke left in droop',
      howTo:
        'How much more of the rod shows when the damper is fully drawn out than where the car stands: from its maker, or with both wheels of the axle hanging and the car on axle stands.',
      caution: ['stands', 'carried'],
    },
  ),
  limit(
    { springBind: ['Spring still to go', 'gap'] },
    {
      title: 'Until the coils touch',
      howTo:
        'All gaps between the coils at ride height, added up, along the spring. A coil that lies against its neighbour already does not count.',
    },
  ),
  limit(
    { shaftBump: ['In bump', 'gap'], shaftDroop: ['In droop', 'gap'] },
    {
      title: 'Driveshaft',
      second: 'in droop',
      howTo:
        'Wheel travel up and down from where the car stands until a joint is at the end of its angle or its plunge. Take its maker’s figure, or turn the shaft by hand at each height, spring and bump stop out, never past where the stop would be solid.',
      caution: ['springOut', 'carried'],
    },
  ),
  limit(
    { motionRatio: ['Damper travel per wheel travel', 'ratio'] },
    {
      title: 'Motion ratio',
      howTo:
        'By how much the damper shortens for each mm of wheel travel, 0.91 to 1.00 on 95 of 100 random invented struts. Leave it out where the links are known: it is then worked out along the whole travel.',
    },
  ),
];

/** What the corner weighs and what carries it. */
export const LOAD_SHEETS: readonly SheetSpec[] = [
  load(
    { springRate: ['Rate', 'springRate'] },
    { title: 'Spring rate', howTo: 'Of one spring, as printed on it or as its maker states it.' },
  ),
  load(
    { cornerMass: ['On the scales', 'mass'], unsprungMass: ['Wheel, brake, knuckle', 'mass'] },
    {
      title: 'Corner weight',
      second: 'unsprung',
      howTo:
        'What stands on this wheel, driver in the car, and what of it the spring does not carry: wheel, tyre, brake, knuckle, half of arm and shaft.',
    },
  ),
  load(
    { stopRate: ['Rate', 'springRate'] },
    {
      title: 'Rate of the bump stop',
      howTo: 'Force per mm once it is touched, as a mean. Left out, how far a load goes into the stop is not known.',
    },
  ),
  load(
    { gasForce: ['Force', 'force'] },
    { title: 'Gas force of the damper', howTo: 'With how much the rod pushes out by itself.' },
  ),
  load(
    { loadFactor: ['Multiple of the static load', 'loadFactor'] },
    {
      title: 'How hard a bump',
      howTo:
        'Total wheel load to look at, as a multiple of the static sprung corner load: 2 for “2 g”. Until you give it, 2.',
    },
  ),
];
