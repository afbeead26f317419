/** What a cell may hold: a number in the unit of its column, words, or nothing. */
export type Cell = number | string | null;

/**
 * What a spreadsheet would take for a formula, also behind spaces, which some leave out, and in the wide signs that some read as the
 * plain ones. Texts that begin with apostrophes before such a sign are among them, so that the mark can be taken off again.
 */
const FORMULA = /^'*\s*[=+\-@＝＋－＠]|^'*[\t\r\n]/;

/**
 * Words are never run: an apostrophe before what would be a formula is what spreadsheets themselves take for “this is text”. It is seen
 * where a file is opened and not typed; a space instead would not be, but programs that trim their cells bring the formula back. Numbers
 * are numbers here, negative ones too, and keep their sign.
 */
const harmless = (text: string): string => (FORMULA.test(text) ? `'${text}` : text);

const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

function field(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return quoted(harmless(cell));
  // String() writes a point in every locale and writes −0 as 0; what is no number has no place in a table of figures.
  // Twelve figures: beyond them stands only the noise of binary fractions, 0.9219999999999999 for 0.922.
  return Number.isFinite(cell) ? String(Number(cell.toPrecision(12))) : '';
}

/**
 * Comma-separated values by RFC 4180: a header line, CRLF after every record, quotes doubled. Numbers are written with a
 * decimal point, to 12 significant figures and without grouping, whatever the page's language; a number that is not finite is left
 * empty. A text that a spreadsheet would run as a formula has an apostrophe before it, in the header too.
 * @param columns label and unit of each column; the unit is put in the header in brackets.
 */
export function toCsv(
  columns: readonly { label: string; unit?: string }[],
  rows: readonly (readonly Cell[])[],
): string {
  const header = columns.map(({ label, unit }) => field(unit ? `${label} (${unit})` : label));
  return [header, ...rows.map((row) => columns.map((_, index) => field(row[index] ?? null)))]
    .map((fields) => `${fields.join(',')}\r\n`)
    .join('');
}
