import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineCornering } from '../../../components/bumpline-cornering/bumpline-cornering.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { byUser } from '../../../core/document/own-car.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import type { TurnSettings } from '../../../core/document/turn-settings.js';
import { type IndependentAxle, independentAxle } from '../../reference/independent-axle.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { all, clear, find, put, settled, textOf, unfold, until } from '../contract/stage.js';

type Element = BumplineCornering & Parameters<typeof settled>[0];

const GRAVITY = 9.80665;
const DEGREES = 180 / Math.PI;

async function withModel(car: CarDocument): Promise<{ element: Element; model: CarModel }> {
  await setViewport({ width: 360, height: 780 });
  const [element] = await put('bumpline-cornering', '<bumpline-cornering></bumpline-cornering>');
  await settled(element!);
  await unfold(element!);
  const model = new CarModel(byUser(car));
  element!.car = model;
  await settled(element!);
  return { element: element as Element, model };
}

const OWN: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 25 };
const { armLength, camber, ...others } = EXAMPLE_DRIVEWAY;
const MEASURED: CarDocument = {
  ...EMPTY_CAR,
  given: { points: {}, camber: camber!.value, measures: { armLength: armLength!, ...others } },
  drop: 25,
};
const asked = (turn: TurnSettings, car = OWN): CarDocument => ({ ...car, turn });

/** Invented: the front of a small car. */
const LOAD = {
  lateral: 0.6,
  centreHeight: 520,
  centrePlusMinus: 40,
  sprungMass: 600,
  springRate: 28,
  barRate: 16,
  barRatio: 0.5,
};

/** What the links say at a drop, by the independent solvers: roll centre, track, and the damper's length by central differences. */
function standing(drop: number) {
  const { rollCentre } = independentAxle(EXAMPLE_CORNER, drop, 0, 0);
  const sweep = independentStrutSweep(EXAMPLE_CORNER, [drop - 0.1, drop, drop + 0.1]);
  return {
    rollCentreHeight: rollCentre[1],
    track: 2 * sweep[1]!.contact[1],
    motionRatio: (sweep[0]!.damperLength - sweep[2]!.damperLength) / 0.2,
  };
}

/**
 * Roll of one axle: φ = m a d/(K − m g d), K = k MR² t²/2 + k_bar MR_bar² t². Barton & Fieldhouse, Automotive Chassis Engineering, Springer
 * 2018, p. 174.
 */
function rollByHand(drop: number, { lateral = 0.6, springRate = 28, barRate = 16, height = 520 } = {}): number {
  const { rollCentreHeight, track, motionRatio } = standing(drop);
  const arm = height - drop - rollCentreHeight;
  const stiffness = (springRate * motionRatio ** 2 * track ** 2) / 2 + barRate * 0.25 * track ** 2;
  return ((600 * lateral * GRAVITY * arm) / (stiffness - 600 * GRAVITY * arm)) * DEGREES;
}

const axle = (drop: number, roll: number): IndependentAxle => independentAxle(EXAMPLE_CORNER, drop, roll, 0);
const shown = (degrees: number): string => `${degrees < 0 ? '−' : '+'}${Math.abs(degrees).toFixed(2)}°`;
const sentenceOf = (element: Element): string => textOf(find(element, '.sentence')).replace(/\s+/g, ' ');
const way = (element: Element, name: string): HTMLButtonElement =>
  all<HTMLButtonElement>(element, '.roll-ways .ways button').find((button) => textOf(button) === name)!;

async function typeInto(element: Element, selector: string, text: string): Promise<void> {
  const input = find<HTMLInputElement>(element, selector)!;
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.blur();
  await settled(element);
}

async function slide(element: Element, id: string, to: number): Promise<void> {
  const slider = find<HTMLInputElement>(element, `#${id}`)!;
  slider.value = String(to);
  slider.dispatchEvent(new Event('input', { bubbles: true }));
  slider.dispatchEvent(new Event('change', { bubbles: true }));
  await settled(element);
}

async function press(element: Element, pressed: HTMLElement | null): Promise<void> {
  pressed!.click();
  await settled(element);
}

const button = (element: Element, text: string): HTMLButtonElement =>
  all<HTMLButtonElement>(element, 'dialog button').find((one) => textOf(one) === text)!;

afterEach(clear);

