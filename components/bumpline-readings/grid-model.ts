import type { Setup } from '../../core/document/setup.js';
import type { Pair } from '../../core/readings/over-base.js';
import type { Reading } from '../../core/readings/reading.js';

/** A column of the grid: a pass, and its way where it was told. A pass that went both ways has two. */
export interface GridColumn {
  pass: string;
  going?: 'up' | 'down';
}

export interface GridRow {
  /** mm. */
  travel: number;
  /** By column: index into the setup's readings, of the first there; undefined where nothing was read. */
  cells: (number | undefined)[];
}

export interface Grid {
  columns: GridColumn[];
  /** In the order in which the heights were first read. */
  rows: GridRow[];
  /** By column: index of the reading of its first height at the end of the pass; undefined where that was not read again. */
  again: (number | undefined)[];
}

/** Whether a reading or a column belongs to a column. */
export const isSameColumn = (
  { pass = '', going }: Pick<Reading, 'pass' | 'going'>,
  column: Pick<GridColumn, 'pass' | 'going'>,
): boolean => pass === column.pass && going === column.going;

/**
 * The readings as rows of heights by columns of passes, with the columns that have no reading yet.
 *
 * @param isOrdered the given columns come first, in their order; else in that of the readings
 */
export function gridOf({ readings }: Setup, empty: readonly GridColumn[], isOrdered = false): Grid {
  const columns: GridColumn[] = isOrdered ? [...empty] : [];
  const rows: GridRow[] = [];
  const again: (number | undefined)[] = [];
  const columnOf = (reading: Reading): number => {
    const found = columns.findIndex((column) => isSameColumn(reading, column));
    if (found >= 0) return found;
    const { pass = '', going } = reading;
    return columns.push({ pass, ...(going && { going }) }) - 1;
  };
  readings.forEach((reading, index) => {
    const column = columnOf(reading);
    if (reading.again) {
      again[column] ??= index;
      return;
    }
    let row = rows.find(({ travel }) => travel === reading.travel);
    if (!row) {
      row = { travel: reading.travel, cells: [] };
      rows.push(row);
    }
    row.cells[column] ??= index;
  });
  for (const column of empty) {
    if (!columns.some((one) => isSameColumn(one, column))) columns.push(column);
  }
  return {
    columns,
    rows: rows.map((row) => ({ ...row, cells: columns.map((_, i) => row.cells[i]) })),
    again: columns.map((_, i) => again[i]),
  };
}

/**
 * The setup with one reading set, added or (undefined) taken out. Those set aside keep their mark.
 *
 * @param pair of toe over a base, the two figures that the value follows from
 * @param isAgain it is the first height of its pass, read again at the end: a pass has one such at most
 */
export function withReading(
  setup: Setup,
  travel: number,
  column: GridColumn,
  value: number | undefined,
  isAgain = false,
  pair?: Pair,
): Setup {
  const { readings, setAside = [], ...rest } = setup;
  const at = readings.findIndex(
    (reading) =>
      isSameColumn(reading, column) && (isAgain ? reading.again === true : !reading.again && reading.travel === travel),
  );
  if (at < 0) {
    if (value === undefined) return setup;
    const { pass, going } = column;
    const reading = {
      travel,
      value,
      ...(pass && { pass }),
      ...(going && { going }),
      ...(isAgain && { again: true as const }),
      ...(pair && { pair }),
    };
    return { ...setup, readings: [...readings, reading] };
  }
  if (value !== undefined) {
    const { pair: before, ...kept } = readings[at]!;
    if (kept.value === value && before?.join() === pair?.join()) return setup;
    const changed: Reading = { ...kept, value, ...(pair && { pair }) };
    return { ...setup, readings: readings.map((reading, index) => (index === at ? changed : reading)) };
  }
  return without(setup, (_, index) => index === at) ?? { ...rest, readings };
}

/** The setup without some of its readings. */
export function without(setup: Setup, isOut: (reading: Reading, index: number) => boolean): Setup {
  const { setAside = [], ...rest } = setup;
  const kept = setup.readings.map((_, index) => index).filter((index) => !isOut(setup.readings[index]!, index));
  const aside = kept.flatMap((index, i) => (setAside.includes(index) ? [i] : []));
  return {
    ...rest,
    readings: kept.map((index) => setup.readings[index]!),
    ...(aside.length > 0 && { setAside: aside }),
  };
}

/** The setup with one height written over: all readings of it move along. */
export const withHeight = (setup: Setup, from: number, to: number): Setup => ({
  ...setup,
  readings: setup.readings.map((reading) => (reading.travel === from ? { ...reading, travel: to } : reading)),
});

/** The setup with one pass named or directed otherwise. */
export const withColumn = (setup: Setup, from: GridColumn, { pass, going }: GridColumn): Setup => ({
  ...setup,
  readings: setup.readings.map((reading) => {
    if (!isSameColumn(reading, from)) return reading;
    const { pass: _, going: __, ...rest } = reading;
    return { ...rest, ...(pass && { pass }), ...(going && { going }) };
  }),
});

/** A pass that can be come back from. */
const FEWEST_OF_PASS = 3;

/**
 * The height at which a pass began, mm, to be read again at its end: the end of its range that its way begins at, unless its first
 * reading lies inside. Undefined where there is little to come back from, or where the pass went the other way as well and so came
 * back by itself.
 */
export function firstHeight({ columns, rows }: Grid, column: number): number | undefined {
  const { pass, going } = columns[column]!;
  if (columns.some((other, i) => i !== column && other.pass === pass)) return undefined;
  const read = rows.flatMap(({ travel, cells }) =>
    cells[column] === undefined ? [] : [{ travel, at: cells[column] }],
  );
  if (read.length < FEWEST_OF_PASS) return undefined;
  const travels = read.map(({ travel }) => travel);
  const [low, high] = [Math.min(...travels), Math.max(...travels)];
  // The rows are in the order of all passes; this one's readings are in its own.
  const first = read.reduce((one, other) => (other.at < one.at ? other : one)).travel;
  if (first > low && first < high) return first;
  return going === undefined ? first : going === 'up' ? low : high;
}

/** mm, where there are no two heights to go by: common practice, no source. */
const USUAL_STEP = 5;

/** The height that most likely comes next, mm: as far on as the last was from the one before. */
export function nextHeight({ rows }: Grid, column: GridColumn | undefined): number {
  const [before, last] = rows.slice(-2).map(({ travel }) => travel);
  if (before === undefined) return 0;
  if (last === undefined) return before + (column?.going === 'down' ? -USUAL_STEP : USUAL_STEP);
  return last + (last - before);
}

/** The name a further pass gets, and its way: the other one than the last's, for who goes up and down in turn. */
export function nextColumn({ columns }: Grid): GridColumn {
  const last = columns.at(-1);
  let number = columns.length + 1;
  while (columns.some(({ pass }) => pass === `Pass ${number}`)) number++;
  const going = last?.going && (last.going === 'up' ? 'down' : 'up');
  return { pass: `Pass ${number}`, ...(going && { going }) };
}
