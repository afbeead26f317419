import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { words } from '../../core/quantity/words.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { shownName } from '../car/shown-names.words.js';
import type { Display } from '../element/sentence.js';
import type { GridColumn } from './grid-model.js';

/** All English words of the grid and its keys. */
export const GRID = words('readings/reading-grid', {
  title: 'Readings, height by height',
  newRow: 'New height',
  again: 'first again',
  againNote:
    'At the end of each pass, read its first height again, in the last row: it shows whether anything drifted.',
  addPass: 'Add a pass',
  onePass: 'One pass',
  passName: 'Name of this pass',
  way: 'Which way the wheel went',
  up: 'going up ↑',
  down: 'going down ↓',
  unsaid: 'direction not given',
  removePass: 'Remove this pass',
  removeRow: 'Remove this height',
  ownKeys: 'Type on this device’s own keyboard',
  theseKeys: 'Show keys to press',
  body: 'Heights are wheel travel from the height you call zero: up is plus.',
  phone: 'Use this phone’s tilt sensor',
  phoneStop: 'Stop',
  phoneTake: 'Take',
  phoneWaiting: 'Waiting for this phone’s sensor …',
  phoneDenied: 'This phone does not let the page read its tilt.',
  steady: 'steady',
  unsteady: 'still moving',
  phoneNote:
    'Hold the back of the phone flat on the wheel, always in the same fixture. It is good to ±1° at best, so only differences count. Keep the phone and yourself out from under the car.',
  keys: {
    group: 'Keys',
    erase: 'Delete the last figure',
    sign: 'Change the sign',
    next: 'Next',
    nextLabel: 'Next reading',
    degrees: 'Degrees',
    minutes: 'Minutes',
    mark: 'Decimal mark',
    part: 'Between front and rear',
  },
  howRead: {
    label: 'Toe was read with',
    gauge: 'A gauge on the hub, as an angle',
    dials: 'Two dials on a plate',
    tape: 'A plate, or the rim, and a tape',
    base: 'From the front place to the rear one',
    front: { dials: 'As the front of the wheel moves inboard, the front dial', tape: 'The tape was read from' },
    choose: 'Please choose',
    told: (gauge: string, base: string): string => `${gauge}, ${base}`,
    fronts: {
      dials: { inboard: 'reads more', outboard: 'reads less' },
      tape: { inboard: 'a string outside the wheel', outboard: 'the car’s centreline, or the other wheel' },
    },
    notes: {
      dials:
        'Both dials at one height, the base measured along the plate from plunger to plunger. Lock the steering, and do not touch it between readings.',
      tape: 'Front and rear at one height, the string parallel to the car’s centreline, the base measured along the plate or the rim. Lock the steering, and do not touch it between readings.',
    },
  },
  pair: 'front / rear',
  pairNote: 'Type both figures of each reading, front / rear. The toe that they make stands below them.',
  sayOver: (cell: string): string =>
    `${cell}: say above how far apart the two places are and how the front counts. What you typed is kept.`,
  onePart: (cell: string, part: 'pair' | 'front' | 'rear'): string =>
    part === 'pair'
      ? `${cell}: two figures belong here, front / rear.`
      : `${cell}: the figure at the ${part} is missing.`,
  ofPart: (cell: string, part: string): string => `${cell}, ${part}`,
  signs: { camber: 'Minus is top in, plus is top out', toe: 'Minus is toe out, plus is toe in' },
  arrows: { up: ' ↑', down: ' ↓' },
  againAt: (cell: string): string => `${cell} again`,
  farOff: (cell: string, value: string, meant: string): string =>
    `${cell}: ${value} lies far off its neighbours. Is it ${value} or ${meant}?`,
});

export const signsOf = (quantity: ReadingQuantity): string => GRID.signs[quantity];

export const columnName = ({ pass, going }: GridColumn): string =>
  `${pass ? shownName(pass) : GRID.onePass}${going ? GRID.arrows[going] : ''}`;

/** "+30 mm", or "−0.25 in". */
export const heightText = (travel: number, { units, language }: Display, unit = true): string =>
  formatQuantity(travel, 'travel', units, { language, sign: 'always', unit }).text;

export const cellLabel = (column: GridColumn, travel: number, display: Display): string =>
  `${columnName(column)}, ${heightText(travel, display)}`;

/** "Pass 1 ↑, −30 mm again" */
export const againLabel = (column: GridColumn, travel: number, display: Display): string =>
  GRID.againAt(cellLabel(column, travel, display));

/** A text that cannot be read, or can in two ways, named by its cell. */
export const cellProblem = (
  problem: Problem,
  label: string,
  quantity: Quantity,
  { units, language }: Display,
): string => {
  const { code, other, path } = problem;
  if (path === 'overBase') return GRID.sayOver(label);
  if (other === 'pair' || ((other === 'front' || other === 'rear') && code === 'missing'))
    return GRID.onePart(label, other);
  if (other === 'front' || other === 'rear') {
    const { other: _, ...own } = problem;
    const part = GRID.ofPart(label, other);
    return explainProblem(own, { label: part, quantity: 'coordinate', unitSystem: units, language });
  }
  return explainProblem(problem, { label, quantity, unitSystem: units, language });
};

export const valueText = (
  value: number,
  quantity: ReadingQuantity,
  { units, language }: Display,
  unit = false,
): string => formatQuantity(value, quantity, units, { language, unit }).text;