describe('roll from cable ties', () => {
  it('typed on its sheet is atan((in + out)/(motion ratio × track)), with the links’ own ratio and track standing in', async () => {
    const { element } = await withModel(OWN);
    await press(element, way(element, 'Cable ties'));
    await until('stand-ins', () => find<HTMLInputElement>(element, '#field-3')?.placeholder);
    const { track, motionRatio } = standing(25);
    expect(Number(find<HTMLInputElement>(element, '#field-2')!.placeholder)).to.be.closeTo(motionRatio, 6e-4);
    expect(Number(find<HTMLInputElement>(element, '#field-3')!.placeholder.replace(',', ''))).to.be.closeTo(
      track,
      0.06,
    );
    await typeInto(element, '#field-0', '38');
    await typeInto(element, '#field-1', '34');
    await typeInto(element, '#field-4', '2');
    const roll = Math.atan(72 / (motionRatio * track)) * DEGREES;
    expect(element.answer!.suspensionRoll).to.be.closeTo(roll, 1e-4);
    expect(element.answer!.outer.inclination).to.be.closeTo(axle(25, roll).inclinationRight, 1e-4);
    const plusMinus = ((2 * Math.SQRT2) / (motionRatio * track)) * DEGREES * Math.cos(roll / DEGREES) ** 2;
    expect(textOf(find(element, '.roll-ways p'))).to.equal(
      `Roll on the springs: ${roll.toFixed(1)}° ± ${plusMinus.toFixed(1)}°, from cable ties.`,
    );
    expect(textOf(find(element, '.roll-ways'))).to.contain('a kerb or the brakes push them too');
  });

  it('without the inner damper its wheel is taken to drop as far as the outer one rises, and that is said', async () => {
    const { element } = await withModel(asked({ rollFrom: 'marks', marks: { outer: 37 } }));
    const { track, motionRatio } = standing(25);
    expect(element.answer!.suspensionRoll).to.be.closeTo(Math.atan(74 / (motionRatio * track)) * DEGREES, 1e-4);
    expect(textOf(find(element, '.roll-ways'))).to.contain('taken to drop as far as the outer one rises');
  });

  it('gives way to the slider in one step of undo, and nothing that was typed is lost', async () => {
    const { element, model } = await withModel(asked({ rollFrom: 'marks', marks: { outer: 38, inner: 34 } }));
    const before = element.answer!.suspensionRoll;
    await slide(element, 'roll-slider', 2);
    expect(element.answer!.suspensionRoll).to.equal(2);
    expect(model.car.turn).to.deep.equal({ roll: 2, marks: { outer: 38, inner: 34 } });
    model.undo();
    await settled(element);
    expect(element.answer!.suspensionRoll).to.equal(before);
    expect(model.car.turn).to.deep.equal({ rollFrom: 'marks', marks: { outer: 38, inner: 34 } });
  });

  it('more than any damper goes is told at its field', async () => {
    const { element } = await withModel(asked({ rollFrom: 'marks', marks: { outer: 390, inner: 34 } }));
    expect(textOf(find(element, '#problems'))).to.match(/Outer damper went in is 390.*300/);
    await press(element, find(element, '#problems button'));
    expect(textOf(find(element, '#field-0-problem'))).to.match(/390/);
  });
});

describe('roll from a photo', () => {
  it('is the whole roll less the tyres’ share, where that is known, and says so', async () => {
    const { element } = await withModel(asked({ rollFrom: 'photo', photo: 3.6, tyreRoll: 0.6 }));
    expect(element.answer!.suspensionRoll).to.equal(3);
    expect(element.answer!.roll).to.be.closeTo(3.6, 1e-9);
    expect(element.answer!.outer.camber).to.be.closeTo(axle(25, 3).camberRight, 1e-5);
    expect(element.answer!.outer.inclination).to.be.closeTo(axle(25, 3).inclinationRight + 0.6, 1e-5);
    expect(textOf(find(element, '.roll-ways'))).to.contain('The 0.6° of roll on the tyres is taken off');
  });

  it('with the tyres’ share unknown counts as it is, and says that it is in it', async () => {
    const { element } = await withModel(asked({ rollFrom: 'photo', photo: 3.6, photoPlusMinus: 0.3 }));
    expect(element.answer!.outer.inclination).to.be.closeTo(axle(25, 3.6).inclinationRight, 1e-5);
    expect(textOf(find(element, '.roll-ways'))).to.contain('Roll on the tyres still counts as roll on the springs');
    expect(textOf(find(element, '.roll-ways p'))).to.contain('3.6° ± 0.3°, from a photo');
  });

  it('less than the tyres add is a problem with both figures', async () => {
    const { element } = await withModel(asked({ rollFrom: 'photo', photo: 0.4, tyreRoll: 0.9 }));
    expect(textOf(find(element, '#problems'))).to.match(/0\.4°.*0\.9°.*Correct one/);
  });

  it('shows how it is measured, and who takes the picture', async () => {
    const { element } = await withModel(OWN);
    await press(element, way(element, 'Photo'));
    expect(find(element, 'dialog svg.where')!.getAttribute('aria-label')).to.contain('both lamps');
    expect(textOf(find(element, 'dialog'))).to.match(/closed course.*the driver only drives/);
  });
});

