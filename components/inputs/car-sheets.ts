import { bumpTravelOf, type CarDocument, givenByUser, hasMeasured, limitsOf, ownOf } from '../../core/document/car.js';
import { fitmentByUser, ownEnds } from '../../core/document/limits-in-use.js';
import { give, isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { standInOf } from '../../core/document/strut-in-use.js';
import { hardPoint, STRUT_POINT_KEYS, type StrutPointKey } from '../../core/linkage/corner.js';
import { worded } from '../../core/quantity/words.js';
import {
  CAMBER_LOAD,
  DRIVEWAY_SHEETS,
  HOW_LOWERED,
  LOWERED_BY_SHEET,
  STANDS_SHEET,
  WAY_SHEET,
} from './driveway-sheets.js';
import { LIMIT_SHEETS, LOAD_SHEETS, STOP_GAP_DOUBT } from './limit-sheets.js';
import type { SheetField, SheetSpec } from './sheet-spec.js';
import { SHEETS } from './sheets.labels.js';

const { points: POINTS, axes: AXES } = SHEETS;

const pointSheet = (key: StrutPointKey, index: number): SheetSpec => ({
  key,
  ...POINTS[key],
  number: index + 1,
  // A point can be behind the axle; none of a left corner is right of the centreline or under the ground.
  fields: AXES.map((label, axis) => ({ path: `${key}.${axis}`, label, quantity: 'coordinate', signed: axis === 0 })),
  caution: 'stands',
  standIn: (car) => hardPoint(standInOf(car), key),
  read: (car) => ownOf(car).points[key],
  write: (car, values) =>
    givenByUser(car, (given) => {
      const points = { ...given.points };
      if (values) points[key] = values as [number, number, number];
      else delete points[key];
      return { ...given, points };
    }),
  doubt: {
    read: (car) => ownOf(car).plusMinus?.[key] ?? ownOf(car).plusMinus?.other,
    write: (car, plusMinus) =>
      givenByUser(car, (given) => ({ ...given, plusMinus: { ...given.plusMinus, [key]: plusMinus } })),
  },
});

const single = (key: 'loadedRadius' | 'camber' | 'toe'): SheetSpec => ({
  key,
  ...SHEETS[key],
  fields: [{ path: key, label: SHEETS[key].title, quantity: key, signed: key !== 'loadedRadius' }],
  // Of a car that somebody has begun to measure with a tape no camber is assumed: only changes are known.
  standIn: (car) => (sourceKindOf(car) === 'driveway' && hasMeasured(ownOf(car)) ? undefined : [standInOf(car)[key]]),
  read: (car) => {
    const value = ownOf(car)[key];
    return value === undefined ? undefined : [value];
  },
  write: (car, values) =>
    givenByUser(car, (given) => {
      const rest = { ...given };
      if (values) rest[key] = values[0]!;
      else delete rest[key];
      return rest;
    }),
});

export const POINT_SHEETS: readonly SheetSpec[] = worded(() => STRUT_POINT_KEYS.map(pointSheet));

export const OTHER_SHEETS: readonly SheetSpec[] = worded(() => [
  {
    ...single('camber'),
    options: [CAMBER_LOAD],
  },
  single('toe'),
  single('loadedRadius'),
]);

export const HEIGHT_SHEETS: readonly SheetSpec[] = worded(() => [
  {
    key: 'bumpTravel',
    ...SHEETS.bumpTravel,
    fields: [{ path: 'bumpTravel', label: SHEETS.bumpTravel.title, quantity: 'travel' }],
    optional: true,
    caution: 'springOut',
    instead: { key: 'stopGap', label: SHEETS.instead.gap },
    read: (car) => {
      const bumpTravel = bumpTravelOf(car);
      return bumpTravel === undefined ? undefined : [bumpTravel];
    },
    write: ({ stopGap: _, ...car }, values) =>
      give(car, 'bumpTravel', 'user', () => (values ? { bumpTravel: values[0]! } : {})),
    options: [HOW_LOWERED],
  },
  {
    key: 'stopGap',
    doubt: STOP_GAP_DOUBT,
    title: SHEETS.stopGap.title,
    howTo: SHEETS.stopGap.howTo,
    fields: [{ path: 'stopGap', label: SHEETS.stopGap.label, quantity: 'gap' }],
    optional: true,
    instead: { key: 'bumpTravel', label: SHEETS.instead.wheel },
    read: (car) => {
      const { stopGap } = ownEnds(car);
      return stopGap === undefined ? undefined : [stopGap];
    },
    standIn: (car) => {
      const { stopGap } = limitsOf(car);
      return stopGap === undefined ? undefined : [stopGap];
    },
    write: (before, values) => {
      const car = give(before, 'bumpTravel', 'user', () => ({}));
      if (values) return fitmentByUser(car, () => ({ stopGap: values[0]! }));
      return isUsers(car, 'fit') ? give(car, 'fit', 'user', ({ stopGap: _, ...own }) => own) : car;
    },
    options: [HOW_LOWERED],
  },
  {
    key: 'other',
    title: SHEETS.other.title,
    howTo: SHEETS.other.howTo,
    fields: [
      { path: 'other.drop', label: SHEETS.other.drop, quantity: 'drop' },
      { path: 'other.camber', label: SHEETS.other.camber, quantity: 'camber', signed: true },
    ],
    optional: true,
    read: ({ other }) => other && [other.drop, other.camber],
    write: ({ other: _, ...rest }, values) =>
      values ? { ...rest, other: { drop: values[0]!, camber: values[1]! } } : rest,
  },
  {
    key: 'dropPlusMinus',
    ...SHEETS.dropPlusMinus,
    fields: [{ path: 'dropPlusMinus', label: SHEETS.dropPlusMinus.title, quantity: 'plusMinusLength' }],
    optional: true,
    read: (car) => (car.dropPlusMinus === undefined ? undefined : [car.dropPlusMinus]),
    write: ({ dropPlusMinus: _, ...rest }, values) => (values ? { ...rest, dropPlusMinus: values[0]! } : rest),
  },
]);

const ALL_SHEETS: readonly SheetSpec[] = [
  WAY_SHEET,
  STANDS_SHEET,
  LOWERED_BY_SHEET,
  ...DRIVEWAY_SHEETS,
  ...POINT_SHEETS,
  ...OTHER_SHEETS,
  ...HEIGHT_SHEETS,
  ...LIMIT_SHEETS,
  ...LOAD_SHEETS,
];

export const sheetOf = (key: string): SheetSpec | undefined => ALL_SHEETS.find((sheet) => sheet.key === key);

const sheetsOf = (...keys: string[]): SheetSpec[] => keys.map((key) => sheetOf(key)!);

const RUNS: Record<CarDocument['by'], readonly SheetSpec[]> = {
  driveway: [
    WAY_SHEET,
    ...DRIVEWAY_SHEETS.filter(({ optional }) => !optional),
    ...sheetsOf('camber', 'caster', 'bumpTravel'),
  ],
  points: [WAY_SHEET, ...POINT_SHEETS, ...sheetsOf('camber', 'toe', 'bumpTravel')],
  readings: [WAY_SHEET, ...sheetsOf('bumpTravel')],
};

/** What ends bump: the gap alone tells only where the stop is touched, so its length comes next. */
export const endRun: readonly SheetSpec[] = sheetsOf('stopGap', 'limits.stopLength');

/** What one gives of one's own car, in the order in which one sheet leads to the next. */
export const runOf = (car: CarDocument): readonly SheetSpec[] => {
  const run = RUNS[sourceKindOf(car)];
  return isMeasuredLowered(car) ? [WAY_SHEET, LOWERED_BY_SHEET, ...run.slice(1)] : run;
};

/** At which height the car was measured, as rows of a list. */
export const standsRows = (car: CarDocument): readonly SheetSpec[] => [
  STANDS_SHEET,
  ...(isMeasuredLowered(car) ? [LOWERED_BY_SHEET] : []),
];

/** Readings say themselves from where their heights are counted. */
const isMeasuredLowered = (car: CarDocument): boolean =>
  car.measuredAt !== undefined && sourceKindOf(car) !== 'readings';

/** All that an answer rests on, as a list shows it. */
export const listOf = (car: CarDocument): readonly SheetSpec[] => {
  const sourceKind = sourceKindOf(car);
  // The gap on the rod becomes travel through a damper that readings do not know.
  if (sourceKind === 'readings') return [WAY_SHEET, ...HEIGHT_SHEETS.filter(({ key }) => key !== 'stopGap')];
  return [
    WAY_SHEET,
    ...(isMeasuredLowered(car) ? [LOWERED_BY_SHEET] : []),
    ...(sourceKind === 'driveway' ? [...DRIVEWAY_SHEETS, ...sheetsOf('camber')] : [...POINT_SHEETS, ...OTHER_SHEETS]),
    ...HEIGHT_SHEETS,
  ];
};

/** The first number of the run that nobody gave; once the gap to the stop is given, the stop's length. */
export const firstMissing = (car: CarDocument): SheetSpec | undefined => {
  const ofRun = runOf(car).find(
    ({ fields, read, instead }) => fields.length > 0 && !read(car) && !(instead && sheetOf(instead.key)?.read(car)),
  );
  const [gap, length] = endRun;
  return ofRun ?? (gap!.read(car) && !length!.read(car) ? length : undefined);
};

/** A link's own name in a problem, and the end of it that is most often mistaken. */
const LINK_ENDS: Record<string, StrutPointKey> = {
  strut: 'strut.top',
  tieRod: 'tieRod.outer',
  lowerArm: 'lowerArm.ball',
};

/** The sheet and field that a problem's path belongs to. */
export function sheetOfPath(path: string): { sheet: SheetSpec; field: SheetField | undefined } | undefined {
  // Of a driveway measurement, or of its ±.
  const wanted = LINK_ENDS[path] ?? path.replace(/\.(value|plusMinus)$/, '');
  for (const sheet of ALL_SHEETS) {
    const field = sheet.fields.find((f) => f.path === wanted || f.path === path);
    if (field || sheet.key === wanted || `plusMinus.${sheet.key}` === wanted) return { sheet, field };
  }
  return undefined;
}
