import { expect } from 'chai';
import { cellText } from '../../../components/page-data/cell-text.js';
import { readPointTable } from '../../../components/page-data/point-table.js';
import { readReadingTable } from '../../../components/page-data/reading-table.js';

const style = document.createElement('style');
style.textContent = '.hidden-by-page { display: none }';

const table = (rows: string) => {
  const host = document.createElement('div');
  document.body.replaceChildren(style, host);
  host.innerHTML = `<table>${rows}</table>`;
  return host.querySelector('table')!;
};
const cell = (markup: string) => cellText(table(`<tr><td>${markup}</td></tr>`).rows[0]!.cells[0]!);
/** What both kinds of table make of a cell that holds a length, mm: NaN where it is a problem. */
function both(markup: string): [point: number, reading: number] {
  const { given, problems } = readPointTable(
    table(`<tr><th>Ball joint</th><td>${markup}</td><td>700 mm</td><td>180 mm</td></tr>`),
  );
  const readings = readReadingTable(
    table(`<tr><th>Travel (mm)</th><th>Camber (°)</th></tr>
      <tr><td>${markup}</td><td>-1.2</td></tr><tr><td>-30</td><td>0.4</td></tr><tr><td>0</td><td>-0.5</td></tr>`),
    'camber',
  );
  const bad = readings.cells.flat().some(({ state }) => state === 'problem') || readings.problems.length > 0;
  const point = problems.length > 0 ? Number.NaN : given.points['lowerArm.ball']![0];
  const [first] = readings.readings;
  return [point, bad ? Number.NaN : readings.readings.length === 3 ? first!.travel : Number.POSITIVE_INFINITY];
}

/** Read as 20, whatever stands beside it for people. */
const TWENTY = [
  '20',
  ' 20\n ',
  '<b>20</b>',
  '<span>2</span><span>0</span>',
  '<p>20</p>',
  '20 mm',
  '20<small> mm</small>',
  '20<sup>1</sup>',
  '20<sup>[1]</sup>',
  '20<sup>a</sup>',
  '20<sup>note 1</sup>',
  '20<sup>[note 1]</sup>',
  '20<sup>[citation needed]</sup>',
  '20<sup>†</sup>',
  '20<sup>(b)</sup>',
  '20<span class="footnote-ref">1</span>',
  '20<span class="sr-only">1</span>',
  '20<span class="visually-hidden">, estimated</span>',
  '20<span style="display: none">1</span>',
  '20<span style="visibility:hidden">1</span>',
  '20<span class="hidden-by-page">1</span>',
  '20<input type="hidden" value="1">',
  '20<sup>*</sup>',
  '20<sup>1, 2</sup>',
  '20<sub>1</sub>',
  '20 mm<sup>1</sup>',
  '20<sup><a href="#fn1">1</a></sup>',
  '20<a href="#fn1" role="doc-noteref">1</a>',
  '20<a href="#fn1">1</a>',
  '20 <a href="https://example.org/a#fn1">[1]</a>',
  '20<span role="doc-noteref">1</span>',
  '<a href="#photo">20</a>',
  '20<span hidden>1</span>',
  '20<span aria-hidden="true">1</span>',
  '20<style>td{}</style>',
  '20<script type="text/plain">1</script>',
  '20<template>1</template>',
  '20<noscript>1</noscript>',
  '20<del>1</del>',
  '<del>21</del> <ins>20</ins>',
  '<s>21</s>20',
  '20<!-- 1 -->',
  '20<br>',
  '<ruby>20<rt>1</rt></ruby>',
  '2 <abbr title="centimetres">cm</abbr>',
  '<data value="20">twenty</data>',
  '<data value="20">20</data><sup>1</sup>',
  '<data value="20.000">20 mm</data>',
  '<data value="20">2 cm</data>',
  '<data value="2">2</data> cm',
  '<data value="2">2 cm</data>',
];