describe('roll from lateral acceleration', () => {
  it('is the closed formula with the links’ own roll centre, told in the sentence with its ± and with g as the field', async () => {
    const { element } = await withModel(asked({ rollFrom: 'load', load: LOAD }));
    const roll = rollByHand(25);
    const plusMinus = (rollByHand(25, { height: 540 }) - rollByHand(25, { height: 500 })) / 2;
    expect(element.answer!.suspensionRoll).to.be.closeTo(roll, 2e-3);
    const { inclinationRight } = axle(25, roll);
    expect(element.answer!.outer.inclination).to.be.closeTo(inclinationRight, 2e-3);
    const field = find<HTMLButtonElement>(element, '.sentence .asked')!;
    expect(textOf(field)).to.equal('0.6 g');
    // Half of 40 mm is less than its standard uncertainty, which is 40/1.96: the ± is twice what ±20 mm does.
    expect(sentenceOf(element)).to.contain(
      `, which rolls the body by ${roll.toFixed(1)}° ± ${(2 * plusMinus).toFixed(1)}°, `,
    );
    expect(sentenceOf(element)).to.match(/leans out at the top by \d\.\d+° ± \d\.\d+° against the road/);
    // The doubt of the roll is one of the inclination, and stands among its causes.
    find<HTMLDetailsElement>(element, '.why')!.open = true;
    await until('the causes', () => /includes the roll’s own ±/.test(textOf(find(element, '.why'))));
    expect(textOf(find(element, '.why'))).to.match(/roll\s?\d+ %/);
    expect(element.answer!.doubt!.sources.some(({ id }) => id === 'roll')).to.equal(true);
  });

  it('every setup rolls by its own amount at the same lateral acceleration, and the table says so', async () => {
    const { element } = await withModel(asked({ rollFrom: 'load', load: LOAD }));
    const rows = all(element, '.setups tbody tr').map((row) => [...row.children].map(textOf));
    for (const [i, drop] of [0, 25].entries()) {
      const roll = rollByHand(drop);
      expect(rows[i]![0]).to.contain(`${roll.toFixed(1)}° of roll`);
      expect(rows[i]![1]).to.equal(shown(axle(drop, roll).inclinationRight));
    }
    expect(textOf(find(element, '.setups .note'))).to.match(/^Every setup at 0\.6 g of lateral acceleration/);
  });

  it('with roll typed holds roll instead, with the warning that a lower car rolls by another amount', async () => {
    const { element } = await withModel(asked({ roll: 3, load: LOAD }));
    expect(textOf(find(element, '.setups .note'))).to.match(
      /^Every setup at 3° of body roll.*same lateral acceleration/,
    );
  });

  it('the slider moves g, in one step of undo', async () => {
    const { element, model } = await withModel(asked({ rollFrom: 'load', load: LOAD }));
    await slide(element, 'lateral-slider', 0.9);
    expect(element.answer!.suspensionRoll).to.be.closeTo(rollByHand(25, { lateral: 0.9 }), 3e-3);
    model.undo();
    await settled(element);
    expect(model.car.turn!.load).to.deep.equal(LOAD);
    expect(element.answer!.suspensionRoll).to.be.closeTo(rollByHand(25), 2e-3);
  });

  it('a link carries all of it', async () => {
    const { model } = await withModel(asked({ rollFrom: 'load', load: LOAD, marks: { outer: 30 } }));
    const read = carFromLink(carToLink(model.car));
    expect(read.ok && read.car.turn).to.deep.equal(model.car.turn);
  });

  it('says which of its figures are still missing and opens their sheet; the typed roll holds meanwhile', async () => {
    const { element } = await withModel(asked({ roll: 2, rollFrom: 'load', load: { lateral: 0.8 } }));
    expect(element.answer!.suspensionRoll).to.equal(2);
    const note = find(element, '.roll-ways .note')!;
    expect(textOf(note)).to.match(
      /you also need: spring rate, sprung mass of the axle, height of the centre of gravity/,
    );
    await press(element, note.querySelector('button'));
    expect(textOf(find(element, '#sheet-title .title'))).to.equal('Springs of this axle');
  });

  it('a rate in lb/in without its unit is told at its field with what it would be, and taken at a press', async () => {
    const { element } = await withModel(asked({ rollFrom: 'load', load: { ...LOAD, springRate: 160 } }));
    expect(textOf(find(element, '#problems'))).to.match(
      /Spring rate is 160 N\/mm, which looks like lb\/in: that would be 28/,
    );
    await press(element, find(element, '#problems button'));
    const problem = find(element, '#field-0-problem')!;
    expect(textOf(problem)).to.match(/lb\/in/);
    await press(element, problem.querySelector('button'));
    expect(element.answer!.suspensionRoll).to.be.closeTo(rollByHand(25), 5e-3);
  });

  it('a rate that is as hard as it looks counts once it is said to be in N/mm', async () => {
    const { element } = await withModel(asked({ rollFrom: 'load', load: { ...LOAD, springRate: 160 } }));
    await press(element, find(element, '#problems button'));
    await press(element, find(element, 'dialog input[value=asTyped]'));
    expect(element.answer!.suspensionRoll).to.be.closeTo(rollByHand(25, { springRate: 160 }), 2e-3);
  });

  it('a bump stop that is touched is told, with the roll it is met at and the lift', async () => {
    const load = { ...LOAD, lateral: 0.8, stopGap: 45, stopRate: 50 };
    const { element } = await withModel(asked({ rollFrom: 'load', load }));
    const { track, motionRatio } = standing(25);
    // The gap less what the shorter spring takes, over half the track: small angles.
    const at = ((45 / motionRatio - 25) / (track / 2)) * DEGREES;
    expect(textOf(find(element, '.roll-ways'))).to.contain(
      `The outer bump stop is touched at ${at.toFixed(1)}° of roll.`,
    );
    expect(element.answer!.suspensionRoll).to.be.lessThan(rollByHand(25, { lateral: 0.8 }));
    expect(element.answer!.load!.axle.heave).to.be.lessThan(0);
  });

  it('a gap without the stop’s rate does not count, and that is said', async () => {
    const { element } = await withModel({ ...asked({ rollFrom: 'load', load: LOAD }), stopGap: 20 });
    expect(element.answer!.suspensionRoll).to.be.closeTo(rollByHand(25), 2e-3);
    expect(textOf(find(element, '.roll-ways'))).to.contain('The bump stop’s rate has not been entered');
  });

  it('readings tell no motion ratio and no roll centre: each is asked for on its sheet, then the closed formula holds', async () => {
    const readings = [-60, -40, -20, 0, 20, 40, 60].map((travel) => ({ travel, value: -0.6 - 0.012 * travel }));
    const set = { name: 'Mine', cornerName: 'Front left' as const, quantity: 'camber' as const, readings };
    const turn: TurnSettings = { track: 1480, rollFrom: 'load', load: { ...LOAD, lateral: 0.4 } };
    const { element, model } = await withModel({ ...EMPTY_CAR, drop: 0, by: 'readings', setups: [set], turn });
    const mend = async (title: string, typed: string) => {
      await press(element, find(element, '#problems button'));
      expect(textOf(find(element, '#sheet-title .title'))).to.equal(title);
      const fields = all<HTMLInputElement>(element, '.fields input');
      await typeInto(element, `#${fields.at(-1)!.id}`, typed);
      await press(element, button(element, 'Done'));
    };
    await mend('Springs of this axle', '0.95');
    await mend('Roll centre of this axle', '40');
    expect(model.car.turn!.load).to.include({ motionRatio: 0.95, rollCentre: 40 });
    const moment = 600 * GRAVITY * (520 - 40);
    const stiffness = (28 * 0.95 ** 2 * 1480 ** 2) / 2 + 16 * 0.25 * 1480 ** 2;
    expect(element.answer!.suspensionRoll).to.be.closeTo(((0.4 * moment) / (stiffness - moment)) * DEGREES, 1e-6);
  });

  it('springs, or a bar, bring stock’s inclination back at the new height', async () => {
    const { element } = await withModel(asked({ rollFrom: 'load', load: LOAD }));
    await until('the springs', () => /springs of/.test(textOf(find(element, '.stiffness-back'))));
    const text = textOf(find(element, '.stiffness-back'));
    const target = axle(0, rollByHand(0)).inclinationRight;
    expect(text).to.contain(`back to stock’s ${shown(target)} at this height`);
    const [, springRate, barRate] = /springs of ([\d.]+) N\/mm instead of 28 N\/mm, or a bar of ([\d.]+) N\/mm/
      .exec(text)!
      .map(Number);
    for (const change of [{ springRate: springRate! }, { barRate: barRate! }]) {
      // The rates are told to a tenth.
      expect(axle(25, rollByHand(25, change)).inclinationRight).to.be.closeTo(target, 0.02);
    }
    expect(text).to.contain('Both axles changed alike');
  });

  it('is refused in words where no spring and no bar does it', async () => {
    // At so little g the wheel stands further out 40 mm lower with no roll at all than at stock height: camber as the height leaves it.
    const load = { ...LOAD, lateral: 0.05 };
    const car = { ...asked({ rollFrom: 'load', load }), given: takeCorner({ ...EXAMPLE_CORNER, camber: -0.6 }).given };
    const { element } = await withModel({ ...car, drop: -40 });
    await until('an answer', () => /back to stock/.test(textOf(find(element, '.stiffness-back'))));
    const stock = axle(0, rollByHand(0, { lateral: 0.05 })).inclinationRight;
    // Raised, the wheel leans out further with no roll at all, by the second solver.
    expect(axle(-40, 0).inclinationRight).to.be.greaterThan(stock);
    expect(textOf(find(element, '.stiffness-back'))).to.contain(
      `No spring and no bar on this axle brings the outer wheel back to stock’s ${shown(stock)}: the nearest is ${shown(axle(-40, 0).inclinationRight)}.`,
    );
  });

  it('further than a wheel reaches is told at the lateral acceleration, with the roll, and the last answer stays', async () => {
    const { element, model } = await withModel(asked({ rollFrom: 'load', load: LOAD }));
    const before = element.answer!.suspensionRoll;
    model.update('g', (car) => ({ ...car, turn: { ...car.turn!, load: { ...LOAD, lateral: 3, barRate: 1 } } }));
    await settled(element);
    const [problem] = element.problems as { path: string; value: number }[];
    expect(problem!.path).to.equal('turn.load.lateral');
    expect(problem!.value).to.be.closeTo(rollByHand(25, { lateral: 3, barRate: 1 }), 0.05);
    expect(textOf(find(element, '#problems'))).to.match(
      /At this lateral acceleration the body would roll by \d+(\.\d)?°.*Enter less/,
    );
    expect(find(element, '.sentence input[aria-label="Lateral acceleration"]')!.getAttribute('aria-invalid')).to.equal(
      'true',
    );
    expect(element.answer!.suspensionRoll).to.equal(before);
  });

  it('with the other axle given both count: the roll moment of both over the stiffness of both', async () => {
    const other = { otherMass: 450, otherTrack: 1470, otherRollCentre: 90, otherSpringRate: 24, otherMotionRatio: 0.8 };
    const { element } = await withModel(asked({ rollFrom: 'load', load: { ...LOAD, ...other } }));
    const { rollCentreHeight, track, motionRatio } = standing(25);
    // φ = a Σm d/(Σk − g Σm d), d from the roll axis under the centre of gravity: Barton & Fieldhouse, p. 174.
    const axis = (600 * rollCentreHeight + 450 * 90) / 1050;
    const moment = 1050 * GRAVITY * (495 - axis);
    const stiffness =
      (28 * motionRatio ** 2 * track ** 2) / 2 + 16 * 0.25 * track ** 2 + (24 * 0.8 ** 2 * 1470 ** 2) / 2;
    expect(element.answer!.suspensionRoll).to.be.closeTo(((0.6 * moment) / (stiffness - moment)) * DEGREES, 2e-3);
    expect(textOf(find(element, '.roll-ways'))).to.contain('Both axles count.');
  });
});

