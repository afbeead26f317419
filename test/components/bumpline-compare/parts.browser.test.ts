import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineCompare } from '../../../components/bumpline-compare/bumpline-compare.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR, givenByUser, withDrop } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import type { Setup } from '../../../core/document/setup.js';
import { addParts, addSetup } from '../../../core/document/setup-edits.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { drivewayCorner } from '../../../core/driveway/driveway-corner.js';
import { readDriveway } from '../../../core/driveway/read-driveway.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { independentJointBreakEven, withLoweredJoint } from '../../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep } from '../../reference/independent-strut.js';
import { find, referenceCorner, root, type, wait } from '../bumpline-lowering/set-up.js';
import { changeOf, SETS, sentenceOf, show } from './set-up.js';

const MEASURES = EXAMPLE_DRIVEWAY;
const byTape = (car: CarDocument = EMPTY_CAR) => {
  const { camber, ...measures } = MEASURES;
  return givenByUser(car, (given) => ({ ...given, measures, camber: camber!.value }));
};
const byPoints = (car: CarDocument = EMPTY_CAR) =>
  ({ ...givenByUser(car, () => takeCorner(referenceCorner).given), by: 'points' }) as CarDocument;
/** Invented: another car than the example, as a tape and a gauge would read it. */
const TAPE = {
  armLength: 352,
  pivotHeight: 201,
  ballHeight: 181,
  wheelCentreHeight: 315,
  damperLean: 9.5,
  topHeight: 858,
};
const JOINT: PartData = { part: 'ballJointExtended', mm: 22 };

async function rendered(element: BumplineCompare): Promise<void> {
  for (let i = 0; i < 3; i++) {
    await wait(0);
    await element.settled;
  }
}
async function compared(car: CarDocument): Promise<BumplineCompare> {
  const element = await show('<bumpline-compare></bumpline-compare>');
  element.car = new CarModel(car);
  await rendered(element);
  return element;
}
const rows = (element: Element) =>
  [...root(element).querySelectorAll('.compare tbody th')].map((heading) =>
    [...heading.childNodes]
      .filter((node) => !(node instanceof Comment))
      .map(({ textContent }) => textContent!.replace(/[\s\u202f]+/g, ' ').trim())
      .filter(Boolean)
      .join(': '),
  );
const text = (element: Element, selector: string) =>
  find(element, selector)
    .textContent!.replace(/[\s\u202f]+/g, ' ')
    .trim();
/** Taps the middle of what is there, as a finger would: it must be in sight and large enough. */
async function tap(element: BumplineCompare, target: HTMLElement): Promise<void> {
  target.scrollIntoView({ block: 'center' });
  await wait(30);
  const { left, top, width, height } = target.getBoundingClientRect();
  expect(Math.min(width, height), target.textContent!).to.be.at.least(43.5);
  const [x, y] = [left + width / 2, top + height / 2];
  const hit = root(element).elementFromPoint(x, y) as HTMLElement;
  expect(target.contains(hit), `${target.textContent} lies under ${hit?.outerHTML.slice(0, 80)}`).to.equal(true);
  hit.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, composed: true, pointerType: 'touch' }));
  hit.click();
  await rendered(element);
}
const button = (element: Element, words: string) =>
  [...root(element).querySelectorAll<HTMLButtonElement>('button')].find(({ textContent }) =>
    textContent!.trim().startsWith(words),
  )!;
const field = (element: Element, path: string) => find<HTMLInputElement>(element, `[id="${path}"]`);
async function fill(element: BumplineCompare, path: string, value: string): Promise<void> {
  type(field(element, path), value);
  field(element, path).dispatchEvent(new Event('change'));
  await rendered(element);
}
async function add(element: BumplineCompare, title: string): Promise<void> {
  await tap(element, button(element, 'Add parts'));
  await tap(element, button(element, title));
}
const joined = (of: IndependentCorner, isTieRodCorrected: boolean) =>
  withLoweredJoint(of, { mm: 22, isTieRodCorrected });
