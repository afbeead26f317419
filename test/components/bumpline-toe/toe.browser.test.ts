import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineToe } from '../../../components/bumpline-toe/bumpline-toe.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { byUser } from '../../../core/document/own-car.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { fitSetup } from '../../../core/document/setup-in-use.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep } from '../../reference/independent-strut.js';
import { wishboneCorner } from '../bumpline-lowering/set-up.js';
import { all, clear, find, press, put, root, settled, textOf, until, wait } from '../contract/stage.js';

type Element = BumplineToe & Parameters<typeof settled>[0];

async function toe(attributes = '', inside = '', width = 360): Promise<Element> {
  await setViewport({ width, height: 900 });
  const [element] = await put('bumpline-toe', `<bumpline-toe ${attributes}>${inside}</bumpline-toe>`);
  element!.parentElement!.style.width = `${width}px`;
  await settled(element!);
  return element as Element;
}

async function withCar(car: CarDocument, width = 360): Promise<Element> {
  const element = await toe('', '', width);
  element.car = new CarModel(byUser(car));
  await settled(element);
  return element;
}

/** The example, on a car that can be looked at. */
async function withModel(): Promise<Element> {
  const element = await toe('drop="0"');
  element.car = new CarModel({ ...EMPTY_CAR, drop: 0 });
  await settled(element);
  return element;
}

const said = (element: Element): string => textOf(find(element, '.says'));
const OWN: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 0 };
const corner: IndependentCorner = EXAMPLE_CORNER;
const lowered = withLoweredJoint(corner, { mm: 22, isTieRodCorrected: false });

/** By test/reference/independent-strut.ts, which shares nothing with core/. */
function change(of: IndependentCorner, from: number, over: number, rack = 0): number {
  const [here, there] = independentStrutSweep(of, [from, from + over], { rack });
  return there!.toe - here!.toe;
}

async function typeInto(element: Element, selector: string, text: string): Promise<void> {
  const input = find<HTMLInputElement>(element, selector)!;
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.blur();
  await settled(element);
}

async function slide(element: Element, id: string, mm: number): Promise<void> {
  const slider = find<HTMLInputElement>(element, `#${id}`)!;
  slider.value = String(mm);
  slider.dispatchEvent(new Event('input', { bubbles: true }));
  slider.dispatchEvent(new Event('change', { bubbles: true }));
  await settled(element);
}

