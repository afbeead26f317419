import { expect } from 'chai';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';
import type { BumplineCompare } from '../../../components/bumpline-compare/bumpline-compare.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';
import type { BumplineReadings } from '../../../components/bumpline-readings/bumpline-readings.js';
import { CarModel } from '../../../components/car/car-model.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { find, referenceCorner, referenceTable, root, type, wait } from '../bumpline-lowering/set-up.js';

type Sheet = BumplineLowering | BumplineReadings | BumplineCompare | BumplineClearance;

let place: HTMLElement | undefined;

/** Every element of some markup, settled. What a page's script hands over comes after the first answer, as frameworks do it. */
async function put(markup: string, hand: (element: never) => void = () => {}): Promise<Sheet[]> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = markup;
  document.body.append(place);
  return settled(hand);
}

async function settled(hand: (element: never) => void = () => {}): Promise<Sheet[]> {
  const elements = [
    ...place!.querySelectorAll<Sheet>('bumpline-lowering, bumpline-readings, bumpline-compare, bumpline-clearance'),
  ];
  for (const element of elements) await element.settled;
  hand(elements[0] as never);
  await wait(20);
  for (const element of elements) await element.settled;
  return elements;
}

/** Text of all that an element draws itself: without its fields' values, labels of units, cautions and what is wrong. */
function drawn(element: Sheet): string {
  const sheet = root(element).querySelector('.sheet')!.cloneNode(true) as Element;
  for (const part of sheet.querySelectorAll('.problems, .queries, select, .cautions, style, .note, .visually-hidden'))
    part.remove();
  return sheet.textContent!.replace(/\s+/g, ' ').trim();
}

/** No number of any car: not in sentence, head, lists, chart, drawing. Balloons of a list count its rows. */
function expectNothing(element: Sheet, path: string): void {
  const name = element.localName;
  expect(element.state, name).to.equal('problem');
  expect(element.answer, `${name}: answer`).to.equal(undefined);
  expect(
    element.problems.map((problem) => problem.path),
    name,
  ).to.include(path);
  const text = drawn(element).replace(/^.*?(?=·)/, '');
  // Of what the page itself gave, its own figures may stand: those of the corner handed over whole, of wheels and places.
  for (const row of root(element).querySelectorAll('.input-row:not(.yours) .value')) {
    expect(row.textContent, `${name}: ${row.parentElement!.textContent}`).not.to.match(/\d/);
  }
  const withoutRows = text.replace(/\d(?=[A-Z])/g, '');
  const { sentence } = { sentence: find(element, '.sentence').textContent! };
  expect(sentence, name).to.match(/no answer yet/i);
  expect(withoutRows, name).not.to.match(
    /\d\.\d+°|−\d|±|\bBefore\b|Last answer|\bExample\b|\bcounts\b|yours\b|(?<!not )\bgiven\b/,
  );
  expect(root(element).querySelector('.before'), name).to.equal(null);
  expect(root(element).querySelectorAll('.drawing, .chart, svg.section, table.numbers, .slider'), name).to.have.length(
    0,
  );
  expect(find(element, '#problems').checkVisibility(), name).to.equal(true);
}

const misspelt = referenceTable.replace('Top mount', 'Top moutn');
const foreign =
  '<table><tr><th>Service</th><th>Price</th></tr><tr><td>Alignment</td><td>90</td></tr><tr><td>Bushes</td><td>240</td></tr></table>';
const marked = referenceTable.replace('<td>700</td>', '<td>700*</td>');
const impossible = { ...referenceCorner, lowerArm: { ...referenceCorner.lowerArm, ball: [-5, 300, 185] } };
const cells = (rows: string[][]) =>
  `<table><tr><th>Travel (mm)</th><th>Standard (°)</th><th>Lowered (°)</th></tr>${rows
    .map((row) => `<tr>${row.map((text) => `<td>${text}</td>`).join('')}</tr>`)
    .join('')}</table>`;
