import { expect } from 'chai';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { clear, find, put, type Sheet, settled, wait } from '../contract/stage.js';
import { referenceCorner } from '../reference-corner.js';

const POINTS = '<tr><th>Ball joint</th><td>-5</td><td>700</td><td>185</td><td>2</td></tr>';
const HEAD = '<tr><th>Point</th><th>x (mm)</th><th>y</th><th>z</th><th>±</th></tr>';
const READINGS = `<table><tr><th>Travel (mm)</th><th>Pass 1 (°)</th><th>Pass 2 (°)</th></tr>${[-20, 0, 20, 40]
  .map((t) => `<tr><th>${t}</th><td>${-0.01 * t}</td><td>${-0.01 * t - 0.02}</td></tr>`)
  .join('')}</table>`;

describe('the author is told in the console what was read', () => {
  const told: [kind: 'info' | 'warn', text: string][] = [];
  const { info, warn } = console;
  beforeEach(() => {
    told.length = 0;
    console.info = (text) => told.push(['info', text]);
    console.warn = (text) => told.push(['warn', text]);
  });
  afterEach(() => {
    Object.assign(console, { info, warn });
    clear();
  });

  it('in one line an element, of a table, of JSON, of attributes', async () => {
    await put(
      'bumpline-lowering, bumpline-readings, bumpline-clearance',
      `<bumpline-lowering drop="25"><table>${HEAD}${POINTS}<tr><th>Static camber</th><td>-0.5°</td></tr></table></bumpline-lowering>
      <bumpline-readings>${READINGS}</bumpline-readings>
      <bumpline-clearance wheel-before="205/55R16, 6.5, 45" limits="stop-gap 20"></bumpline-clearance>`,
    );
    expect(told).to.have.deep.members([
      ['info', 'Bumpline: <bumpline-lowering> read 1 hard point (±2 mm), static camber and the drop from a table.'],
      ['info', 'Bumpline: <bumpline-readings> read 8 readings in 2 passes from a table.'],
      [
        'info',
        'Bumpline: <bumpline-clearance> read the old wheel and what ends travel from attributes and properties.',
      ],
    ]);
  });

  it('of a whole car, of hard points and of readings beside them', async () => {
    const car = JSON.stringify({ car: { setups: EXAMPLE_SETUPS, turn: { roll: 2 } } });
    await put(
      'bumpline-cornering',
      `<bumpline-cornering><script type="application/json">${car}</script></bumpline-cornering>`,
    );
    await put(
      'bumpline-predict',
      `<bumpline-predict><script type="application/json">${JSON.stringify(referenceCorner)}</script>${READINGS}</bumpline-predict>`,
    );
    expect(told.map(([, text]) => text)).to.deep.equal([
      'Bumpline: <bumpline-cornering> read 2 sets of parts with 92 readings and settings from JSON.',
      'Bumpline: <bumpline-predict> read 8 hard points, loaded radius, static camber, static toe and 8 readings in 2 passes from JSON and a table.',
    ]);
  });

  it('with what is not understood as a warning, named', async () => {
    await put(
      'bumpline-lowering',
      `<bumpline-lowering drop="low"><table>${HEAD}${POINTS}<tr><th>Watts link</th><td>1</td><td>2</td><td>3</td></tr></table></bumpline-lowering>`,
    );
    expect(told).to.deep.equal([
      [
        'warn',
        'Bumpline: <bumpline-lowering> read 1 hard point (±2 mm) from a table; not understood: “drop” (low); “Watts link” (1 2 3).',
      ],
    ]);
  });

  it('once for each change of the data, and for no change of the reader’s', async () => {
    const [element] = (await put(
      'bumpline-lowering',
      `<bumpline-lowering><table>${HEAD}${POINTS}</table></bumpline-lowering>`,
    )) as [Sheet];
    expect(told).to.have.length(1);
    const field = find<HTMLInputElement>(element, '.sentence input')!;
    field.value = '12';
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await settled(element);
    expect((element.answer as { drop: number }).drop).to.equal(12);
    element.setAttribute('units', 'in');
    await settled(element);
    expect(told).to.have.length(1);
    element.querySelector('td')!.textContent = '-7';
    await wait(0);
    await settled(element);
    expect(told).to.have.length(2);
    element.querySelector('table')!.insertAdjacentHTML('beforeend', '<tr><th>Static toe</th><td>0.1°</td></tr>');
    await wait(0);
    await settled(element);
    expect(told.map(([, text]) => text).at(-1)).to.contain('static toe');
    expect(told).to.have.length(3);
  });

  it('never of the example, whatever height is asked about', async () => {
    await put(
      'bumpline-lowering, bumpline-compare',
      `<bumpline-lowering drop="30"></bumpline-lowering><bumpline-lowering><table data-example>${HEAD}${POINTS}</table></bumpline-lowering><bumpline-compare heights="0, 20"></bumpline-compare>`,
    );
    expect(told).to.deep.equal([]);
  });
});
