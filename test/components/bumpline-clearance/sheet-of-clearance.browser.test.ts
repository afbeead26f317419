import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import { find, root, type, wait } from '../bumpline-lowering/set-up.js';
import { show } from './set-up.js';

const rendered = async (element: BumplineClearance) => {
  await wait(0);
  await element.settled;
};
const boxOf = (element: Element, selector: string) => find(element, selector).getBoundingClientRect();
const openPlace = async (element: BumplineClearance, key = 'places.0') => {
  find<HTMLDetailsElement>(element, '.inputs').open = true;
  await rendered(element);
  await wait(50);
  find<HTMLButtonElement>(element, `.inputs [data-key="${key}"]`).click();
  await wait(50);
  await element.settled;
};
const fields = (element: Element) => [...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')];
const slide = async (element: BumplineClearance, selector: string, value: number) => {
  const input = find<HTMLInputElement>(element, selector);
  input.value = String(value);
  input.dispatchEvent(new Event('input', { bubbles: true }));
  await wait(100);
  await element.settled;
};
const chosen = async (element: BumplineClearance, label: RegExp) => {
  const choice = [...root(element).querySelectorAll('dialog label.choice')].find((one) => label.test(one.textContent!));
  choice!.querySelector('input')!.click();
  await rendered(element);
};

describe('the sheet of <bumpline-clearance>', () => {
  it('is, without its cautions, no taller than two and a half screens of a phone when it opens', async () => {
    await setViewport({ width: 360, height: 780 });
    const element = await show('<bumpline-clearance></bumpline-clearance>', 328);
    const cautions = [...root(element).querySelectorAll('.cautions:not(.first)')];
    const hazards = cautions.reduce((sum, one) => sum + one.getBoundingClientRect().height, 0);
    expect(element.getBoundingClientRect().height - hazards).to.be.lessThan(2030);
    // What decides is not folded; what is folded is one line each.
    for (const fold of root(element).querySelectorAll('.more > details')) {
      expect(fold.getBoundingClientRect().height).to.be.lessThan(50);
      expect(fold.querySelector('.cautions')).to.equal(null);
    }
    expect(find(element, '.tightest').compareDocumentPosition(find(element, '.changes'))).to.equal(
      Node.DOCUMENT_POSITION_FOLLOWING,
    );
  });

  it('moves its picture with travel and steer, and says where it is', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>', 328);
    const line = () => find(element, '.at-cursor').textContent!.replace(/\s/g, ' ');
    const picture = () => find(element, '.section-view svg').innerHTML;
    await wait(900);
    expect(line()).to.match(/^At full bump, steered \d+° (left|right): gap 8\.3 mm, old wheel [\d.]+ mm\.$/);
    const before = picture();
    await slide(element, '#steer-slider', 0);
    expect(line()).to.match(/^At full bump, straight ahead: gap 30\.\d mm/);
    const ahead = picture();
    expect(ahead).to.not.equal(before);
    await slide(element, '#travel-slider', element.answer!.drop);
    expect(line()).to.match(/^At ride height, straight ahead: gap/);
    expect(picture()).to.not.equal(ahead);
    // Another place is shown as it is tightest.
    root(element).querySelectorAll<HTMLButtonElement>('.tightest button')[1]!.click();
    await wait(200);
    expect(line()).to.contain('At full bump');
  });

  it('keeps the sentence and the slider that changes it in one view on a phone on its side', async () => {
    await setViewport({ width: 780, height: 360 });
    const element = await show('<bumpline-clearance></bumpline-clearance>', 748);
    const top = boxOf(element, '.sentence').top;
    expect(boxOf(element, '#plane-slider').bottom - top).to.be.lessThan(360);
    expect(boxOf(element, '#travel-slider').bottom - boxOf(element, '.section-view').top).to.be.lessThan(360);
  });

  it('has the answer and the first field in one view in a dialog, on a phone on its side too, and nothing of it under the buttons', async () => {
    for (const [width, height] of [
      [360, 780],
      [780, 360],
    ] as const) {
      await setViewport({ width, height });
      const element = await show('<bumpline-clearance></bumpline-clearance>', width - 32);
      for (const key of ['before', 'places.0', 'stopGap']) {
        await openPlace(element, key).catch(() => {});
        if (!find<HTMLDialogElement>(element, 'dialog').open) continue;
        const buttons = boxOf(element, 'dialog .buttons');
        const field = fields(element)[0]!.getBoundingClientRect();
        expect(field.bottom, `${key} at ${width} px`).to.be.at.most(buttons.top + 1);
        const answer = boxOf(element, 'dialog .answer');
        expect(answer.bottom, `${key} at ${width} px`).to.be.at.most(height);
        expect(find(element, 'dialog .answer').textContent!.replace(/\s/g, ' ')).to.equal(
          'Too close to tell: arch lip at 12 o’clock, 8 ± 7 mm.',
        );
        find<HTMLDialogElement>(element, 'dialog').close();
        await wait(50);
      }
    }
    await setViewport({ width: 360, height: 780 });
  });

  it('takes a lip as a gap from the old tread, and tells the same place from the hub when asked', async () => {
    await setViewport({ width: 360, height: 780 });
    const element = await show('<bumpline-clearance></bumpline-clearance>', 328);
    await openPlace(element);
    await chosen(element, /old tread/);
    expect(find(element, 'dialog .fields label').textContent).to.contain('Old tread to the place');
    // The example's own lip, told so: 371 mm from the hub, of a 205/55R16 with 315.75 mm of radius.
    expect(fields(element)[0]!.placeholder).to.match(/^55(\.\d)?$/);
    await type(fields(element)[0]!, '55');
    await type(fields(element)[1]!, '25');
    await rendered(element);
    await wait(200);
    await element.settled;
    expect(element.answer!.places).to.have.length(1);
    const { gap } = element.answer!.places[0]!.worst;
    await chosen(element, /hub centre/);
    await element.settled;
    expect(Number(fields(element)[0]!.value)).to.be.closeTo(370.75, 0.06);
    expect(element.answer!.places[0]!.worst.gap).to.be.closeTo(gap, 1e-6);
    // A damper tube stands over no tread.
    const what = find<HTMLSelectElement>(element, 'dialog select');
    what.value = '5';
    what.dispatchEvent(new Event('change', { bubbles: true }));
    await rendered(element);
    expect(find(element, 'dialog').textContent).to.not.contain('old tread');
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('shows what can be pressed as such: a line in which nothing is given yet is no quieter than one that has a value', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>', 328);
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await rendered(element);
    await wait(50);
    const missing = [...root(element).querySelectorAll<HTMLElement>('.input-row .enter')];
    expect(missing.length).to.be.greaterThan(0);
    const link = getComputedStyle(find(element, '.actions .text-button')).color;
    for (const one of missing) {
      expect(getComputedStyle(one).color).to.equal(link);
      expect(getComputedStyle(one).textDecorationLine).to.equal('underline');
      expect(getComputedStyle(one).fontStyle).to.equal('normal');
    }
  });

  it('lets the table of gaps scroll within itself, with a shadow where there is more', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>', 288);
    find<HTMLDetailsElement>(element, '.numbers').open = true;
    await rendered(element);
    await wait(50);
    const scroll = find(element, '.numbers-scroll');
    expect(scroll.scrollWidth).to.be.greaterThan(scroll.clientWidth);
    expect(getComputedStyle(scroll).backgroundImage).to.contain('linear-gradient');
    // Half of it at least is for figures.
    expect(find(element, '.numbers th[scope=row]').getBoundingClientRect().width).to.be.lessThan(
      scroll.clientWidth / 2,
    );
  });
});
