import { bumpTravelOf, type CarDocument } from '../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { hardPoint, STRUT_POINT_KEYS, type StrutPointKey } from '../../core/linkage/corner.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { CautionId } from '../shared/cautions.js';

/** One number of a sheet: three of them make a hard point. */
export interface SheetField {
  /** Path of its value in problems, e.g. `lowerArm.ball.2`. */
  path: string;
  label: string;
  quantity: Quantity;
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
  example?: readonly number[];
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
    title: 'Second point on the damper',
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

/** A value corrected by hand: from here on the corner is made of single values, not of what was handed over whole. */
const given = ({ whole: _, ...car }: CarDocument, values: CarDocument['given']): CarDocument => ({
  ...car,
  givenBy: 'user',
  given: values,
});

const pointSheet = (key: StrutPointKey, index: number): SheetSpec => ({
  key,
  title: POINTS[key].title,
  howTo: POINTS[key].howTo,
  number: index + 1,
  fields: AXES.map((label, axis) => ({ path: `${key}.${axis}`, label, quantity: 'coordinate' })),
  caution: 'stands',
  example: hardPoint(EXAMPLE_CORNER, key),
  read: (car) => car.given.points[key],
  write: (car, values) => {
    const points = { ...car.given.points };
    if (values) points[key] = values as [number, number, number];
    else delete points[key];
    return given(car, { ...car.given, points });
  },
  doubt: {
    read: (car) => car.given.plusMinus?.[key] ?? car.given.plusMinus?.other,
    write: (car, plusMinus) => given(car, { ...car.given, plusMinus: { ...car.given.plusMinus, [key]: plusMinus } }),
  },
});

const single = (key: 'loadedRadius' | 'camber' | 'toe', title: string, howTo: string): SheetSpec => ({
  key,
  title,
  howTo,
  fields: [{ path: key, label: title, quantity: key }],
  example: [EXAMPLE_CORNER[key]],
  read: (car) => (car.given[key] === undefined ? undefined : [car.given[key]]),
  write: (car, values) => {
    const rest = { ...car.given };
    if (values) rest[key] = values[0]!;
    else delete rest[key];
    return given(car, rest);
  },
});

export const POINT_SHEETS: readonly SheetSpec[] = STRUT_POINT_KEYS.map(pointSheet);

export const OTHER_SHEETS: readonly SheetSpec[] = [
  single(
    'camber',
    'Static camber',
    'From an alignment sheet, or an angle gauge on the hub, at stock height. Top in is negative.',
  ),
  single('toe', 'Static toe of this wheel', 'Half the total toe of the axle, at stock height. Toe-in is positive.'),
  single('loadedRadius', 'Loaded radius', 'Hub centre straight down to the ground, car on its wheels.'),
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
    howTo: 'Half-width of what you would bet 95 % on. Hub centre to arch lip with a tape: about ± 3 mm.',
    fields: [{ path: 'dropPlusMinus', label: 'How sure of the drop', quantity: 'plusMinusLength' }],
    optional: true,
    read: (car) => (car.dropPlusMinus === undefined ? undefined : [car.dropPlusMinus]),
    write: ({ dropPlusMinus: _, ...rest }, values) => (values ? { ...rest, dropPlusMinus: values[0]! } : rest),
  },
];

export const ALL_SHEETS: readonly SheetSpec[] = [...POINT_SHEETS, ...OTHER_SHEETS, ...HEIGHT_SHEETS];

/** The sheet and field that a problem's path belongs to. */
export function sheetOfPath(path: string): { sheet: SheetSpec; field: SheetField | undefined } | undefined {
  for (const sheet of ALL_SHEETS) {
    const field = sheet.fields.find((f) => f.path === path);
    if (field || sheet.key === path || `plusMinus.${sheet.key}` === path) return { sheet, field };
  }
  return undefined;
}
