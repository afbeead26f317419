import { type Block, blocksOf, type RowKind } from './blocks.js';
import { type CellKind, isLine, kindOf } from './cell-kind.js';
import { headingSays, isSection } from './heading.js';

export type { RowKind } from './blocks.js';

/** The sheet with its rows told apart and all of one length. */
export interface Sheet {
  width: number;
  texts: string[][];
  kinds: CellKind[][];
  rows: RowKind[];
  /** By column: its own cells in the heading rows, and what a cell to its left heads together with it. */
  headings: { own: string; group: string }[];
  /** Rows of figures that stand together. */
  blocks: Block[];
  /** The words of all heading rows. */
  title: string;
}

const filled = (kinds: readonly CellKind[]) => kinds.flatMap((kind, i) => (kind === 'empty' ? [] : [i]));

/** @param pasted row by row; shorter rows are filled up with empty cells */
export function tableRows(pasted: readonly (readonly string[])[]): Sheet {
  const width = pasted.reduce((most, row) => Math.max(most, row.length), 0);
  const texts = pasted.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ''));
  const kinds = texts.map((row) => row.map(kindOf));
  const isNumeric = Array.from({ length: width }, (_, column) => {
    const count = (kind: CellKind) => kinds.filter((row) => row[column] === kind).length;
    return count('number') > 0 && count('number') >= count('word');
  });
  /** Words over columns of figures; with figures beside them only where these number the passes: Travel, 1, 2 down, 3. */
  const isHeading = (row: number) => {
    const at = filled(kinds[row]!);
    const words = at.filter((i) => kinds[row]![i] === 'word');
    if (words.length === 0) return false;
    const figures = at.filter((i) => kinds[row]![i] === 'number');
    if (figures.length === 0) return true;
    return (
      words.some((i) => isNumeric[i]) &&
      figures.every((i) => /^\s*(?:\d{1,2}|\d{1,3}\s*[\p{L}↑↓].*)$/u.test(texts[row]![i]!))
    );
  };
  /** 1, 2, 3, 1, 2, 3 below the names of sets, with nothing over the heights: the numbers of passes. */
  const isNumbering = (row: number) => {
    const at = filled(kinds[row]!);
    const figures = at.map((i) => Number(texts[row]![i]));
    return (
      kinds[row]![0] === 'empty' &&
      at.length > 1 &&
      figures.every((figure, i) => figure === 1 || figure === figures[i - 1]! + 1)
    );
  };
  let isTop = true;
  let hasHeading = false;
  const words = new Set<string>();
  const rows = kinds.map((row, r): RowKind => {
    const at = filled(row);
    if (at.length === 0) return 'empty';
    const key = at.map((i) => texts[r]![i]).join('\n');
    if (isLine(row) && isSection(texts[r]![0]!)) return 'section';
    if (isTop && (isHeading(r) || (hasHeading && isNumbering(r)))) {
      hasHeading = true;
      words.add(key);
      return 'heading';
    }
    // A heading again, as on the next page of a print.
    if (words.has(key)) return 'heading';
    if (!row.includes('number')) return 'words';
    isTop = false;
    return 'data';
  });
  const blocks = blocksOf(texts, kinds, rows);
  return { width, texts, kinds, rows, blocks, ...headingsOf(texts, kinds, rows, isNumeric) };
}

function headingsOf(texts: string[][], kinds: CellKind[][], rows: RowKind[], isNumeric: readonly boolean[]) {
  const width = isNumeric.length;
  const first = rows.indexOf('data');
  const top = rows.flatMap((kind, r) => (kind === 'heading' && (first < 0 || r < first) ? [r] : []));
  const last = top.at(-1);
  const headings = Array.from({ length: width }, () => ({ own: '', group: '' }));
  for (const r of top) {
    const at = filled(kinds[r]!);
    // A title over the whole sheet says nothing about the first column.
    if (at.length === 1 && at[0] === 0 && width > 1) continue;
    let group = '';
    for (const [i, heading] of headings.entries()) {
      const text = texts[r]![i]!.trim();
      if (at.includes(i)) {
        heading.own = `${heading.own} ${text}`.trim();
        // What heads the heights heads nothing beside them.
        group = i > 0 || !headingSays(text, '', 'camber').role ? text : '';
      } else if (r !== last) heading.group = `${heading.group} ${group}`.trim();
      // One name over the figures of several passes, in merged cells.
      else if (heading.own === '' && isNumeric[i]) heading.group = `${heading.group} ${group}`.trim();
    }
  }
  return { headings, title: top.flatMap((r) => texts[r]!).join(' ') };
}
