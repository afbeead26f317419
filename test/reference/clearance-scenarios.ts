/*
 * Four wheels in their arches that can be reckoned on paper, all invented. The wheel is upright and moves straight up, its damper
 * too, millimetre for millimetre. Nothing is imported from core/: the figures come from the lines of arithmetic below.
 *
 * Sizes by UN Regulation No. 30 (see independent figures in tyre_dimensions.csv), the shape of the section and what a stop gives
 * way by common practice.
 */

/** 225/45R17 on 7.5 inches: 432 + 2 × 0.45 × 225 mm across; 225 + 0.4 (190.5 − 0.85 × 225) mm wide. */
const BEFORE = { size: '225/45R17', rimWidthInch: 7.5, offset: 40 };
const HALF_BEFORE = (225 + 0.4 * (7.5 * 25.4 - 0.85 * 225)) / 2;

/** 245/40R18 on 8.5 inches: 457 + 2 × 0.40 × 245 mm across; 245 + 0.4 (215.9 − 0.85 × 245) mm wide. */
const AFTER = { size: '245/40R18', rimWidthInch: 8.5, offset: 35 };
const RADIUS_AFTER = (457 + 2 * 0.4 * 245) / 2;
const HALF_AFTER = (245 + 0.4 * (8.5 * 25.4 - 0.85 * 245)) / 2;
/** Half way between rim and tread the tyre is widest. */
const BULGE_AFTER = (457 / 2 + RADIUS_AFTER) / 2;
/** 40 − 35 mm less offset: so much further outboard. */
const PLANE = 5;

/** The stop touches after 30 mm, and is solid when half of its 40 mm are gone. */
const LIMITS = { stopGap: 30, stopLength: 40, stopUsable: 0.5 };
const TOUCH = 30;
const SOLID = 30 + 0.5 * 40;
/** What bushes and carcass give way, unless told otherwise. */
const ALLOWANCE = 3;

export interface ClearanceScenario {
  name: string;
  /** As an element takes them, by property or as JSON. */
  fit: {
    before: typeof BEFORE;
    after: typeof AFTER;
    places: {
      name: string;
      fixedTo: 'body';
      is: 'bodywork';
      at: { clock: number; distance: number; out: number };
      plusMinus: number;
    }[];
    marginBodywork: number;
    allowance: number;
  };
  limits: Record<string, number>;
  drop: number;
  expected: {
    /** The smallest gap, mm, and the travel where it is. */
    gap: number;
    travel: number;
    /** At the height asked about. */
    rideGap: number;
    /** Where the suspension is solid. */
    solidGap: number;
    plusMinus: number;
    verdict: 'clears' | 'close' | 'touches';
    touch: number;
    solid: number;
    /** Undefined: it is never reached. */
    contact?: number;
  };
}

const scenario = (
  name: string,
  at: { clock: number; distance: number; out: number },
  more: { plusMinus: number; marginBodywork: number; drop: number },
  expected: ClearanceScenario['expected'],
): ClearanceScenario => ({
  name,
  fit: {
    before: BEFORE,
    after: AFTER,
    places: [{ name: 'arch', fixedTo: 'body', is: 'bodywork', at, plusMinus: more.plusMinus }],
    marginBodywork: more.marginBodywork,
    allowance: ALLOWANCE,
  },
  limits: LIMITS,
  drop: more.drop,
  expected,
});

/** Over the tread: 60 mm inboard of the old sidewall is 52 mm off the old middle and 47 mm off the new one. */
const OVER_TREAD = { clock: 12, out: -60 };
/** A height above the hub is used up by travel and radius. */
const over = (distance: number) => ({
  gap: distance - SOLID - RADIUS_AFTER,
  solidGap: distance - SOLID - RADIUS_AFTER,
  travel: SOLID,
  contact: distance - RADIUS_AFTER - ALLOWANCE,
  touch: TOUCH,
  solid: SOLID,
});

export const CLEARS = scenario(
  'clears',
  { ...OVER_TREAD, distance: 400 },
  { plusMinus: 5, marginBodywork: 10, drop: 25 },
  // 400 − 50 − 326.5 = 23.5; less 3 and 5 that is more than 10.
  { ...over(400), rideGap: 400 - 25 - RADIUS_AFTER, plusMinus: 5, verdict: 'clears' },
);

export const TOUCHES = scenario(
  'touches the arch',
  { ...OVER_TREAD, distance: 370 },
  { plusMinus: 5, marginBodywork: 10, drop: 20 },
  // 370 − 50 − 326.5 = −6.5: even with all of the ± nothing is left. Contact at 40.5, well before solid.
  { ...over(370), rideGap: 370 - 20 - RADIUS_AFTER, plusMinus: 5, verdict: 'touches' },
);

