import { USUAL_ACROSS_MM } from '../../core/answers/toe.js';
import type { CarDocument } from '../../core/document/car.js';
import { withSetupAt } from '../../core/document/setup-edits.js';
import { ownerOf, toeSetupOf } from '../../core/document/setup-in-use.js';
import { type ToeSettings, withToe } from '../../core/document/toe-settings.js';
import { TOLD_WHEELS, type ToldWheels } from '../../core/document/told-wheels.js';
import { RACK_SIDES, type RackSide } from '../../core/linkage/toe-adjustment.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import { geometryKit } from '../bumpline-geometry/geometry-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import { knownArm, pointsArm } from '../inputs/known-arm.js';
import { OwnSheets } from '../inputs/own-sheets.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-toe.labels.js';

const { sheets: WORDS } = NAMES;

type LengthKey = 'across' | 'steeringRatio' | 'rodLength' | 'lever';

const settings = (car: CarDocument): ToeSettings => car.toe ?? {};

const oneNumber = (
  key: LengthKey,
  { title, label, howTo }: { title: string; label: string; howTo: string },
  quantity: Quantity,
  more: Partial<SheetSpec> = {},
): SheetSpec => ({
  key: `toe.${key}`,
  title,
  howTo,
  fields: [{ path: `toe.${key}`, label, quantity }],
  optional: true,
  read: (car) => {
    const { [key]: value } = settings(car);
    return value === undefined ? undefined : [value];
  },
  write: (car, values) => withToe(car, { [key]: values?.[0] }),
  ...more,
});

/** How toe is told: of one wheel or both, across which diameter, by which steering ratio. */
export const TOLD_SHEETS: readonly SheetSpec[] = worded(() => [
  {
    key: 'toe.wheels',
    title: WORDS.wheels.title,
    howTo: WORDS.wheels.howTo,
    fields: [],
    options: [
      {
        legend: WORDS.wheels.title,
        items: TOLD_WHEELS.map((id) => ({ id, ...WORDS.wheels.items[id] })),
        read: (car) => settings(car).wheels ?? TOLD_WHEELS[0],
        write: (car, id) => withToe(car, { wheels: id === TOLD_WHEELS[0] ? undefined : (id as ToldWheels) }),
      },
    ],
    read: (car) => (settings(car).wheels ? [] : undefined),
    write: (car) => withToe(car, { wheels: undefined }),
  },
  oneNumber('across', WORDS.across, 'diameter', { standIn: () => [USUAL_ACROSS_MM] }),
  oneNumber('steeringRatio', WORDS.steeringRatio, 'steeringRatio'),
]);

/** What a tape tells of the tie rod, where no hard points do. */
export const ROD_SHEETS: readonly SheetSpec[] = worded(() => [
  oneNumber('rodLength', WORDS.rodLength, 'rodLength', {
    caution: 'stands',
    standIn: (car) => numberOf(car, 'rodLength'),
  }),
  oneNumber('lever', WORDS.lever, 'lever', { caution: 'stands', standIn: (car) => numberOf(car, 'lever') }),
  {
    key: 'toe.rackSide',
    title: WORDS.rackSide.title,
    howTo: WORDS.rackSide.howTo,
    fields: [],
    optional: true,
    options: [
      {
        legend: WORDS.rackSide.title,
        items: RACK_SIDES.map((id) => ({ id, ...WORDS.rackSide.items[id] })),
        // Nobody is assumed to have it on one side: the shim's sign goes by it.
        read: (car) => settings(car).rackSide ?? pointsArm(car)?.rack ?? '',
        write: (car, id) => withToe(car, { rackSide: id as RackSide }),
      },
    ],
    read: (car) => (settings(car).rackSide ? [] : undefined),
    write: (car) => withToe(car, { rackSide: undefined }),
  },
]);

function numberOf(car: CarDocument, key: 'rodLength' | 'lever'): readonly number[] | undefined {
  const arm = pointsArm(car);
  return arm && [Math.round(10 * arm[key]) / 10];
}

/** The first of them that is not known. */
export function firstUnknown(car: CarDocument): SheetSpec | undefined {
  const { rodLength, lever, rack } = knownArm(car);
  return ROD_SHEETS[[rodLength, lever, rack].indexOf(undefined)];
}

/** Where the readings' travel is counted from. */
const ZERO_SHEET: SheetSpec = worded(() => ({
  key: 'toe.zeroAt',
  ...WORDS.zeroAt,
  fields: [{ path: 'toe.zeroAt', label: WORDS.zeroAt.label, quantity: 'drop' }],
  optional: true,
  read: (car) => {
    const { zeroAt } = toeSetupOf(car) ?? {};
    return zeroAt === undefined ? undefined : [zeroAt];
  },
  write: (car, values) => withZero(car, values?.[0]),
  standIn: () => [0],
}));

/** Whose zero can be said: that of readings of the user's own. */
export const zeroSheets = (car: CarDocument): readonly SheetSpec[] => {
  const setup = toeSetupOf(car);
  return setup && ownerOf(car, setup) === 'user' ? [ZERO_SHEET] : [];
};

/** A car whose readings of toe were taken from so far below stock height, mm. */
export function withZero(car: CarDocument, zeroAt: number | undefined): CarDocument {
  const at = (car.setups ?? []).indexOf(toeSetupOf(car)!);
  return withSetupAt(car, at, ({ zeroAt: _, ...setup }) => (zeroAt ? { ...setup, zeroAt } : setup));
}

export const TOE_SHEETS = new OwnSheets([...TOLD_SHEETS, ...ROD_SHEETS, ZERO_SHEET], [ROD_SHEETS]);

/** The sheets of a car's links, of how toe is told, and of the rod where only readings are known. */
export const toeKit = (app: InputView): SheetKit =>
  TOE_SHEETS.kit(
    app,
    geometryKit(app, () => undefined),
  );
