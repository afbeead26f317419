import type { CostWeight, LeastCost } from '../../core/document/cost-weights.js';
import { words } from '../../core/quantity/words.js';

/** English words of the panel that finds the setups for a wanted inclination; its title and first lines are in slot.labels.ts. */
export const NAMES = words('least-cost/least-cost', {
  ask: 'Enter the inclination you want',
  noWanted:
    'Nothing is searched until you say what you want. No figure is suggested: what a tyre likes, its wear and its temperatures tell.',
  waiting: 'Trying the setups …',
  fault: 'The search failed. This is our fault, not yours; your numbers are kept.',
  weights: 'What matters to you',
  weightStep: 'what matters',
  costs: {
    bumpTravel: 'Bump travel given up',
    bumpSteer: 'Toe change in bump',
    scrubChange: 'Scrub radius change',
    price: 'Money',
  } satisfies Record<LeastCost, string>,
  heads: {
    bumpTravel: 'Bump travel given up',
    bumpSteer: 'Bump steer',
    scrubChange: 'Scrub radius change',
    price: 'Price',
  } satisfies Record<LeastCost, string>,
  weight: {
    none: 'does not matter',
    matters: 'matters',
    most: 'matters most',
  } satisfies Record<CostWeight, string>,
  fold: 'Limits, parts and prices',
  foldNote: 'In italics: what is assumed until you say otherwise.',
  correct: 'Correct it',
  table: (wanted: string): string => `Setups that bring the outer wheel to ${wanted}`,
  setup: 'Setup',
  best: 'best',
  bestInAll: 'best in all that matters to you together',
  order: 'In this order: the best in all that matters to you together first.',
  above: (reach: string, tried: string): string => `Results above: ${reach} of ${tried} setups get there now.`,
  aboveNone: 'Results above: they are of what was asked before.',
  toResults: 'Show them',
  wonTravel: (size: string): string => `${size} won`,
  left: (size: string): string => `${size} left`,
  gap: (size: string): string => `strut gap ${size}`,
  open: (size: string): string => `${size} + open`,
  allOpen: 'open',
  unknownToe: 'not known',
  counts: (tried: string, reach: string): string => `${tried} setups tried, ${reach}.`,
  reachOne: '1 gets there within your limits',
  reachMany: (count: string): string => `${count} get there within your limits`,
  chosen: (shown: string): string =>
    `${shown}: the best in each cost that matters to you, then the best in all of them together, one of each mix of parts. No other setup beats any of these in every cost.`,
  shown: { one: 'The one shown', many: (count: string): string => `The ${count} shown` },
  solved:
    'Each one is worked out on the exact linkage, toe set again. “Open”: a part in it has no price yet. Enter 0 for what you have.',
  driveway: 'Bump steer is not known: six measurements in a driveway tell nothing of the tie rod.',
  held: (roll: string): string =>
    `Roll is held at ${roll} for every setup. In a real turn height, springs and bars change it: give what makes the car roll, and it is worked out.`,
  alike: 'The other axle is taken to have the same roll moment for its stiffness.',
  worked: (lateral: string, roll: string): string =>
    `Roll is worked out for each setup at ${lateral} (${roll} as it is).`,
  asItIs: (inclination: string, roll: string): string => `As it is: ${inclination} to the road at ${roll} of roll.`,
  row: {
    asItIs: 'Nothing changed',
    set: (camber: string): string => `Static camber ${camber}`,
    by: (way: string, amount: string): string => `${way}, ${amount}`,
    stock: 'at stock height',
    lower: (size: string): string => `${size} below stock height`,
    higher: (size: string): string => `${size} above stock height`,
    joint: (size: string): string => `ball joint extended by ${size}`,
    rods: 'tie-rod ends to match',
    spring: (rate: string): string => `springs of ${rate}`,
    bar: (rate: string): string => `bar of ${rate}`,
    onStop: 'Runs out of bump travel before it gets there: the stop is solid, and the figures do not hold.',
    comes: (inclination: string, roll: string): string => `${inclination} to the road at ${roll} of roll`,
  },
  ways: {
    topMount: 'plate',
    knuckleBolts: 'knuckle bolts',
    knuckle: 'knuckle with camber machined in',
    longerArm: 'lower arm',
    ballJoint: 'ball joint moved in the knuckle',
  },
  none: 'none',
  notGiven: 'not given',
  to: (from: string, to: string): string => `${from} to ${to}`,
  limited: (what: string, size: string): string => `${what} ${size}`,
  priced: (price: string): string => `price ${price}`,
  problems: {
    nearest: (wanted: string, nearest: string): string =>
      `No setup that you allow brings the outer wheel to ${wanted}. The nearest is ${nearest}: ask for that, or allow more under “Limits, parts and prices”.`,
    useNearest: (nearest: string): string => `Ask for ${nearest}`,
    none: (wanted: string): string =>
      `No setup that you allow brings the outer wheel to ${wanted}. Allow more under “Limits, parts and prices”.`,
    limit: (name: string, value: string, best: string): string =>
      `${name}: no setup keeps ${value}; the best any of them does is ${best}. Enter that, or less strict.`,
    limits: 'No setup keeps all of your limits at once. Loosen one of them.',
    load: 'Springs and bars change nothing while the roll is held. Give what makes the car roll, or remove them.',
    otherLoad:
      'What is given of bump stop, ratios or the other axle does not allow the roll to be worked out. Correct it where body roll is asked for, under “Camber in the turn”.',
    tooFar:
      'At this lateral acceleration the car would roll too far to be worked out. Enter less, or check springs, bar and centre of gravity.',
    noToe:
      'Bump steer at most: not known of a car measured in a driveway. Remove that limit, or enter the eight hard points.',
    noWay: 'Camber is set by: this kind of corner has no such part. Choose another.',
    turn: 'The car as it is cannot take this turn: a wheel or the steering runs out of travel. Ask for less roll, or a wider turn.',
    needsLeft: 'Bump left at least: enter the bump travel left now, so that it can be kept.',
    needsGap: 'Strut gap at least: enter the gap as it is now, so that it can be kept.',
  },
  sheets: {
    wanted: {
      title: 'Wanted inclination',
      label: 'Outer wheel to the road',
      howTo:
        'Of the loaded outer wheel to the road in the turn: minus is top inboard. A plain choice is 0°, upright to the road, or a little minus; your tyre’s wear and temperatures tell which.',
    },
    tolerance: {
      title: 'May be missed by',
      label: 'Tolerance',
      howTo:
        'Setups within so much either side count as getting there. Camber and height come in steps, so leave a tenth of a degree.',
    },
    camber: {
      title: 'Static camber to choose from',
      labels: ['From', 'To', 'Price of what sets it'],
      howTo:
        'In steps of a tenth of a degree, read where the car then stands. The price is of the plates, bolts or arms; 0 if you have them.',
      by: 'Camber is set by',
    },
    height: {
      title: 'Height to choose from',
      labels: ['Drop, from', 'Drop, to', 'Price of setting it'],
      howTo: 'Below stock height, in steps of 5 mm. The price is of springs or coilovers; 0 if yours can be set.',
    },
    joints: {
      title: 'Extended ball joints',
      labels: ['First: longer by', 'Its price', 'Second: longer by', 'Its price'],
      howTo:
        'By how much lower the ball’s centre stands in the knuckle than with what is on now. Without one is always tried too.',
      rods: 'Tie-rod ends',
      kept: 'as they are',
      corrected: 'lowered to match',
    },
    load: {
      title: 'What makes the car roll',
      labels: [
        'Lateral acceleration',
        'Sprung mass on this axle',
        'Centre of gravity at stock height',
        'Spring rate',
        'Rate of its bar',
      ],
      howTo:
        'Then height, springs and bars change the roll. Centre of gravity: of what the springs carry, above the road at stock height; 500 to 600 mm is usual for a small car (common practice, no source). A bar’s rate is the force at one end for each millimetre of that end; leave it empty if there is none.',
    },
    springs: {
      title: 'Springs to choose from',
      labels: ['First: rate', 'Price of the pair', 'Second: rate', 'Price of the pair'],
      howTo:
        'Rates of other springs for this axle. Yours are always tried too. Only where you say what makes the car roll.',
    },
    bars: {
      title: 'Anti-roll bars to choose from',
      labels: ['First: rate', 'Its price', 'Second: rate', 'Its price'],
      howTo:
        'Force at one end for each millimetre of that end. Yours is always tried too. Only where you say what makes the car roll.',
    },
    limits: {
      title: 'Limits',
      labels: ['Bump left, at least', 'Bump steer, at most', 'Scrub radius change, at most'],
      howTo:
        'Setups beyond these are left out. Bump left is counted from the bump travel left now. Bump steer: peak to peak, over as much bump and droop as the ways above are looked at.',
    },
    gap: {
      title: 'Gap from strut to tyre',
      labels: ['As it is now', 'At least'],
      howTo: 'Where the tyre comes nearest to the strut or its spring seat. Measure with the wheel straight ahead.',
    },
  },
});
