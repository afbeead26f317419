import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import type { Driveway } from '../../core/driveway/driveway.js';
import { carKit } from '../inputs/car-kit.js';
import { OTHER_SHEETS, POINT_SHEETS, sheetOf, standsRows } from '../inputs/car-sheets.js';
import { DRIVEWAY_SHEETS } from '../inputs/driveway-sheets.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';

/** Who enters a hard point means the car to be known by its points. */
const asPoints = (sheet: SheetSpec): SheetSpec => ({
  ...sheet,
  read: (car) => sheet.read(asLinks(car)),
  write: (car, values) => ({ ...sheet.write(car, values), by: 'points' }),
});

const POINTS = [...POINT_SHEETS, ...OTHER_SHEETS].map(asPoints);
const sheets = new Map(POINTS.map((sheet) => [sheet.key, sheet]));

/** What one enters, in the order in which one sheet leads to the next. */
export const pointRun = POINTS;

/** All that the links rest on, as a list shows it. */
export const linkList = (car: CarDocument): readonly SheetSpec[] => [
  ...standsRows(car),
  ...(sourceKindOf(car) === 'driveway' ? [...DRIVEWAY_SHEETS, sheetOf('camber')!] : POINTS),
];

export const firstMissingPoint = (car: CarDocument): SheetSpec | undefined =>
  POINTS.find(({ read, key }) => key !== 'loadedRadius' && !read(car));

/** The sheets of a car's links: hard points, and what was measured where a car is known by that. */
export function geometryKit(app: InputView, taken: () => Driveway['taken'] | undefined): SheetKit {
  const kit = carKit(app, taken);
  const isDriveway = () => sourceKindOf(asLinks(app.model.car)) === 'driveway';
  return {
    ...kit,
    sheetOf: (key) => (isDriveway() && key === 'camber' ? sheetOf(key) : (sheets.get(key) ?? sheetOf(key))),
    runOf: (car, { key }) =>
      standsRows(car).some((one) => one.key === key)
        ? standsRows(car)
        : sheets.has(key) && !isDriveway()
          ? pointRun
          : DRIVEWAY_SHEETS.filter(({ optional }) => !optional),
  };
}
