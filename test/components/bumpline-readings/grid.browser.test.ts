import { setViewport } from '@web/test-runner-commands';
import 'axe-core';
import { expect } from 'chai';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { independentRegression } from '../../reference/independent-regression.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { show } from './set-up.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;
const rendered = async (element: BumplineReadings) => {
  await wait(0);
  await element.settled;
};
const key = (element: Element, face: string) =>
  [...root(element).querySelectorAll<HTMLButtonElement>('.key')].find((button) => button.textContent!.trim() === face)!;
const cell = (element: Element, place: string) => find<HTMLInputElement>(element, `[data-place="${place}"]`);

async function openGrid(markup = '<bumpline-readings></bumpline-readings>'): Promise<BumplineReadings> {
  const element = await show(markup, 344);
  find<HTMLButtonElement>(element, '.type').click();
  // It is fetched when it is wanted.
  while (!find(element, '.reading-grid')) await wait(20);
  await rendered(element);
  // A desktop browser has a keyboard: the keys are asked for.
  if (!find(element, '.keys')) find<HTMLButtonElement>(element, '.own-keys').click();
  await rendered(element);
  return element;
}

async function press(element: BumplineReadings, text: string): Promise<void> {
  for (const face of text.split(' ')) {
    key(element, face).click();
    await rendered(element);
  }
}

/** A text typed on a keyboard into a cell, and left. */
async function typeInto(element: BumplineReadings, place: string, text: string): Promise<void> {
  const field = cell(element, place);
  field.focus();
  field.value = text;
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  field.blur();
  await rendered(element);
}

