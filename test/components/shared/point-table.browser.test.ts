import { expect } from 'chai';
import { readPointTable } from '../../../components/page-data/point-table.js';

function table(markup: string, lang = 'en'): HTMLTableElement {
  const host = document.createElement('div');
  host.lang = lang;
  host.innerHTML = `<table>${markup}</table>`;
  return host.querySelector('table')!;
}
const read = (markup: string, lang?: string) => readPointTable(table(markup, lang));
const ball = (markup: string, lang?: string) => {
  const { given, problems } = read(markup, lang);
  return { at: given.points['lowerArm.ball'], plusMinus: given.plusMinus?.['lowerArm.ball'], problems };
};
/** A row of the ball joint under these headings. */
const under = (headings: string[], cells: string[], above = '', lang?: string) =>
  ball(
    `${above}<thead><tr><th>Hard point</th>${headings.map((text) => `<th>${text}</th>`).join('')}</tr></thead>
    <tbody><tr><th>Ball joint</th>${cells.map((text) => `<td>${text}</td>`).join('')}</tr></tbody>`,
    lang,
  );
const near = (at: readonly number[] | undefined, wanted: readonly number[]) => {
  expect(at, 'a point').to.have.length(wanted.length);
  for (const [i, x] of wanted.entries()) expect(at![i]).to.be.closeTo(x, 1e-6);
};

const INCHES = ['-0.2', '27.5', '7.1', '0.1'];
const MM = [-5.08, 698.5, 180.34];

