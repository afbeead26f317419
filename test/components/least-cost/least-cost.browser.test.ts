import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import type { BumplineStaticCamber } from '../../../components/bumpline-static-camber/bumpline-static-camber.js';
import { CarModel } from '../../../components/car/car-model.js';
import { leastCost } from '../../../core/answers/from-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { byUser } from '../../../core/document/own-car.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { formatQuantity } from '../../../core/quantity/format.js';
import { all, clear, find, press, put, settled, textOf, until } from '../contract/stage.js';

type Element = BumplineStaticCamber & Parameters<typeof settled>[0];

const OWN: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 0 };
const LOAD = { lateral: 0.8, sprungMass: 700, centreHeight: 520, springRate: 28, barRate: 20 };
const TURN = { wanted: 0.5, rollFrom: 'load', load: LOAD } as const;
const PARTS = { wayPrice: 300, heightPrice: 800, joint: 22, jointPrice: 250, spring: 45, springPrice: 200, bar: 35 };

async function withCar(more: Partial<CarDocument>, width = 360): Promise<Element> {
  await setViewport({ width, height: 900 });
  const [element] = await put('bumpline-static-camber', '<bumpline-static-camber></bumpline-static-camber>');
  element!.parentElement!.style.width = `${width}px`;
  element!.car = new CarModel(byUser({ ...OWN, ...more }));
  await settled(element!);
  await until('the panel', () => find(element!, '.least-cost .wanted'));
  await settled(element!);
  return element as Element;
}

const panel = (element: Element): string => textOf(find(element, '.least-cost'));
const rows = (element: Element): HTMLElement[] => all(element, '.setups tbody tr');
const cell = (row: HTMLElement, cost: string): string => textOf(row.querySelector(`[data-cost=${cost}]`));
const model = (element: Element): CarModel => element.car as CarModel;

async function choose(element: Element, cost: string, weight: string): Promise<void> {
  const select = find<HTMLSelectElement>(element, `.cost-weights [data-cost=${cost}]`)!;
  select.value = weight;
  select.dispatchEvent(new Event('change', { bubbles: true }));
  await settled(element);
}

async function typeInto(element: Element, index: number, text: string): Promise<void> {
  const input = find<HTMLInputElement>(element, `#field-${index}`)!;
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.blur();
  await settled(element);
}

