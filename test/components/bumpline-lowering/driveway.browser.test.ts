import { expect } from 'chai';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { planeStrutCamberChange } from '../../reference/independent-plane-strut.js';
import { find, root, sentenceOf, show, type, wait } from './set-up.js';

/** Invented: another car than the example, as a tape and a gauge would read it. */
const car = {
  armLength: 352,
  pivotHeight: 201,
  ballHeight: 181,
  wheelCentreHeight: 315,
  damperLean: 9.5,
  topHeight: 858,
};
/** What nobody can see, as core assumes it: core/driveway/driveway.ts. */
const hidden = { ballOffset: 20, hubOffset: 45 };
const DROP_MM = 30;

const chips = (element: Element) => [...root(element).querySelectorAll<HTMLButtonElement>('.drawing button')];
const labelOf = (element: Element, name: string) =>
  chips(element)
    .map((button) => button.getAttribute('aria-label')!)
    .find((label) => label.startsWith(name));
const fields = (element: Element) => [...root(element).querySelectorAll<HTMLInputElement>('dialog .fields input')];
const rendered = async (element: BumplineLowering) => {
  await wait(0);
  await element.settled;
};
const press = async (element: BumplineLowering, label: string) => {
  [...root(element).querySelectorAll<HTMLButtonElement>('dialog button')]
    .find((button) => button.textContent?.trim() === label)!
    .click();
  await rendered(element);
};
const open = async (element: BumplineLowering, name: string) => {
  chips(element)
    .find((button) => button.getAttribute('aria-label')!.startsWith(name))!
    .click();
  await rendered(element);
};
const close = async (element: BumplineLowering) => {
  find<HTMLDialogElement>(element, 'dialog').close();
  await rendered(element);
};

async function giveAll(element: BumplineLowering): Promise<void> {
  find<HTMLButtonElement>(element, '.own').click();
  await rendered(element);
  await press(element, 'Next');
  for (const value of Object.values(car)) {
    await type(fields(element)[0]!, String(value));
    await press(element, 'Next');
  }
  await close(element);
}

const rowOf = (element: Element, title: string) =>
  [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')].find(
    (row) => row.querySelector('.name')?.textContent === title,
  )!;
const openRow = async (element: BumplineLowering, title: string) => {
  find<HTMLDetailsElement>(element, '.inputs').open = true;
  await rendered(element);
  rowOf(element, title).click();
  await rendered(element);
};

/** Neither caster nor bump steer: then the strut is plane, and its camber a calculation in front view. */
async function givePlane(element: BumplineLowering): Promise<void> {
  for (const title of ['Caster', 'Bump steer']) {
    await openRow(element, title);
    await type(fields(element)[0]!, '0');
    await close(element);
  }
}

