import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { projectFiles } from '../house-rules.mjs';

/*
 * What is written for contributors and users leads somewhere: its links, the files that it names, and the names in them that a request
 * is followed by.
 */

const top = fileURLToPath(new URL('../../', import.meta.url));
const isThere = (path: string) => existsSync(join(top, path));
const read = (path: string) => readFileSync(join(top, path), 'utf8');
const written = projectFiles().filter(({ path }) => path.endsWith('.md'));
const decisions = written.filter(({ path }) => path.endsWith('/decisions.md'));

const withoutFences = (text: string) => text.replace(/^```[\s\S]*?^```/gm, '');
const inBackticks = (text: string) => [...withoutFences(text).matchAll(/`([^`]+)`/g)].map(([, code]) => code!);

/** Links to files, from the top folder; those to a place in the same page, and to elsewhere, are not ours. */
const linked = ({ path, text }: { path: string; text: string }) =>
  [...withoutFences(text).matchAll(/\]\(([^)\s#]+)(?:#[^)]*)?\)/g)]
    .map(([, to]) => to!)
    .filter((to) => !/^[a-z]+:/.test(to))
    .map((to) => join(dirname(path), to));

/** Files and folders by their path from the top folder, in commands too; none that a build or a test leaves, and no pattern. */
const named = ({ text }: { text: string }) =>
  inBackticks(text)
    .flatMap((code) => code.split(/\s+/))
    .filter((word) => /^(?:core|components|site|test|\.ci)\/[\w./-]*$/.test(word) && !word.startsWith('test/.'));

describe.each(written)('$path', (file) => {
  it('links to files that are there', () => expect(linked(file).filter((path) => !isThere(path))).toEqual([]));

  it('names files and folders that are there', () => expect(named(file).filter((path) => !isThere(path))).toEqual([]));
});

describe('DEVELOPERS.md', () => {
  const text = read('DEVELOPERS.md');

  it('is one page', () => {
    const lines = text.trimEnd().split('\n');
    expect(lines.length).toBeLessThanOrEqual(160);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(160);
  });

  it('links to the decisions of every folder', () => {
    expect(decisions.length).toBeGreaterThan(10);
    expect(linked({ path: 'DEVELOPERS.md', text })).toEqual(expect.arrayContaining(decisions.map(({ path }) => path)));
  });

  it('follows a request by names that stand in the files of the same step', () => {
    const steps = /^## One request.*?\n([\s\S]*?)^## /m
      .exec(text)![1]!
      .split(/\n(?=\d+\. )/)
      .slice(1);
    expect(steps.length).toBeGreaterThan(10);
    const lost = steps.flatMap((step) => {
      const files = named({ text: step });
      const names = inBackticks(step).filter((code) => !code.includes('/'));
      return names.filter((name) => !files.some((path) => read(path).includes(name)));
    });
    expect(lost).toEqual([]);
  });
});

it('every decision has a heading with its month and year', () => {
  const headings = decisions.flatMap(({ text }) => text.split('\n').filter((line) => line.startsWith('## ')));
  expect(headings.length).toBeGreaterThan(decisions.length);
  expect(headings.filter((line) => !/ \([A-Z][a-z]+ 20\d\d\)$/.test(line))).toEqual([]);
});