export const STOP_FIRST = scenario(
  'the stop is solid just before the tyre touches',
  { ...OVER_TREAD, distance: 381 },
  { plusMinus: 1, marginBodywork: 0, drop: 25 },
  // 381 − 50 − 326.5 = 4.5; less 3 and 1 there is half a millimetre. Contact at 51.5.
  { ...over(381), rideGap: 381 - 25 - RADIUS_AFTER, plusMinus: 1, verdict: 'clears' },
);

/** So much the new sidewall stands further out than the old one. */
const FURTHER_OUT = PLANE + HALF_AFTER - HALF_BEFORE;
const BESIDE = 10;

/** A point beside the sidewall at a height over the hub, outboard of it: to the circle of the upper sidewall, or the lower one. */
function beside(height: number): number {
  // Shoulder 0.6 of what is beside the tread, tread 0.86 of the width.
  const aside = 0.14 * HALF_AFTER;
  const shoulder = 0.6 * aside;
  const rise = RADIUS_AFTER - shoulder - BULGE_AFTER;
  const upper = (aside ** 2 + rise ** 2 - shoulder ** 2) / (2 * (aside - shoulder));
  // To the lip, 17.3 mm over the rim's seat, where the rim is 8.5 inches wide inside.
  const fall = BULGE_AFTER - (457 / 2 + 17.3);
  const inset = HALF_AFTER - (8.5 * 25.4) / 2;
  const lower = (inset ** 2 + fall ** 2) / (2 * inset);
  const radius = height > BULGE_AFTER ? upper : lower;
  return Math.hypot(radius + BESIDE, height - BULGE_AFTER) - radius;
}

/** Passed by the bulge at 30 mm of travel, before the stop is solid. */
const PASSED = BULGE_AFTER + 30;

export const TOO_CLOSE = scenario(
  'too close to tell',
  { clock: 12, distance: PASSED, out: BESIDE + FURTHER_OUT },
  { plusMinus: 5, marginBodywork: 10, drop: 20 },
  // 10 mm where the bulge goes by: less 3 and 5 not the 10 that are wanted, and not nothing either.
  {
    gap: BESIDE,
    travel: 30,
    rideGap: beside(PASSED - 20),
    solidGap: beside(PASSED - SOLID),
    plusMinus: 5,
    verdict: 'close',
    touch: TOUCH,
    solid: SOLID,
  },
);

export const CLEARANCE_SCENARIOS: readonly ClearanceScenario[] = [CLEARS, TOUCHES, STOP_FIRST, TOO_CLOSE];

/** Where only a curve is known: no camber change, nothing sideways, and one millimetre of rod for one of travel. */
export const STRAIGHT_UP_CURVE = { kind: 'coefficients', coefficients: [0], domain: [-80, 120] } as const;
export const STRAIGHT_UP_RATIO = { motionRatio: 1 } as const;

/**
 * Hard points of a corner whose wheel moves almost straight up: two level arms and a tie rod, all 4.7 m long (as long as
 * coordinates of ± 4 m let them be) and alike, so that the wheel stays upright and straight ahead; a damper on the carrier,
 * upright, its top 3.6 m over its foot. At 50 mm of travel the wheel is 50²/(2 × 4700) = 0.27 mm further in, and that is all.
 */
export const STRAIGHT_UP_CORNER = {
  kind: 'wishbone',
  wheelCentre: [0, 750, 310],
  loadedRadius: 305,
  camber: 0,
  toe: 0,
  lowerArm: { front: [200, -4000, 200], rear: [-200, -4000, 200], ball: [0, 700, 200] },
  upperArm: { front: [200, -4000, 420], rear: [-200, -4000, 420], ball: [0, 700, 420] },
  tieRod: { inner: [-120, -4000, 300], outer: [-120, 700, 300] },
  damper: { top: [0, 650, 3900], low: [0, 650, 300], on: 'carrier' },
} as const;

/** How far gaps of that corner may lie from those of the four above, mm. */
export const STRAIGHT_UP_CORNER_TOLERANCE_MM = 0.3;
/**
 * How far the travel at which a bulge goes by may lie from theirs, mm: at 30 mm it goes inboard by 30/4700 of a millimetre a
 * millimetre, and on a round of about 130 mm (sidewall and gap) the nearest point is 0.8 mm before the widest.
 */
export const STRAIGHT_UP_CORNER_TRAVEL_MM = 1;
