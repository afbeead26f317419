import type { CarDocument } from '../../core/document/car.js';
import { fitmentByUser, limitsInUse, ownEnds } from '../../core/document/limits-in-use.js';
import { gave } from '../../core/document/provenance.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import type { CornerLoads, TravelLimits } from '../../core/travel/travel-limits.js';
import { type Display, show } from '../element/sentence.js';
import type { SheetSpec } from './sheet-spec.js';
import { SHEETS } from './sheets.labels.js';

type LimitKey = Exclude<keyof TravelLimits, 'stopGap' | 'stopGapPlusMinus'>;
type LoadKey = Exclude<keyof CornerLoads, 'stopPoints'>;
/** `otherwise`: what counts while nothing is typed. */
type Field = readonly [quantity: Quantity, otherwise?: number];

interface Words {
  title: string;
  howTo: string;
  /** Of its fields, in their order. */
  labels: readonly string[];
  /** Of two values what a list says of the second. */
  second?: string;
}

/** Values of one group of the car, each in a field of its own: all of a sheet's are given together. */
function sheet(
  group: 'limits' | 'loads',
  fields: Readonly<Record<string, Field>>,
  { title, howTo, labels, second }: Words,
  caution?: SheetSpec['caution'],
): SheetSpec {
  const keys = Object.keys(fields);
  const read = (from: object | undefined) => {
    const given = (from ?? {}) as Record<string, number | undefined>;
    if (keys.every((key) => given[key] === undefined)) return undefined;
    const values = keys.map((key) => given[key] ?? fields[key]![1]);
    return values.every((value) => value !== undefined) ? (values as number[]) : undefined;
  };
  return {
    key: `${group}.${keys[0]}`,
    title,
    howTo,
    ...(caution && { caution }),
    optional: true,
    fields: keys.map((key, index) => {
      const [quantity, otherwise] = fields[key]!;
      return {
        path: `${group}.${key}`,
        label: labels[index]!,
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
    ...(second && {
      summary: ([first, more]: readonly number[], display: Display) => {
        const [one, other] = [first!, more!].map((value, i) => show(value, fields[keys[i]!]![0], display));
        return more ? `${one}, ${other} ${second}` : one!;
      },
    }),
  };
}

const limit = (fields: Partial<Record<LimitKey, Field>>, words: Words, caution?: SheetSpec['caution']) =>
  sheet('limits', fields as Record<string, Field>, words, caution);
const load = (fields: Partial<Record<LoadKey, Field>>, words: Words) =>
  sheet('loads', fields as Record<string, Field>, words);

/** How sure one is of the gap to the stop: kept with the other limits. */
export const STOP_GAP_DOUBT: NonNullable<SheetSpec['doubt']> = {
  read: (car: CarDocument) => ownEnds(car).limits?.stopGapPlusMinus,
  write: (car, plusMinus) =>
    fitmentByUser(car, ({ limits }) => ({ limits: { ...limits, stopGapPlusMinus: plusMinus } })),
};

/** What ends wheel travel besides the gap to the stop. */
export const LIMIT_SHEETS: readonly SheetSpec[] = worded(() => [
  limit({ stopLength: ['gap'], stopTrimmed: ['gap', 0] }, SHEETS.ends.stopLength),
  limit({ stopUsable: ['share'] }, SHEETS.ends.stopUsable),
  limit({ strokeBump: ['gap'] }, SHEETS.ends.strokeBump, 'spring'),
  limit({ strokeDroop: ['gap'] }, SHEETS.ends.strokeDroop, ['stands', 'carried']),
  limit({ springBind: ['gap'] }, SHEETS.ends.springBind),
  limit({ shaftBump: ['gap'], shaftDroop: ['gap'] }, SHEETS.ends.shaftBump, ['springOut', 'carried']),
  limit({ motionRatio: ['ratio'] }, SHEETS.ends.motionRatio),
]);

/** What the corner weighs and what carries it. */
export const LOAD_SHEETS: readonly SheetSpec[] = worded(() => [
  load({ springRate: ['springRate'] }, SHEETS.ends.springRate),
  load({ cornerMass: ['mass'], unsprungMass: ['mass'] }, SHEETS.ends.cornerMass),
  load({ stopRate: ['springRate'] }, SHEETS.ends.stopRate),
  load({ gasForce: ['force'] }, SHEETS.ends.gasForce),
  load({ loadFactor: ['loadFactor'] }, SHEETS.ends.loadFactor),
]);
