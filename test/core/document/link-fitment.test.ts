import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { fittedCars as cars } from './random-fitments.js';

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
  provenance: { fit: { by: 'user' }, drop: { by: 'user' }, way: { by: 'user' } },
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
    expect(carFromLink(carToLink(OWN))).toMatchObject({ ok: true, car: { provenance: OWN.provenance } });
  });

  it('keeps values to six decimals', () => {
    const read = carFromLink(carToLink({ ...OWN, limits: { stopLength: 100 / 3 }, loads: { springRate: 2e-7 } }));
    expect(read.ok && read.car).toMatchObject({ limits: { stopLength: 33.333333 }, loads: { springRate: 0 } });
  });

  it.each(['page', undefined] as const)('leaves out what is not the user’s: %s', (by) => {
    expect(carToLink({ ...OWN, provenance: by ? { fit: { by } } : {} })).toBe(carToLink(EMPTY_CAR));
  });

  it('says nothing where nothing is given', () => {
    const car: CarDocument = { ...EMPTY_CAR, limits: {}, loads: { stopPoints: [] }, fit: { places: [] } };
    expect(carToLink({ ...car, provenance: { fit: { by: 'user' } } })).toBe(carToLink(EMPTY_CAR));
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
