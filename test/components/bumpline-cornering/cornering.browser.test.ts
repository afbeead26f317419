import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineCornering } from '../../../components/bumpline-cornering/bumpline-cornering.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { byUser } from '../../../core/document/own-car.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { fitSetup } from '../../../core/document/setup-in-use.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import {
  type IndependentAxle,
  independentAxle,
  independentCamberSet,
  independentCornerAt,
  independentTurn,
} from '../../reference/independent-axle.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { all, clear, find, press, put, settled, textOf, unfold } from '../contract/stage.js';

type Element = BumplineCornering & Parameters<typeof settled>[0];

async function turn(attributes = '', inside = '', width = 360): Promise<Element> {
  await setViewport({ width, height: 900 });
  const [element] = await put('bumpline-cornering', `<bumpline-cornering ${attributes}>${inside}</bumpline-cornering>`);
  element!.parentElement!.style.width = `${width}px`;
  await settled(element!);
  await unfold(element!);
  return element as Element;
}

async function withModel(car: CarDocument): Promise<{ element: Element; model: CarModel }> {
  const element = await turn();
  const model = new CarModel(byUser(car));
  element.car = model;
  await settled(element);
  return { element, model };
}

const withCar = async (car: CarDocument): Promise<Element> => (await withModel(car)).element;

const OWN: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 25 };
const { armLength, camber, ...others } = EXAMPLE_DRIVEWAY;
const MEASURED: CarDocument = {
  ...EMPTY_CAR,
  given: { points: {}, camber: camber!.value, measures: { armLength: armLength!, ...others } },
  drop: 25,
};
const corner: IndependentCorner = EXAMPLE_CORNER;
const joint = withLoweredJoint(corner, { mm: 22, isTieRodCorrected: true });
const said = (element: Element): string => textOf(find(element, '.says'));
/** "+1.84°" of an angle, as it is shown. */
const shown = (degrees: number): string => `${degrees < 0 ? '−' : '+'}${Math.abs(degrees).toFixed(2)}°`;
const tableOf = (element: Element, section: string): string[][] =>
  all(element, `.${section} tbody tr`).map((row) => [...row.children].map(textOf));

/** Both wheels at the drop with camber as it is left, 3° of roll, by test/reference/independent-axle.ts, which shares nothing with core/. */
const axle = (of: IndependentCorner, drop: number, roll = 3): IndependentAxle => independentAxle(of, drop, roll, 0);
/** The same with camber set to −0.6° at the drop, at the top mount. */
const setAgain = (of: IndependentCorner, drop: number): IndependentAxle =>
  independentAxle(independentCamberSet(independentCornerAt(of, drop), -0.6), 0, 3, 0);

async function typeInto(element: Element, selector: string, text: string): Promise<void> {
  const input = find<HTMLInputElement>(element, selector)!;
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.blur();
  await settled(element);
}

afterEach(clear);

describe('the sentence', () => {
  it('says the outer wheel’s inclination to the road as a second solver says it, with its ±', async () => {
    const element = await turn('drop="25"');
    const { inclinationRight, camberRight } = axle(corner, 25);
    expect(element.answer!.outer.inclination).to.be.closeTo(inclinationRight, 1e-5);
    expect(said(element)).to.equal(
      `, the outer wheel leans out at the top by ${inclinationRight.toFixed(2)}° ± 0.11° against the road (${shown(camberRight)} to the body). Static camber is as the height leaves it.`,
    );
  });

  it('takes the roll of an attribute, and says what cannot be read with its remedy', async () => {
    const element = await turn('drop="0" roll="2°"');
    expect(element.answer!.outer.inclination).to.be.closeTo(axle(corner, 0, 2).inclinationRight, 1e-5);
    element.roll = 'two';
    await settled(element);
    expect(textOf(find(element, '#problems'))).to.match(/roll.*two.*Write it like/i);
  });

  it('holds camber that was typed, set at the drop, and says so', async () => {
    const element = await withCar({ ...OWN, turn: { camber: -0.6 } });
    expect(element.answer!.outer.inclination).to.be.closeTo(setAgain(corner, 25).inclinationRight, 1e-4);
    expect(said(element)).to.contain('Static camber is reset to −0.60°.');
  });

  it('with a set of parts on names it and counts it', async () => {
    const bare = addParts(OWN, 'Joint', [{ part: 'ballJointExtended', mm: 22, correctTieRod: true }]);
    const element = await withCar(fitSetup(bare, 0));
    expect(element.answer!.outer.inclination).to.be.closeTo(axle(joint, 25).inclinationRight, 1e-5);
    expect(said(element)).to.match(/^and with “Joint” on, the outer wheel leans out/);
  });
});

