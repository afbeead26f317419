import type { CarDocument } from '../../core/document/car.js';
import type { Fit } from '../../core/document/fit.js';
import { MOST_PLACES } from '../../core/document/fit.js';
import { fitInUse } from '../../core/document/fit-in-use.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { DEFAULT_PLUS_MINUS_MM, type Place } from '../../core/wheel/place.js';
import { readTyreSize } from '../../core/wheel/tyre-size.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import type { OptionGroup, SheetSpec } from '../shared/sheet/sheet-spec.js';
import { clockText } from './bumpline-clearance.words.js';
import { withFit } from './wheel-edits.js';

/** What one can measure a tyre against, with what it is fixed to. `inner`: it is measured from the inner sidewall. */
export const KINDS: readonly (Pick<Place, 'name' | 'fixedTo' | 'is' | 'share'> & { inner?: true })[] = [
  { name: 'arch lip', fixedTo: 'body', is: 'bodywork' },
  { name: 'liner', fixedTo: 'body', is: 'bodywork' },
  { name: 'liner screw', fixedTo: 'body', is: 'bodywork' },
  { name: 'inner panel', fixedTo: 'body', is: 'bodywork', inner: true },
  { name: 'leg', fixedTo: 'body', is: 'chassis', inner: true },
  { name: 'damper tube', fixedTo: 'carrier', is: 'chassis', inner: true },
  { name: 'spring perch', fixedTo: 'carrier', is: 'chassis', inner: true },
  { name: 'knuckle', fixedTo: 'carrier', is: 'chassis', inner: true },
  { name: 'tie rod', fixedTo: 'tieRod', is: 'chassis', inner: true },
  { name: 'lower arm', fixedTo: 'lowerArm', is: 'chassis', inner: true },
  { name: 'anti-roll bar link', fixedTo: 'between', is: 'chassis', share: 0.9, inner: true },
  { name: 'driveshaft', fixedTo: 'between', is: 'chassis', share: 0.5, inner: true },
  { name: 'spring coil', fixedTo: 'between', is: 'chassis', share: 0.5, inner: true },
];

/** What is chosen of a place whose measures are still to come. */
export interface PendingPlace {
  kind: number;
  clock: number;
}

function sizeOf({ size }: WheelSpec): [number, number, number] | undefined {
  try {
    const { sectionMm, aspectPercent, rimCode } = readTyreSize(size);
    return [sectionMm, aspectPercent, rimCode];
  } catch {
    return undefined;
  }
}

const WHEEL_FIELDS: readonly (readonly [key: string, label: string, quantity: Quantity])[] = [
  ['size.0', 'Tyre: width on the sidewall', 'tyreWidth'],
  ['size.1', 'Tyre: aspect', 'aspect'],
  ['size.2', 'Tyre: rim diameter', 'rimInch'],
  ['rimWidthInch', 'Rim width', 'rimInch'],
  ['offset', 'Offset (ET)', 'offset'],
  ['spacer', 'Spacer', 'margin'],
];

