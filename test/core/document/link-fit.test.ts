import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { type Fit, MOST_PLACES } from '../../../core/document/fit.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { MOST_STOP_POINTS } from '../../../core/document/link-fit.js';
import { EXAMPLE_SETUP, LONGEST_NAME } from '../../../core/document/setups.js';
import { CORNER_LOAD_KEYS, type CornerLoads, TRAVEL_LIMIT_KEYS } from '../../../core/travel/travel-limits.js';
import { FIXED_TO, type Place } from '../../../core/wheel/place.js';
import type { WheelSpec } from '../../../core/wheel/wheel.js';

const decimal = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: least, max: most }),
    fc.integer({ min: least * 1e6, max: most * 1e6 }).map((n) => n / 1e6 + 0),
  );
const text = fc.oneof(
  fc.constantFrom(
    '205/55R16',
    '205/55 R16 91V',
    'arch lip',
    'Schraube, hinten',
    'a_b~c.d&e=f%2F;//',
    'ä2f€',
    '/2f/',
    '',
  ),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
);
const sparse = <K extends string, V>(keys: readonly K[], value: fc.Arbitrary<V>) =>
  fc.record(Object.fromEntries(keys.map((key) => [key, value])) as Record<K, fc.Arbitrary<V>>, { requiredKeys: [] });
const isFilled = (part: object) => Object.keys(part).length > 0;

const wheel: fc.Arbitrary<WheelSpec> = fc.record(
  {
    size: text,
    rimWidthInch: decimal(3, 14),
    offset: decimal(-100, 120),
    spacer: decimal(0, 60),
    sectionWidth: decimal(100, 400),
    treadWidth: decimal(100, 400),
    shoulderRadius: decimal(0, 60),
    rimProtector: fc.boolean(),
  },
  { requiredKeys: ['size', 'rimWidthInch', 'offset'] },
);
const clock = fc.record(
  {
    clock: decimal(0, 12),
    distance: decimal(0, 500),
    out: decimal(-300, 300),
    from: fc.constantFrom('outer' as const, 'inner' as const),
  },
  { requiredKeys: ['clock', 'distance', 'out'] },
);
const point = fc.record({ point: fc.tuple(decimal(-4000, 4000), decimal(-4000, 4000), decimal(-4000, 4000)) });
const place: fc.Arbitrary<Place> = fc.record(
  {
    name: text,
    fixedTo: fc.constantFrom(...FIXED_TO),
    is: fc.constantFrom('bodywork' as const, 'chassis' as const),
    at: fc.oneof(clock, point),
    plusMinus: decimal(0, 50),
    share: decimal(0, 1),
  },
  { requiredKeys: ['name', 'fixedTo', 'is', 'at'] },
);
const fit: fc.Arbitrary<Fit> = fc.record(
  {
    before: wheel,
    after: wheel,
    places: fc.array(place, { minLength: 1, maxLength: MOST_PLACES }),
    lock: decimal(0, 60),
    marginBodywork: decimal(0, 40),
    marginChassis: decimal(0, 40),
    allowance: decimal(0, 40),
    sideways: decimal(-1, 1),
    camberBy: decimal(-8, 8),
  },
  { requiredKeys: [] },
);
const LIMIT_KEYS = TRAVEL_LIMIT_KEYS.filter((key) => key !== 'stopGap');
const limits = fc
  .tuple(
    sparse(LIMIT_KEYS, decimal(0, 300)),
    sparse(['shaftBump', 'shaftDroop'], decimal(-300, 300)),
    sparse(['stopUsable', 'motionRatio'], decimal(0, 1)),
  )
  .map(([lengths, ways, { stopUsable = 0.5, motionRatio = 1 }]) => ({
    ...lengths,
    ...ways,
    ...('stopUsable' in lengths && { stopUsable }),
    ...('motionRatio' in lengths && { motionRatio }),
  }));
