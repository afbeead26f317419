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

test('version and hash are left for the build to fill in', () => {
  expect(authors).toContain('%VERSION%');
  expect(inside(authors, 'pre', 'id="snippet-table"')).toContain('integrity="%STANDALONE_INTEGRITY%"');
});
