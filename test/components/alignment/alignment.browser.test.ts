import 'axe-core';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import type { AlignmentSettings } from '../../../core/document/alignment-settings.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { byUser } from '../../../core/document/own-car.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { independentSetting } from '../../reference/independent-alignment.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { all, clear, find, put, root, type Sheet, settled, textOf, until } from '../contract/stage.js';

const OWN: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 20 };
/** Read by nothing but two dials: invented, toe-out in bump by half a degree over 40 mm. */
const READ: CarDocument = {
  ...EMPTY_CAR,
  by: 'readings',
  drop: 0,
  setups: [
    {
      name: 'Mine',
      cornerName: 'Front left',
      quantity: 'toe',
      readings: [-40, -20, 0, 20, 40, 60].map((travel, i) => ({
        travel,
        value: -travel / 80 + (i % 2 ? 0.01 : -0.01),
      })),
    },
  ],
};

async function sheet(car: CarDocument, alignment: AlignmentSettings = {}, width = 360): Promise<Sheet> {
  await setViewport({ width, height: 780 });
  const [element] = await put('bumpline-toe', '<bumpline-toe></bumpline-toe>');
  element!.parentElement!.style.width = `${width}px`;
  element!.car = new CarModel(byUser({ ...car, ...(Object.keys(alignment).length > 0 && { alignment }) }));
  await settled(element!);
  if (!find(element!, '.alignment')) find<HTMLButtonElement>(element!, '.alignment-open')!.click();
  await until('the sheet is open', () => find(element!, '.alignment'));
  await settled(element!);
  return element!;
}

const field = (element: Sheet, key: string) => root(element).getElementById(`alignment-${key}`) as HTMLInputElement;
const turns = (element: Sheet) => textOf(find(element, '.alignment .turns'));

async function enter(element: Sheet, key: string, text: string): Promise<void> {
  const input = field(element, key);
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.blur();
  await settled(element);
}

const axe = (window as unknown as { axe: typeof import('axe-core') }).axe;

afterEach(async () => {
  await emulateMedia({ media: 'screen' });
  clear();
});