describe('by touch on a phone', () => {
  it('a driveway car gets its outer wheel’s inclination at 0.8 g with its ±', async () => {
    const { element } = await withModel(MEASURED);
    await press(element, way(element, 'Lateral acceleration'));
    await typeInto(element, '#field-0', '0.8');
    await press(element, button(element, 'Next'));
    await typeInto(element, '#field-0', '160 lb/in');
    await press(element, button(element, 'Next'));
    await typeInto(element, '#field-0', '600');
    await press(element, button(element, 'Next'));
    await typeInto(element, '#field-0', '520');
    await typeInto(element, '#field-1', '40');
    await press(element, button(element, 'Done'));
    expect(sentenceOf(element)).to.match(
      /At 0\.8 g.*, which rolls the body by \d\.\d° ± \d\.\d°, .*leans out at the top by \d\.\d+° ± \d\.\d+° against the road/,
    );
    // The car is nearly that of the hard points; so is its roll by hand.
    const roll = rollByHand(25, { lateral: 0.8, springRate: 28.02, barRate: 0 });
    expect(element.answer!.suspensionRoll).to.be.closeTo(roll, 0.6);
  });
});

describe('a roll that is typed', () => {
  afterEach(clear);

  it('is asked for in the sentence, whichever way the roll came before', async () => {
    for (const turn of [{}, { rollFrom: 'photo', photo: 4 }, { rollFrom: 'load', load: LOAD }] as TurnSettings[]) {
      const { element } = await withModel(asked(turn));
      const typed = all<HTMLButtonElement>(element, '.roll-ways .ways button')[0]!;
      typed.click();
      await settled(element);
      await until('the field', () => find(element, '.over[data-path="turn.roll"] input'));
      const input = find(element, '.over[data-path="turn.roll"] input');
      await until('its focus', () => element.shadowRoot!.activeElement === input);
    }
  });
});

