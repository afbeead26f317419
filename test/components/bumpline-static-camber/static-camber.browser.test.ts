import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import type { CamberWay } from '../../../core/answers/camber-ways.js';
import { loadOf } from '../../../core/answers/car-roll.js';
import type { CorneringRequest } from '../../../core/answers/cornering-request.js';
import { rolled } from '../../../core/answers/from-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { carToLink } from '../../../core/document/link.js';
import { byUser } from '../../../core/document/own-car.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { fitSetup } from '../../../core/document/setup-in-use.js';
import { assumedBolt } from '../../../core/linkage/parts/assumed-bolt.js';
import { formatQuantity } from '../../../core/quantity/format.js';
import type { Quantity } from '../../../core/quantity/quantities.js';
import { METRIC } from '../../../core/quantity/units.js';
import { independentAxle } from '../../reference/independent-axle.js';
import type { IndependentChange } from '../../reference/independent-joint.js';
import { bumpUntilAsShort, figuresAt, standingWith, strutToPlane } from '../../reference/independent-static-camber.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { wishboneCorner } from '../bumpline-lowering/set-up.js';
import { all, clear, find, press, root, setAddress, settled, textOf, unfold, wait } from '../contract/stage.js';
import { cell, type Element, OWN, order, said, sentenceFields, shown, typeInto, withCar } from './set-up.js';

const corner: IndependentCorner = EXAMPLE_CORNER;
const signed = (size: number, quantity: Quantity): string =>
  formatQuantity(size, quantity, METRIC, { sign: 'always' }).text.replace(/\s/g, ' ');

/** What a way does to the corner, by the independent solver's own words. */
const changeOf = (way: CamberWay, amount: number): IndependentChange =>
  ({
    topMount: { topBy: [0, amount, 0] as const },
    knuckleBolts: { knuckleTurnedBy: { degrees: amount, bolt: assumedBolt(EXAMPLE_CORNER) } },
    knuckle: { spinCamberBy: amount },
    longerArm: { armLongerBy: amount },
    ballJoint: { ballBy: [0, amount, 0] as const },
    lowering: {},
  })[way];

afterEach(() => {
  clear();
  setAddress('');
});

