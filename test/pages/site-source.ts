import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { wholePage } from '../../site/partials/pages.js';
import { references } from '../../site/partials/reference/list.js';
import { referencePage } from '../../site/partials/reference/page.js';
import type { IndependentCorner, Point } from '../reference/independent-strut.js';

export const SITE = new URL('../../site/', import.meta.url).pathname;

/** Every page's path below site/, and its source: as it was written, or as it is made of the manifest. */
export function sitePages(): { path: string; html: string }[] {
  const written = readdirSync(SITE, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('index.html'))
    .map((path) => ({ path, html: readFileSync(join(SITE, path), 'utf8') }));
  const made = references.map(({ tag, path }) => ({ path: `${path}index.html`, html: referencePage(tag) }));
  return [...written, ...made].sort((a, b) => (a.path < b.path ? -1 : 1));
}

/**
 * Whether a page is looked at in a browser. Those about the elements are made by one template: the longest of them and that of the
 * shared car, which alone has no answer, stand for the rest, whose markup, links and words are read without one.
 */
export const isLookedAt = (path: string): boolean =>
  !path.startsWith('reference/') || /^reference\/(?:predict|car)\//.test(path);

/** The same as the build makes them: with their first sentences. */
export const madePages = (): ReturnType<typeof sitePages> =>
  sitePages().map(({ path, html }) => ({ path, html: wholePage(path.replace(/index\.html$/, ''), html) }));

export function page(path: string): string {
  const made = references.find((one) => path === `${one.path}index.html`);
  return made ? referencePage(made.tag) : readFileSync(join(SITE, path), 'utf8');
}

/** What a reader sees of a piece of markup. */
export const textOf = (markup: string): string =>
  markup
    .replace(/<[^>]*>/g, '')
    .replace(/&nbsp;/g, '\u00a0')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&')
    .trim();

/** How many words a reader of a page scrolls through: without pictures, contents, elements and what is folded away. */
export const wordsRead = (html: string): number => {
  const read = html.replace(/<(svg|nav|details|bumpline-[a-z-]+)\b[\s\S]*?<\/\1>|<!--[\s\S]*?-->/g, ' ');
  return textOf(read.replace(/<[^>]*>/g, ' ')).split(/[\s\u00a0]+/).length;
};

/** The first stretch of markup between an opening that matches and `</tag>`. */
export function inside(html: string, tag: string, mark = ''): string {
  const found = new RegExp(`<${tag}\\b[^>]*${mark}[^>]*>([\\s\\S]*?)</${tag}>`).exec(html);
  if (!found) throw new Error(`No <${tag} ${mark}> there.`);
  return found[1]!;
}

/** Rows of a table's body: the row's name and the cells after it, as text. */
export const tableRows = (table: string): { name: string; cells: string[] }[] =>
  [...inside(table, 'tbody').matchAll(/<tr\b[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row]) => {
    const [name, ...cells] = [...row!.matchAll(/<t[hd]\b[^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => textOf(cell!));
    return { name: name!, cells };
  });

/** A corner and its ± in mm, read from such a table without the project's own reader. */
export function cornerFromTable(table: string): { corner: IndependentCorner; plusMinus: Record<string, number> } {
  const rows = new Map(tableRows(table).map(({ name, cells }) => [name, cells]));
  const cells = (name: string) => {
    const found = rows.get(name);
    if (!found) throw new Error(`The table has no row "${name}".`);
    return found.map((text) => Number(text.replace('−', '-').replace('°', '')));
  };
  const point = (name: string) => cells(name).slice(0, 3) as unknown as Point;
  const corner: IndependentCorner = {
    wheelCentre: point('Wheel centre'),
    loadedRadius: cells('Loaded radius')[0]!,
    camber: cells('Static camber')[0]!,
    toe: cells('Static toe')[0]!,
    lowerArm: {
      front: point('Lower arm, front pivot'),
      rear: point('Lower arm, rear pivot'),
      ball: point('Lower ball joint'),
    },
    strut: { top: point('Top mount'), low: point('Damper, low point') },
    tieRod: { inner: point('Tie rod, inner end'), outer: point('Tie rod, outer end') },
  };
  const plusMinus = Object.fromEntries([...rows.keys()].map((name) => [name, cells(name)[3] ?? 0]));
  return { corner, plusMinus };
}

const MEASUREMENTS = {
  armLength: 'Lower arm length',
  pivotHeight: 'Height of the arm’s pivot',
  ballHeight: 'Height of the ball joint',
  wheelCentreHeight: 'Height of the wheel centre',
  topHeight: 'Height of the top mount',
  damperLean: 'Lean of the damper',
} as const;
type Measurements = Record<keyof typeof MEASUREMENTS, number>;

/** Six measurements with a tape and a gauge, and their ±, from such a table: mm, the lean in degrees. */
export function measurementsFromTable(table: string): { value: Measurements; plusMinus: Measurements } {
  const rows = new Map(tableRows(table).map(({ name, cells }) => [name, cells]));
  const column = (at: number) =>
    Object.fromEntries(
      Object.entries(MEASUREMENTS).map(([key, name]) => {
        const text = rows.get(name)?.[at];
        if (text === undefined) throw new Error(`The table has no row "${name}".`);
        return [key, Number(text.replace('°', ''))];
      }),
    ) as Measurements;
  return { value: column(0), plusMinus: column(1) };
}