describe('what nobody said of a roll', () => {
  afterEach(clear);

  it('is told: a ± that leaves the roll out, and one that is assumed', async () => {
    const notes = async (turn: TurnSettings) => textOf(find((await withModel(asked(turn))).element, '.roll-ways'));
    const none = 'no ± here includes it';
    expect(await notes({ rollFrom: 'marks', marks: { outer: 40 } })).to.contain(none);
    expect(await notes({ rollFrom: 'marks', marks: { outer: 40, plusMinus: 2 } })).to.not.contain(none);
    expect(await notes({ rollFrom: 'photo', photo: 4 })).to.contain(none);
    expect(await notes({ rollFrom: 'photo', photo: 4, photoPlusMinus: 0.5 })).to.not.contain(none);
    const { centrePlusMinus: _, ...load } = LOAD;
    expect(await notes({ rollFrom: 'load', load })).to.match(/±.50.mm is assumed until you say/);
    expect(await notes({ rollFrom: 'load', load: LOAD })).to.not.contain('is assumed until you say');
  });

  it('a wheel that stands more upright than at stock height needs no softer springs, and that is said', async () => {
    const turn: TurnSettings = { rollFrom: 'load', load: LOAD, camber: -1 };
    const lean = (drop: number) =>
      independentAxle({ ...EXAMPLE_CORNER, camber: -1 }, drop, rollByHand(drop), 0).inclinationRight;
    // Raised, the roll centre comes up faster than the centre of gravity: less roll, by hand.
    expect(rollByHand(-25)).to.be.lessThan(rollByHand(0));
    expect(lean(0)).to.be.greaterThan(0);
    const { element } = await withModel({ ...asked(turn), drop: -25 });
    await until('the panel', () => find(element, '.stiffness-back'));
    const text = textOf(find(element, '.stiffness-back'));
    expect(text)
      .to.contain('already stands more upright to the road')
      .and.to.not.match(/springs of|bar of/);
  });
});

