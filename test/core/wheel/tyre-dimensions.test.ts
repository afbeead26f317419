import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulaWidth, tyreDimensions } from '../../../core/wheel/tyre-dimensions.js';
import { readTyreSize } from '../../../core/wheel/tyre-size.js';

/**
 * READ: seen in the source named. MEMORY: nobody looked it up; it agrees with the formula.
 * Formula: UN Regulation No. 30, 6.1.1.1 (READ). Of the published figures only those of P205/60R15 are READ (a tyre forum
 * of August 1999 that quotes the United States' design guide: 8.23 in wide, 24.69 in across).
 */
const ROWS = readFileSync(new URL('../../reference/tyre_dimensions.csv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line && !/^(#|size,)/.test(line))
  .map((line) => {
    const [size, , , , rim, , , width, height, diameter, publishedWidth, publishedDiameter, ofWidth, ofDiameter] =
      line.split(',') as [string, ...string[]];
    const row = { size, rim, width, height, diameter, publishedWidth, publishedDiameter };
    const figures = Object.fromEntries(Object.entries(row).map(([key, text]) => [key, Number(text)]));
    return { ...figures, size, ofWidth: ofWidth!, ofDiameter: ofDiameter! } as { [K in keyof typeof row]: number } & {
      size: string;
      ofWidth: string;
      ofDiameter: string;
    };
  });

describe('published sizes', () => {
  it('are eleven, one of them READ', () => {
    expect(ROWS.map(({ ofWidth }) => ofWidth)).toEqual(['READ 8.23 in', ...Array(10).fill('MEMORY')]);
  });

  it.each(ROWS)('$size is the published width ($ofWidth) and diameter ($ofDiameter) on its measuring rim', (row) => {
    const d = tyreDimensions(row.size);
    expect(d.measuringRimInch).toBe(row.rim);
    expect(d).toEqual(tyreDimensions(row.size, row.rim));
    expect(d.sectionWidth).toBeCloseTo(row.width, 9);
    expect(d.shown).toEqual({
      sectionWidth: row.publishedWidth,
      sectionHeight: row.height,
      overallDiameter: row.publishedDiameter,
    });
    expect(row.publishedDiameter).toBe(row.diameter);
    expect(d).toMatchObject({ fit: 'permitted', isFactorUncertain: false });
  });

  it('of P205/60R15 in inches are those READ', () => {
    const { shown } = tyreDimensions('P205/60R15', 6);
    expect((shown.sectionWidth / 25.4).toFixed(2)).toBe('8.23');
    expect((shown.overallDiameter / 25.4).toFixed(2)).toBe('24.69');
  });
});

describe('rules READ on pages of tyre makers and dealers', () => {
  it('P255/50R16 from a 7.0 to a 9.5 in rim grows by 1.0 in (0.2 in each half inch), from about 10.2 to 11.2 in', () => {
    const size = readTyreSize('P255/50R16');
    const [narrow, wide] = [7, 9.5].map((rim) => formulaWidth(size, rim) / 25.4) as [number, number];
    expect(wide - narrow).toBeCloseTo(1, 12);
    // The page's tyre is 0.17 in wider than the formula's, within the 4 %.
    expect(Math.abs(narrow - 10.2)).toBeLessThan(0.04 * 10.2);
    // Answered within the permitted rims only: by the same rule, 0.8 in for two inches.
    const permitted = (rim: number) => tyreDimensions('P255/50R16', rim).sectionWidth / 25.4;
    expect(permitted(9) - permitted(7)).toBeCloseTo(0.8, 12);
    expect(permitted(9.5)).toBeNaN();
  });

  it('half an inch of rim is about 5 mm of tyre', () => {
    const change = tyreDimensions('225/45R17', 8).sectionWidth - tyreDimensions('225/45R17', 7.5).sectionWidth;
    expect(change).toBeCloseTo(5, 0);
    expect(change).toBeCloseTo(5.08, 12);
  });

  it.each([
    ['255/50R16', 7.028],
    ['255/45R17', 8.534],
  ])('%s is its nominal width on its theoretical rim, %d in', (size, rim) => {
    expect(formulaWidth(readTyreSize(size), rim)).toBeCloseTo(255, 1);
  });

  it.each([
    ['165/80R13', 330, 'MEMORY'],
    ['185/60R14', 356, 'MEMORY'],
    ['195/65R15', 381, 'READ'],
    ['205/55R16', 406, 'READ'],
    ['225/45R17', 432, 'MEMORY'],
    ['225/40R18', 457, 'MEMORY'],
    ['235/35R19', 483, 'MEMORY'],
    ['245/35R20', 508, 'MEMORY'],
  ])('the nominal rim diameter of %s is %d mm (%s)', (size, mm) => {
    expect(tyreDimensions(size).rimDiameter).toBe(mm);
  });
});

/** Common practice from memory, no source. */
it.each([
  ['165/80R13', 4.5],
  ['185/70R14', 5.5],
  ['305/30R19', 11],
])('%s is stated on a rim of %d in (MEMORY)', (size, rim) => {
  expect(tyreDimensions(size).measuringRimInch).toBe(rim);
});

it('rounds the height before the diameter, and only what is shown', () => {
  const d = tyreDimensions('225/45R17');
  expect(d).toMatchObject({ sectionHeight: 101.25, freeDiameter: 634.5 });
  expect(d.shown).toMatchObject({ sectionHeight: 101, overallDiameter: 634 });
});

/** UN Regulation No. 30, 6.1.4 and 6.1.5, from memory. */
it.each([
  ['205/60R15', 1.04, 1.04],
  ['205/60D15', 1.06, 1.08],
  ['205/60B15', 1.06, 1.08],
])('%s: a new tyre is at most %d times the width and %d times the height, and at least 0.97', (size, wide, high) => {
  const d = tyreDimensions(size);
  expect(d.largest.sectionWidth).toBeCloseTo(208.56 * wide, 9);
  expect(d.largest.freeDiameter).toBeCloseTo(381 + 246 * high, 9);
  expect(d.smallest.freeDiameter).toBeCloseTo(381 + 246 * 0.97, 9);
});

/** The ranges: common practice from memory, no source. */
it.each([
  ['205/55R16', 5.5, 7.5],
  ['225/45R17', 7, 8.5],
  ['245/40R18', 8, 9.5],
])('%s goes on rims of %d to %d in; outside there is no width, but a diameter', (size, low, high) => {
  expect(tyreDimensions(size).permittedRimInch).toEqual([low, high]);
  for (const rim of [low, high]) expect(tyreDimensions(size, rim).fit).toBe('permitted');
  for (const [rim, fit] of [
    [low - 0.5, 'pinched'],
    [high + 0.5, 'stretched'],
  ] as const) {
    const d = tyreDimensions(size, rim);
    expect(d.fit).toBe(fit);
    expect([d.sectionWidth, d.shown.sectionWidth, d.largest.sectionWidth]).toEqual([NaN, NaN, NaN]);
    expect(d.freeDiameter).toBe(tyreDimensions(size).freeDiameter);
  }
});

it('says that the theoretical rim of 30-series and below is uncertain; it would be 0.90 of the nominal width', () => {
  expect(tyreDimensions('305/30R19')).toMatchObject({ isFactorUncertain: true });
  expect(formulaWidth(readTyreSize('305/30R19'), (0.9 * 305) / 25.4)).toBeCloseTo(305, 9);
  expect(tyreDimensions('305/35R19').isFactorUncertain).toBe(false);
});

it.each([
  [2.9, 'out-of-range', 3],
  [17, 'out-of-range', 16],
  [NaN, 'not-finite', undefined],
  ['8', 'not-a-number', undefined],
  [null, 'missing', undefined],
] as const)('a rim of %j in is refused: %s', (rim, code, limit) => {
  expect(() => tyreDimensions('225/45R17', rim as number)).toThrow(
    expect.objectContaining({
      problems: [{ code, path: 'rimWidthInch', value: rim, ...(limit !== undefined && { limit }) }],
    }),
  );
});

it('names what is wrong with size and rim at once', () => {
  expect(() => tyreDimensions('225', 30)).toThrow(
    expect.objectContaining({
      problems: [
        expect.objectContaining({ path: 'size', code: 'wrong-shape' }),
        expect.objectContaining({ path: 'rimWidthInch', code: 'out-of-range' }),
      ],
    }),
  );
});

describe('of any size', () => {
  const sizes = fc
    .tuple(
      fc.integer({ min: 25, max: 71 }).map((n) => 5 * n),
      fc.integer({ min: 4, max: 17 }).map((n) => 5 * n),
      fc.integer({ min: 10, max: 24 }),
    )
    .map(([section, aspect, rim]) => `${section}/${aspect}R${rim}`);
  const shares = fc.double({ min: 0, max: 1, noNaN: true });
  const settings = { seed: 7, numRuns: 500, endOnFailure: true };

  it('a wider rim within the permitted makes the tyre wider by 0.4 of it and leaves the diameter', () => {
    fc.assert(
      fc.property(sizes, shares, shares, (size, a, b) => {
        const [low, high] = tyreDimensions(size).permittedRimInch;
        const [one, other] = [a, b].map((share) => tyreDimensions(size, low + share * (high - low)));
        const mm = (other!.rimWidthInch - one!.rimWidthInch) * 25.4;
        expect(other!.sectionWidth - one!.sectionWidth).toBeCloseTo(0.4 * mm, 9);
        expect(other!.freeDiameter).toBe(one!.freeDiameter);
      }),
      settings,
    );
  });

  it('the measuring rim is a whole number of half inches among the permitted, and the limits enclose the tyre', () => {
    fc.assert(
      fc.property(sizes, (size) => {
        const d = tyreDimensions(size);
        expect(Number.isInteger(2 * d.measuringRimInch)).toBe(true);
        expect(d).toMatchObject({ fit: 'permitted', rimWidthInch: d.measuringRimInch });
        expect(d.sectionWidth).toBeLessThan(d.largest.sectionWidth);
        expect(d.freeDiameter).toBeLessThan(d.largest.freeDiameter);
        expect(d.freeDiameter).toBeGreaterThan(d.smallest.freeDiameter);
        expect(Math.abs(d.shown.overallDiameter - d.freeDiameter)).toBeLessThanOrEqual(1);
      }),
      settings,
    );
  });

  it('a higher series stands higher', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 125, max: 355 }),
        fc.integer({ min: 20, max: 84 }),
        fc.integer({ min: 10, max: 24 }),
        (section, aspect, rim) => {
          const lower = tyreDimensions(`${section}/${aspect}R${rim}`).freeDiameter;
          const higher = tyreDimensions(`${section}/${aspect + 1}R${rim}`).freeDiameter;
          expect(higher - lower).toBeCloseTo(section / 50, 9);
        },
      ),
      settings,
    );
  });
});
