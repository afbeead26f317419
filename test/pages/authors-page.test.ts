import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { BumplineClearance } from '../../components/bumpline-clearance/bumpline-clearance.js';
import { BumplineCompare } from '../../components/bumpline-compare/bumpline-compare.js';
import { BumplineLowering } from '../../components/bumpline-lowering/bumpline-lowering.js';
import { BumplineReadings } from '../../components/bumpline-readings/bumpline-readings.js';
import { theme } from '../../components/theme/theme.js';
import { inside, page, textOf } from './site-source.js';

const authors = page('put-it-in-your-article/index.html');

/** First column of the table under a caption's id. */
function listed(captionId: string): string[] {
  const from = authors.indexOf(`id="${captionId}"`);
  const body = inside(authors.slice(from), 'tbody');
  return [...body.matchAll(/<th scope="row">(.*?)<\/th>/g)].flatMap(([, cell]) => textOf(cell!).split(', '));
}

test('the attributes listed for authors are exactly those its elements observe', () => {
  expect(listed('attributes-caption').sort()).toEqual([...BumplineLowering.observedAttributes].sort());
  expect(listed('clearance-attributes-caption').sort()).toEqual([...BumplineClearance.observedAttributes].sort());
  expect(listed('compare-attributes-caption').sort()).toEqual([...BumplineCompare.observedAttributes].sort());
  expect(listed('readings-attributes-caption').sort()).toEqual([...BumplineReadings.observedAttributes].sort());
});

test('the custom properties listed for authors are exactly those the theme reads', () => {
  const read = new Set([...theme.cssText.matchAll(/var\((--bumpline-[a-z-]+)/g)].map(([, name]) => name!));
  expect(read.size).toBeGreaterThan(10);
  expect(listed('colours-caption').sort()).toEqual([...read].sort());
});

/** The names in `code` of the paragraph that begins so. */
const namedIn = (start: string): string[] => {
  const from = authors.indexOf(start);
  const text = authors.slice(from, authors.indexOf('</p>', from));
  return [...text.matchAll(/<code>([^<]*)<\/code>/g)].map(([, name]) => name!);
};

test('the parts and states listed for authors are exactly those of the elements', () => {
  const folder = fileURLToPath(new URL('../../components/', import.meta.url));
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => readFileSync(`${folder}${file}`, 'utf8'));
  const parts = new Set(sources.flatMap((text) => [...text.matchAll(/ part="([a-z-]+)"/g)].map(([, name]) => name!)));
  const states = /export type SheetState = ([^;]+);/.exec(
    sources.find((text) => text.includes('export type SheetState'))!,
  );
  const names = namedIn('<p><code>::part()</code>').filter((name) => !name.startsWith(':'));
  expect(new Set(names.slice(0, parts.size))).toEqual(parts);
  expect(names.slice(parts.size).sort()).toEqual(
    [...states![1]!.matchAll(/'([a-z]+)'/g)].map(([, name]) => name!).sort(),
  );
});

test('version and hash are left for the build to fill in', () => {
  expect(authors).toContain('%VERSION%');
  expect(inside(authors, 'pre', 'id="snippet-table"')).toContain('integrity="%STANDALONE_INTEGRITY%"');
});