describe('room on the turn', () => {
  afterEach(clear);

  it('a focused field keeps to its line, a drawing to its frame, and a list without numbers leaves no room for them', async () => {
    const { element } = await withModel({ ...MEASURED, turn: {} });
    all<HTMLButtonElement>(element, '.roll-ways .ways button')[0]!.click();
    await until('the field', () => find(element, '.over[data-path="turn.roll"] input'));
    const input = find(element, '.over[data-path="turn.roll"] input')!;
    await until('its focus', () => element.shadowRoot!.activeElement === input);
    const { outlineOffset, outlineWidth, blockSize } = getComputedStyle(input);
    const outlined =
      Number.parseFloat(blockSize) + 2 * (Number.parseFloat(outlineOffset) + Number.parseFloat(outlineWidth));
    expect(outlined).to.be.at.most(Number.parseFloat(getComputedStyle(find(element, '.sentence')!).lineHeight) + 0.5);
    for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
    await settled(element);
    const row = find(element, '.inputs .input-row')!;
    expect(row.querySelector('.name')!.getBoundingClientRect().left).to.be.closeTo(row.getBoundingClientRect().left, 1);
    all<HTMLButtonElement>(element, '.roll-ways .ways button')[1]!.click();
    await settled(element);
    const frame = find<SVGSVGElement & HTMLElement>(element, 'dialog[open] svg.where')!.getBoundingClientRect();
    for (const text of all(element, 'dialog[open] svg.where text')) {
      expect(text.getBoundingClientRect().right).to.be.at.most(frame.right);
      expect(text.getBoundingClientRect().left).to.be.at.least(frame.left);
    }
  });
});

