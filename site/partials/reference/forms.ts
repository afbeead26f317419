import { type ElementDeclaration, FORMS, type Form } from '../../../components/manifest/manifest.js';
import { ORDERS } from '../../../components/page-data/reading-sheet.js';
import { type PointRowKind, pointRowKinds } from '../../../core/document/point-rows.js';
import { DEFAULT_DOUBTS, DOUBT_KEYS, MOST_DOUBTS } from '../../../core/readings/doubts.js';
import { BASES, FRONT_SIGNS } from '../../../core/readings/over-base.js';
import type { ColumnRole } from '../../../core/readings/table/understanding.js';
import { POINT_COLUMNS, READING_COLUMNS } from './columns.js';
import { referencePath } from './list.js';
import { code, prose, signed } from './says.js';
import { type Row, rowsTable, typeId } from './tables.js';

/* What an author may write inside an element: rows, columns and names from the readers themselves. */

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const degrees = { mm: 'mm', degrees: '°' } as const;
const about = ({ least, most, unit }: PointRowKind): string =>
  `${signed(least)} to ${signed(most)}${unit === 'mm' ? ' mm' : '°'}`;

/** Of a name as the reader compares it, an apostrophe is gone. */
const SIMPLIFIED = / s /;

const HOLDS = {
  point: 'x, y and z, and a ± if you know it',
  single: 'One value',
  measure: 'A value and its ±',
} as const;

function pointRow(kind: PointRowKind): Row {
  const { names, holds, plusMinus, unit } = kind;
  const [name, ...more] = names;
  const others = [...new Set(more)].filter((one) => one !== name && !SIMPLIFIED.test(one)).slice(0, 2);
  const also = others.length > 0 ? `Also ${others.map((one) => `“${one}”`).join(', ')}.` : '';
  const usual = plusMinus === undefined ? '' : `; ±${plusMinus}${unit === 'mm' ? ' mm' : degrees[unit]} without one`;
  return { name: capital(name!), says: `${HOLDS[holds]}. ${also}`.trim(), takes: `${about(kind)}${usual}` };
}

const columnRows = (
  columns: Readonly<Record<string, { headings: readonly string[]; says: string }>>,
  names: readonly string[],
) =>
  names.map((name): Row => {
    const { headings, says } = columns[name]!;
    const [first, ...others] = headings;
    return {
      name: first!,
      says: prose(says),
      ...(others.length > 0 && { takes: `Also ${others.map((one) => `“${one}”`).join(', ')}` }),
    };
  });

function points(): string {
  const kinds = pointRowKinds();
  const rows = (...holds: PointRowKind['holds'][]) => kinds.filter((kind) => holds.includes(kind.holds)).map(pointRow);
  return `<h3 id="form-points">A table of hard points, or of measurements</h3>
<p>Coordinates are of the <strong>left</strong> corner at stock height. Rows and columns go by their names, in any order. Units are mm, cm or in, named in a heading, the caption, a row’s name or a cell; without any it is mm. A row that is missing is filled from the example, and the sentence says so. Where a table has both, hard points win.</p>
${rowsTable(rows('point', 'single'), ['Row', 'What stands in it'], 'Hard points, and what goes with them')}
${rowsTable(rows('measure'), ['Row', 'What stands in it'], 'Measurements with a tape and an angle gauge')}
${rowsTable(columnRows(POINT_COLUMNS, Object.keys(POINT_COLUMNS)), ['Column', 'What stands in it'], 'Columns')}`;
}

const kebab = (key: string): string => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const DOUBT_UNITS = { gaugeScale: '%', tapeScale: '%', zeroHeight: ' mm', drift: '°' } as const;

const DOUBTS = DOUBT_KEYS.map((key) => {
  const unit = DOUBT_UNITS[key].trim() === '%' ? ' %' : DOUBT_UNITS[key];
  return `${code(`${kebab(key)} ${DEFAULT_DOUBTS[key]}${unit}`)} (at most ${MOST_DOUBTS[key]}${unit})`.replaceAll(
    ' %',
    '&nbsp;%',
  );
});