describe('setups side by side', () => {
  it('are told with camber as the height leaves it and set again, each as a second solver says', async () => {
    const element = await turn('drop="25"');
    const expected = [
      ['stock height', shown(axle(corner, 0).inclinationRight), shown(setAgain(corner, 0).inclinationRight)],
      ['25 mm lower', shown(axle(corner, 25).inclinationRight), shown(setAgain(corner, 25).inclinationRight)],
      [
        '25 mm lower, 22 mm joint + rod end',
        shown(axle(joint, 25).inclinationRight),
        shown(setAgain(joint, 25).inclinationRight),
      ],
    ];
    expect(tableOf(element, 'setups').slice(0, 3)).to.deep.equal(expected);
    expect(textOf(find(element, '.setups thead'))).to.contain('Camber reset to −0.60°');
  });

  it('say which quantity is held', async () => {
    const element = await turn('drop="25"');
    expect(textOf(find(element, '.setups'))).to.match(/Every setup at 3° of body roll\./);
  });
});

describe('the bars', () => {
  it('add up to the inclination as they are shown, to the last figure but one for rounding', async () => {
    const element = await withCar({ ...OWN, turn: { tyreRoll: 0.8, radius: 12, wheelbase: 2.5, camber: -1.5 } });
    const now = textOf(find(element, '.bars.now .size:nth-last-child(2)'));
    expect(now, 'with the camber that the sentence holds').to.equal(shown(element.answer!.outer.inclination));
    for (const bars of all(element, '.bars')) {
      const sizes = [...bars.querySelectorAll('.size')].map((one) =>
        Number(textOf(one).replace('−', '-').replace('°', '')),
      );
      const sum = sizes.slice(0, -1).reduce((total, one) => total + one, 0);
      expect(sum).to.be.closeTo(sizes.at(-1)!, 0.005 * sizes.length);
      expect(textOf(bars)).to.match(/static camber.*bump.*steer.*body roll.*tyres.*to the road/);
    }
  });
});

describe('steered', () => {
  it('by a radius each wheel is where a second solver has it at the same mean angle, Ackermann beside it', async () => {
    const element = await withCar({ ...OWN, turn: { radius: 9, wheelbase: 2.5 } });
    const { outer, inner, ackermann } = element.answer!;
    const expected = independentTurn(corner, 25, 3, (outer.steer + inner.steer) / 2);
    expect(outer.inclination).to.be.closeTo(expected.inclinationRight, 1e-4);
    expect(inner.inclination).to.be.closeTo(expected.inclinationLeft, 1e-4);
    expect((outer.steer + inner.steer) / 2).to.be.closeTo((ackermann!.outer + ackermann!.inner) / 2, 1e-6);
    expect(textOf(find(element, '.both-wheels'))).to.match(/A turn of 9\sm asks for/);
    expect(textOf(find(element, '.asked-of-turn'))).to.match(/Steered for a turn of 9\sm radius\./);
  });

  it('by half of what tells a radius says what is missing', async () => {
    const element = await withCar({ ...OWN, turn: { radius: 9 } });
    expect(textOf(find(element, '.asked-of-turn'))).to.contain(
      'Steering counts once both radius and wheelbase have been entered.',
    );
  });

  it('inside the lock names the radius and the smallest one', async () => {
    const element = await withCar({ ...OWN, turn: { radius: 2, wheelbase: 6 } });
    expect(textOf(find(element, '#problems'))).to.match(/^Radius of the turn is 2\sm, .*Enter \d+\.\d\sm or more/);
  });
});

describe('a turn tighter than any car takes', () => {
  afterEach(clear);

  it('is told with a radius that can be had, as it is shown', async () => {
    const element = await withCar({ ...OWN, turn: { radius: 2, wheelbase: 2.5, roll: 1 } });
    const least = /Enter (\d\.\d)\sm or more/.exec(textOf(find(element, '#problems')))![1]!;
    const there = await withCar({ ...OWN, turn: { radius: Number(least), wheelbase: 2.5, roll: 1 } });
    expect(find(there, '#problems')).to.equal(null);
  });
});

describe('what brings the outer wheel where it is wanted', () => {
  it('says that no part sets so much camber', async () => {
    const text = async (wanted: number) => textOf(find(await withCar({ ...OWN, turn: { wanted } }), '.wanted'));
    expect(await text(-8)).to.contain('No part sets more than about 6°');
    expect(await text(-1)).to.not.contain('No part sets');
  });

  it('is a static camber that does it, and a roll that does it', async () => {
    const element = await withCar({ ...OWN, turn: { wanted: 0 } });
    const text = textOf(find(element, '.wanted'));
    const needed = Number(/it takes (−[\d.]+)° of static camber/.exec(text)![1]!.replace('−', '-'));
    const there = independentAxle(independentCamberSet(independentCornerAt(corner, 25), needed), 0, 3, 0);
    expect(there.inclinationRight).to.be.closeTo(0, 0.006);
    const roll = Number(/as it is, it takes ([\d.]+)° of body roll instead of 3°/.exec(text)![1]);
    expect(axle(corner, 25, roll).inclinationRight).to.be.closeTo(0, 0.06);
  });

  it('is refused in words with the nearest where nothing does it', async () => {
    const element = await withCar({ ...OWN, turn: { wanted: -3 } });
    expect(textOf(find(element, '.wanted'))).to.match(/With camber as it is no roll gets there: the nearest is −\d/);
  });
});

