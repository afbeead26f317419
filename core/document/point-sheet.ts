import { isAngle as isDrivewayAngle } from '../driveway/driveway.js';
import type { Problem } from '../quantity/problem.js';
import { METRIC } from '../quantity/units.js';
import { unitOfCell } from '../readings/table/cell-units.js';
import type { LengthUnit } from '../readings/table/heading.js';
import type { CellUnit } from '../readings/table/understanding.js';
import { unitsInProse } from '../readings/table/units-in-words.js';
import { isUnitAlone, type PointHeading, readPointHeading, type Slot } from './point-columns.js';
import { type PointRow, readPointRows, rowKey } from './point-rows.js';

/** A table as somebody wrote it. */
export interface PointSheet {
  /** Texts, row by row; a cell over several columns stands in the first. */
  rows: readonly (readonly string[])[];
  /** What a cell over several columns says in each of them. */
  merged?: readonly (readonly string[])[];
  caption?: string;
}

const FIGURE = /^[-+‐-―−±~≈<>]?\s*(?:\d|[.,]\d|[¼-¾⅐-⅞])/;
const AXES = ['x', 'y', 'z'] as const;
const BRACKETS = /[([]([^)\]]*)[)\]]/g;
const UNIT_BEHIND = /,\s*(?:in\s+)?(?:mm|cm|in|inch|inches|millimet(?:re|er)s|centimet(?:re|er)s)\.?$/i;

/** Said of a row in brackets, its value would count another way than ours. */
const OTHERWISE: Partial<Record<string, RegExp>> = {
  toe: /\bout\b|\btotal\b|\bboth\b|\baxle\b|neg/i,
  camber: /\bneg|\btop[ -]in\b|\binclined\b/i,
};
const OTHER_SIDE = /\bright\b|\brh\b/i;