describe('the least cost of a wanted inclination', () => {
  afterEach(clear);

  it('searches nothing and suggests no figure until somebody says what is wanted', async () => {
    const element = await withCar({});
    expect(rows(element)).to.have.length(0);
    expect(panel(element)).to.contain('No figure is suggested');
    await press(element, '.ask-wanted');
    await typeInto(element, 0, '0.5');
    await until('setups', () => rows(element).length > 0);
    expect(model(element).car.turn).to.deep.equal({ wanted: 0.5 });
    expect(rows(element).length).to.be.within(1, 5);
  });

  it('shows of each setup what the core says it costs', async () => {
    const element = await withCar({ turn: TURN, leastCost: PARTS, bumpTravel: 60 });
    const { lateral, sprungMass, centreHeight, springRate, barRate } = LOAD;
    const expected = leastCost({
      source: { kind: 'corner', corner: EXAMPLE_CORNER },
      drop: 0,
      inclination: 0.5,
      load: {
        lateral,
        centreOfGravityHeight: centreHeight,
        axle: { sprungMass, springRate, bar: { rate: barRate } },
      },
      camber: { from: -4, to: 0, ways: [{ way: 'topMount', price: 300 }] },
      height: { from: 0, to: 30, price: 800 },
      joints: [{ mm: 22, correctTieRod: false, price: 250 }],
      springs: [{ rate: 45, price: 200 }],
      bars: [{ rate: 35 }],
      bumpLeft: 60,
    });
    const shown = rows(element);
    expect(shown).to.have.length(expected.rows.length);
    const units = { length: 'mm', angle: 'degrees' } as const;
    for (const [i, row] of expected.rows.entries()) {
      const text = (size: number, quantity: 'toe' | 'travel' | 'camber') =>
        formatQuantity(size, quantity, units, { language: 'en' }).text.replace(/\s+/g, ' ');
      expect(cell(shown[i]!, 'bumpSteer')).to.contain(text(row.costs.bumpSteer!, 'toe'));
      expect(cell(shown[i]!, 'scrubChange')).to.contain(text(row.costs.scrubChange, 'travel'));
      expect(cell(shown[i]!, 'bumpTravel')).to.contain(`${text(row.bumpLeft!, 'travel')} left`);
      const price = row.isPriceOpen ? 'open' : String(row.costs.price);
      expect(cell(shown[i]!, 'price')).to.contain(price);
      if (row.way) expect(textOf(shown[i]!)).to.contain(`Static camber ${text(row.camber, 'camber')}`);
      for (const cost of ['bumpTravel', 'bumpSteer', 'scrubChange', 'price'] as const) {
        expect(cell(shown[i]!, cost).includes('best'), `${cost} of row ${i}`).to.equal(row.bestIn.includes(cost));
      }
    }
  });

  it('puts the best in what matters most first, takes a weight back by undo, and keeps it in the link', async () => {
    const element = await withCar({ turn: TURN, leastCost: PARTS });
    for (const cost of ['bumpTravel', 'bumpSteer', 'scrubChange']) await choose(element, cost, 'none');
    await choose(element, 'price', 'most');
    expect(cell(rows(element)[0]!, 'price')).to.contain('best');
    const kept = carFromLink(carToLink(model(element).car));
    expect(kept.ok && kept.car.leastCost).to.include({ bumpTravel: 'none', price: 'most', joint: 22 });
    await press(element, '.undo');
    expect(model(element).car.leastCost!.price).to.equal(undefined);
    expect(find<HTMLSelectElement>(element, '.cost-weights [data-cost=price]')!.value).to.equal('matters');
  });

  it('keeps the last setups dimmed where nothing gets there, says the nearest and asks for it at one press', async () => {
    const element = await withCar({ turn: { wanted: 1.5 } });
    const before = rows(element).length;
    expect(before).to.be.greaterThan(0);
    model(element).update('wanted', (car) => ({ ...car, turn: { wanted: -6 } }));
    await settled(element);
    expect(rows(element)).to.have.length(before);
    expect(find(element, '.found.last')).to.not.equal(null);
    const text = textOf(find(element, '.least-cost .problems'));
    expect(text).to.match(/No setup that you allow brings the outer wheel to −6\.00°\. The nearest is [−+][\d.]+°/);
    await press(element, '.least-cost .problems .button');
    expect(find(element, '.least-cost .problems')).to.equal(null);
    expect(rows(element).length).to.be.greaterThan(0);
  });

  it('says at the field what is wrong with a part, and keeps what was typed', async () => {
    const element = await withCar({ turn: { wanted: 1.5 }, leastCost: { spring: 45 } });
    expect(panel(element)).to.contain('Springs and bars change nothing while the roll is held');
    model(element).update('lateral', (car) => ({
      ...car,
      turn: { ...car.turn, rollFrom: 'load', load: { lateral: 0.8 } },
    }));
    await settled(element);
    expect(panel(element)).to.contain('What makes the car roll, Sprung mass on this axle');
    await press(element, '.least-cost .problems .button');
    expect(textOf(find(element, 'dialog .fields'))).to.contain('Sprung mass on this axle');
    expect(all(element, 'dialog .fields .problem').length).to.be.greaterThan(0);
    expect(model(element).car.leastCost).to.deep.equal({ spring: 45 });
    expect(model(element).car.turn!.load).to.deep.equal({ lateral: 0.8 });
  });

  it('asks for the bump travel left before it keeps a limit of it', async () => {
    const element = await withCar({ turn: { wanted: 1.5 }, leastCost: { leastBump: 40 } });
    expect(panel(element)).to.contain('enter the bump travel left now');
    model(element).update('bump', (car) => byUser({ ...car, bumpTravel: 60 }));
    await settled(element);
    expect(find(element, '.least-cost .problems')).to.equal(null);
    for (const row of rows(element))
      expect(Number(/([\d.]+)\s*mm left/.exec(cell(row, 'bumpTravel'))![1])).to.be.at.least(40);
  });

  it('takes back all that a sheet has given, what is chosen on it too', async () => {
    const element = await withCar({
      turn: { wanted: 1.5 },
      leastCost: { joint: 22, jointPrice: 250, rods: 'corrected' },
    });
    find<HTMLDetailsElement>(element, '.search-inputs')!.open = true;
    await press(element, '[data-key="leastCost.joint"]');
    const clearing = all(element, 'dialog .text-button').find((one) => textOf(one) === 'Clear')!;
    clearing.click();
    await settled(element);
    expect(model(element).car.leastCost).to.equal(undefined);
  });

  it('says so where the car cannot take the turn at all', async () => {
    const element = await withCar({ turn: { wanted: 1.5, radius: 2, wheelbase: 4 } });
    expect(textOf(find(element, '.least-cost .problems'))).to.contain('cannot take this turn');
  });

  it('says of a driveway that bump steer is not known', async () => {
    const element = await withCar({
      ...EMPTY_CAR,
      by: 'driveway',
      given: { points: {}, measures: EXAMPLE_DRIVEWAY as never },
      turn: { wanted: 1.5 },
    });
    await until('setups', () => rows(element).length > 0);
    for (const row of rows(element)) expect(cell(row, 'bumpSteer')).to.equal('not known');
    expect(panel(element)).to.contain('tell nothing of the tie rod');
  });

  it('fits a phone: nothing is wider than the sheet, and every control is a thumb wide', async () => {
    const element = await withCar({ turn: TURN, leastCost: PARTS });
    find<HTMLDetailsElement>(element, '.search-inputs')!.open = true;
    await settled(element);
    const { right } = find(element, '.least-cost')!.getBoundingClientRect();
    for (const one of all(element, '.least-cost *'))
      expect(one.getBoundingClientRect().right).to.be.at.most(right + 0.5);
    for (const one of all(element, '.least-cost :is(button, select, summary)'))
      expect(one.getBoundingClientRect().height, textOf(one)).to.be.at.least(44);
  });
});

