import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CarDocument } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';

type OldCar = Omit<CarDocument, 'provenance'> &
  Record<'givenBy' | 'setupsGivenBy' | 'fitGivenBy' | 'bumpTravelGivenBy', 'page' | 'user' | undefined>;

/** Twenty links as the build of November 2026 wrote them, and the cars that it read in them: they stand in people's mail. Never rewritten. */
const OLD = JSON.parse(readFileSync(new URL('links-of-2026-11.json', import.meta.url), 'utf8')) as {
  link: string;
  car: OldCar;
}[];

/** Who gave what stood in a field of its own each then; a gap to the stop alone said nothing of it, and was the user's. */
function asNow({ givenBy, setupsGivenBy, fitGivenBy, bumpTravelGivenBy, ...car }: OldCar): CarDocument {
  const isFit = fitGivenBy === 'user' || car.stopGap !== undefined;
  return {
    ...car,
    provenance: {
      // A link of then always says them.
      drop: { by: 'user' },
      way: { by: 'user' },
      ...(givenBy === 'user' && { corner: { by: 'user' } }),
      ...(bumpTravelGivenBy === 'user' && { bumpTravel: { by: 'user' } }),
      ...(car.setups && { setups: { by: 'user' } }),
      ...(isFit && { fit: { by: 'user' } }),
    },
  };
}

describe('a link of November 2026', () => {
  it('is one of twenty', () => expect(new Set(OLD.map(({ link }) => link)).size).toBe(20));

  it.each(OLD.map((old, number) => ({ number, ...old })))('$number opens as the car it was', ({ link, car }) => {
    const now = carFromLink(link);
    expect(now).toEqual({ ok: true, car: asNow(car) });
    expect(carFromLink(now.ok ? carToLink(now.car) : '')).toEqual(now);
  });
});
