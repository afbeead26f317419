import 'axe-core';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import { find, root, wait } from '../bumpline-lowering/set-up.js';
import { show } from './set-up.js';

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;

async function audit(element: Element): Promise<void> {
  const { violations } = await axe.run(element, { rules: { region: { enabled: false } } });
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)).to.deep.equal([]);
}

const focused = (element: BumplineClearance) => root(element).activeElement as HTMLElement | null;

describe('<bumpline-clearance> for everybody', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  for (const scheme of ['light', 'dark']) {
    it(`passes axe with each kind of sheet open, and with a wheel that does not fit its rim, ${scheme}`, async () => {
      const element = await show(
        `<bumpline-clearance theme="${scheme}" wheel-after="225/45R17, 10, 35"></bumpline-clearance>`,
      );
      await audit(element);
      const rows = () => [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')];
      for (const details of root(element).querySelectorAll('details')) details.open = true;
      for (const title of [/^Old wheel/, /arch lip|Add a place/i]) {
        rows()
          .find((row) => title.test(row.querySelector('.name')!.textContent!))!
          .click();
        await wait(50);
        expect(find<HTMLDialogElement>(element, 'dialog').open).to.equal(true);
        await audit(element);
        find<HTMLDialogElement>(element, 'dialog').close();
        await wait(50);
      }
    });
  }

  it('gives every control a target of at least 44 px, and is not wider than 320 px', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>', 320);
    for (const details of root(element).querySelectorAll('details')) details.open = true;
    await wait(300);
    expect(element.scrollWidth).to.be.at.most(320);
    expect(find(element, '.sheet').scrollWidth).to.be.at.most(320);
    [...root(element).querySelectorAll<HTMLButtonElement>('.actions button')].at(-1)!.click();
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

  it('is asked by keyboard alone: drop in the sentence, position by the slider, a place by its button; the answer is said', async () => {
    const element = await show('<button id="start">start</button><bumpline-clearance></bumpline-clearance>');
    document.querySelector<HTMLElement>('#start')!.focus();
    const tabTo = async (isThere: (at: HTMLElement) => boolean) => {
      for (let i = 0; i < 40 && !(focused(element) && isThere(focused(element)!)); i++)
        await sendKeys({ press: 'Tab' });
      expect(isThere(focused(element)!)).to.equal(true);
    };
    await tabTo((at) => at.matches('button.drop'));
    await sendKeys({ press: 'Enter' });
    await wait(50);
    await sendKeys({ type: '20' });
    await sendKeys({ press: 'Enter' });
    await element.settled;
    expect(element.answer!.drop).to.equal(20);
    await tabTo((at) => at.matches('input[type=range]'));
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ press: 'ArrowRight' });
    await element.settled;
    expect(element.answer!.wheels.plane).to.be.closeTo(7, 1e-9);
    await tabTo((at) => at.matches('.which-view [aria-pressed=false]'));
    await sendKeys({ press: 'Enter' });
    await wait(100);
    await tabTo((at) => at.matches('.side-view button') && at.getAttribute('aria-label')!.includes('liner screw'));
    await sendKeys({ press: 'Enter' });
    await element.settled;
    expect(find(element, '.view-name').textContent).to.contain('The liner screw');
    await wait(700);
    expect(find(element, '[role=status]').textContent!.replace(/\s/g, ' ')).to.match(
      /^Not your car yet\. 20 mm lower, wheels 7 mm further out: .*arch lip at 12 o’clock/,
    );
  });
});
