import { withCamberAdded } from '../../core/document/camber-added.js';
import { withTurn } from '../../core/document/turn-settings.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { geometryKit } from '../bumpline-geometry/geometry-kit.js';
import type { Display } from '../element/sentence.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import type { InputView } from '../inputs/sheet-edits.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { USUAL_OVER_MM } from './bumpline-static-camber.words.js';
import { USUAL_ROLL_DEG } from './in-turn.js';

const { sheets: WORDS } = NAMES;

const known = (value: number | undefined): readonly number[] | undefined => (value === undefined ? undefined : [value]);

/** What is asked besides amount and drop. */
export const ASKED_SHEETS: readonly SheetSpec[] = [
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
    write: (car, values) => withTurn(car, { roll: values?.[0] }),
    standIn: () => [USUAL_ROLL_DEG],
  },
];

const OWN = new Map(ASKED_SHEETS.map((sheet) => [sheet.key, sheet]));

/** The key of the sheet on which a problem of what is asked is mended. */
export const askedSheetOf = ({ path }: Problem): string | undefined =>
  path === 'over' ? 'camberAdded.over' : OWN.has(path) ? path : undefined;

/** A problem of what is asked, by the title of its sheet; undefined of any other. */
export function askedProblemText(problem: Problem, { units: unitSystem, language }: Display): string | undefined {
  const sheet = OWN.get(askedSheetOf(problem) ?? '');
  if (!sheet) return undefined;
  return explainProblem(problem, { label: sheet.title, quantity: sheet.fields[0]!.quantity, unitSystem, language });
}

/** The sheets of a car's links, and of what is asked. @param lateSheet those of parts that come late */
export function staticCamberKit(app: InputView, lateSheet: (key: string) => SheetSpec | undefined): SheetKit {
  const links = geometryKit(app, () => undefined);
  return {
    ...links,
    sheetOf: (key) => OWN.get(key) ?? lateSheet(key) ?? links.sheetOf(key),
    describeProblem: (problem) => askedProblemText(problem, app.display) ?? links.describeProblem(problem),
    runOf: (car, sheet) => (OWN.has(sheet.key) || lateSheet(sheet.key) ? [] : links.runOf(car, sheet)),
  };
}
