import { setViewport } from '@web/test-runner-commands';
import 'axe-core';
import { expect } from 'chai';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { show } from './set-up.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;
const rendered = async (element: BumplineReadings) => {
  await wait(0);
  await element.settled;
};
const all = <E extends Element = HTMLElement>(element: Element, selector: string) => [
  ...root(element).querySelectorAll<E>(selector),
];
const cell = (element: Element, place: string) => find<HTMLInputElement>(element, `[data-place="${place}"]`);
const words = (node: Element | null) => (node?.textContent ?? '').replace(/[\s\u202f]+/g, ' ').trim();
/** mm over a base, as an angle: test/reference/toe_gauge_cases.csv, toe = atan(difference/base). */
const degrees = (mm: number, base: number) => (Math.atan(mm / base) * 180) / Math.PI;

async function choose(element: BumplineReadings, label: string, option: string): Promise<void> {
  const picked = all(element, '.pick')
    .find((one) => words(one).startsWith(label))!
    .querySelector('select')!;
  picked.value = [...picked.options].find((one) => words(one) === option)!.value;
  picked.dispatchEvent(new Event('change', { bubbles: true }));
  await rendered(element);
}

async function typeInto(element: BumplineReadings, field: HTMLInputElement, text: string): Promise<void> {
  field.focus();
  field.value = text;
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  field.dispatchEvent(new Event('change', { bubbles: true }));
  field.blur();
  await rendered(element);
}

/** A set of toe of one's own, with the grid open. */
async function toeGrid(): Promise<BumplineReadings> {
  const element = await show('<bumpline-readings></bumpline-readings>', 344);
  find<HTMLDetailsElement>(element, '.setups').open = true;
  find<HTMLButtonElement>(element, '.new-setup').click();
  await rendered(element);
  await choose(element, 'What the gauge read', 'Toe');
  find<HTMLButtonElement>(element, '.type').click();
  while (!find(element, '.reading-grid')) await wait(20);
  await rendered(element);
  return element;
}

async function withDials(): Promise<BumplineReadings> {
  const element = await toeGrid();
  await choose(element, 'Toe was read with', 'Two dials on a plate');
  await typeInto(element, find<HTMLInputElement>(element, '[data-how=base]'), '300');
  await choose(element, 'As the front of the wheel moves inboard', 'reads more');
  return element;
}

const PAIRS = ['12.30 / 11', '12.00 / 11', '11.65 / 11', '11.35 / 11.05', '11 / 11.1'];

async function typePairs(element: BumplineReadings): Promise<void> {
  for (const pair of PAIRS) await typeInto(element, cell(element, 'new 0'), pair);
}

describe('both figures of toe over a base, typed at 360 × 780', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  it('become a curve of toe; the figures stand in the cells, the angle below', async () => {
    const element = await withDials();
    await typePairs(element);
    expect(cell(element, '0 0').value).to.equal('12.3 / 11');
    expect(words(all(element, '.becomes')[0]!)).to.equal('0.25°');
    expect(element.answer!.quantity).to.equal('toe');
    const { travel, value } = { travel: 20, value: degrees(-0.1, 300) - degrees(1.3, 300) };
    expect(element.answer!.over).to.equal(travel);
    expect(element.answer!.change!.value).to.be.closeTo(value, 0.03);
  });

  it('wait for the base and the sign: what was typed before is read as soon as both are said', async () => {
    const element = await toeGrid();
    await choose(element, 'Toe was read with', 'Two dials on a plate');
    await typeInto(element, cell(element, 'new 0'), '12.3 / 11');
    expect(words(find(element, '.queries'))).to.contain('say above how far apart');
    expect(cell(element, 'new 0').value).to.equal('12.3 / 11');
    await typeInto(element, find<HTMLInputElement>(element, '[data-how=base]'), '0');
    expect(words(find(element, '.how-read .queries'))).to.contain('20 mm or more');
    await typeInto(element, find<HTMLInputElement>(element, '[data-how=base]'), '10 in');
    await choose(element, 'As the front of the wheel moves inboard', 'reads less');
    expect(cell(element, '0 0').value).to.equal('12.3 / 11');
    expect(words(all(element, '.becomes')[0]!)).to.equal('−0.29°');
    expect(degrees(-1.3, 254)).to.be.closeTo(-0.29, 0.005);
  });

  it('are worked out again when the base is corrected, undone as one step, and kept while a gauge is chosen', async () => {
    const element = await withDials();
    await typePairs(element);
    await typeInto(element, find<HTMLInputElement>(element, '[data-how=base]'), '600');
    expect(words(all(element, '.becomes')[0]!)).to.equal('0.12°');
    await choose(element, 'Toe was read with', 'A gauge on the hub, as an angle');
    expect(cell(element, '0 0').value).to.equal('0.12');
    await choose(element, 'Toe was read with', 'Two dials on a plate');
    expect(cell(element, '0 0').value).to.equal('12.3 / 11');
    expect(find<HTMLInputElement>(element, '[data-how=base]').value).to.contain('600');
  });

  it('one figure alone, or one that cannot be read, is told and stays', async () => {
    const element = await withDials();
    await typeInto(element, cell(element, 'new 0'), '12.3');
    expect(words(find(element, '.reading-grid > .queries'))).to.contain('two figures belong here, front / rear');
    await typeInto(element, cell(element, 'new 0'), '12.3 / x');
    expect(words(find(element, '.reading-grid > .queries'))).to.contain('rear: “x” cannot be read as a number');
    expect(cell(element, 'new 0').value).to.equal('12.3 / x');
    await typeInto(element, cell(element, 'new 0'), '0.2°');
    expect(cell(element, '0 0').value).to.equal('0.20°');
  });

  it('can be typed on its keys, with a key between the two and the sign of either', async () => {
    const element = await withDials();
    if (!find(element, '.keys')) find<HTMLButtonElement>(element, '.own-keys').click();
    await rendered(element);
    cell(element, 'new 0').focus();
    for (const face of '1 . 5 ± / 2 ± Next'.split(' ')) {
      all(element, '.key')
        .find((one) => words(one) === face)!
        .click();
      await rendered(element);
    }
    expect(cell(element, '0 0').value).to.equal('−1.5 / −2');
    expect(words(all(element, '.becomes')[0]!)).to.equal('0.10°');
  });

  it('a phone’s tilt is no toe: it is not offered', async () => {
    const element = await toeGrid();
    expect(find(element, '.phone')).to.equal(null);
  });

  it('passes axe and is no wider than the element', async () => {
    const element = await withDials();
    await typePairs(element);
    const results = await axe.run(element as never, { resultTypes: ['violations'] });
    expect(results.violations.map(({ id, nodes }) => [id, nodes.length])).to.deep.equal([]);
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
  });
});