const tableAttributes = (isToe: boolean, isSets: boolean): Row[] => [
  {
    name: code('data-zero'),
    says: 'Of a table of heights: the height that is called zero.',
    takes: 'mm, or with its unit.',
  },
  ...(isToe
    ? [
        {
          name: code('data-base'),
          says: 'How far apart the two dials are, or the two places of a tape.',
          takes: `${BASES[0]} to ${BASES[1]} mm, or with its unit.`,
        },
        {
          name: code('data-front'),
          says: 'Which way the front of the wheel goes where the front figure grows.',
          takes: `${FRONT_SIGNS.map(code).join(' or ')}.`,
        },
      ]
    : []),
  {
    name: code('data-order'),
    says: 'The rows do not stand in the order in which they were read: then they tell no direction.',
    takes: `${ORDERS.map(code).join(' or ')}.`,
  },
  {
    name: code('data-doubts'),
    says: 'How far off gauge, tape and zero height can be (95&nbsp;%), with semicolons between.',
    takes: `If left out: ${DOUBTS.join('; ')}.`,
  },
  {
    name: code('data-example'),
    says: isSets
      ? 'The sets are an example, and a reader’s own take their place. Without it they are your data, and a reader’s stand beside them.'
      : 'The table shows what the page is about, and is not read.',
    takes: 'No value: it is there, or it is not.',
  },
];

const PAIR: readonly ColumnRole[] = ['dialFront', 'dialRear'];

function readings(tag: string, isSets: boolean): string {
  const isToe = tag === 'bumpline-toe' || tag === 'bumpline-readings';
  const roles = (Object.keys(READING_COLUMNS) as ColumnRole[]).filter((role) => isToe || !PAIR.includes(role));
  const what = isSets
    ? 'Heights down the side, one column for each set of parts, named by its heading. “Standard joints 2” is a further pass of the same set.'
    : 'Heights down the side, one column for each pass. A heading says the unit and which way the wheel went. Gaps stay empty, and a last row with the first height again is read as just that. Several sets of parts in one table (“Stock 1”, “Lowered joints 1”) are shown one at a time.';
  return `<h3 id="form-${isSets ? 'sets' : 'readings'}">A table of readings</h3>
<p>${what} Units are mm, cm or in, and degrees or minutes; without any they are mm and degrees.</p>
${rowsTable(columnRows(READING_COLUMNS, roles), ['Column', 'What stands in it'], 'Columns')}
${rowsTable(tableAttributes(isToe, isSets), ['Attribute of the table', 'Meaning'])}`;
}

const typeLink = (name: string): string => `<a href="#${typeId(name)}">${code(name)}</a>`;
const JSON_TAG = code('<script type="application/json">');

const WRITTEN: Readonly<Record<Form, (tag: string) => string>> = {
  points,
  readings: (tag) => readings(tag, false),
  sets: (tag) => readings(tag, true),
  corner: () => `<h3 id="form-corner">JSON of a corner</h3>
<p>A ${JSON_TAG} with the hard points: ${typeLink('Corner')}. Readers without scripts see nothing of it, so write a sentence beside it.</p>`,
  fitment: () => `<h3 id="form-fitment">JSON of wheels and places</h3>
<p>A ${JSON_TAG} with any of ${code('fit')} (${typeLink('Fitment')}), ${code('limits')} (${typeLink('TravelLimits')}), ${code('drop')} in mm, and ${code('corner')} (${typeLink('Corner')}), by which the wheel moves. Without it, it moves as the car around it says.</p>`,
  car: () => `<h3 id="form-car">JSON of a whole car</h3>
<p>A ${JSON_TAG} with ${code('{ "car": … }')}, as the <a href="../../snippet-builder/">snippet builder</a> makes it. Its fields: <a href="../../${referencePath('bumpline-car')}#${typeId('CarDocument')}">${code('CarDocument')}</a>. No table beside it is read.</p>`,
};

/** Markup; '' of an element that reads nothing. */
export const formsOf = ({ reads, tagName }: ElementDeclaration): string =>
  FORMS.filter((form) => reads.includes(form))
    .map((form) => WRITTEN[form](tagName))
    .join('\n');
