import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sourceOfCar } from '../../../core/answers/car-request.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { readCar } from '../../../core/document/read-car.js';
import {
  addParts,
  addSetup,
  emptySetup,
  removeSetup,
  renameSetup,
  withPartsAt,
} from '../../../core/document/setup-edits.js';
import { fitSetup, fittedSetup } from '../../../core/document/setup-in-use.js';
import { partOf } from '../../../core/linkage/parts/part-data.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { InputError } from '../../../core/quantity/problem.js';
import { randomPart, readCars } from './random-setups.js';

const JOINT: PartData = { part: 'ballJointExtended', mm: 22, correctTieRod: true };
const withJoint = addParts(EMPTY_CAR, 'Lower joint', [JOINT]);
const fitted = fitSetup(withJoint, 0);

it('a set of parts changes nothing until it is fitted, and the corner is asked with its parts then', () => {
  expect(withJoint.by).toBe('driveway');
  expect(sourceOfCar(withJoint)).toEqual(sourceOfCar(EMPTY_CAR));
  expect(sourceOfCar(fitted)).toEqual({ kind: 'parts', of: sourceOfCar(EMPTY_CAR), parts: [JOINT] });
  expect(sourceOfCar(fitSetup(fitted, undefined))).toEqual(sourceOfCar(EMPTY_CAR));
});

it('readings that were taken with the parts on are asked in their place', () => {
  const readings = [0, 10, 20, 30].map((travel) => ({ travel, value: -travel / 50 }));
  const read = { ...fitted, setups: [{ ...fitted.setups![0]!, readings }], by: 'readings' as const };
  expect(sourceOfCar(read)).toMatchObject({ kind: 'readings' });
});

it('the fitted set stays fitted when sets are added, renamed, changed or taken out around it', () => {
  const three = fitSetup(addParts(addParts(withJoint, 'Arm', [{ part: 'armLonger', mm: 10 }]), 'Mount', []), 1);
  const name = (car: CarDocument) => fittedSetup(car)?.name;
  expect(name(three)).toBe('Arm');
  expect(name(removeSetup(three, 0))).toBe('Arm');
  expect(name(removeSetup(three, 1))).toBeUndefined();
  expect(name(renameSetup(three, 1, 'Longer arm'))).toBe('Longer arm');
  expect(name(addSetup(three, emptySetup('Standard', 'camber', 'Front left')))).toBe('Arm');
  const longer = withPartsAt(three, 1, () => [{ part: 'armLonger', mm: 12 }]);
  expect(fittedSetup(longer)?.parts).toEqual([{ part: 'armLonger', mm: 12 }]);
});

it('changing a part leaves the corner of the user’s car the same object, so that nothing of it is solved again', () => {
  const own = addParts(withJoint, 'Arm', [{ part: 'armLonger', mm: 10 }]);
  const longer = withPartsAt(own, 1, () => [{ part: 'armLonger', mm: 12 }]);
  expect(longer.provenance.corner).toBe(own.provenance.corner);
  expect(longer.given).toBe(own.given);
});

it('a link says the parts in words that people can read', () => {
  expect(carToLink(fitted)).toBe(
    'car=1&corner=front-left&by=driveway&setup1=Lower.joint&setup1.at=front-left&setup1.part1=ballJointExtended&setup1.part1.mm=22' +
      '&setup1.part1.correctTieRod=1&setup=1&fitted=1&check=bmqvd2',
  );
});

it('a document, a link and the core take the same parts', () => {
  fc.assert(
    fc.property(readCars, randomPart, (car, part) => {
      expect(readCar(JSON.parse(JSON.stringify(car)))).toEqual(car);
      expect(carFromLink(carToLink(car))).toEqual({ ok: true, car });
      try {
        partOf(part);
      } catch (error) {
        // Such as an axis without a direction: of the values, never of the shape.
        if (!(error instanceof InputError)) throw error;
        expect(['no-direction', 'out-of-range']).toContain(error.code);
      }
    }),
    { seed: 171, numRuns: 200 },
  );
});

it.each([
  ['another part’s option', { part: 'armLonger', mm: 10, vector: [0, 0, 0] }],
  ['no amount', { part: 'armLonger' }],
  ['an unknown part', { part: 'longerArm', mm: 10 }],
  ['an amount beyond any part', { part: 'armLonger', mm: 254 }],
])('a document or a link with %s is refused', (_, part) => {
  const setups = [{ name: 'One', cornerName: 'Front left', quantity: 'camber', readings: [], parts: [part] }];
  expect(() => readCar({ ...EMPTY_CAR, setups })).toThrow(InputError);
});

it('a damaged link of parts is refused: an option of another part, none of its own, a fitted set without parts', () => {
  const start = 'car=1&setup1=One&setup1.at=front-left';
  for (const rest of [
    '&setup1.part1=armLonger&setup1.part1.vector=0,0,1&setup=1',
    '&setup1.part1=armLonger&setup=1',
    '&setup=1&fitted=1',
  ]) {
    expect(carFromLink(`${start}${rest}&check=${check(start + rest)}`)).toEqual({ ok: false, reason: 'damaged' });
  }
});

/** FNV-1a, 32 bit, worked out anew. */
function check(text: string): string {
  let hash = 2166136261n;
  for (const character of text) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return hash.toString(36);
}
