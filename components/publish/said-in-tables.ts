import { EMPTY_CAR, type GivenCorner } from '../../core/document/car.js';
import type { PageCar } from '../../core/document/page-car.js';
import { isBare } from '../../core/document/provenance.js';
import type { Setup } from '../../core/document/setup.js';
import { pointsMarkup } from './points-markup.js';
import { TABLES } from './publish.words.js';
import { readingsMarkup } from './readings-markup.js';
import type { SnippetTag } from './relevant.js';

/** The tables of a snippet, and what they leave to be said. */
export interface InTables {
  /** What the element reads of them; empty where it reads none. */
  data: string;
  /** All of them, for readers. */
  shown: string;
  rest: PageCar;
  /** Said by the tag beside a table. */
  attributes: Record<string, string>;
  /** How many readings were set aside, and are not in them. */
  aside: number;
  isRenamed: boolean;
}

const READS_POINTS: readonly SnippetTag[] = [
  'bumpline-lowering',
  'bumpline-geometry',
  'bumpline-toe',
  'bumpline-cornering',
  'bumpline-static-camber',
];
/** Of which angle. */
const READS_READINGS: Readonly<Partial<Record<SnippetTag, readonly Setup['quantity'][]>>> = {
  'bumpline-readings': ['camber', 'toe'],
  'bumpline-compare': ['camber'],
  'bumpline-toe': ['toe'],
};

/** Of a page that does not say which corner a table is of. */
const { cornerName: PAGES_CORNER } = EMPTY_CAR;

/** The corner that an answer is made from: of links by hard points the driveway says nothing. */
const ofAnswer = ({ given = { points: {} }, by }: PageCar): GivenCorner => {
  if (by !== 'points') return given;
  const { measures: _, ...points } = given;
  return points;
};

/**
 * What tables can say of a car: of hard points or measurements, else of readings, since an element reads one table.
 *
 * @param said what attributes leave to be said
 */
export function saidInTables(tag: SnippetTag, said: PageCar, language: string): InTables {
  const { given, setups = [], by } = said;
  const caption = TABLES.corner(said.cornerName ?? PAGES_CORNER);
  const points = given && !isBare(given) ? pointsMarkup(given, caption, language) : undefined;
  const shownPoints = points && pointsMarkup(ofAnswer(said), caption, language).html;
  const readings = readingsMarkup(setups, language);
  const tables: Pick<InTables, 'shown' | 'aside' | 'isRenamed'> = {
    shown: [shownPoints, readings.html].filter(Boolean).join('\n'),
    aside: readings.aside,
    isRenamed: readings.isRenamed,
  };
  const none: InTables = { ...tables, data: '', rest: said, attributes: {} };
  const isOfPoints = Object.keys(given?.points ?? {}).length > 0;
  // Measurements tell no toe: there a table without points is one of readings.
  if (points && READS_POINTS.includes(tag) && (isOfPoints || tag !== 'bumpline-toe')) {
    const { given: _, ...rest } = said;
    const read = { ...none, data: points.html, rest: points.isExact ? rest : said };
    return withWay(read, isOfPoints ? 'points' : 'driveway');
  }
  if (!points && setups.length === 0) return withWay(none, 'driveway');
  const angles = READS_READINGS[tag];
  if (points || !angles || readings.html === '') return none;
  const attributes = readingAttributes(tag, setups);
  const { setups: _, ...rest } = said;
  const isWhole = readings.isExact && attributes !== undefined && setups.every((setup) => isOfTable(setup, angles));
  const read = { ...none, data: readings.html, rest: isWhole ? rest : said, attributes: attributes ?? {} };
  return withWay(read, by === undefined ? by : 'readings');
}

/** What a page is taken to mean by a table: the corner that it is of, and how the car is known. */
function withWay(tables: InTables, by: PageCar['by']): InTables {
  const { cornerName, by: said, ...rest } = tables.rest;
  const isSame = said === undefined || said === by;
  return {
    ...tables,
    rest: {
      ...rest,
      ...(!isSame && { by: said }),
      ...(cornerName !== undefined && cornerName !== PAGES_CORNER && { cornerName }),
    },
  };
}

/** Whether a table can say all of a set that an answer is made from. */
const isOfTable = ({ quantity, cornerName, parts, alignment, zeroAt, readings }: Setup, angles: readonly string[]) =>
  angles.includes(quantity) &&
  readings.length > 0 &&
  cornerName === PAGES_CORNER &&
  parts === undefined &&
  alignment === undefined &&
  !zeroAt;

/** What the tag says of all sets in its table; undefined where they differ in it. */
function readingAttributes(tag: SnippetTag, setups: readonly Setup[]): Record<string, string> | undefined {
  const [{ quantity, degree }] = setups as readonly [Setup];
  if (setups.some((setup) => setup.quantity !== quantity || setup.degree !== degree)) return undefined;
  if (tag !== 'bumpline-readings') return degree === undefined ? {} : undefined;
  return { ...(quantity === 'toe' && { quantity }), ...(degree !== undefined && { degree: String(degree) }) };
}
