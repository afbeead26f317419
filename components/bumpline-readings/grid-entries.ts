import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { meantBy } from './far-off.js';
import {
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
import { cellLabel, columnName, heightText } from './reading-grid.labels.js';
import type { ReadingsHost } from './readings-host.js';

/** The row that is not there yet. */
export const NEW = 'new';
/** The column of the heights. */
export const HEIGHT = -1;
export interface Place {
  row: number | typeof NEW;
  column: number;
}

export const keyOf = ({ row, column }: Place): string => `${row} ${column}`;
export const placeOf = (key: string): Place => {
  const [row, column] = key.split(' ');
  return { row: row === NEW ? NEW : Number(row), column: Number(column) };
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
  readonly texts = new Map<string, string>();
  readonly problems = new Map<string, Problem>();
  readonly farOff = new Map<string, FarOff>();

  constructor(app: ReadingsHost) {
    this.#app = app;
  }

  /** The grid of the user's own set; while another's is shown, an empty one. */
  get grid(): Grid {
    const { setup, isOwn } = this.#app;
    return gridOf(isOwn ? setup : { ...setup, readings: [] }, this.#empty);
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

  type(place: Place, text: string): void {
    this.texts.set(keyOf(place), text);
    this.problems.delete(keyOf(place));
  }

  forget(place: Place): void {
    this.texts.delete(keyOf(place));
    this.problems.delete(keyOf(place));
  }

  /** A cell is left: what can be read counts from now on, what cannot stays as it is and is told. */
  leave(place: Place): void {
    const text = this.texts.get(keyOf(place));
    if (text === undefined) return;
    const { setup, reading } = this.#app;
    const isHeight = place.column === HEIGHT;
    // A sign alone was put there by us.
    if (/^\s*[-−–+]?\s*$/.test(text)) {
      this.forget(place);
      if (text.trim() === '' && place.row !== NEW && !isHeight) this.take(place, undefined);
      return;
    }
    const parsed = parseQuantity(text, isHeight ? 'travel' : setup.quantity, reading.units, keyOf(place));
    if (parsed.ok) this.take(place, parsed.value);
    else this.problems.set(keyOf(place), parsed.problem);
  }

  /** @param value undefined takes the reading out */
  take(place: Place, value: number | undefined): void {
    const { rows, columns } = this.grid;
    if (place.column === HEIGHT) {
      this.forget(place);
      if (value !== undefined) this.#takeHeight(place.row, value);
      return;
    }
    // A height that cannot be read is told first: its reading has nowhere to go.
    if (place.row === NEW && this.problems.has(keyOf({ row: NEW, column: HEIGHT }))) return;
    this.forget(place);
    const column = columns[place.column]!;
    const travel = place.row === NEW ? this.height(column) : rows[place.row]!.travel;
    if (place.row === NEW) this.#height = undefined;
    this.set(travel, column, value);
  }

  #takeHeight(row: Place['row'], travel: number): void {
    if (row === NEW) {
      this.#height = travel;
      return;
    }
    const from = this.grid.rows[row]!.travel;
    if (from !== travel)
      this.#app.edit(heightText(from, this.#app.reading), (setup) => withHeight(setup, from, travel));
  }

  set(travel: number, column: GridColumn, value: number | undefined): void {
    const { setup, isOwn, reading } = this.#app;
    const others = isOwn
      ? setup.readings.filter((one) => one.travel !== travel || (one.pass ?? '') !== column.pass)
      : [];
    this.#app.edit(cellLabel(column, travel, reading), (edited) => withReading(edited, travel, column, value));
    const key = `${travel} ${columnName(column)}`;
    const meant = value === undefined ? undefined : meantBy(value, travel, others);
    if (value === undefined || meant === undefined) this.farOff.delete(key);
    else this.farOff.set(key, { travel, column, value, meant });
  }

  addColumn(): { column: GridColumn; isBack: boolean } {
    const column = nextColumn(this.grid);
    this.#empty.push(column);
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
    this.#app.edit(heightText(travel, this.#app.reading), (setup) =>
      without(setup, (reading) => reading.travel === travel),
    );
  }
}
