import type { Column } from './columns.js';
import { besidesPlace, isSection } from './heading.js';
import type { Label } from './labels.js';
import type { Sheet } from './table-rows.js';
import type { ValueColumn } from './value-columns.js';

/** Readings that share all words that are said of them: a column, a block of rows, the rows of one name. */
export interface Strand {
  /** All that is said of them. */
  text: string;
  label: Label;
  /** Indexes into what was taken. */
  taken: number[];
  column: number;
  /** Index of the block of rows it begins in. */
  block: number;
  /** A further sweep that nothing parts from the rows before it. */
  isSweep: boolean;
  /** Its words stand in cells of their own, row by row, and may be missing. */
  isCalled: boolean;
}

const NO_LABEL: Label = { set: '', stem: '', isPass: false };

/** `Pass 1` holds for the lines `up` and `down` below it, `Stock joints` for the passes below. */
interface Section {
  row: number;
  text: string;
  kind: 'parts' | 'pass' | 'going';
}

/** Tells the strands of a sheet apart while its rows are gone through. */
export class Strands {
  readonly #sheet: Sheet;
  readonly #columns: readonly Column[];
  readonly #byKey = new Map<string, Strand>();
  readonly #blockOf = new Map<number, number>();
  #sections: Section[] = [];
  #row = -1;
  sections: readonly number[] = [];

  constructor(sheet: Sheet, columns: readonly Column[]) {
    this.#sheet = sheet;
    this.#columns = columns;
    let block = 0;
    for (const [i, { rows, isAgain, headings }] of sheet.blocks.entries()) {
      // Rows that only go on further down are of the same pass.
      if (isAgain || headings !== undefined) block = i;
      for (const r of rows) this.#blockOf.set(r, block);
    }
  }

  /** Block by block, and in each from left to right: a column whose first height was not read is no later one for it. */
  get all(): Strand[] {
    return [...this.#byKey.values()].sort((a, b) => a.block - b.block || a.column - b.column);
  }

  /** A line that says what stands below. */
  enter(row: number): void {
    const text = this.#sheet.texts[row]![0]!.trim();
    const isPass = isSection(text);
    const isGoing = isPass && !/pass|run|sweep|series/i.test(text);
    const kind = isGoing ? 'going' : isPass ? 'pass' : 'parts';
    const order = ['parts', 'pass', 'going'] as const;
    // Two lines of names right below one another: of the second the first is the headline.
    const isHeadline = kind === 'parts' && this.#row === row - 1 && this.#sections.at(-1)?.kind === 'parts';
    if (!isHeadline) {
      this.#sections = this.#sections.filter((one) => order.indexOf(one.kind) < order.indexOf(kind));
    }
    this.#sections.push({ row, text, kind });
    this.#row = row;
    this.sections = this.#sections.map((one) => one.row);
  }

  /** @param names what cells of the row, or merged ones above, call it */
  of(row: number, { value, rear }: ValueColumn, names: readonly string[]): Strand {
    const block = this.#blockOf.get(row)!;
    const named = names.filter((name) => name !== '');
    const key = JSON.stringify([this.sections, named.length > 0 ? named : block, value]);
    let strand = this.#byKey.get(key);
    if (!strand) {
      const words = this.#wordsOf(block, value);
      const own = rear === undefined ? words : besidesPlace(words);
      const text = [...this.#sections.map((one) => one.text), ...named, own].filter(Boolean).join('; ');
      const isSweep = named.length === 0 && this.#sheet.blocks[block]!.isSweep === true;
      strand = { text, label: NO_LABEL, taken: [], column: value, block, isSweep, isCalled: names.length > 0 };
      this.#byKey.set(key, strand);
    }
    return strand;
  }

  /** What heads a column above a block: headings of its own, where it has some. */
  #wordsOf(block: number, column: number): string {
    const { blocks, texts } = this.#sheet;
    const headings = blocks.slice(0, block + 1).findLast((one) => one.headings !== undefined)?.headings;
    return (headings === undefined ? '' : texts[headings]![column]!.trim()) || this.#columns[column]!.words;
  }
}
