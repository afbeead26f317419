import type { CamberWay } from '../../core/answers/camber-ways.js';
import type { CamberCost } from '../../core/document/camber-costs.js';
import { RESTS } from '../element/rests.labels.js';

/** What stands over a column, and where there is little room. */
interface CostName {
  label: string;
  short: string;
}

/** English words of what lies under the sentence. */
export const NAMES = {
  ...RESTS,
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
    title: (asked: string): string => `Ways to add ${asked}, and what each changes`,
    way: 'Way',
    asItIs: 'As it is',
    camber: (angle: string): string => `${angle} of camber`,
    sortBy: 'Sort by',
    unsorted: 'the order of the list',
    sortStep: 'the order of the ways',
    sorted: (what: string, order: string): string => `Sorted by ${what}, ${order}.`,
    first: {
      smallest: ['smallest first', 'largest first'],
      largest: ['largest first', 'smallest first'],
      most: ['most first', 'least first'],
      least: ['least first', 'most first'],
    },
    unreachedLast: 'Ways that do not get there stand last.',
    turn: 'The other way round',
    scroll: 'The table goes on to the right: swipe or scroll it sideways.',
    legend: 'Bold: the change. Under it: what it becomes. Toe-in is positive.',
    notKnown: 'not known',
    notReached: 'not reached',
    waiting: '…',
  },
  ways: {
    topMount: 'Plate at the top mount',
    knuckleBolts: 'Knuckle bolts',
    knuckle: 'Knuckle with camber machined in',
    longerArm: 'Longer lower arm',
    ballJoint: 'Ball joint offset in the knuckle',
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
  ends: (end: string, given: string): string => `not reached; ends at ${end}: ${given}`,
  needs: (amount: string): string => ` (needs ${amount})`,
  none: 'does nothing here',
  before: 'Before you buy',
  method: 'What these figures are',
  pictures: 'Side by side',
  now: (figure: string): string => `now ${figure}`,
  morePictures: (count: number): string => `${count} more figures side by side`,
  picturesNote:
    'Each bar is the change of one figure. Faint bars are of ways that do not get there, and may run off the edge.',
  noToe:
    'Six measurements in a driveway tell nothing of the tie rod, so toe before alignment and bump steer are not known. The eight hard points tell them, or a gauge: read toe over wheel travel.',
  wishbone:
    'A double wishbone has neither a top mount that holds the wheel upright nor bolts on a strut: those two ways are left out.',
  turnNote: (roll: string, tyres: string, steer: string): string =>
    `In the turn: ${roll} of suspension roll${tyres}, ${steer}, at this drop without heave, toe set again.`,
  turnAt: (roll: string, lateral: string): string => `${roll} (at ${lateral}, worked out again for each way)`,
  turnMarks: (roll: string): string => `${roll} (from the cable ties)`,
  turnComing: 'In the turn: the roll is being worked out.',
  turnNoRoll:
    'In the turn: the roll cannot be worked out from what is given for it. Correct it where it is asked for, or give the roll itself.',
  turnTyres: (angle: string): string => ` and ${angle} of the tyres`,
  turnStraight: 'steering straight ahead',
  turnRadius: (radius: string, wheelbase: string): string => `a radius of ${radius} with a wheelbase of ${wheelbase}`,
  turnSolid: (taken: string, left: string, short: string): string =>
    `The outer wheel is solid on its stop before that: this roll takes ${taken} of bump, ${left} are left, ${short} too few. The car does not get there.`,
  turnSolidWith: (ways: string): string => `With these ways the outer wheel is solid on its stop before that: ${ways}.`,
  turnFault: 'The turn could not be worked out; the other figures stand.',
  turnBeyond: (roll: string, limit: string): string =>
    `In the turn: at ${roll} of roll a wheel of this car runs out of travel; its links reach to ${limit}. Ask for less roll.`,
  turnTight: (radius: string, limit: string): string =>
    `In the turn: a radius of ${radius} is inside the lock, which ends at ${limit}. Ask for a wider turn.`,
  steerNote:
    'At 15° and 30° of steer on the ground: the wheel’s lean to the road, body level. Camber from caster is in it.',
  roomNote:
    'Bump travel: how much more the damper’s stroke leaves, at the wheel. Strut gap: by how much further the strut stands from the tyre, at the tyre’s edge nearest to it.',
  archNote:
    'Gap from tyre to arch: not worked out here. On the tyre page, “Camber changed with the wheels” shows what a plate does to it; with any other way, measure the arch again.',
  boltNote: 'Knuckle bolts: turned about the lower of two usual bolts, a place that is assumed.',
  limits: 'How far each way goes is what such parts usually give, not what the law or your class allows.',
  aligned: 'Every one of these ways needs a wheel alignment afterwards: set the height first, then camber, then toe.',
  competition: 'Competition: rule books often restrict some of these ways. Read your own class’s rules before you buy.',
  bolts:
    'Eccentric (cam) bolts keep their setting only by clamp force: the maker’s torque, checked again after some driving.',
  links: 'Rigid links: compliance is not modelled. Bushes that give way, tyres and play are not in these numbers.',
  noDoubt:
    'These are differences on one and the same car, so an error in its points mostly cancels out. No ± is worked out for them.',
  noParts: 'no parts',
  points: 'Enter my hard points',
  next: (title: string): string => `Next: ${title}`,
  edit: 'Edit my hard points',
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
      `Camber to add: no way here gives ${asked} ${sense} camber; the most is ${most}. Ask for ${most} or less.`,
    nothing: (asked: string, sense: string): string =>
      `Camber to add: no way here gives ${asked} ${sense} camber on this car. Ask for less, or for the other way.`,
    most: (asked: string, most: string): string =>
      `Camber to add is ${asked}, more than any road car takes. Enter ${most} or less.`,
    useMost: (most: string): string => `Ask for ${most}`,
  },
  sheets: {
    over: {
      title: 'Wheel travel looked at',
      label: 'Bump',
      howTo:
        'Camber gain is told over so much bump from where the car stands, bump steer over so much bump and droop. 40 mm is what a kerb, a brake dive or a turn usually takes.',
    },
    roll: {
      title: 'Roll in the turn',
      label: 'Suspension roll',
      change: 'Change the roll',
      howTo:
        'By how much the body leans on its suspension in the turn, from a photo taken square from behind (less what the tyres give way), or from cable ties on both dampers. 3° is a usual road car, cornered hard.',
    },
  },
} as const;
