import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { loweringRequestOf } from '../../../core/answers/car-request.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { cornering, geometry, lowering, staticCamber, toe } from '../../../core/answers/from-source.js';
import type { GeometryAnswer } from '../../../core/answers/geometry.js';
import { curveOf } from '../../../core/curve/curve.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import type { LearntSource } from '../../../core/curve-sources/source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT } from '../../../core/document/example-fitment.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { learntSourceOf } from '../../../core/document/learnt-in-use.js';
import { EXAMPLE_PARTS } from '../../../core/document/linked-sets.js';
import { byUser } from '../../../core/document/own-car.js';
import { withLinksFrom } from '../../../core/document/predict-in-use.js';
import type { Setup } from '../../../core/document/setup.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { all, clear, find, put, type Sheet, settled, textOf } from '../contract/stage.js';

/* Every answer of a car whose links are taken as its readings correct them is that of the core with those links. */

const [STOCK] = EXAMPLE_SETUPS as readonly [Setup];
const [JOINT] = EXAMPLE_PARTS as readonly [Setup];
const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
const learnt = (car: Partial<CarDocument>): CarDocument =>
  byUser(withLinksFrom({ ...EMPTY_CAR, drop: 25, setups: [STOCK, JOINT], ...car }, 'learnt'));
/** The top mount taped 4 mm off, so that the readings have something to correct. */
const taped = takeCorner({ ...EXAMPLE_CORNER, strut: { ...EXAMPLE_CORNER.strut, top: [-79, 578, 822] } });
const CAR = learnt({ by: 'points', ...taped });
const DRIVEWAY = learnt({ given: { points: {}, measures } });
const SOURCE: LearntSource = learntSourceOf(CAR)!;
const MEASURED = withLinksFrom(CAR, 'measured');

async function about<A>(tag: string, car: CarDocument = CAR): Promise<{ element: Sheet; answer: A }> {
  const [element] = await put(tag, `<${tag}></${tag}>`);
  element!.car = new CarModel(car);
  await settled(element!);
  return { element: element!, answer: element!.answer as A };
}

describe('links as readings correct them', () => {
  afterEach(clear);

  it('are those of lowering', async () => {
    const { element, answer } = await about<{ change: { value: number; plusMinus: number } }>('bumpline-lowering');
    const { change } = lowering(loweringRequestOf(CAR));
    expect(answer.change.value).to.be.closeTo(change.value, 1e-9);
    expect(answer.change.plusMinus).to.be.closeTo(change.plusMinus!, 1e-9);
    const taken = lowering(loweringRequestOf(MEASURED)).change;
    expect(Math.abs(taken.value - change.value)).to.be.greaterThan(0.005);
    expect(change.plusMinus!).to.be.lessThan(taken.plusMinus! / 1.5);
    expect(textOf(find(element, '.owner'))).to.match(/corrected by 52 readings$/);
  });

  it('are those of a car measured in the driveway', async () => {
    const { answer } = await about<{ change: { value: number } }>('bumpline-lowering', DRIVEWAY);
    expect(answer.change.value).to.be.closeTo(lowering(loweringRequestOf(DRIVEWAY)).change.value, 1e-9);
  });

  it('are those of toe', async () => {
    const { answer } = await about<{ change: { value: number; plusMinus: number } }>('bumpline-toe');
    const { change } = toe({ source: SOURCE, drop: 25, over: 40 });
    expect(answer.change.value).to.be.closeTo(change.value, 1e-9);
    expect(answer.change.plusMinus).to.be.closeTo(change.plusMinus!, 1e-9);
  });

  it('are those of the turn', async () => {
    const { answer } = await about<{ outer: { inclination: number } }>('bumpline-cornering');
    const { outer } = cornering({ source: SOURCE, drop: 25, roll: 3 });
    expect(answer.outer.inclination).to.be.closeTo(outer.inclination, 1e-9);
  });

  it('are those of the ways of adding static camber, in the turn too', async () => {
    type Ways = { ways: { way: string; amount: number }[] };
    const { element, answer } = await about<Ways>('bumpline-static-camber');
    const { ways } = staticCamber({ source: SOURCE, drop: 25, by: -1, over: 40, window: [-40, 40] });
    expect(answer.ways.map(({ amount }) => amount)).to.deep.equal(ways.map(({ amount }) => amount));
    const inTurn = all(element, 'td[data-cost="inTurn"] b').map(textOf);
    expect(inTurn).to.have.length(ways.length);
    expect(inTurn.filter((text) => /\d/.test(text)).length).to.be.greaterThan(3);
  });

  it('are those of the workbench', async () => {
    const { answer } = await about<{ bare: { curves: GeometryAnswer } }>('bumpline-geometry');
    const expected = geometry({ source: SOURCE });
    const camber = ({ travel, outputs }: GeometryAnswer, at: number) => outputs.camber![travel.indexOf(at)]!;
    for (const at of [-40, 25, 60]) {
      const shown = answer.bare.curves;
      const [own] = [...shown.travel].filter((travel) => Math.abs(travel - at) < 1e-9);
      expect(camber(shown, own!)).to.be.closeTo(camber(expected, at), 1e-9);
    }
  });

  it('are those of clearance, and steer its wheels', async () => {
    const car = { ...CAR, fit: EXAMPLE_FITMENT as never, stopGap: 32, limits: { stopLength: 50 } };
    const { element } = await about('bumpline-clearance', byUser(car));
    expect(clearanceRequestOf(car).source.kind).to.equal('learnt');
    expect(clearanceRequestOf(car).lock).to.be.a('number');
    expect(element.state).to.be.oneOf(['ready', 'incomplete']);
    expect(element.problems).to.deep.equal([]);
    expect(textOf(find(element, '.owner'))).to.contain('corrected by 52 readings');
  });

  it('are those of compare, where what was predicted and what was measured are told apart', async () => {
    type Compared = { cells: { change?: { value: number } }[][] };
    const { element, answer } = await about<Compared>('bumpline-compare');
    const camber = (source: LearntSource) => curveOf(solveSource(source).camber);
    const change = (source: LearntSource) => camber(source).change(25 + 40, 25);
    const rows = all(element, '.compare tbody tr').map((row) => textOf(row.querySelector('th')));
    expect(rows[0]).to.contain('Your links learnt from readings');
    expect(rows.find((row) => row.startsWith(STOCK.name))).to.match(/measured$/);
    const at = rows.findIndex((row) => row.startsWith(JOINT.name));
    expect(rows[at]).to.match(/predicted$/);
    const lowered = answer.cells[at]!.at(-1)!.change!.value;
    const heights = all(element, '.compare thead .height').map(textOf);
    expect(heights.at(-1)).to.contain('25');
    expect(lowered).to.be.closeTo(change({ ...SOURCE, parts: JOINT.parts! }), 1e-6);
  });

  it('are no more than those that were measured as long as points or readings are missing', async () => {
    const { given, ...rest } = CAR;
    const { 'strut.top': __, ...points } = given.points;
    const car = byUser({ ...rest, given: { ...given, points } });
    const { element } = await about('bumpline-lowering', car);
    expect(textOf(find(element, '.owner'))).not.to.contain('corrected');
  });
});