const loads: fc.Arbitrary<CornerLoads> = fc
  .tuple(
    sparse(CORNER_LOAD_KEYS, decimal(0, 1000)),
    fc.array(fc.tuple(decimal(0, 100), decimal(0, 20_000)), { maxLength: MOST_STOP_POINTS }),
    decimal(1, 5),
  )
  .map(([single, stopPoints, factor]) => ({
    ...single,
    ...('loadFactor' in single && { loadFactor: factor }),
    ...(stopPoints.length > 0 && { stopPoints }),
  }));

/** Nothing but what this test is about; `more` is what a car can have beside it. */
const cars: fc.Arbitrary<CarDocument> = fc
  .record({
    limits,
    loads,
    fit,
    more: fc.constantFrom<Partial<CarDocument>>(
      {},
      { givenBy: 'user', given: { points: {}, camber: -1.2 }, stopGap: 12 },
      { givenBy: 'user', by: 'readings', setups: [EXAMPLE_SETUP] },
    ),
  })
  .filter((parts) => [parts.limits, parts.loads, parts.fit].some(isFilled))
  .map(({ more, ...parts }) => ({
    ...EMPTY_CAR,
    ...more,
    ...Object.fromEntries(Object.entries(parts).filter(([, part]) => isFilled(part))),
    fitGivenBy: 'user',
  }));

/** FNV-1a, 32 bit, worked out anew, so that a text can be wrong and still have the check that goes with it. */
function checked(body: string): string {
  let hash = 2166136261n;
  for (const character of body) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return `${body}&check=${hash.toString(36)}`;
}

/** Invented. */
const OWN: CarDocument = {
  ...EMPTY_CAR,
  limits: { stopLength: 60, stopUsable: 0.5, shaftDroop: -80 },
  loads: {
    springRate: 25,
    stopPoints: [
      [10, 400],
      [20, 1200],
    ],
  },
  fit: {
    before: { size: '205/55R16', rimWidthInch: 6.5, offset: 45 },
    after: { size: '225/45 R17', rimWidthInch: 8, offset: 35, spacer: 5, sectionWidth: 230, rimProtector: true },
    places: [
      {
        name: 'arch lip',
        fixedTo: 'body',
        is: 'bodywork',
        at: { clock: 11.5, distance: 330, out: 12 },
        plusMinus: 5,
      },
      {
        name: 'Längslenker',
        fixedTo: 'carrier',
        is: 'chassis',
        at: { clock: 3, distance: 200, out: -8, from: 'inner' },
      },
      { name: 'drop link', fixedTo: 'between', is: 'chassis', at: { point: [0, 640, 300] }, share: 0.4 },
    ],
    lock: 34,
    marginBodywork: 6,
    camberBy: -0.5,
  },
  fitGivenBy: 'user',
};