/** Neither a number nor a unit alone: told at the cell, never read as something. */
const PROBLEMS = [
  '20²',
  '20①',
  '20₁',
  '20*',
  '20†',
  '20 [1]',
  '20 (1)',
  '20 a',
  '10<sup>3</sup>',
  '2×10<sup>1</sup>',
  '2·10<sup>1</sup>',
  '20<sup>+0.5</sup>',
  '20<sup>±1</sup>',
  '20<small>1</small>',
  '1<small>234</small>',
  '20<sup>m</sup>',
  '20<sup>-1</sup>',
  '20<sup>ft</sup>',
  '20<sup>1</sup>/2',
  '20<br>1',
  '1<br>234',
  '<p>20</p><p>21</p>',
  '20 mm (0.79 in)',
  '20 mm²',
  '20 ± 2',
  '~20',
  '20?',
  '20 <a href="elsewhere.html">1</a>',
  '20<a href="elsewhere.html">1</a>',
  '20 <button>copy</button>',
  '20 <input value="1">',
  '<math><msup><mn>20</mn><mn>1</mn></msup></math>',
  '<data value="20">20</data> or <data value="30">30</data>',
  '<data value="20">35 mm</data>',
  '<data value="20">20</data> about',
];

describe('a cell of a page’s table', () => {
  for (const markup of TWENTY) {
    it(`is 20: ${markup.replace(/\s+/g, ' ')}`, () => {
      expect(both(markup)).to.deep.equal([20, 20]);
    });
  }
  for (const markup of PROBLEMS) {
    it(`is a problem at its cell: ${markup}`, () => {
      expect(both(markup)).to.deep.equal([Number.NaN, Number.NaN]);
    });
  }

  it('keeps a sign, a unit, a mark of degrees and a fraction that markup sets apart', () => {
    expect(cell('<span aria-hidden="true">−</span>20')).to.equal('−20');
    expect(cell('0.8<sup>in</sup>')).to.match(/^0\.8 ?in$/);
    expect(cell('−0<sup>o</sup>30<sup>′</sup>')).to.equal('−0°30′');
    expect(cell('12<sup>1</sup>⁄<sub>4</sub>')).to.equal('12 1/4');
    expect(cell('<sup>3</sup>/<sub>8</sub> in')).to.match(/^3\/8 in$/);
    expect(cell('12<sup>1/4</sup> in')).to.equal('12 1/4 in');
    expect(cell('12<sup>½</sup>')).to.equal('12½');
    expect(cell('20<small>.5</small>')).to.equal('20.5');
    expect(cell('2<sup>nd</sup> pass')).to.equal('2nd pass');
    expect(cell('Standard<br>joints<sup>2</sup>')).to.equal('Standard joints');
  });

  it('with nothing but a footnote, or struck out, is empty', () => {
    expect(cell('<sup>1</sup>')).to.equal('');
    expect(cell('<del>20</del>')).to.equal('');
  });

  it('names a row, a column and a pass without their footnotes', () => {
    const { given, problems } = readPointTable(
      table('<tr><th>Ball joint<sup>1</sup></th><td>1</td><td>700</td><td>180</td></tr>'),
    );
    expect(problems).to.deep.equal([]);
    expect(given.points).to.have.property('lowerArm.ball');
    const { columns } = readReadingTable(
      table(`<tr><th>Travel (mm)<sup>a</sup></th><th>Pass 1<sup>2</sup> (°)</th><th>Pass 2 (°)</th></tr>
        <tr><td>-20</td><td>0.1</td><td>0.2</td></tr><tr><td>0</td><td>-0.5</td><td>-0.4</td></tr>`),
      'camber',
    );
    expect(columns.map(({ pass }) => pass)).to.deep.equal([undefined, 'Pass 1', 'Pass 2']);
  });

  it('in a row of marked figures alone is told as well, and is no heading', () => {
    const { cells, readings } = readReadingTable(
      table(`<tr><th>Travel (mm)</th><th>Camber (°)</th></tr>
        <tr><td>-20*</td><td>0.1*</td></tr><tr><td>0</td><td>-0.5</td></tr><tr><td>20 [1]</td><td>-0.9 [1]</td></tr>`),
      'camber',
    );
    expect(readings).to.have.length(1);
    expect(cells.flat().filter(({ state }) => state === 'problem')).to.have.length(4);
  });
});
