import { type CarDocument, CORNER_NAMES, givenByUser, hasMeasured, ownOf } from '../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../core/document/example-driveway.js';
import { gave } from '../../core/document/provenance.js';
import { camberSetupOf, sourceKindOf } from '../../core/document/setup-in-use.js';
import {
  type AssumableKey,
  BUMP_STEER_OVER_MM,
  COVERED,
  DRIVEWAY_FIELDS,
  HOW_SURE as LIMITS,
  scaleOfMeasure,
} from '../../core/driveway/driveway.js';
import type { MeasureKey } from '../drawing/measures.js';
import type { OptionGroup, SheetSpec } from './sheet-spec.js';

type OwnKey = MeasureKey | 'kingpin' | 'track' | 'caster' | 'bumpSteer' | 'hubOffset';

/** What camber answers without: asked where it is known. */
const OPTIONAL: readonly OwnKey[] = ['kingpin', 'track', 'caster', 'bumpSteer', 'hubOffset'];

const QUANTITY = { length: 'coordinate', angle: 'lean', toe: 'toe' } as const;
const USUAL = { length: LIMITS.length.tape, angle: LIMITS.angle.gauge, toe: LIMITS.toe.gauge };

const TEXTS: Record<OwnKey, { title: string; howTo: string }> = {
  armLength: {
    title: 'Lower arm length',
    howTo:
      'From the middle of the arm’s inner bolt straight out to the middle of the ball joint. With two inner bolts: from the line through both.',
  },
  pivotHeight: {
    title: 'Height of the arm’s pivot',
    howTo:
      'Floor up to the middle of the inner bolt. With two: to the line through both, straight in from the ball joint.',
  },
  ballHeight: {
    title: 'Height of the ball joint',
    howTo: 'Floor up to the middle of the ball, inside its housing: not the nut, not the boot.',
  },
  wheelCentreHeight: { title: 'Height of the wheel centre', howTo: 'Floor straight up to the middle of the hub.' },
  damperLean: {
    title: 'Lean of the damper',
    howTo:
      'Zero the gauge on the floor, across the car, then lay it along the damper’s tube. Not the spring, not the steering axis. Top towards the engine is positive.',
  },
  topHeight: {
    title: 'Height of the top mount',
    howTo:
      'Floor up to the middle of the top mount: bonnet open, a straight lath on the tower, level, out past the wing.',
  },
  track: {
    title: 'Track',
    howTo:
      'From wheel centre to wheel centre across the car: tyre’s inner edge to the other’s outer edge. Only the roll centre asks for it.',
  },
  hubOffset: {
    title: 'Ball joint to the tyre’s middle',
    howTo:
      'On the floor: a plumb line from the middle of the ball joint, and straight out from it to the middle of the tyre. It moves the wheel forward and back when you steer.',
  },
  caster: {
    title: 'Caster',
    howTo: `From an alignment sheet, at the height the car stood. Top leaning rearward is positive. Left out, a car with more than ${COVERED.caster}° is not covered.`,
  },
  bumpSteer: {
    title: 'Bump steer',
    howTo: `If you know it: how much this wheel’s toe changes over the first ${BUMP_STEER_OVER_MM} mm of bump. Toe-in is positive. Left out, a car with more than ${COVERED.bumpSteer}° for each mm is not covered.`,
  },
  kingpin: {
    title: 'Kingpin inclination',
    howTo:
      'From an alignment sheet, where the damper cannot be reached. It is another line than the damper’s: how far the ball joint stands off (0 to 40 mm) is not known, and the ± says what that costs.',
  },
};

/** Of a field that is not called as its sheet. */
const LABELS: Partial<Record<OwnKey, string>> = {
  bumpSteer: 'Toe change',
  hubOffset: 'Straight out',
};

const measure = (key: OwnKey): SheetSpec => {
  const scale = scaleOfMeasure(key);
  const quantity = QUANTITY[scale];
  return {
    key,
    ...TEXTS[key],
    fields: [{ path: `${key}.value`, label: LABELS[key] ?? TEXTS[key].title, quantity, signed: scale !== 'length' }],
    ...(key !== 'caster' && key !== 'kingpin' && { caution: 'stands' }),
    optional: OPTIONAL.includes(key),
    read: (car) => {
      const own = ownOf(car).measures?.[key];
      return own && [own.value];
    },
    write: (car, values) =>
      givenByUser(car, ({ measures, ...given }) => {
        const { [key]: before, ...others } = measures ?? {};
        const next = values
          ? { ...others, [key]: { value: values[0]!, plusMinus: before?.plusMinus ?? USUAL[scale] } }
          : others;
        return Object.keys(next).length > 0 ? { ...given, measures: next } : given;
      }),
    ...(key !== 'kingpin' && {
      standIn: (car, taken) => {
        const shown = gave(car, 'corner', 'page').given?.measures ?? EXAMPLE_DRIVEWAY;
        const assumed = taken?.[key as AssumableKey].value ?? DRIVEWAY_FIELDS[key].assumed.value;
        return [hasMeasured(ownOf(car)) ? assumed : (shown[key]?.value ?? assumed)];
      },
    }),
    doubt: {
      read: (car) => ownOf(car).measures?.[key]?.plusMinus,
      write: (car, plusMinus) => {
        const own = ownOf(car).measures?.[key];
        if (!own) return car;
        return givenByUser(car, (given) => ({
          ...given,
          measures: { ...given.measures, [key]: { ...own, plusMinus } },
        }));
      },
    },
    ...(key === 'damperLean' && {
      instead: { key: 'kingpin', label: 'I only have kingpin inclination, from an alignment sheet' },
    }),
    ...(key === 'kingpin' && { instead: { key: 'damperLean', label: 'I can measure the damper’s lean after all' } }),
  };
};