describe('the bump stop', () => {
  it('is asked for where none is given, on its own sheet', async () => {
    const element = await withCar(OWN);
    await press(element, '.enter-stop');
    expect(textOf(find(element, 'dialog'))).to.contain('Gap to the bump stop');
  });

  it('that comes before this roll is told by how much: the gap on the rod, through the damper’s own motion', async () => {
    const element = await withCar({ ...OWN, stopGap: 45 });
    const row = tableOf(element, 'both-wheels').find(([name]) => name === 'Bump left to the stop')!;
    const needed = axle(corner, 25).travelRight - 25;
    // Measured at stock height, so that the drop comes off it. The strut leans, so that the wheel moves a little further than its rod: at most 10 % on this corner.
    const left = Number(row[1]!.replace('−', '-').replace(/[^-\d.]/g, ''));
    expect(left).to.be.within(45 - 25 - needed, 49.5 - 25 - needed);
    // What changes the answer stands outside of every fold.
    const touched = find(element, '.column > .hint')!;
    expect(textOf(touched)).to.match(/^The bump stop is touched first, 1\d\.?\d* mm before the bump travel/);
    expect(touched.closest('details')).to.equal(null);
  });
});

describe('from less than hard points', () => {
  it('six measurements tell both wheels with a ±, and no toe', async () => {
    const element = await withCar(MEASURED);
    expect(said(element)).to.match(/leans out at the top by [\d.]+° ± [\d.]+° against the road/);
    expect(textOf(find(element, '.both-wheels'))).not.to.contain('Toe-in');
  });

  it('a curve of camber tells the front view once the track is given, and names it until then', async () => {
    const { element, model } = await withModel({
      ...EMPTY_CAR,
      curve: { kind: 'coefficients', coefficients: [-0.6, -0.012], domain: [-80, 80] } as never,
      drop: 25,
    });
    expect(textOf(find(element, '#problems'))).to.match(/Track is missing/);
    model.update('track', (car) => ({ ...car, turn: { track: 1480 } }));
    await settled(element);
    // 740 mm × tan 3°, and the line's slope over it.
    const travel = 740 * Math.tan(Math.PI / 60);
    expect(element.answer!.outer.inclination).to.be.closeTo(-0.6 - 0.012 * (25 + travel) + 3, 1e-6);
    expect(textOf(find(element, '.body'))).to.contain('do not include steering');
  });
});

describe('bad input', () => {
  it('a roll beyond reach names the wheel that comes to its end, and the last good answer stays', async () => {
    const element = await withCar({ ...OWN, drop: 140 });
    const before = element.answer!.outer.inclination;
    await press(element, '.asked');
    await typeInto(element, '.over input', '15');
    expect(textOf(find(element, '#problems'))).to.match(
      /There the (outer|inner) wheel runs out of (bump|droop) travel/,
    );
    expect(element.answer!.outer.inclination).to.equal(before);
    expect(find<HTMLInputElement>(element, '.over input')!.getAttribute('aria-invalid')).to.equal('true');
  });
});

it('the slider is one step of undo, and a link brings the turn back', async () => {
  const element = await withCar(OWN);
  const slider = find<HTMLInputElement>(element, '#roll-slider')!;
  for (const roll of [3.5, 4]) {
    slider.value = String(roll);
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  }
  slider.dispatchEvent(new Event('change', { bubbles: true }));
  await settled(element);
  expect(element.answer!.suspensionRoll).to.equal(4);
  expect(element.answer!.outer.inclination).to.be.closeTo(axle(corner, 25, 4).inclinationRight, 1e-5);
  await press(element, '.undo');
  expect(element.answer!.suspensionRoll).to.equal(3);
});

describe('a roll that the bump travel does not allow', () => {
  afterEach(clear);

  it('is told in the sentence, with how much bump is missing', async () => {
    for (const [roll, isSolid] of [
      [2, false],
      [9, true],
    ] as const) {
      const element = await withCar({ ...OWN, drop: 0, bumpTravel: 45, turn: { roll } });
      const taken = independentAxle(EXAMPLE_CORNER, 0, roll, 0).travelRight;
      const short = /stop is solid ([\d.]+).mm before the bump travel this roll takes/.exec(
        textOf(find(element, '.sentence')),
      );
      expect(taken > 45).to.equal(isSolid);
      if (isSolid) expect(Number(short![1])).to.be.closeTo(taken - 45, 0.06);
      else expect(short).to.equal(null);
    }
  });
});