describe('a page’s table of hard points: units', () => {
  for (const unit of [
    '/ in',
    '/in',
    ': in',
    '– in',
    "('')",
    '(in.)',
    'Inches',
    '(in)',
    '(inch)',
    '(inches)',
    '[in]',
    '(IN)',
    '(")',
    '(″)',
    'in inches',
    ', in',
    'in',
    'inch',
  ]) {
    it(`every heading names “${unit}”`, () => {
      const found = under(
        ['x', 'y', 'z', '±'].map((name) => `${name} ${unit}`),
        INCHES,
      );
      expect(found.problems).to.deep.equal([]);
      near(found.at, MM);
      expect(found.plusMinus).to.be.closeTo(2.54, 1e-9);
    });
  }
  for (const unit of ['(cm)', '[cm]', 'in cm', '(CM)', '(centimetres)', 'cm']) {
    it(`every heading names “${unit}”`, () => {
      const found = under(
        ['x', 'y', 'z', '±'].map((name) => `${name} ${unit}`),
        ['-0.5', '69,85', '18.0 cm', '.3'],
        '',
        'de',
      );
      expect(found.problems).to.deep.equal([]);
      near(found.at, [-5, 698.5, 180]);
      expect(found.plusMinus).to.be.closeTo(3, 1e-9);
    });
  }
  for (const unit of ['/ mm', '/mm', '(mm)', 'in mm', '[mm]', '(millimetres)', ', mm']) {
    it(`every heading names “${unit}”`, () => {
      const found = under(
        ['x', 'y', 'z', '±'].map((name) => `${name} ${unit}`),
        ['-5', '698.5', '180', '3'],
      );
      expect(found.problems).to.deep.equal([]);
      near(found.at, [-5, 698.5, 180]);
      expect(found.plusMinus).to.equal(3);
    });
  }

  const inInches: Record<string, () => ReturnType<typeof ball>> = {
    'a ± without a unit takes that of the table': () => under(['x (in)', 'y (in)', 'z (in)', '±'], INCHES),
    'only x’s column names the unit': () => under(['x (in)', 'y', 'z', '±'], INCHES),
    'only z’s column names it': () => under(['x', 'y', 'z (in)', '± (95 %)'], INCHES),
    'a row of units under the headings': () =>
      ball(`<thead><tr><th>Point</th><th>x</th><th>y</th><th>z</th><th>±</th></tr>
        <tr><th></th><th>in</th><th>in</th><th>in</th><th>in</th></tr></thead>
        <tr><th>Ball joint</th>${INCHES.map((text) => `<td>${text}</td>`).join('')}</tr>`),
    'a row of units in the body': () =>
      ball(`<tr><th>Point</th><th>x</th><th>y</th><th>z</th><th>±</th></tr>
        <tr><td></td><td>(in)</td><td>(in)</td><td>(in)</td><td>(in)</td></tr>
        <tr><th>Ball joint</th>${INCHES.map((text) => `<td>${text}</td>`).join('')}</tr>`),
    'one heading over all': () =>
      ball(`<thead><tr><th rowspan="2">Point</th><th colspan="4">Position (inches)</th></tr>
        <tr><th>x</th><th>y</th><th>z</th><th>±</th></tr></thead>
        <tr><th>Ball joint</th>${INCHES.map((text) => `<td>${text}</td>`).join('')}</tr>`),
    'the caption alone says it': () =>
      under(['x', 'y', 'z', '±'], INCHES, '<caption>Front left, all dimensions in inches; bump travel 62 mm</caption>'),
    'the heading over the names says it': () =>
      ball(`<thead><tr><th>Point (in)</th><th>x</th><th>y</th><th>z</th><th>±</th></tr></thead>
        <tr><th>Ball joint</th>${INCHES.map((text) => `<td>${text}</td>`).join('')}</tr>`),
    'each cell says it, the ± but not': () => under(['x', 'y', 'z', '±'], ['-0.2 in', '27.5"', '7.1 inch', '0.1']),
    'the row’s name says it': () =>
      ball(`<tr><th>Ball joint (in)</th>${INCHES.map((text) => `<td>${text}</td>`).join('')}</tr>`),
    'the first cell of a row says it, the others do not': () =>
      under(['x', 'y', 'z', '±'], ['-0.2 in', '27.5', '7.1', '0.1']),
    fractions: () =>
      under(['x (in)', 'y (in)', 'z (in)', '±'], ['-1/5', '27 1/2', '7<sup>1</sup>⁄<sub>10</sub>', '1/10']),
  };
  for (const [name, found] of Object.entries(inInches)) {
    it(`in inches: ${name}`, () => {
      const { at, plusMinus, problems } = found();
      expect(problems).to.deep.equal([]);
      near(at, MM);
      expect(plusMinus).to.be.closeTo(2.54, 1e-9);
    });
  }

  it('what a cell names holds for it alone, what it does not comes from its column', () => {
    const found = under(['x (mm)', 'y (in)', 'z (mm)', '± (mm)'], ['-5', '27.5', '7.1 in', '3']);
    expect(found.problems).to.deep.equal([]);
    near(
      found.at,
      MM.map((x, i) => (i === 0 ? -5 : x)),
    );
    expect(found.plusMinus).to.equal(3);
  });

  it('rows of units in cells settle the rows without any; two of them leave those in doubt', () => {
    const rows = (first: string, second: string) =>
      read(
        `<tr><th>Ball joint</th>${first}</tr><tr><th>Top mount</th>${second}</tr><tr><th>Wheel centre</th><td>0</td><td>29</td><td>12</td></tr>`,
      );
    const inches = '<td>0.2 in</td><td>27 in</td><td>7 in</td>';
    const same = rows(inches, '<td>-1 in</td><td>23 in</td><td>32 in</td>');
    expect(same.problems).to.deep.equal([]);
    near(same.given.points.wheelCentre, [0, 29 * 25.4, 12 * 25.4]);
    const mixed = rows(inches, '<td>-25 mm</td><td>585 mm</td><td>835 mm</td>');
    expect(mixed.problems.map(({ code }) => code)).to.deep.equal(['missing']);
    expect(mixed.problems[0]!.path).to.contain('Wheel centre');
  });

  it('single values and angles have their own: a row’s, a cell’s, its column’s', () => {
    const { given, problems } =
      read(`<thead><tr><th>Point</th><th>x (in)</th><th>y (in)</th><th>z (in)</th></tr></thead>
      <tr><th>Loaded radius (mm)</th><td colspan="3">302</td></tr>
      <tr><th>Static camber (′)</th><td colspan="3">−36</td></tr>
      <tr><th>Static toe (in)</th><td colspan="3">0.08°</td></tr>`);
    expect(problems).to.deep.equal([]);
    expect(given).to.deep.include({ loadedRadius: 302, camber: -0.6, toe: 0.08 });
    expect(
      read(
        '<thead><tr><th></th><th>x (in)</th><th>y</th><th>z</th></tr></thead><tr><th>Loaded radius</th><td>12</td></tr>',
      ).given.loadedRadius,
    ).to.be.closeTo(304.8, 1e-9);
  });

  it('a driveway’s table whose heading is the unit alone', () => {
    const { given, problems } = read(`<tr><th>Measurement</th><th>in</th><th>±</th></tr>
      <tr><th>Lower arm length</th><td>13.3</td><td>0.1</td></tr>`);
    expect(problems).to.deep.equal([]);
    expect(given.measures!.armLength!.value).to.be.closeTo(337.82, 1e-9);
    expect(given.measures!.armLength!.plusMinus).to.be.closeTo(2.54, 1e-9);
  });

  it('a driveway’s table in inches, the ± with and without its unit, a column of units', () => {
    const inches = read(`<thead><tr><th>Measurement</th><th>Value (in)</th><th>±</th></tr></thead>
      <tr><th>Lower arm length</th><td>13.3</td><td>0.1</td></tr>
      <tr><th>Lean of the damper</th><td>8°</td><td>0.5</td></tr>
      <tr><th>Height of the top mount</th><td>822 mm</td><td>3</td></tr>`);
    expect(inches.problems).to.deep.equal([]);
    expect(inches.given.measures!.armLength!.value).to.be.closeTo(337.82, 1e-9);
    expect(inches.given.measures!.armLength!.plusMinus).to.be.closeTo(2.54, 1e-9);
    expect(inches.given.measures!.damperLean).to.deep.equal({ value: 8, plusMinus: 0.5 });
    expect(inches.given.measures!.topHeight).to.deep.equal({ value: 822, plusMinus: 3 });
    const column = read(`<tr><th>Measurement</th><th>Value</th><th>Unit</th><th>±</th></tr>
      <tr><th>Lower arm length</th><td>33.8</td><td>cm</td><td>0.2</td></tr>
      <tr><th>Damper lean</th><td>480</td><td>arcmin</td><td>30</td></tr>
      <tr><th>Height of the top mount</th><td>2.7</td><td>ft</td><td></td></tr>`);
    expect(column.given.measures!.armLength!.value).to.be.closeTo(338, 1e-9);
    expect(column.given.measures!.armLength!.plusMinus).to.be.closeTo(2, 1e-9);
    expect(column.given.measures!.damperLean!.value).to.be.closeTo(8, 1e-9);
    expect(column.given.measures!.damperLean!.plusMinus).to.be.closeTo(0.5, 1e-9);
    expect(column.problems.map(({ code, value }) => `${code} ${value}`)).to.deep.equal(['wrong-unit ft']);
  });

  for (const unit of ['(ft)', '(m)', '[metres]', 'in feet', '(thou)', '(Zoll)', '(°)', '(mm/in)', '(′)']) {
    it(`a unit that is not understood, “${unit}”, is a problem at its heading, never a default`, () => {
      const found = under([`x ${unit}`, 'y (mm)', 'z (mm)', '±'], ['-5', '698.5', '180', '3']);
      expect(found.problems.length).to.be.greaterThan(0);
      expect(found.problems[0]!.path).to.contain(`x ${unit}`);
      expect(found.at?.[0]).to.satisfy((x: number | undefined) => x === undefined || Number.isNaN(x));
    });
  }
  it('nor is one in a cell, in a row’s name or in the caption', () => {
    expect(under(['x', 'y', 'z'], ['-5 ft', '698.5', '180']).problems).to.deep.include.members([
      { code: 'wrong-unit', path: 'lowerArm.ball.0', value: '-5 ft' },
    ]);
    expect(ball('<tr><th>Ball joint (ft)</th><td>1</td><td>700</td><td>180</td></tr>').problems[0]!.code).to.equal(
      'wrong-unit',
    );
    const caption = under(['x', 'y', 'z'], ['1', '700', '180'], '<caption>Hard points in feet</caption>');
    expect(caption.problems[0]!.code).to.equal('wrong-unit');
  });
  it('two named units leave a column without one in doubt', () => {
    const { problems } = under(['x (in)', 'y (mm)', 'z', '±'], ['1', '700', '180', '3']);
    expect(problems.map(({ code }) => code)).to.deep.equal(['missing', 'missing']);
    expect(problems[0]!.path).to.contain('“z”');
    expect(problems[1]!.path).to.contain('“±”');
  });
});

