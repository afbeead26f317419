import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { curveOf } from '../../../../core/curve/curve.js';
import { solveSource } from '../../../../core/curve-sources/solve-source.js';
import { METRIC } from '../../../../core/quantity/units.js';
import { quantityIn } from '../../../../core/readings/table/quantity-in.js';
import { splitText } from '../../../../core/readings/table/split-text.js';
import { understand } from '../../../../core/readings/table/understand.js';
import type { Understanding, UnderstandOptions } from '../../../../core/readings/table/understanding.js';

// All sheets are invented. How people write readings down: common practice, no source.

const read = (text: string, options: Partial<UnderstandOptions> = {}): Understanding =>
  understand(splitText(text), { quantity: 'toe', units: METRIC, ...options });
const values = ({ readings }: Understanding) => readings.map(({ value }) => value);
const asked = ({ questions }: Understanding) => questions.map(({ id, chosen }) => [id, chosen]);
const roles = ({ columns }: Understanding) => columns.map(({ role }) => role);
const sheet = (...lines: string[]) => lines.map((line) => line.replaceAll('|', '\t')).join('\n');
const SAID = { base: '300', 'front-sign': 'inboard' };
const INCHES = { length: 'in', angle: 'degrees' } as const;
/** 1 mm over 300 mm: the row of test/reference/toe_gauge_cases.csv. */
const ONE_IN_300 = 0.190985224;