describe('what is wrong with a figure of the panel', () => {
  afterEach(clear);

  const open = async (element: Element, key: string) => {
    for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
    find(element, key === 'turn.wanted' ? '.wanted button' : `.least-cost [data-key="${key}"]`)!.click();
    await settled(element);
  };
  const isOpen = (element: Element): boolean =>
    find<HTMLDialogElement>(element, 'dialog[aria-labelledby=sheet-title]')!.open;
  const done = async (element: Element) => {
    const buttons = all<HTMLButtonElement>(element, 'dialog[open] .buttons button');
    buttons.at(-1)!.click();
    await until('the dialog is done', () => true);
    await settled(element);
  };

  it('leaves the sentence its answer, and is told in the panel alone', async () => {
    const element = await withCar({ turn: TURN, leastCost: PARTS });
    for (const [key, index, text, name] of [
      ['leastCost.camberFrom', 2, 'cheap', 'Price of what sets it'],
      ['leastCost.camberFrom', 1, '99', 'To is'],
      ['turn.load', 1, 'heavy', 'Sprung mass'],
    ] as const) {
      await open(element, key);
      await typeInto(element, index, text);
      find<HTMLDialogElement>(element, 'dialog[aria-labelledby=sheet-title]')!.close();
      await settled(element);
      expect(textOf(find(element, '.sentence'))).to.not.contain('no answer yet');
      expect(element.state).to.equal('ready');
      expect(panel(element)).to.contain(name).and.to.contain(text);
      expect(find(element, '#problems')).to.equal(null);
      await open(element, key);
      await typeInto(element, index, '-1');
      await typeInto(element, index, index === 1 && key === 'turn.load' ? '700' : '0');
      await done(element);
    }
  });

  it('a target that no setup reaches closes its dialog, and the panel names the nearest', async () => {
    const element = await withCar({ turn: { ...TURN, wanted: 0.5 }, leastCost: PARTS });
    await open(element, 'turn.wanted');
    await typeInto(element, 0, '-8');
    await until('the search', () => panel(element).includes('The nearest is'));
    expect(find(element, 'dialog .problem')).to.equal(null);
    await done(element);
    expect(isOpen(element)).to.equal(false);
    expect(model(element).car.turn!.wanted).to.equal(-8);
  });

  it('what was not given of the load is missing, by its name, and nothing is NaN', async () => {
    const { centreHeight: _, sprungMass: __, ...half } = LOAD;
    const element = await withCar({ turn: { wanted: 0.5, rollFrom: 'load', load: half } });
    await until('the problems', () => panel(element).includes('is missing'));
    expect(panel(element)).to.contain('What makes the car roll, Sprung mass on this axle is missing');
    expect(panel(element)).to.contain('What makes the car roll, Centre of gravity at stock height is missing');
    expect(panel(element)).to.not.match(/NaN|turn\.[a-z]/);
  });

  it('a span of more steps than are tried is told by how far it may go', async () => {
    const element = await withCar({ turn: TURN, leastCost: { camberFrom: -15, camberTo: 5 } });
    await until('the problem', () => panel(element).includes('Static camber to choose from, To is'));
    expect(panel(element)).to.contain('Enter -3.00° or less'.replace('-', '−'));
  });

  it('emptied figures that can be left out are taken back when the dialog is done', async () => {
    const element = await withCar({ turn: TURN, leastCost: PARTS });
    await open(element, 'turn.load');
    await typeInto(element, 4, '');
    expect(find<HTMLInputElement>(element, '#field-4')!.value).to.equal('');
    await done(element);
    const { barRate: _, ...without } = LOAD;
    expect(model(element).car.turn!.load).to.deep.equal(without);
    await open(element, 'leastCost.joint');
    await typeInto(element, 1, '');
    await done(element);
    expect(model(element).car.leastCost!.joint).to.equal(22);
    expect(model(element).car.leastCost!.jointPrice).to.equal(undefined);
    // What the load cannot do without keeps its value.
    await open(element, 'turn.load');
    await typeInto(element, 1, '');
    await done(element);
    expect(model(element).car.turn!.load!.sprungMass).to.equal(700);
    await open(element, 'turn.wanted');
    await typeInto(element, 0, '');
    await done(element);
    expect(model(element).car.turn!.wanted).to.equal(undefined);
  });
});

describe('the results beside what they are asked with', () => {
  afterEach(clear);

  it('say in which order they stand, which is best in all, and above the limits what became of them', async () => {
    const element = await withCar({ turn: TURN, leastCost: PARTS, bumpTravel: 60 });
    await until('setups', () => rows(element).length > 1);
    expect(textOf(find(element, '.setups caption'))).to.contain('the best in all that matters to you together first');
    const best = rows(element).map((row) => textOf(row).includes('best in all that matters to you together'));
    expect(best).to.deep.equal(rows(element).map((_, i) => i === 0));
    const above = () => textOf(find(element, '.results-above'));
    const before = above();
    expect(before).to.match(/^Results above: \d+ of \d+ setups get there now\./);
    model(element).update('limit', (car) => ({ ...car, leastCost: { ...car.leastCost, leastBump: 55 } }));
    await settled(element);
    await until('other results', () => above() !== before);
  });

  it('a sheet of masses and springs warns of neither photo nor cable ties', async () => {
    const element = await withCar({ turn: TURN });
    find(element, '.least-cost [data-key="turn.load"]')!.click();
    await settled(element);
    expect(textOf(find(element, 'dialog[open]')))
      .to.contain('closed course')
      .and.to.not.match(/picture|cable ties/);
  });
});
