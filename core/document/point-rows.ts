import {
  DRIVEWAY_FIELDS,
  type DrivewayKey,
  type DrivewayMeasurements,
  HOW_SURE,
  scaleOfMeasure,
} from '../driveway/driveway.js';
import type { PlusMinus, StrutPointKey, Vector3 } from '../linkage/corner.js';
import { decimalMark } from '../quantity/format.js';
import { parseQuantity } from '../quantity/parse.js';
import type { Problem } from '../quantity/problem.js';
import { QUANTITIES, type Quantity } from '../quantity/quantities.js';
import type { UnitSystem } from '../quantity/units.js';
import type { CellUnit } from '../readings/table/understanding.js';
import type { GivenCorner } from './car.js';

/** One line of a table or of a pasted text: a name and the cells after it, as text. */
export interface PointRow {
  name: string;
  cells: string[];
  /** By cell: the unit of a figure that names none itself. */
  units?: readonly (CellUnit | undefined)[];
}

const ENDS_IN_FIGURE = /[\d.,¼-¾⅐-⅞]$/;
/** How a unit is written behind a bare figure. */
const WRITTEN: Record<CellUnit, string> = {
  mm: ' mm',
  cm: ' cm',
  in: ' in',
  thou: ' thou',
  degrees: '°',
  arcminutes: '′',
};

type RowKey = StrutPointKey | 'loadedRadius' | 'camber' | 'toe' | MeasureRowKey;

/** What a driveway gives; static camber is one row for both ways. */
type MeasureRowKey = Exclude<DrivewayKey, 'camber'>;

/** Words people write for each row, simplified as `simplify` does. Trade's terms and our own keys; British and American spelling. */
const NAMES: Record<RowKey, string[]> = {
  'lowerArm.front': ['lower arm front pivot', 'lower arm front', 'front pivot'],
  'lowerArm.rear': ['lower arm rear pivot', 'lower arm rear', 'rear pivot'],
  'lowerArm.ball': ['lower ball joint', 'ball joint', 'lower arm ball joint', 'lower arm ball'],
  'strut.top': ['top mount', 'strut top', 'strut top mount', 'damper top', 'upper mount'],
  'strut.low': [
    'damper low point',
    'second point on the damper',
    'damper second point',
    'damper lower point',
    'strut low',
    'damper low',
    'point on damper axis',
  ],
  'tieRod.inner': ['tie rod inner end', 'tie rod inner', 'inner tie rod', 'track rod inner'],
  'tieRod.outer': ['tie rod outer end', 'tie rod outer', 'outer tie rod', 'track rod outer'],
  wheelCentre: ['wheel centre', 'wheel center', 'hub centre', 'hub center'],
  loadedRadius: ['loaded radius', 'static loaded radius', 'hub centre to ground', 'hub center to ground'],
  camber: ['static camber', 'camber'],
  toe: ['static toe', 'toe', 'static toe in', 'toe in'],
  armLength: ['lower arm length', 'length of the lower arm'],
  pivotHeight: ['height of the arm s pivot', 'height of the arm s pivot axis', 'pivot height'],
  ballHeight: ['height of the ball joint', 'ball joint height'],
  wheelCentreHeight: ['height of the wheel centre', 'wheel centre height', 'wheel center height'],
  topHeight: ['height of the top mount', 'top mount height'],
  damperLean: ['lean of the damper', 'damper lean'],
  kingpin: ['kingpin inclination'],
  ballOffset: ['ball joint offset'],
  hubOffset: ['hub offset', 'ball joint to the tyre s middle'],
  track: ['track'],
  caster: ['caster', 'caster angle', 'castor'],
  bumpSteer: ['bump steer', 'toe change over 25 mm of bump'],
};

const isMeasure = (key: RowKey): key is MeasureRowKey => key !== 'camber' && key in DRIVEWAY_FIELDS;

/** Where a table states none: common practice, no source. */
const USUAL_DOUBT = { length: HOW_SURE.length.tape, angle: HOW_SURE.angle.gauge, toe: HOW_SURE.toe.gauge };
/** What a value is read as, and its ±. */
const QUANTITIES_OF = {
  length: ['coordinate', 'plusMinusLength'],
  angle: ['lean', 'plusMinusAngle'],
  toe: ['toe', 'plusMinusToe'],
} as const;

const simplify = (text: string) =>
  text
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/\([^)]*\)/g, ' ')
    .replace(/[^a-z]+/g, ' ')
    .trim();

const BY_NAME = new Map(
  Object.entries(NAMES).flatMap(([key, names]) => [key, ...names].map((name) => [simplify(name), key as RowKey])),
);

/** The row a text names, or undefined. */
export function rowKey(name: string): RowKey | undefined {
  return BY_NAME.get(simplify(name));
}

/** What a row of such a table may be called, and what stands in it. */
export interface PointRowKind {
  key: RowKey;
  /** The first is the one to write. */
  names: readonly string[];
  /** Three coordinates and an optional ±; one value; or a value and an optional ±. */
  holds: 'point' | 'single' | 'measure';
  /** What is possible, mm or degrees. */
  unit: 'mm' | 'degrees';
  least: number;
  most: number;
  /** Of a measurement without one. */
  plusMinus?: number;
}

