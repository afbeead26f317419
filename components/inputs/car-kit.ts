import { nothing } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { strutOf } from '../../core/document/strut-in-use.js';
import { unusualOf } from '../../core/document/unusual.js';
import type { AssumableKey, Driveway } from '../../core/driveway/driveway.js';
import type { StrutPointKey } from '../../core/linkage/corner.js';
import { dropText } from '../element/drop-words.js';
import type { Display } from '../element/sentence.js';
import { endRun, runOf, sheetOf } from './car-sheets.js';
import type { SheetKit } from './input-sheet.js';
import { NAMES } from './inputs.labels.js';
import { assumedText, problemText, queryText } from './sheet.labels.js';
import type { InputView } from './sheet-edits.js';
import { renderWhere } from './where.js';
import { isGapKey, renderWhereGap } from './where-gap.js';
import { renderWhereMeasured, type ShownMeasure } from './where-measured.js';
import { isSteeredKey, renderWhereSteered } from './where-steered.js';

/** What is one thing at one height, and another at another. */
const AT_HEIGHT = { camber: true, toe: true };

/** At which height the car was measured, so that is where these are asked. */
function measuredAtText({ measuredAt = 0 }: CarDocument, display: Display): string {
  if (measuredAt === 0) return NAMES.askedAtStock;
  return (measuredAt > 0 ? NAMES.askedLower : NAMES.askedHigher)(dropText(measuredAt, display));
}

/** The sheets of a car's geometry. @param taken what the last answer took for each driveway measurement */
export const carKit = (app: InputView, taken: () => Driveway['taken'] | undefined): SheetKit => ({
  sheetOf,
  runOf: (car, sheet) => (endRun.includes(sheet) ? endRun : runOf(car)),
  describeProblem: (problem, sheet) => problemText(problem, app.display, sheet),
  drawn(sheet) {
    if (sheet.number) return renderWhere(strutOf(app.model.car), sheet.key as StrutPointKey);
    if (isGapKey(sheet.key)) return renderWhereGap(sheet.key);
    if (isSteeredKey(sheet.key)) return renderWhereSteered(sheet.key);
    const isMeasure = sheet.fields[0]?.path.endsWith('.value') && sheet.key !== 'track';
    return isMeasure ? renderWhereMeasured(sheet.key as ShownMeasure) : nothing;
  },
  notes(sheet) {
    const { model, display } = app;
    const { car } = model;
    const key = sheet.key as AssumableKey;
    const { [key]: assumed } = taken() ?? ({} as Partial<Driveway['taken']>);
    const isGiven = sheet.read(car) !== undefined;
    const height = key in AT_HEIGHT ? [{ text: measuredAtText(car, display) }] : [];
    // What the answer takes of a car that somebody has begun to measure, in place of this.
    if (assumed && !assumed.measured && !isGiven) {
      return [...height, { text: NAMES.assumed(assumedText(key, taken()!, display)) }];
    }
    // What looks like a slip of the keys in this point, as soon as it is typed.
    if (!isGiven || car.whole !== undefined) return height;
    const queries = unusualOf(strutOf(car)).filter(({ path }) => path === sheet.key);
    return [...height, ...queries.map((query) => ({ text: queryText(query, display), isQuery: true }))];
  },
  standIn: (sheet) => sheet.standIn?.(app.model.car, taken()),
});