describe('the sentence', () => {
  it('says how many ways get there, what a plate takes, and what it and the knuckle keep when steered', async () => {
    const element = await shown('by="-1" drop="25"');
    const { ways, by } = element.answer!;
    const [plate, , knuckle] = ways;
    const lost = (way: typeof plate) => (way!.change.inclinationAt30 - by).toFixed(2);
    expect(said(element)).to.equal(
      `: 5 of 6 ways get there. A plate at the top mount takes ${Math.abs(plate!.amount).toFixed(1)} mm inboard and gives ${lost(plate)}° of it away at 30° of steer; camber machined into the knuckle keeps all but ${lost(knuckle)}°.`,
    );
    expect(textOf(find(element, '.sentence'))).to.match(/more negative camber at .*lower/);
  });

  it('keeps the sign in words: a bare figure keeps it, a minus is negative camber, and the words turn it', async () => {
    const element = await withCar();
    const [by] = sentenceFields(element);
    await typeInto(element, by!, '1.5');
    expect(element.answer!.by).to.equal(-1.5);
    await press(element, '.sense');
    expect(element.answer!.by).to.equal(1.5);
    expect(textOf(find(element, '.sense'))).to.equal('less negative');
    await typeInto(element, by!, '0.5');
    expect(element.answer!.by).to.equal(0.5);
    await typeInto(element, by!, '-0.7');
    expect(element.answer!.by).to.equal(-0.7);
    expect(textOf(find(element, '.sense'))).to.equal('more negative');
  });

  it('goes by tenths of a degree with the arrow keys', async () => {
    const element = await shown('by="-1"');
    sentenceFields(element)[0]!.focus();
    await sendKeys({ press: 'ArrowUp' });
    await sendKeys({ press: 'ArrowUp' });
    await settled(element);
    expect(element.answer!.by).to.equal(-1.2);
  });

  it('tells a target that no way reaches at its field, with the most that any gives, and one tap asks for that', async () => {
    const element = await withCar();
    const [by] = sentenceFields(element);
    await typeInto(element, by!, '4');
    expect(element.state).to.equal('stale');
    expect(element.problems.map(({ path, code }) => [path, code])).to.deep.equal([['by', 'out-of-range']]);
    expect(by!.getAttribute('aria-invalid')).to.equal('true');
    expect(textOf(find(element, '#problems'))).to.match(
      /no way here adds 4\.0° more negative camber; the most is 2\.5°\. Ask for 2\.5° or less\./,
    );
    expect(textOf(find(element, '.before'))).to.include('Last answer: 1.0° more negative camber at 25 mm lower');
    expect(by!.value).to.equal('4.0°');
    await press(element, '.use-most');
    expect(element.state).to.equal('ready');
    expect(element.answer!.by).to.equal(-2.5);
  });

  it('tells an amount beyond any road car, and one that is no number, in words', async () => {
    const element = await withCar();
    const [by] = sentenceFields(element);
    await typeInto(element, by!, '12');
    expect(textOf(find(element, '#problems'))).to.match(
      /Camber to add is 12\.0°, more than any road car takes\. Enter 6\.0° or less/,
    );
    await typeInto(element, by!, 'two');
    expect(textOf(find(element, '#problems'))).to.match(/Camber to add: “two” cannot be read/);
  });

  it('tells what a page gives as its amount where that is none, in its field', async () => {
    const element = await shown('by="much"');
    expect(element.state).to.equal('problem');
    expect(sentenceFields(element)[0]!.value).to.equal('much');
    await typeInto(element, sentenceFields(element)[0]!, '1');
    expect(element.state).to.equal('example');
  });

  it('is in inches and arc minutes where these are wanted', async () => {
    const element = await shown('by="-1" drop="25.4" units="in" angles="arcminutes"');
    expect(textOf(find(element, '.says'))).to.match(
      /takes 0\.44 in inboard and gives 9′ of it away|takes 0\.4\d in inboard/,
    );
    expect(cell(element, 'topMount', 'kingpin')).to.match(/^\+0°59′$/);
  });
});

