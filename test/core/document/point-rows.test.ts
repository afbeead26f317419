import { describe, expect, it } from 'vitest';
import { type PointRow, readPointRows, rowKey } from '../../../core/document/point-rows.js';
import { STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';
import { METRIC, type UnitSystem } from '../../../core/quantity/units.js';

const INCHES: UnitSystem = { length: 'in', angle: 'degrees' };
const row = (name: string, ...cells: string[]): PointRow => ({ name, cells });
const read = (rows: PointRow[], ...rest: [UnitSystem?, Parameters<typeof readPointRows>[2]?]) =>
  readPointRows(rows, rest[0] ?? METRIC, rest[1]);

describe('rows are known by the trade’s names and by the keys of the document', () => {
  it.each([
    ['Lower arm, front pivot', 'lowerArm.front'],
    ['lower arm rear', 'lowerArm.rear'],
    ['Ball joint', 'lowerArm.ball'],
    ['TOP MOUNT (centre)', 'strut.top'],
    ['Damper, low point', 'strut.low'],
    ['damper low point', 'strut.low'],
    ['Second point on the damper', 'strut.low'],
    ['damper lower point', 'strut.low'],
    ['Tie rod, inner end', 'tieRod.inner'],
    ['Outer tie-rod', 'tieRod.outer'],
    ['Wheel center', 'wheelCentre'],
    ['Hub centre to ground', 'loadedRadius'],
    ['Static camber (°)', 'camber'],
    ['Toe-in', 'toe'],
    ['Toe change over 25 mm of bump', 'bumpSteer'],
  ])('%s', (name, key) => {
    expect(rowKey(name)).toBe(key);
  });
  it.each([...STRUT_POINT_KEYS, 'loadedRadius', 'camber', 'toe'])('%s', (key) => {
    expect(rowKey(key)).toBe(key);
  });
  it.each(['', 'upper arm', 'constructor', '__proto__', '1', 'ball'])('and “%s” is not', (name) => {
    expect(rowKey(name)).toBeUndefined();
  });
});

describe('reading rows', () => {
  it('three coordinates, one value for radius, camber and toe', () => {
    const { given, problems } = read([
      row('Ball joint', '-5', '700', '185'),
      row('Loaded radius', '310'),
      row('Camber', '', '−0.5°'),
      row('Toe', "0°6'"),
    ]);
    expect(problems).toEqual([]);
    expect(given).toEqual({ points: { 'lowerArm.ball': [-5, 700, 185] }, loadedRadius: 310, camber: -0.5, toe: 0.1 });
  });

  it('decimal commas and typographic minus signs', () => {
    const { given, problems } = read([row('Top mount', '−35,5', '585,25', '835')]);
    expect(problems).toEqual([]);
    expect(given.points['strut.top']).toEqual([-35.5, 585.25, 835]);
  });

  it('the unit of a heading holds for its column, the unit of a cell for itself, else the reader’s', () => {
    const cells = ['1', '20', '500 mm'];
    const [x, y, z] = read([row('Ball joint', ...cells)], INCHES).given.points['lowerArm.ball']!;
    expect([x, y, z]).toEqual([25.4, 508, 500]);
    const headed = read([row('Ball joint', ...cells)], METRIC, ['in', undefined, 'in']).given.points['lowerArm.ball'];
    expect(headed).toEqual([25.4, 20, 500]);
    const millimetres = read([row('Ball joint', '1', '20', '500')], INCHES, ['mm', 'mm', 'mm']).given.points;
    expect(millimetres['lowerArm.ball']).toEqual([1, 20, 500]);
    expect(read([row('Loaded radius', '12')], METRIC, ['in']).given.loadedRadius).toBeCloseTo(304.8, 10);
  });

  it('a fourth cell says how sure, with or without its sign, and its heading its unit', () => {
    const rows = [
      row('Ball joint', '1', '700', '180', '±2'),
      row('Top mount', '1', '580', '830', '3 mm'),
      row('Wheel centre', '0', '745', '310', ''),
    ];
    expect(read(rows)).toMatchObject({
      problems: [],
      given: { plusMinus: { 'lowerArm.ball': 2, 'strut.top': 3 } },
    });
    expect(read([rows[0]!], METRIC, [undefined, undefined, undefined, 'in']).given.plusMinus).toEqual({
      'lowerArm.ball': 50.8,
    });
    expect(read([rows[2]!]).given).not.toHaveProperty('plusMinus');
  });
});

describe('nothing is dropped silently', () => {
  it('every cell that is no number, by point and axis, with what stood there', () => {
    const { problems } = read([
      row('Ball joint', '1', 'seven', ''),
      row('Top mount', '1', '580', '830', '-2'),
      row('Camber'),
      row('Toe', '0.1 mm'),
    ]);
    expect(problems).toMatchObject([
      { code: 'not-a-number', path: 'lowerArm.ball.1', value: 'seven' },
      { code: 'missing', path: 'lowerArm.ball.2', value: '' },
      { code: 'out-of-range', path: 'plusMinus.strut.top', value: '-2', limit: 0 },
      { code: 'missing', path: 'camber' },
      { code: 'wrong-unit', path: 'toe', value: '0.1 mm' },
    ]);
  });
  it('a number that can be read in two ways, with both readings', () => {
    const { problems } = read([row('Ball joint', '1', '1,500', '185')]);
    expect(problems).toMatchObject([{ code: 'ambiguous', path: 'lowerArm.ball.1', choices: [1.5, 1500] }]);
  });
  it('a name that means nothing, and a row without one', () => {
    const { given, problems } = read([row('Upper arm', '1', '2', '3'), row(' ', '4', '5', '6')]);
    expect(given).toEqual({ points: {} });
    expect(problems).toEqual([
      { code: 'wrong-shape', path: 'Upper arm', value: '1 2 3' },
      { code: 'wrong-shape', path: 'row 2', value: '4 5 6' },
    ]);
  });
  it('more cells than a row has values for', () => {
    const { given, problems } = read([row('Ball joint', '1', '700', '180', '2', '9'), row('Camber', '-0.5', '1')]);
    expect(given).toEqual({ points: {} });
    expect(problems.map(({ path, code }) => [path, code])).toEqual([
      ['lowerArm.ball', 'wrong-shape'],
      ['camber', 'wrong-shape'],
    ]);
  });
  it('a second row for the same point: the first stays, the second is told', () => {
    const { given, problems } = read([
      row('Ball joint', '1', '700', '180'),
      row('Lower ball joint', '2', '700', '180'),
    ]);
    expect(given.points['lowerArm.ball']).toEqual([1, 700, 180]);
    expect(problems).toEqual([
      { code: 'wrong-shape', path: 'Lower ball joint', value: '2 700 180', other: 'lowerArm.ball' },
    ]);
  });

  it('are a driveway’s as well: a value and its ±, or else a tape’s and a gauge’s', () => {
    const { given, problems } = readPointRows(
      [
        { name: 'Lower arm length', cells: ['338 mm', '± 2 mm'] },
        { name: 'Height of the arm’s pivot', cells: ['193'] },
        { name: 'Lean of the damper', cells: ['8°'] },
        { name: 'Static camber', cells: ['-0.6'] },
      ],
      { length: 'mm', angle: 'degrees' },
    );
    expect(problems).toEqual([]);
    expect(given).toEqual({
      points: {},
      camber: -0.6,
      measures: {
        armLength: { value: 338, plusMinus: 2 },
        pivotHeight: { value: 193, plusMinus: 3 },
        damperLean: { value: 8, plusMinus: 0.5 },
      },
    });
  });

  it('tell caster, bump steer and where the ball joint lies under the tyre, each with its own usual ±', () => {
    const { given, problems } = readPointRows(
      [
        { name: 'Caster', cells: ['6.5°', '0.3°'] },
        { name: 'Bump steer (over 25 mm)', cells: ['-0.12'] },
        { name: 'Ball joint to the tyre’s middle', cells: ['44'] },
      ],
      { length: 'mm', angle: 'degrees' },
    );
    expect(problems).toEqual([]);
    expect(given.measures).toEqual({
      caster: { value: 6.5, plusMinus: 0.3 },
      bumpSteer: { value: -0.12, plusMinus: 0.1 },
      hubOffset: { value: 44, plusMinus: 3 },
    });
    const bare = readPointRows([{ name: 'Castor', cells: ['7'] }], { length: 'mm', angle: 'degrees' });
    expect(bare.given.measures).toEqual({ caster: { value: 7, plusMinus: 0.5 } });
  });

  it('name a driveway measurement that cannot be read', () => {
    const { problems } = readPointRows([{ name: 'Damper lean', cells: ['steep'] }], { length: 'mm', angle: 'degrees' });
    expect(problems).toMatchObject([{ code: 'not-a-number', path: 'damperLean.value' }]);
  });
});
