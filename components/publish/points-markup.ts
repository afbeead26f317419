import type { GivenCorner } from '../../core/document/car.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { DRIVEWAY_KEYS, type DrivewayKey, isAngle } from '../../core/driveway/driveway.js';
import { type PlusMinus, STRUT_POINT_KEYS } from '../../core/linkage/corner.js';
import { type FigureCell, freeFigure, type MarkupCell, type MarkupTable, tableHtml, textsIn } from './markup-table.js';
import { TABLES } from './publish.words.js';

/** A table of a corner, and whether a page that reads it has the same corner. */
export interface PointsMarkup {
  html: string;
  isExact: boolean;
}

const MEASURES = DRIVEWAY_KEYS.filter((key): key is Exclude<DrivewayKey, 'camber'> => key !== 'camber');
const SINGLES = ['loadedRadius', 'camber', 'toe'] as const;
const LENGTH_PLACES = 2;
const ANGLE_PLACES = [2, 3] as const;

/**
 * What is known of a corner as an HTML table, as elements read it from a page: its hard points, with a column of ± where any is known,
 * or what was measured in the driveway. A table of points has the measurements below them.
 *
 * @param language whose decimal mark the figures have; the words are English
 */
export function pointsMarkup(given: GivenCorner, caption: string, language: string): PointsMarkup {
  const { points, measures = {} } = given;
  const isOfPoints = STRUT_POINT_KEYS.some((key) => points[key]);
  const plusMinus = spelledOut(given);
  const isAnyDoubt = Object.keys(plusMinus).length + Object.keys(measures).length > 0;
  const across = isOfPoints ? 3 : 1;
  const doubt = (cell: FigureCell | undefined): MarkupCell[] => (isAnyDoubt ? [cell ?? ''] : []);
  const rows: MarkupCell[][] = [
    ...STRUT_POINT_KEYS.flatMap((key): MarkupCell[][] => {
      const { [key]: point } = points;
      const { [key]: own } = plusMinus;
      if (!point) return [];
      const [x, y, z] = point.map((mm) => freeFigure(mm, LENGTH_PLACES, language));
      return [
        [TABLES.points[key], x!, y!, z!, ...doubt(own === undefined ? own : freeFigure(own, LENGTH_PLACES, language))],
      ];
    }),
    ...MEASURES.flatMap((key): MarkupCell[][] => {
      const { [key]: measured } = measures;
      if (!measured) return [];
      const write = (size: number) => withUnit(size, isAngle(key), language);
      return [[TABLES.measures[key], spanned(write(measured.value), across), ...doubt(write(measured.plusMinus))]];
    }),
    ...SINGLES.flatMap((key): MarkupCell[][] => {
      const { [key]: figure } = given;
      if (figure === undefined) return [];
      const cell = spanned(withUnit(figure, key !== 'loadedRadius', language), across);
      return [[TABLES.singles[key], cell, ...doubt(undefined)]];
    }),
  ];
  const head = [...(isOfPoints ? TABLES.point : TABLES.measurement), ...(isAnyDoubt ? [TABLES.plusMinus] : [])];
  const table: MarkupTable = { caption, attributes: {}, head, rows };
  const read = readPointSheet({ rows: textsIn(table), caption }, language);
  const { plusMinus: _, ...others } = given;
  const whole = { ...others, ...(Object.keys(plusMinus).length > 0 && { plusMinus }) };
  return {
    html: rows.length > 0 ? tableHtml(table, language) : '',
    isExact: read.problems.length === 0 && isSame(read.given, whole),
  };
}

/** The ± of each point that is there, one that stands for the rest among them. */
function spelledOut({ points, plusMinus = {} }: GivenCorner): PlusMinus {
  const each: PlusMinus = {};
  for (const key of STRUT_POINT_KEYS) {
    const { [key]: own = plusMinus.other } = plusMinus;
    if (points[key] && own !== undefined) each[key] = own;
  }
  return each;
}

function withUnit(size: number, areDegrees: boolean, language: string): FigureCell {
  const [fewest, most] = ANGLE_PLACES;
  const cell = areDegrees ? freeFigure(size, most, language, fewest) : freeFigure(size, LENGTH_PLACES, language);
  return { ...cell, text: cell.text + (areDegrees ? '°' : ' mm') };
}

const spanned = (cell: FigureCell, span: number): FigureCell => (span > 1 ? { ...cell, span } : cell);

/** A figure that was written to six places is the same; parts are, whatever their order. */
function isSame(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) < 2e-6;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other;
  const [keys, others] = [Object.keys(one), Object.keys(other)];
  return (
    keys.length === others.length &&
    keys.every((key) => isSame(one[key as keyof typeof one], other[key as keyof typeof other]))
  );
}
