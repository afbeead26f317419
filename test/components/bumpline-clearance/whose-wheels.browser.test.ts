import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import { find, root, type, wait } from '../bumpline-lowering/set-up.js';
import { sentenceOf, show } from './set-up.js';

const PAGE =
  '<bumpline-clearance wheel-before="205/55R16, 6.5, 45" wheel-after="225/45R17, 7.5, 35"></bumpline-clearance>';
const EXAMPLE = '<bumpline-clearance></bumpline-clearance>';

const rendered = async (element: BumplineClearance) => {
  await wait(0);
  await element.settled;
};
const press = async (element: BumplineClearance, text: RegExp) => {
  [...root(element).querySelectorAll<HTMLButtonElement>('button')]
    .find((one) => text.test(one.textContent!.trim()))!
    .click();
  await rendered(element);
};
const title = (element: BumplineClearance) => find(element, '#sheet-title .title').textContent;
const field = (element: BumplineClearance, label: RegExp) =>
  [...root(element).querySelectorAll<HTMLElement>('dialog .field')].find((one) =>
    label.test(one.querySelector('label')!.textContent!),
  )!;
const fill = async (element: BumplineClearance, label: RegExp, text: string) => {
  await type(field(element, label).querySelector('input')!, text);
  await rendered(element);
};
/** What stands beside a field's label. */
const whose = (element: BumplineClearance, label: RegExp) => field(element, label).querySelector('em')!.textContent;
const row = (element: BumplineClearance, name: RegExp) => {
  const found = [...root(element).querySelectorAll<HTMLElement>('.inputs .input-row')].find((one) =>
    name.test(one.querySelector('.name')!.textContent!),
  )!;
  const own = [...found.querySelectorAll('.own')].map((one) => one.textContent);
  return { own, count: found.querySelector('small')!.textContent, text: found.querySelector('.value')!.textContent! };
};
const owner = (element: BumplineClearance) => find(element, '.owner').textContent;

