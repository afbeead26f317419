import { expect, test } from 'vitest';
import { inside, page } from './site-source.js';

const authors = page('put-it-in-your-article/index.html');

test('version and hash are left for the build to fill in', () => {
  expect(authors).toContain('%VERSION%');
  expect(inside(authors, 'pre', 'id="snippet-table"')).toContain('integrity="%STANDALONE_INTEGRITY%"');
});

test('what the reference says of each element is not said again: attributes stand in its snippets alone', () => {
  expect(authors).not.toMatch(/<th scope="row"><code>(?:drop|show|over)\b/);
  expect(authors).not.toContain('--bumpline-');
});