/** test/reference/toe_gauge_cases.csv: derived trigonometry, toe = atan((front − rear)/base). */
const CASES = readFileSync(new URL('../../../reference/toe_gauge_cases.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(2)
  .map((line) =>
    line
      .match(/("[^"]*"|[^,]*),(.*)/)![2]!
      .split(',')
      .map(Number),
  )
  .map(([base, difference, toe]) => ({ base: base!, difference: difference!, toe: toe! }));

const WAYS = [
  ['dials in mm', 'Front dial (mm)|Rear dial (mm)', 1, 5, SAID],
  ['dials that count the other way', 'Front dial (mm)|Rear dial (mm)', -1, 5, { 'front-sign': 'outboard' }],
  ['dials in inches', 'Front dial (in)|Rear dial (in)', 1 / 25.4, 0.2, SAID],
  ['dials in thousandths of an inch', 'Front dial (thou)|Rear dial (thou)', 1000 / 25.4, 200, SAID],
  ['the same, called 0.001 in', 'Front dial (0.001 in)|Rear dial (0.001 in)', 1000 / 25.4, 200, SAID],
  ['a tape to a string', 'Front to string (mm)|Rear to string (mm)', 1, 310, {}],
  ['a tape from the centreline', 'Front from centreline (cm)|Rear from centreline (cm)', -0.1, 62, {}],
  ['the rear named first', 'Rear (mm)|Front (mm)', -1, 12, SAID],
] as const;

describe('figures at the front and at the rear, pasted, become the curve of toe', () => {
  it.each(WAYS)('%s', (_, headings, scale, rear, said) => {
    for (const { base, difference, toe } of CASES) {
      // Toe at zero as in the case, and none 20 mm below.
      const figure = (mm: number) => (rear + mm * scale).toFixed(9);
      const isRearFirst = headings.startsWith('Rear');
      const row = (travel: number, mm: number) =>
        isRearFirst ? `${travel}|${rear}|${figure(-mm)}` : `${travel}|${figure(mm)}|${rear}`;
      const rows = [row(-20, 0), row(0, difference), row(20, 2 * difference)];
      const text = sheet(`Base ${base} mm||`, `Travel (mm)|${headings}`, ...rows);
      const found = read(text, { answers: said });
      expect(found.questions.filter(({ isAnswered }) => !isAnswered)).toEqual([]);
      expect(values(found)[1]).toBeCloseTo(toe, 6);
      const curve = curveOf(
        solveSource({ kind: 'readings', quantity: 'toe', readings: found.readings, degree: 1 }).toe!,
      );
      const exact = (Math.atan((2 * difference) / base) * 180) / Math.PI;
      expect(curve.change(20, -20)).toBeCloseTo(exact, 6);
    }
  });
});

describe('what such a sheet leaves open is asked, and counts for nothing until it is said', () => {
  const dials = sheet('Travel (mm)|Front dial (mm)|Rear dial (mm)', '-20|3|2', '20|2|3.5');
  it('the base and the way that the front counts', () => {
    const found = read(dials);
    expect(asked(found)).toEqual([
      ['base', undefined],
      ['front-sign', undefined],
    ]);
    expect(found.questions[1]).toMatchObject({ by: 'dials', choices: [{ id: 'inboard' }, { id: 'outboard' }] });
    expect(found.readings).toEqual([]);
    expect(found.cells[1]!.map(({ state }) => state)).toEqual(['left-out', 'asked', 'asked']);
    for (const answers of [{ base: '300' }, { 'front-sign': 'inboard' }]) {
      expect(read(dials, { answers }).readings).toEqual([]);
    }
    expect(values(read(dials, { answers: SAID }))[0]).toBeCloseTo(ONE_IN_300, 8);
    expect(values(read(dials, { answers: { ...SAID, 'front-sign': 'outboard' } }))[0]).toBeCloseTo(-ONE_IN_300, 8);
  });

  it('readings that are all toe-out too: no sign is taken for granted', () => {
    const out = sheet('Travel (mm)|Front dial (mm)|Rear dial (mm)', '-20|2|3', '20|2|4');
    expect(asked(read(out, { answers: { base: '300' } }))).toContainEqual(['front-sign', undefined]);
  });

  it('bare “Front” and “Rear” with a unit are such figures, whatever stands between', () => {
    for (const heads of ['Front mm|Rear mm', 'Front [mm]|Rear [mm]', 'Front edge (mm)|Rear edge (mm)', 'Front|Rear'])
      expect(roles(read(sheet(`Travel (mm)|${heads}`, '-20|3|2', '20|2|3.5')))).toEqual([
        'travel',
        'dialFront',
        'dialRear',
      ]);
    expect(roles(read(sheet('Travel (mm)|Front track (mm)|Toe (°)', '-20|1490|0.1', '20|1492|0')))[1]).toBe('other');
  });

  it('a string tells the way; a string inside the car does not', () => {
    const string = (title: string) =>
      sheet(`${title}||`, 'Travel (mm)|Front (mm)|Rear (mm)', '-20|301|300', '20|300|302');
    const found = read(string('Tape to a string outside the wheel, plate 300 mm'));
    expect(asked(found)).toEqual([]);
    expect(values(found)[0]).toBeCloseTo(ONE_IN_300, 8);
    expect(asked(read(string('String inside the car, plate 300 mm')))).toEqual([['front-sign', undefined]]);
    expect(read(string('Tape, plate 300 mm')).questions).toMatchObject([{ by: 'tape' }]);
    expect(values(read(string('From the centre line of the car, plate 300 mm')))[0]).toBeCloseTo(-ONE_IN_300, 8);
  });

  it('a unit that nobody named is asked where the figures look like inches', () => {
    const found = read(sheet('Travel (mm)|Front dial|Rear dial', '-20|0.030|0.010', '20|0.020|0.035'), {
      answers: SAID,
    });
    expect(asked(found)).toContainEqual(['unit:1', 'in']);
    const thou = read(sheet('Travel (mm)|Front dial|Rear dial', '-20|0.030|0.010', '20|0.020|0.035'), {
      answers: { ...SAID, 'unit:1': 'mm' },
    });
    expect(values(thou)[0]).toBeCloseTo((Math.atan(0.02 / 300) * 180) / Math.PI, 9);
    expect(asked(read(dials, { units: INCHES, answers: SAID }))).not.toContainEqual(['unit:1', 'in']);
  });
});

describe('a base', () => {
  const dials = (title: string) =>
    sheet(`${title}||`, 'Travel (mm)|Front dial (mm)|Rear dial (mm)', '-20|3|2', '20|2|3.5');
  it.each([
    ['Dials 10 in apart', 254],
    ['base 300 mm', 300],
    ['Plate 40 cm long', 400],
    ['plate 14", dials', 355.6],
    ['Spacing: 1/2 m', undefined],
    ['base 0 mm', undefined],
    ['base 5 mm', undefined],
    ['Toe over 60 mm of bump', undefined],
    ['Bump steer over 80 mm travel', undefined],
  ])('“%s” is %s mm', (title, base) => {
    const found = read(dials(title), { answers: { 'front-sign': 'inboard' } });
    if (base === undefined) expect(asked(found)).toContainEqual(['base', undefined]);
    else expect(values(found)[0]).toBeCloseTo((Math.atan(1 / base) * 180) / Math.PI, 10);
  });

  it('of nothing is no answer, and one in inches is', () => {
    for (const base of ['0', '-300', '5', '9000', 'x'])
      expect(read(dials('Dials'), { answers: { ...SAID, base } }).readings).toEqual([]);
    expect(values(read(dials('Dials'), { answers: { ...SAID, base: '10 in' } }))[0]).toBeCloseTo(
      (Math.atan(1 / 254) * 180) / Math.PI,
      10,
    );
  });

  it('serves a gauge in mm as well, which is the difference itself', () => {
    const found = read(sheet('Travel (mm)|Toe (mm)', '-20|1', '20|0'), { answers: { base: '300' } });
    expect(values(found)[0]).toBeCloseTo(ONE_IN_300, 8);
  });
});

describe('slips in such a sheet', () => {
  it('a missing figure leaves its line out and says so; the others count', () => {
    const found = read(sheet('Travel (mm)|Front dial (mm)|Rear dial (mm)', '-20|3|2', '0|2|', '20|2|3.5'), {
      answers: SAID,
    });
    expect(found.readings.map(({ travel }) => travel)).toEqual([-20, 20]);
    expect(found.cells[2]![1]).toMatchObject({ state: 'left-out', why: 'no-value' });
    const bad = read(sheet('Travel (mm)|Front dial (mm)|Rear dial (mm)', '-20|3|2', '0|2|3.x5', '20|2|3.5'), {
      answers: SAID,
    });
    expect(bad.cells[2]![2]).toMatchObject({ state: 'problem', text: '3.x5' });
    expect(bad.readings).toHaveLength(2);
  });

  it('a column without its other one is named, and gives no toe', () => {
    const found = read(sheet('Travel (mm)|Front dial (mm)', '-20|3', '20|2'), { answers: SAID });
    expect(found.readings).toEqual([]);
    expect(found.problems).toContainEqual({ code: 'missing', path: 'pair', value: undefined });
  });

  it('two passes are paired within themselves, the rear first as well', () => {
    const heads = ['Front dial (mm)|Rear dial (mm)', 'Rear dial (mm)|Front dial (mm)'];
    for (const [i, head] of heads.entries()) {
      const row = (travel: number, ...pairs: [number, number][]) =>
        `${travel}|${pairs.map((pair) => (i === 0 ? pair : [...pair].reverse()).join('|')).join('|')}`;
      const text = sheet(
        `|Pass 1||Pass 2|`,
        `Travel (mm)|${head}|${head}`,
        row(-20, [3, 2], [9, 7]),
        row(20, [2, 2], [8, 5]),
      );
      const found = read(text, { answers: SAID });
      const degrees = (mm: number) => (Math.atan(mm / 300) * 180) / Math.PI;
      expect(values(found)).toEqual([1, 2, 0, 3].map((mm) => expect.closeTo(degrees(mm), 9)));
      expect(new Set(found.readings.map(({ pass }) => pass))).toEqual(new Set(['Pass 1', 'Pass 2']));
    }
  });
});

describe('the words over two figures', () => {
  it.each([
    ['Front dial (mm)|Rear dial (mm)', ''],
    ['Front from centreline (cm)|Rear from centreline (cm)', ''],
    ['Standard joints, front dial (mm)|Standard joints, rear dial (mm)', 'Standard joints'],
  ])('name parts by what else they say: %s', (heads, name) => {
    const found = read(sheet(`Travel (mm)|${heads}`, '-20|3|2', '20|2|3.5'), { answers: SAID });
    expect(found.sets.map((set) => set.name)).toEqual([name]);
  });

  it('part sets', () => {
    const heads = ['Stock', 'Lower joint'].flatMap((set) => [`${set} front (mm)`, `${set} rear (mm)`]);
    const text = sheet(`Travel (mm)|${heads.join('|')}`, '-20|3|2|4|2', '0|3|2.5|3|2', '20|2|3.5|2|3.1');
    expect(read(text, { answers: SAID }).sets.map(({ name }) => name)).toEqual(['Stock', 'Lower joint']);
  });
});

describe('a published table, where nobody can be asked', () => {
  const dials = sheet('Travel (mm)|Front dial (mm)|Rear dial (mm)', '-20|3|2', '20|2|3.5');
  it('says itself how its figures count, or is refused', () => {
    const found = read(dials, { language: 'en' });
    expect(found.problems.map(({ path }) => path)).toEqual(['base', 'front']);
    expect(found.readings).toEqual([]);
    const told = read(dials, { language: 'en', answers: SAID });
    expect(told.problems).toEqual([]);
    expect(values(told)[0]).toBeCloseTo(ONE_IN_300, 8);
  });
});

describe('of which angle a sheet is', () => {
  it.each([
    ['Travel (mm)|Front dial (mm)|Rear dial (mm)', 'toe'],
    ['Hub to arch|Bump steer', 'toe'],
    ['Travel|Camber (°)', 'camber'],
    ['Travel|Camber (°)|Toe (°)', undefined],
    ['Travel|Pass 1|Pass 2', undefined],
    ['Travel|Front dial (mm)', undefined],
  ])('its headings say: %s', (headings, quantity) => {
    const row = headings.split('|').map((_, i) => String(i + 1));
    expect(
      quantityIn(
        splitText(
          sheet(
            headings,
            row.join('|'),
            row
              .map(Number)
              .map((n) => -n)
              .join('|'),
          ),
        ),
      ),
    ).toBe(quantity);
  });
});