const at = (of: IndependentCorner, travels: readonly number[]) => independentStrutSweep(of, travels as number[]);
/** On the line through the contact point across its way: see test/core/answers/compare-links.test.ts. */
const rollCentre = (of: IndependentCorner, travel: number) => {
  const [below, here, above] = at(of, [travel - 0.01, travel, travel + 0.01]);
  const [across, up] = [above!.contact[1] - below!.contact[1], above!.contact[2] - below!.contact[2]];
  return (here!.contact[1] * across) / up;
};

describe('parts in the comparison', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  it('from six tape measurements, by touch: a lower joint’s camber, roll centre and the word about toe', async () => {
    const element = await show(
      '<bumpline-car><bumpline-lowering></bumpline-lowering><bumpline-compare></bumpline-compare></bumpline-car>',
    );
    const sheet = document.querySelector('main bumpline-lowering') as BumplineLowering;
    await sheet.settled;
    const pressed = async (words: string) => {
      const all = [...root(sheet).querySelectorAll<HTMLButtonElement>('dialog button')];
      all.find(({ textContent }) => textContent!.trim() === words)!.click();
      await wait(0);
      await sheet.settled;
    };
    find<HTMLButtonElement>(sheet, '.own').click();
    await wait(0);
    await pressed('Next');
    for (const value of Object.values(TAPE)) {
      await type(find<HTMLInputElement>(sheet, 'dialog .fields input'), String(value));
      await pressed('Next');
    }
    find<HTMLDialogElement>(sheet, 'dialog').close();
    // The event comes late, and leads back to the sentence: the page moves.
    await wait(50);
    await rendered(element);

    await add(element, 'Lower ball joint, longer');
    expect((root(element).activeElement as HTMLElement).id).to.equal('setups.0.parts.0.mm');
    await fill(element, 'setups.0.parts.0.mm', '22');
    expect(rows(element)).to.deep.equal(['Your measurements', 'Lower joint: lower joint +22 mm, tie rod as it was']);
    await tap(element, find(element, '.check'));
    expect(rows(element)[1]).to.contain('tie rod corrected');
    const table = find(element, '.compare-scroll');
    expect(table.scrollWidth, 'two heights beside the longest name').to.equal(table.clientWidth);
    expect(text(element, '.even .note')).to.match(/^Compared with your measurements at stock height/);

    const measured = Object.fromEntries(Object.entries(TAPE).map(([key, value]) => [key, { value, plusMinus: 3 }]));
    // The corner that six measurements make, by a second solver with a part of its own.
    const corner = drivewayCorner(readDriveway(measured)) as unknown as IndependentCorner;
    const lowered = joined(corner, true);
    const [from, to] = at(lowered, [25, 65]);
    const cell = element.answer!.cells[1]![1]!;
    expect(cell.change!.value).to.be.closeTo(to!.camber - from!.camber, 1e-4);
    expect(cell.rollCentre!.value).to.be.closeTo(rollCentre(lowered, 25), 0.05);
    expect(cell.change!.plusMinus).to.be.greaterThan(0.05);
    const change = Math.abs(to!.camber - from!.camber).toFixed(2);
    expect(sentenceOf(element)).to.match(
      new RegExp(`^Over 40 mm of bump lower joint with 25.mm of drop adds ${change}° ±`),
    );
    expect(text(element, '.costs')).to.match(/Toe: measure it\..*bump steer.*tie-rod end lowered to match/);
    expect(text(element, '.costs'), text(element, '.costs')).to.match(
      new RegExp(
        `Roll centre ${Math.round(rollCentre(lowered, 25))} ± \\d+ mm above the ground, [\\d.]+ ± [\\d.]+ mm lower`,
      ),
    );
    expect(element.answer!.cells[1]![1]).not.to.have.property('toeChange');
    await choose(element, '.cells-show select', 'toeChange');
    expect(text(element, '.compare')).to.contain('measure it');
    expect(text(element, '.compare')).not.to.match(/\d° ?(?:in|out)/);
    await choose(element, '.cells-show select', 'rollCentre');
    expect(text(element, '.compare')).to.match(new RegExp(`${Math.round(rollCentre(lowered, 25))} ± \\d+ mm`));
  });

  it('from hard points says by how much the wheel steers, with the tie rod corrected and without', async () => {
    const element = await compared(addParts(byPoints(), 'Lower joint', [JOINT]));
    const toe = (isCorrected: boolean) => {
      const [from, to] = at(joined(referenceCorner as unknown as IndependentCorner, isCorrected), [25, 65]);
      return to!.toe - from!.toe;
    };
    const [before, after] = at(referenceCorner as unknown as IndependentCorner, [25, 65]);
    /** More than the bare car's over the same bump. */
    const added = (isCorrected: boolean) => toe(isCorrected) - (after!.toe - before!.toe);
    const said = (change: number) => `${Math.abs(change).toFixed(2)}° of toe-${change < 0 ? 'out' : 'in'}`;
    expect(element.answer!.cells[1]![1]!.toeChange!.value).to.be.closeTo(toe(false), 1e-4);
    // Exact points: the ± is the part's own ± 1 mm.
    const costs = () => text(element, '.costs').replace(/ ± [\d.]+°/g, '');
    expect(costs()).to.contain(
      `Adds ${said(added(false))} over that bump to what the car does without it (bump steer), unless the tie-rod end is lowered to match. With it lowered to match, ${said(added(true))}.`,
    );
    await tap(element, find(element, '.check'));
    expect(costs()).to.contain(
      `With the tie-rod end lowered to match, adds ${said(added(true))} over that bump to what the car does without it (bump steer). Left as it was, ${said(added(false))}.`,
    );
    await choose(element, '.cells-show select', 'toeChange');
    expect(text(element, '.compare')).to.match(
      new RegExp(`${Math.abs(toe(true)).toFixed(2)}° ${toe(true) < 0 ? 'out' : 'in'}`),
    );
  });

  it('leads on from a cell that tells toe, with its parts and height in hand, where the page says to which page', async () => {
    const element = await show('<bumpline-compare heights="0, 25" toe-page="../toe/"></bumpline-compare>');
    element.car = new CarModel(addParts(byPoints(), 'Lower joint', [JOINT]));
    await rendered(element);
    const link = root(element).querySelector<HTMLAnchorElement>('.toe-link a')!;
    const [page, hash] = link.getAttribute('href')!.split('#');
    expect(page).to.equal('../toe/');
    const read = carFromLink(hash!);
    if (!read.ok) throw new Error('The link cannot be read.');
    expect(read.car.drop).to.equal(25);
    expect(read.car.setups![read.car.fitted!]!.parts).to.deep.equal([JOINT]);
    expect(read.car.given.points).to.deep.equal(byPoints().given.points);
    for (const address of ['javascript:alert(1)', ' JavaScript:alert(1)', 'data:text/html,no', 'https://[no']) {
      element.setAttribute('toe-page', address);
      await rendered(element);
      expect(root(element).querySelector('.toe-link'), `${address} is no page`).to.equal(null);
    }
    element.removeAttribute('toe-page');
    await rendered(element);
    expect(root(element).querySelector('.toe-link')).to.equal(null);
  });

  it('breaks even where bisection on the second solver does, with what both curves share taken out', async () => {
    const element = await compared(addParts(byPoints(), 'Lower joint', [{ ...JOINT, correctTieRod: true }]));
    const second = independentJointBreakEven(referenceCorner as never, { mm: 22, isTieRodCorrected: true }, 40);
    const { change } = element.answer!.breakEvens[0]!;
    expect(change!.kind).to.equal('at');
    expect((change as { drop: number }).drop).to.be.closeTo(second, 0.01);
    // The same corner lowered by nothing is the same curve: its doubt is nothing but the part's.
    const { interval } = change as { interval: { low: number; high: number } };
    expect(interval.high - interval.low).to.be.lessThan(6);
  });

  it('on nothing of a car stand on the example’s links, and say so', async () => {
    const element = await compared(EMPTY_CAR);
    await add(element, 'Arm, longer');
    await fill(element, 'setups.0.parts.0.mm', '10');
    expect(rows(element)).to.deep.equal(['The example car: invented; not your car', 'Arm: arm +10 mm']);
    expect(element.state).to.equal('example');
    expect(text(element, '.owner')).to.equal('The example car (invented), and 1 set of parts, yours');
  });

  it('are put where the car’s own links are, though nothing but readings was compared until then', async () => {
    const element = await compared(EMPTY_CAR);
    await add(element, 'Knuckle bolts, turned');
    const { strut, wheelCentre } = drivewayCorner(readDriveway(EXAMPLE_DRIVEWAY));
    const share = (wheelCentre[2] + 60 - strut.low[2]) / (strut.top[2] - strut.low[2]);
    const inboard = wheelCentre[1] - strut.low[1] - share * (strut.top[1] - strut.low[1]);
    expect(field(element, 'setups.0.parts.0.otherBolt.1').value).to.equal(String(Math.round(inboard)));
    expect(text(element, '.part')).to.contain('Assumed until you measure it');
  });

  it('stand beside readings, which are read as they are', async () => {
    const { name, a, c } = SETS[0];
    const readings = Array.from({ length: 13 }, (_, i) => -30 + 10 * i).map((travel) => ({
      travel,
      value: a * travel + c * travel * travel,
    }));
    const read = addSetup(byTape(), { name, cornerName: 'Front left', quantity: 'camber', readings } as Setup);
    const element = await compared(addParts(read, 'Lower joint', [JOINT]));
    expect(rows(element).map((row) => row.split(/[: ]/)[0])).to.deep.equal(['Your', 'Standard', 'Lower']);
    expect(element.answer!.cells[1]![1]!.change!.value).to.be.closeTo(changeOf(0, 25, 40), 1e-4);
    expect(element.answer!.cells[2]![1]!.change!.value).not.to.be.closeTo(changeOf(0, 25, 40), 0.02);
  });

  it('that do not go on say which link no longer reaches at that part, and the others are compared', async () => {
    const element = await compared(addParts(byPoints(), 'Lower joint', [JOINT]));
    await add(element, 'Tie rod, longer');
    await fill(element, 'setups.1.parts.0.mm', '-149');
    expect(rows(element)).to.have.length(2);
    expect(text(element, '.left-out')).to.match(
      /Tie rod is left out: With this length the tie rod no longer reaches\. Choose a smaller/,
    );
    const part = root(element).querySelectorAll('.own-set')[1]!;
    expect(part.querySelector('[role=alert]')!.textContent).to.contain('no longer reaches');
    await fill(element, 'setups.1.parts.0.mm', '-4');
    expect(rows(element)).to.have.length(3);
    expect(root(element).querySelector('.left-out')).to.equal(null);
  });

  it('keep what is half typed, and tell an amount that cannot be at its field', async () => {
    const element = await compared(addParts(byTape(), 'Lower joint', [JOINT]));
    element.units = 'in';
    await rendered(element);
    await fill(element, 'setups.0.parts.0.mm', '22');
    expect(field(element, 'setups.0.parts.0.mm').value).to.equal('22');
    expect(field(element, 'setups.0.parts.0.mm').getAttribute('aria-invalid')).to.equal('true');
    expect(text(element, '.part .problem')).to.match(/Ball centre lower by is “22”.*Enter 5\.91.in or less/);
    // The answer before it stands, and says that it is that.
    expect(sentenceOf(element)).to.match(/no answer yet.*Last answer: .*lower joint with/);
    expect(element.state).to.equal('stale');
    await fill(element, 'setups.0.parts.0.mm', '0.5 in');
    expect(element.state).to.equal('ready');
    expect(element.car!.car.setups![0]!.parts).to.deep.equal([{ part: 'ballJointExtended', mm: 12.7 }]);
  });

  it('turn their sign, take a ±, and give one step of undo each', async () => {
    const element = await compared(addParts(byTape(), 'Lower joint', [JOINT]));
    find<HTMLButtonElement>(element, '.part .sign').click();
    await rendered(element);
    expect(element.car!.car.setups![0]!.parts).to.deep.equal([{ part: 'ballJointExtended', mm: -22 }]);
    await fill(element, 'setups.0.parts.0.plusMinus', '0.5');
    expect(element.car!.car.setups![0]!.parts![0]!.plusMinus).to.equal(0.5);
    await fill(element, 'setups.0.parts.0.plusMinus', '');
    expect(element.car!.car.setups![0]!.parts).to.deep.equal([{ part: 'ballJointExtended', mm: -22 }]);
    for (const mm of [-22, -22, 22]) {
      element.car!.undo();
      await rendered(element);
      expect(element.car!.car.setups![0]!.parts![0]).to.include({ mm });
    }
  });

  it('set toe and camber again as asked, and a set without its last part is gone', async () => {
    const element = await compared(addParts(byPoints(), 'Lower joint', [JOINT]));
    await choose(element, '.alignment select', 'camber-and-toe');
    expect(element.car!.car.setups![0]!.alignment).to.equal('camber-and-toe');
    expect(element.answer!.cells[1]![0]!.camber).to.be.closeTo(referenceCorner.camber, 1e-6);
    find<HTMLButtonElement>(element, '.part-head .button').click();
    await rendered(element);
    expect(element.car!.car.setups ?? []).to.have.length(0);
    expect(rows(element)).to.deep.equal(['Your hard points']);
    element.car!.undo();
    await rendered(element);
    expect(rows(element)).to.have.length(2);
  });

  it('are not offered on a curve alone, which has no roll centre either', async () => {
    const curve = { kind: 'coefficients', coefficients: [-0.5, -0.03, 0.0001], domain: [-80, 120] } as const;
    const car = { ...addParts(EMPTY_CAR, 'Lower joint', [JOINT]), curve, compare: { show: 'rollCentre' } };
    const element = await compared(car as unknown as CarDocument);
    expect(rows(element)).to.deep.equal(['This page’s curve']);
    expect(button(element, 'Add parts')).to.equal(undefined);
    expect(text(element, '.compare')).to.contain('needs links');
    expect(text(element, '.own-sets')).to.contain('This car is only a curve');
  });

  it('handed over by a page with a part that nobody knows are left out with the reason, and the others compared', async () => {
    const element = await show('<bumpline-compare></bumpline-compare>');
    const set = (name: string, part: object) =>
      ({ name, cornerName: 'Front left', quantity: 'camber', readings: [], parts: [part] }) as unknown as Setup;
    element.setups = [set('Good joint', JOINT), set('Strange', { part: 'longerJoint', mm: 22 })];
    await rendered(element);
    expect(rows(element)).to.deep.equal([
      'The example car: invented; not your car',
      'Good joint: lower joint +22 mm, tie rod as it was',
    ]);
    expect(text(element, '.left-out')).to.match(/^Strange is left out:.*longerJoint.*is not understood/);
  });

  it('go through a link with what the cells show', async () => {
    const element = await compared(addParts(byTape(), 'Lower joint', [{ ...JOINT, correctTieRod: true }]));
    await choose(element, '.cells-show select', 'rate');
    const link = carToLink(element.car!.car);
    const other = await show('<bumpline-compare></bumpline-compare>');
    const read = carFromLink(link);
    if (!read.ok) throw new Error('The link was refused.');
    other.car = new CarModel(read.car);
    await rendered(other);
    expect(rows(other)[1]).to.contain('lower joint +22 mm, tie rod corrected');
    expect(find<HTMLSelectElement>(other, '.cells-show select').value).to.equal('rate');
  });
});

async function choose(element: BumplineCompare, selector: string, value: string): Promise<void> {
  const select = find<HTMLSelectElement>(element, selector);
  select.value = value;
  select.dispatchEvent(new Event('change'));
  await rendered(element);
}

it('the lower of the two heights is the drop that a user gave elsewhere, until they choose another here', async () => {
  const element = await compared(withDrop(byTape(addParts(EMPTY_CAR, 'Lower joint', [JOINT])), 31));
  expect(text(element, '.compare thead')).to.contain('31 mm lower').and.not.to.contain('25 mm');
  element.car!.update('drop', (car) => withDrop(car, 17));
  await rendered(element);
  expect(text(element, '.compare thead')).to.contain('17 mm lower');
  element.car!.update('heights', (car) => ({ ...car, compare: { heights: [0, 40] } }));
  await rendered(element);
  expect(text(element, '.compare thead')).to.contain('40 mm lower').and.not.to.contain('17 mm');
  // What a page or the example is lowered by is nobody's drop.
  expect(text(await compared(byTape()), '.compare thead')).to.contain('25 mm lower');
});
