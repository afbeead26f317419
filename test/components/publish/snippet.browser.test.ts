import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { SNIPPET_TAGS } from '../../../components/publish/relevant.js';
import { divSnippetOf, type SnippetTag, snippetOf } from '../../../components/publish/snippet.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { byUser } from '../../../core/document/own-car.js';
import type { Setup } from '../../../core/document/setup.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { toeOfPair } from '../../../core/readings/over-base.js';
import { clear, put, type Sheet, settled } from '../contract/stage.js';
import { referenceCorner } from '../reference-corner.js';

/*
 * An element on somebody's page, fed with the snippet of a car, answers what it answers where that car is edited.
 */

const user = (more: Partial<CarDocument>): CarDocument => byUser({ ...EMPTY_CAR, ...more });
const { camber, ...measures } = EXAMPLE_DRIVEWAY;
const { stopGap, ...limits } = EXAMPLE_LIMITS;
const [stock, lowered] = EXAMPLE_SETUPS as [Setup, Setup];
const joint: Setup = {
  ...stock,
  name: 'Joint 18 mm lower',
  readings: [],
  parts: [{ part: 'ballJointExtended', mm: 18, correctTieRod: true }],
};
const overBase = { by: 'dials', base: 300, front: 'inboard' } as const;
const toe: Setup = {
  ...stock,
  name: 'Two dials',
  quantity: 'toe',
  overBase,
  readings: [-40, -20, 0, 20, 40, 60].map((travel) => {
    const pair = [3 + travel / 100, 3 - travel / 250] as const;
    return { travel, value: toeOfPair(pair, overBase), pair };
  }),
};
const own = { by: 'points', ...takeCorner(referenceCorner), drop: 27 } as const;
const measured = { given: { points: {}, measures, camber: camber!.value }, drop: 22.5 };

/** Own hard points, the driveway, readings, sets of parts, wheels with places, and what else is asked of each. */
const CARS: Readonly<Record<string, CarDocument>> = {
  'own hard points': user({ ...own, bumpTravel: 58, stopGap: stopGap!, limits }),
  'a driveway, measured on a lowered car': user({
    ...measured,
    measuredAt: 10,
    lowered: 'springs',
    other: { drop: 30, camber: -1 },
  }),
  'a driveway alone': user(measured),
  'readings of two sets': user({
    by: 'readings',
    setups: [stock, { ...lowered, doubts: { gaugeScale: 3 } }],
    drop: 20,
  }),
  'readings of one set': user({ by: 'readings', setups: [stock], readingsOver: 20 }),
  'hard points, readings and a joint that is fitted': user({ ...own, setups: [stock, joint], fitted: 1 }),
  'measurements that readings correct': user({ ...measured, setups: [stock, joint], links: 'learnt' }),
  'toe by two dials': user({ by: 'readings', setups: [toe], toe: { over: 35 } }),
  'wheels, places and limits': user({ ...own, fit: EXAMPLE_FITMENT, stopGap: stopGap!, limits }),
  'two wheels': user({ ...measured, fit: { before: EXAMPLE_FITMENT.before, after: EXAMPLE_FITMENT.after } }),
  'a turn, costs and camber to add': user({
    ...own,
    turn: { rollFrom: 'load', load: { lateral: 0.8, centreHeight: 520, sprungMass: 600, springRate: 28 } },
    camberAdded: { by: -1.5, over: 30, sortBy: 'bumpSteer' },
    compare: { heights: [0, 15, 30], over: 35, show: 'toeChange' },
    leastCost: { joint: 20, leastBump: 35 },
  }),
};

/** Reading by reading: their order in a table is another. And whose it is: the page's. */
const LEFT_ASIDE = ['residuals', 'studentised', 'ofReading', 'used', 'by'];

/** To eight figures: a table has six places of what a car holds. */
const rounded = (answer: unknown): unknown =>
  JSON.parse(JSON.stringify(answer ?? null), (key, value) => {
    if (LEFT_ASIDE.includes(key)) return undefined;
    return typeof value === 'number' ? Number(value.toPrecision(8)) : value;
  });

async function edited(tag: SnippetTag, car: CarDocument): Promise<Sheet> {
  await put(tag, '<p></p>');
  const element = document.createElement(tag) as unknown as Sheet;
  element.car = new CarModel(car);
  // Not of the example before.
  document.querySelector('main p')!.replaceWith(element);
  await settled(element);
  return element;
}

const said = (element: Sheet) => ({
  answer: rounded(element.answer),
  state: element.state,
  problems: element.problems.map(({ path }) => path),
});

describe('an element fed with a snippet answers as where the car is edited', function () {
  this.timeout(90_000);
  afterEach(clear);

  for (const tag of SNIPPET_TAGS) {
    for (const [name, car] of Object.entries(CARS)) {
      it(`${tag}: ${name}`, async () => {
        const before = said(await edited(tag, car));
        const { html, by } = snippetOf({ tag, car });
        const [element] = (await put(tag, html)) as [Sheet];
        const after = said(element);
        expect(after.problems, `${by}\n${html}`).to.deep.equal(before.problems);
        expect(after, html).to.deep.equal(before);
      });
    }
  }

  it('what a div says without scripts is read by the element that takes its place', async () => {
    const { html } = divSnippetOf({ tag: 'bumpline-lowering', car: CARS['own hard points']! });
    const asElement = html
      .replace(/^<div data-bumpline="lowering"/, '<bumpline-lowering')
      .replace(/ data-(?!example)([a-z-]+=)/g, ' $1')
      .replace(/<\/div>$/, '</bumpline-lowering>');
    const [element] = (await put('bumpline-lowering', asElement)) as [Sheet];
    const after = said(element);
    const before = said(await edited('bumpline-lowering', CARS['own hard points']!));
    expect(after).to.deep.equal(before);
  });
});
