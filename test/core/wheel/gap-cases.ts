import fc from 'fast-check';
import { wheelMotion } from '../../../core/answers/from-source.js';
import type { ClockPosition, FixedTo, Place } from '../../../core/wheel/place.js';
import type { SectionShape } from '../../../core/wheel/tyre-section.js';
import { bareOf } from '../../../core/wheel/wheel-motion.js';
import { referenceCorner } from '../linkage/reference-corner.js';

/** Spread evenly: a double of its own accord would mostly be an end or next to nothing. */
export const evenly = (least: number, most: number): fc.Arbitrary<number> =>
  fc.noBias(fc.integer({ min: 0, max: 1e6 })).map((share) => least + ((most - least) * share) / 1e6);

/** Invented shapes, from a balloon on a narrow rim to a tyre stretched over a wide one. */
export const shapes: fc.Arbitrary<SectionShape> = fc
  .record({
    sectionWidth: evenly(150, 330),
    height: evenly(45, 150),
    rimRadius: evenly(165, 260),
    wider: evenly(-130, 30),
    treadShare: fc.option(evenly(0.6, 0.99), { nil: undefined }),
    shoulderRadius: fc.option(evenly(0, 60), { nil: undefined }),
    rimProtector: fc.boolean(),
  })
  .map(({ sectionWidth, height, rimRadius, wider, treadShare, shoulderRadius, rimProtector }) => ({
    sectionWidth,
    freeRadius: rimRadius + height,
    rimRadius,
    rimWidth: Math.max(76, sectionWidth + wider),
    treadWidth: treadShare && treadShare * sectionWidth,
    shoulderRadius,
    rimProtector,
  }));

/** Invented: a 225 mm tyre of 640 mm on a 17 inch rim. */
export const SHAPE: SectionShape = { sectionWidth: 225, freeRadius: 320, rimRadius: 216, rimWidth: 190.5 };

/** Steered by 32 degrees either way. */
export const STEERED = wheelMotion({ source: { kind: 'corner', corner: referenceCorner }, lock: 32 });

/** From a camber curve alone: upright at stock height, and straight up as told, without a doubt. */
export const STRAIGHT_UP = bareOf(
  wheelMotion({ source: { kind: 'coefficients', coefficients: [0], domain: [-80, 120] }, sideways: 0 }),
);

export const clockPositions: fc.Arbitrary<ClockPosition> = fc.record({
  clock: evenly(0, 12),
  distance: evenly(150, 420),
  out: evenly(-60, 60),
  from: fc.constantFrom('outer' as const, 'inner' as const),
});

export const aPlace = (at: Place['at'], fixedTo: FixedTo = 'body', more: Partial<Place> = {}): Place => ({
  name: 'invented',
  fixedTo,
  is: 'bodywork',
  at,
  ...more,
});
