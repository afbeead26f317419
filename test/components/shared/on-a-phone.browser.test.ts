import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../components/define.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { show as showCompare } from '../bumpline-compare/set-up.js';
import { find, root, show, wait } from '../bumpline-lowering/set-up.js';

const textOf = (one: Element | null | undefined): string => (one?.textContent ?? '').replace(/\s+/g, ' ').trim();

async function charted<E extends Element>(element: E): Promise<E> {
  root(element).querySelector('.chart')!.scrollIntoView();
  for (let i = 0; i < 100 && !root(element).querySelector('.chart-head'); i++) await wait(20);
  await wait(50);
  return element;
}

async function open(element: Element, key: string): Promise<void> {
  for (const list of root(element).querySelectorAll('details')) list.open = true;
  await wait(0);
  await (element as BumplineLowering).settled;
  find<HTMLButtonElement>(element, `[data-key="${key}"]`).click();
  await wait(0);
  await (element as BumplineLowering).settled;
}

describe('on a phone', () => {
  beforeEach(() => setViewport({ width: 360, height: 780 }));
  afterEach(async () => {
    document.body.replaceChildren();
    await setViewport({ width: 800, height: 600 });
  });

  it('what stands over a chart says where it is read and whose each figure is, and none is cut off', async () => {
    for (const width of [360, 320]) {
      await setViewport({ width, height: 780 });
      const element = await charted(await show('<bumpline-lowering></bumpline-lowering>', width));
      const head = find(element, '.chart-head');
      const said = [...head.children].filter((one) => !(one as HTMLElement).hidden).map(textOf);
      expect(said.slice(1).join(' | ')).to.match(
        /^at \+30.mm \| lowered ?−0\.99° \| same bump from stock height ?−0\.60°$/,
      );
      const box = head.getBoundingClientRect();
      for (const one of head.children) {
        const { right, bottom } = one.getBoundingClientRect();
        expect(right, textOf(one)).to.be.at.most(box.right + 0.5);
        expect(bottom, textOf(one)).to.be.at.most(box.bottom + 0.5);
      }
      document.body.replaceChildren();
    }
  });

  it('the figure of a bump that ends with the readings stands over the chart as well', async () => {
    await setViewport({ width: 320, height: 780 });
    const element = await charted(await showCompare('<bumpline-compare></bumpline-compare>', 300));
    const head = find(element, '.chart-head');
    const said = [...head.children].filter((one) => !(one as HTMLElement).hidden).map(textOf);
    expect(said.join(' | ')).to.match(/lowered joints with 25.mm of drop ?−0\.41°/);
    for (const figure of head.querySelectorAll('b'))
      expect(figure.getBoundingClientRect().right).to.be.at.most(head.getBoundingClientRect().right + 0.5);
  });

  it('what is still to be entered looks it, and after the gap to the stop comes the stop’s length', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await open(element, 'stopGap');
    const row = find(element, '[data-key=stopGap] .enter');
    expect(textOf(row)).to.equal('enter');
    expect(getComputedStyle(row).textDecorationLine).to.equal('underline');
    find<HTMLButtonElement>(element, 'dialog .buttons .main').click();
    await wait(0);
    await (element as BumplineLowering).settled;
    expect(textOf(root(element).querySelector('#sheet-title .title'))).to.equal('Length of the bump stop');
  });

  it('on its side keeps answer and slider in one view, and in a dialog picture and field', async () => {
    await setViewport({ width: 780, height: 360 });
    const element = await show('<bumpline-lowering></bumpline-lowering>', 760);
    const top = element.getBoundingClientRect().top;
    expect(find(element, '#drop-slider').getBoundingClientRect().bottom - top).to.be.at.most(360);
    await open(element, 'pivotHeight');
    const [picture, field, buttons] = ['dialog .where', 'dialog .fields input', 'dialog .buttons'].map((selector) =>
      find(element, selector).getBoundingClientRect(),
    ) as [DOMRect, DOMRect, DOMRect];
    expect(picture.height, 'the picture').to.be.greaterThan(100);
    expect(picture.bottom).to.be.at.most(buttons.top + 1);
    expect(field.bottom).to.be.at.most(buttons.top + 1);
    expect(field.left).to.be.greaterThan(picture.right - 1);
  });

  it('a table that is wider than its place comes to rest with a whole column beside the names', async () => {
    await setViewport({ width: 320, height: 780 });
    const element = await showCompare('<bumpline-compare></bumpline-compare>', 300);
    const scroll = find(element, '.compare-scroll');
    expect(scroll.scrollWidth).to.be.greaterThan(scroll.clientWidth);
    scroll.scrollLeft = 20;
    await wait(400);
    const name = find(element, '.compare th[scope=row]').getBoundingClientRect();
    const cells = [...root(element).querySelectorAll('.compare tbody tr:first-child td')].map((cell) =>
      cell.getBoundingClientRect(),
    );
    const isEnd = Math.abs(scroll.scrollLeft + scroll.clientWidth - scroll.scrollWidth) < 1.5;
    expect(isEnd || cells.some(({ left }) => Math.abs(left - name.right) < 3)).to.equal(true);
  });
});
