import { expect } from 'chai';
import type { BumplineCompare } from '../../../components/bumpline-compare/bumpline-compare.js';
import { CarModel } from '../../../components/car/car-model.js';
import { lowering } from '../../../core/answers/from-source.js';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import type { Setup } from '../../../core/document/setup.js';
import { addSetup } from '../../../core/document/setup-edits.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { type IndependentCorner, independentCamberChange } from '../../reference/independent-strut.js';
import { find, REFERENCE_CHANGE_40, referenceCorner, root, wait } from '../bumpline-lowering/set-up.js';
import { changeOf, SETS, sentenceOf, show } from './set-up.js';

const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
const byPoints = (car: CarDocument) =>
  ({ ...givenByUser(car, () => takeCorner(referenceCorner).given), by: 'points' }) as CarDocument;
const byTape = (car: CarDocument) => givenByUser(car, (given) => ({ ...given, measures }));
/** On an exact parabola: see set-up.ts. */
const withSet = (car: CarDocument, set: number): CarDocument => {
  const { name, a, c } = SETS[set]!;
  const readings = Array.from({ length: 13 }, (_, i) => -30 + 10 * i).map((travel) => ({
    travel,
    value: a * travel + c * travel * travel,
  }));
  return addSetup(car, { name, cornerName: 'Front left', quantity: 'camber', readings } as Setup);
};

async function compared(car: CarDocument, markup = '<bumpline-compare></bumpline-compare>'): Promise<BumplineCompare> {
  const element = await show(markup);
  element.car = new CarModel(car);
  await rendered(element);
  return element;
}
async function rendered(element: BumplineCompare): Promise<void> {
  await wait(0);
  await element.settled;
}
const rows = (element: Element) =>
  [...root(element).querySelectorAll('.compare tbody th')].map(({ textContent }) => textContent!.trim());
const text = (element: Element, selector: string) =>
  find(element, selector)
    .textContent!.replace(/[\s\u202f]+/g, ' ')
    .trim();

