import type { ToeAdjustment } from '../../core/linkage/toe-adjustment.js';
import { words } from '../../core/quantity/words.js';

/** All English words of the element besides those of its first answer. */
export const NAMES = words('toe/labels', {
  chartX: 'Wheel travel',
  chartY: 'Toe change, in +',
  chart: (height: string): string =>
    `How far the wheel turns in or out over wheel travel, counted from where it stands ${height}.`,
  asIs: 'as it is',
  stock: 'stock height',
  lower: (size: string): string => `${size} lower`,
  higher: (size: string): string => `${size} higher`,
  unmeasured: 'not measured',
  band: 'The band covers 95 % of the wheel as it is, straight ahead.',
  ofOne: 'Curves, numbers and shim are for one wheel.',
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
  points: 'Enter hard points',
  next: (title: string): string => `Next: ${title}`,
  edit: 'Edit hard points',
  doubtNote: 'Every ± on this page is a 95 % interval.',
  links: 'Links are taken as rigid: the give of bushes and tyres, and play, are not included.',
  numbers: 'Numbers',
  missing: 'This part could not be fetched. Check the connection and press the button again; nothing is lost.',
  unknown: {
    title: 'Toe is not known yet',
    driveway:
      'Six measurements in a driveway give camber and the roll centre, but say nothing about the tie rod. Read toe over wheel travel with a gauge, two dials or a tape, or enter the eight hard points.',
    curve:
      'A camber curve says nothing about the tie rod. Read toe over wheel travel with a gauge, two dials or a tape, or enter the eight hard points.',
  },
  steered: {
    this: 'turned',
    other: 'other wheel',
    fold: 'Turn the steering',
    label: 'Rack to the left (+) or right (−)',
    ahead: 'straight ahead',
    outer: (angle: string, change: string, other: string, over: string): string =>
      `Steered by ${angle}, this is the outer wheel of the turn: ${change} over ${over} of bump, the inner one ${other}.`,
    inner: (angle: string, change: string, other: string, over: string): string =>
      `Steered by ${angle}, this is the inner wheel of the turn: ${change} over ${over} of bump, the outer one ${other}.`,
  },
  cure: {
    title: 'What cures the bump steer',
    fold: 'Shim sizes, and how to fit them',
    choose: 'Move the',
    adjust: { outerEnd: 'tie rod’s outer end', rack: 'rack', innerEnd: 'tie rod’s inner end' } satisfies Record<
      ToeAdjustment,
      string
    >,
    how: {
      outerEnd: 'Fit shims or a tapered rod end between the tie rod and the knuckle’s steering arm.',
      rack: 'Fit spacers under the rack’s mounts; they move both wheels’ tie rods.',
      innerEnd: 'Move the tie rod’s inner joint on the rack; it changes this wheel alone.',
    } satisfies Record<ToeAdjustment, string>,
    slider: {
      outerEnd: 'Outer end up (+) or down (−)',
      rack: 'Rack up (+) or down (−)',
      innerEnd: 'Inner end up (+) or down (−)',
    } satisfies Record<ToeAdjustment, string>,
    asIs: 'as it is',
    asItIs: 'Nothing moved yet.',
    ticks: {
      slope: 'level where it stands',
      leastSquares: 'least squares',
      minimax: 'flattest',
      all: 'flattest',
    },
    what: {
      outerEnd: (size: string, way: string): string => `rod end ${size} ${way}`,
      rack: (size: string, way: string): string => `rack ${size} ${way}`,
      innerEnd: (size: string, way: string): string => `inner end ${size} ${way}`,
    } satisfies Record<ToeAdjustment, (size: string, way: string) => string>,
    down: 'lower',
    up: 'higher',
    fromTo: (low: string, high: string): string => `${low} to ${high}`,
    noRod: 'No tie-rod length suits the path of this joint, so no shim does better.',
    beyond: 'The links do not reach as far as that. Try less travel in the sentence.',
    best: (what: string, window: string, after: string, before: string): string =>
      `Toe is flattest with the ${what}: from ${window} it then moves by ${after} in all, instead of ${before}.`,
    none: (before: string, window: string): string =>
      `This is as flat as it gets: from ${window} toe moves by ${before} in all, and moving this end does not reduce that.`,
    shown: (what: string, spread: string, window: string): string =>
      `With the ${what}, toe moves by ${spread} in all from ${window}.`,
    toeSet: 'At every position of the slider, toe is reset at ride height by the length of the tie rod.',
    each: (mm: string, size: string, over: string): string =>
      `Each ${mm} of shim changes the toe change over ${over} of bump by ${size}.`,
    tooShort: (size: string, part: string): string =>
      `The rest remains because the tie rod is ${size} too short for this ${part}; no shim does better.`,
    tooLong: (size: string, part: string): string =>
      `The rest remains because the tie rod is ${size} too long for this ${part}; no shim does better.`,
    part: { strut: 'arm and strut', wishbone: 'pair of arms' },
    outOfRange: (range: string): string => `No position within ${range} keeps toe level where the car stands.`,
    atEnd: (range: string): string => `That is as far as we try, ${range}; further on it would be flatter still.`,
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
    again: 'Fit it, then measure toe again: no calculation knows of a worn joint, a soft bush or a mark that slipped.',
    waiting: 'Working out what flattens it …',
  },
  shim: {
    title: 'What cures the bump steer',
    needs:
      'From readings alone, the tie rod’s length, the steering arm and the rod’s side give the shim to about 15 %.',
    enter: (what: string): string => `Enter: ${what.toLowerCase()}`,
    found: (what: string, rod: string): string =>
      `With the ${what}, toe would stay about level where the car stands. That follows from the slope of your readings and ${rod}.`,
    flat: 'The slope of your readings is too small to tell from zero, so it gives no shim.',
    rod: (length: string, arm: string, side: string): string =>
      `a rod of ${length} on a steering arm of ${arm}, ${side}`,
    rule: 'The rule comes from a study of random struts, and the ± covers what it leaves open. Fit part of the shim, measure toe again, then fit the rest.',
  },
  sheets: {
    wheels: {
      title: 'Toe of one wheel or both',
      howTo:
        'Whether the sentence gives what each wheel turns, or both together, like total toe on an alignment sheet.',
      items: {
        one: { label: 'One wheel', short: 'one wheel' },
        both: { label: 'Both wheels together (total toe)', short: 'both wheels' },
      },
    },
    across: {
      title: 'Toe as a length, across',
      label: 'Diameter',
      howTo:
        'Toe in millimetres or inches is the difference between front and rear edge, so it depends on the diameter at which you measure: the rim’s flange, or the tyre.',
    },
    steeringRatio: {
      title: 'Steering ratio',
      label: 'Steering wheel to road wheel',
      howTo:
        'How many degrees of steering wheel turn the road wheels by one degree: often 14 to 18. Look in the workshop manual, or turn the steering wheel by a quarter and measure how far a wheel turns.',
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
      howTo: 'It decides which way a shim works.',
      items: {
        behind: { label: 'Behind the axle', short: 'behind the axle' },
        ahead: { label: 'Ahead of the axle', short: 'ahead of the axle' },
      },
    },
    zeroAt: {
      title: 'Zero of the readings',
      label: 'Below stock height',
      howTo:
        'How far the car was lowered when the readings’ travel was zero. If zero was ride height, this is the drop.',
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
});
