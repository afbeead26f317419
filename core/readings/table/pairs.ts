/** A figure with a unit of its own, as somebody writes it in a line of text; `,` stands for the decimal mark. */
const FIGURE = String.raw`[-+‐-―−]?[ \u00a0\u202f]?(?:\d+,\d+|,?\d+)(?:[ \u00a0\u202f]?(?:mm|cm|in(?:ch)?\b|["”″]|°(?: ?\d+ ?['’′])?|['’′]|deg\b))?(?!\d|,\d)`;
/** What stands between a height and its angle. */
const JOINS = String.raw`[ \u00a0\u202f]*(?:=>|->|[→➔⇒➜]|=|:)[ \u00a0\u202f]*`;
const JOIN = /[:=→➔⇒➜([]|->/;
/** What parts one pair from the next. */
const GAP = /^[\s,;|/·•]*(?:(?:and|then|und|puis|et)\b[\s,;]*)?/i;
/** Where the figures of a line may begin, behind words. */
const BEGINS = /[\s:=–,-](?=[-+‐-―−([]?[ \u00a0\u202f]?[.,]?\d)/gu;
/** More words before the first figure are no name. */
const MOST_WORDS = 12;

interface Line {
  name: string;
  /** A height, then its angles. */
  rows: string[][];
}

/** A way of reading the figures of a line: the next row and how much of the text it takes; undefined where none begins there. */
type Way = (text: string) => { row: string[]; length: number } | undefined;

function waysOf(mark: '.' | ','): Way[] {
  const figure = mark === ',' ? FIGURE : FIGURE.replace(/(?<=\\d\+|\||\\d\|),/g, '\\.');
  const all = (pattern: string) => new RegExp(pattern, 'iu');
  const way =
    (pattern: RegExp): Way =>
    (text) => {
      const found = pattern.exec(text);
      return found ? { row: found.slice(1).map((part) => part.trim()), length: found[0].length } : undefined;
    };
  const several = all(`^(${figure})${JOINS}((?:${figure})(?:[\\s,|/]+${figure})+)(?=\\s*(?:;|$))`);
  const one = new RegExp(figure, 'giu');
  return [
    way(all(`^(${figure})${JOINS}(${figure})`)),
    way(all(`^[([]\\s*(${figure})\\s*[;,|]\\s*(${figure})\\s*[)\\]]`)),
    // −30: 0.62, 0.70; −20: 0.33, 0.41
    (text) => {
      const found = several.exec(text);
      return found
        ? { row: [found[1]!.trim(), ...found[2]!.match(one)!.map((part) => part.trim())], length: found[0].length }
        : undefined;
    },
  ];
}

/** The rows of a text that holds nothing else. */
function rowsIn(text: string, way: Way): string[][] | undefined {
  const rows: string[][] = [];
  let rest = text.replace(GAP, '');
  while (rest !== '') {
    const found = way(rest);
    if (!found) return undefined;
    rows.push(found.row);
    const after = rest.slice(found.length);
    const gap = GAP.exec(after)![0];
    // Two pairs that run into one another were read wrongly.
    if (after !== '' && gap === '') return undefined;
    rest = after.slice(gap.length);
  }
  return rows;
}

/** A line's rows, with the words before them. */
function lineOf(text: string, way: Way): Line | undefined {
  const all = rowsIn(text, way);
  if (all) return { name: '', rows: all };
  for (const { index } of [...text.matchAll(BEGINS)].slice(0, MOST_WORDS)) {
    const name = text.slice(0, index + 1).replace(/[\s:=,–-]+$/, '');
    if (!/\p{L}/u.test(name)) continue;
    const rows = rowsIn(text.slice(index + 1), way);
    if (rows && rows.length > 0) return { name, rows };
  }
  return /\p{L}/u.test(text) && !JOIN.test(text.replace(/:\s*$/, ''))
    ? { name: text.replace(/:\s*$/, ''), rows: [] }
    : undefined;
}

/**
 * Heights and angles written as pairs in running text, `−30:0.62, −20:0.33`, several in a line: by colons, equals signs, arrows or
 * brackets, parted by commas, semicolons or blanks. Commas are decimal where that is the only way to read all of it. Words before the
 * first pair of a line name what follows.
 *
 * @returns rows of cells, names as lines of their own; undefined for any other text
 */
export function pairRows(text: string): string[][] | undefined {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const isLikely = lines.some((line) => line.split(JOIN).length > 2);
  if (!isLikely) return undefined;
  for (const way of [...waysOf('.'), ...waysOf(',')]) {
    const read = lines.map((line) => lineOf(line.trim(), way));
    if (read.includes(undefined) || !read.some((line) => line!.rows.length > 1)) continue;
    return read.flatMap((line) => [...(line!.name ? [[line!.name, '']] : []), ...line!.rows]);
  }
  return undefined;
}