describe('a link that carries limits, loads, wheels and places', () => {
  it('gives back the same car', () => {
    fc.assert(
      fc.property(cars, (car) => {
        expect(carFromLink(`#${carToLink(car)}`)).toEqual({ ok: true, car });
      }),
      { seed: 91, numRuns: 500, endOnFailure: true },
    );
  });

  it('survives what messengers escape', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const link = carToLink(car);
        expect(link).toMatch(/^[\w.,~=&/-]+$/);
        const sent = link.replaceAll('~', '%7e').replaceAll(',', '%2C').replaceAll('/', '%2F');
        expect(carFromLink(sent)).toEqual({ ok: true, car });
      }),
      { seed: 92, endOnFailure: true },
    );
  });

  it('can be read by people, and is written the same for ever', () => {
    expect(carToLink(OWN)).toBe(
      checked(
        'car=1&corner=front-left&by=driveway&drop=30&stopLength=60&stopUsable=0.5&shaftDroop=-80' +
          '&springRate=25&stopPoints=10,400,20,1200&wheelBefore=205/55R16,6.5,45' +
          '&wheelAfter=225/45.R17,8,35&wheelAfter.spacer=5&wheelAfter.sectionWidth=230&wheelAfter.rimProtector=1' +
          '&place1=arch.lip,body,bodywork,clock,11.5,330,12~5' +
          '&place2=L_e4_ngslenker,carrier,chassis,inner,3,200,-8' +
          '&place3=drop.link,between,chassis,point,0,640,300&place3.share=0.4' +
          '&lock=34&marginBodywork=6&camberBy=-0.5',
      ),
    );
  });

  it('keeps hard points the page’s, and the rest the user’s', () => {
    expect(carFromLink(carToLink(OWN))).toMatchObject({ ok: true, car: { givenBy: 'page', fitGivenBy: 'user' } });
  });

  it('keeps values to six decimals', () => {
    const read = carFromLink(carToLink({ ...OWN, limits: { stopLength: 100 / 3 }, loads: { springRate: 2e-7 } }));
    expect(read.ok && read.car).toMatchObject({ limits: { stopLength: 33.333333 }, loads: { springRate: 0 } });
  });

  it.each(['page', undefined] as const)('leaves out what is not the user’s: %s', (by) => {
    const { fitGivenBy: _, ...rest } = OWN;
    expect(carToLink({ ...rest, ...(by && { fitGivenBy: by }) })).toBe(carToLink(EMPTY_CAR));
  });

  it('says nothing where nothing is given', () => {
    const car: CarDocument = { ...EMPTY_CAR, limits: {}, loads: { stopPoints: [] }, fit: { places: [] } };
    expect(carToLink({ ...car, fitGivenBy: 'user' })).toBe(carToLink(EMPTY_CAR));
    expect(carFromLink(carToLink(EMPTY_CAR))).toEqual({ ok: true, car: EMPTY_CAR });
  });

  it('is refused when a character was changed or lost, or its end is missing', () => {
    const others = fc.oneof(
      fc.constantFrom('0', '7', '-', '&', ',', '~', '/', '.', '%', ''),
      fc.string({ minLength: 1, maxLength: 1 }),
    );
    fc.assert(
      fc.property(cars, fc.nat(), others, (car, place, other) => {
        const link = carToLink(car);
        const at = 4 + (place % (link.length - 4));
        fc.pre(link[at] !== other);
        expect(carFromLink(link.slice(0, at) + other + link.slice(at + 1)).ok).toBe(false);
        expect(carFromLink(link.slice(0, at)).ok).toBe(false);
      }),
      { seed: 93, numRuns: 1000, endOnFailure: true },
    );
  });
});

