import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import type { Setup } from '../../../core/document/setup.js';
import { LONGEST_NAME } from '../../../core/document/setup-in-use.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import type { Reading } from '../../../core/readings/reading.js';
import { readCars as cars, USERS } from './random-setups.js';

const own = (setups: readonly Setup[]): CarDocument => ({ ...EMPTY_CAR, by: 'readings', provenance: USERS, setups });

/** FNV-1a, 32 bit, worked out anew, so that a text can be wrong and still have the check that goes with it. */
function checked(body: string): string {
  let hash = 2166136261n;
  for (const character of body) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return `${body}&check=${hash.toString(36)}`;
}

describe('a link that carries readings', () => {
  it('gives back the same sets, their readings in their order', () => {
    fc.assert(
      fc.property(cars, (car) => {
        expect(carFromLink(`#${carToLink(car)}`)).toEqual({ ok: true, car });
      }),
      { seed: 81, numRuns: 500, endOnFailure: true },
    );
  });

  it('needs no escaping, and survives what messengers escape all the same', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const link = carToLink(car);
        expect(link).toMatch(/^[\w.,~=&-]+$/);
        const sent = link.replaceAll('~', '%7E').replaceAll(',', '%2C');
        expect(carFromLink(sent)).toEqual({ ok: true, car });
      }),
      { seed: 82, endOnFailure: true },
    );
  });

  it('can be read by people, and is written the same for ever', () => {
    const readings: Reading[] = [
      ...[-10, -5, 0, 5].map((travel, i) => ({ travel, value: -0.5 - i / 10, pass: 'Pass 1', going: 'up' as const })),
      { travel: 12.5, value: -1, pass: 'Pass 1', going: 'up', body: 3 },
      { travel: 0, value: -0.6, pass: 'Pass 2' },
    ];
    const car = own([
      { name: 'Standard arms', cornerName: 'Rear left', quantity: 'camber', readings, setAside: [4], degree: 2 },
      { name: 'Längslenker', cornerName: 'Front left', quantity: 'toe', readings: [], zeroAt: 20 },
    ]);
    expect(carToLink({ ...car, setup: 1 })).toBe(
      'car=1&corner=front-left&by=readings&drop=30' +
        '&setup1=Standard.arms&setup1.at=rear-left&setup1.degree=2' +
        '&setup1.p1=Pass.1~up~-10to5by5,12.5~-0.5,-0.6,-0.7,-0.8,-1~,,,,3&setup1.p2=Pass.2~~0~-0.6&setup1.aside=4' +
        '&setup2=L_e4_ngslenker&setup2.at=front-left&setup2.read=toe&setup2.zeroAt=20&setup=2&check=1llp9i5',
    );
  });

  it('holds 49 readings of three passes in less than 600 characters, entered pass by pass or across', () => {
    const { readings } = EXAMPLE_SETUP;
    const across = [...readings].sort((a, b) => a.travel - b.travel || a.pass!.localeCompare(b.pass!));
    for (const entered of [readings, across]) {
      const car = own([{ ...EXAMPLE_SETUP, name: 'Standard arms', readings: entered }]);
      const link = carToLink(car);
      expect(link.length).toBeLessThan(600);
      expect(carFromLink(link)).toEqual({ ok: true, car });
    }
  });

  it('keeps values to six decimals', () => {
    const readings = [{ travel: 1 / 3, value: -2 / 3 }];
    const read = carFromLink(carToLink(own([{ ...EXAMPLE_SETUP, readings }])));
    expect(read.ok && read.car.setups![0]!.readings).toEqual([{ travel: 0.333333, value: -0.666667 }]);
  });

  it('leaves out those of a page', () => {
    const car: CarDocument = { ...EMPTY_CAR, setups: [EXAMPLE_SETUP], provenance: { setups: { by: 'page' } } };
    expect(carToLink(car)).not.toContain('setup');
  });

  it('is refused when a character was changed or lost', () => {
    fc.assert(
      fc.property(cars, fc.nat(), fc.constantFrom('0', '7', '-', '&', ',', '~', ''), (car, place, other) => {
        const link = carToLink(car);
        const at = 4 + (place % (link.length - 4));
        fc.pre(link[at] !== other);
        expect(carFromLink(link.slice(0, at) + other + link.slice(at + 1)).ok).toBe(false);
      }),
      { seed: 83, numRuns: 500, endOnFailure: true },
    );
  });
});

