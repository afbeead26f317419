import Papa from 'papaparse';
import { kindOf } from './cell-kind.js';
import { headingSays } from './heading.js';
import { pairRows } from './pairs.js';
import { upright } from './sideways.js';

/** Blanks part cells, but not a number from its fraction, its unit or a bracket. */
const BLANKS = /[ \u00a0\u202f]+(?!(?:\d+[/⁄]\d+|[¼-¾⅐-⅞]|mm\b|cm\b|in\b|inch\b|deg\b|°|['"’′″”]|\())/g;
const TIGHT_SIGN = /(?:^|[ \u00a0\u202f])[-+‐-―−][\d.,]/m;
const LOOSE_SIGN = /([-+‐-―−])[ \u00a0\u202f]+(?=[\d.,])/g;
/** What people put between two figures in a sentence, and what they would not part. */
const BETWEEN = /[ \u00a0\u202f]*(?:=>|->|→|=|:(?=[ \u00a0\u202f]))[ \u00a0\u202f]*/g;
const NUMBERED_PASS = /\b(pass|run|sweep|series) (?=\d)/gi;
const KEPT = '\u0001';
const WIDE_BLANKS = /[ \u00a0\u202f]{2,}/g;
const COMMA_AND_BLANK = /,[ \u00a0\u202f]+/g;

/** Lines that are looked at to tell what parts the cells. */
const MOST_LOOKED_AT = 60;

type Way = (text: string) => string[][];

function parse(text: string, delimiter: string): string[][] {
  const options = { delimiter, newline: '\n', dynamicTyping: false } as const;
  const quoted = Papa.parse<string[]>(text, options);
  // A mark of inches is no quotation: what is not quoted well is taken as it stands.
  const { data } = quoted.errors.some(({ type }) => type === 'Quotes')
    ? Papa.parse<string[]>(text, { ...options, fastMode: true })
    : quoted;
  return data.map((row) => row.map((cell) => cell.trim()));
}

const delimited =
  (delimiter: string): Way =>
  (text) =>
    parse(text, delimiter);
/** Lines of words, as a title or "Pass 2, going down", are parted only into as many cells as the lines of figures are. */
const spaced =
  (blanks: RegExp): Way =>
  (text) => {
    // A dash on its own is a gap where signs stand close to their figures.
    const signed = TIGHT_SIGN.test(text) ? text : text.replace(LOOSE_SIGN, '$1');
    const lines = signed.replace(BETWEEN, '  ').replace(NUMBERED_PASS, `$1${KEPT}`).split('\n');
    const part = (line: string, by: RegExp) => line.trim().replace(by, '\t').replaceAll(KEPT, ' ').split('\t');
    const figures = (cells: string[]) => cells.filter((cell) => kindOf(cell) === 'number').length;
    const own = lines.map((line) => part(line, blanks));
    const usual = mostFrequent(own.filter((cells) => figures(cells) > 1).map(({ length }) => length)).value;
    const first = own.findIndex((cells) => figures(cells) > 1);
    const parted = lines.map((line, i) => {
      const cells = own[i]!;
      const whole = line.replaceAll(KEPT, ' ');
      // "20 mm lower" between the figures is a name, "20 #REF" a height without a figure.
      const isRow = cells.length === usual && /^[-+‐-―−]?[\d.,]+$/.test(cells[0]!);
      const hasWord = figures(cells) < 2 && cells.some((cell) => kindOf(cell) === 'word');
      const isName = hasWord && !isRow && !isHead(cells, i < first && usual > 2 && cells.length === usual);
      if (usual === 0 || (!isName && (cells.length === usual || kindOf(cells[0]!) === 'number')))
        return cells.join('\t');
      const ways = [COMMA_AND_BLANK, WIDE_BLANKS].map((by) => part(line, by));
      const way = ways.find((parts) => parts.length === usual && (!hasWord || isHead(parts, i < first && usual > 2)));
      return way?.join('\t') ?? whole.replace(/:\s*$/, '');
    });
    return parse(parted.join('\n'), '\t');
  };

/** Whether words stand over columns: one of them heads heights or angles, or they stand above all, as many as there are columns. */
function isHead(cells: readonly string[], isAbove: boolean): boolean {
  const roles = cells.map((cell) => headingSays(cell, '', 'camber').role);
  return (
    roles.some((role) => role !== undefined && role !== 'other' && role !== 'body') || (isAbove && cells.length > 2)
  );
}

function mostFrequent(counts: number[]): { value: number; times: number } {
  const times = new Map<number, number>();
  let best = { value: 0, times: 0 };
  for (const value of counts) {
    const seen = (times.get(value) ?? 0) + 1;
    times.set(value, seen);
    if (seen > best.times) best = { value, times: seen };
  }
  return best;
}

/** Two figures in one cell that is no number: not parted enough, or in the wrong place. */
const isUnsound = (cell: string) => /\d\D*\d/.test(cell.replace(/\d+/g, '0')) && kindOf(cell) === 'word';

/** How far lines come out equally long, with no more than a figure in a cell. */
function fitOf(rows: string[][]): number {
  const full = rows.filter((row) => row.some(Boolean));
  const alike = mostFrequent(full.map(({ length }) => length).filter((length) => length > 1)).times / full.length;
  const cells = full.flat();
  return (alike * cells.filter((cell) => !isUnsound(cell)).length) / Math.max(1, cells.length);
}

/**
 * Parts a pasted or dropped text into cells: tabs, semicolons, bars, commas or blanks, whichever the text itself speaks for. A comma
 * between two digits parts cells only where nothing else does: −20,5 −0,25 are two numbers, and so are −20,−0.25.
 * Pairs in running text, `−30:0.62, −20:0.33`, are a row each. Quotation marks by RFC 4180. A sheet with its heights along a line is turned, so that they stand in a column.
 *
 * @returns rows of cells without outer blanks; empty lines are kept between rows and left out at the end
 */
export function splitText(text: string): string[][] {
  const clean = text
    .replace(/^\uFEFF/, '')
    .replace(/\r\n?|[\u2028\u2029\v\f]/g, '\n')
    .replace(/[ \u00a0\u202f\n]+$/, '');
  if (clean.trim() === '') return [];
  const pairs = pairRows(clean);
  if (pairs) return pairs;
  const lines = clean.split('\n').filter((line) => line.trim() !== '');
  const share = (mark: string) => lines.filter((line) => line.includes(mark)).length / lines.length;
  const plain = ['\t', ';', '|'].find((mark) => share(mark) >= 0.5);
  if (plain) return upright(withoutFrame(parse(clean, plain), plain));
  const sample = lines.slice(0, MOST_LOOKED_AT).join('\n');
  const hasLooseComma = /,(?!\d)|[^\d],/.test(lines.filter((line) => /\d/.test(line)).join('\n'));
  const comma = delimited(',');
  const ways: Way[] = [
    spaced(COMMA_AND_BLANK),
    ...(hasLooseComma ? [comma] : []),
    spaced(WIDE_BLANKS),
    spaced(BLANKS),
    comma,
  ];
  let [best, fit] = [comma, 0];
  for (const way of ways) {
    const found = fitOf(way(sample));
    if (found > fit + 1e-9) [best, fit] = [way, found];
  }
  return upright(best(clean));
}

/** The bars at both ends of a table's lines, and its ruled lines' cells, hold nothing. */
function withoutFrame(rows: string[][], mark: string): string[][] {
  if (mark !== '|' || !rows.every((row) => !row[0])) return rows;
  return rows.map((row) => row.slice(1, row.at(-1) === '' ? -1 : undefined));
}
