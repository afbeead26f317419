import { nothing } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { TURN_RANGES } from '../../core/document/field-ranges.js';
import { withTurn } from '../../core/document/turn-settings.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { geometryKit } from '../bumpline-geometry/geometry-kit.js';
import type { SheetKit } from '../inputs/input-sheet.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-cornering.labels.js';
import type { CorneringView } from './cornering-view.js';
import { renderPhotoDrawn, renderTiesDrawn } from './roll-drawn.js';
import { loadRun, MARKS, PHOTO, rollSheetOf, rollSheets, rollSheetsInUse, rollStandIns } from './roll-sheets.js';
import { RollStanding } from './roll-standing.js';

const { sheets: WORDS } = NAMES;

type Key = keyof typeof WORDS & keyof typeof TURN_RANGES;

const oneNumber = (key: Key, quantity: Quantity, more: Partial<SheetSpec> = {}): SheetSpec => {
  const { title, label, howTo } = WORDS[key];
  return {
    key: `turn.${key}`,
    title,
    howTo,
    fields: [{ path: `turn.${key}`, label, quantity, signed: quantity === 'camber' }],
    optional: true,
    read: ({ turn }) => (turn?.[key] === undefined ? undefined : [turn[key]]),
    write: (car, values) => withTurn(car, { [key]: values?.[0] }),
    ...more,
  };
};

const TYRE_ROLL = oneNumber('tyreRoll', 'tyreRoll');
const STEER = [oneNumber('radius', 'radius'), oneNumber('wheelbase', 'wheelbase')];
const CAMBER = oneNumber('camber', 'camber', { caution: 'camber' });
const WANTED = oneNumber('wanted', 'camber', { caution: 'camber' });
const TRACK = oneNumber('track', 'track');

/** What is asked of a turn, as a list shows it. @param hasLinks whether wheels can be steered and their track is known */
export const turnSheets = (car: CarDocument, hasLinks: boolean): readonly SheetSpec[] => [
  ...rollSheetsInUse(car, hasLinks),
  TYRE_ROLL,
  ...(hasLinks ? STEER : [TRACK]),
  CAMBER,
  WANTED,
];

const OWN = new Map([TYRE_ROLL, ...STEER, TRACK, CAMBER, WANTED].map((sheet) => [sheet.key, sheet]));

/** By its key, or the path of a value that stands on it. */
export const turnSheetOf = (path: string, hasLinks: boolean): SheetSpec | undefined =>
  OWN.get(path) ?? rollSheetOf(path, hasLinks);

/** A problem of one of them, by its title; undefined of any other. */
export function turnProblemText(
  problem: Problem,
  { display, hasLinks }: Pick<CorneringView, 'display' | 'hasLinks'>,
): string | undefined {
  const { units: unitSystem, language } = display;
  const sheet = turnSheetOf(problem.path, hasLinks);
  if (!sheet) return undefined;
  const field = sheet.fields.find(({ path }) => path === problem.path) ?? sheet.fields[0]!;
  const label = sheet.fields.length > 1 ? field.label : sheet.title;
  return explainProblem(problem, { label, quantity: field.quantity, unitSystem, language });
}

/** Whether steering is given in part: one of radius and wheelbase alone tells none. */
export const isSteerHalf = ({ turn }: CarDocument): boolean =>
  (turn?.radius === undefined) !== (turn?.wheelbase === undefined);

/** The sheets of a car's links and of what is asked of a turn. */
export function corneringKit(view: CorneringView): SheetKit {
  const links = geometryKit(view, () => undefined);
  const standing = new RollStanding(view);
  const rollSheet = (key: string) => rollSheets(view.hasLinks).find((sheet) => sheet.key === key);
  const drawn = { [MARKS.key]: renderTiesDrawn, [PHOTO.key]: renderPhotoDrawn };
  return {
    ...links,
    sheetOf: (key) => OWN.get(key) ?? rollSheet(key) ?? links.sheetOf(key),
    describeProblem: (problem) => turnProblemText(problem, view) ?? links.describeProblem(problem),
    runOf(car, sheet) {
      if (rollSheet(sheet.key)) return sheet.key === MARKS.key || sheet.key === PHOTO.key ? [] : loadRun(view.hasLinks);
      return STEER.includes(sheet) ? STEER : OWN.has(sheet.key) ? [] : links.runOf(car, sheet);
    },
    drawn: (sheet) => drawn[sheet.key]?.() ?? links.drawn?.(sheet) ?? nothing,
    standIn: (sheet) =>
      rollSheet(sheet.key)
        ? (rollStandIns(sheet, view.model.car, standing.axle) as readonly number[])
        : links.standIn?.(sheet),
  };
}