describe('the table', () => {
  it('shows of each way what an independent solver says of it', async () => {
    const element = await withCar();
    const { ways, by, drop } = element.answer!;
    const asItIs = standingWith(corner, {}, drop);
    const before = figuresAt(asItIs, 40, [-40, 40]);
    for (const { way, amount, isReached, ends } of ways) {
      const size = isReached ? amount : ends!.amount;
      const stands = standingWith(corner, changeOf(way, size), drop + (way === 'lowering' ? size : 0));
      const after = figuresAt(stands, 40, [-40, 40]);
      if (isReached) expect(after.camber - before.camber, way).to.be.closeTo(by, 1e-6);
      const angles = [
        'inclinationAt15',
        'inclinationAt30',
        'innerAt15',
        'innerAt30',
        'camberChange',
        'kingpin',
        'caster',
      ] as const;
      for (const name of angles)
        expect(cell(element, way, name), `${way} ${name}`).to.equal(signed(after[name] - before[name], 'camberChange'));
      for (const name of ['scrubRadius', 'casterTrail', 'halfTrack', 'rollCentreHeight'] as const)
        expect(cell(element, way, name), `${way} ${name}`).to.equal(signed(after[name] - before[name], 'travel'));
      expect(cell(element, way, 'bumpSteer'), `${way} bump steer`).to.equal(
        signed(after.bumpSteer - before.bumpSteer, 'toe'),
      );
      expect(cell(element, way, 'gapStrut'), `${way} gap`).to.equal(
        signed(strutToPlane(stands) - strutToPlane(asItIs), 'travel'),
      );
      if (way !== 'lowering')
        expect(cell(element, way, 'bumpTravel'), `${way} bump`).to.equal(
          signed(bumpUntilAsShort(stands, asItIs), 'travel'),
        );
    }
  });

  it('shows what each way does to the outer wheel in the turn of the car, by an independent axle', async () => {
    const element = await withCar({ ...OWN, turn: { roll: 4 } });
    const { ways, drop } = element.answer!;
    // A left turn in the frame of ISO 8855: the right wheel is the outer one.
    const outer = (stands: IndependentCorner) => independentAxle(stands, 0, 4, 0).inclinationRight;
    const before = outer(standingWith(corner, {}, drop));
    for (const { way, amount, isReached, ends } of ways) {
      const size = isReached ? amount : ends!.amount;
      const stands = standingWith(corner, changeOf(way, size), drop + (way === 'lowering' ? size : 0));
      expect(cell(element, way, 'inTurn'), way).to.equal(signed(outer(stands) - before, 'camberChange'));
    }
    expect(textOf(find(element, '.in-turn'))).to.match(
      /^“In the turn” means 4\.0° of suspension roll, steering straight ahead/,
    );
  });

  it('takes the roll that is worked out for each way anew, and the one that cable ties show for all', async () => {
    const load = { lateral: 0.8, springRate: 28, sprungMass: 600, centreHeight: 520, barRate: 20 };
    const element = await withCar({ ...OWN, turn: { rollFrom: 'load', load } });
    const { ways, drop } = element.answer!;
    const source: AnySource = { kind: 'corner', corner: EXAMPLE_CORNER };
    const car = element.car.car;
    const at = (lower: number, more: Partial<CorneringRequest<AnySource>> = {}) =>
      rolled({ source, drop: drop + lower, toe: 0, ...more, by: { load: loadOf(car, drop + lower) } });
    const { outer, suspensionRoll } = at(0);
    for (const { way, part, amount, isReached, ends } of ways) {
      const size = isReached ? amount : ends!.amount;
      const put = part ? { source: { kind: 'parts', of: source, parts: [part] } as AnySource } : {};
      const after = at(way === 'lowering' ? size : 0, put).outer.inclination;
      expect(cell(element, way, 'inTurn'), way).to.equal(signed(after - outer.inclination, 'camberChange'));
    }
    const roll = signed(suspensionRoll, 'roll').replace('+', '');
    expect(textOf(find(element, '.in-turn'))).to.contain(
      `“In the turn” means ${roll} (at 0.8 g, worked out again for each way)`,
    );
    // By hand: tan of the roll is both travels at the wheel over the track.
    element.car.update('marks', (one) => ({
      ...one,
      turn: { rollFrom: 'marks', track: 1500, marks: { outer: 36, inner: 36, motionRatio: 0.9 } },
    }));
    await settled(element);
    const byTies = (Math.atan(80 / 1500) * 180) / Math.PI;
    expect(textOf(find(element, '.in-turn'))).to.contain(`${byTies.toFixed(1)}° (from the cable ties)`);
    const before = independentAxle(standingWith(corner, {}, drop), 0, byTies, 0).inclinationRight;
    const plate = ways.find(({ way }) => way === 'topMount')!;
    const stands = standingWith(corner, changeOf('topMount', plate.amount), drop);
    expect(cell(element, 'topMount', 'inTurn')).to.equal(
      signed(independentAxle(stands, 0, byTies, 0).inclinationRight - before, 'camberChange'),
    );
  });

  it('shows every figure of the answer as the display rounds it, in the pictures too', async () => {
    const element = await withCar();
    await unfold(element);
    const { ways } = element.answer!;
    for (const [label, name] of [
      ['Kingpin inclination', 'kingpin'],
      ['Outer wheel at 30° of steer', 'inclinationAt30'],
    ] as const) {
      const picture = all(element, '.picture').find((one) =>
        textOf(one.querySelector('figcaption')).startsWith(label),
      )!;
      expect([...picture.querySelectorAll('li b')].map(textOf)).to.deep.equal(
        ways.map(({ change }) => signed(change[name], 'camberChange')),
      );
    }
    // What is sorted by stands open; the rest is folded.
    const titles = () => textOf(find(element, '.pictures > .picture-grid'));
    expect(titles()).to.not.include('Kingpin inclination');
    await press(element, '.sort[data-cost="kingpin"]');
    expect(titles()).to.include('Kingpin inclination');
    expect(all(element, '.picture')).to.have.length(all(element, '.sort').length);
    for (const { way, toeBefore } of ways)
      expect(cell(element, way, 'toeBefore')).to.equal(signed(toeBefore! - element.answer!.toeSet, 'toe'));
  });

  it('is sorted by what a heading says, in both directions, and those that do not get there stand last in either', async () => {
    const element = await withCar();
    const reached = element.answer!.ways.filter(({ isReached }) => isReached);
    const byBumpSteer = [...reached]
      .sort((a, b) => a.figures.bumpSteer! - b.figures.bumpSteer!)
      .map(({ way }) => way as string);
    await press(element, '.sort[data-cost="bumpSteer"]');
    expect(order(element)).to.deep.equal([...byBumpSteer, 'lowering']);
    expect(all(element, '.ways td[data-cost]')[0]!.dataset.cost, 'stands first').to.equal('bumpSteer');
    const heading = () => find(element, '.sort[data-cost="bumpSteer"]')!.closest('th')!;
    expect(heading().getAttribute('aria-sort')).to.equal('ascending');
    expect(textOf(find(element, '.ways-scroll + .note'))).to.match(/^Sorted by bump steer .*, least first\./);
    await press(element, '.turn-order');
    expect(order(element)).to.deep.equal([...byBumpSteer.reverse(), 'lowering']);
    expect(heading().getAttribute('aria-sort')).to.equal('descending');
    await press(element, '.undo');
    await press(element, '.undo');
    expect(order(element)).to.deep.equal(element.answer!.ways.map(({ way }) => way));
  });

  it('sorts by what keeps most of the camber when steered, and by the bump travel that is won', async () => {
    const element = await withCar();
    const select = find<HTMLSelectElement>(element, '.sort-by select')!;
    const choose = async (value: string) => {
      select.value = value;
      select.dispatchEvent(new Event('change', { bubbles: true }));
      await settled(element);
    };
    await choose('inclinationAt30');
    expect(order(element)[0]).to.be.oneOf(['knuckle', 'knuckleBolts']);
    expect(order(element).slice(-2)).to.deep.equal(['topMount', 'lowering']);
    await choose('bumpTravel');
    const { ways } = element.answer!;
    const won = order(element)
      .slice(0, -1)
      .map((name) => ways.find(({ way }) => way === name)!.bumpTravel!);
    expect(won).to.deep.equal([...won].sort((a, b) => b - a));
    await choose('');
    expect(order(element)).to.deep.equal(ways.map(({ way }) => way));
  });

  it('is sorted by keyboard alone, and the heading keeps the focus', async () => {
    const element = await withCar();
    find(element, '.sort[data-cost="scrubRadius"]')!.focus();
    await sendKeys({ press: 'Enter' });
    await settled(element);
    expect(order(element)[0]).to.be.oneOf(['topMount', 'longerArm']);
    expect((root(element).activeElement as HTMLElement).dataset.cost).to.equal('scrubRadius');
  });

  it('tells where a way ends that does not get there, what that gives, and what it would take', async () => {
    const element = await shown('by="-1.5" drop="25"');
    const joint = element.answer!.ways.find(({ way }) => way === 'ballJoint')!;
    expect(textOf(find(element, 'tr[data-way="ballJoint"] th small'))).to.equal(
      `falls short: 15 mm inboard gives ${signed(joint.change.camber, 'camberChange')} (needs ${Math.abs(joint.amount).toFixed(0)} mm)`,
    );
  });

  it('holds the name of each way in sight while it is scrolled, and nothing is wider than the phone', async () => {
    const element = await shown('by="-1"');
    const scroll = find(element, '.ways-scroll')!;
    const name = find(element, 'tr[data-way="knuckle"] th')!;
    const before = name.getBoundingClientRect().left;
    scroll.scrollLeft = 300;
    await wait(50);
    // It comes to rest with a whole column beside the names.
    expect(scroll.scrollLeft).to.be.closeTo(300, 60);
    expect(name.getBoundingClientRect().left).to.be.closeTo(before, 1);
    expect(find(element, '.sheet')!.scrollWidth).to.be.at.most(360);
  });
});