const ROWS = [-40, -20, 0, 20, 40, 60].map((t) => [String(t), String(-0.012 * t), String(-0.016 * t)]);
const readable = cells(ROWS);
const oneBad = cells(ROWS.map((row, i) => (i === 2 ? ['0', '0.0 [1]', '0'] : row)));
const tooFew = cells(ROWS.slice(0, 2));
const json = (text: string) => `<script type="application/json">${text}</script>`;

interface Case {
  name: string;
  markup: string;
  path: string;
  hand?: (element: never) => void;
}

const LOWERING: Case[] = [
  { name: 'a misspelt row', markup: `<bumpline-lowering>${misspelt}</bumpline-lowering>`, path: 'Top moutn' },
  {
    name: 'a foreign table first',
    markup: `<bumpline-lowering>${foreign}${referenceTable}</bumpline-lowering>`,
    path: 'Alignment',
  },
  { name: 'an unreadable cell', markup: `<bumpline-lowering>${marked}</bumpline-lowering>`, path: 'lowerArm.ball.1' },
  {
    name: 'bad JSON',
    markup: `<bumpline-lowering>${json('{"kind": "strut",')}</bumpline-lowering>`,
    path: 'JSON script',
  },
  {
    name: 'JSON of another thing',
    markup: `<bumpline-lowering>${json('[1, 2, 3]')}</bumpline-lowering>`,
    path: 'kind',
  },
  {
    name: 'a corner that is a text',
    markup: '<bumpline-lowering></bumpline-lowering>',
    path: 'corner',
    hand: (element: BumplineLowering) => {
      element.corner = '{"kind":"strut"}';
    },
  },
  {
    name: 'an impossible linkage',
    markup: '<bumpline-lowering></bumpline-lowering>',
    path: 'lowerArm.ball',
    hand: (element: BumplineLowering) => {
      element.corner = impossible;
    },
  },
  {
    name: 'an impossible linkage after a possible one',
    markup: `<bumpline-lowering>${referenceTable}</bumpline-lowering>`,
    path: 'lowerArm.ball',
    hand: (element: BumplineLowering) => {
      element.corner = impossible;
    },
  },
  {
    name: 'a curve that is none',
    markup: '<bumpline-lowering></bumpline-lowering>',
    path: 'domain',
    hand: (element: BumplineLowering) => {
      element.curve = { kind: 'polynomial' } as never;
    },
  },
  {
    name: 'coefficients that are none',
    markup: '<bumpline-lowering coefficients="-0.5 steep" domain="-60 80"></bumpline-lowering>',
    path: 'coefficients.1',
  },
  {
    name: 'a domain that is none',
    markup: '<bumpline-lowering coefficients="-0.5 -0.01" domain="-60"></bumpline-lowering>',
    path: 'domain',
  },
  { name: 'a drop that is none', markup: '<bumpline-lowering drop="3 furlongs"></bumpline-lowering>', path: 'drop' },
  {
    name: 'bump travel that is none',
    markup: `<bumpline-lowering bump-travel="plenty">${referenceTable}</bumpline-lowering>`,
    path: 'bumpTravel',
  },
  {
    name: 'limits that are none',
    markup: `<bumpline-lowering limits="stop-gap 22; stop-lenght 50">${referenceTable}</bumpline-lowering>`,
    path: 'limits',
  },
  {
    name: 'a set of parts that nobody has',
    markup: `<bumpline-car><bumpline-lowering setup="Lowerd"></bumpline-lowering><bumpline-compare>${readable}</bumpline-compare></bumpline-car>`,
    path: 'setup',
  },
];

