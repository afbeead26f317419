/*
 * The room that an element keeps for itself before any script has come: components/delivery/reserved-heights.json holds how high each is at
 * some widths, in em of the reader's own letters (test/bench/heights.mjs measures them), and this makes a style sheet of it. A container
 * cannot be sized by a query of its own, and a query's em are those of the article; so a float of no width stands in the element, and its
 * height is a broken line over the element's own width (100cqi).
 */
import { readFileSync } from 'node:fs';

/** px of one em, for a height that is written into a page: the usual size of letters. */
const EM = 16;

/** @typedef {Record<string, Record<string, number[]>>} Heights em; by tag and `show`, the whole: '' */
/** @typedef {{ widths: number[], heights: Heights, languages: Record<string, Heights> }} Reserved in English, and in others by BCP 47 primary subtag */

/** @returns {Reserved} */
export const reservedHeights = () =>
  JSON.parse(readFileSync(new URL('reserved-heights.json', import.meta.url), 'utf8'));

const WORDS = ['drawing', 'chart', 'table'];
const showName = (show) => ['sentence', ...WORDS.filter((word) => show.includes(word))].join(' ');

/**
 * @param {string} tag
 * @param {number} width px of the column
 * @param {string} [show] as in the attribute; left out or empty: the whole
 * @returns {number} px
 * @throws {Error} where nothing was measured
 */
export function reservedHeight(tag, width, show = '') {
  const { widths, heights } = reservedHeights();
  const row = heights[tag]?.[show && showName(show.toLowerCase().split(/[\s,]+/))];
  if (!row)
    throw new Error(`components/delivery/reserved-heights.json has no <${tag} show="${show}">: npm run heights.`);
  const at = width / EM;
  const next = widths.findIndex((one) => one >= at);
  if (next === 0) return Math.round(row[0] * EM);
  if (next < 0) return Math.round(row.at(-1) * EM);
  const share = (at - widths[next - 1]) / (widths[next] - widths[next - 1]);
  return Math.round((row[next - 1] + share * (row[next] - row[next - 1])) * EM);
}

/** Of a broken line, the corners that matter: none that is left out lies more than this beside it, em. */
const SLACK = 0.6;

function corners(points) {
  const kept = [points[0]];
  for (let from = 0; from < points.length - 1; ) {
    let to = points.length - 1;
    const isNear = (end) =>
      points.slice(from + 1, end).every(([x, y]) => {
        const [x0, y0] = points[from];
        const [x1, y1] = points[end];
        const line = y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
        return line >= y - 0.1 && line <= y + SLACK;
      });
    while (to > from + 1 && !isNear(to)) to--;
    kept.push(points[to]);
    from = to;
  }
  return kept;
}

const short = (number) => String(Number(number.toFixed(4))).replace(/^(-?)0\./, '$1.');

/** A broken line over the element's own width, as CSS. */
function lineOf(widths, row) {
  const points = corners(widths.map((width, i) => [width, row[i]]));
  const terms = points.slice(1).flatMap(([x, y], i) => {
    const [x0, y0] = points[i];
    const slope = (y - y0) / (x - x0);
    return Math.abs(slope * (x - x0)) < 0.05
      ? []
      : [`${short(slope)}*clamp(0em,100cqi - ${short(x0)}em,${short(x - x0)}em)`];
  });
  return terms.length === 0 ? `${short(points[0][1])}em` : `calc(${short(points[0][1])}em + ${terms.join(' + ')})`;
}

/** A div that the script puts an element into, before it has. */
const divOf = (tag) => `[data-bumpline=${tag.replace('bumpline-', '')}]:not(:has(${tag}))`;

/** The selector of an element that shows just this, in any order of the words; words that it does not know count for nothing. */
function selectorOf(tag, attribute, show, known) {
  const asks = (word) => `[${attribute}~=${word} i]`;
  if (known.length === 0) return tag;
  if (!show) return `${tag}:not(${known.map(asks)})`;
  const [here, not] = [true, false].map((is) =>
    known.filter((word) => word !== 'sentence' && show.split(' ').includes(word) === is),
  );
  const least = here.length === 0 ? asks('sentence') : here.map(asks).join('');
  return `${tag}${least}${not.length > 0 ? `:not(${not.map(asks)})` : ''}`;
}

/** Where an element speaks a language: on a page in it, or told so. */
const speaks = (language) => `:is(:lang(${language}):not([language]),[language^=${language} i])`;

/**
 * @param {{ tags?: string[], shows?: boolean, more?: number }} [of] which elements, whether those that show only a part and those in other
 * languages than English too, and how much more than was measured is kept, em
 * @returns {string} the style sheet
 */
export function reservingStyles({ tags, shows = true, more = 0 } = {}) {
  const { widths, heights: english, languages } = reservedHeights();
  const all = tags ?? Object.keys(english);
  const rulesOf = (heights, language) =>
    all.flatMap((tag) => {
      const known = shows
        ? [...new Set(Object.keys(heights[tag]).flatMap((show) => show.split(' ').filter(Boolean)))]
        : [];
      return Object.entries(heights[tag])
        .filter(([show]) => shows || !show)
        .map(([show, row]) => {
          const host = selectorOf(tag, 'show', show, known);
          // Browsers that do not know :has pass over what stands in :is.
          const hosts = shows ? `:is(${host},${selectorOf(divOf(tag), 'data-show', show, known)})` : host;
          const spoken = language ? speaks(language) : '';
          return `${hosts}${spoken}::before{height:${lineOf(
            widths,
            row.map((height) => height + more),
          )}}`;
        });
    });
  // Of no weight: what a page says of its divs holds.
  const divs = shows ? [`:where(${all.map(divOf)})`] : [];
  const any = `:is(${[...all, ...divs]})`;
  return [
    `${any}{display:flow-root;container-type:inline-size;contain-intrinsic-inline-size:240px}`,
    `${any}[hidden]{display:none}`,
    `${any}::before{content:"";float:left;width:0;font:medium/1 sans-serif}`,
    // What clears floats in the page's own words would stand below this one.
    `:is(${[`:is(${all}):not(:defined)`, ...divs]})>*{clear:none}`,
    ...rulesOf(english),
    ...(shows ? Object.entries(languages).flatMap(([language, heights]) => rulesOf(heights, language)) : []),
    `@media print,(scripting:none){${any}::before{content:none}}`,
    '',
  ].join('\n');
}
