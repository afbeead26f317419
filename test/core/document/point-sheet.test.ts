import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPointSheet } from '../../../core/document/point-sheet.js';
import { STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';
import { ways, writePoints } from './write-points.js';

const NAMES = {
  'Lower arm, front pivot': 'lowerArm.front',
  'Lower arm, rear pivot': 'lowerArm.rear',
  'Ball joint': 'lowerArm.ball',
  'Top mount': 'strut.top',
  'Damper, low point': 'strut.low',
  'Tie rod, inner end': 'tieRod.inner',
  'Tie rod, outer end': 'tieRod.outer',
  'Wheel centre': 'wheelCentre',
} as const;
const names = Object.keys(NAMES) as (keyof typeof NAMES)[];

const mm = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => tenths / 10);
const point = fc.tuple(mm(-400, 400), mm(200, 800), mm(100, 900), mm(1, 9));
const points = fc
  .tuple(...names.map(() => point))
  .map((all) => Object.fromEntries(names.map((name, i) => [name, all[i]!])));
const camber = fc.integer({ min: -300, max: 100 }).map((hundredths) => hundredths / 100);

describe('a corner written as a table and read back is the same corner', () => {
  it('in every unit, order and style of heading, ± included', () => {
    fc.assert(
      fc.property(points, mm(250, 400), camber, ways, (all, radius, angle, way) => {
        const { language, ...sheet } = writePoints(all, radius, angle, way);
        const { given, problems } = readPointSheet(sheet, language);
        expect(problems).toEqual([]);
        expect(Object.keys(given.points).sort()).toEqual([...STRUT_POINT_KEYS].sort());
        for (const [name, [x, y, z, doubt]] of Object.entries(all)) {
          const key = NAMES[name as keyof typeof NAMES];
          [x, y, z].forEach((value, axis) => {
            expect(given.points[key]![axis], `${name} ${axis}`).toBeCloseTo(value, 6);
          });
          if (way.plusMinus === 'none') expect(given).not.toHaveProperty('plusMinus');
          else expect(given.plusMinus![key], `± of ${name}`).toBeCloseTo(doubt, 6);
        }
        expect(given.loadedRadius).toBeCloseTo(radius, 6);
        expect(given.camber).toBeCloseTo(angle, 9);
      }),
      { seed: 71, numRuns: 2000, endOnFailure: true },
    );
  });

  it('whatever else stands in a table: no cell is read twice, nothing throws, a problem says where', () => {
    const text = fc.oneof(
      fc.constantFrom(
        '',
        'x (mm)',
        'y',
        'z (in)',
        '±',
        'Value',
        'Unit',
        'Ball joint',
        'Top mount (in)',
        'Camber',
        '20',
        '1,500',
        '-5 in',
        '3 ft',
        '0°18′',
        'x',
        'Notes',
        'Height',
      ),
      fc.string({ maxLength: 6 }),
    );
    fc.assert(
      fc.property(fc.array(fc.array(text, { maxLength: 6 }), { maxLength: 8 }), text, (rows, caption) => {
        const { problems, given } = readPointSheet({ rows, caption }, 'en');
        for (const { path, code } of problems) expect([typeof path, typeof code]).toEqual(['string', 'string']);
        for (const [key, at] of Object.entries(given.points)) {
          if (at.some(Number.isNaN)) expect(problems.some(({ path }) => path.startsWith(key))).toBe(true);
        }
      }),
      { seed: 72, numRuns: 2000, endOnFailure: true },
    );
  });
});