describe('a link with readings whose check is right and whose text is not', () => {
  const head = 'car=1&corner=front-left&by=readings&drop=30&setup1=A&setup1.at=front-left';
  const body = `${head}&setup1.p1=~~-5to5by5~1,2,3`;
  it('is read as far as here', () => {
    expect(carFromLink(checked(`${body}&setup=1`))).toMatchObject({
      ok: true,
      car: {
        setups: [
          {
            readings: [
              { travel: -5, value: 1 },
              { travel: 0, value: 2 },
              { travel: 5, value: 3 },
            ],
          },
        ],
      },
    });
  });

  it.each([
    ['no set in use', body],
    ['a set in use that is not there', `${body}&setup=2`],
    ['a set in use but no set', 'car=1&corner=front-left&by=readings&drop=30&setup=1'],
    ['a set without a corner', 'car=1&corner=front-left&by=readings&drop=30&setup1=A&setup=1'],
    ['a set that is out of turn', `${body.replaceAll('setup1', 'setup2')}&setup=1`],
    ['a value too few', `${head}&setup1.p1=~~-5to5by5~1,2&setup=1`],
    ['a value that is none', `${head}&setup1.p1=~~1~x&setup=1`],
    ['a value out of range', `${head}&setup1.p1=~~1~181&setup=1`],
    ['a height out of range', `${head}&setup1.p1=~~4001~1&setup=1`],
    ['steps that miss their end', `${head}&setup1.p1=~~-5to6by5~1,2,3&setup=1`],
    ['steps of nothing', `${head}&setup1.p1=~~-5to5by0~1,2,3&setup=1`],
    ['steps that never end', `${head}&setup1.p1=~~-4000to4000by0.000001~1&setup=1`],
    ['an unknown way', `${head}&setup1.p1=~left~1~1&setup=1`],
    ['a part too many', `${head}&setup1.p1=~~1~1~1~1&setup=1`],
    ['a degree that is no whole number', `${body}&setup1.degree=2.5&setup=1`],
    ['somebody unknown whose set it is', `${body}&setup1.from=me&setup=1`],
    ['an unknown quantity', `${body}&setup1.read=caster&setup=1`],
    ['a reading set aside that is not there', `${body}&setup1.aside=3&setup=1`],
    ['a reading set aside twice', `${body}&setup1.aside=1,1&setup=1`],
    ['an order that is too short', `${body}&setup1.order=aa&setup=1`],
    ['an order of passes that are not there', `${body}&setup1.order=aab&setup=1`],
    ['a name beyond Unicode', `${body.replace('=A', '=_110000_')}&setup=1`],
    ['a name that is too long', `${body.replace('=A', `=${'A'.repeat(LONGEST_NAME + 1)}`)}&setup=1`],
  ])('%s: damaged', (_, text) => {
    expect(carFromLink(checked(text))).toEqual({ ok: false, reason: 'damaged' });
  });

  it('never throws, and a car that comes back is written as it was read', () => {
    const keys = [
      'p1',
      'p2',
      'order',
      'aside',
      'degree',
      'zeroAt',
      'read',
      'from',
      'gaugeScale',
      'zeroHeight',
    ] as const;
    const key = fc.constantFrom(...keys);
    const value = fc.oneof(
      fc.string(),
      fc.constantFrom('~~1~1', 'A~up~0to9by3~1,2,3,4', 'a', 'ab', '0', '1', '0,1', 'toe', '__~~1,1~1,1~,2'),
    );
    const pairs = fc.array(fc.tuple(key, value).map((pair) => `&setup1.${pair.join('=')}`));
    fc.assert(
      fc.property(pairs, (more) => {
        const read = carFromLink(checked(`${head + more.join('')}&setup=1`));
        if (read.ok) expect(carFromLink(carToLink(read.car))).toEqual(read);
      }),
      { seed: 84, numRuns: 3000, endOnFailure: true },
    );
  });
});
