import 'axe-core';
import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { find, root, show, showPoints, type, wait } from './set-up.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;

async function audit(element: Element): Promise<void> {
  const { violations } = await axe.run(element, { rules: { region: { enabled: false } } });
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)).to.deep.equal([]);
}

describe('<bumpline-lowering> for everybody', () => {
  for (const scheme of ['light', 'dark']) {
    it(`passes axe with a sheet open and a problem in it, ${scheme}`, async () => {
      const element = await show(`<bumpline-lowering theme="${scheme}"></bumpline-lowering>`);
      find<HTMLButtonElement>(element, '.drawing button').click();
      await wait(0);
      await element.updateComplete;
      await type(find(element, 'dialog .fields input'), 'x');
      await audit(element);
      find<HTMLDialogElement>(element, 'dialog').close();
      await wait(0);
      await audit(element);
    });
  }

  const focused = (element: BumplineLowering) => root(element).activeElement as HTMLElement | null;

  it('goes from the example to an own point by keyboard alone, and says the answer', async () => {
    const element = await showPoints('<button id="start">start</button><bumpline-lowering></bumpline-lowering>');
    document.querySelector<HTMLElement>('#start')!.focus();
    for (let i = 0; i < 30 && !focused(element)?.getAttribute('aria-label')?.startsWith('3 '); i++) {
      await sendKeys({ press: 'Tab' });
    }
    expect(focused(element)?.getAttribute('aria-label')).to.match(/^3 Lower ball joint/);
    await sendKeys({ press: 'Enter' });
    await wait(50);
    expect(focused(element)?.closest('dialog')?.open).to.equal(true);
    for (const text of ['-4', '696', '180']) {
      await sendKeys({ type: text });
      await sendKeys({ press: 'Enter' });
      await wait(20);
    }
    await element.settled;
    // Enter after the last number leads on to the next point.
    expect(find(element, '#sheet-title').textContent).to.contain('Top mount').and.to.contain('5 of 12');
    await sendKeys({ press: 'Escape' });
    await wait(50);
    expect(find<HTMLDialogElement>(element, 'dialog').open).to.equal(false);
    expect(find(element, '.owner').textContent).to.equal('1 of 8 points yours');
    // Focus comes back to where it was opened from.
    expect(focused(element)?.getAttribute('aria-label')).to.match(/^3 Lower ball joint/);
    await wait(700);
    expect(find(element, '[role=status]').textContent).to.match(/^Lowering 30.mm adds 0\.\d\d° of negative camber/);
  });

  it('moves the drop by the slider’s arrow keys', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find(element, 'input[type=range]').focus();
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ press: 'ArrowRight' });
    await element.settled;
    expect(element.answer?.drop).to.equal(32);
  });

  it('gives every control a target of at least 44 px', async () => {
    const element = await show('<bumpline-lowering bump-travel="62"></bumpline-lowering>', 320);
    for (const details of root(element).querySelectorAll('details')) details.open = true;
    find<HTMLButtonElement>(element, '.drawing button').click();
    await wait(50);
    const controls = root(element).querySelectorAll<HTMLElement>(
      'button, summary, select, input:not([type=radio]), label.choice',
    );
    const small = [...controls]
      .filter((control) => control.checkVisibility())
      .map((control) => ({ control, box: control.getBoundingClientRect() }))
      .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
      .map(({ control, box }) => `${control.outerHTML.slice(0, 80)} ${box.width}×${box.height}`);
    find<HTMLDialogElement>(element, 'dialog').close();
    expect(small).to.deep.equal([]);
  });

  it('is not wider than its place at 320 px', async () => {
    const element = await show('<bumpline-lowering bump-travel="62"></bumpline-lowering>', 320);
    for (const details of root(element).querySelectorAll('details')) details.open = true;
    expect(element.scrollWidth).to.be.at.most(320);
    expect(find(element, '.sheet').scrollWidth).to.be.at.most(320);
  });
});
