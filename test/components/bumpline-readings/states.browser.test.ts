import { expect } from 'chai';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { find, meddle, root, sentenceOf, type, wait } from '../bumpline-lowering/set-up.js';
import { inventedReadings, show, tableOf } from './set-up.js';

const rendered = async (element: BumplineReadings) => {
  await wait(0);
  await element.settled;
};

describe('the states of <bumpline-readings>', () => {
  afterEach(() => {
    meddle.reply = undefined;
    history.replaceState(null, '', location.pathname + location.search);
  });

  it('shows its light DOM until it has an answer, and keeps it where the readings cannot be fitted', async () => {
    const table =
      '<table><thead><tr><th>Wheel travel (mm)</th><th>Pass 1 (°)</th></tr></thead><tbody><tr><td>0</td><td>-1</td></tr><tr><td>5</td><td>abc</td></tr><tr><td>10</td><td>-1.2</td></tr></tbody></table>';
    const element = await show(`<bumpline-readings>${table}</bumpline-readings>`);
    expect(element.state).to.equal('problem');
    expect(sentenceOf(element)).to.equal('No answer yet.');
    expect(element.querySelector('table')!.checkVisibility()).to.equal(true);
    expect(find(element, '#problems').textContent).to.contain('This page’s table, row 3, column 2');
    expect(find(element, '#problems').textContent).to.contain('“abc”');
  });

  it('answers nothing from a page’s table with a cell that cannot be read, and names the cell', async () => {
    const readings = inventedReadings();
    const element = await show(
      `<bumpline-readings degree="2">${tableOf(readings).replace(/<data value="[^"]*">[^<]*<\/data>/, 'oops')}</bumpline-readings>`,
    );
    expect(element.answer).to.equal(undefined);
    expect(find(element, '#problems').textContent).to.contain('“oops”');
    expect(element.state).to.equal('problem');
    expect(sentenceOf(element)).to.equal('No answer yet.');
    // Mended, it is answered.
    [...element.querySelectorAll('td')].find(({ textContent }) => textContent === 'oops')!.textContent = '-0.6';
    await wait(20);
    await element.settled;
    expect(element.state).to.equal('ready');
    expect(element.answer!.used).to.have.length(readings.length);
  });

  it('follows a page that changes a cell of its table', async () => {
    const element = await show(`<bumpline-readings degree="2">${tableOf(inventedReadings())}</bumpline-readings>`);
    const { value } = element.answer!.change!;
    element.querySelector('tbody tr:last-child data')!.setAttribute('value', '-3');
    await wait(20);
    await element.settled;
    expect(element.answer!.change!.value).to.not.be.closeTo(value, 1e-6);
  });

  it('owns up to a fault, keeps the readings, and tries again', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    meddle.reply = { ok: false, fault: 'broken on purpose' };
    await type(find<HTMLInputElement>(element, '.sentence input'), '20');
    expect(element.state).to.equal('fault');
    expect(find(element, '#problems').textContent).to.contain('your numbers are kept');
    meddle.reply = undefined;
    find<HTMLButtonElement>(element, '#problems button').click();
    await rendered(element);
    expect(element.state).to.equal('example');
    expect(element.answer!.over).to.equal(20);
  });

  it('says a degree that the readings do not support, and keeps no answer about other readings', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    element.readings = inventedReadings().filter(({ travel }) => travel <= -10);
    element.degree = 9;
    await element.settled;
    expect(element.state).to.equal('problem');
    expect(element.answer).to.equal(undefined);
    expect(find(element, '#problems').textContent).to.contain(
      'Degree of the curve is 9, which is not possible. Enter 2 or less',
    );
  });

  it('keeps the readings in the address, and opens with them again', async () => {
    const element = await show('<bumpline-readings keep-in-address></bumpline-readings>');
    find<HTMLButtonElement>(element, '.type').click();
    while (!root(element).querySelector('.reading-grid')) await wait(20);
    for (const [i, value] of ['-0.5', '-0.61', '-0.7', '-0.77'].entries()) {
      const field = find<HTMLInputElement>(element, '[data-place="new 0"]');
      field.focus();
      field.value = value;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
      await rendered(element);
      // … and the first height once more, from three on.
      expect(root(element).querySelectorAll('.reading-grid tbody tr')).to.have.length(i + 2 + (i < 2 ? 0 : 1));
    }
    await wait(500);
    expect(location.hash).to.contain('car=1');
    const { value } = element.answer!.change!;
    const again = await show('<bumpline-readings keep-in-address></bumpline-readings>');
    expect(again.state).to.equal('ready');
    expect(again.answer!.change!.value).to.equal(value);
  });

  it('speaks the whole sentence half a second after a change, once', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>');
    await type(find<HTMLInputElement>(element, '.sentence input'), '40');
    await wait(700);
    expect(find(element, '[role=status]').textContent!.replace(/[\u202f\u00a0]/g, ' ')).to.match(
      /^From 49 readings in 3 passes: 40 mm of bump adds 0\.4\d° ±/,
    );
  });

  it('overflows nothing at 320 px with all parts unfolded, in a finger’s size', async () => {
    const element = await show('<bumpline-readings></bumpline-readings>', 304);
    for (const details of root(element).querySelectorAll('details')) details.open = true;
    await rendered(element);
    await wait(300);
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
    for (const target of root(element).querySelectorAll<HTMLElement>('button, select, summary, .sentence input')) {
      const { height } = target.getBoundingClientRect();
      expect(height, target.outerHTML).to.be.at.least(44);
    }
  });
});