const MORE: Case[] = [
  {
    name: 'JSON that is nothing',
    markup: `<bumpline-lowering>${json('null')}</bumpline-lowering>`,
    path: 'JSON script',
  },
  { name: 'an empty table', markup: '<bumpline-lowering><table></table></bumpline-lowering>', path: 'table' },
  {
    name: 'a height of zero that is none',
    markup: `<bumpline-readings><table data-zero="low"><tr><th>Hub to arch (mm)</th><th>Camber</th></tr>${[380, 370, 360, 350].map((height) => `<tr><td>${height}</td><td>${height / 100}</td></tr>`).join('')}</table></bumpline-readings>`,
    path: 'data-zero',
  },
  { name: 'an empty table', markup: '<bumpline-readings><table></table></bumpline-readings>', path: 'readings' },
  { name: 'an empty table', markup: '<bumpline-compare><table></table></bumpline-compare>', path: 'readings' },
  {
    name: 'places that are a text',
    markup: `<bumpline-clearance>${json('{"fit": {"places": "x"}}')}</bumpline-clearance>`,
    path: 'places',
  },
  {
    name: 'a place that is nothing',
    markup: `<bumpline-clearance>${json('{"fit": {"places": [null]}}')}</bumpline-clearance>`,
    path: 'places.0',
  },
  {
    name: 'a drop that is a list',
    markup: `<bumpline-clearance>${json('{"drop": [1]}')}</bumpline-clearance>`,
    path: 'drop',
  },
  ...(['lowering', 'readings', 'compare', 'clearance'] as const).map((name) => ({
    name: `a car that is none, ${name}`,
    markup: `<bumpline-${name}></bumpline-${name}>`,
    path: 'car',
    hand: (element: BumplineLowering) => {
      element.car = {} as never;
    },
  })),
  {
    name: 'a car of a build that knew no provenance',
    markup: '<bumpline-lowering></bumpline-lowering>',
    path: 'car',
    hand: (element: BumplineLowering) => {
      const { provenance: _, ...old } = EMPTY_CAR;
      element.car = new CarModel({ ...old, givenBy: 'user' } as never);
    },
  },
  {
    name: 'a shared car that is none',
    markup: '<bumpline-car><bumpline-lowering></bumpline-lowering></bumpline-car>',
    path: 'car',
    hand: () => {
      (document.querySelector('bumpline-car') as { car: unknown } & Element).car = 'car';
    },
  },
];

const READINGS: Case[] = [
  { name: 'an unreadable cell', markup: `<bumpline-readings>${oneBad}</bumpline-readings>`, path: 'table.3.1' },
  {
    name: 'a foreign table first',
    markup: `<bumpline-readings>${foreign}${readable}</bumpline-readings>`,
    path: 'camber',
  },
  {
    name: 'a table of hard points',
    markup: `<bumpline-readings>${referenceTable}</bumpline-readings>`,
    path: 'table.1.2',
  },
  { name: 'too few readings', markup: `<bumpline-readings>${tooFew}</bumpline-readings>`, path: 'readings' },
  {
    name: 'JSON, which it does not take',
    markup: `<bumpline-readings>${json('{"readings": []}')}</bumpline-readings>`,
    path: 'JSON script',
  },
  {
    name: 'readings that are a text',
    markup: '<bumpline-readings></bumpline-readings>',
    path: 'readings',
    hand: (element: BumplineReadings) => {
      element.readings = '[1]' as never;
    },
  },
  {
    name: 'readings without a value',
    markup: '<bumpline-readings></bumpline-readings>',
    path: 'readings.1.value',
    hand: (element: BumplineReadings) => {
      element.readings = [
        { travel: 0, value: 0 },
        { travel: 10 } as never,
        { travel: 20, value: 1 },
        { travel: 30, value: 1 },
      ];
    },
  },
  {
    name: 'a quantity that is none',
    markup: `<bumpline-readings quantity="tow">${readable}</bumpline-readings>`,
    path: 'quantity',
  },
  {
    name: 'a degree that is none',
    markup: `<bumpline-readings degree="two">${readable}</bumpline-readings>`,
    path: 'degree',
  },
  {
    name: 'a travel that is none',
    markup: `<bumpline-readings over="far">${readable}</bumpline-readings>`,
    path: 'over',
  },
];

