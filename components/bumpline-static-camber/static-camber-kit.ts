import { USUAL_ROLL } from '../../core/answers/usual-roll.js';
import { withCamberAdded } from '../../core/document/camber-added.js';
import { withTurn } from '../../core/document/turn-settings.js';
import { worded } from '../../core/quantity/words.js';
import { geometryKit } from '../bumpline-geometry/geometry-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import { OwnSheets } from '../inputs/own-sheets.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { USUAL_OVER_MM } from './bumpline-static-camber.words.js';

const { sheets: WORDS } = NAMES;

const known = (value: number | undefined): readonly number[] | undefined => (value === undefined ? undefined : [value]);

/** What is asked besides amount and drop. */
export const ASKED_SHEETS: readonly SheetSpec[] = worded(() => [
  {
    key: 'camberAdded.over',
    ...WORDS.over,
    fields: [{ path: 'camberAdded.over', label: WORDS.over.label, quantity: 'travel' }],
    optional: true,
    read: ({ camberAdded }) => known(camberAdded?.over),
    write: (car, values) => withCamberAdded(car, { over: values?.[0] }),
    standIn: () => [USUAL_OVER_MM],
  },
  {
    key: 'turn.roll',
    ...WORDS.roll,
    fields: [{ path: 'turn.roll', label: WORDS.roll.label, quantity: 'roll' }],
    optional: true,
    read: ({ turn }) => known(turn?.roll),
    write: (car, values) => withTurn(car, { roll: values?.[0], rollFrom: undefined }),
    standIn: () => [USUAL_ROLL],
  },
]);

export const OWN_SHEETS = new OwnSheets(ASKED_SHEETS, [], { over: 'camberAdded.over' });

/** The sheets of a car's links, and of what is asked. @param lateSheet those of parts that come late */
export function staticCamberKit(app: InputView, lateSheet: (key: string) => SheetSpec | undefined): SheetKit {
  const kit = OWN_SHEETS.kit(
    app,
    geometryKit(app, () => undefined),
  );
  return {
    ...kit,
    sheetOf: (key) => lateSheet(key) ?? kit.sheetOf(key),
    runOf: (car, sheet) => (lateSheet(sheet.key) ? [] : kit.runOf(car, sheet)),
  };
}