describe('<bumpline-clearance>, whose each value of each wheel is, at 360 × 780', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  for (const [name, markup] of [
    ['an example', EXAMPLE],
    ['a page with wheels of its own', PAGE],
  ] as const) {
    it(`“Put in my own car” leads through the old wheel and the new one before the first place, from ${name}`, async () => {
      const element = await show(markup);
      await press(element, /^Put in my own car$/);
      const seen = [title(element)];
      for (let i = 0; i < 3; i++) {
        await press(element, /^Next$/);
        seen.push(title(element));
      }
      expect(seen.slice(0, 2)).to.deep.equal(['Old wheel', 'New wheel']);
      expect(seen[2]).to.match(/arch|place/i);
      for (const label of [/^Tyre: width/, /^Tyre: aspect/, /^Tyre: rim/, /^Rim width/, /^Offset/]) {
        await press(element, /^Back$/);
        while (title(element) !== 'Old wheel') await press(element, /^Back$/);
        expect(field(element, label)).to.not.equal(undefined);
        await press(element, /^Next$/);
        expect(field(element, label)).to.not.equal(undefined);
        await press(element, /^Next$/);
      }
      find<HTMLDialogElement>(element, 'dialog').close();
    });
  }

  it('one offset typed makes that offset yours, and leaves the rest the example’s, in italics and counted', async () => {
    const element = await show(EXAMPLE);
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await press(element, /^Put in my own car$/);
    expect(whose(element, /^Offset/)).to.equal('example value');
    const after = element.answer!.wheels.after.spec;
    await fill(element, /^Offset/, '38');
    expect(whose(element, /^Offset/)).to.equal('yours');
    for (const label of [/^Tyre: width/, /^Tyre: aspect/, /^Rim width/])
      expect(whose(element, label)).to.equal('example value');
    expect(element.answer!.wheels.before.spec).to.deep.equal({ size: '205/55R16', rimWidthInch: 6.5, offset: 38 });
    expect(element.answer!.wheels.after.spec).to.deep.equal(after);
    find<HTMLDialogElement>(element, 'dialog').close();
    await rendered(element);
    expect(row(element, /^Old wheel/)).to.deep.include({ own: ['ET\u202f38\u202fmm'], count: '1 of 3 yours' });
    expect(row(element, /^New wheel/)).to.deep.include({ own: [], count: '0 of 3 yours' });
    expect(owner(element)).to.equal('old wheel 1 of 3 yours');
    expect(sentenceOf(element)).to.match(/^Not your car yet\. /);
    expect(sentenceOf(element)).to.match(/part of the old wheel, the new wheel, .*are still the example’s/i);
  });

  it('a size typed leaves rim width and offset that were given, and follows to a usual rim only where it says so', async () => {
    const element = await show(PAGE);
    await press(element, /^Put in my own car$/);
    await press(element, /^Next$/);
    expect(whose(element, /^Rim width/)).to.equal('the page’s value');
    await fill(element, /^Rim width/, '8.5');
    await fill(element, /^Offset/, '30');
    await fill(element, /^Tyre: width/, '235/40R18');
    expect(element.answer!.wheels.after.spec).to.include({ size: '235/40R18', rimWidthInch: 8.5, offset: 30 });
    const other = await show(PAGE);
    await press(other, /^Put in my own car$/);
    await press(other, /^Next$/);
    await fill(other, /^Tyre: width/, '235/40R18');
    expect(other.answer!.wheels.after.spec).to.include({ size: '235/40R18', rimWidthInch: 8.5, offset: 35 });
    expect(whose(other, /^Rim width/)).to.equal('usual for this size');
    expect(whose(other, /^Offset/)).to.equal('the page’s value');
    await press(other, /^Next$/);
    // It asks once for what is missing.
    expect(find(other, 'dialog [role=alert]').textContent).to.match(/Rim width and Offset \(ET\) are missing/);
    find<HTMLDialogElement>(other, 'dialog').close();
    await rendered(other);
    expect(owner(other)).to.equal('new wheel 1 of 3 yours');
    expect(sentenceOf(other)).to.match(/^Not your car yet\. /);
  });

  it('a page’s wheels are given, never the example’s, and once one’s own are begun they are the page’s', async () => {
    const element = await show(PAGE);
    expect(owner(element)).to.equal(
      'wheels from this page; motion, places, bump travel, drop from an invented example',
    );
    expect(sentenceOf(element)).to.match(
      /^Not your car yet\. .*How the wheel moves and the drop are still the example’s\.$/,
    );
    await press(element, /^Put in my own car$/);
    await fill(element, /^Offset/, '44');
    find<HTMLDialogElement>(element, 'dialog').close();
    await rendered(element);
    expect(owner(element)).to.equal('old wheel 1 of 3 yours');
    expect(sentenceOf(element)).to.match(/Part of the old wheel and the new wheel are still the page’s\./i);
  });

  it('says “not your car yet” until old wheel, new wheel, places, bump travel and motion are one’s own', async () => {
    const element = await show(EXAMPLE);
    await press(element, /^Put in my own car$/);
    await fill(element, /^Tyre: width/, '225/45R17');
    await fill(element, /^Rim width/, '7.5');
    await fill(element, /^Offset/, '40');
    await press(element, /^Next$/);
    expect(whose(element, /^Offset/)).to.equal('as on the old wheel');
    await fill(element, /^Tyre: width/, '235/40R18');
    await fill(element, /^Rim width/, '8.5');
    await fill(element, /^Offset/, '35');
    await press(element, /^Next$/);
    await fill(element, /^Hub centre/, '375');
    await fill(element, /^Outboard/, '24');
    await press(element, /^Next$/);
    await press(element, /^Next$/);
    await fill(element, /^Gap on the rod/, '32');
    await press(element, /^Next$/);
    await fill(element, /^Length of the stop/, '50');
    find<HTMLDialogElement>(element, 'dialog').close();
    await rendered(element);
    expect(owner(element)).to.equal('wheels, places, bump travel yours');
    expect(sentenceOf(element)).to.match(
      /^Not your car yet\. .*How the wheel moves and the drop are still the example’s\.$/,
    );
    // The example's own drop becomes theirs when they give it, though it is the same number.
    await press(element, /^30.mm$/);
    await type(find(element, '.field-place input'), '30');
    await rendered(element);
    expect(owner(element)).to.equal('wheels, places, bump travel, drop yours');
    expect(sentenceOf(element)).to.match(/^Not your car yet\. .*How the wheel moves is still the example’s\.$/);
    expect(element.answer!.wheels.plane).to.be.closeTo(5, 1e-9);
    await press(element, /^Next: /);
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('takes tyre, rim and offset from the old wheel at one press, for a spacer alone', async () => {
    const element = await show(PAGE);
    await press(element, /^Put in my own car$/);
    await fill(element, /^Tyre: width/, '225/45R17');
    await fill(element, /^Rim width/, '7.5');
    await fill(element, /^Offset/, '40');
    await press(element, /^Next$/);
    await press(element, /^Take tyre, rim and offset from the old wheel$/);
    await fill(element, /^Spacer/, '12');
    expect(element.answer!.wheels.plane).to.be.closeTo(12, 1e-9);
    find<HTMLDialogElement>(element, 'dialog').close();
    await rendered(element);
    expect(owner(element)).to.equal('wheels yours');
  });
});