const wheelSheet = (which: 'before' | 'after', title: string, howTo: string): SheetSpec => {
  const values = (spec: WheelSpec): number[] | undefined => {
    const size = sizeOf(spec);
    return size && [...size, spec.rimWidthInch, spec.offset, spec.spacer ?? 0];
  };
  return {
    key: which,
    title,
    howTo,
    fields: WHEEL_FIELDS.map(([key, label, quantity]) => ({
      path: `${which}.${key}`,
      label,
      quantity,
      ...(key === 'offset' && { signed: true }),
    })),
    read: ({ fit }) => {
      const { [which]: spec } = fit ?? {};
      return spec && values(spec);
    },
    standIn: (car) => values(fitInUse(car)[which]),
    write: (car, given) => {
      if (!given) {
        const { [which]: _, ...rest } = car.fit ?? {};
        return { ...car, fit: rest };
      }
      const [width, aspect, rim, rimWidthInch, offset, spacer] = given as [
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      const { [which]: old } = car.fit ?? {};
      const sameSize = old && sizeOf(old)?.join() === [width, aspect, rim].join();
      return withFit(car, {
        [which]: {
          ...old,
          size: sameSize ? old.size : `${width}/${aspect}R${rim}`,
          rimWidthInch,
          offset,
          spacer,
        },
      });
    },
  };
};

/** One number of one wheel that most leave out. */
const wheelNumber = (
  key: 'sectionWidth' | 'treadWidth' | 'shoulderRadius',
  title: string,
  howTo: string,
): SheetSpec => ({
  key: `after.${key}`,
  title,
  howTo,
  optional: true,
  fields: [{ path: `after.${key}`, label: title, quantity: 'travel' }],
  read: ({ fit }) => (fit?.after?.[key] === undefined ? undefined : [fit.after[key]]),
  write: (car, given) => {
    const { [key]: _, ...rest } = fitInUse(car).after;
    return withFit(car, { after: given ? { ...rest, [key]: given[0]! } : rest });
  },
});

const fitNumber = (
  key: keyof Omit<Fit, 'before' | 'after' | 'places'>,
  quantity: Quantity,
  title: string,
  howTo: string,
  standIn: (car: CarDocument) => number | undefined,
  signed = false,
): SheetSpec => ({
  key,
  title,
  howTo,
  optional: true,
  fields: [{ path: key, label: title, quantity, signed }],
  read: ({ fit }) => (fit?.[key] === undefined ? undefined : [fit[key]]),
  standIn: (car) => {
    const value = standIn(car);
    return value === undefined ? undefined : [value];
  },
  write: (car, given) => {
    const { [key]: _, ...rest } = car.fit ?? {};
    return given ? withFit(car, { [key]: given[0]! }) : { ...car, fit: rest };
  },
});

export const WHEEL_SHEETS: readonly SheetSpec[] = [
  wheelSheet(
    'before',
    'Wheel that was on',
    'The tyre and rim on the car when you measured the places below: every gap is counted from its sidewall. Offset stands on the rim; positive means the mounting face lies outboard of its middle.',
  ),
  wheelSheet(
    'after',
    'Wheel in question',
    'The tyre and rim you think of. For a spacer alone give the same wheel again and its spacer.',
  ),
];

export const FINE_SHEETS: readonly SheetSpec[] = [
  wheelNumber(
    'sectionWidth',
    'Width as measured',
    'Sidewall to sidewall of the new tyre on its rim, inflated. It takes the place of the formula, and is the only way for a tyre stretched over a rim wider than its size is made for.',
  ),
  wheelNumber(
    'treadWidth',
    'Tread width',
    'Across the flat of the new tread. Left out, 86 % of the tyre’s width is taken (common practice, no source).',
  ),
  wheelNumber(
    'shoulderRadius',
    'Shoulder radius',
    'Where the new tyre’s tread turns into its sidewall: square shoulders have a small one.',
  ),
  fitNumber(
    'lock',
    'steer',
    'Full lock',
    'How far this wheel turns from straight ahead. 0 for a rear axle: then it is looked at straight ahead only.',
    (car) => fitInUse(car).lock,
  ),
  fitNumber(
    'marginBodywork',
    'margin',
    'Margin to bodywork',
    'What must stay free besides the allowance. 10 mm as one published national practice (Austria) has it; your own authority’s rule counts.',
    () => 10,
  ),
  fitNumber(
    'marginChassis',
    'margin',
    'Margin to chassis parts',
    'As before, to damper, perch, rods and legs: 5 mm in the same practice.',
    () => 5,
  ),
  fitNumber(
    'allowance',
    'margin',
    'Allowance for give',
    'What bushes and carcass give way under load. Common practice, no source.',
    () => 3,
  ),
  fitNumber(
    'camberBy',
    'camberChange',
    'Camber changed with the wheels',
    'By a top mount, for instance. Negative leans the top further in.',
    () => 0,
    true,
  ),
  fitNumber(
    'sideways',
    'share',
    'Sideways motion',
    'Only where readings give the camber: how far the wheel moves out for each mm of bump, which a gauge on the hub does not tell. 0 until you give it.',
    () => 0,
    true,
  ),
];

/** The place at an index, or one more. */
export function placeSheet(index: number, car: CarDocument, pending: PendingPlace): SheetSpec {
  const isLeft = answeredCorner(car).endsWith('left');
  const own = (from: CarDocument): Place | undefined => from.fit?.places?.[index];
  const shown = own(car) ?? (car.fit?.places ? undefined : fitInUse(car).places[index]);
  const at = (place: Place | undefined) => (place && 'clock' in place.at ? place.at : undefined);
  const put = (from: CarDocument, place: Place | undefined): CarDocument => {
    // Of the example's or the page's places the first own one makes an end.
    const before = from.fit?.places ?? [];
    const places = place
      ? before[index]
        ? before.map((old, i) => (i === index ? place : old))
        : [...before, place].slice(0, MOST_PLACES)
      : before.filter((_, i) => i !== index);
    return withFit(from, { places });
  };
  const change = (from: CarDocument, edit: (place: Place) => Place): CarDocument => {
    const place = own(from);
    return place ? put(from, edit(place)) : from;
  };
  const kindOf = (place: Place | undefined) =>
    place ? KINDS.findIndex(({ name }) => name === place.name) : pending.kind;
  const what: OptionGroup = {
    legend: 'What is it?',
    items: KINDS.map(({ name }, i) => ({ id: String(i), label: name, short: name })),
    read: (from) => String(kindOf(own(from))),
    write: (from, id) => {
      const { inner, ...kind } = KINDS[Number(id)]!;
      pending.kind = Number(id);
      return change(from, (place) => ({
        ...withoutShare(place),
        ...kind,
        at: 'clock' in place.at ? { ...place.at, from: inner ? 'inner' : 'outer' } : place.at,
      }));
    },
  };
  const where: OptionGroup = {
    legend: 'Where on the clock, seen from outside?',
    items: [9, 10, 11, 12, 1, 2, 3].map((hour) => ({
      id: String(hour),
      label: clockText(hour, isLeft).replace(' o’clock', ''),
      short: clockText(hour, isLeft),
    })),
    read: (from) => String(at(own(from))?.clock ?? pending.clock),
    write: (from, id) => {
      pending.clock = Number(id);
      return change(from, (place) =>
        'clock' in place.at ? { ...place, at: { ...place.at, clock: Number(id) } } : place,
      );
    },
  };
  const inner = (from: CarDocument) =>
    (at(own(from))?.from ?? (KINDS[pending.kind]!.inner ? 'inner' : 'outer')) === 'inner';
  const side = inner(car) ? 'inner' : 'outer';
  return {
    key: `places.${index}`,
    title: shown ? shown.name : 'A place in the arch',
    howTo: `With the old wheel on and the car on its wheels: straight from the hub’s centre to the place, as seen square from the side; then how far it lies outboard of the tyre’s ${side} sidewall at that clock position, by plumb line or level. Inboard of it is negative.`,
    optional: true,
    caution: 'stands',
    fields: [
      { path: `places.${index}.at.distance`, label: 'Hub centre to the place', quantity: 'coordinate' },
      {
        path: `places.${index}.at.out`,
        label: `Outboard of the ${side} sidewall`,
        quantity: 'coordinate',
        signed: true,
      },
    ],
    read: (from) => {
      const found = at(own(from));
      return found && [found.distance, found.out];
    },
    standIn: () => {
      const found = at(shown);
      return found && [found.distance, found.out];
    },
    write: (from, values) => {
      if (!values) return put(from, undefined);
      const { inner: isInner, ...kind } = KINDS[pending.kind]!;
      const place = own(from);
      const measured = { distance: values[0]!, out: values[1]! };
      return put(
        from,
        place && 'clock' in place.at
          ? { ...place, at: { ...place.at, ...measured } }
          : { ...kind, at: { clock: pending.clock, ...measured, ...(isInner && { from: 'inner' as const }) } },
      );
    },
    doubt: {
      read: (from) => own(from)?.plusMinus ?? DEFAULT_PLUS_MINUS_MM,
      write: (from, plusMinus) => change(from, (place) => ({ ...place, plusMinus })),
    },
    options: [what, where],
  };
}

const withoutShare = ({ share: _, ...place }: Place): Omit<Place, 'share'> => place;
