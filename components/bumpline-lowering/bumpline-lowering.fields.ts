import { bumpTravelOf, type CarDocument, givenByUser, ownOf, standInOf } from '../../core/document/car.js';
import { hardPoint, STRUT_POINT_KEYS, type StrutPointKey } from '../../core/linkage/corner.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { CautionId } from '../shared/cautions.js';

/** One number of a sheet: three of them make a hard point. */
export interface SheetField {
  /** Path of its value in problems, e.g. `lowerArm.ball.2`. */
  path: string;
  label: string;
  quantity: Quantity;
  /** Can be negative on a real car: the field gets a key for the sign, which number pads lack. */
  signed?: boolean;
}

/** One thing to give: what opens when its balloon, its row or its word is pressed. */
export interface SheetSpec {
  key: string;
  title: string;
  /** Its balloon in the drawing. */
  number?: number;
  fields: SheetField[];
  howTo: string;
  caution?: CautionId;
  /** Whether it can be left out again. */
  optional?: boolean;
  /** Values given, or undefined. */
  read(car: CarDocument): readonly number[] | undefined;
  write(car: CarDocument, values: readonly number[] | undefined): CarDocument;
  /** What stands in while nothing is given. */
  standIn?(car: CarDocument): readonly number[];
  /** Has a "how sure": where its ± is kept, mm. */
  doubt?: { read(car: CarDocument): number | undefined; write(car: CarDocument, plusMinus: number): CarDocument };
}

/** Answers to "how sure?", as 95 % half-widths in mm. Common practice, no source. */
export const HOW_SURE = [
  { id: 'careful', label: 'careful', plusMinus: 1 },
  { id: 'tape', label: 'tape', plusMinus: 3 },
  { id: 'guess', label: 'guess', plusMinus: 10 },
] as const;

const POINTS: Record<StrutPointKey, { title: string; howTo: string }> = {
  'lowerArm.front': {
    title: 'Lower arm, front pivot',
    howTo: 'Centre of the front bush, where its bolt runs through the arm.',
  },
  'lowerArm.rear': {
    title: 'Lower arm, rear pivot',
    howTo: 'Centre of the rear bush. Any second point on the line the arm swings about will do.',
  },
  'lowerArm.ball': {
    title: 'Lower ball joint',
    howTo: 'Centre of the ball, not of the stud’s nut: about half the ball’s diameter inside the housing.',
  },
  'strut.top': {
    title: 'Top mount',
    howTo: 'Centre of the mount’s bearing or rubber, which the damper rod tilts about.',
  },
  'strut.low': {
    title: 'Damper, low point',
    howTo: 'Any point on the middle line of the damper tube, low down. It sets the line the strut slides along.',
  },
  'tieRod.inner': {
    title: 'Tie rod, inner end',
    howTo: 'Centre of the ball under the rack’s boot, steering straight.',
  },
  'tieRod.outer': { title: 'Tie rod, outer end', howTo: 'Centre of the ball at the steering arm, steering straight.' },
  wheelCentre: {
    title: 'Wheel centre',
    howTo: 'Middle of the hub, in the middle plane of the tyre. Measure x from here and it is 0.',
  },
};

const AXES = ['x, forward of the axle', 'y, out from the centreline', 'z, up from the ground'] as const;

const pointSheet = (key: StrutPointKey, index: number): SheetSpec => ({
  key,
  title: POINTS[key].title,
  howTo: POINTS[key].howTo,
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

const single = (key: 'loadedRadius' | 'camber' | 'toe', title: string, howTo: string): SheetSpec => ({
  key,
  title,
  howTo,
  fields: [{ path: key, label: title, quantity: key, signed: key !== 'loadedRadius' }],
  standIn: (car) => [standInOf(car)[key]],
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

export const POINT_SHEETS: readonly SheetSpec[] = STRUT_POINT_KEYS.map(pointSheet);

export const OTHER_SHEETS: readonly SheetSpec[] = [
  single(
    'camber',
    'Static camber',
    'From an alignment sheet, or an angle gauge on the hub, at stock height. Top in is negative.',
  ),
  single('toe', 'Static toe, this wheel alone', 'Half the total toe of the axle, at stock height. Toe-in is positive.'),
  single(
    'loadedRadius',
    'Loaded radius',
    'Hub centre straight down to the ground, car on its wheels. Until you give it, it is the height of your wheel centre.',
  ),
];

export const HEIGHT_SHEETS: readonly SheetSpec[] = [
  {
    key: 'bumpTravel',
    title: 'Bump travel at stock height',
    howTo:
      'How far the wheel can still rise at stock height before the bump stop is solid, measured at the wheel of your own car.',
    fields: [{ path: 'bumpTravel', label: 'Bump travel at stock height', quantity: 'travel' }],
    optional: true,
    read: (car) => {
      const bumpTravel = bumpTravelOf(car);
      return bumpTravel === undefined ? undefined : [bumpTravel];
    },
    write: ({ bumpTravel: _, bumpTravelGivenBy: __, ...rest }, values) =>
      values ? { ...rest, bumpTravel: values[0]!, bumpTravelGivenBy: 'user' } : rest,
  },
  {
    key: 'dropPlusMinus',
    title: 'How sure of the drop',
    howTo: 'Half-width of what you would bet 95 % on. Hub centre to arch lip with a tape: about ±3 mm.',
    fields: [{ path: 'dropPlusMinus', label: 'How sure of the drop', quantity: 'plusMinusLength' }],
    optional: true,
    read: (car) => (car.dropPlusMinus === undefined ? undefined : [car.dropPlusMinus]),
    write: ({ dropPlusMinus: _, ...rest }, values) => (values ? { ...rest, dropPlusMinus: values[0]! } : rest),
  },
];

export const ALL_SHEETS: readonly SheetSpec[] = [...POINT_SHEETS, ...OTHER_SHEETS, ...HEIGHT_SHEETS];

/** What one gives of one's own car, in the order in which one sheet leads to the next. */
export const RUN: readonly SheetSpec[] = [
  ...POINT_SHEETS,
  ...ALL_SHEETS.filter(({ key }) => ['camber', 'toe', 'bumpTravel'].includes(key)),
];

/** The first thing of the run that nobody gave. */
export const firstMissing = (car: CarDocument): SheetSpec | undefined => RUN.find((sheet) => !sheet.read(car));

/** A link's own name in a problem, and the end of it that is most often mistaken. */
const LINK_ENDS: Record<string, StrutPointKey> = {
  strut: 'strut.top',
  tieRod: 'tieRod.outer',
  lowerArm: 'lowerArm.ball',
};

/** The sheet and field that a problem's path belongs to. */
export function sheetOfPath(path: string): { sheet: SheetSpec; field: SheetField | undefined } | undefined {
  const wanted = LINK_ENDS[path] ?? path;
  for (const sheet of ALL_SHEETS) {
    const field = sheet.fields.find((f) => f.path === wanted);
    if (field || sheet.key === wanted || `plusMinus.${sheet.key}` === wanted) return { sheet, field };
  }
  return undefined;
}