describe('a car’s own curve in the comparison', () => {
  /* test/reference/derived_strut_3d.json, and test/reference/independent-strut.ts, which shares nothing with the core. */
  it('of hard points is a row with what an independent solver finds, at every height', async () => {
    const element = await compared(withSet(byPoints(EMPTY_CAR), 0));
    expect(rows(element)).to.deep.equal(['Your hard points', SETS[0].name]);
    expect(find(element, '.owner').textContent).to.equal('Your hard points, and 1 set of parts, yours');
    expect(element.state).to.equal('ready');
    const [own, set] = element.answer!.cells;
    expect(own![0]!.change!.value).to.be.closeTo(REFERENCE_CHANGE_40, 1e-5);
    const at = (drop: number) => independentCamberChange(referenceCorner as unknown as IndependentCorner, drop);
    expect(own![1]!.change!.value).to.be.closeTo(at(65) - at(25), 1e-5);
    expect(set![1]!.change!.value).to.be.closeTo(changeOf(0, 25, 40), 1e-4);
    expect(sentenceOf(element)).to.match(
      /^Over 40 mm of bump standard joints with 25.mm of drop add .* your hard points at stock height 0\.37°/,
    );
    expect(element.answer!.breakEvens).to.have.length(1);
  });

  it('of measurements alone compares heights, with the ± that lowering gives them', async () => {
    const element = await compared(byTape(EMPTY_CAR));
    expect(rows(element)).to.deep.equal(['Your measurements']);
    expect(element.state).to.equal('incomplete');
    expect(find(element, '.owner').textContent).to.equal('Your measurements');
    const expected = lowering({ source: { kind: 'driveway', driveway: measures }, drop: 40 }).change;
    const { change } = element.answer!.cells[0]![0]!;
    expect(change!.value).to.be.closeTo(expected.value, 1e-12);
    expect(change!.plusMinus).to.be.closeTo(expected.plusMinus!, 1e-12);
    expect(text(element, '.body')).to.contain('To compare parts, add parts, or readings with other parts fitted');
    // Nobody gave camber, so only its changes are told.
    expect(text(element, '.each dl')).not.to.match(/; /);
    expect(text(element, '.shares')).to.contain('the method');
  });

  it('measured after it was lowered is counted from stock height', async () => {
    const element = await compared({ ...byTape(EMPTY_CAR), measuredAt: 20 });
    const at = (drop: number) =>
      lowering({ source: { kind: 'driveway', driveway: measures }, drop, measuredAt: 20 }).change.value;
    expect(element.answer!.cells[0]![1]!.change!.value).to.be.closeTo(at(65) - at(25), 1e-9);
  });

  it('of a page is the page’s, and stands behind its sets', async () => {
    const curve = { kind: 'coefficients', coefficients: [-0.5, -0.03, 0.0001], domain: [-80, 120] } as const;
    const car = { ...EMPTY_CAR, curve } as unknown as CarDocument;
    const alone = await compared(car);
    expect(rows(alone)).to.deep.equal(['This page’s curve']);
    // −0.03 · 40 + 0.0001 · (2 · 25 · 40 + 40²)
    expect(alone.answer!.cells[0]![1]!.change!.value).to.be.closeTo(-0.84, 1e-12);
    expect(sentenceOf(alone)).to.contain('this page’s curve');
    const sets = { ...withSet(withSet(EMPTY_CAR, 0), 1), curve, provenance: { setups: { by: 'page' } } } as never;
    expect(rows(await compared(sets))).to.deep.equal([...SETS.map(({ name }) => name), 'This page’s curve']);
  });

  it('stands behind two sets of the user’s own, which are compared with one another as before', async () => {
    const sets = withSet(withSet(EMPTY_CAR, 0), 1);
    const before = sentenceOf(await compared(sets));
    const element = await compared(byTape(sets));
    expect(rows(element)).to.deep.equal([...SETS.map(({ name }) => name), 'Your measurements']);
    expect(sentenceOf(element)).to.equal(before);
    expect(find(element, '.owner').textContent).to.equal('Your measurements, and 2 sets of parts, yours');
  });

  it('says how much of it is the user’s, and what stands for the rest', async () => {
    const { wheelCentre, 'lowerArm.ball': ball } = takeCorner(referenceCorner).given.points;
    const points = givenByUser(EMPTY_CAR, () => ({ points: { wheelCentre: wheelCentre!, 'lowerArm.ball': ball! } }));
    const element = await compared({ ...points, by: 'points' });
    expect(rows(element)[0]).to.match(/^Your hard points\s*2 of 8; the rest are example values$/);
    const tape = await compared(
      givenByUser(EMPTY_CAR, (given) => ({ ...given, measures: { armLength: { value: 350, plusMinus: 3 } } })),
    );
    expect(rows(tape)[0]).to.match(/^Your measurements\s*1 of 6; the rest is assumed$/);
    expect(find(tape, '.owner').textContent).to.equal('Your measurements (1 of 6)');
    expect(tape.answer!.cells[0]![0]!.change!.plusMinus).to.be.greaterThan(0.05);
  });

  it('that cannot be solved is left out beside sets, and what is wrong with it is told; mended, it is there', async () => {
    const sets = withSet(EMPTY_CAR, 0);
    const bad = givenByUser(sets, (given) => ({
      ...given,
      measures: { ...measures, armLength: { value: 9000, plusMinus: 3 } },
    }));
    const element = await compared(bad);
    expect(rows(element)).to.deep.equal([SETS[0].name]);
    expect(find(element, '.owner').textContent).to.equal('1 set of parts, yours');
    expect(text(element, '.left-out')).to.match(/are left out.*lower arm length is 9000.*Enter 700 or less/);
    element.car!.update('arm', byTape);
    await rendered(element);
    expect(rows(element)).to.deep.equal(['Your measurements', SETS[0].name]);
    expect(root(element).querySelector('.left-out')).to.equal(null);
    const alone = await compared(
      givenByUser(EMPTY_CAR, (given) => ({ ...given, measures: { armLength: { value: 9000, plusMinus: 3 } } })),
    );
    expect(alone.state).to.equal('problem');
    expect(text(alone, '.problems')).to.match(/lower arm length is 9000/i);
  });

  it('follows what a user changes of the car, in the same worker', async () => {
    const element = await compared(byPoints(EMPTY_CAR));
    const before = element.answer!.cells[0]![0]!.change!.value;
    const raised = { ...referenceCorner, lowerArm: { ...referenceCorner.lowerArm, ball: [-5, 700, 170] } };
    element.car!.update('ball', (car) => givenByUser(car, () => takeCorner(raised).given));
    await rendered(element);
    const { value } = element.answer!.cells[0]![0]!.change!;
    expect(value).to.be.closeTo(independentCamberChange(raised as unknown as IndependentCorner, 40), 1e-5);
    element.car!.undo();
    await rendered(element);
    expect(element.answer!.cells[0]![0]!.change!.value).to.equal(before);
  });
});