describe('a page’s table of hard points: columns', () => {
  for (const [headings, cells] of [
    [
      ['z (mm)', 'y (mm)', 'x (mm)'],
      ['180', '698.5', '-5'],
    ],
    [
      ['Height (mm)', 'Forward (mm)', 'Out (mm)'],
      ['180', '-5', '698.5'],
    ],
    [
      ['±', 'z, up from the ground', 'x, forward of the axle', 'y, out from the centreline'],
      ['3', '180', '-5', '698.5'],
    ],
    [
      ['Y', 'Z', 'X (fwd +)'],
      ['698.5', '180', '-5'],
    ],
    [
      ['x (forward)', 'y (outboard)', 'z (above ground)', 'Notes'],
      ['-5', '698.5', '180', 'see photo 12'],
    ],
    [
      ['Longitudinal', 'Lateral', 'Vertical', 'how sure'],
      ['-5', '698.5', '180', ''],
    ],
    [
      ['#', 'x', 'y', 'z'],
      ['3', '-5', '698.5', '180'],
    ],
    [
      ['x coordinate (mm)', 'y coordinate', 'z coordinate'],
      ['-5', '698.5', '180'],
    ],
    [
      ['X-axis', 'Y-axis', 'Z-axis'],
      ['-5', '698.5', '180'],
    ],
    [
      ['x position', 'y position', 'z position'],
      ['-5', '698.5', '180'],
    ],
    [
      ['Forward', 'Left', 'Up'],
      ['-5', '698.5', '180'],
    ],
    [
      ['(mm)', '(mm)', '(mm)'],
      ['-5', '698.5', '180'],
    ],
    [
      ['cm', 'cm', 'cm'],
      ['-0.5', '69.85', '18'],
    ],
  ] as const) {
    it(`are told by their headings: ${headings.join(' | ')}`, () => {
      const found = under([...headings], [...cells]);
      expect(found.problems).to.deep.equal([]);
      near(found.at, [-5, 698.5, 180]);
    });
  }
  for (const headings of [
    ['x (mm)', 'y (mm)', 'z (mm)', 'x (in)'],
    ['x', 'y', 'y'],
    ['x', 'y', 'weight'],
    ['x (rearward)', 'y', 'z'],
    ['x', 'y (inboard)', 'z'],
    ['x', 'y', 'z (down)'],
    ['x', 'y', 'x height'],
    ['x', 'y', 'z', '±', '±'],
  ]) {
    it(`unknown, doubled or counted the other way, they are a problem: ${headings.join(' | ')}`, () => {
      const { problems } = under(
        headings,
        headings.map((_, i) => String(100 + i)),
      );
      expect(problems.filter(({ path }) => path.startsWith('Heading')).length).to.be.greaterThan(0);
    });
  }
  it('without headings stand for x, y, z and ±', () => {
    const found = ball('<tr><td>Ball joint</td><td>-5</td><td>698.5</td><td>180</td><td>±3</td></tr>');
    expect(found.problems).to.deep.equal([]);
    near(found.at, [-5, 698.5, 180]);
    expect(found.plusMinus).to.equal(3);
  });
  it('hidden ones and hidden rows are not there; a section’s line says nothing; a foot counts', () => {
    const found = read(`<thead><tr><th>Point</th><th hidden>id</th><th>x</th><th>y</th><th>z</th></tr></thead>
      <tbody><tr><th colspan="5">Carrier points</th></tr>
      <tr><th>Ball joint</th><td hidden>77</td><td>-5</td><td>698.5</td><td>180</td></tr>
      <tr hidden><th>Ball joint</th><td hidden>78</td><td>9</td><td>9</td><td>9</td></tr></tbody>
      <tfoot><tr><th>Loaded radius</th><td hidden></td><td colspan="3">302</td></tr></tfoot>`);
    expect(found.problems).to.deep.equal([]);
    near(found.given.points['lowerArm.ball'], [-5, 698.5, 180]);
    expect(found.given.loadedRadius).to.equal(302);
  });
  it('a name that says the value counts otherwise is a problem: the right corner, negative camber, toe-out, total toe', () => {
    for (const name of ['Ball joint (right)', 'Static camber (negative)', 'Static toe (out)', 'Static toe (total)']) {
      const { problems } = read(`<tr><th>${name}</th><td>0.6</td></tr>`);
      expect(
        problems.map(({ path }) => path),
        name,
      ).to.deep.equal([name]);
    }
  });
});
