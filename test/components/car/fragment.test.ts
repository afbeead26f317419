import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFragment, writeFragment } from '../../../components/car/fragment.js';
import { carToLink } from '../../../core/document/link.js';
import { cars } from '../../core/document/random-cars.js';

const isPlace = (id: string) => ['sources', 'why it slows', 'top'].includes(id);
const read = (hash: string) => readFragment(hash, isPlace);

describe('the fragment of a page’s address', () => {
  it.each([
    ['', '', undefined, false],
    ['#', '', undefined, false],
    ['#sources', 'sources', undefined, false],
    ['#why%20it%20slows', 'why%20it%20slows', undefined, false],
    ['#car=1&check=1', '', 'car=1&check=1', false],
    ['#sources&car=1&check=1', 'sources', 'car=1&check=1', false],
    ['#gone&car=1&check=1', 'gone', 'car=1&check=1', false],
    ['#/route', '/route', undefined, true],
    ['#/route?x=1&car=1', '/route?x=1&car=1', undefined, true],
    ['#!/a', '!/a', undefined, true],
    ['#:~:text=camber', ':~:text=camber', undefined, true],
    ['#sources:~:text=camber', 'sources:~:text=camber', undefined, true],
    ['#tab=2', 'tab=2', undefined, true],
    ['#%', '%', undefined, true],
  ])('%s: place “%s”, car %s, somebody else’s: %s', (hash, section, car, isForeign) => {
    expect(read(hash)).toEqual({ section, car, at: undefined, isForeign });
  });

  it('is read as it was written, with a place, with a number, with both', () => {
    const section = fc.constantFrom('', 'sources', 'why%20it%20slows');
    const at = fc.constantFrom(undefined, 1, 2, 12);
    fc.assert(
      fc.property(cars, section, at, (one, place, number) => {
        const car = carToLink(one);
        expect(read(writeFragment(place, car, number))).toEqual({ section: place, car, at: number, isForeign: false });
        expect(writeFragment(place, undefined, number)).toBe(place && `#${place}`);
      }),
      { seed: 401, numRuns: 200 },
    );
  });
});
