import { readFileSync } from 'node:fs';

/*
 * Elements come alive in steps, so the place of a whole one is kept from the first paint on. The heights stand in
 * site/reserved-heights.json, by the least width of the window: measured, with some room for other fonts.
 */

type ByWidth = Record<string, number>;
/** px. `column`: in text of any width; `page`: as wide as the page, where drawing and chart stand side by side. */
interface Reserved {
  column: ByWidth;
  page: ByWidth;
}

const json = (path: string) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'));
const reserved = (): Record<string, Reserved> => json('site/reserved-heights.json');
/** Those of components/elements.json that are something to see. */
const sheets = (): string[] =>
  (json('components/elements.json') as { tag: string; article?: string }[])
    .filter(({ article }) => article !== undefined)
    .map(({ tag }) => tag);

const WHOLE_WIDTH = ':is(main, main > bumpline-car) > ';

/** @throws {Error} where a sheet has no heights */
function rules(): string {
  const heights = reserved();
  const of = (tag: string): Reserved => {
    const found = heights[tag];
    if (!found) throw new Error(`site/reserved-heights.json has no heights of ${tag}: measure it, and put them there.`);
    return found;
  };
  const block = (which: keyof Reserved, prefix: string): string => {
    const all = sheets().flatMap((tag) =>
      Object.entries(of(tag)[which]).map(([width, height]) => ({ tag, width: Number(width), height })),
    );
    return [...new Set(all.map(({ width }) => width))]
      .sort((a, b) => a - b)
      .map((least) => {
        const here = all.filter(({ width }) => width === least);
        const inside = here.map(({ tag, height }) => `${prefix}${tag} { min-height: ${height}px }`).join('\n');
        return least === 0 ? inside : `@media (min-width: ${least}px) {\n${inside}\n}`;
      })
      .join('\n');
  };
  // Where scripts are off for good, the page closes up.
  const none = `@media (scripting: none), print {\nmain ${SHEET}, ${WHOLE_WIDTH}${SHEET} { min-height: 0 }\n}`;
  return [block('column', ''), block('page', WHOLE_WIDTH), none].join('\n');
}

/** In site.css, every element that is something to see. */
const SHEET = 'bumpline-sheet';

/** The style sheet with `bumpline-sheet` as the elements that it stands for, and with their heights. */
export const withElements = (css: string): string =>
  `${css}\n${rules()}`.replace(/(?<![\w-])bumpline-sheet(?![\w-])/g, `:is(${sheets().join(', ')})`);

/** From so wide on an element stands as on a page of its own width, px. */
const PAGE_PX = 760;

/**
 * How high a frame is that holds an element and no script sets, px.
 *
 * @param width of the frame, px
 * @throws {Error} where none is kept
 */
export function frameHeight(tag: string, width: number): number {
  const { column, page } = reserved()[tag] ?? { column: {}, page: {} };
  const fits = Object.entries({ ...column, ...(width >= PAGE_PX ? page : {}) }).filter(
    ([least]) => Number(least) <= width,
  );
  const [, height] = fits.sort(([a], [b]) => Number(b) - Number(a))[0] ?? [];
  if (height === undefined) throw new Error(`site/reserved-heights.json has no height of ${tag} at ${width} px.`);
  return height;
}

/**
 * A page with each `%RESERVED <tag> <width>%` as the height kept for that element in a column of a window at least as wide, px.
 *
 * @throws {Error} where none is kept
 */
export const withReservedHeights = (html: string): string =>
  html.replace(/%RESERVED ([\w-]+) (\d+)%/g, (found, tag: string, width: string) => {
    const { column, page } = reserved()[tag] ?? { column: {}, page: {} };
    const height = column[width] ?? page[width];
    if (height === undefined) throw new Error(`${found}: site/reserved-heights.json has no such height.`);
    return String(height);
  });
