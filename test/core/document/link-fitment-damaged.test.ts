import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_PLACES, MOST_STOP_POINTS } from '../../../core/document/fitment.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { LONGEST_NAME } from '../../../core/document/setup-in-use.js';

/** FNV-1a, 32 bit, worked out anew, so that a text can be wrong and still have the check that goes with it. */
function checked(body: string): string {
  let hash = 2166136261n;
  for (const character of body) hash = ((hash ^ BigInt(character.charCodeAt(0))) * 16777619n) & 0xffffffffn;
  return `${body}&check=${hash.toString(36)}`;
}

describe('a link with limits, loads, wheels and places whose check is right and whose text is not', () => {
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
