import { expect } from 'chai';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { fitSetup } from '../../../core/document/setup-in-use.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import {
  type IndependentCorner,
  independentCamberChange,
  independentStrutSweep,
} from '../../reference/independent-strut.js';
import { find, referenceCorner, root, sentenceOf, show, wait } from './set-up.js';

const JOINT: PartData = { part: 'ballJointExtended', mm: 22, correctTieRod: true };
const { camber, ...measures } = EXAMPLE_DRIVEWAY;
const byTape = givenByUser(EMPTY_CAR, (given) => ({ ...given, measures, camber: camber!.value }));
const byPoints = {
  ...givenByUser(EMPTY_CAR, () => takeCorner(referenceCorner).given),
  by: 'points',
  drop: 40,
} as CarDocument;
const withJoint = (car: CarDocument, part: PartData = JOINT) => addParts(car, 'Lower joint', [part]);
const second = referenceCorner as unknown as IndependentCorner;

async function shown(car: CarDocument, markup = '<bumpline-lowering></bumpline-lowering>'): Promise<BumplineLowering> {
  const element = await show(markup);
  element.car = new CarModel(car);
  await wait(0);
  await element.settled;
  return element;
}
async function choose(element: BumplineLowering, value: string): Promise<void> {
  const select = find<HTMLSelectElement>(element, '.fitted-choice select');
  select.value = value;
  select.dispatchEvent(new Event('change'));
  await wait(0);
  await element.settled;
}
const plain = (text: string) => text.replace(/[\s\u202f]+/g, ' ').trim();

describe('lowering with parts on the car', () => {
  it('answers what a second solver finds with the part built in, says that it is on, and without it as before', async () => {
    const element = await shown(withJoint(byPoints));
    expect(element.answer!.change.value).to.be.closeTo(independentCamberChange(second, 40), 1e-5);
    const before = sentenceOf(element);
    expect(before).to.match(/^Lowering 40/);
    await choose(element, '0');
    const [from, to] = independentStrutSweep(withLoweredJoint(second, { mm: 22, isTieRodCorrected: true }), [0, 40]);
    expect(element.answer!.change.value).to.be.closeTo(to!.camber - from!.camber, 1e-5);
    expect(sentenceOf(element)).to.match(/^With lower joint on: lowering 40/);
    await choose(element, '');
    expect(sentenceOf(element)).to.equal(before);
  });

  it('has no such choice where there are no parts, and none of readings or of a curve', async () => {
    const curve = { kind: 'coefficients', coefficients: [0, -0.02], domain: [-80, 120] } as const;
    for (const car of [byTape, { ...withJoint(EMPTY_CAR), curve } as unknown as CarDocument]) {
      expect(root(await shown(car)).querySelector('.fitted-choice')).to.equal(null);
    }
    expect(root(await shown(withJoint(byTape))).querySelector('.fitted-choice')).not.to.equal(null);
  });

  it('from the driveway has its ±, is one step of undo, and goes through a link', async () => {
    const element = await shown(withJoint(byTape));
    await choose(element, '0');
    const { change } = element.answer!;
    expect(change.plusMinus).to.be.greaterThan(0.03);
    const read = carFromLink(carToLink(element.car!.car));
    if (!read.ok) throw new Error('The link was refused.');
    const other = await shown(read.car);
    expect(other.answer!.change).to.deep.equal(change);
    expect(sentenceOf(other)).to.match(/^With lower joint on: lowering/);
    other.car!.update('other', (car) => fitSetup(car, undefined));
    other.car!.undo();
    await wait(0);
    await other.settled;
    expect(find<HTMLSelectElement>(other, '.fitted-choice select').value).to.equal('0');
  });

  it('is about the set it is named for, though that holds no readings', async () => {
    const element = await shown(withJoint(byTape), '<bumpline-lowering setup="Lower joint"></bumpline-lowering>');
    expect(sentenceOf(element)).to.match(/^With lower joint on: lowering/);
    expect(element.state).to.equal('ready');
  });

  it('tells a part that does not go on by its name, and answers again without it', async () => {
    const bad = withJoint(byPoints, { part: 'tieRodLonger', mm: -149 });
    const element = await shown(bad);
    await choose(element, '0');
    expect(element.state).to.equal('stale');
    expect(plain(find(element, '.problems').textContent!)).to.match(
      /^Lower joint: With this length the tie rod no longer reaches\. Choose a smaller amount/,
    );
    await choose(element, '');
    expect(element.state).to.equal('ready');
  });
});
