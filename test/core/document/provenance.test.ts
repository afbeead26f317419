import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR, limitsOf, withDrop, withPageHeights } from '../../../core/document/car.js';
import { fitmentByUser } from '../../../core/document/limits-in-use.js';
import { carFromLink, carToLink } from '../../../core/document/link.js';
import { byUser, usersOnly } from '../../../core/document/own-car.js';
import { gave, give, givenBy } from '../../../core/document/provenance.js';

const limits = { stopLength: 50 };
const page = give(EMPTY_CAR, 'fit', 'page', () => ({ limits, stopGap: 34 }));

describe('who gave a part of a car', () => {
  it('is nobody, whose values are the example’s, until somebody does', () => {
    expect(givenBy(EMPTY_CAR, 'fit')).toBe('example');
    expect(gave(EMPTY_CAR, 'fit', 'page')).toEqual({});
    expect(givenBy(page, 'fit')).toBe('page');
    expect(give(page, 'fit', 'page', () => ({}))).toEqual(EMPTY_CAR);
  });

  it('is the user from the first value on, and what the page gave stands in', () => {
    const begun = fitmentByUser(page, () => ({ fit: { lock: 30 } }));
    expect(begun).toMatchObject({ fit: { lock: 30 } });
    expect(begun.limits).toBeUndefined();
    expect(gave(begun, 'fit', 'user')).toEqual({ fit: { lock: 30 } });
    expect(gave(begun, 'fit', 'page')).toEqual({ limits, stopGap: 34 });
    expect(limitsOf(begun)).toEqual({ limits, stopGap: 34 });
    // Taken back, it is the user's all the same.
    expect(
      givenBy(
        fitmentByUser(begun, () => ({ fit: {} })),
        'fit',
      ),
    ).toBe('user');
  });

  it('is not changed by what a page says afterwards, which stands in', () => {
    const begun = fitmentByUser(page, () => ({ stopGap: 12 }));
    const later = give(begun, 'fit', 'page', () => ({ stopGap: 40 }));
    expect(later.stopGap).toBe(12);
    expect(gave(later, 'fit', 'page')).toEqual({ stopGap: 40 });
    const own = give(withDrop(EMPTY_CAR, 20), 'bumpTravel', 'user', () => ({ bumpTravel: 60 }));
    expect(give(own, 'bumpTravel', 'page', () => ({ bumpTravel: 80 }))).toBe(own);
    expect(withPageHeights(own, { drop: 45, dropPlusMinus: 2, bumpTravel: 80 }, true)).toEqual(own);
    expect(withPageHeights(own, { drop: 45 }, false)).toMatchObject({ drop: 45, provenance: { drop: { by: 'page' } } });
  });

  it('is kept apart for each part', () => {
    const own = fitmentByUser(page, () => ({ stopGap: 12 }));
    expect(givenBy(own, 'corner')).toBe('example');
    const drop = withPageHeights(own, { drop: 20, bumpTravel: 60 }, true);
    expect([givenBy(drop, 'fit'), givenBy(drop, 'bumpTravel')]).toEqual(['user', 'page']);
    expect(usersOnly(drop)).not.toHaveProperty('bumpTravel');
    expect(usersOnly(drop)).toMatchObject({ stopGap: 12, drop: EMPTY_CAR.drop });
  });
});

describe('a link', () => {
  it('never takes a page’s gap to the bump stop for the user’s', () => {
    const user: CarDocument = {
      ...page,
      provenance: { ...page.provenance, corner: { by: 'user' } },
      given: { points: {}, camber: -1 },
    };
    for (const car of [page, user]) expect(carToLink(car)).not.toContain('stopGap');
  });

  it('brings back a user’s gap as the user’s, which a page’s wheels do not take', () => {
    const own = byUser({ ...EMPTY_CAR, stopGap: 12 });
    const read = carFromLink(carToLink(own));
    expect(read).toEqual({ ok: true, car: own });
    const car = give(read.ok ? read.car : own, 'fit', 'page', () => ({ fit: { lock: 33 }, stopGap: 30 }));
    expect(gave(car, 'fit', 'user')).toEqual({ stopGap: 12 });
    expect(limitsOf(car)).toEqual({ stopGap: 12 });
  });

  it.each([301, 400])('brings back a gap of %s mm, which its field takes', (stopGap) => {
    const own = byUser({ ...EMPTY_CAR, stopGap });
    expect(carFromLink(carToLink(own))).toEqual({ ok: true, car: own });
  });

  it('without heights to compare does not say so', () => {
    const car = { ...EMPTY_CAR, compare: { heights: [] } };
    expect(carToLink(car)).toBe(carToLink(EMPTY_CAR));
  });
});