/** Every row that is read, for whoever tells authors of them. */
export const pointRowKinds = (): PointRowKind[] =>
  (Object.keys(NAMES) as RowKey[]).map((key) => {
    if (isMeasure(key)) {
      const { label, least, most } = DRIVEWAY_FIELDS[key];
      const scale = scaleOfMeasure(key);
      const unit = scale === 'length' ? 'mm' : 'degrees';
      return { key, names: [label, ...NAMES[key]], holds: 'measure', unit, least, most, plusMinus: USUAL_DOUBT[scale] };
    }
    const isSingle = key === 'loadedRadius' || key === 'camber' || key === 'toe';
    const { dimension, min: least, max: most } = QUANTITIES[isSingle ? key : 'coordinate'];
    const unit = dimension === 'length' ? 'mm' : 'degrees';
    return { key, names: NAMES[key], holds: isSingle ? 'single' : 'point', unit, least, most };
  });

/**
 * Reads named rows into a corner: three coordinates for a hard point, with an optional fourth cell "±"; one value for loaded
 * radius, camber and toe; a value and an optional ± (else a tape's or a gauge's) for what is measured in a driveway.
 * Nothing is dropped silently: a row with an unknown name, a second row for
 * the same thing (`other` names it) and every cell that is no number is a problem.
 *
 * @param units of cells without a unit of their own
 * @param lengthUnit by column where a heading names it, e.g. ['in', 'in', 'in']
 * @param language of a published table: nobody can be asked there, so its decimal mark decides what `1,500` is, and angles are
 *   decimal degrees unless they have their minutes marked. Without it both are problems.
 */
export function readPointRows(
  rows: PointRow[],
  units: UnitSystem,
  lengthUnit: (UnitSystem['length'] | undefined)[] = [],
  language?: string,
): { given: GivenCorner; problems: Problem[] } {
  const points: Partial<Record<StrutPointKey, Vector3>> = {};
  const plusMinus: PlusMinus = {};
  const measures: DrivewayMeasurements = {};
  const given: GivenCorner = { points };
  const problems: Problem[] = [];
  const number = (text: string, quantity: Quantity, path: string, column: number, unit?: CellUnit) => {
    const written = unit && ENDS_IN_FIGURE.test(text.trim()) ? text.trim() + WRITTEN[unit] : text;
    const system = { ...units, length: lengthUnit[column] ?? units.length };
    const parsed = parseQuantity(written, quantity, system, path);
    if (parsed.ok) return parsed.value;
    const { code, choices } = parsed.problem;
    if (code === 'ambiguous' && choices && language !== undefined) {
      const isDecimal = QUANTITIES[quantity].dimension === 'angle' || text.includes(decimalMark(language));
      return choices[isDecimal ? 0 : 1]!;
    }
    problems.push({ ...parsed.problem, value: text });
    return Number.NaN;
  };
  const seen = new Set<RowKey>();
  for (const [i, { name, cells, units: own = [] }] of rows.entries()) {
    const key = rowKey(name);
    if (!key || seen.has(key)) {
      // Unknown, or the same thing a second time: which of the two is meant is not guessed.
      const path = name.trim().slice(0, 60) || `row ${i + 1}`;
      problems.push({ code: 'wrong-shape', path, value: cells.join(' ').trim(), ...(key && { other: key }) });
      continue;
    }
    seen.add(key);
    const isSingle = key === 'loadedRadius' || key === 'camber' || key === 'toe';
    const filled = cells.filter((cell) => cell.trim() !== '');
    if (filled.length > (isSingle ? 1 : isMeasure(key) ? 2 : 4)) {
      problems.push({ code: 'wrong-shape', path: key, value: filled.join(' ') });
      continue;
    }
    if (isSingle) {
      given[key] = number(filled[0] ?? '', key, key, 0, own[0]);
    } else if (isMeasure(key)) {
      const scale = scaleOfMeasure(key);
      const [quantity, doubtOf] = QUANTITIES_OF[scale];
      const [value = '', doubt = ''] = cells;
      const stated = doubt.replace('±', '').trim();
      measures[key] = {
        value: number(value, quantity, `${key}.value`, 0, own[0]),
        plusMinus: stated === '' ? USUAL_DOUBT[scale] : number(stated, doubtOf, `${key}.plusMinus`, 1, own[1]),
      };
    } else {
      const [x, y, z] = [0, 1, 2].map((axis) =>
        number(cells[axis] ?? '', 'coordinate', `${key}.${axis}`, axis, own[axis]),
      ) as [number, number, number];
      points[key] = [x, y, z];
      const doubt = cells[3]?.replace('±', '').trim();
      if (doubt) plusMinus[key] = number(doubt, 'plusMinusLength', `plusMinus.${key}`, 3, own[3]);
    }
  }
  if (Object.keys(plusMinus).length > 0) given.plusMinus = plusMinus;
  if (Object.keys(measures).length > 0) given.measures = measures;
  return { given, problems };
}