/** Invented: what two dials 300 mm apart read of a wheel that turns by `toe` degrees. */
function dials(toeAt: (travel: number) => number, attributes = 'data-base="300" data-front="inboard"'): string {
  const rows = [-40, -30, -20, -10, 0, 10, 20, 30, 40, 50].flatMap((travel) => {
    const half = (300 * Math.tan((toeAt(travel) * Math.PI) / 180)) / 2;
    return [0.004, -0.004].map(
      (off) => `<tr><td>${travel}</td><td>${(5 + half + off).toFixed(3)}</td><td>${(5 - half).toFixed(3)}</td></tr>`,
    );
  });
  return `<table ${attributes}><caption>Two dials</caption><thead><tr><th>Travel (mm)</th><th>Front dial (mm)</th><th>Rear dial (mm)</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

afterEach(clear);

describe('the sentence', () => {
  it('opens with the example, a lower joint on, and says what a second solver says', async () => {
    const element = await toe('drop="0"');
    expect(element.state).to.equal('example');
    expect(element.answer!.change.value).to.be.closeTo(change(lowered, 0, 40), 1e-5);
    expect(said(element)).to.match(
      /^, with “22 mm joint” this wheel turns out by 1\.1° ± 0\.3° \(8\.4 mm at 450 mm\)\.$/,
    );
  });

  it('is about the bare car as soon as a car was given, and about its fitted parts where it has any', async () => {
    const bare = await withCar(OWN);
    expect(bare.answer!.change.value).to.be.closeTo(change(corner, 0, 40), 1e-5);
    expect(said(bare)).to.match(/^, this wheel turns by −0\.1° ± 0\.3°, too little to tell from zero\.$/);
    const withParts = addParts(OWN, 'My joint', [{ part: 'ballJointExtended', mm: 22 }]);
    const fitted = await withCar(fitSetup(withParts, 0));
    expect(fitted.answer!.change.value).to.be.closeTo(change(lowered, 0, 40), 1e-5);
    expect(said(fitted)).to.include('with “My joint” this wheel turns out by');
  });

  it('takes another travel and another height, droop among them', async () => {
    const element = await toe();
    await press(element, '.asked');
    await typeInto(element, '.over input', '-30');
    await settled(element);
    expect(element.answer!.over).to.equal(-30);
    expect(element.answer!.change.value).to.be.closeTo(change(lowered, 30, -30), 1e-5);
    expect(textOf(find(element, '.sentence'))).to.include('of droop from');
  });

  it('tells a travel beyond what is known in its own field, and keeps the last answer', async () => {
    const element = await toe('drop="0"');
    await press(element, '.asked');
    await typeInto(element, '.over input', '250');
    await settled(element);
    expect(element.state).to.equal('stale');
    expect(element.problems.map(({ path }) => path)).to.deep.equal(['toe.over']);
    expect(textOf(find(element, '#problems'))).to.match(/Wheel travel/);
    expect(textOf(find(element, '.before'))).to.include('Last answer: over 40 mm');
  });

  it('tells total toe of both wheels, across another diameter, and by the steering ratio', async () => {
    const element = await withCar({ ...OWN, toe: { wheels: 'both', across: 600, steeringRatio: 15 } });
    element.car!.update('parts', (car) => fitSetup(addParts(car, 'J', [{ part: 'ballJointExtended', mm: 22 }]), 0));
    await settled(element);
    const total = 2 * Math.abs(change(lowered, 0, 40));
    const across = 600 * Math.tan((total * Math.PI) / 180);
    expect(said(element)).to.equal(
      `, both wheels together turn out by 2.1° ± 0.6° (${across.toFixed(1)} mm at 600 mm), as much as turning the steering wheel by ${Math.round((15 * total) / 2)}°.`,
    );
  });

  it('is in inches and arc minutes where these are wanted', async () => {
    const element = await toe('drop="0" units="in" angles="arcminutes"');
    expect(said(element)).to.match(/turns out by 1°04′ ± 19′ \(0\.33 in at 17\.72 in\)\.$/);
  });
});

describe('readings of toe', () => {
  const curve = (travel: number) => -0.0125 * travel - 0.00003 * travel ** 2;

  it('of two dials over a base make the answer, and the curve is as it was read', async () => {
    const element = await toe('drop="0"', dials(curve));
    expect(element.state).to.equal('ready');
    expect(element.answer!.change.value).to.be.closeTo(curve(40) - curve(0), 0.004);
    expect(find(element, '.drawing')).to.equal(null);
    expect(textOf(find(element, '.head'))).to.include('from 20 readings');
  });

  it('do not count where the page does not say which way the dials read', async () => {
    const element = await toe('drop="0"', dials(curve, 'data-base="300"'));
    expect(element.state).to.equal('problem');
    expect(textOf(find(element, '#problems'))).to.match(/data-front/);
  });

  it('tell the shim with the rod’s length and its lever, which are asked for, and say that it is measured again', async () => {
    const element = await toe('drop="0"', dials(curve));
    expect(textOf(find(element, '.cure'))).to.include('the steering arm and the rod’s side');
    await press(element, '.enter-rod');
    await until('its sheet is open', () => find(element, 'dialog[open]'));
    await typeInto(element, 'dialog[open] .fields input', '330');
    await press(element, 'dialog[open] .buttons .main');
    await until('the next sheet', () => textOf(find(element, 'dialog[open] h2')).includes('Steering arm'));
    await typeInto(element, 'dialog[open] .fields input', '120');
    await press(element, 'dialog[open] .buttons .main');
    await until('the side is asked', () => textOf(find(element, 'dialog[open] h2')).includes('Side of the tie rod'));
    // The shim's sign goes by it: nobody is taken to have it on one side.
    expect(find(element, 'dialog[open] input:checked')).to.equal(null);
    expect(textOf(find(element, '.cure'))).to.not.include('With the rod end');
    await press(element, 'dialog[open] input[value="behind"]');
    await press(element, 'dialog[open] .buttons .main');
    await settled(element);
    // With the rack behind: slope × length × lever ÷ 0.87 (a rule of its own in test/core/answers/shim-study.ts).
    const rule = (0.0125 * Math.PI * 330 * 120) / 180 / 0.87;
    const [, size] = /With the rod end ([\d.]+) ± ([\d.]+) mm lower/.exec(textOf(find(element, '.cure')))!;
    expect(Number(size)).to.be.closeTo(rule, 0.8);
    expect(textOf(find(element, '.cure'))).to.include('a rod of 330 mm on a steering arm of 120 mm, behind the axle');
    expect(textOf(find(element, '.cure'))).to.include('measure toe again');
  });

  it('tell a length that no rod has in its sheet, by its name, with unit and limit', async () => {
    const element = await toe('drop="0"', dials(curve));
    await press(element, '.enter-rod');
    await until('its sheet is open', () => find(element, 'dialog[open]'));
    await typeInto(element, 'dialog[open] .fields input', '3');
    expect(textOf(find(element, 'dialog[open] .problem'))).to.equal(
      'Tie rod’s length is “3”, which is not possible. Enter 100 mm or more.',
    );
  });

  it('beside hard points: both can be asked, the rod is that of the points, and the zero of the readings can be said', async () => {
    const element = await withCar({ ...OWN, drop: 20 });
    const model = element.car as CarModel;
    model.update('readings', (car) => ({
      ...car,
      setups: [
        {
          name: 'Dials',
          cornerName: 'Front left',
          quantity: 'toe',
          readings: [-40, -30, -20, -10, 0, 10, 20, 30, 40, 50, 60].map((travel, i) => ({
            travel,
            value: curve(travel) + (i % 2 ? 0.002 : -0.002),
          })),
        },
      ],
      provenance: { ...car.provenance, setups: { by: 'user' } },
    }));
    await settled(element);
    expect(textOf(find(element, '.head'))).to.include('from 11 readings');
    expect(textOf(find(element, '.cure'))).to.match(
      /a rod of 324\.2 mm on a steering arm of 1\d\d(\.\d)? mm, behind the axle/,
    );
    find<HTMLDetailsElement>(element, '.inputs')!.open = true;
    await wait(50);
    expect(textOf(find(element, '.inputs'))).to.include('Zero of the readings');
    const choice = find<HTMLSelectElement>(element, '.from')!;
    choice.value = '-1';
    choice.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(element);
    expect(find(element, '.drawing svg')).to.not.equal(null);
    expect(element.answer!.change.value).to.be.closeTo(change(corner, 20, 40), 1e-5);
    expect(model.car.toe).to.deep.equal({ from: 'links' });
  });

  it('a driveway car tells no toe: what would, is said, and nothing of the example stands there', async () => {
    const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
    const element = await withCar({ ...EMPTY_CAR, given: { points: {}, measures } as CarDocument['given'] });
    expect(element.state).to.equal('incomplete');
    expect(element.answer).to.equal(undefined);
    expect(textOf(find(element, '.column'))).to.include('nothing about the tie rod');
    expect(all(element, '.column .paste, .column .own')).to.have.length(2);
  });
});

describe('what flattens it', () => {
  it('names the amount that a search with the second solver finds, what it leaves, and the rod that would suit', async () => {
    const element = await toe('drop="0"');
    const text = textOf(find(element, '.cure'));
    const fold = textOf(find(element, '.optima-fold'));
    const [, amount] = /flattest with the rod end ([\d.]+) ± [\d.]+ mm lower/.exec(text)!;
    expect(Number(amount)).to.be.closeTo(19.7, 0.5);
    expect(text).to.match(/it then moves by 0\.06° in all, instead of 2\.01°/);
    expect(fold).to.match(/the tie rod is \d+ mm too short for this arm and strut; no shim does better/);
    expect(fold).to.match(/Each 1 mm of shim changes the toe change over 40 mm of bump by 0\.052°/);
    expect(all(element, '.optima dt').map(textOf)).to.deep.equal([
      'Level where it stands',
      'Least squares',
      'Flattest',
    ]);
  });

  it('moves the curve with the slider: as it is dashed, and what the second solver says at the end of the window', async () => {
    const element = await toe('drop="0"');
    await slide(element, 'amount-slider', -10);
    const outer = lowered.tieRod.outer;
    const shimmed = {
      ...lowered,
      tieRod: { inner: lowered.tieRod.inner, outer: [outer[0], outer[1], outer[2] - 10] },
    } as IndependentCorner;
    find<HTMLDetailsElement>(element, '.numbers')!.open = true;
    await wait(50);
    const row = all(element, '#numbers tbody tr, .numbers tbody tr').find((one) => textOf(one).startsWith('+40'))!;
    const cells = [...row.querySelectorAll('td, th')].map((cell) => Number(textOf(cell).replace('−', '-')));
    expect(cells.at(-1)).to.be.closeTo(change(shimmed, 0, 40), 0.006);
    const spread = Math.abs(change(shimmed, 0, 40) - change(shimmed, 0, -40));
    expect(textOf(find(element, '.tried'))).to.equal(
      `With the rod end 10 mm lower, toe moves by ${spread.toFixed(2)}° in all from −40 mm to +40 mm.`,
    );
    expect(textOf(find(element, '.undo'))).to.include('rod’s end');
    await press(element, '.undo');
    await settled(element);
    expect(find<HTMLInputElement>(element, '#amount-slider')!.value).to.equal('0');
  });

  it('takes the flattest amount at one tap, in the link as well', async () => {
    const element = await withModel();
    await press(element, '.try');
    await settled(element);
    expect(element.car!.car.toe!.amount).to.equal(-19.5);
    expect(find(element, '.try')).to.equal(null);
  });

  it('starts again from none where another end is moved', async () => {
    const element = await withModel();
    await slide(element, 'amount-slider', -10);
    const choice = find<HTMLSelectElement>(element, '.adjust')!;
    choice.value = 'rack';
    choice.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(element);
    expect(element.car!.car.toe).to.deep.equal({ adjust: 'rack' });
    expect(textOf(find(element, '.cure'))).to.match(/flattest with the rack [\d.]+ ± [\d.]+ mm higher/);
  });

  it('turned wheels differ, and which is the outer one is said: of a right corner the other way round', async () => {
    const element = await toe('drop="0"');
    const straight = textOf(find(element, '.cure'));
    await slide(element, 'rack-slider', 30);
    const [steered] = independentStrutSweep(lowered, [0], { rack: 30 });
    expect(textOf(find(element, '.steered .note'))).to.include(`Steered by ${Math.round(Math.abs(steered!.toe))}°`);
    const note = textOf(find(element, '.steered .note'));
    expect(note).to.include(steered!.toe > 0 ? 'this is the outer wheel' : 'this is the inner wheel');
    const [, here, there] = /: ([+−][\d.]+)° over 40 mm of bump, the \w+ one ([+−][\d.]+)°/.exec(note)!;
    const number = (text: string | undefined) => Number(text!.replace('−', '-'));
    expect(number(here)).to.be.closeTo(change(lowered, 0, 40, 30), 0.006);
    expect(number(there)).to.be.closeTo(change(lowered, 0, 40, -30), 0.006);
    // A shim is chosen straight ahead, where toe is set.
    expect(textOf(find(element, '.cure'))).to.equal(straight);
    const right = await withCar({ ...OWN, cornerName: 'Front right', toe: { rack: 30 } });
    const [other] = independentStrutSweep(corner, [0], { rack: -30 });
    expect(textOf(find(right, '.steered .note'))).to.include(
      other!.toe > 0 ? 'this is the outer' : 'this is the inner',
    );
  });

  it('goes for a double wishbone as well', async () => {
    const element = await toe('drop="0"', `<script type="application/json">${JSON.stringify(wishboneCorner)}</script>`);
    expect(element.state).to.equal('ready');
    expect(textOf(find(element, '.cure'))).to.match(/flattest with|as flat as it gets/);
    expect(find(element, '.drawing svg')).to.not.equal(null);
  });

  it('where the links do not reach the window, that is said in its place and the curve stays', async () => {
    const element = await toe('drop="0"', `<script type="application/json">${JSON.stringify(wishboneCorner)}</script>`);
    await typeInto(element, '.drop', '95');
    await settled(element);
    expect(root(element).textContent).to.match(/Flattest|As flat|reach/);
  });
});

describe('parts', () => {
  it('are entered here: a set of one’s own is begun, and its amount counts', async () => {
    const element = await withCar(OWN);
    await press(element, '.add-set');
    const model = element.car as CarModel;
    expect(model.car.setups).to.have.length(1);
    expect(model.car.fitted).to.equal(0);
    model.update('joint', (car) => ({
      ...car,
      setups: [{ ...car.setups![0]!, parts: [{ part: 'ballJointExtended', mm: 22 }] }],
    }));
    await settled(element);
    expect(element.answer!.change.value).to.be.closeTo(change(lowered, 0, 40), 1e-5);
  });

  it('that do not go on are told by their set, and the last answer stays', async () => {
    const element = await withCar(fitSetup(addParts(OWN, 'Too much', [{ part: 'ballJointExtended', mm: 5 }]), 0));
    (element.car as CarModel).update('joint', (car) => ({
      ...car,
      setups: [{ ...car.setups![0]!, parts: [{ part: 'ballJointExtended', mm: 400 }] }],
    }));
    await settled(element);
    expect(element.state).to.equal('stale');
    expect(textOf(find(element, '#problems'))).to.match(/Too much/);
  });

  it('a shim that the range ends is told to be no optimum: the rod’s length is not blamed', async () => {
    const element = await withCar(fitSetup(addParts(OWN, 'Joint', [{ part: 'ballJointExtended', mm: 40 }]), 0));
    const text = textOf(find(element, '.cure'));
    expect(text).to.include('That is as far as we try, 30 mm; further on it would be flatter still.');
    find<HTMLDetailsElement>(element, '.optima-fold')!.open = true;
    await until('it is of this set', () => /how to fit/.test(textOf(find(element, '.optima-fold'))));
    await settled(element);
    expect(text + textOf(find(element, '.optima-fold'))).to.not.include('too short');
  });
});

describe('the drawing', () => {
  it('says both centres and the two lengths, and moves with the cursor and with what is moved', async () => {
    const element = await toe('drop="0"');
    const svg = () => find(element, '.drawing svg')!;
    const texts = () => [...svg().querySelectorAll('text')].map(textOf);
    expect(texts().join(' ')).to.match(/instant centre 3\.2 m inboard.*should aim 2\.6 m inboard.*Rod 323 mm; 350 mm/);
    const before = svg().innerHTML;
    await slide(element, 'amount-slider', -20);
    expect(svg().innerHTML).to.not.equal(before);
    expect(texts().join(' ')).to.match(/Rod 324 mm; 3\d\d mm/);
  });
});