describe('other cars', () => {
  it('of a driveway toe and bump steer are not known, and what would tell them is said', async () => {
    const element = await withCar({
      ...EMPTY_CAR,
      drop: 25,
      given: { points: {}, measures: EXAMPLE_DRIVEWAY },
    } as CarDocument);
    expect(element.answer!.ways[0]!.toeBefore).to.equal(undefined);
    expect(cell(element, 'topMount', 'bumpSteer')).to.equal('not known');
    expect(cell(element, 'topMount', 'toeBefore')).to.equal('not known');
    expect(cell(element, 'topMount', 'inTurn')).to.match(/^−\d\.\d\d°$/);
    expect(textOf(find(element, '.no-toe'))).to.match(/hard points/);
  });

  it('of a double wishbone the two ways of a strut are left out, and so is the gap beside it', async () => {
    const element = await shown('drop="0"');
    element.corner = wishboneCorner;
    await settled(element);
    expect(order(element)).to.deep.equal(['knuckle', 'longerArm', 'ballJoint', 'lowering']);
    expect(find(element, '.sort[data-cost="gapStrut"]')).to.equal(null);
    expect(said(element)).to.match(
      /^: all 4 ways get there\. Camber machined into the knuckle takes 1\.00° more negative/,
    );
  });

  it('with parts on already it starts from these', async () => {
    const element = await withCar(fitSetup(addParts(OWN, 'Lower joint', [{ part: 'ballJointExtended', mm: 22 }]), 0));
    const fitted = element.answer!.asItIs.rollCentreHeight;
    element.car.update('bare', (car) => fitSetup(car, undefined));
    await settled(element);
    expect(fitted - element.answer!.asItIs.rollCentreHeight).to.be.greaterThan(30);
  });

  it('tells a roll at which a wheel runs out in words, and the rest stands', async () => {
    const element = await withCar({ ...OWN, drop: 145, turn: { roll: 14 } });
    expect(textOf(find(element, '.in-turn'))).to.match(
      /at 14\.0° of roll a wheel of this car runs out of travel; its links reach to \d+\.\d°/,
    );
    expect(cell(element, 'topMount', 'inTurn')).to.equal('not known');
    expect(cell(element, 'topMount', 'kingpin')).to.match(/^\+/);
    element.car.update('turn', (car) => ({ ...car, drop: 25, turn: { radius: 2, wheelbase: 5 } }));
    await settled(element);
    expect(textOf(find(element, '.in-turn'))).to.match(
      /a radius of 2 m is inside the lock, which ends at \d+(\.\d)? m/,
    );
  });

  it('tells droop that the links do not reach as the travel looked at, with what they reach', async () => {
    const element = await shown('by="-0.5" drop="-110" over="150"');
    element.corner = wishboneCorner;
    await settled(element);
    expect(element.problems.map(({ path, value }) => [path, value])).to.deep.equal([['over', 150]]);
    expect(textOf(find(element, '#problems'))).to.match(
      /^Wheel travel looked at is 150 mm, outside what is known, which ends at 125 mm\. Enter 125 mm or less/,
    );
  });
});