describe('a link with them whose check is right and whose text is not', () => {
  const head = 'car=1&corner=front-left&by=driveway&drop=30';
  const wheels = `${head}&wheelBefore=205/55R16,6.5,45`;
  const lip = 'A,body,bodywork,clock,11.5,330,12';
  const places = (count: number) => head + Array.from({ length: count }, (_, i) => `&place${i + 1}=${lip}`).join('');
  const points = (count: number) =>
    `${head}&stopPoints=${Array.from({ length: count }, (_, i) => `${i},${i}`).join(',')}`;

  it.each([
    ['a wheel', wheels],
    ['as many places as a car can have', places(MOST_PLACES)],
    ['as many points of a stop', points(MOST_STOP_POINTS)],
    ['the longest name', places(1).replace('=A', `=${'A'.repeat(LONGEST_NAME)}`)],
  ])('is read as far as here: %s', (_, body) => {
    const read = carFromLink(checked(body));
    expect(read.ok && carToLink(read.car)).toBe(checked(body));
  });

  it.each([
    ['a limit that is no number', `${head}&stopLength=long`],
    ['an empty limit', `${head}&stopLength=`],
    ['a limit out of range', `${head}&springBind=4001`],
    ['a share of a stop out of range', `${head}&stopUsable=101`],
    ['a spring rate out of range', `${head}&springRate=100001`],
    ['a lock out of range', `${head}&lock=181`],
    ['a comma for the decimal mark', `${head}&springRate=25,5`],
    ['a limit twice', `${head}&strokeBump=1&strokeBump=1`],
    ['a stop’s compression without a force', `${head}&stopPoints=10,400,20`],
    ['no points of a stop', `${head}&stopPoints=`],
    ['a stop’s force out of range', `${head}&stopPoints=10,100001`],
    ['too many points of a stop', points(MOST_STOP_POINTS + 1)],
    ['a wheel without its offset', `${head}&wheelAfter=205/55R16,6.5`],
    ['a wheel with a figure too many', `${wheels},5`],
    ['a wheel without a size', `${head}&wheelAfter=,6.5,45`],
    ['a size with marks that are not written so', `${head}&wheelAfter=205:55R16,6.5,45`],
    ['a size that is too long', `${head}&wheelAfter=${'/'.repeat(LONGEST_NAME + 1)},6.5,45`],
    ['a spacer without a wheel', `${wheels}&wheelAfter.spacer=5`],
    ['a spacer that is none', `${wheels}&wheelBefore.spacer=thick`],
    ['something unknown of a wheel', `${wheels}&wheelBefore.colour=1`],
    ['a rib that is neither there nor not', `${wheels}&wheelBefore.rimProtector=yes`],
    ['an empty rib', `${wheels}&wheelBefore.rimProtector=`],
    ['too many places', places(MOST_PLACES + 1)],
    ['a place out of turn', places(1).replace('place1', 'place2')],
    ['a name that is too long', places(1).replace('=A', `=${'A'.repeat(LONGEST_NAME + 1)}`)],
    ['a name beyond Unicode', places(1).replace('=A', '=_110000_')],
    ['a place without a name', places(1).replace('=A', '=')],
    ['a place fixed to something unknown', places(1).replace('body,', 'bonnet,')],
    ['a place that is neither bodywork nor chassis', places(1).replace('bodywork', 'glass')],
    ['a place measured in an unknown way', places(1).replace('clock', 'about')],
    ['a place with a figure too few', places(1).replace(',12', '')],
    ['a place with a figure too many', `${places(1)},1`],
    ['a distance out of range', places(1).replace('330', '4001')],
    ['a negative ±', `${places(1)}~-5`],
    ['two ±', `${places(1)}~5~5`],
    ['an empty ±', `${places(1)}~`],
    ['a share that is none', `${places(1)}&place1.share=half`],
    ['a share without a place', `${places(1)}&place2.share=0.5`],
    ['something unknown of a place', `${places(1)}&place1.x=1`],
  ])('%s: damaged', (_, body) => {
    expect(carFromLink(checked(body))).toEqual({ ok: false, reason: 'damaged' });
  });

  it('never throws, and a car that comes back is written as it was read', () => {
    const key = fc.constantFrom(
      'stopLength',
      'motionRatio',
      'loadFactor',
      'stopPoints',
      'wheelBefore',
      'wheelBefore.spacer',
      'wheelBefore.rimProtector',
      'place1',
      'place2',
      'place1.share',
      'lock',
      '__proto__',
    );
    const value = fc.oneof(
      fc.string(),
      fc.constantFrom('0', '-0', '1', '1,2', '_2f_,1,2', '/%2f,1,-2', lip, `${lip}~1`, '__,tieRod,chassis,point,1,2,3'),
    );
    let good = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(key, value).map((pair) => `&${pair.join('=')}`)), (more) => {
        const read = carFromLink(checked(head + more.join('')));
        if (!read.ok) return;
        good++;
        expect(carFromLink(carToLink(read.car))).toEqual(read);
      }),
      { seed: 94, numRuns: 3000, endOnFailure: true },
    );
    expect(good).toBeGreaterThan(100);
  });
});
