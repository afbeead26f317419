import { expect } from 'chai';
import { readReadingTable } from '../../../components/page-data/reading-table.js';

function table(markup: string, lang = 'en'): HTMLTableElement {
  const host = document.createElement('div');
  host.lang = lang;
  host.innerHTML = markup;
  return host.querySelector('table')!;
}

const PASSES = `<table><caption>Front left, invented</caption>
  <thead>
    <tr><th rowspan="2">Travel (mm)</th><th colspan="2">Pass 1</th><th>Pass 2</th></tr>
    <tr><th>up</th><th>down</th><th>up</th></tr>
  </thead>
  <tbody>
    <tr><th>−20</th><td><data value="0.11">0,11°</data></td><td>0.13</td><td></td></tr>
    <tr><th>0</th><td>−0.52</td><td>–</td><td>−0°30′</td></tr>
  </tbody>
  <tbody><tr><th>20</th><td>−1.30</td><td>−0.93</td><td>−0.91</td></tr></tbody>
</table>`;

const ROWS = '<tr><td>-2</td><td>0.4</td></tr><tr><td>0</td><td>-0.5</td></tr><tr><td>2</td><td>-1.2</td></tr>';

describe('a page’s table of readings', () => {
  it('is read with its merged headings, <data value> standing for the text', () => {
    const { readings, questions, problems, columns } = readReadingTable(table(PASSES), 'camber');
    expect(problems).to.deep.equal([]);
    expect(questions).to.deep.equal([]);
    expect(columns.map(({ role }) => role)).to.deep.equal(['travel', 'value', 'value', 'value']);
    expect(readings).to.deep.equal([
      { travel: -20, value: 0.11, pass: 'Pass 1', going: 'up' },
      { travel: -20, value: 0.13, pass: 'Pass 1', going: 'down' },
      { travel: 0, value: -0.52, pass: 'Pass 1', going: 'up' },
      { travel: 0, value: -0.5, pass: 'Pass 2', going: 'up' },
      { travel: 20, value: -1.3, pass: 'Pass 1', going: 'up' },
      { travel: 20, value: -0.93, pass: 'Pass 1', going: 'down' },
      { travel: 20, value: -0.91, pass: 'Pass 2', going: 'up' },
    ]);
  });

  it('is written in its language: 1,500 is a thousand and a half in English, one and a half in German', () => {
    const markup = '<table><tr><td>-1,250</td><td>0.2</td></tr><tr><td>1,500</td><td>-0.2</td></tr></table>';
    expect(readReadingTable(table(markup, 'de'), 'camber').readings.map(({ travel }) => travel)).to.deep.equal([
      -1.25, 1.5,
    ]);
    const english = readReadingTable(table(markup, 'en'), 'camber');
    expect(english.readings).to.deep.equal([]);
    expect(english.cells.flat().filter(({ state }) => state === 'problem').length).to.equal(2);
  });

  for (const [heading, value] of [
    ['Travel (ft)', 'ft'],
    ['Travel in metres', 'metres'],
    ['Travel (thou)', 'thou'],
  ] as const) {
    it(`under “${heading}” is a problem at its heading, never millimetres`, () => {
      const { problems } = readReadingTable(
        table(`<table><tr><th>${heading}</th><th>Camber (°)</th></tr>${ROWS}</table>`),
        'camber',
      );
      expect(problems).to.deep.equal([{ code: 'wrong-unit', path: `Heading “${heading}”`, value }]);
    });
  }

  it('under angles in radians is one too', () => {
    const { problems } = readReadingTable(
      table(`<table><tr><th>Travel (mm)</th><th>Camber (mrad)</th></tr>${ROWS}</table>`),
      'camber',
    );
    expect(problems.map(({ path, value }) => [path, value])).to.deep.equal([['Heading “Camber (mrad)”', 'mrad']]);
  });

  it('takes the unit of its caption where no heading names one', () => {
    const under = (caption: string, heading = 'Travel') =>
      readReadingTable(
        table(`<table><caption>${caption}</caption><tr><th>${heading}</th><th>Camber (°)</th></tr>${ROWS}</table>`),
        'camber',
      );
    const travels = ({ readings }: ReturnType<typeof under>) => readings.map(({ travel }) => travel);
    expect(travels(under('Front left, travel in inches'))).to.deep.equal([-50.8, 0, 50.8]);
    expect(travels(under('Joints 22 mm lower, invented'))).to.deep.equal([-2, 0, 2]);
    expect(travels(under('Travel in inches', 'Travel (mm)'))).to.deep.equal([-2, 0, 2]);
    expect(under('Travel in centimetres').problems).to.deep.equal([
      { code: 'wrong-unit', path: 'Caption', value: 'cm' },
    ]);
    expect(under('Travel in feet').problems).to.deep.equal([{ code: 'wrong-unit', path: 'Caption', value: 'feet' }]);
    expect(under('Travel in feet', 'Travel (mm)').problems).to.deep.equal([]);
  });

  it('of heights says in an attribute which is zero; without it that is a problem', () => {
    const rows =
      '<tr><th>Hub to arch (mm)</th><th>Camber</th></tr><tr><td>380</td><td>0.1</td></tr><tr><td>340</td><td>-0.9</td></tr>';
    const given = readReadingTable(table(`<table data-zero="365">${rows}</table>`), 'camber');
    expect(given.readings.map(({ travel }) => travel)).to.deep.equal([-15, 25]);
    expect(given.problems).to.deep.equal([]);
    expect(readReadingTable(table(`<table>${rows}</table>`), 'camber').problems[0]!.path).to.equal('zero');
  });

  it('of toe over a base says in attributes how far apart it was read and how the front counts; nothing is assumed', () => {
    const rows =
      '<tr><th>Travel (mm)</th><th>Front dial (mm)</th><th>Rear dial (mm)</th></tr><tr><td>-20</td><td>3</td><td>2</td></tr><tr><td>20</td><td>2</td><td>3.5</td></tr>';
    const read = (attributes: string) => readReadingTable(table(`<table ${attributes}>${rows}</table>`), 'toe');
    const { readings, problems, overBase } = read('data-base="300" data-front="inboard"');
    expect(problems).to.deep.equal([]);
    // 1 mm over 300 mm: the row of test/reference/toe_gauge_cases.csv.
    expect(readings[0]!.value).to.be.closeTo(0.190985224, 1e-8);
    expect(overBase).to.deep.equal({ by: 'dials', base: 300, front: 'inboard' });
    expect(read('data-base="10 in" data-front="outboard"').readings[0]!.value).to.be.closeTo(
      (-Math.atan(1 / 254) * 180) / Math.PI,
      1e-9,
    );
    expect(read('').problems.map(({ path }) => path)).to.deep.equal(['base', 'front']);
    expect(read('data-base="0" data-front="in"').problems).to.deep.equal([
      { code: 'out-of-range', path: 'data-base', value: '0', limit: 20 },
      { code: 'unknown-name', path: 'data-front', value: 'in', names: ['inboard', 'outboard'] },
    ]);
    expect(read('data-base="300" data-front="inboard" data-order="up"').problems).to.deep.equal([
      { code: 'unknown-name', path: 'data-order', value: 'up', names: ['any'] },
    ]);
    for (const attributes of ['', 'data-base="300"', 'data-front="inboard"', 'data-base="0" data-front="inboard"'])
      expect(read(attributes).readings).to.deep.equal([]);
  });
});

describe('the parser of pasted text', () => {
  it('loads in a browser when it is asked for', async () => {
    const { splitText } = await import('../../../core/readings/table/split-text.js');
    expect(splitText('"-20,5";-0,25\n')).to.deep.equal([['-20,5', '-0,25']]);
  });
});
