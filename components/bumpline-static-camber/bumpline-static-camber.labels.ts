import type { CamberWay } from '../../core/answers/camber-ways.js';
import type { CamberCost } from '../../core/document/camber-costs.js';
import { words } from '../../core/quantity/words.js';

/** What stands over a column, and where there is little room. */
interface CostName {
  label: string;
  short: string;
}

/** English words of what lies under the sentence. */
export const NAMES = words('static-camber/labels', {
  slider: 'Camber to add (− more negative)',
  asItIs: 'nothing to add',
  costs: {
    kingpin: () => ({ label: 'Kingpin inclination', short: 'Kingpin incl.' }),
    scrubRadius: () => ({ label: 'Scrub radius', short: 'Scrub radius' }),
    caster: () => ({ label: 'Caster', short: 'Caster' }),
    casterTrail: () => ({ label: 'Caster trail', short: 'Trail' }),
    halfTrack: () => ({ label: 'Half track', short: 'Half track' }),
    camberChange: (over) => ({ label: `Camber gain over the next ${over} of bump`, short: 'Camber gain' }),
    toeBefore: () => ({ label: 'Toe before alignment', short: 'Toe before' }),
    bumpSteer: (over) => ({ label: `Bump steer within ±${over}, after alignment`, short: 'Bump steer' }),
    rollCentreHeight: () => ({ label: 'Roll centre height', short: 'Roll centre' }),
    inclinationAt15: () => ({ label: 'Outer wheel at 15° of steer', short: 'Outer, 15°' }),
    inclinationAt30: () => ({ label: 'Outer wheel at 30° of steer', short: 'Outer, 30°' }),
    innerAt15: () => ({ label: 'Inner wheel at 15° of steer', short: 'Inner, 15°' }),
    innerAt30: () => ({ label: 'Inner wheel at 30° of steer', short: 'Inner, 30°' }),
    inTurn: () => ({ label: 'Outer wheel to the road, in the turn', short: 'In the turn' }),
    bumpTravel: () => ({ label: 'Bump travel', short: 'Bump travel' }),
    gapStrut: () => ({ label: 'Gap from strut to tyre', short: 'Strut gap' }),
  } satisfies Record<CamberCost, (over: string) => CostName>,
  groups: {
    steering: 'Steering axis',
    setting: 'Toe',
    travel: 'Over wheel travel',
    turn: 'Lean to the road',
    room: 'Room',
  },
  table: {
    asked: (by: string, sense: string): string => `${by} ${sense} camber`,
    title: (asked: string): string => `Ways to add ${asked}, and what each changes`,
    way: 'Way',
    asItIs: 'As it is',
    camber: (angle: string): string => `${angle} of camber`,
    sortBy: 'Sort by',
    unsorted: 'as listed',
    sortStep: 'the order of the ways',
    sorted: (what: string, order: string): string => `Sorted by ${what}, ${order}.`,
    first: {
      smallest: ['smallest first', 'largest first'],
      largest: ['largest first', 'smallest first'],
      most: ['most first', 'least first'],
      least: ['least first', 'most first'],
    },
    unreachedLast: 'Ways that fall short stand last.',
    turn: 'Reverse',
    scroll: 'Swipe or scroll sideways for more columns.',
    legend: 'Bold: the change; under it, the new figure. Toe-in is positive.',
    notKnown: 'not known',
    notReached: 'not reached',
    waiting: '…',
  },
  ways: {
    topMount: 'Top mount plate',
    knuckleBolts: 'Knuckle bolts',
    knuckle: 'Machined knuckle',
    longerArm: 'Longer lower arm',
    ballJoint: 'Offset ball joint',
    lowering: 'Lowering, to compare',
  } satisfies Record<CamberWay, string>,
  shorts: {
    topMount: 'Plate',
    knuckleBolts: 'Bolts',
    knuckle: 'Knuckle',
    longerArm: 'Arm',
    ballJoint: 'Ball joint',
    lowering: 'Lowering',
  } satisfies Record<CamberWay, string>,
  shorterArm: 'Shorter lower arm',
  raising: 'Raising, to compare',
  ends: (end: string, given: string): string => `falls short: ${end} gives ${given}`,
  needs: (amount: string): string => ` (needs ${amount})`,
  none: 'does nothing here',
  before: 'Before you buy: what to know',
  pictures: 'As bars, figure by figure',
  whichPictures: { first: 'main figures', all: 'all figures' },
  now: (figure: string): string => `now ${figure}`,
  morePictures: (count: number): string => `${count} more figures`,
  picturesNote:
    'Each bar is the change in one figure. Faint bars belong to ways that fall short, and may run off the edge.',
  noToe:
    'Six measurements in a driveway say nothing about the tie rod, so bump steer and toe before alignment are not known. Enter the eight hard points, or read toe over wheel travel with a gauge.',
  wishbone:
    'A double wishbone has neither a top mount that holds the wheel upright nor bolts on a strut: those two ways are left out.',
  turnNote: (roll: string, tyres: string, steer: string): string =>
    `“In the turn” means ${roll} of suspension roll${tyres}, ${steer}, at this drop, with toe reset.`,
  turnAt: (roll: string, lateral: string): string => `${roll} (at ${lateral}, worked out again for each way)`,
  turnMarks: (roll: string): string => `${roll} (from the cable ties)`,
  turnComing: 'In the turn: the roll is being worked out.',
  turnNoRoll:
    'In the turn: the roll cannot be worked out from what was entered for it. Correct that, or enter the roll itself.',
  turnTyres: (angle: string): string => ` and ${angle} on the tyres`,
  turnStraight: 'steering straight ahead',
  turnRadius: (radius: string, wheelbase: string): string => `a radius of ${radius} with a wheelbase of ${wheelbase}`,
  turnSolid: (taken: string, left: string, short: string): string =>
    `The outer wheel’s stop is solid before that: this roll takes ${taken} of bump and only ${left} is left, ${short} too little. The car never gets there.`,
  turnSolidWith: (ways: string): string => `With these ways the outer wheel’s stop is solid before that: ${ways}.`,
  turnFault: 'The turn could not be worked out; the other figures stand.',
  turnBeyond: (roll: string, limit: string): string =>
    `In the turn: at ${roll} of roll a wheel of this car runs out of travel; its links reach to ${limit}. Ask for less roll.`,
  turnTight: (radius: string, limit: string): string =>
    `In the turn: a radius of ${radius} is inside the lock, which ends at ${limit}. Ask for a wider turn.`,
  steerNote: 'At 15° and 30° of steer: the wheel’s lean to the road with the body level, camber from caster included.',
  roomNote:
    'Bump travel: how much the damper’s stroke gains at the wheel. Strut gap: how far the strut moves away from the tyre’s nearest edge.',
  archNote: 'The gap from tyre to arch is not worked out here: measure it again afterwards.',
  boltNote: 'Knuckle bolts: the knuckle turns about the lower bolt, whose place is assumed.',
  limits: 'How far each way goes is what such parts usually allow, not what the law or your class allows.',
  aligned: 'All of these ways need a wheel alignment afterwards: set height first, then camber, then toe.',
  competition: 'Competition rules often restrict some of these ways. Read those of your class before you buy.',
  bolts:
    'Eccentric (cam) bolts hold their setting by clamp force alone: tighten them to the maker’s torque, and check again after some driving.',
  links: 'Links are taken as rigid: the give of bushes and tyres, and play, are not included.',
  noDoubt:
    'These are differences on the same car, so an error in its points mostly cancels out. No ± is worked out for them.',
  noParts: 'no parts',
  points: 'Enter hard points',
  next: (title: string): string => `Next: ${title}`,
  edit: 'Edit hard points',
  numbers: (corner: string): string => `Ways to add static camber, ${corner.toLowerCase()}`,
  csv: {
    way: 'Way',
    amount: 'Amount',
    reached: 'Reached',
    yes: 'yes',
    no: 'no',
    camber: 'Camber',
    change: (what: string): string => `${what}, change`,
  },
  problems: {
    by: 'Camber to add',
    over: 'Wheel travel',
    unreached: (asked: string, sense: string, most: string): string =>
      `Camber to add: no way here adds ${asked} ${sense} camber; the most is ${most}. Ask for ${most} or less.`,
    nothing: (asked: string, sense: string): string =>
      `Camber to add: no way here adds ${asked} ${sense} camber to this car. Ask for less, or for the other direction.`,
    most: (asked: string, most: string): string =>
      `Camber to add is ${asked}, more than any road car takes. Enter ${most} or less.`,
    useMost: (most: string): string => `Ask for ${most}`,
  },
  sheets: {
    over: {
      title: 'Wheel travel looked at',
      label: 'Bump',
      howTo:
        'Camber gain covers this much bump from where the car stands; bump steer covers as much bump and droop. A kerb, braking or a turn usually takes about 40 mm.',
    },
    roll: {
      title: 'Roll in the turn',
      label: 'Suspension roll',
      change: 'Change the roll',
      howTo:
        'How far the body leans on its suspension in the turn: from a photo taken square from behind (less the roll on the tyres), or from cable ties on both dampers. A road car cornered hard rolls by about 3°.',
    },
  },
});
