import { describe, expect, it } from 'vitest';
import { readLabels } from '../../../../core/readings/table/labels.js';

// Headings as people write them, all invented: common practice, no source.

const read = (headings: string, quantity: 'camber' | 'toe' = 'camber') =>
  readLabels(
    headings.split('|').map((heading) => heading.trim()),
    quantity,
  );
const sets = (headings: string) => read(headings).map(({ set }) => set);
const stems = (headings: string) => {
  const all = read(headings).map(({ stem }) => stem);
  return all.map((stem) => all.indexOf(stem));
};
const goings = (headings: string) => read(headings).map(({ going }) => going);
const passes = (headings: string) => read(headings).map(({ pass }) => pass);
const summaries = (headings: string) => read(headings).map(({ summary }) => summary);

describe('passes of one set have a stem in common', () => {
  it.each([
    ['Stock 1 | Stock 2 | Stock 3 | Lowered joint 1 | Lowered joint 2', [0, 0, 0, 3, 3]],
    ['stock a | stock b | stock c | lowered a | lowered b', [0, 0, 0, 3, 3]],
    ['Run 1 std | Run 2 std | Run 1 ext | Run 2 ext', [0, 0, 2, 2]],
    ['std #1 | std #2 | ext #1', [0, 0, 2]],
    ['OEM pass 1 | OEM pass 2 | Dropped knuckle pass 1', [0, 0, 2]],
    ['Pass 1 (stock) | Pass 2 (stock) | Pass 1 (lowered) | Pass 2 (lowered)', [0, 0, 2, 2]],
    ['stock - up | stock - down | lowered - up | lowered - down', [0, 0, 2, 2]],
    ['stock up | stock down | lowered up | lowered down', [0, 0, 2, 2]],
    ['Stock I | Stock II | Lowered I | Lowered II', [0, 0, 2, 2]],
    ['S1 | S2 | S3 | L1 | L2', [0, 0, 0, 3, 3]],
    ['OEM-1 | OEM-2 | Roll_centre-1 | Roll_centre-2', [0, 0, 2, 2]],
    ['Stock | Stock (2) | New | New (2)', [0, 0, 2, 2]],
    ['Stock 1st | Stock 2nd | New 1st', [0, 0, 2]],
    ['first stock run | second stock run | first lowered run', [0, 0, 2]],
    ['Stock morning | Stock evening | Lowered morning', [0, 0, 2]],
    ['Standard joint, pass 1 (°) | Standard joints, pass 2 (°) | Lowered joints (°)', [0, 0, 2]],
    ['1. Durchgang Serie | 2. Durchgang Serie | 1. Durchgang tief', [0, 0, 2]],
    ['Serie 1 | Serie 2 | Tiefer 1 | Tiefer 2', [0, 0, 2, 2]],
    ['origine, passage 1 | origine, passage 2 | abaissée, passage 1', [0, 0, 2]],
    ['origine 1 | origine 2 | abaissée 1', [0, 0, 2]],
    ['Stock | stock again | Lowered', [0, 0, 2]],
    ['Set 1 pass 1 | Set 1 pass 2 | Set 2 pass 1', [0, 0, 2]],
    ['Pass 1 | Pass 2 | Pass 3', [0, 0, 0]],
    ['1 up | 2 down | 3 up', [0, 0, 0]],
  ])('%s', (headings, expected) => {
    expect(stems(headings)).toEqual(expected);
  });

  it('and sets are called by what is left, as it was written', () => {
    expect(sets('Stock 1 | Lowered joint 1')).toEqual(['Stock', 'Lowered joint']);
    expect(sets('Camber, Ext. LBJ 1 (°) | Camber, Ext. LBJ 2 (°)')).toEqual(['Ext. LBJ', 'Ext. LBJ']);
    expect(sets('Standard joints (°) | Joints 22 mm lower (°) | 0,5 in longer, pass 2')).toEqual([
      'Standard joints',
      'Joints 22 mm lower',
      '0,5 in longer',
    ]);
  });

  it('numbers of parts are no numbers of passes', () => {
    expect(sets('Lowered 20 mm | Lowered 40 mm | lowered 30')).toEqual([
      'Lowered 20 mm',
      'Lowered 40 mm',
      'lowered 30',
    ]);
    expect(stems('Camber stock | Camber 20 mm down | Camber 40 mm down')).toEqual([0, 1, 2]);
  });

  it('passes keep the words they are called by', () => {
    expect(passes('Camber, run 1 | Camber, run 2')).toEqual(['run 1', 'run 2']);
    expect(passes('2nd run | 1st run')).toEqual(['2nd run', '1st run']);
    expect(passes('Stock 1 | New b | #3')).toEqual(['Pass 1', undefined, 'Pass 3']);
    expect(passes('Morning | Afternoon')).toEqual(['Morning', 'Afternoon']);
  });
});