describe('the grid of <bumpline-readings>, at 360 × 780', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  it('takes readings typed on its keys: the sign key once, then the sign is kept; Next goes on to the next height', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '± 0 . 5 5 Next 0 . 6 2 Next 0 . 7 0 Next 0 . 7 6 Next 0 . 8 Next');
    const { answer } = element;
    const readings = [-0.55, -0.62, -0.7, -0.76, -0.8].map((value, i) => ({ travel: i * 5, value, pass: 'Pass 1' }));
    expect(answer!.used).to.have.length(5);
    const other = independentRegression(readings, answer!.fit.degree);
    expect(answer!.fit.residualSd).to.be.closeTo(other.residualSd, 1e-10);
    expect(answer!.change!.value).to.be.closeTo(other.change(answer!.over, 0).value, 1e-10);
    expect(find(element, '.owner').textContent).to.contain('yours');
  });

  it('turns a sign, deletes a figure, and takes another height than it proposed', async () => {
    const element = await openGrid();
    cell(element, 'new -1').focus();
    await press(element, '± 3 7 ⌫ 0 Next');
    await press(element, '0 . 4 4 ± Next');
    expect(cell(element, '0 -1').value).to.equal('−30');
    expect(cell(element, '0 0').value).to.equal('−0.44');
    await press(element, '± 0 . 4 Next');
    expect(cell(element, '1 0').value).to.equal('0.40');
  });

  it('writes the decimal comma of a German page, takes its point too, and writes degrees and minutes where those are set', async () => {
    const element = await openGrid('<div lang="de"><bumpline-readings angles="arcminutes"></bumpline-readings></div>');
    cell(element, 'new 0').focus();
    await press(element, '± 0 ° 1 8 ′ Weiter');
    expect(element.car).to.equal(undefined);
    expect(cell(element, '0 0').value).to.equal('−0°18′');
    element.angles = 'degrees';
    await rendered(element);
    expect(cell(element, '0 0').value).to.equal('−0,30');
    await press(element, '0 , 3 5 Weiter');
    expect(cell(element, '1 0').value).to.equal('−0,35');
    await typeInto(element, 'new 0', '-0.45');
    expect(cell(element, '2 0').value).to.equal('−0,45');
  });

  it('asks −7.70 or −0.77 about a value far off, and changes nothing by itself', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '± 0 . 5 5 Next 0 . 6 2 Next 0 . 7 0 Next 7 . 7 Next');
    expect(cell(element, '3 0').value).to.equal('−7.70');
    const question = find(element, '.reading-grid .queries');
    expect(question.textContent).to.match(
      /Pass 1 ↑, \+15\smm: −7\.70° lies far off its neighbours\. Is it −7\.70° or −0\.77°\?/,
    );
    [...question.querySelectorAll('button')].find((button) => button.textContent!.trim() === '−0.77°')!.click();
    await rendered(element);
    expect(cell(element, '3 0').value).to.equal('−0.77');
    expect(root(element).querySelector('.reading-grid .queries')).to.equal(null);
  });

  it('keeps a text that it cannot read, says which cell it is in, and does not go on', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . . 5 Next');
    expect(cell(element, 'new 0').value).to.equal('0..5');
    expect(find(element, '.reading-grid .queries').textContent).to.contain('“0..5” cannot be read as a number');
    expect(element.state).to.not.equal('ready');
  });

  it('asks 1.30: degrees or degrees and minutes', async () => {
    const element = await openGrid('<bumpline-readings angles="arcminutes"></bumpline-readings>');
    await typeInto(element, 'new 0', '-1.30');
    const choices = [...find(element, '.reading-grid .queries').querySelectorAll('button')].map((button) =>
      button.textContent!.trim(),
    );
    expect(choices).to.have.length(2);
    [...find(element, '.reading-grid .queries').querySelectorAll('button')][1]!.click();
    await rendered(element);
    expect(cell(element, '0 0').value).to.equal('−1°30′');
  });

  it('asks once whether a bare 5 is degrees or minutes, where minutes are read', async () => {
    const element = await openGrid('<bumpline-readings angles="arcminutes" quantity="toe"></bumpline-readings>');
    cell(element, 'new 0').focus();
    await press(element, '5 Next');
    const question = find(element, '.reading-grid .queries');
    expect(question.textContent!.replace(/\s+/g, ' ')).to.match(/“5” can mean 5\.00° or 0°05′\. Choose one\./);
    [...question.querySelectorAll('button')].find((button) => button.textContent!.trim() === '0°05′')!.click();
    await rendered(element);
    expect(cell(element, '0 0').value).to.equal('0°05′');
    await press(element, '3 Next ± 2 Next');
    expect(root(element).querySelector('.reading-grid .queries')).to.equal(null);
    expect([1, 2].map((row) => cell(element, `${row} 0`).value)).to.deep.equal(['0°03′', '−0°02′']);
  });

  const answerFirst = async (element: BumplineReadings) => {
    find<HTMLButtonElement>(element, '.reading-grid .queries button').click();
    await rendered(element);
  };

  it('asks about a last zero once: beside readings in decimals none is taken for minutes', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 2 0 Next');
    expect(find(element, '.reading-grid .queries').textContent).to.match(/Pass 1 ↑, 0\smm/);
    await answerFirst(element);
    expect(cell(element, '0 0').value).to.equal('0.20');
    // The keys go on where they were.
    await press(element, '0 . 3 0 Next');
    expect(cell(element, '1 0').value).to.equal('0.30');
    expect(root(element).querySelector('.reading-grid .queries')).to.equal(null);
    cell(element, '0 0').focus();
    await press(element, '± Next 0 . 7 Next');
    expect([0, 1, 2].map((row) => cell(element, `${row} 0`).value)).to.deep.equal(['−0.20', '0.30', '0.70']);
  });

  it('keeps an open question at its height and in its pass, whatever is typed elsewhere meanwhile', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 2 0 Next');
    find<HTMLButtonElement>(element, '.add-pass').click();
    await rendered(element);
    await press(element, '0 . 3 5 Next');
    const names = [...root(element).querySelectorAll('.pass-name')].map((name) => name.textContent!.trim());
    expect(names).to.deep.equal(['Pass 1 ↑', 'Pass 2 ↓']);
    await answerFirst(element);
    expect([cell(element, '0 0').value, cell(element, '0 1').value]).to.deep.equal(['0.20', '0.35']);
  });

  it('adds a pass the other way, which goes back up its side; removes it, and undo brings it back', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 1 Next 0 . 2 Next 0 . 3 Next');
    find<HTMLButtonElement>(element, '.add-pass').click();
    await rendered(element);
    await press(element, '0 . 3 Next 0 . 2 Next 0 . 1 Next');
    expect([0, 1, 2].map((row) => cell(element, `${row} 1`).value)).to.deep.equal(['0.10', '0.20', '0.30']);
    expect(element.answer!.passes).to.equal(2);
    root(element).querySelectorAll<HTMLButtonElement>('.pass-name')[1]!.click();
    await rendered(element);
    find<HTMLButtonElement>(element, '.pass-panel .text-button').click();
    await rendered(element);
    expect(element.answer!.passes).to.equal(1);
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(element.answer!.passes).to.equal(2);
  });

  it('proposes the first height again from three heights on, and goes there at the end of a further pass', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 1 Next 0 . 2 Next');
    expect(cell(element, 'again 0')).to.equal(null);
    await press(element, '0 . 3 Next');
    expect(cell(element, 'again 0').placeholder).to.equal('0?');
    expect(cell(element, 'again 0').getAttribute('aria-label')).to.match(/^Pass 1 ↑, 0\smm again$/);
    find<HTMLButtonElement>(element, '.add-pass').click();
    await rendered(element);
    await press(element, '0 . 3 Next 0 . 2 Next 0 . 1 Next');
    expect((root(element).activeElement as HTMLElement).dataset.place).to.equal('again 1');
    expect(cell(element, 'again 1').placeholder).to.equal('+10?');
    await press(element, '0 . 3 5 Next');
    expect(cell(element, 'again 1').value).to.equal('0.35');
    expect(element.answer!.used).to.have.length(7);
    expect(find(element, '.undo').textContent).to.match(/Pass 2 ↓, \+10\smm again/);
    // The reading that was first stays what it was.
    expect(cell(element, '2 1').value).to.equal('0.30');
    find<HTMLButtonElement>(element, '.undo').click();
    await rendered(element);
    expect(cell(element, 'again 1').value).to.equal('');
    expect(element.answer!.used).to.have.length(6);
  });

  it('keeps a text in that row that it cannot read, names it, and takes a reading out of it again', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 1 Next 0 . 2 Next 0 . 3 Next');
    cell(element, 'again 0').focus();
    await press(element, '0 . . 1 Next');
    expect(find(element, '.reading-grid .queries').textContent).to.match(/Pass 1 ↑, 0\smm again: .*0\.\.1/);
    await press(element, '⌫ ⌫ 1 2 Next');
    expect(cell(element, 'again 0').value).to.equal('0.12');
    expect(element.answer!.used).to.have.length(4);
    await typeInto(element, 'again 0', '');
    expect(element.answer!.used).to.have.length(3);
  });

  it('moves by arrow keys and Enter, and Escape leaves a text that was not meant', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 1 Next 0 . 2 Next');
    const down = (name: string) =>
      root(element).activeElement!.dispatchEvent(
        new KeyboardEvent('keydown', { key: name, bubbles: true, composed: true }),
      );
    down('ArrowUp');
    await rendered(element);
    expect((root(element).activeElement as HTMLElement).dataset.place).to.equal('1 0');
    const field = cell(element, '1 0');
    field.value = '9';
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    down('Escape');
    await rendered(element);
    expect(cell(element, '1 0').value).to.equal('0.20');
  });

  it('keeps figures aligned at 320 px: nothing overflows, and targets are a finger’s size', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '0 . 1 Next 0 . 2 Next 0 . 3 Next');
    (element.parentElement as HTMLElement).style.width = '304px';
    await rendered(element);
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
    for (const target of root(element).querySelectorAll('.reading-grid button, .reading-grid input')) {
      const { width, height } = target.getBoundingClientRect();
      expect(Math.min(width, height), target.outerHTML).to.be.at.least(44);
    }
  });

  it('has no violations by axe', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    await press(element, '± 0 . 5 5 Next 0 . 6 2 Next 0 . 7 0 Next 7 . 7 Next');
    const { violations } = await axe.run(element, { rules: { region: { enabled: false } } });
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).to.deep.equal([]);
  });
});