describe('<bumpline-lowering> in a driveway', () => {
  it('opens as a drawing whose six dimensions are buttons, all the example’s', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    expect(chips(element).map((button) => button.getAttribute('aria-label'))).to.deep.equal([
      'Lower arm length, example value, 338',
      'Height of the arm’s pivot, example value, 193',
      'Height of the ball joint, example value, 176',
      'Height of the wheel centre, example value, 302',
      'Lean of the damper, example value, 8.0°',
      'Height of the top mount, example value, 822',
    ]);
    expect(element.answer?.driveway?.answersToe).to.equal(false);
  });

  it('leads through six measurements to the answer of a calculation of its own', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    expect(find(element, '.owner').textContent).to.equal('6 of 6 are yours');
    expect(element.state).to.equal('ready');
    await givePlane(element);
    expect(find(element, '.owner').textContent).to.equal('6 of 6 are yours');
    const expected = planeStrutCamberChange({ ...car, ...hidden }, DROP_MM);
    expect(element.answer!.change.value).to.be.closeTo(expected, 1e-6);
    expect(sentenceOf(element)).to.contain(`adds ${Math.abs(expected).toFixed(2)}° ±`);
    expect(labelOf(element, 'Lower arm length')).to.equal('Lower arm length, 352');
  });

  it('assumes widely what is missing, and names what narrows the ± most', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await open(element, 'Lower arm length');
    await type(fields(element)[0]!, '352');
    await close(element);
    expect(find(element, '.owner').textContent).to.equal('1 of 6 are yours');
    expect(element.state).to.equal('incomplete');
    const wide = element.answer!.change.plusMinus!;
    // What is assumed is told where it would be given, with its ± and its reason.
    await open(element, 'Height of the top mount');
    expect(find(element, 'dialog .note').textContent!.replace(/\s+/g, ' ')).to.match(/assumed: 840 ± 80 mm \(struts/);
    await close(element);
    const wanted = chips(element).filter((b) => b.getAttribute('aria-label')!.includes('measure it next'));
    expect(wanted).to.have.length(1);
    expect(wanted[0]!.getAttribute('aria-label')).to.contain(
      { pivotHeight: 'Height of the arm’s pivot', ballHeight: 'Height of the ball joint' }[
        element.answer!.contributions[0]!.id as 'pivotHeight'
      ],
    );
    const whole = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(whole);
    expect(whole.answer!.change.plusMinus!).to.be.below(wide / 3);
  });

  it('takes how sure one is before the value as well as after it', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    const tape = element.answer!.change.plusMinus!;
    await open(element, 'Lean of the damper');
    find<HTMLInputElement>(element, 'dialog input[value=guess]').click();
    await close(element);
    expect(element.answer!.change.plusMinus!).to.be.above(tape);
    const fresh = await show('<bumpline-lowering></bumpline-lowering>');
    await open(fresh, 'Lean of the damper');
    find<HTMLInputElement>(fresh, 'dialog input[value=guess]').click();
    await fresh.settled;
    expect(fresh.state).to.equal('example');
    await type(fields(fresh)[0]!, '9');
    await close(fresh);
    expect(fresh.answer!.driveway!.taken.damperLean).to.include({ value: 9, plusMinus: 2 });
  });

  it('takes kingpin inclination in its own field, and says what that costs', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    const byLean = element.answer!.change.plusMinus!;
    await open(element, 'Lean of the damper');
    await press(element, 'Leave it out');
    await press(element, 'I only have kingpin inclination, from an alignment sheet');
    expect(find(element, '#sheet-title').textContent).to.contain('Kingpin inclination');
    await type(fields(element)[0]!, '12.5');
    await close(element);
    expect(element.answer!.driveway!.kingpin!.value).to.equal(12.5);
    expect(element.answer!.change.plusMinus!).to.be.above(1.2 * byLean);
    expect(element.answer!.contributions.map(({ id }) => id)).to.include('ballOffset');
  });

  it('asks for caster after camber, says what is assumed without it, and is surer with it and bump steer', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    await openRow(element, 'Static camber');
    await press(element, 'Next');
    expect(find(element, '#sheet-title').textContent).to.contain('Caster');
    expect(find(element, 'dialog svg.where').getAttribute('aria-label')).to.contain('from the side');
    expect(find(element, 'dialog .note').textContent!.replace(/\s+/g, ' ')).to.match(/assumed: 6.0 ± 3.4° \(most road/);
    const assumed = element.answer!.change;
    await type(fields(element)[0]!, '11.5');
    expect(element.answer!.driveway!.taken.caster).to.include({ value: 11.5, plusMinus: 0.5, measured: true });
    // More caster turns more of what the wheel may steer into camber.
    expect(element.answer!.change.plusMinus!).to.be.above(1.2 * assumed.plusMinus!);
    await close(element);
    await openRow(element, 'Bump steer');
    expect(find(element, 'dialog svg.where').getAttribute('aria-label')).to.contain('from above');
    expect([...root(element).querySelectorAll('dialog .sure .amount')].map((one) => one.textContent)).to.deep.equal([
      '±\u202f0.05°',
      '±\u202f0.10°',
      '±\u202f0.30°',
    ]);
    await type(fields(element)[0]!, '0.2');
    expect(element.answer!.driveway!.taken.bumpSteer).to.include({ value: 0.2, plusMinus: 0.1 });
    expect(element.answer!.change.plusMinus!).to.be.below(assumed.plusMinus!);
  });

  it('names the cars that its ± does not cover, until caster and bump steer are given', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    expect(find(element, '.limits').checkVisibility()).to.equal(true);
    find<HTMLDetailsElement>(element, '.why').open = true;
    await rendered(element);
    const texts = () => ['.limits', '.why'].map((place) => root(element).querySelector(place)?.textContent ?? '');
    for (const text of texts()) {
      expect(text).to.contain(
        'more than 9° of caster or more than 0.012° of bump steer for each mm unless you enter them',
      );
    }
    await givePlane(element);
    find<HTMLDetailsElement>(element, '.why').open = true;
    await rendered(element);
    for (const text of texts()) expect(text).not.to.contain('does not cover');
  });

  it('does not speak of them to who looks at the example', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    expect(root(element).querySelector('.limits')).to.equal(null);
  });

  it('shows only changes of camber until a static camber is given', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    const title = () => find(element, '.drawing svg').getAttribute('aria-label')!;
    expect(title()).to.match(/camber −0\.\d\d°$/);
    const change = element.answer!.change.value;
    expect(element.answer!.camberAfter).to.be.closeTo(change, 1e-9);
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await rendered(element);
    // Nothing stands in for it.
    expect(
      [...root(element).querySelectorAll('.input-row')].find((r) => r.textContent?.includes('Static camber'))!
        .textContent,
    ).to.contain('enter');
    [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')]
      .find((row) => row.textContent?.includes('Static camber'))!
      .click();
    await rendered(element);
    await type(fields(element)[0]!, '1');
    // What stands there now could be typed in two meanings; turned, it keeps its own.
    expect(fields(element)[0]!.value).to.equal('1.00');
    find<HTMLButtonElement>(element, 'dialog .sign').click();
    await element.settled;
    expect(fields(element)[0]!.value).to.equal('−1.00');
    expect(element.problems).to.have.length(0);
    await close(element);
    expect(element.answer!.camberAfter).to.be.closeTo(change - 1, 1e-4);
    expect(sentenceOf(element)).to.contain(`to −${(1 - change).toFixed(2)}°`);
    // How the sheet was read stands beside its figure.
    const row = () =>
      [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')].find((button) =>
        button.textContent?.includes('Static camber'),
      )!;
    row().click();
    await rendered(element);
    find<HTMLInputElement>(element, 'dialog input[value=driver]').click();
    await close(element);
    expect(row().textContent).to.contain('driver in');
  });

  it('counts from stock height on a car that was measured lowered already', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    await givePlane(element);
    const fromHere = element.answer!.rateBefore.value;
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await rendered(element);
    find<HTMLButtonElement>(element, '.input-row').click();
    await rendered(element);
    find<HTMLInputElement>(element, 'dialog input[value=lowered]').click();
    await close(element);
    // Where it stands is now the far end of the drop.
    expect(element.answer!.rateAfter.value).to.be.closeTo(fromHere, 1e-9);
    const lowered = planeStrutCamberChange({ ...car, ...hidden }, -DROP_MM);
    expect(element.answer!.change.value).to.be.closeTo(-lowered, 1e-6);
    // Another drop is another place on that curve; the car was still measured where it was.
    await type(find(element, '.drop'), '20');
    expect(element.answer!.change.value).to.be.above(-lowered);
    expect(element.answer!.camberAfter).not.to.be.closeTo(0, 1e-3);
  });

  it('keeps the stroke with shortened dampers, and warns of the other limits', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    find<HTMLDetailsElement>(element, '.inputs').open = true;
    await rendered(element);
    [...root(element).querySelectorAll<HTMLButtonElement>('.input-row')]
      .find((row) => row.textContent?.includes('Bump travel left'))!
      .click();
    await rendered(element);
    await type(fields(element)[0]!, '62');
    expect(sentenceOf(element)).to.match(/leaves 32.mm of bump/);
    find<HTMLInputElement>(element, 'dialog input[value=dampers]').click();
    await close(element);
    expect(sentenceOf(element)).to.match(/keeps 62.mm of bump stroke/);
    expect(find(element, 'aside.cautions').textContent).to.contain('every other limit comes nearer');
  });

  it('names the measurement that cannot be, at its dimension, and keeps the last good answer', async () => {
    const element = await show('<bumpline-lowering></bumpline-lowering>');
    await giveAll(element);
    const { value } = element.answer!.change;
    await open(element, 'Height of the ball joint');
    await type(fields(element)[0]!, '812');
    await close(element);
    expect(element.state).to.equal('stale');
    expect(element.answer!.change.value).to.equal(value);
    expect(find(element, '.problems').textContent).to.match(/^\s*Height of the ball joint is 812.mm.* 500.mm or less/);
    expect(labelOf(element, 'Height of the ball joint')).to.contain('needs correcting');
  });
});