describe('a direction in a name is none', () => {
  it.each([
    'Stock 1 | Lowered joint 1',
    'Stock | Lowered',
    'Stock | Down',
    'Stock | Raised | Lowered',
    'Standard joints | Extended joints',
    'Camber stock | Camber 20 mm down',
    'Lower arm 1 | Upper arm 1',
    'Dropped knuckle | Stock knuckle',
    'Bump stop out 1 | Bump stop in 1',
    'Joint down 20 | Joint down 30',
    'Lowered',
    'Stock Ø | Lowered Ø',
  ])('%s', (headings) => {
    expect(goings(headings).every((going) => going === undefined)).toBe(true);
  });

  it.each([
    ['Down', ['down']],
    ['Up | Down', ['up', 'down']],
    ['Raised | Lowered', ['up', 'down']],
    ['going up | going down', ['up', 'down']],
    ['up 2 | pass 1 down | 3 ↑', ['up', 'down', 'up']],
    ['Stock, going up | Stock going down', ['up', 'down']],
    ['stock - up | stock - down', ['up', 'down']],
    ['Stock (up) | Lowered (down)', ['up', 'down']],
    ['lowered up | lowered down', ['up', 'down']],
    ['Stock up | Lowered up', ['up', 'up']],
    ['Stock ↑ | Lowered joint ↓', ['up', 'down']],
    ['Pass 1 + | Pass 1 −', ['up', 'down']],
    ['Serie rauf | Serie runter', ['up', 'down']],
    ['origine montée | origine descente', ['up', 'down']],
  ])('but where nothing else stands there, or it is set off: %s', (headings, expected) => {
    expect(goings(headings)).toEqual(expected);
  });

  it('bump and droop name a side of zero as well', () => {
    expect(read('Bump | Droop').map(({ side }) => side)).toEqual([1, -1]);
    expect(read('Droop limiter | Stock').map(({ side }) => side)).toEqual([undefined, undefined]);
  });
});

describe('averages and the like', () => {
  it.each([
    'avg',
    'Avg.',
    'average',
    'mean',
    'Mittelwert',
    'Ø',
    'moyenne',
    'moy.',
    'Stock avg',
    'avg of 3 stock',
    'Stock, mean (n=3)',
    'Mean of passes 1-3',
    'Stock average (°)',
  ])('%s is an average', (heading) => {
    expect(summaries(`Stock 1 | Stock 2 | Stock 3 | ${heading}`)[3]).toBe('average');
    expect(['', 'stock']).toContain(read(`Stock 1 | Stock 2 | Stock 3 | ${heading}`)[3]!.stem);
  });
  it.each([
    'sd',
    's.d.',
    'Std dev',
    'Stock std. dev.',
    'spread',
    'range',
    'n',
    'σ',
    'écart-type',
    'Standardabweichung',
  ])('%s is a spread', (heading) => {
    expect(summaries(`Stock 1 | Stock 2 | ${heading}`)[2]).toBe('spread');
  });
  it.each(['difference', 'Δ', 'Lowered vs stock', 'change', 'Lowered - stock diff'])(
    '%s is a difference',
    (heading) => {
      expect(summaries(`Stock | Lowered | ${heading}`)[2]).toBe('difference');
    },
  );
  it('words of theirs that name parts do not', () => {
    expect(summaries('std 1 | std 2 | ext 1')).toEqual([undefined, undefined, undefined]);
    expect(summaries('Max lift | Stock')).toEqual([undefined, undefined]);
  });
});