const COMPARE: Case[] = [
  { name: 'an unreadable cell', markup: `<bumpline-compare>${oneBad}</bumpline-compare>`, path: 'table.3.1' },
  {
    name: 'a foreign table first',
    markup: `<bumpline-compare>${foreign}${readable}</bumpline-compare>`,
    path: 'camber',
  },
  { name: 'too few readings', markup: `<bumpline-compare>${tooFew}</bumpline-compare>`, path: 'readings' },
  {
    name: 'JSON, which it does not take',
    markup: `<bumpline-compare>${json('{}')}</bumpline-compare>`,
    path: 'JSON script',
  },
  {
    name: 'sets that are a text',
    markup: '<bumpline-compare></bumpline-compare>',
    path: 'setups',
    hand: (element: BumplineCompare) => {
      element.setups = 'sets' as never;
    },
  },
  {
    name: 'a set without readings',
    markup: '<bumpline-compare></bumpline-compare>',
    path: 'setups.1',
    hand: (element: BumplineCompare) => {
      element.setups = [EXAMPLE_SETUPS[0]!, { name: 'Bad' } as never];
    },
  },
  {
    name: 'a curve that is none',
    markup: '<bumpline-compare></bumpline-compare>',
    path: 'curves.0.kind',
    hand: (element: BumplineCompare) => {
      element.curves = [{ name: 'Bad', curve: { quantity: 'camber', domain: [-60, 60], sources: [] } as never }];
    },
  },
  {
    name: 'heights that are none',
    markup: `<bumpline-compare heights="0, deep">${readable}</bumpline-compare>`,
    path: 'heights.1',
  },
  { name: 'a bump that is none', markup: `<bumpline-compare over="far">${readable}</bumpline-compare>`, path: 'over' },
];

const PLACES =
  '"places":[{"name":"arch lip","fixedTo":"body","is":"bodywork","at":{"clock":12,"distance":365,"out":20}}]';
const CLEARANCE: Case[] = [
  { name: 'bad JSON', markup: `<bumpline-clearance>${json('{"fit": ')}</bumpline-clearance>`, path: 'JSON script' },
  {
    name: 'a misspelt name in JSON',
    markup: `<bumpline-clearance>${json(`{"fits": {${PLACES}}}`)}</bumpline-clearance>`,
    path: 'JSON script',
  },
  {
    name: 'a misspelt name in its wheels',
    markup: `<bumpline-clearance>${json(`{"fit": {${PLACES.replace('places', 'place')}}}`)}</bumpline-clearance>`,
    path: 'fit',
  },
  {
    name: 'a misspelt limit',
    markup: `<bumpline-clearance>${json('{"limits": {"stopgap": 20}}')}</bumpline-clearance>`,
    path: 'limits',
  },
  { name: 'a foreign table', markup: `<bumpline-clearance>${foreign}</bumpline-clearance>`, path: 'Alignment' },
  {
    name: 'a table of points, which it does not read',
    markup: `<bumpline-clearance>${referenceTable}</bumpline-clearance>`,
    path: 'table',
  },
  {
    name: 'a place that is none',
    markup: `<bumpline-clearance>${json(`{"fit": {${PLACES.replace('365', '"far"')}}}`)}</bumpline-clearance>`,
    path: 'places.0.at.distance',
  },
  {
    name: 'a fit that is a text',
    markup: '<bumpline-clearance></bumpline-clearance>',
    path: 'fit',
    hand: (element: BumplineClearance) => {
      element.fit = 'wide' as never;
    },
  },
  {
    name: 'a place that comes later and is none',
    markup: '<bumpline-clearance></bumpline-clearance>',
    path: 'places.0.at.clock',
    hand: (element: BumplineClearance) => {
      element.fit = JSON.parse(`{${PLACES.replace('12', '14')}}`);
    },
  },
  {
    name: 'a wheel that is none',
    markup: '<bumpline-clearance wheel-after="225/45R17, wide, 35"></bumpline-clearance>',
    path: 'after.rimWidthInch',
  },
  {
    name: 'a tyre size that is none',
    markup: '<bumpline-clearance wheel-after="big, 7.5, 35"></bumpline-clearance>',
    path: 'after.size',
  },
  { name: 'a lock that is none', markup: '<bumpline-clearance lock="full"></bumpline-clearance>', path: 'lock' },
  { name: 'a drop that is none', markup: '<bumpline-clearance drop="low"></bumpline-clearance>', path: 'drop' },
];

