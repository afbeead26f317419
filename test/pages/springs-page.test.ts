import { expect, it } from 'vitest';
import { picturesOf } from './pictures-of.js';
import { page } from './site-source.js';
import { givenBump } from './worked-bump.js';
import { givenSprings, workedSprings } from './worked-springs.js';

/* The page on springs is about the same invented car as the one on bump travel, and its picture shows the figures of its text. */

it('what both pages say of the example is the same', () => {
  const [springs, bump] = [givenSprings(), givenBump()];
  const shared = [...springs].filter(([name]) => bump.has(name));
  expect(shared.map(([name]) => name)).toEqual([
    'Motion ratio',
    'Gap on the rod',
    'Length of the stop',
    'Of it usable',
    'Drop',
  ]);
  for (const [name, value] of shared) expect(value, name).toBe(bump.get(name));
});

it('the picture of loads is labelled with where the stop is touched, where it is solid, and what the spring alone would need', () => {
  const worked = workedSprings();
  const labels = picturesOf(page('springs-loads-and-frequencies/index.html')).labels('loads');
  for (const name of ['springs.touch', 'springs.solid', 'springs.without-stop'])
    expect(labels, name).toContain(worked[name]!.value().toFixed(0));
});