describe('the alignment sheet', () => {
  it('is not there until its button is pressed, and goes away by it again', async () => {
    const [element] = await put('bumpline-toe', '<bumpline-toe></bumpline-toe>');
    const button = () => find<HTMLButtonElement>(element!, '.alignment-open')!;
    expect(find(element!, '.alignment')).to.equal(null);
    expect(button().getAttribute('aria-expanded')).to.equal('false');
    button().click();
    await until('it is open', () => find(element!, '.alignment'));
    expect(button().getAttribute('aria-expanded')).to.equal('true');
    button().click();
    await until('it is closed', () => !find(element!, '.alignment'));
  });

  it('does not open in an element whose car gets an alignment in another', async () => {
    const [one, other] = await put('bumpline-toe', '<bumpline-toe></bumpline-toe><bumpline-toe></bumpline-toe>');
    const model = new CarModel(byUser(OWN));
    one!.car = model;
    other!.car = model;
    await settled(one!, other!);
    find<HTMLButtonElement>(one!, '.alignment-open')!.click();
    await until('one is open', () => find(one!, '.alignment'));
    await enter(one!, 'toeLeft', '0.3');
    await settled(one!, other!);
    expect(find(other!, '.alignment')).to.equal(null);
  });

  it('asks three angles and a pitch first, and tells the turns of the independent solver', async () => {
    const element = await sheet(OWN);
    const open = all<HTMLInputElement>(element, '.alignment input').filter((input) => input.checkVisibility());
    expect(open.map(({ id }) => id)).to.deep.equal([
      'alignment-toeLeft',
      'alignment-toeRight',
      'alignment-toeWanted',
      'alignment-pitch',
    ]);
    await enter(element, 'toeLeft', '0.45');
    await enter(element, 'toeRight', '-0,25');
    await enter(element, 'toeWanted', '0.05');
    expect(turns(element)).to.include('Enter the pitch');
    await enter(element, 'pitch', '1.5');
    // Source: test/reference/independent-alignment.ts, Newton on the bare constraints.
    for (const [toe, wheel, way] of [
      [0.45, 'Left', 'shorter'],
      [-0.25, 'Right', 'longer'],
    ] as const) {
      const { rodLonger } = independentSetting(EXAMPLE_CORNER as IndependentCorner, {
        travel: 20,
        lower: 0,
        toe,
        toeWanted: 0.05,
      });
      const told = new RegExp(`${wheel}: tie rod ([\\d.]+) ± [\\d.]+ mm ${way}, ([\\d.]+) ± [\\d.]+ turns`).exec(
        turns(element).replace(/\u202f/g, ' '),
      );
      expect(Number(told?.[1])).to.be.closeTo(Math.abs(rodLonger), 0.06);
      expect(Number(told?.[2])).to.be.closeTo(Math.abs(rodLonger) / 1.5, 0.06);
    }
    // 2 × 450 mm × tan 0.05° = 0.785 mm, by hand.
    expect(turns(element).replace(/\u202f/g, ' ')).to.include('Total toe wanted: +0.10°, or +0.8 mm across 450 mm.');
  });

  it('halves the turns of a sleeve with two threads', async () => {
    const element = await sheet(OWN, { toeLeft: 1, toeWanted: 0, pitch: 1.5 });
    const number = () => Number(/, ([\d.]+) ± [\d.]+ turns?/.exec(turns(element).replace(/\u202f/g, ' '))?.[1]);
    const one = number();
    const select = find<HTMLSelectElement>(element, '.thread')!;
    select.value = 'pair';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(element);
    expect(number()).to.be.closeTo(one / 2, 0.06);
  });

  it('tells what height and camber do first, and turns from toe as it is then', async () => {
    const setting = { toeLeft: 0.1, toeWanted: 0.05, camberLeft: -0.6, camberWanted: -1.6 };
    const element = await sheet(OWN, { ...setting, heightLeft: 350, heightWanted: 335, pitch: 1.25 });
    find<HTMLDetailsElement>(element, '.alignment-more')!.open = true;
    await settled(element);
    const { afterCamber, afterHeight, read } = independentSetting(EXAMPLE_CORNER as IndependentCorner, {
      travel: 20,
      lower: 15,
      camber: -0.6,
      toe: 0.1,
      camberWanted: -1.6,
      toeWanted: 0.05,
    });
    const order = textOf(find(element, '.alignment .order'))
      .replace(/\u202f/g, ' ')
      .replace(/−/g, '-');
    const makes = /15 mm lower\. That alone changes camber by ([+-][\d.]+)° ± [\d.]+° and toe by ([+-][\d.]+)°/.exec(
      order,
    );
    expect(Number(makes?.[1])).to.be.closeTo(afterHeight.camber - read.camber, 0.01);
    expect(Number(makes?.[2])).to.be.closeTo(afterHeight.toe - read.toe, 0.06);
    const then = /Toe goes from ([+-][\d.]+)°, as it will be/.exec(turns(element).replace(/−/g, '-'));
    expect(Number(then?.[1])).to.be.closeTo(afterCamber.toe, 0.02);
  });

  it('keeps what is no number in its field with what is wrong under it, and dims nothing', async () => {
    const element = await sheet(OWN, { toeLeft: 0.3, toeWanted: 0 });
    await enter(element, 'pitch', '1.5 kg');
    expect(field(element, 'pitch').value).to.equal('1.5 kg');
    expect(field(element, 'pitch').getAttribute('aria-invalid')).to.equal('true');
    expect(textOf(root(element).getElementById('alignment-pitch-problem'))).to.include('Thread pitch');
    expect(element.state).to.equal('ready');
    await enter(element, 'pitch', '9');
    expect(textOf(root(element).getElementById('alignment-pitch-problem'))).to.match(
      /Thread pitch is “9”, which is not possible\. Enter 4.*or less/,
    );
  });

  it('tells what no mount reaches at the camber that is wanted, and a height beyond the links at the height', async () => {
    const element = await sheet(OWN, { camberLeft: -1, camberWanted: -14, toeLeft: 0, toeWanted: 0.2 });
    find<HTMLDetailsElement>(element, '.alignment-more')!.open = true;
    await settled(element);
    expect(textOf(root(element).getElementById('alignment-camberWanted-problem'))).to.include('Camber wanted');
    await enter(element, 'camberWanted', '');
    expect(root(element).getElementById('alignment-camberWanted-problem')).to.equal(null);
    await enter(element, 'heightLeft', '400');
    await enter(element, 'heightWanted', '110');
    expect(textOf(root(element).getElementById('alignment-heightWanted-problem'))).to.match(/Height wanted is 110/);
  });

  it('takes a typed field back by one undo, and travels in the link, which opens it', async () => {
    const element = await sheet(OWN);
    await enter(element, 'toeLeft', '0.45');
    await enter(element, 'pitch', '1.25');
    find<HTMLButtonElement>(element, '.undo')!.click();
    await settled(element);
    expect([field(element, 'pitch').value, field(element, 'toeLeft').value]).to.deep.equal(['', '0.45']);
    const link = carFromLink(carToLink(element.car!.car));
    expect(link.ok).to.equal(true);
    if (!link.ok) return;
    const [other] = await put('bumpline-toe', '<bumpline-toe></bumpline-toe>');
    other!.car = new CarModel(link.car);
    await settled(other!);
    await until('the sheet of the link', () => find(other!, '.alignment'));
    expect(field(other!, 'toeLeft').value).to.equal('0.45');
    expect(find(other!, '.unused')).to.equal(null);
  });

  it('has nothing for axe to find with everything unfolded, and nothing pressed that is smaller than 44 px', async () => {
    const element = await sheet(READ, { toeLeft: 0.5, toeWanted: 0.05, hotInner: 80, hotMiddle: 84, hotOuter: 90 });
    for (const details of all<HTMLDetailsElement>(element, '.alignment details')) details.open = true;
    await settled(element);
    const { violations } = await axe.run(element);
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(', ')}`)).to.deep.equal([]);
    const small = all(element, '.alignment-part :is(button, input, select, summary)').filter(
      (one) => one.checkVisibility() && one.getBoundingClientRect().height < 43.9,
    );
    expect(small.map(({ className, id }) => className || id)).to.deep.equal([]);
    expect(find(element, '.alignment')!.scrollWidth).to.be.at.most(find(element, '.alignment')!.clientWidth);
  });

  it('is opened, filled in and left by keyboard alone', async () => {
    const element = await sheet(OWN);
    find<HTMLButtonElement>(element, '.alignment-open')!.focus();
    // The key of the sign, then the field.
    for (const key of ['Tab', 'Tab']) await sendKeys({ press: key });
    expect(root(element).activeElement?.id).to.equal('alignment-toeLeft');
    await sendKeys({ type: '0.45' });
    for (const key of ['Tab', 'Tab']) await sendKeys({ press: key });
    expect(root(element).activeElement?.id).to.equal('alignment-toeRight');
    for (const key of ['Tab', 'Tab']) await sendKeys({ press: key });
    await sendKeys({ type: '0.05' });
    await sendKeys({ press: 'Tab' });
    expect(root(element).activeElement?.id).to.equal('alignment-pitch');
    await sendKeys({ type: '1.5' });
    await sendKeys({ press: 'Tab' });
    await settled(element);
    expect(root(element).activeElement?.className).to.equal('thread');
    expect(turns(element)).to.match(/Left: tie rod .* shorter, .* turns/);
  });

  it('without links asks the steering arm, and goes by its arc: 120 mm × 0.45° is 0.94 mm, by hand', async () => {
    const element = await sheet(READ, { toeLeft: 0.5, toeWanted: 0.05, pitch: 1.5 });
    expect(textOf(find(element, '.alignment'))).to.include('No hard points tell');
    await enter(element, 'toe.lever', '120');
    const select = find<HTMLSelectElement>(element, '.rack')!;
    select.value = 'ahead';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(element);
    expect(turns(element).replace(/\u202f/g, ' ')).to.match(
      /Left: tie rod 0\.9 ± 0\.2 mm longer, 0\.63 ± 0\.1\d turns/,
    );
    expect(turns(element)).to.include('a rule');
  });

  it('of a driveway knows what height does to camber, and goes by the arc', async () => {
    const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
    const driveway: CarDocument = { ...EMPTY_CAR, given: { points: {}, measures } };
    const element = await sheet(driveway, { toeLeft: 0.5, toeWanted: 0.05, pitch: 1.5 });
    expect(element.state).to.equal('incomplete');
    await enter(element, 'toe.lever', '120');
    const select = find<HTMLSelectElement>(element, '.rack')!;
    select.value = 'behind';
    select.dispatchEvent(new Event('change', { bubbles: true }));
    find<HTMLDetailsElement>(element, '.alignment-more')!.open = true;
    await settled(element);
    expect(turns(element).replace(/\u202f/g, ' ')).to.match(/Left: tie rod 0\.9 ± 0\.2 mm shorter/);
    expect(textOf(find(element, '.order')).replace(/\u202f/g, ' ')).to.match(
      /Here 5 mm lower changes camber by −0\.\d+° ± [\d.]+°\./,
    );
  });

  it('says whose rod it is while the links are the example’s', async () => {
    const element = await sheet({ ...EMPTY_CAR }, { toeLeft: 0.5, toeWanted: 0, pitch: 1.5 });
    expect(textOf(find(element, '.alignment'))).to.include('The links are still the example’s');
    expect(turns(element)).to.include('These links are the example’s: no figure for your rod.');
    expect(textOf(find(element, '.paper'))).to.include('These links are the example’s');
  });
});

describe('after driving', () => {
  const hot = { hotInner: 80, hotMiddle: 84, hotOuter: 90 };

  it('tells a direction with its ±, and no degrees of camber', async () => {
    const element = await sheet(OWN, hot);
    find<HTMLDetailsElement>(element, '.after-driving')!.open = true;
    await settled(element);
    const told = textOf(find(element, '.after-driving .told'));
    expect(told).to.include('more negative camber might suit');
    expect(told).to.include('This is a direction, not an amount.');
    expect(told).not.to.match(/camber by/);
    await enter(element, 'hotOuter', '82');
    expect(textOf(find(element, '.after-driving .told'))).to.include('leave camber alone');
  });

  it('tells the worked A–B–A example: 11 ± 4 a degree, drift 2', async () => {
    // By hand in test/core/alignment/tyre-spread.test.ts.
    const element = await sheet(OWN, {
      ...hot,
      ...{ changedInner: 88, changedMiddle: 86, changedOuter: 86, againInner: 84, againMiddle: 87, againOuter: 92 },
      ...{ camberFirst: -1, camberChanged: -2, hotRepeat: 2 },
    });
    expect(textOf(find(element, '.aba .told')).replace(/\u202f/g, ' ')).to.match(
      /by \+11 ± 4 °\..*drifted by \+2 ± 4 °/,
    );
  });
});

describe('on paper', () => {
  const FULL: AlignmentSettings = {
    ...{ toeLeft: 0.45, toeRight: -0.2, toeWanted: 0.05, pitch: 1.5, thread: 'pair', toeTolerance: 0.06 },
    ...{ heightLeft: 352, heightRight: 349, heightWanted: 335, heightAfterLeft: 336, heightAfterRight: 334 },
    ...{ camberLeft: -0.65, camberRight: -0.72, camberWanted: -1.58, camberTolerance: 0.15 },
    ...{ hotInner: 80, hotMiddle: 84, hotOuter: 90, treadInner: 4.1, treadMiddle: 5.2, treadOuter: 5.3 },
    ...{ changedInner: 88, changedMiddle: 86, changedOuter: 86, againInner: 84, againMiddle: 87, againOuter: 92 },
    ...{ camberFirst: -1, camberChanged: -2, hotRepeat: 2 },
  };

  it('has everything that was given, and boxes for what is written by hand, though its folds are closed', async () => {
    const element = await sheet(OWN, FULL);
    await emulateMedia({ media: 'print' });
    const paper = find(element, '.paper')!;
    expect(paper.checkVisibility()).to.equal(true);
    expect(find(element, '.alignment')!.checkVisibility()).to.equal(false);
    const text = textOf(paper).replace(/\u202f/g, ' ');
    for (const one of ['352 mm', '349 mm', '335 mm', '336 mm', '334 mm', '+0.45°', '−0.20°', '−0.65°', '−0.72°'])
      expect(text).to.include(one);
    for (const one of ['−1.58° ± 0.15°', '+0.05° ± 0.06°', '+0.10° ± 0.12°', '4.1 mm, 5.2 mm, 5.3 mm', '+11 ± 4 °'])
      expect(text).to.include(one);
    expect(text).to.match(/1\.6 ± 0\.3 mm shorter.*0\.54 ± 0\.11 turns/);
    for (const one of ['Car', 'Date', 'Fuel', 'Tyre pressures', 'Tightened to the maker’s figure', 'After 100 km'])
      expect(text).to.include(one);
    expect(text).to.include('Never under a car on a jack alone');
  });

  it('is one page of A4 with everything filled in', async () => {
    const element = await sheet(OWN, FULL, 703);
    await emulateMedia({ media: 'print' });
    const paper = find(element, '.paper')!;
    // A4 less 12 mm at each edge: 186 × 273 mm, at 96 to the inch.
    paper.style.inlineSize = '703px';
    expect(paper.offsetHeight).to.be.lessThan(1031);
    expect(paper.scrollWidth).to.be.at.most(703);
  });

  it('prints alone, in a frame that goes away, and leaves the page as it was', async () => {
    const element = await sheet(OWN, FULL);
    const { append } = document.body;
    let printed = '';
    document.body.append = function (...nodes) {
      append.apply(this, nodes);
      const { contentWindow } = nodes[0] as HTMLIFrameElement;
      contentWindow!.print = () => {
        printed = textOf(contentWindow!.document.body);
        contentWindow!.dispatchEvent(new Event('afterprint'));
      };
    };
    try {
      find<HTMLButtonElement>(element, '.print-sheet')!.click();
    } finally {
      document.body.append = append;
    }
    expect(printed).to.include('Alignment sheet');
    expect(printed).to.include('Tightened to the maker’s figure');
    expect(document.querySelector('.bumpline-print')).to.equal(null);
  });
});