const isLength = (unit: CellUnit | undefined): unit is LengthUnit => unit === 'mm' || unit === 'cm' || unit === 'in';
const lengthOf = (text: string): LengthUnit | undefined => {
  const unit = unitOfCell(text.trim().replace(/['’′]{2}$/, '"'));
  return isLength(unit) ? unit : undefined;
};
const only = <T>(some: Iterable<T>): T | undefined => {
  const all = new Set(some);
  return all.size === 1 ? [...all][0] : undefined;
};

interface Column extends PointHeading {
  at: number;
  heading: string;
}

/**
 * Reads a table of hard points or of driveway measurements, however its columns are ordered and its units written. Headings decide
 * which column is which axis; without any they are x, y, z and ±. A figure's unit is its own, else its row's, its column's, the
 * table's (one named over any of its columns, in the caption, or in all cells that name one), else mm; a ± goes with its row. A
 * unit that is not understood, or that two namings leave open, is a problem where it stands, never a default.
 *
 * @param language decides what `1,500` is: nobody can be asked
 */
export function readPointSheet(sheet: PointSheet, language: string): ReturnType<typeof readPointRows> {
  const { rows, merged = [], caption = '' } = sheet;
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const cell = (r: number, c: number) => rows[r]![c]?.trim() ?? '';
  const nameAt = nameColumn(rows, width);
  const isHead = (r: number) =>
    knownName(cell(r, nameAt)) === undefined && !rows[r]!.some((text, c) => c !== nameAt && FIGURE.test(text.trim()));
  const first = rows.findIndex((_, r) => !isHead(r));
  const top = first < 0 ? rows.length : first;
  const data = rows.flatMap((_, r) => (r >= top ? [r] : []));
  const headings = Array.from({ length: width }, (_, c) => {
    const heads = Array.from({ length: top }, (_row, r) => r);
    const isMerged = (r: number) => (merged[r]?.[c] ?? '') !== '';
    return {
      own: heads.flatMap((r) => (isMerged(r) ? [] : cell(r, c) || [])).join(' '),
      group: heads.flatMap((r) => merged[r]?.[c] || []).join(' '),
    };
  });

  const problems: Problem[] = [];
  if (!rows.some((row) => knownName(row[nameAt] ?? ''))) {
    // A table of something else, or of nothing: its headings say nothing about points.
    const strange = data.flatMap((r): PointRow[] => {
      const [name = '', ...cells] = rows[r]!.map((text) => text.trim()).filter((text) => text !== '');
      return name ? [{ name, cells }] : [];
    });
    if (strange.length === 0) problems.push({ code: 'missing', path: 'table', value: undefined });
    return { given: { points: {} }, problems: [...problems, ...readPointRows(strange, METRIC, [], language).problems] };
  }
  const columns = columnsOf(
    headings,
    nameAt,
    (c) => data.map((r) => cell(r, c)).filter((text) => text !== ''),
    problems,
  );
  const nothing = { given: { points: {} }, problems };
  const over = headings[nameAt];
  const said = unitsInProse(`${over?.own ?? ''} ${over?.group ?? ''}`);
  const prose = said.units.length > 0 || said.foreign ? said : unitsInProse(caption);
  const coordinates = columns.filter(({ slot }) => slot !== 'plusMinus' && slot !== 'unit' && slot !== 'note');
  const named = new Set(coordinates.flatMap(({ units }) => units));
  if (prose.foreign && named.size === 0) {
    problems.push({
      code: 'wrong-unit',
      path: said.foreign ? `Heading “${over!.own}”` : 'Caption',
      value: prose.foreign,
    });
  }
  if (problems.length > 0) return nothing;

  const inCells = new Set(data.flatMap((r) => coordinates.flatMap(({ at }) => lengthOf(cell(r, at)) ?? [])));
  const fallback = only(named) ?? (named.size > 1 ? undefined : (only(prose.units) ?? only(inCells)));
  const isOpen = named.size > 1 || (fallback === undefined && (prose.units.length > 1 || inCells.size > 1));
  const table: LengthUnit | undefined = fallback ?? (isOpen ? undefined : 'mm');
  const missing = (of: string): Problem => ({ code: 'missing', path: `Unit of “${of}”`, value: undefined });
  if (named.size > 1) {
    const figures = (at: number) => data.some((r) => FIGURE.test(cell(r, at)) && lengthOf(cell(r, at)) === undefined);
    const bare = columns.filter(
      ({ slot, units, at }) => slot !== 'unit' && slot !== 'note' && units.length === 0 && figures(at),
    );
    problems.push(...bare.map(({ heading, at }) => missing(heading || String(at + 1))));
    if (problems.length > 0) return nothing;
  }

  const found: PointRow[] = [];
  for (const r of data) {
    const row = rowOf(
      (c) => cell(r, c),
      nameAt,
      columns,
      table,
      headings.some(({ own }) => own !== ''),
    );
    if (!row) continue;
    if ('code' in row) problems.push(row);
    else found.push(row);
  }
  const read = readPointRows(found, METRIC, [], language);
  return { given: read.given, problems: [...problems, ...read.problems] };
}

/** The column whose cells name most rows. */
function nameColumn(rows: PointSheet['rows'], width: number): number {
  const counts = Array.from({ length: width }, (_, c) => rows.filter((row) => knownName(row[c] ?? '')).length);
  return Math.max(0, counts.indexOf(Math.max(0, ...counts)));
}

/** A row's name, with what is said behind a comma of its unit left aside. */
const bareName = (text: string): string => (rowKey(text) ? text : text.trim().replace(UNIT_BEHIND, ''));
const knownName = (text: string): string | undefined => rowKey(bareName(text));

/** What each column holds; what is wrong with their headings is told. */
function columnsOf(
  headings: readonly { own: string; group: string }[],
  nameAt: number,
  cellsOf: (column: number) => string[],
  problems: Problem[],
): Column[] {
  const others = headings.flatMap((heading, at) => (at === nameAt ? [] : [{ ...heading, at }]));
  const areUnits = others.length > 2 && others.every(({ own }) => own === '' || isUnitAlone(own));
  if (areUnits || others.every(({ own }) => own === '')) {
    const slots: Slot[] = ['x', 'y', 'z', 'plusMinus'];
    return others.map(({ own, at, group }, i): Column => {
      const { units } = readPointHeading(own, group);
      const slot = slots[i];
      return { at, heading: group, ...(slot && { slot }), units, isTurned: false };
    });
  }
  const columns: Column[] = [];
  for (const { own, group, at } of others) {
    const cells = cellsOf(at);
    const heading: Column = { at, heading: own, ...readPointHeading(own, group) };
    if (own === '' && cells.length > 0 && cells.every((text) => text.startsWith('±'))) heading.slot = 'plusMinus';
    const { slot, units, foreign, isTurned } = heading;
    const path = `Heading “${own || at + 1}”`;
    const same = columns.find((one) => one.slot === slot);
    if (!slot) {
      if (cells.length > 0) problems.push({ code: 'wrong-shape', path, value: own || cells[0] });
    } else if (same && slot !== 'note') {
      problems.push({ code: 'wrong-shape', path, value: own, other: `Heading “${same.heading}”` });
    } else if (foreign) problems.push({ code: 'wrong-unit', path, value: foreign });
    else if (units.length > 1) problems.push({ code: 'wrong-unit', path, value: units.join(', ') });
    else if (isTurned) problems.push({ code: 'wrong-shape', path, value: own });
    else columns.push(heading);
  }
  return columns;
}

/** One row with its cells in order and the unit of each; a problem where its name says that it counts otherwise; nothing for a line of words. */
function rowOf(
  cell: (column: number) => string,
  nameAt: number,
  columns: readonly Column[],
  table: LengthUnit | undefined,
  hasHeadings: boolean,
): PointRow | Problem | undefined {
  const whole = cell(nameAt);
  const name = bareName(whole);
  const key = rowKey(name);
  const filled = columns.filter(({ at, slot }) => slot !== 'note' && cell(at) !== '');
  if (!key) return filled.length > 0 ? { name: whole, cells: filled.map(({ at }) => cell(at)) } : undefined;
  const inBrackets = [...whole.matchAll(BRACKETS)].map(([, text]) => text!).join(' ');
  if (OTHER_SIDE.test(inBrackets) || OTHERWISE[key]?.test(inBrackets)) {
    return { code: 'wrong-shape', path: whole, value: `(${inBrackets})` };
  }
  const of = (slot: Slot) => columns.find((column) => column.slot === slot);
  const isAngle = key === 'camber' || key === 'toe' || isDrivewayAngle(key as 'camber');
  const unitAt = of('unit');
  const written = [unitAt ? cell(unitAt.at) : '', name === whole ? bracketUnit(whole, key) : whole.slice(name.length)];
  let own: CellUnit | undefined;
  for (const text of written.filter((one) => one.replace(/^,\s*/, '') !== '')) {
    own = unitOfRow(text, isAngle);
    if (!own) return { code: 'wrong-unit', path: whole, value: text };
  }
  const isPoint = key === 'wheelCentre' || key.includes('.');
  const values = isPoint
    ? AXES.map(of)
    : columns.filter(({ slot, at }) => slot !== 'note' && slot !== 'unit' && slot !== 'plusMinus' && cell(at) !== '');
  const doubt = of('plusMinus');
  if (isPoint && columns.some(({ slot, at }) => (slot === 'value' || slot === undefined) && cell(at) !== '')) {
    return { code: 'wrong-shape', path: key, value: filled.map(({ at }) => cell(at)).join(' ') };
  }
  // Without headings a second figure is the ±.
  const used = isPoint || hasHeadings ? [...values, doubt] : values.length > 1 ? values : [...values, doubt];
  const texts = used.map((column) => (column ? cell(column.at) : ''));
  const beside = only(texts.slice(0, isPoint ? 3 : 1).flatMap((text) => lengthOf(text) ?? []));
  const units = used.map((column, i): CellUnit | undefined => {
    if (isAngle)
      return own ?? (i > 0 && /['’′]$/.test(texts[0]!) && !/[°º]/.test(texts[0]!) ? 'arcminutes' : undefined);
    return own ?? column?.units[0] ?? beside ?? table;
  });
  const bare = texts.findIndex((text, i) => FIGURE.test(text) && !isAngle && !lengthOf(text) && units[i] === undefined);
  if (bare >= 0) return { code: 'missing', path: `Unit of “${whole}”`, value: undefined };
  return { name, cells: texts, units };
}

/** What a name says of its unit in brackets; words that are none, `(centre)`, say nothing. Toe (in) is toe-in. */
function bracketUnit(name: string, key: string): string {
  for (const [, text] of name.matchAll(BRACKETS)) {
    const { units, foreign } = unitsInProse(`(${text})`);
    if ((units.length > 0 && !(key === 'toe' && text!.trim().toLowerCase() === 'in')) || foreign) return text!;
    if (/^(?:[°º]|deg(?:rees?)?|['’′]|arc ?min(?:utes?)?|min(?:utes?)?|ft|feet)\.?$/i.test(text!.trim())) return text!;
  }
  return '';
}

/** The unit that a text of its own names; undefined where it is none of the row's kind. */
function unitOfRow(text: string, isAngle: boolean): CellUnit | undefined {
  if (isAngle) {
    if (/^\W*(?:arc ?)?min(?:utes?)?\W*$|^\W*arc ?min\W*$|^\s*['’′]\s*$/i.test(text)) return 'arcminutes';
    return /[°º]|\bdeg(?:rees?)?\b/i.test(text) ? 'degrees' : undefined;
  }
  const { units } = unitsInProse(`(${text.replace(/^,\s*(?:in\s+(?=\S))?/, '').trim()})`);
  return only(units);
}