describe('this phone as the gauge', () => {
  const real = globalThis.matchMedia;
  before(() => {
    globalThis.matchMedia = ((query: string) => ({ matches: query.includes('coarse') })) as typeof matchMedia;
  });
  after(() => {
    globalThis.matchMedia = real;
  });
  const answerWith = (answer: string) => {
    (DeviceOrientationEvent as unknown as { requestPermission: () => Promise<string> }).requestPermission = () =>
      Promise.resolve(answer);
  };
  const turn = (beta: number, gamma: number) =>
    dispatchEvent(new DeviceOrientationEvent('deviceorientation', { alpha: 10, beta, gamma }));

  it('averages what the sensor says and puts it where the grid stands, with what it is good for said beside it', async () => {
    const element = await openGrid();
    cell(element, 'new 0').focus();
    answerWith('granted');
    find<HTMLButtonElement>(element, '.phone-start').click();
    await rendered(element);
    expect(find(element, '.phone').textContent).to.contain('Waiting for this phone’s sensor');
    expect(find(element, '.phone').textContent).to.contain('good to ±1° at best, so only differences count');
    // W3C Device Orientation, with the phone's back on the wheel: camber = −asin(cos β cos γ); −asin(cos 88.9°) = −1.1°.
    for (const beta of [88.8, 89, 88.9, 88.9, 88.8, 89]) turn(beta, 0);
    await wait(250);
    turn(88.9, 0);
    await rendered(element);
    expect(find(element, '.live').textContent).to.match(/^−1\.1° steady/);
    find<HTMLButtonElement>(element, '.phone-take').click();
    await rendered(element);
    expect(cell(element, '0 0').value).to.equal('−1.10');
    turn(80, 0);
    await wait(250);
    turn(88, 0);
    await rendered(element);
    expect(find(element, '.live').textContent).to.contain('still moving');
  });

  it('says so where the phone does not allow it', async () => {
    const element = await openGrid();
    answerWith('denied');
    find<HTMLButtonElement>(element, '.phone-start').click();
    await rendered(element);
    expect(find(element, '.phone [role=alert]').textContent).to.contain('does not let the page read its tilt');
  });
});
