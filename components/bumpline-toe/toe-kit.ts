import type { CarDocument } from '../../core/document/car.js';
import { type ToeSettings, withToe } from '../../core/document/toe-settings.js';
import { TOLD_WHEELS, type ToldWheels } from '../../core/document/told-wheels.js';
import { RACK_SIDES, type RackSide } from '../../core/linkage/toe-adjustment.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { geometryKit } from '../bumpline-geometry/geometry-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-toe.labels.js';
import { USUAL_ACROSS_MM } from './bumpline-toe.words.js';

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
export const TOLD_SHEETS: readonly SheetSpec[] = [
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
];

/** What a tape tells of the tie rod, where no hard points do. */
export const ROD_SHEETS: readonly SheetSpec[] = [
  oneNumber('rodLength', WORDS.rodLength, 'linkLength', { caution: 'stands' }),
  oneNumber('lever', WORDS.lever, 'linkLength', {
    caution: 'stands',
    options: [
      {
        legend: WORDS.rackSide.title,
        items: RACK_SIDES.map((id) => ({ id, ...WORDS.rackSide.items[id] })),
        read: (car) => settings(car).rackSide ?? RACK_SIDES[0],
        write: (car, id) => withToe(car, { rackSide: id as RackSide }),
      },
    ],
  }),
];

const OWN = new Map([...TOLD_SHEETS, ...ROD_SHEETS].map((sheet) => [sheet.key, sheet]));

export const toeSheetOf = (key: string): SheetSpec | undefined => OWN.get(key);

/** The sheets of a car's links, of how toe is told, and of the rod where only readings are known. */
export function toeKit(app: InputView): SheetKit {
  const links = geometryKit(app, () => undefined);
  return {
    ...links,
    sheetOf: (key) => OWN.get(key) ?? links.sheetOf(key),
    runOf: (car, sheet) =>
      ROD_SHEETS.includes(sheet) ? ROD_SHEETS : TOLD_SHEETS.includes(sheet) ? [] : links.runOf(car, sheet),
  };
}
