import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { find, root, type, wait } from '../bumpline-lowering/set-up.js';
import { fromTheSide, sentenceOf, show } from './set-up.js';

const rendered = async (element: BumplineClearance) => {
  await wait(0);
  await element.settled;
};
const click = async (element: BumplineClearance, selector: string) => {
  find<HTMLButtonElement>(element, selector).click();
  await rendered(element);
};
const button = (element: Element, text: RegExp) =>
  [...root(element).querySelectorAll<HTMLButtonElement>('button')].find((one) => text.test(one.textContent!.trim()))!;
const press = async (element: BumplineClearance, text: RegExp) => {
  button(element, text).click();
  await rendered(element);
};
const fields = (element: Element) => [...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')];
/** Fills the open sheet and goes on. */
async function fill(element: BumplineClearance, ...texts: string[]): Promise<void> {
  for (const [index, text] of texts.entries()) if (text) await type(fields(element)[index]!, text);
  await press(element, button(element, /^Next$/) ? /^Next$/ : /^Done$/);
}

describe('<bumpline-clearance>, at 360 × 780', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  it('opens with a full answer about an example, and with one text field at most', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    expect(element.state).to.equal('example');
    expect(find(element, '.owner').textContent).to.equal('Example');
    expect(sentenceOf(element)).to.match(
      /^Not your car yet\. 30 mm lower, wheels 5 mm further out: .*arch lip at 12 o’clock/,
    );
    expect(root(element).querySelectorAll('.sentence input')).to.have.length(1);
    expect(find(element, '.section-view svg')).to.not.equal(null);
    await fromTheSide(element);
    expect(find(element, '.side-view svg')).to.not.equal(null);
    expect(find(element, '.cautions').textContent).to.contain('never permission to drive');
  });

  it('looks at the steering as well: the verdict is that of the worst of it', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    const straight = await show('<bumpline-clearance lock="0"></bumpline-clearance>');
    expect(straight.answer!.isSteered).to.equal(false);
    expect(sentenceOf(straight)).to.contain('straight ahead');
    const again = await show('<bumpline-clearance></bumpline-clearance>');
    expect(again.answer!.isSteered).to.equal(true);
    expect(sentenceOf(again)).to.match(/steered \d+°|full lock/);
    element.answer!.places.forEach((place, index) => {
      expect(place.worst.gap).to.be.at.most(straight.answer!.places[index]!.worst.gap + 1e-9);
    });
  });

  it('edits drop and position in the sentence; a position further out is a spacer, and the rim’s offset stays', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    await click(element, '.sentence button.drop');
    await type(find(element, '.field-place input'), '25');
    await type(find(element, '.sentence input'), '15');
    await rendered(element);
    expect(sentenceOf(element)).to.match(/^Not your car yet\. 25 mm lower, wheels 15 mm further out:/);
    expect(element.answer!.drop).to.equal(25);
    expect(element.answer!.wheels.plane).to.be.closeTo(15, 1e-9);
    expect(element.answer!.wheels.after.spec).to.include({ offset: 40, spacer: 10 });
    expect(sentenceOf(element)).to.contain('still the example’s');
    await press(element, /^Undo/);
    expect(element.answer!.wheels.plane).to.be.closeTo(5, 1e-9);
  });

  it('takes a car of one’s own from sheet to sheet: wheels, places, stop; the example’s places go with the first', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    await press(element, /^Put in my own car$/);
    await fill(element, '205/55R16', '', '', '6.5', '45');
    expect(find(element, '#sheet-title').textContent).to.contain('New wheel');
    await fill(element, '', '', '', '', '', '15');
    // What is chosen before the measures are typed counts.
    const what = find<HTMLSelectElement>(element, 'dialog select');
    expect(what.selectedOptions[0]!.textContent).to.equal('arch lip');
    await fill(element, '365', '20');
    expect(find(element, '#sheet-title').textContent).to.contain('A place in the arch');
    find<HTMLInputElement>(element, 'dialog input[value="11"]').click();
    await rendered(element);
    await fill(element, '372', '18');
    const more = find<HTMLSelectElement>(element, 'dialog select');
    more.value = '2';
    more.dispatchEvent(new Event('change', { bubbles: true }));
    await rendered(element);
    find<HTMLInputElement>(element, 'dialog input[value="10"]').click();
    await rendered(element);
    await fill(element, '395', '-30');
    await press(element, /^Next$/);
    expect(find(element, '#sheet-title').textContent).to.contain('Gap to the bump stop');
    await fill(element, '30');
    await fill(element, '55');
    const { answer } = element;
    expect(answer!.places).to.have.length(3);
    const said = [...root(element).querySelectorAll('.inputs .name')].map((name) => name.textContent);
    expect(said).to.include.members([
      'Arch lip at 12 o’clock',
      'Arch lip at 11 o’clock forward',
      'Liner screw at 10 o’clock forward',
    ]);
    expect(answer!.wheels.plane).to.be.closeTo(15, 1e-9);
    // 30 mm on a rod that moves a little less than the wheel, half of 55 mm until solid, both 30 mm nearer.
    const { touch, solid } = answer!.budget.bump;
    expect(touch!.travel).to.be.within(30, 33);
    expect(solid!.travel - touch!.travel).to.be.within(27.5, 30);
    expect(find(element, '.owner').textContent).to.equal('wheels, places, bump travel yours');
    expect(sentenceOf(element)).to.contain('How the wheel moves and the drop are still the example’s.');
  });

  it('a wheel with one number missing does not count, and its sheet says which', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    await press(element, /^Put in my own car$/);
    await fill(element, '205', '55', '16', '6.5');
    expect(find(element, '#sheet-title').textContent).to.contain('Old wheel');
    expect(find(element, 'dialog [role=alert]').textContent).to.contain('Offset (ET) is missing');
    find<HTMLDialogElement>(element, 'dialog').close();
  });

  it('refuses a rim that the tyre is not made for, says which way, and keeps the last answer apart', async () => {
    const element = await show(
      '<bumpline-clearance wheel-before="205/55R16, 6.5, 45" wheel-after="225/45R17, 10, 35"></bumpline-clearance>',
    );
    expect(element.problems.map(({ path, code }) => [path, code])).to.deep.equal([['after.sectionWidth', 'missing']]);
    expect(find(element, '.problems').textContent).to.match(/too wide for its tyre, which is made for 7 to 8\.5/);
    element.wheelAfter = '225/45R17, 7.5, 35';
    await element.settled;
    expect(element.problems).to.deep.equal([]);
    expect(element.answer!.wheels.after.sectionWidth).to.be.closeTo(224.7, 0.005);
    element.wheelAfter = '225/45R17, 7.5';
    await element.settled;
    expect(find(element, '.problems').textContent).to.contain('225/45R17, 7.5');
  });

  it('shows the section of the place that is pressed, with its gap', async () => {
    const element = await show('<bumpline-clearance lock="0"></bumpline-clearance>');
    await fromTheSide(element);
    const chips = [...root(element).querySelectorAll<HTMLButtonElement>('.side-view button')];
    expect(chips).to.have.length(5);
    const chip = chips.find((one) => one.getAttribute('aria-label')!.includes('spring perch'))!;
    chip.click();
    await rendered(element);
    await press(element, /^From the front$/);
    const title = find(element, '.section-view svg').getAttribute('aria-label')!;
    expect(title).to.contain('the spring perch at 12 o’clock');
    const perch = element.answer!.places[4]!.worst.gap;
    expect(title.replace(/\u202f/g, ' ')).to.contain(`gap ${Math.round(perch * 10) / 10} mm`);
  });

  it('says what would just clear, and it does: each taken at its word gives another verdict', async () => {
    const element = await show('<bumpline-clearance lock="0" drop="25"></bumpline-clearance>');
    element.fit = {
      places: [{ name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 12, distance: 352, out: 12 } }],
    };
    await element.settled;
    expect(element.answer!.verdict).to.not.equal('clears');
    const rows = () => [...root(element).querySelectorAll('.changes dd')].map((row) => row.textContent!);
    const inward = Number(/^wheels ([\d.]+)\smm further in/.exec(rows()[0]!)![1]);
    const size = rows()
      .map((row) => /^(\d{3}\/\d\dR\d\d) clears by the numbers/.exec(row)?.[1])
      .find((found) => found !== undefined);
    const plane = element.answer!.wheels.plane;
    await type(find(element, '.sentence input'), String(plane - inward));
    await rendered(element);
    expect(element.answer!.verdict).to.equal('clears');
    await type(find(element, '.sentence input'), String(plane - inward + 0.2));
    await rendered(element);
    expect(element.answer!.verdict).to.not.equal('clears');
    await type(find(element, '.sentence input'), String(plane));
    element.wheelAfter = `${size}, 7.5, 40`;
    await element.settled;
    expect(size).to.be.a('string');
  });

  it('reads places, limits and drop from a JSON script, names what is wrong in it, and says whose it is', async () => {
    const json = (at: object) =>
      `<bumpline-clearance wheel-before="205/55R16, 6.5, 45"><script type="application/json">${JSON.stringify({
        drop: 20,
        fit: { places: [{ name: 'arch lip', fixedTo: 'body', is: 'bodywork', at }] },
        limits: { stopGap: 30, stopLength: 50 },
      })}</script></bumpline-clearance>`;
    const element = await show(json({ clock: 12, distance: 360, out: 20 }));
    expect(element.answer!.drop).to.equal(20);
    expect(element.answer!.places).to.have.length(1);
    expect(find(element, '.owner').textContent).to.equal(
      'old wheel, places, bump travel, drop from this page; motion from an invented example',
    );
    expect(sentenceOf(element)).to.contain('How the wheel moves is still the example’s.');
    const bad = await show(json({ clock: 14, distance: 'far', out: 20 }));
    expect(bad.problems.map(({ path }) => path)).to.deep.equal(['places.0.at.clock', 'places.0.at.distance']);
  });

  it('on a right wheel the front is on the other side of the clock', async () => {
    const places = [
      { name: 'arch lip', fixedTo: 'body' as const, is: 'bodywork' as const, at: { clock: 1, distance: 372, out: 20 } },
    ];
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    element.fit = { places };
    await element.settled;
    expect(find(element, '.view-name').textContent).to.contain('1 o’clock rearward');
    await fromTheSide(element);
    expect(find(element, '.side-view').textContent).to.contain('← front');
  });

  it('shares one car with lowering: the stop’s gap given there ends the tyre’s way here', async () => {
    const clearance = await show(
      '<bumpline-car><bumpline-lowering></bumpline-lowering><bumpline-clearance></bumpline-clearance></bumpline-car>',
    );
    const lowering = document.querySelector('bumpline-lowering') as BumplineLowering;
    await lowering.settled;
    find<HTMLDetailsElement>(lowering, '.travel').open = true;
    await wait(0);
    await lowering.settled;
    button(lowering, /^Gap to the bump stop/).click();
    await wait(0);
    await lowering.settled;
    await type(root(lowering).querySelector<HTMLInputElement>('dialog .fields input')!, '12');
    await lowering.settled;
    await clearance.settled;
    expect(clearance.answer!.budget.bump.touch!.left).to.be.closeTo(lowering.answer!.budget!.bump.touch!.left, 1e-9);
    expect(lowering.answer!.bumpLeft).to.be.closeTo(lowering.answer!.budget!.bump.touch!.left, 1e-9);
  });

  it('asks who measures in the driveway for caster and, of a wheel that steers, for the plumb line under the ball joint', async () => {
    const element = await show('<bumpline-clearance></bumpline-clearance>');
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await rendered(element);
    const open = async (name: string) => {
      [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')]
        .find((row) => row.querySelector('.name')?.textContent === name)!
        .click();
      await rendered(element);
    };
    await open('Static camber');
    await fill(element, '-0.8');
    expect(find(element, '#sheet-title').textContent).to.contain('Caster');
    await fill(element, '11');
    expect(find(element, '#sheet-title').textContent).to.contain('Ball joint to the tyre’s middle');
    await fill(element, '44');
    expect(find(element, '.limits').textContent).to.contain('bump steer').and.not.to.contain('caster');
    // A wheel that does not steer needs no plumb line.
    await open('Full lock');
    await fill(element, '0');
    await open('Caster');
    expect(button(element, /^Next$/)).to.equal(undefined);
  });
});
