import { type CellKind, isLine, roughNumber } from './cell-kind.js';

/** What a row of the sheet is. */
export type RowKind =
  | 'heading'
  /** A line of its own that names the parts, the pass or the direction of the rows below it. */
  | 'section'
  /** Words without a figure that are neither. */
  | 'words'
  | 'empty'
  | 'data';

/** Rows of figures that stand together, and what stands above them. */
export interface Block {
  rows: number[];
  /** Rows of the lines of words right above. */
  lines: number[];
  /** Row of headings that differ from those of the sheet, by which its columns are called. */
  headings?: number;
  /** It goes over the heights of blocks before it once more: another pass, or other parts. */
  isAgain: boolean;
  /** Nothing stands between it and the block before but that the heights begin again: a further sweep, which may be another pass. */
  isSweep?: boolean;
}

/** So much of a block's heights lie among those before. */
const AGAIN = 0.5;

/**
 * Tells blocks of rows apart, and makes lines of words above them sections (in `rows`) where the heights begin again below: a remark
 * between two readings of one pass is none.
 */
export function blocksOf(texts: readonly string[][], kinds: readonly CellKind[][], rows: RowKind[]): Block[] {
  const blocks: Block[] = [];
  let lines: number[] = [];
  let headings: number | undefined;
  let isParted = true;
  const topText = new Set<string>();
  for (const [r, kind] of rows.entries()) {
    if (kind === 'data') {
      if (isParted) blocks.push({ rows: [], lines, isAgain: false, ...(headings !== undefined && { headings }) });
      blocks.at(-1)!.rows.push(r);
      [lines, headings, isParted] = [[], undefined, false];
      continue;
    }
    isParted = true;
    const text = texts[r]!.join('\n');
    if (kind === 'empty') continue;
    if (isLine(kinds[r]!)) lines.push(r);
    // Headings with other words than those above all.
    else if (kind === 'words' && blocks.length > 0 && !topText.has(text)) headings = r;
    else topText.add(text);
  }
  for (const block of [...blocks]) splitRestarts(blocks, block, texts, kinds);
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const block of blocks) {
    const heights = heightsOf(block, texts, kinds);
    const inside = heights.filter((height) => height >= low && height <= high).length;
    block.isAgain = inside >= Math.max(2, AGAIN * heights.length);
    for (const height of heights) [low, high] = [Math.min(low, height), Math.max(high, height)];
  }
  const isAny = blocks.some(({ isAgain, lines: above }) => isAgain && above.some((r) => rows[r] === 'words'));
  for (const [i, { lines: above, isAgain }] of blocks.entries()) {
    const open = above.filter((r) => rows[r] !== 'section');
    // A title stands further up than the name of the first parts.
    if (isAgain) for (const r of open) rows[r] = 'section';
    else if (i === 0 && isAny && open.length > 0) rows[open.at(-1)!] = 'section';
  }
  return blocks;
}

/** A step back over this much of the range, and on the same way as before, begins a new sweep. */
const RESTART = 0.75;

/** Parts a block where its heights begin again with nothing between. */
function splitRestarts(blocks: Block[], block: Block, texts: readonly string[][], kinds: readonly CellKind[][]): void {
  const heights = heightsOf(block, texts, kinds);
  // Where a height is missing, rows and heights are not in step.
  if (heights.length !== block.rows.length || heights.length < 6) return;
  const range = Math.max(...heights) - Math.min(...heights);
  const steps = heights.slice(1).map((height, i) => height - heights[i]!);
  const cuts = steps.flatMap((step, i) => (Math.abs(step) >= RESTART * range ? [i + 1] : []));
  const parts = [0, ...cuts].map((from, i) => block.rows.slice(from, cuts[i]));
  // One way all along but for the steps back: a list in no order begins nothing again.
  const ways = new Set(steps.map((step, i) => Math.sign(step) * (cuts.includes(i + 1) ? -1 : 1)));
  if (cuts.length === 0 || ways.size > 1 || parts.some(({ length }) => length < 3)) return;
  block.rows = parts[0]!;
  const at = blocks.indexOf(block) + 1;
  blocks.splice(at, 0, ...parts.slice(1).map((rows): Block => ({ rows, lines: [], isAgain: false, isSweep: true })));
}

/** Of the first column of figures that differ from row to row. */
function heightsOf({ rows }: Block, texts: readonly string[][], kinds: readonly CellKind[][]): number[] {
  const width = kinds[rows[0]!]!.length;
  for (let c = 0; c < width; c++) {
    const figures = rows.flatMap((r) => (kinds[r]![c] === 'number' ? [roughNumber(texts[r]![c]!)] : []));
    const isNumbered = figures.length > 2 && c < width - 2 && figures.every((figure, i) => figure === figures[0]! + i);
    if (figures.length >= rows.length / 2 && new Set(figures).size > figures.length / 2 && !isNumbered) return figures;
  }
  return [];
}