describe('a page’s data with a mistake in it is a problem, and no number of another car is shown', () => {
  for (const [element, all] of Object.entries({
    lowering: LOWERING,
    readings: READINGS,
    compare: COMPARE,
    clearance: CLEARANCE,
    more: MORE,
  })) {
    for (const { name, markup, path, hand } of all) {
      it(`${element}: ${name}`, async () => {
        const [first] = await put(markup, hand);
        expectNothing(first!, path);
      });
    }
  }

  it('stays so for every element that shares the car', async () => {
    const elements = await put(
      `<bumpline-car><bumpline-lowering>${misspelt}</bumpline-lowering><bumpline-clearance></bumpline-clearance></bumpline-car>`,
    );
    for (const element of elements) expectNothing(element, 'Top moutn');
    const readings = await put(
      `<bumpline-car><bumpline-readings>${oneBad}</bumpline-readings><bumpline-lowering></bumpline-lowering><bumpline-compare></bumpline-compare><bumpline-clearance></bumpline-clearance></bumpline-car>`,
    );
    for (const element of readings) expectNothing(element, 'table.3.1');
  });

  it('is over as soon as the page mends it, in every element that shares the car', async () => {
    const elements = await put(
      `<bumpline-car><bumpline-lowering>${misspelt}</bumpline-lowering><bumpline-clearance></bumpline-clearance></bumpline-car>`,
    );
    elements[0]!.querySelectorAll('th').forEach((cell) => {
      if (cell.textContent === 'Top moutn') cell.textContent = 'Top mount';
    });
    await wait(20);
    await settled();
    expect(elements.map(({ state }) => state)).to.deep.equal(['ready', 'incomplete']);
    expect(elements[0]!.problems).to.deep.equal([]);
  });

  it('leaves the way free for a reader’s own car', async () => {
    const [element] = await put(`<bumpline-lowering>${misspelt}</bumpline-lowering>`);
    find<HTMLDetailsElement>(element!, '.inputs').open = true;
    [...root(element!).querySelectorAll<HTMLElement>('.input-row')]
      .find((row) => row.textContent!.includes('How camber is worked out') || row.querySelector('.name'))!
      .click();
    await wait(0);
    await element!.settled;
    find<HTMLInputElement>(element!, 'dialog input[value=driveway]').click();
    find<HTMLDialogElement>(element!, 'dialog').close();
    await settled();
    const row = [...root(element!).querySelectorAll<HTMLElement>('.input-row')].find((one) =>
      one.textContent!.includes('Lower arm length'),
    )!;
    row.click();
    await wait(0);
    await element!.settled;
    await type(root(element!).querySelector<HTMLInputElement>('dialog .fields input')!, '352');
    await settled();
    expect(element!.state).to.equal('incomplete');
    expect(element!.problems).to.deep.equal([]);
    expect(find(element!, '.owner').textContent).to.equal('1 of 6 are yours');
  });

  it('and a page’s own words are not shown under a car that came with the address', async () => {
    const [element] = await put('<bumpline-lowering drop="30"><p>Lowering 30 mm adds 0.40°.</p></bumpline-lowering>');
    const model = (
      element as unknown as { app: { model: { update: (label: string, recipe: (car: object) => object) => void } } }
    ).app.model;
    model.update('own', (car) => ({
      ...car,
      provenance: { corner: { by: 'user' } },
      by: 'points',
      whole: undefined,
      given: { points: { 'lowerArm.ball': [-5, 300, 185] } },
    }));
    await settled();
    expect(element!.querySelector('p')!.checkVisibility()).to.equal(false);
  });
});

describe('points that a page leaves out', () => {
  it('are the example’s, and the sentence says so', async () => {
    const [element] = await put(
      `<bumpline-lowering>${referenceTable.replace(/<tr><th>(?:Top mount|Static camber).*?<\/tr>/gs, '')}</bumpline-lowering>`,
    );
    expect(element!.state).to.equal('incomplete');
    expect(find(element!, '.sentence').textContent).to.match(/But 1 point of this is\s+still the example’s\./);
    const [whole] = await put(
      `<bumpline-lowering>${referenceTable.replace(/<tr><th>Static camber.*?<\/tr>/gs, '')}</bumpline-lowering>`,
    );
    expect(find(whole!, '.owner').textContent).to.equal('this page’s points, camber the example’s');
  });
});