/** What ten minutes with a tape and a gauge can give. */
export const DRIVEWAY_SHEETS: readonly SheetSpec[] = (
  [
    'armLength',
    'pivotHeight',
    'ballHeight',
    'wheelCentreHeight',
    'damperLean',
    'topHeight',
    'kingpin',
    'caster',
    'hubOffset',
    'bumpSteer',
    'track',
  ] as const
).map(measure);

const BY: OptionGroup = {
  legend: 'What can you measure?',
  items: [
    {
      id: 'driveway',
      short: 'tape and gauge',
      label: 'Six things with a tape and an angle gauge, car on its wheels: ten minutes, camber only',
    },
    { id: 'points', short: 'hard points', label: 'Eight hard points in three directions: an afternoon, a smaller ±' },
    {
      id: 'readings',
      short: 'readings',
      label: 'The readings that are there: camber as it was read over the wheel’s travel',
    },
  ],
  read: sourceKindOf,
  write: (car, id) => ({ ...car, by: id as CarDocument['by'] }),
  offers: (car, id) => id !== 'readings' || camberSetupOf(car) !== undefined,
};

/** Readings name their corner and the height they are counted from themselves. */
function isNotRead(car: CarDocument): boolean {
  return sourceKindOf(car) !== 'readings';
}

const STANDS: OptionGroup = {
  legend: 'How does it stand while you measure?',
  items: [
    { id: 'stock', short: 'stock height', label: 'At stock height' },
    { id: 'lowered', short: 'lowered already', label: 'Lowered already' },
  ],
  read: ({ measuredAt }) => (measuredAt === undefined ? 'stock' : 'lowered'),
  write: ({ measuredAt, ...car }, id) => (id === 'lowered' ? { ...car, measuredAt: measuredAt ?? car.drop } : car),
  offers: isNotRead,
};

const CORNER: OptionGroup = {
  legend: 'Which corner is it?',
  items: CORNER_NAMES.map((name) => ({ id: name, label: name, short: name.toLowerCase() })),
  read: ({ cornerName }) => cornerName,
  write: (car, id) => ({ ...car, cornerName: id as CarDocument['cornerName'] }),
  offers: isNotRead,
};

/** The first sheet of every run: which way, and where the car stands. */
export const WAY_SHEET: SheetSpec = {
  key: 'way',
  title: 'Your car',
  howTo: 'Give what you have; what you leave out is assumed, with a wide ±.',
  fields: [],
  options: [BY, STANDS, CORNER],
  read: () => undefined,
  write: (car) => car,
};

/** Asked only of a car that is lowered already; the answer begins where it stands. */
export const LOWERED_BY_SHEET: SheetSpec = {
  key: 'measuredAt',
  title: 'How much lower it stands',
  howTo: 'Hub centre to arch lip, straight up: by how much it is shorter now than at stock height.',
  fields: [{ path: 'measuredAt', label: 'Lower by', quantity: 'drop' }],
  optional: true,
  read: ({ measuredAt }) => (measuredAt === undefined ? undefined : [measuredAt]),
  write: ({ measuredAt: _, ...car }, values) => (values ? { ...car, measuredAt: values[0]!, drop: values[0]! } : car),
};

/** What people and luggage do to a car’s height, mm: common practice, no source. */
const LOADS = { empty: 0, driver: 8, loaded: 20 };

export const CAMBER_LOAD: OptionGroup = {
  legend: 'How was the car loaded when it was read?',
  items: [
    { id: 'empty', short: 'empty', label: 'Empty' },
    { id: 'driver', short: 'driver in', label: `Driver in, about ${LOADS.driver} mm lower` },
    { id: 'loaded', short: 'loaded', label: `Loaded, about ${LOADS.loaded} mm lower` },
  ],
  read: ({ camberReadLower = 0 }) =>
    camberReadLower === 0 ? 'empty' : camberReadLower < (LOADS.driver + LOADS.loaded) / 2 ? 'driver' : 'loaded',
  write: ({ camberReadLower: _, ...car }, id) => {
    const lower = LOADS[id as keyof typeof LOADS];
    return lower ? { ...car, camberReadLower: lower } : car;
  },
};

export const HOW_LOWERED: OptionGroup = {
  legend: 'How is it lowered?',
  items: [
    {
      id: 'springs',
      short: 'springs',
      label: 'Shorter springs on the same dampers: the drop comes off the bump travel',
    },
    {
      id: 'dampers',
      short: 'dampers',
      label: 'Shortened dampers, or lower bodies that screw down: the stroke stays, other limits come nearer',
    },
  ],
  read: ({ lowered = 'springs' }) => lowered,
  write: ({ lowered: _, ...car }, id) => (id === 'dampers' ? { ...car, lowered: 'dampers' } : car),
};
