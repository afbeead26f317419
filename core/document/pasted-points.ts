import { splitText } from '../readings/table/split-text.js';
import { type readPointRows, rowKey } from './point-rows.js';
import { readPointSheet } from './point-sheet.js';

/** So many cells a name with commas in it may have fallen into: "Lower arm, front pivot". */
const MOST_NAME_CELLS = 3;
/** Anything but blanks that parts cells; a comma within a figure or a name parts none. */
const PARTS_CELLS = /[\t;|]|,(?!\d|[ \u00a0]+[a-z])|(?<!\d),(?=\d)/i;
const NAME_THEN_FIGURES = /^\s*(\D*[a-z)])[\s:]+(?=[-+‐-―−±]?[\d.,])(.*)$/i;
/** Blanks that part a figure from the next, but not from its unit. */
const BETWEEN_CELLS = /[ \u00a0\u202f]+(?!(?:mm|cm|in(?:ch)?)\b|[°"”″'’′(])/i;
const COMMA_DECIMAL = /\d,(?:\d{1,2}|\d{4,})(?!\d)/;
const POINT_DECIMAL = /\d\.(?:\d{1,2}|\d{4,})(?!\d)/;
/** Any language with this decimal mark. */
const WITH_COMMA = 'de';
const WITH_POINT = 'en';

/**
 * Reads a pasted text as a table of hard points or of driveway measurements: see `readPointSheet`. Its cells may be parted by tabs,
 * semicolons, bars, commas or blanks. Whether `1,500` is one and a half is told by its other figures, else by the language.
 *
 * @returns what was read, of points only those with three coordinates; what was not is a problem by the name of its row
 */
export function readPastedPoints(text: string, language: string): ReturnType<typeof readPointRows> {
  const rows = (PARTS_CELLS.test(text) ? splitText(text) : partedByBlanks(text)).map(withWholeName);
  const cells = rows.flat();
  const hasComma = cells.some((cell) => COMMA_DECIMAL.test(cell));
  const hasPoint = cells.some((cell) => POINT_DECIMAL.test(cell));
  const { given, problems } = readPointSheet(
    { rows },
    hasComma === hasPoint ? language : hasComma ? WITH_COMMA : WITH_POINT,
  );
  const { points, plusMinus, measures, ...values } = given;
  const known = <T>(of: Readonly<Record<string, T>>, isKnown: (one: T) => boolean) =>
    Object.fromEntries(Object.entries(of).filter(([, one]) => isKnown(one)));
  const whole = known(points, (point) => point.every(Number.isFinite));
  const doubts = known(plusMinus ?? {}, Number.isFinite);
  const measured = known(measures ?? {}, (one) => Number.isFinite(one.value) && Number.isFinite(one.plusMinus));
  return {
    given: {
      ...known(values as Record<string, number>, Number.isFinite),
      points: whole,
      ...(Object.keys(doubts).length > 0 && { plusMinus: doubts }),
      ...(Object.keys(measured).length > 0 && { measures: measured }),
    },
    problems,
  };
}

/** A row whose name was parted at its commas, put together again. */
function withWholeName(cells: string[]): string[] {
  for (let count = MOST_NAME_CELLS; count > 1; count--) {
    const name = cells.slice(0, count).join(', ');
    if (cells.length >= count && !/\d/.test(name) && rowKey(name)) return [name, ...cells.slice(count)];
  }
  return cells;
}

/** Lines with nothing but blanks in them: a name, then its figures; over them the letters of the axes. */
function partedByBlanks(text: string): string[][] {
  return text.split(/\r\n?|\n/).flatMap((line) => {
    const whole = line.trim();
    if (whole === '') return [];
    const [, name, figures] = NAME_THEN_FIGURES.exec(whole) ?? [];
    if (name !== undefined && figures !== undefined)
      return [[name.trim(), ...figures.trim().replace(/±\s+/g, '±').split(BETWEEN_CELLS)]];
    return [/\bx\b/i.test(whole) ? whole.split(BETWEEN_CELLS) : [whole]];
  });
}