describe('what goes along', () => {
  it('a link restores amount, order and travel', async () => {
    const car: CarDocument = {
      ...OWN,
      camberAdded: { by: -1.25, over: 30, sortBy: 'scrubRadius', order: 'reversed' },
    };
    setAddress(`#${carToLink(byUser(car))}`);
    const element = await shown('keep-in-address');
    expect(element.answer).to.include({ by: -1.25, over: 30 });
    expect(order(element)[0]).to.equal('ballJoint');
    expect(sentenceFields(element)[0]!.value).to.equal('1.25°');
  });

  it('an order is a step of undo of its own, and keeps what a page asks', async () => {
    const element = await shown('by="-0.8" drop="10"');
    element.car = new CarModel({ ...EMPTY_CAR, drop: 10 });
    await settled(element);
    await press(element, '.sort[data-cost="caster"]');
    expect(element.answer!.by).to.equal(-0.8);
    expect(textOf(find(element, '.undo'))).to.equal('Undo: the order of the ways');
    await press(element, '.undo');
    expect(element.car!.car.camberAdded).to.equal(undefined);
  });

  it('the numbers hold a row a way with its amount in words, and copy as CSV', async () => {
    const element = await withCar();
    find<HTMLDetailsElement>(element, '.numbers')!.open = true;
    await settled(element);
    const rows = all<HTMLTableRowElement>(element, '.numbers tbody tr').map((row) => [...row.cells].map(textOf));
    expect(rows.map(([name]) => name)).to.deep.equal([
      'As it is',
      'Top mount plate',
      'Knuckle bolts',
      'Machined knuckle',
      'Longer lower arm',
      'Offset ball joint',
      'Lowering, to compare',
    ]);
    expect(rows[1]!.slice(1, 3)).to.deep.equal(['11.3 mm inboard', 'yes']);
    expect(rows[6]!.slice(1, 3)).to.deep.equal(['40 mm lower still', 'no']);
  });
});