describe('a figure that was emptied', () => {
  afterEach(clear);

  const open = async (element: Element, key: string) => {
    for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
    await until(key, () => find(element, `.inputs [data-key="${key}"]`));
    find(element, `.inputs [data-key="${key}"]`)!.click();
    await settled(element);
  };
  const enter = async (element: Element, index: number, text: string) => {
    const input = find<HTMLInputElement>(element, `#field-${index}`)!;
    input.focus();
    input.value = text;
    input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    input.blur();
    await settled(element);
  };
  const done = async (element: Element) => {
    [...all<HTMLButtonElement>(element, 'dialog[open] .buttons button')].find((one) => textOf(one) === 'Done')!.click();
    await settled(element);
    await until('the dialog is closed', () => !find(element, 'dialog[open]'));
  };

  it('is taken back where it can be left out, in one step, and kept where it cannot', async () => {
    const turn: TurnSettings = { rollFrom: 'marks', marks: { outer: 40, inner: 36 }, radius: 20, wheelbase: 2.5 };
    const { element, model } = await withModel(asked(turn));
    await open(element, 'turn.roll.marks');
    await enter(element, 1, '');
    await enter(element, 0, '');
    expect(model.car.turn!.marks, 'nothing is gone before it is done').to.deep.equal({ outer: 40, inner: 36 });
    await enter(element, 0, '40');
    await enter(element, 1, '');
    await done(element);
    expect(model.car.turn!.marks).to.deep.equal({ outer: 40 });
    find(element, '.undo')!.click();
    await settled(element);
    expect(model.car.turn!.marks).to.deep.equal({ outer: 40, inner: 36 });
    for (const key of ['radius', 'wheelbase'] as const) {
      await open(element, `turn.${key}`);
      await enter(element, 0, '');
      await done(element);
      expect(model.car.turn![key], key).to.equal(undefined);
    }
    // Without the outer one the other says nothing: it stays.
    await open(element, 'turn.roll.marks');
    await enter(element, 0, '');
    await done(element);
    expect(model.car.turn!.marks!.outer).to.equal(40);
    // A point is not left out.
    const { ball } = EXAMPLE_CORNER.lowerArm;
    await open(element, 'lowerArm.ball');
    await enter(element, 1, '');
    await done(element);
    expect(model.car.given.points['lowerArm.ball' as never]).to.deep.equal(ball);
  });

  it('a wanted inclination that cannot be read leaves the sentence its answer', async () => {
    const { element } = await withModel(asked({}));
    await open(element, 'turn.wanted');
    await enter(element, 0, 'upright');
    expect(textOf(find(element, 'dialog .problem'))).to.contain('“upright”');
    expect(textOf(find(element, '.sentence'))).to.not.contain('no answer yet');
    expect(element.state).to.equal('ready');
  });
});
