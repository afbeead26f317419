import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CarDocument } from '../../../core/document/car.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';

/** Twenty links as the build of November 2026 wrote them, and the cars that it read in them: they stand in people's mail. Never rewritten. */
const OLD = JSON.parse(readFileSync(new URL('links-of-2026-11.json', import.meta.url), 'utf8')) as {
  link: string;
  car: CarDocument;
}[];

describe('a link of November 2026', () => {
  it('is one of twenty', () => expect(new Set(OLD.map(({ link }) => link)).size).toBe(20));

  it.each(OLD.map((old, number) => ({ number, ...old })))('$number opens as the car it was', ({ link, car }) => {
    const now = carFromLink(link);
    expect(now).toEqual({ ok: true, car });
    expect(carFromLink(now.ok ? carToLink(now.car) : '')).toEqual(now);
  });
});