describe('a car that stood lowered when it was measured', () => {
  afterEach(clear);

  const show = async (element: Element, key: string) => {
    for (const details of all<HTMLDetailsElement>(element, '.inputs')) details.open = true;
    find(element, `.inputs [data-key="${key}"]`)!.click();
    await settled(element);
  };

  it('is asked at which height it was measured, and camber and toe say so', async () => {
    const element = await withCar();
    await show(element, 'camber');
    expect(textOf(find(element, 'dialog .note'))).to.equal('Asked here: at stock height, where the car was measured.');
    find<HTMLDialogElement>(element, 'dialog[aria-labelledby=sheet-title]')!.close();
    await show(element, 'stands');
    find<HTMLInputElement>(element, 'dialog input[value=lowered]')!.click();
    await settled(element);
    expect(element.car.car.measuredAt).to.equal(25);
    for (const key of ['camber', 'toe']) {
      find<HTMLDialogElement>(element, 'dialog[aria-labelledby=sheet-title]')!.close();
      await settled(element);
      await show(element, key);
      expect(textOf(find(element, 'dialog .note'))).to.match(/Asked here: 25.mm below stock height/);
    }
  });

  it('keeps the bump travel that was left where it was measured', async () => {
    const turn = { wanted: 0.5 };
    /** What was left before, of each setup: what it leaves and what it gives up. */
    const leftBefore = async (measuredAt?: number) => {
      const element = await withCar({ ...OWN, bumpTravel: 60, turn, ...(measuredAt !== undefined && { measuredAt }) });
      for (let i = 0; i < 200 && !find(element, '.setups tbody tr'); i++) await settled(element);
      return all(element, '.setups tbody [data-cost=bumpTravel]').map((one) => {
        const [, change, won, left] = /([\d.]+).mm(.won)?.*?([\d.]+).mm left/.exec(textOf(one))!;
        return Number(left) + Number(change) * (won ? -1 : 1);
      });
    };
    for (const left of await leftBefore(25)) expect(left).to.be.closeTo(60, 1.01);
    for (const left of await leftBefore()) expect(left).to.be.closeTo(35, 1.01);
  });

  it('camber that was read with the driver in reaches the table of ways and its turn', async () => {
    const plain = await withCar({ ...OWN, turn: { roll: 3 } });
    const read = (element: Element) =>
      textOf(find(element, '.as-it-is'))
        .match(/[−+]?\d+\.\d+°/g)!
        .map((text) => Number(text.replace('−', '-').replace('°', '')));
    const [before, after] = [read(plain), read(await withCar({ ...OWN, camberReadLower: 20, turn: { roll: 3 } }))];
    expect(after[0]! - before[0]!).to.be.within(0.05, 0.6);
    // The column of the turn moves with it.
    const moved = after.filter((value, i) => Math.abs(value - before[i]! - (after[0]! - before[0]!)) < 0.06);
    expect(moved.length).to.be.greaterThan(1);
  });
});

