import { USUAL_PREDICT_OVER_MM, withPredict } from '../../core/document/predict-in-use.js';
import { worded } from '../../core/quantity/words.js';
import { geometryKit } from '../bumpline-geometry/geometry-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import { OwnSheets } from '../inputs/own-sheets.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-predict.labels.js';

/** What is asked besides the drop. */
export const ASKED_SHEETS: readonly SheetSpec[] = worded(() => [
  {
    key: 'predict.over',
    ...NAMES.sheets.over,
    fields: [{ path: 'predict.over', label: NAMES.sheets.over.label, quantity: 'travel' }],
    optional: true,
    read: ({ predict }) => (predict?.over === undefined ? undefined : [predict.over]),
    write: (car, values) => withPredict(car, { over: values?.[0] }),
    standIn: () => [USUAL_PREDICT_OVER_MM],
  },
]);

export const OWN_SHEETS = new OwnSheets(ASKED_SHEETS, [], { over: 'predict.over' });

/** The sheets of a car's links, and of what is asked. */
export const predictKit = (app: InputView): SheetKit =>
  OWN_SHEETS.kit(
    app,
    geometryKit(app, () => undefined),
  );
