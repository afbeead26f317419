import { type CarDocument, CORNER_NAMES, givenByUser, hasMeasured, ownOf, withDrop } from '../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../core/document/example-driveway.js';
import { gave } from '../../core/document/provenance.js';
import { camberSetupOf, sourceKindOf } from '../../core/document/setup-in-use.js';
import {
  type AssumableKey,
  DRIVEWAY_FIELDS,
  HOW_SURE as LIMITS,
  scaleOfMeasure,
} from '../../core/driveway/driveway.js';
import { sizeProblem } from '../../core/driveway/size-problem.js';
import { worded } from '../../core/quantity/words.js';
import { shownName } from '../car/shown-names.words.js';
import type { MeasureKey } from '../drawing/measures.js';
import { lower } from '../element/sentence.js';
import type { OptionGroup, SheetSpec } from './sheet-spec.js';
import { SHEETS, type SheetText } from './sheets.labels.js';

type OwnKey = MeasureKey | 'kingpin' | 'track' | 'caster' | 'bumpSteer' | 'hubOffset';

/** What camber answers without: asked where it is known. */
const OPTIONAL: readonly OwnKey[] = ['kingpin', 'track', 'caster', 'bumpSteer', 'hubOffset'];

const QUANTITY = { length: 'coordinate', angle: 'lean', toe: 'toe' } as const;
const USUAL = { length: LIMITS.length.tape, angle: LIMITS.angle.gauge, toe: LIMITS.toe.gauge };

const { driveway: TEXTS, ways: WORDS } = SHEETS;

const measure = (key: OwnKey): SheetSpec => {
  const scale = scaleOfMeasure(key);
  const quantity = QUANTITY[scale];
  const { title, howTo, label = title }: SheetText = TEXTS[key];
  return {
    key,
    title,
    howTo,
    fields: [
      { path: `${key}.value`, label, quantity, signed: scale !== 'length', check: (value) => sizeProblem(key, value) },
    ],
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
      instead: { key: 'kingpin', label: WORDS.onlyKingpin },
    }),
    ...(key === 'kingpin' && { instead: { key: 'damperLean', label: WORDS.leanAfterAll } }),
  };
};

/** What ten minutes with a tape and a gauge can give. */
export const DRIVEWAY_SHEETS: readonly SheetSpec[] = worded(() =>
  (
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
  ).map(measure),
);

const BY: OptionGroup = worded(() => ({
  legend: WORDS.by,
  items: [
    {
      id: 'driveway',
      ...WORDS.driveway,
    },
    { id: 'points', ...WORDS.points },
    {
      id: 'readings',
      ...WORDS.readings,
    },
  ],
  read: sourceKindOf,
  write: (car, id) => ({ ...car, by: id as CarDocument['by'] }),
  offers: (car, id) => id !== 'readings' || camberSetupOf(car) !== undefined,
}));

/** Readings name their corner and the height they are counted from themselves. */
function isNotRead(car: CarDocument): boolean {
  return sourceKindOf(car) !== 'readings';
}

const STANDS: OptionGroup = worded(() => ({
  legend: WORDS.stands,
  items: [
    { id: 'stock', ...WORDS.stock },
    { id: 'lowered', ...WORDS.lowered },
  ],
  read: ({ measuredAt }) => (measuredAt === undefined ? 'stock' : 'lowered'),
  write: ({ measuredAt, ...car }, id) => (id === 'lowered' ? { ...car, measuredAt: measuredAt ?? car.drop } : car),
  offers: isNotRead,
}));

const CORNER: OptionGroup = worded(() => ({
  legend: WORDS.corner,
  items: CORNER_NAMES.map((name) => ({ id: name, label: shownName(name), short: lower(shownName(name)) })),
  read: ({ cornerName }) => cornerName,
  write: (car, id) => ({ ...car, cornerName: id as CarDocument['cornerName'] }),
  offers: isNotRead,
}));

/** The first sheet of every run: which way, and where the car stands. */
export const WAY_SHEET: SheetSpec = worded(() => ({
  key: 'way',
  ...WORDS.way,
  fields: [],
  options: [BY, STANDS, CORNER],
  read: () => undefined,
  write: (car) => car,
}));

/** Where the car stood, asked by itself where the way is no question. */
export const STANDS_SHEET: SheetSpec = worded(() => ({
  key: 'stands',
  ...WORDS.standsWhere,
  fields: [],
  options: [STANDS],
  read: ({ measuredAt }) => (measuredAt === undefined ? undefined : []),
  write: ({ measuredAt: _, ...car }) => car,
}));

/** Asked only of a car that is lowered already; the answer begins where it stands. */
export const LOWERED_BY_SHEET: SheetSpec = worded(() => ({
  key: 'measuredAt',
  title: WORDS.lowerBy.title,
  howTo: WORDS.lowerBy.howTo,
  fields: [{ path: 'measuredAt', label: WORDS.lowerBy.label, quantity: 'drop' }],
  optional: true,
  read: ({ measuredAt }) => (measuredAt === undefined ? undefined : [measuredAt]),
  write: ({ measuredAt: _, ...car }, values) =>
    values ? withDrop({ ...car, measuredAt: values[0]! }, values[0]!) : car,
}));

/** What people and luggage do to a car’s height, mm: common practice, no source. */
const LOADS = { empty: 0, driver: 8, loaded: 20 };

export const CAMBER_LOAD: OptionGroup = worded(() => ({
  legend: WORDS.loaded,
  items: [
    { id: 'empty', ...WORDS.empty },
    { id: 'driver', short: WORDS.driver.short, label: WORDS.driver.label(LOADS.driver) },
    { id: 'loaded', short: WORDS.full.short, label: WORDS.full.label(LOADS.loaded) },
  ],
  read: ({ camberReadLower = 0 }) =>
    camberReadLower === 0 ? 'empty' : camberReadLower < (LOADS.driver + LOADS.loaded) / 2 ? 'driver' : 'loaded',
  write: ({ camberReadLower: _, ...car }, id) => {
    const read = LOADS[id as keyof typeof LOADS];
    return read ? { ...car, camberReadLower: read } : car;
  },
}));

export const HOW_LOWERED: OptionGroup = worded(() => ({
  legend: WORDS.how,
  items: [
    {
      id: 'springs',
      ...WORDS.springs,
    },
    {
      id: 'dampers',
      ...WORDS.dampers,
    },
  ],
  read: ({ lowered = 'springs' }) => lowered,
  write: ({ lowered: _, ...car }, id) => (id === 'dampers' ? { ...car, lowered: 'dampers' } : car),
}));