describe('a turn that the bump travel does not allow', () => {
  afterEach(clear);

  it('is told in the note on the turn, with how much bump is missing', async () => {
    const note = async (roll: number) => {
      const element = await withCar({ ...OWN, drop: 0, bumpTravel: 45, turn: { roll } });
      return textOf(find(element, '.in-turn'));
    };
    expect(await note(2)).to.not.contain('too little');
    const taken = independentAxle(corner, 0, 9, 0).travelRight;
    const [, needs, left, short] =
      /takes ([\d.]+).mm of bump and only ([\d.]+).mm is left, ([\d.]+).mm too little/.exec(await note(9))!;
    expect(Number(needs)).to.be.closeTo(taken, 0.06);
    expect(Number(left)).to.equal(45);
    expect(Number(short)).to.be.closeTo(taken - 45, 0.06);
  });
});

it('the bars are folded on screen, and open with this answer while it is printed', async () => {
  const element = await withCar();
  const fold = find<HTMLDetailsElement>(element, '.pictures')!;
  expect(fold.open).to.equal(false);
  dispatchEvent(new Event('beforeprint'));
  expect(fold.open).to.equal(true);
  const sizes = [...fold.querySelector('.picture')!.querySelectorAll('li b')].map(textOf);
  expect(sizes).to.deep.equal(element.answer!.ways.map(({ change }) => signed(change.inclinationAt30, 'camberChange')));
  dispatchEvent(new Event('afterprint'));
  expect(fold.open).to.equal(false);
  clear();
});

describe('room on the sheet', () => {
  afterEach(clear);

  it('a desktop shows every column of the ways, and no word of swiping', async () => {
    const element = await withCar({ ...OWN, drop: 0 }, 1148);
    const table = find(element, '.ways-scroll')!;
    expect(table.scrollWidth).to.be.at.most(table.clientWidth);
    expect(find(element, '.swipe')!.checkVisibility()).to.equal(false);
  });

  it('a phone says how to come to the rest, with a mouse as well', async () => {
    const element = await withCar();
    expect(textOf(find(element, '.swipe'))).to.match(/swipe or scroll/i);
    // What can be sorted by stands whole in its list.
    const select = find<HTMLSelectElement>(element, '.sort-by select')!;
    const room = select.getBoundingClientRect().width - 40;
    const canvas = document.createElement('canvas').getContext('2d')!;
    canvas.font = getComputedStyle(select).font;
    for (const { text } of select.options) expect(canvas.measureText(text.trim()).width, text).to.be.at.most(room);
  });

  it('fields of one dialog stand under each other, whatever their units', async () => {
    const element = await withCar();
    await settled(element);
    for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
    for (let i = 0; i < 100 && !find(element, '[data-key="turn.load"]'); i++) await wait(20);
    find(element, '[data-key="turn.load"]')!.click();
    await settled(element);
    const lefts = all(element, 'dialog[open] .fields input').map((input) => input.getBoundingClientRect().left);
    expect(lefts.length).to.equal(5);
    for (const left of lefts) expect(left).to.be.closeTo(lefts[0]!, 0.6);
  });
});
