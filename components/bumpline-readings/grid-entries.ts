import type { Setup } from '../../core/document/setup.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { type Pair, toeOfPair } from '../../core/readings/over-base.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { meantBy } from './far-off.js';
import {
  firstHeight,
  type Grid,
  type GridColumn,
  gridOf,
  isSameColumn,
  nextColumn,
  nextHeight,
  withColumn,
  withHeight,
  without,
  withReading,
} from './grid-model.js';
import { HowRead } from './how-read.js';
import { isAngleText, readPair } from './pair-text.js';
import { againLabel, cellLabel, columnName, heightText } from './reading-grid.labels.js';

/** The row that is not there yet. */
export const NEW = 'new';
/** The row of each pass's first height, read again at its end. */
export const AGAIN = 'again';
/** The column of the heights. */
export const HEIGHT = -1;
export interface CellRef {
  row: number | typeof NEW | typeof AGAIN;
  column: number;
}

export const keyOf = ({ row, column }: CellRef): string => `${row} ${column}`;
export const cellRefOf = (key: string): CellRef => {
  const [row, column] = key.split(' ');
  return { row: row === NEW || row === AGAIN ? row : Number(row), column: Number(column) };
};

/** A value that lies far off its neighbours and was not said to be right. */
export interface FarOff {
  travel: number;
  column: GridColumn;
  value: number;
  meant: number;
}

const FIRST_COLUMN: GridColumn = { pass: 'Pass 1', going: 'up' };

/** What is typed into the grid's cells: texts on their way to readings, what is wrong with them, and passes still empty. */
export class GridEntries {
  #app: ReadingsHost;
  #empty: GridColumn[] = [FIRST_COLUMN];
  /** Of the height that is not there yet. */
  #height: number | undefined;
  /** Heights of what cannot be read yet in the row that is not there yet: it stays at its own. */
  #bound = new Map<string, number>();
  /** Which of its two readings a figure was said to be, by how figures like it are written: it is asked once. */
  #meant = new Map<string, number>();
  readonly texts = new Map<string, string>();
  readonly problems = new Map<string, Problem>();
  readonly farOff = new Map<string, FarOff>();

  readonly howRead: HowRead;

  constructor(app: ReadingsHost) {
    this.#app = app;
    this.howRead = new HowRead(app, () => this.#settlePairs());
  }

  /** The grid of the user's own set; while another's is shown, an empty one. */
  get grid(): Grid {
    const { setup, isOwn } = this.#app;
    // Once a pass was added the columns keep their order, whichever gets its first reading first.
    const isAdded = this.#empty.length > 1;
    // A sheet that was pasted has its own passes: no empty one of ours stands beside them.
    const empty = isOwn && setup.readings.length > 0 && !isAdded ? [] : this.#empty;
    return gridOf(isOwn ? setup : { ...setup, readings: [] }, empty, isAdded);
  }

  /** Where the next reading of a pass goes that has no row yet, mm. */
  height(column: GridColumn | undefined): number {
    return this.#height ?? nextHeight(this.grid, column);
  }

  /** The last reading in a column, or anywhere: its sign is kept. */
  lastValue(column: number): number {
    const { isOwn, setup } = this.#app;
    if (!isOwn) return 0;
    const own = this.grid.rows.flatMap(({ cells }) => {
      const { [column]: index } = cells;
      return index === undefined ? [] : [setup.readings[index]!.value];
    });
    return own.at(-1) ?? setup.readings.at(-1)?.value ?? 0;
  }

  type(cell: CellRef, text: string): void {
    this.texts.set(keyOf(cell), text);
    this.problems.delete(keyOf(cell));
    this.#bound.delete(keyOf(cell));
  }

  forget(cell: CellRef): void {
    this.texts.delete(keyOf(cell));
    this.problems.delete(keyOf(cell));
    this.#bound.delete(keyOf(cell));
  }

  /** A cell is left: what can be read counts from now on, what cannot stays as it is and is told. */
  leave(cell: CellRef): void {
    const text = this.texts.get(keyOf(cell));
    if (text === undefined) return;
    const { setup, display, isOwn } = this.#app;
    const isHeight = cell.column === HEIGHT;
    // A sign alone was put there by us.
    if (/^\s*[-−–+]?\s*$/.test(text)) {
      this.forget(cell);
      if (text.trim() === '' && cell.row !== NEW && !isHeight) this.take(cell, undefined);
      return;
    }
    if (!isHeight && this.howRead.isPair && !isAngleText(text)) {
      this.#leavePair(cell, text);
      return;
    }
    const parsed = parseQuantity(text, isHeight ? 'travel' : setup.quantity, display.units, keyOf(cell));
    if (parsed.ok) {
      this.take(cell, parsed.value);
      return;
    }
    const { code, choices = [] } = parsed.problem;
    // Beside readings that stand there in decimals nobody writes minutes without their mark: asked once, not at every last zero.
    const isDecimal = display.units.angle === 'degrees' && isOwn && setup.readings.length > 0;
    const meant = this.#meant.get(this.#formOf(text)) ?? (isDecimal ? 0 : -1);
    if (code === 'ambiguous' && !isHeight && choices[meant] !== undefined) {
      this.take(cell, choices[meant]);
      return;
    }
    this.#tell(cell, parsed.problem);
  }

  /** What is wrong in a cell; its text stays, at its own height. */
  #tell(cell: CellRef, problem: Problem): void {
    this.problems.set(keyOf(cell), problem);
    const isNew = cell.row === NEW && cell.column !== HEIGHT && !this.#bound.has(keyOf(cell));
    if (isNew) this.#bound.set(keyOf(cell), this.height(this.grid.columns[cell.column]));
  }

