import { sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineCompare } from '../../../components/bumpline-compare/bumpline-compare.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { CarModel } from '../../../components/car/car-model.js';
import { curveFromCoefficients } from '../../../core/curve/from-coefficients.js';
import { EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { give } from '../../../core/document/provenance.js';
import type { Setup } from '../../../core/document/setup.js';
import { addSetup } from '../../../core/document/setup-edits.js';
import { find, root, type, wait } from '../bumpline-lowering/set-up.js';
import { changeOf, SETS, sentenceOf, show, TABLE } from './set-up.js';

const rendered = async (element: BumplineCompare) => {
  await wait(0);
  await element.settled;
};
const cell = (element: Element, set: number, height: number) =>
  root(element).querySelectorAll('.compare tbody tr')[set]!.querySelectorAll<HTMLButtonElement>('.cell-button')[
    height
  ]!;
const tap = async (element: BumplineCompare, set: number, height: number) => {
  cell(element, set, height).click();
  await rendered(element);
};
const until = async (isSo: () => boolean) => {
  for (let i = 0; i < 300 && !isSo(); i++) await wait(20);
  expect(isSo()).to.equal(true);
};
const pasteSheet = async (element: BumplineCompare, text: string) => {
  find<HTMLButtonElement>(element, '.add-set').click();
  await until(() => root(element).querySelector('#paste-text') !== null);
  const area = find<HTMLTextAreaElement>(element, '#paste-text');
  area.value = text;
  area.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await until(() => root(element).querySelector<HTMLButtonElement>('#paste-take')?.disabled === false);
  find<HTMLButtonElement>(element, '#paste-take').click();
  await rendered(element);
};
const names = (element: BumplineCompare) =>
  [...root(element).querySelectorAll('tbody th')].map((heading) => heading.textContent!.trim());
/** Two sets of one's own, on parabolas with a hundredth of scatter: travel, then each set's camber. */
const OWN = [
  { a: -0.012, c: 0.00009 },
  { a: -0.019, c: 0.00011 },
] as const;
const ownSheet = (headings: string | undefined, high = 70) =>
  [
    ...(headings === undefined ? [] : [headings]),
    ...Array.from({ length: (high + 30) / 10 + 1 }, (_, i) => -30 + 10 * i).map((t, i) =>
      [t, ...OWN.map(({ a, c }, k) => (a * t + c * t * t + (i % 2 ? 0.01 : -0.01) * (k ? -1 : 1)).toFixed(3))].join(
        '\t',
      ),
    ),
  ].join('\n');
const ownChange = (set: number, drop: number, bump: number) =>
  OWN[set]!.a * bump + OWN[set]!.c * (2 * drop * bump + bump * bump);
const degrees = (size: number) => `${Math.abs(size).toFixed(2)}°`;
const focused = (element: BumplineCompare) => root(element).activeElement as HTMLElement | null;

describe('<bumpline-compare>, at 360 × 780', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  it('opens with a full answer about an invented example, and one text field', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    expect(element.state).to.equal('example');
    expect(sentenceOf(element)).to.match(
      /^Over 40 mm of bump lowered joints with 25 mm of drop add 0\.\d\d° ± 0\.0\d° of negative camber, standard joints at stock height 0\.\d\d° ± 0\.0\d°: .* Below 20(?:\.\d)? ± \d(?:\.\d)? mm of drop lowered joints are ahead\.$/,
    );
    expect(root(element).querySelectorAll('input[type=text]')).to.have.length(1);
    expect(find(element, 'aside.cautions').textContent).to.contain('engineered parts only');
  });

  it('reads a table with one column a set of parts; its figures are those of the algebra', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    expect(element.problems).to.deep.equal([]);
    expect(find(element, '.owner').textContent).to.equal('2 sets of parts of this page');
    const { cells, breakEvens } = element.answer!;
    for (const set of [0, 1]) {
      for (const [h, drop] of [0, 25].entries()) {
        expect(cells[set]![h]!.change!.value).to.be.closeTo(changeOf(set, drop, 40), 2e-4);
        expect(cells[set]![h]!.droopChange!.value).to.be.closeTo(changeOf(set, drop, -20), 2e-4);
      }
    }
    // −0.608 + 0.0096 d = −0.4, see test/core/curve/break-even.test.ts.
    const { change } = breakEvens[0]!;
    expect(change!.kind === 'at' && change!.drop).to.be.closeTo(0.208 / 0.0096, 0.1);
    expect(sentenceOf(element)).to.contain(`lowered joints with 25 mm of drop add ${degrees(changeOf(1, 25, 40))}`);
  });

  it('leaves the averages of a page’s table out, and says so; passes of one set go together', async () => {
    const rows = Array.from({ length: 9 }, (_, i) => -20 + 10 * i).map((t, i) => {
      const [a, b] = [0.01, -0.01].map((off) => (-0.014 * t + 0.0001 * t * t + (i % 2 ? off : -off)).toFixed(3));
      const c = (-0.02 * t + 0.00012 * t * t).toFixed(3);
      const mean = ((Number(a) + Number(b)) / 2).toFixed(4);
      return `<tr>${[t, a, b, mean, c].map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
    });
    const heads = ['Wheel travel (mm)', 'Standard joints 1', 'Standard joints 2', 'avg', 'Lowered joints'];
    const element = await show(
      `<bumpline-compare><table><tr>${heads.map((head) => `<th>${head}</th>`).join('')}</tr>${rows.join('')}</table></bumpline-compare>`,
    );
    expect(names(element)).to.deep.equal(['Standard joints', 'Lowered joints']);
    expect(find(element, '.left-out').textContent).to.equal(
      'Column D, “avg”, is the average of columns B and C: left out.',
    );
    expect(element.answer!.cells[0]![0]!.change!.value).to.be.closeTo(-0.014 * 40 + 0.0001 * 1600, 0.02);
  });

  it('two taps compare any two cells; on the diagonal both ways stand below, and add up', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    await tap(element, 0, 0);
    expect(sentenceOf(element)).to.contain('standard joints at stock height add');
    await tap(element, 0, 1);
    const net = changeOf(0, 25, 40) - changeOf(0, 0, 40);
    expect(sentenceOf(element)).to.contain(`standard joints with 25 mm of drop add ${degrees(changeOf(0, 25, 40))}`);
    expect(sentenceOf(element)).to.match(new RegExp(`: ${degrees(net).replace('.', '\\.')}.* less\\.`));
    expect(root(element).querySelector('.paths')).to.equal(null);
    await tap(element, 0, 0);
    await tap(element, 1, 1);
    const ways = find(element, '.paths').textContent!.replace(/\s+/g, ' ');
    const sign = (size: number) => `${size < 0 ? '−' : '+'}${degrees(size)}`;
    expect(ways).to.contain(sign(changeOf(0, 25, 40) - changeOf(0, 0, 40)));
    expect(ways).to.contain(sign(changeOf(1, 25, 40) - changeOf(0, 25, 40)));
    expect(ways).to.contain(sign(changeOf(1, 0, 40) - changeOf(0, 0, 40)));
    expect(ways).to.contain(sign(changeOf(1, 25, 40) - changeOf(1, 0, 40)));
    expect(cell(element, 1, 1).getAttribute('aria-pressed')).to.equal('true');
  });

  it('is tapped by keyboard too, and says the answer', async () => {
    const element = await show('<button id="start">start</button><bumpline-compare></bumpline-compare>');
    document.querySelector<HTMLElement>('#start')!.focus();
    const tabTo = async (label: RegExp) => {
      for (let i = 0; i < 30 && !label.test(focused(element)?.textContent?.trim() ?? ''); i++) {
        await sendKeys({ press: 'Tab' });
      }
      expect(focused(element)!.textContent!.trim()).to.match(label);
    };
    await tabTo(/^Standard joints, 25.mm lower/);
    await sendKeys({ press: 'Enter' });
    await tabTo(/^Lowered joints, at stock height/);
    await sendKeys({ press: 'Enter' });
    await rendered(element);
    expect(sentenceOf(element)).to.match(
      /lowered joints at stock height add .*, standard joints with 25 mm of drop 0\./,
    );
    await wait(700);
    expect(find(element, '[role=status]').textContent!.replace(/\s/g, ' ')).to.match(
      /^Over 40 mm of bump lowered joints at stock height add/,
    );
  });

  it('changes a height in place and by the slider, adds one and takes it out; undo brings it back', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    [...root(element).querySelectorAll<HTMLButtonElement>('.height')][1]!.click();
    await rendered(element);
    await type(find(element, '.height-field input'), '30');
    await rendered(element);
    expect(element.answer!.cells[1]![1]!.change!.value).to.be.closeTo(changeOf(1, 30, 40), 2e-4);
    const slider = find<HTMLInputElement>(element, 'input[type=range]');
    slider.focus();
    await sendKeys({ press: 'ArrowRight' });
    await rendered(element);
    expect(element.answer!.cells[1]![1]!.change!.value).to.be.closeTo(changeOf(1, 31, 40), 2e-4);
    find<HTMLButtonElement>(element, '.add-height').click();
    await rendered(element);
    expect(element.answer!.cells[0]).to.have.length(3);
    find<HTMLButtonElement>(element, '.height-field button').click();
    await rendered(element);
    expect(element.answer!.cells[0]).to.have.length(2);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(element.answer!.cells[0]).to.have.length(3);
  });

  it('says break-even only beside the reference it is one with, and the interaction alike from either side', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    const interaction = () => root(element).querySelectorAll('.paths dd')[2]!.textContent!;
    const before = interaction();
    await tap(element, 0, 1);
    expect(root(element).textContent).to.contain('Now press another cell');
    await tap(element, 1, 0);
    expect(sentenceOf(element)).to.match(/more\.$/);
    expect(interaction()).to.equal(before);
  });

  it('keeps a text that is no drop, marked, while other heights are edited', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    [...root(element).querySelectorAll<HTMLButtonElement>('.height')][1]!.click();
    await rendered(element);
    await type(find(element, '.height-field input'), 'abc');
    find<HTMLButtonElement>(element, '.add-height').click();
    await rendered(element);
    const fields = [...root(element).querySelectorAll<HTMLInputElement>('.height-field input')];
    expect(fields.map(({ value }) => value)[0]).to.equal('abc');
    await type(fields[0]!, '30');
    await rendered(element);
    expect(element.problems).to.deep.equal([]);
    expect(element.answer!.cells[1]![1]!.change!.value).to.be.closeTo(changeOf(1, 30, 40), 2e-4);
  });

  it('many heights scroll inside their place, and every line of the chart is shown in its cell', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    const inCells = [...root(element).querySelectorAll('.dash path')].map((path) =>
      path.getAttribute('stroke-dasharray'),
    );
    expect(new Set(inCells).size).to.equal(2);
    const pageWidth = document.documentElement.scrollWidth;
    const many = await show(`<bumpline-compare heights="0, 10, 20, 30, 40, 50">${TABLE}</bumpline-compare>`);
    expect(cell(many, 0, 5).getBoundingClientRect().width).to.be.greaterThan(0);
    expect(document.documentElement.scrollWidth).to.equal(pageWidth);
  });

  it('a link to what is compared opens with it, on the page that gives the parts', async () => {
    const markup = `<bumpline-compare keep-in-address>${TABLE}</bumpline-compare>`;
    const element = await show(markup);
    const slider = find<HTMLInputElement>(element, 'input[type=range]');
    slider.focus();
    await sendKeys({ press: 'ArrowLeft' });
    await rendered(element);
    expect(find(element, '.copy-link').textContent).to.contain('Copy a link');
    await wait(500);
    expect(location.hash).to.contain('heights=0,24');
    const again = await show(markup);
    expect(again.answer!.cells[1]![1]!.change!.value).to.be.closeTo(changeOf(1, 24, 40), 2e-4);
    history.replaceState(null, '', location.pathname + location.search);
  });

  it('adds sets in place, named in a pasted sheet, beside those of the page; renames, takes out, undoes', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    const third = { a: -0.018, c: 0.00008 };
    const lines = Array.from({ length: 9 }, (_, i) => -20 + 10 * i).map(
      (t) => `${t}\t${(third.a * t + third.c * t * t).toFixed(5)}\t${(0.1 + third.a * t + third.c * t * t).toFixed(5)}`,
    );
    await pasteSheet(
      element,
      ['Wheel travel (mm)\tLonger arms, pass 1 (°)\tLonger arms, pass 2 (°)', ...lines].join('\n'),
    );
    expect(names(element)).to.deep.equal(['Standard joints', 'Lowered joints', 'Longer arms']);
    expect(find(element, '.owner').textContent).to.equal('3 sets of parts: 1 yours, 2 from a page');
    const added = element.answer!.cells[2]![0]!.change!.value;
    expect(added).to.be.closeTo(third.a * 40 + third.c * 1600, 2e-4);
    expect(element.answer!.breakEvens).to.have.length(2);
    const name = [...root(element).querySelectorAll<HTMLInputElement>('.own-set .name')][2]!;
    name.value = 'Standard joints';
    name.dispatchEvent(new Event('change'));
    await rendered(element);
    expect(names(element)[2]).to.equal('Standard joints 2');
    [...root(element).querySelectorAll<HTMLButtonElement>('.own-set button')][0]!.click();
    await rendered(element);
    expect(names(element)).to.deep.equal(['Lowered joints', 'Standard joints 2']);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(names(element)).to.have.length(3);
  });

  for (const [what, markup] of [
    ['the built-in example', '<bumpline-compare></bumpline-compare>'],
    [
      'the example of an article',
      `<bumpline-compare>${TABLE.replace('<table>', '<table data-example>')}</bumpline-compare>`,
    ],
  ] as const) {
    it(`sets of one’s own take the place of ${what}: sentence, cells, break-even and chart are theirs`, async () => {
      const element = await show(markup);
      expect(element.state).to.equal('example');
      expect(find(element, '.owner').textContent).to.equal('Example');
      await tap(element, 1, 0);
      await pasteSheet(element, ownSheet('Travel (mm)\tOur joints\tTheir joints'));
      expect(names(element)).to.deep.equal(['Our joints', 'Their joints']);
      expect(find(element, '.owner').textContent).to.equal('2 sets of parts, yours');
      expect(element.state).to.equal('ready');
      const said = sentenceOf(element);
      expect(said).to.match(/their joints with 25 mm of drop add 0\.\d+° .*, our joints at stock height 0\.\d+°/);
      expect(said).to.match(/of drop their joints are ahead\.$/);
      expect(said).not.to.match(/standard|lowered/i);
      expect(cell(element, 1, 1).classList.contains('to')).to.equal(true);
      expect(cell(element, 0, 0).classList.contains('from')).to.equal(true);
      expect(element.answer!.cells[1]![1]!.change!.value).to.be.closeTo(ownChange(1, 25, 40), 0.03);
      // Drawn once its place is measured.
      await until(() => /their joints with 25/.test(root(element).querySelector('.chart-box')?.textContent ?? ''));
      expect(find(element, '.even').textContent).to.match(/Compared with our joints/);
      find<HTMLButtonElement>(element, '.undo').click();
      await rendered(element);
      expect(element.state).to.equal('example');
    });
  }

  it('two columns without headings are asked about, and become two sets or one', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    await pasteSheet(element, ownSheet(undefined));
    expect(names(element)).to.deep.equal(['Set 1', 'Set 2']);
    expect(find(element, '.owner').textContent).to.equal('2 sets of parts, yours');
    expect(sentenceOf(element)).to.contain('set 2 with 25 mm of drop');
  });

  it('a reading of one’s own that lacks its sign is told, and mended by one tap', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    const rows = ownSheet('Travel (mm)\tOurs\tTheirs').split('\n');
    // At +40 mm of bump, the reading of our joints.
    const [travel, ours, theirs] = rows[8]!.split('\t');
    rows[8] = [travel, ours!.replace('-', ''), theirs].join('\t');
    await pasteSheet(element, rows.join('\n'));
    const told = find(element, '.queries');
    expect(told.textContent!.replace(/\s+/g, ' ')).to.match(/Ours: .*\+40 mm.*does not fit/);
    element.units = 'in';
    await rendered(element);
    expect(told.textContent!.replace(/\s+/g, ' ')).to.match(/Ours: .*\+1\.57 in.*does not fit/);
    element.units = 'mm';
    await rendered(element);
    const button = told.querySelector<HTMLButtonElement>('button')!;
    expect(button.textContent).to.equal(`Make it −${Math.abs(Number(ours))}°`);
    button.focus();
    await sendKeys({ press: 'Enter' });
    await until(() => root(element).querySelector('.queries') === null);
    // The button is gone: a keyboard goes on at the way back.
    await until(() => focused(element)?.classList.contains('undo') === true);
    expect(element.answer!.cells[0]![0]!.change!.value).to.be.closeTo(ownChange(0, 0, 40), 0.03);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(find(element, '.queries').textContent).to.contain('does not fit');
  });

  it('what is typed of a set’s instruments stands with that set, and goes with it', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    await pasteSheet(element, ownSheet('Travel (mm)\tOurs\tTheirs'));
    const sets = () => [...root(element).querySelectorAll('.own-set[role=group]')];
    const fieldOf = (set: number) => sets()[set]!.querySelectorAll<HTMLInputElement>('.instrument input')[1]!;
    expect(sets().map((set) => set.getAttribute('aria-label'))).to.deep.equal(['Ours', 'Theirs']);
    fieldOf(0).value = 'about three';
    fieldOf(0).dispatchEvent(new Event('change', { bubbles: true }));
    await rendered(element);
    expect(element.problems.map(({ path }) => path)).to.deep.equal(['doubts.0.tapeScale']);
    expect(find(element, '#problems').textContent).to.contain('Ours: Tape, beside a steel rule');
    sets()[0]!.querySelector<HTMLButtonElement>(':scope > .button')!.click();
    await rendered(element);
    expect(sets().map((set) => set.getAttribute('aria-label'))).to.deep.equal(['Theirs']);
    expect(element.problems).to.deep.equal([]);
    expect(fieldOf(0).value.replace(/\s/g, ' ')).to.equal('±1 %');
  });

  it('two sets of one’s own beside those of the page are compared with one another', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    await pasteSheet(element, ownSheet('Travel (mm)\tOurs\tTheirs'));
    expect(names(element)).to.deep.equal(['Ours', 'Theirs', 'Standard joints', 'Lowered joints']);
    expect(find(element, '.owner').textContent).to.equal('4 sets of parts: 2 yours, 2 from a page');
    expect(sentenceOf(element)).to.contain('theirs with 25 mm of drop');
    expect([...root(element).querySelectorAll('.own-set > small')].map(({ textContent }) => textContent)).to.deep.equal(
      ['from a page', 'from a page'],
    );
  });

  it('offers the bump that was measured where the one that is asked for was not, and a height', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    await pasteSheet(element, ownSheet('Travel (mm)\tOurs\tTheirs', 50));
    expect(sentenceOf(element)).to.contain('theirs with 25 mm of drop were not measured that far');
    expect(find(element, '.reach').textContent!.replace(/\s+/g, ' ').trim()).to.match(
      /^Theirs: the readings end at \+50.mm, 25.mm of bump from 25.mm lower\. Compare over 25.mm of bump Compare the car with 10.mm of drop$/,
    );
    find<HTMLButtonElement>(element, '.over-less').click();
    await rendered(element);
    expect(root(element).querySelector('.reach')).to.equal(null);
    expect(sentenceOf(element)).to.match(/^Over 25 mm of bump theirs with 25 mm of drop add/);
    expect(element.answer!.cells[1]![1]!.change!.value).to.be.closeTo(ownChange(1, 25, 25), 0.03);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    find<HTMLButtonElement>(element, '.from-higher').click();
    await rendered(element);
    expect(sentenceOf(element)).to.match(/^Over 40 mm of bump theirs with 10 mm of drop add/);
  });

  it('beside a car of which only static camber was given the example says first that it is not that car', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    const model = new CarModel(EMPTY_CAR);
    model.update('arm', (car) => givenByUser(car, (given) => ({ ...given, camber: -1.2 })));
    element.car = model;
    await rendered(element);
    expect(element.state).to.equal('example');
    expect(find(element, '.owner').textContent).to.equal('Example, not your car');
    expect(sentenceOf(element)).to.match(/^Not your car: the example’s parts\. Over 40 mm of bump/);
    expect(find(element, '.make-yours').textContent).to.match(/add the readings/);
    await pasteSheet(element, ownSheet('Travel (mm)\tOurs\tTheirs'));
    expect(find(element, '.owner').textContent).to.equal('2 sets of parts, yours');
    expect(sentenceOf(element)).to.match(/^Over 40 mm of bump theirs/);
  });

  it('readings of toe are no sets of camber: the example stays one', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    const model = new CarModel(EMPTY_CAR);
    model.update('toe', (car) =>
      addSetup(car, { name: 'Toe', cornerName: 'Front left', quantity: 'toe', readings: [{ travel: 0, value: 0 }] }),
    );
    element.car = model;
    await rendered(element);
    expect(element.state).to.equal('example');
    expect(find(element, '.owner').textContent).to.equal('Example');
  });

  it('stands whatever sets come and go under a chosen cell, and while others are fitted', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    const model = new CarModel(EMPTY_CAR);
    const set = (name: string, a: number, c: number): Setup => ({
      name,
      cornerName: 'Front left',
      quantity: 'camber',
      readings: Array.from({ length: 13 }, (_, i) => -30 + 10 * i).map((t) => ({
        travel: t,
        value: a * t + c * t * t,
      })),
    });
    const [one, two, three] = [set('One', -0.014, 0.0001), set('Two', -0.02, 0.0001), set('Three', -0.016, 0.0001)];
    const have = (...setups: Setup[]) => model.update('sets', (car) => give(car, 'setups', 'user', () => ({ setups })));
    element.car = model;
    have(one, two, three);
    await rendered(element);
    await tap(element, 2, 1);
    have(one, two);
    await rendered(element);
    // The answer is still one of two while the third is asked for again, and two are asked for at once.
    model.undo();
    await element.updateComplete;
    have(one, two);
    have(one, two, set('Four', -0.017, 0.0001));
    await rendered(element);
    expect(element.state).to.equal('ready');
    expect([...root(element).querySelectorAll('tbody th')].map((heading) => heading.textContent!.trim())).to.deep.equal(
      ['One', 'Two', 'Four'],
    );
    expect(sentenceOf(element)).to.contain('four with 25');
  });

  it('names what is wrong with a curve that is given', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    const good = curveFromCoefficients({ quantity: 'camber', coefficients: [-0.5, -0.014], domain: [-60, 120] });
    element.curves = [
      { name: 'Standard arms', curve: good },
      { name: 'Bad', curve: { ...good, domain: [80, -60] } },
    ];
    await rendered(element);
    // The answer that stood there was the example's.
    expect(element.state).to.equal('problem');
    expect(sentenceOf(element)).to.equal('Over 40 mm of bump no answer yet.');
    expect(element.problems.map(({ path }) => path)).to.satisfy(
      (paths: string[]) => paths.length > 0 && paths.every((path) => path.startsWith('curves.1.')),
    );
  });

  it('lists camber rate, and camber as read where no zero was moved', async () => {
    const element = await show(`<bumpline-compare>${TABLE}</bumpline-compare>`);
    const rows = [...root(element).querySelectorAll('.each dl > div')].map((row) =>
      row.textContent!.replace(/\s+/g, ' '),
    );
    expect(rows).to.have.length(4);
    const { rate, camber, camberAtEnd } = element.answer!.cells[1]![1]!;
    expect(rate!.value).to.be.closeTo((changeOf(1, 25, 0.01) - changeOf(1, 25, -0.01)) / 0.02, 2e-4);
    expect(camberAtEnd! - camber!).to.be.closeTo(changeOf(1, 25, 40), 2e-4);
    expect(rows[3]).to.match(/^lowered joints with 25.mm of drop\s*−0\.\d+/);
    expect(rows[3]).to.contain(`−${degrees(camber!)} to −${degrees(camberAtEnd!)}`);
    element.setups = SETS.map(({ name, a, c }) => ({
      name,
      cornerName: 'Front left',
      quantity: 'camber',
      zeroAt: 0,
      readings: Array.from({ length: 13 }, (_, i) => -30 + 10 * i).map((t) => ({
        travel: t,
        value: a * t + c * t * t,
      })),
    }));
    await rendered(element);
    const moved = root(element).querySelector('.each dl')!.textContent!;
    expect(moved).not.to.contain(' to −');
  });

  it('compares curves made elsewhere, and says whether the tie rod was corrected', async () => {
    const parabola = (name: string, a: number, c: number) => ({
      name,
      curve: curveFromCoefficients({ quantity: 'camber', coefficients: [-0.5, a, c], domain: [-60, 120] }),
    });
    const element = await show('<bumpline-compare></bumpline-compare>');
    element.curves = [
      parabola('Standard arms', -0.014, 0.0001),
      { ...parabola('Lowered ends', -0.02, 0.00012), tieRod: 'not corrected' as const },
    ];
    await rendered(element);
    const { change } = element.answer!.breakEvens[0]!;
    // −0.608 + 0.0096 d = −0.4, see test/core/curve/break-even.test.ts.
    expect(change!.kind === 'at' && change!.drop).to.be.closeTo(0.208 / 0.0096, 1e-6);
    expect([...root(element).querySelectorAll('tbody th')].map((heading) => heading.textContent!.trim())).to.deep.equal(
      ['Standard arms', 'Lowered endstie rod not corrected'],
    );
  });

  it('leaves out what was not measured, and what no bump travel is left for', async () => {
    const element = await show(`<bumpline-compare heights="0, 60">${TABLE}</bumpline-compare>`);
    expect(cell(element, 0, 1).textContent).to.contain('not measured');
    // What is known stands by itself, a whole clause, before what is not.
    expect(sentenceOf(element)).to.match(/adds? \d.\d+°.* of negative camber; .* not measured that far\./);
    expect(sentenceOf(element)).to.contain('not measured that far');
    const shared = await show(
      `<bumpline-car><bumpline-lowering drop="25" bump-travel="60"></bumpline-lowering><bumpline-compare>${TABLE}</bumpline-compare></bumpline-car>`,
    );
    await (document.querySelector('bumpline-lowering') as BumplineLowering).settled;
    await rendered(shared);
    expect(cell(shared, 1, 1).textContent).to.contain('past solid');
    // They meet at 22 mm, too close behind the end for the ± to tell.
    expect(shared.answer!.breakEvens[0]!.change).to.deep.include({ kind: 'cannot-tell', range: [0, 20] });
  });

  it('ends where the travel budget does: the stop pressed solid, in front of a longer bump travel', async () => {
    const element = await show(
      `<bumpline-car><bumpline-lowering drop="25" bump-travel="90" limits="stop-gap 30; stop-length 40; motion-ratio 1"></bumpline-lowering><bumpline-compare>${TABLE}</bumpline-compare></bumpline-car>`,
    );
    await (document.querySelector('bumpline-lowering') as BumplineLowering).settled;
    // 30 mm to the stop and half of its 40 mm: solid 50 mm above stock height, 10 mm of drop for 40 mm of bump.
    await until(() => cell(element, 1, 1).textContent!.includes('past solid'));
    expect(cell(element, 0, 0).textContent).not.to.contain('past solid');
    const { change } = element.answer!.breakEvens[0]!;
    expect(change!.range).to.deep.equal([0, 10]);
  });

  it('shares its sets with lowering, which asks which of them is meant', async () => {
    const compare = await show(
      `<bumpline-car><bumpline-compare>${TABLE}</bumpline-compare><bumpline-lowering drop="25"></bumpline-lowering></bumpline-car>`,
    );
    await rendered(compare);
    const lowering = document.querySelector('bumpline-lowering') as BumplineLowering;
    await lowering.settled;
    const choice = root(lowering).querySelector<HTMLSelectElement>('.parts select')!;
    expect([...choice.options].map(({ text }) => text)).to.deep.equal(SETS.map(({ name }) => `${name}, front left`));
    expect(lowering.answer!.change.value).to.be.closeTo(changeOf(0, 0, 25), 2e-4);
    choice.value = '1';
    choice.dispatchEvent(new Event('change'));
    await wait(0);
    await lowering.settled;
    expect(lowering.answer!.change.value).to.be.closeTo(changeOf(1, 0, 25), 2e-4);
    // One that names its set is about that one, whichever is in use, and asks no more.
    lowering.setup = SETS[0].name;
    await wait(0);
    await lowering.settled;
    expect(lowering.answer!.change.value).to.be.closeTo(changeOf(0, 0, 25), 2e-4);
    expect(root(lowering).querySelector('.parts')).to.equal(null);
  });

  it('names a height of the page’s that is none', async () => {
    const bad = await show('<bumpline-compare heights="0, deep"></bumpline-compare>');
    expect(bad.problems.map(({ path, code }) => [path, code])).to.deep.equal([['heights.1', 'not-a-number']]);
  });

  it('gives targets of 44 px, and is not wider than 320 px', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>', 320);
    for (const details of root(element).querySelectorAll('details')) details.open = true;
    await wait(300);
    expect(find(element, '.sheet').scrollWidth).to.be.at.most(320);
    const small = [...root(element).querySelectorAll<HTMLElement>('button, summary, select, input')]
      .filter((control) => control.checkVisibility())
      .map((control) => ({ control, box: control.getBoundingClientRect() }))
      .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
      .map(({ control }) => control.outerHTML.slice(0, 80));
    expect(small).to.deep.equal([]);
  });
});
