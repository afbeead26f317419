import { expect, it } from 'vitest';
import * as core from '../../core/index.js';
import { tasksOf } from '../bench/core-tasks.mjs';
import { abba, quantile, summary } from '../bench/in-turn.mjs';

/* The statistics of the benches, for numbers whose answer is known. */

// The common textbook set for quartiles; by R's `quantile`, whose default is the definition used here. From memory.
const TEXTBOOK = [6, 7, 15, 36, 39, 40, 41, 42, 43, 47, 49];

it('a quantile lies between two values by a straight line, and meets the textbook', () => {
  expect([0, 0.25, 0.5, 0.75, 1].map((share) => quantile(TEXTBOOK, share))).toEqual([6, 25.5, 40, 42.5, 49]);
  // An even count: the median is half-way.
  expect(quantile([1, 2, 3, 10], 0.5)).toBe(2.5);
});

it('a summary takes the ratio within each quad first, then median and quartiles', () => {
  // The machine gets ten times slower meanwhile. Ratios 1.5, 2, 2.5, 3: of these, and not of the medians of a and b.
  const quads: [number, number, number, number][] = [
    [1, 2, 4, 3],
    [10, 25, 15, 10],
    [100, 200, 300, 100],
    [1000, 2500, 3500, 1000],
  ];
  expect(summary(quads)).toEqual({ a: 55, b: 135, ratio: 2.25, quartiles: [1.875, 2.625] });
});

it('a drift of the machine that is even leaves the ratio of two like tasks at 1', () => {
  const drifting = Array.from({ length: 9 }, (_, i) => [4 * i + 1, 4 * i + 2, 4 * i + 3, 4 * i + 4] as const);
  expect(summary(drifting as never)).toMatchObject({ ratio: 1, quartiles: [1, 1] });
});

it('tasks take turns A B B A, after both are warm', () => {
  let order = '';
  abba(
    () => (order += 'A'),
    () => (order += 'B'),
    2,
  );
  expect(order).toMatch(/^(AB)+ABBAABBA$/);
});

it.each(tasksOf(core))('the core answers "$name"', ({ lacks, make }) => {
  expect(lacks).toEqual([]);
  expect(Number.isFinite(make()(0))).toBe(true);
});

it('a core that lacks a name is told so, and the other tasks stay', () => {
  const { fitCurve: _, ...others } = core;
  const lacking = tasksOf(others).filter(({ lacks }) => lacks.length > 0);
  expect(lacking.map(({ name }) => name)).toEqual([
    'fit of 49 readings',
    'fit of 150 readings',
    'compare: two sets, new bump',
  ]);
});