  /** Both figures of a reading. Before it is said how they make toe they wait. */
  #leavePair(cell: CellRef, text: string): void {
    const { over } = this.howRead;
    const read = readPair(text, this.#app.display.units, keyOf(cell));
    if (!read.ok) this.#tell(cell, read.problem);
    else if (!over) this.#tell(cell, { code: 'missing', path: 'overBase', value: text });
    else this.take(cell, toeOfPair(read.pair, over), read.pair);
  }

  /** What waited for it is read as soon as it is said how. */
  #settlePairs(): void {
    const waiting = [...this.problems].flatMap(([key, { path }]) => (path === 'overBase' ? [key] : []));
    if (this.howRead.over || !this.howRead.isPair) for (const key of waiting) this.leave(cellRefOf(key));
    this.#app.host.requestUpdate();
  }

  /** Whole numbers and those with decimals are written by different habits. */
  #formOf(text: string): string {
    return `${this.#app.display.units.angle} ${/[.,]/.test(text)}`;
  }

  /** One of the readings of a text that has two. */
  choose(cell: CellRef, value: number): void {
    const key = keyOf(cell);
    const index = this.problems.get(key)?.choices?.indexOf(value) ?? -1;
    if (index >= 0 && cell.column !== HEIGHT) this.#meant.set(this.#formOf(this.texts.get(key) ?? ''), index);
    this.take(cell, value);
  }

  /** @param value undefined takes the reading out */
  take(cell: CellRef, value: number | undefined, pair?: Pair): void {
    const { rows, columns } = this.grid;
    if (cell.column === HEIGHT) {
      this.forget(cell);
      if (value !== undefined) this.#takeHeight(cell.row, value);
      return;
    }
    // A height that cannot be read is told first: its reading has nowhere to go.
    if (cell.row === NEW && this.problems.has(keyOf({ row: NEW, column: HEIGHT }))) return;
    const bound = this.#bound.get(keyOf(cell));
    this.forget(cell);
    const column = columns[cell.column] as GridColumn;
    if (cell.row === AGAIN) {
      // A pass that has just been taken out is left as well.
      if (column) this.#takeAgain(cell.column, value, pair);
      return;
    }
    const travel = cell.row === NEW ? (bound ?? this.height(column)) : rows[cell.row]!.travel;
    if (cell.row === NEW && bound === undefined) this.#height = undefined;
    this.set(travel, column, value, pair);
    this.#settleBound();
  }

  /** The height at which a pass began, to be read again; that which was, where it was. */
  heightAgain(column: number): number | undefined {
    const { grid } = this;
    const index = grid.again[column];
    return index === undefined ? firstHeight(grid, column) : this.#app.setup.readings[index]!.travel;
  }

  #takeAgain(at: number, value: number | undefined, pair?: Pair): void {
    const travel = this.heightAgain(at);
    if (travel === undefined) return;
    const column = this.grid.columns[at]!;
    this.#app.edit(againLabel(column, travel, this.#app.display), (edited) =>
      withReading(this.#read(edited, pair), travel, column, value, true, pair),
    );
  }

  /** What waits for an answer goes into the row of its height as soon as there is one. */
  #settleBound(): void {
    const { rows } = this.grid;
    for (const [key, travel] of [...this.#bound]) {
      const row = rows.findIndex((one) => one.travel === travel);
      if (row < 0) continue;
      const cell = cellRefOf(key);
      const to = keyOf({ row, column: cell.column });
      const [text, problem] = [this.texts.get(key), this.problems.get(key)];
      this.forget(cell);
      if (text !== undefined) this.texts.set(to, text);
      if (problem) this.problems.set(to, { ...problem, path: to });
    }
  }

  /** The height that an open question belongs to, mm; undefined where it is that of its row. */
  boundTo(cell: CellRef): number | undefined {
    return this.#bound.get(keyOf(cell));
  }

  #takeHeight(row: CellRef['row'], travel: number): void {
    if (row === AGAIN) return;
    if (row === NEW) {
      this.#height = travel;
      return;
    }
    const from = this.grid.rows[row]!.travel;
    if (from !== travel)
      this.#app.edit(heightText(from, this.#app.display), (setup) => withHeight(setup, from, travel));
  }

  /** A set that begins with a pair says how it was read. */
  #read(setup: Setup, pair: Pair | undefined): Setup {
    const { over } = this.howRead;
    return pair && over && !setup.overBase ? { ...setup, overBase: over } : setup;
  }

  set(travel: number, column: GridColumn, value: number | undefined, pair?: Pair): void {
    const { setup, isOwn, display } = this.#app;
    const others = isOwn
      ? setup.readings.filter((one) => one.travel !== travel || (one.pass ?? '') !== column.pass)
      : [];
    this.#app.edit(cellLabel(column, travel, display), (edited) =>
      withReading(this.#read(edited, pair), travel, column, value, false, pair),
    );
    const key = `${travel} ${columnName(column)}`;
    // A slip of one figure of two has no one other reading.
    const meant = value === undefined || pair ? undefined : meantBy(value, travel, others);
    if (value === undefined || meant === undefined) this.farOff.delete(key);
    else this.farOff.set(key, { travel, column, value, meant });
  }

  addColumn(): { column: GridColumn; isBack: boolean } {
    const { columns } = this.grid;
    const column = nextColumn(this.grid);
    this.#empty = [...columns, column];
    return { column, isBack: this.isBack(column) };
  }

  /** Whether a pass goes against the first one: up the side of the grid. */
  isBack({ going }: GridColumn): boolean {
    return going !== undefined && going !== this.grid.columns[0]?.going;
  }

  changeColumn(from: GridColumn, to: GridColumn): void {
    // A second column of the same pass and way would be the same column.
    if (this.grid.columns.some((one) => !isSameColumn(one, from) && isSameColumn(one, to))) return;
    this.#empty = this.#empty.map((one) => (isSameColumn(one, from) ? to : one));
    if (this.#app.isOwn) this.#app.edit(columnName(from), (setup) => withColumn(setup, from, to));
  }

  removeColumn(column: GridColumn): void {
    this.#empty = this.#empty.filter((one) => !isSameColumn(one, column));
    if (this.#app.isOwn) {
      this.#app.edit(columnName(column), (setup) =>
        without(setup, (reading) => isSameColumn({ pass: '', ...reading }, column)),
      );
    }
    if (this.grid.columns.length === 0) this.#empty.push(FIRST_COLUMN);
  }

  removeRow(travel: number): void {
    this.#app.edit(heightText(travel, this.#app.display), (setup) =>
      without(setup, (reading) => reading.travel === travel),
    );
  }
}
