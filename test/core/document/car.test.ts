import { describe, expect, it } from 'vitest';
import { type CarDocument, EMPTY_CAR, type GivenCorner } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { cornerOf } from '../../../core/document/strut-in-use.js';
import { STRUT_POINT_KEYS, type StrutCorner } from '../../../core/linkage/corner.js';

const solved = (given: GivenCorner, more: Partial<CarDocument> = {}) =>
  cornerOf({ ...EMPTY_CAR, provenance: { corner: { by: 'user' } }, given, ...more }) as StrutCorner;
const doubtOf = (corner: StrutCorner, key: (typeof STRUT_POINT_KEYS)[number]) =>
  corner.plusMinus?.[key] ?? corner.plusMinus?.other;
const exampleDoubt = (key: (typeof STRUT_POINT_KEYS)[number]) =>
  EXAMPLE_CORNER.plusMinus?.[key] ?? EXAMPLE_CORNER.plusMinus?.other;

describe('the corner of a car of which nothing is known is the example, doubt and all', () => {
  const corner = solved({ points: {} });
  it('by its points and numbers', () => {
    expect({ ...corner, plusMinus: undefined }).toEqual({ ...EXAMPLE_CORNER, plusMinus: undefined });
  });
  it.each(STRUT_POINT_KEYS)('by the doubt of %s', (key) => {
    expect(doubtOf(corner, key)).toBe(exampleDoubt(key));
  });
});

describe('loaded radius, which is the wheel centre’s height above the ground', () => {
  it('is that height where only the wheel centre was given', () => {
    expect(solved({ points: { wheelCentre: [0, 760, 325] } }).loadedRadius).toBe(325);
  });
  it('is what was given where it was, with or without a wheel centre', () => {
    expect(solved({ points: { wheelCentre: [0, 760, 325] }, loadedRadius: 319 }).loadedRadius).toBe(319);
    expect(solved({ points: {}, loadedRadius: 319 }).loadedRadius).toBe(319);
  });
  it('is the example’s where neither was', () => {
    expect(solved({ points: { 'strut.top': [0, 580, 830] } }).loadedRadius).toBe(EXAMPLE_CORNER.loadedRadius);
  });
  it('is that of the user’s wheel centre, not of the page’s car that stands in for the rest', () => {
    const standIn = { given: { points: { wheelCentre: [0, 700, 290] as const }, loadedRadius: 288 } };
    const provenance = { corner: { by: 'user' as const, standIn } };
    expect(solved({ points: {} }, { provenance }).loadedRadius).toBe(288);
    expect(solved({ points: { wheelCentre: [0, 760, 325] } }, { provenance }).loadedRadius).toBe(325);
  });
});

describe('a point’s stated doubt', () => {
  const plusMinus = { 'strut.top': 7, other: 5 } as const;
  it('counts for a point that was given', () => {
    const corner = solved({ points: { 'strut.top': [-38, 574, 822], 'lowerArm.ball': [-4, 694, 176] }, plusMinus });
    expect(doubtOf(corner, 'strut.top')).toBe(7);
    expect(doubtOf(corner, 'lowerArm.ball')).toBe(5);
  });
  it('does not count for one that was not: the example’s own does', () => {
    const corner = solved({ points: { 'lowerArm.ball': [-4, 694, 176] }, plusMinus });
    expect(doubtOf(corner, 'strut.top')).toBe(exampleDoubt('strut.top'));
    expect(doubtOf(corner, 'strut.low')).toBe(exampleDoubt('strut.low'));
  });
  it('is none for a given point of which nothing was said', () => {
    const corner = solved({ points: { 'lowerArm.ball': [-4, 694, 176] } });
    expect(doubtOf(corner, 'lowerArm.ball')).toBeUndefined();
  });
});
