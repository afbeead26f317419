import type { ToeAdjustment } from '../../core/linkage/toe-adjustment.js';
import { RESTS } from '../element/rests.labels.js';

/** All English words of the element besides those of its first answer. */
export const NAMES = {
  ...RESTS,
  chartX: 'Wheel travel',
  chartY: 'Toe change, in +',
  chart: (height: string): string =>
    `How far the wheel turns in or out over wheel travel, counted from where it stands ${height}.`,
  asIs: 'as it is',
  stock: 'stock height',
  lower: (size: string): string => `${size} lower`,
  higher: (size: string): string => `${size} higher`,
  unmeasured: 'not measured',
  band: 'The band covers 95 %. It is that of the wheel as it is, straight ahead.',
  ofOne: 'Curves, numbers and shim are of one wheel.',
  table: (corner: string): string => `Toe over wheel travel, ${corner.toLowerCase()}`,
  columns: {
    travel: 'Travel',
    toe: 'Toe-in',
    change: 'Change',
    after: (what: string): string => `Change, ${what}`,
  },
  cursor: (travel: string, toe: string, change: string): string =>
    `${travel}: toe ${toe}, ${change} from where it stands`,
  cursorUnmeasured: (travel: string): string => `${travel}: not known`,
  noParts: 'no parts',
  from: 'Toe from',
  fromLinks: 'hard points',
  fromStep: 'what toe is from',
  paste: 'Paste toe readings',
  readings: 'Toe readings',
  pasted: 'readings of toe',
  points: 'Enter my hard points',
  next: (title: string): string => `Next: ${title}`,
  edit: 'Edit my hard points',
  doubtNote: 'Every ± on this page is a 95 % interval.',
  links: 'Rigid links: bushes that give way, tyres and play are not in these numbers.',
  numbers: 'Numbers',
  missing: 'This part could not be fetched. Check the connection and press the button again; nothing is lost.',
  unknown: {
    title: 'Toe is not known yet',
    driveway:
      'Six measurements in a driveway tell camber and the roll centre, and nothing of the tie rod. Read toe off a gauge, two dials or a tape over wheel travel, or enter the eight hard points.',
    curve:
      'A curve of camber tells nothing of the tie rod. Read toe off a gauge, two dials or a tape over wheel travel, or enter the eight hard points.',
  },
  steered: {
    this: 'turned',
    other: 'other wheel',
    label: 'Steering turned: rack to the left (+) or right (−)',
    ahead: 'straight ahead',
    outer: (angle: string, change: string, other: string, over: string): string =>
      `Steered by ${angle}, this is the outer wheel of the turn: ${change} over ${over} of bump, the inner one ${other}.`,
    inner: (angle: string, change: string, other: string, over: string): string =>
      `Steered by ${angle}, this is the inner wheel of the turn: ${change} over ${over} of bump, the outer one ${other}.`,
  },
  cure: {
    title: 'What flattens it',
    choose: 'Move the',
    adjust: { outerEnd: 'rod’s outer end', rack: 'rack', innerEnd: 'rod’s inner end' } satisfies Record<
      ToeAdjustment,
      string
    >,
    how: {
      outerEnd: 'Shims or a tapered rod end between the tie rod and the knuckle’s steering arm.',
      rack: 'Spacers under the rack’s mounts: they move both wheels’ rods.',
      innerEnd: 'The rod’s inner joint in another place on the rack: of this wheel alone.',
    } satisfies Record<ToeAdjustment, string>,
    slider: {
      outerEnd: 'Outer end up (+) or down (−)',
      rack: 'Rack up (+) or down (−)',
      innerEnd: 'Inner end up (+) or down (−)',
    } satisfies Record<ToeAdjustment, string>,
    asIs: 'as it is',
    asItIs: 'As it is: nothing moved.',
    ticks: {
      slope: 'level where it stands',
      leastSquares: 'least squares',
      minimax: 'flattest',
      all: 'flattest by all three',
    },
    what: {
      outerEnd: (size: string, way: string): string => `rod end ${size} ${way}`,
      rack: (size: string, way: string): string => `rack ${size} ${way}`,
      innerEnd: (size: string, way: string): string => `inner end ${size} ${way}`,
    } satisfies Record<ToeAdjustment, (size: string, way: string) => string>,
    down: 'lower',
    up: 'higher',
    fromTo: (low: string, high: string): string => `${low} to ${high}`,
    noRod: 'What remains: no length of rod suits the path of this joint. No shim does better.',
    beyond: 'Here the links do not reach as far as was asked. A shorter travel in the sentence may do.',
    best: (what: string, window: string, after: string, before: string): string =>
      `Flattest with the ${what}: from ${window}, toe then moves by ${after} in all. As it is, it moves by ${before}.`,
    none: (before: string, window: string): string =>
      `As flat as it gets: from ${window}, toe moves by ${before} in all, and moving this end makes it no less.`,
    shown: (what: string, spread: string, window: string): string =>
      `With the ${what}: ${spread} in all from ${window}.`,
    toeSet: 'Toe is set again where the car stands, by the length of the tie rod, for every position of the slider.',
    each: (mm: string, size: string, over: string): string =>
      `Each ${mm} of shim changes toe over ${over} of bump by ${size}.`,
    tooShort: (size: string, part: string): string =>
      `What remains: the tie rod is ${size} too short for this ${part}. No shim does better.`,
    tooLong: (size: string, part: string): string =>
      `What remains: the tie rod is ${size} too long for this ${part}. No shim does better.`,
    part: { strut: 'arm and strut', wishbone: 'pair of arms' },
    outOfRange: (range: string): string => `No position within ${range} keeps toe level where the car stands.`,
    atEnd: (range: string): string =>
      `That is the end of what is tried here, ${range}: moved further, it would be flatter still.`,
    facts: {
      slope: 'Level where it stands',
      leastSquares: 'Least squares',
      minimax: 'Flattest',
    },
    fact: (amount: string, after: string): string => `${amount}, leaves ${after}`,
    noSlope: 'not within reach',
    use: (what: string): string => `Try ${what}`,
    step: 'the rod’s end',
    rackStep: 'the steering',
    adjustStep: 'what is moved',
    again: 'Fit it, then measure toe again: a worn joint, a bush or a mark that slipped is in no calculation.',
    waiting: 'Working out what flattens it …',
  },
  shim: {
    title: 'What flattens it',
    needs:
      'From readings alone the tie rod’s length, its steering arm and the side it is on tell the shim to about 15 %.',
    enter: (what: string): string => `Enter: ${what.toLowerCase()}`,
    found: (what: string, rod: string): string =>
      `With the ${what}, toe would stay about level where the car stands: by the slope of your readings and ${rod}.`,
    flat: 'The slope of your readings is too small to tell from zero: no shim can be told from it.',
    rod: (length: string, arm: string, side: string): string =>
      `a rod of ${length} on a steering arm of ${arm}, ${side}`,
    rule: 'By a rule that a study of random struts gave; the ± covers what it leaves open. Fit part of it, measure toe again, then fit the rest.',
  },
  sheets: {
    wheels: {
      title: 'Toe told of',
      howTo: 'How the sentence tells toe: what each wheel turns, or both together, as total toe on an alignment sheet.',
      items: {
        one: { label: 'One wheel', short: 'one wheel' },
        both: { label: 'Both wheels together (total toe)', short: 'both wheels' },
      },
    },
    across: {
      title: 'Toe as a length, across',
      label: 'Diameter',
      howTo:
        'Toe in millimetres or inches is the difference between front and rear edge, so it depends on where it is measured: at the rim’s flange, or across the tyre.',
    },
    steeringRatio: {
      title: 'Steering ratio',
      label: 'Steering wheel to road wheel',
      howTo:
        'How many degrees the steering wheel is turned for one degree of the road wheels: often 14 to 18. It is in the workshop manual; or turn the steering wheel by a quarter and measure how far a wheel turns.',
    },
    rodLength: {
      title: 'Tie rod’s length',
      label: 'Joint to joint',
      howTo:
        'From the middle of the ball joint at the rack to the middle of the ball joint at the knuckle, along the rod.',
    },
    lever: {
      title: 'Steering arm',
      label: 'Rod’s joint to steering axis',
      howTo:
        'Seen from above: from the rod’s outer ball joint to the line through the lower ball joint and the top mount, square to the rod.',
    },
    rackSide: {
      title: 'Side of the tie rod',
      howTo: 'Which way a shim works depends on it.',
      items: {
        behind: { label: 'Behind the axle', short: 'behind the axle' },
        ahead: { label: 'Ahead of the axle', short: 'ahead of the axle' },
      },
    },
    zeroAt: {
      title: 'Zero of the readings',
      label: 'Below stock height',
      howTo:
        'How far the car was lowered where the readings’ travel is zero. At zero it stood at ride height: then that is its drop.',
    },
  },
  drawing: {
    title: (where: string): string => `Front view of the links and the tie rod, ${where}`,
    ofTravel: (travel: string): string => `at ${travel} of travel`,
    aim: (across: string, height: string): string => `Dashed: should aim ${across}, ${height}`,
    up: (size: string): string => `${size} up`,
    down: (size: string): string => `${size} down`,
    inboard: (size: string): string => `${size} inboard`,
    outboard: (size: string): string => `${size} outboard`,
    level: 'Dashed: should run parallel to the arm',
    should: (is: string, should: string): string => `Rod ${is}; ${should}, to the ring, would suit`,
    isOnly: (is: string): string => `Rod ${is}`,
  },
} as const;
