import { RESTS } from '../element/rests.labels.js';
/** All English words of the element besides those of its first answer. */
export const NAMES = {
  ...RESTS,
  ends: {
    outer: 'There the outer wheel comes to its end in bump.',
    inner: 'There the inner wheel comes to its end in droop.',
  },
  slider: 'Body roll on the springs',
  usualRoll: '3°, taken until you say',
  asked: {
    straight: 'Steering straight.',
    steered: (radius: string): string => `Steered for a turn of ${radius} radius.`,
    steer: 'Steer',
    noTyres: 'The tyres’ share of the roll is left out.',
    tyres: (size: string): string => `The tyres add ${size} of roll.`,
    tyre: 'Tyres',
    asLeft: 'Camber as the height leaves it.',
    set: (size: string): string => `Camber set again to ${size}.`,
    camber: 'Camber',
    noTrack: 'Track not given.',
    trackIs: (size: string): string => `Track ${size}.`,
    track: 'Track',
  },
  outer: 'outer wheel',
  inner: 'inner wheel',
  stock: 'stock height',
  lower: (size: string): string => `${size} lower`,
  higher: (size: string): string => `${size} higher`,
  withSet: (height: string, set: string): string => `${height}, ${set}`,
  noParts: 'no parts',
  drawing: {
    title: (times: string, outer: string, inner: string): string =>
      `The axle from behind in a left turn, ${times}. Outer wheel ${outer} to the road, inner wheel ${inner}.`,
    times: (count: number): string => `tilts drawn ${count} times larger`,
    asIs: 'tilts drawn to scale',
    turn: 'left turn, from behind',
    wheel: (name: string, size: string): string => `${name} ${size}`,
    rollCentre: 'roll centre',
    rollCentreAt: (height: string): string => `roll centre ${height}`,
    rollCentreFar: 'roll centre off the sheet',
    from: (height: string): string => `level: ${height}`,
  },
  bars: {
    title: 'How it adds up',
    chart: (rows: string): string => `Bars that add up to the outer wheel’s inclination to the road. ${rows}.`,
    row: (name: string, parts: string, sum: string): string => `${name}: ${parts}; together ${sum}`,
    note: 'Outer wheel, top outward positive. Each bar begins where the one above it ends.',
    sum: 'to the road',
    parts: {
      static: 'static camber',
      travel: 'bump',
      steer: 'steer',
      roll: 'body roll',
      tyre: 'tyres',
      rest: 'rest',
    },
    rest: 'Rest: a wheel that points aside takes less than the whole roll.',
  },
  setups: {
    title: 'Setups side by side',
    caption: 'Outer wheel’s inclination to the road',
    setup: 'Setup',
    asLeft: 'Camber as height leaves it',
    setAgain: (camber: string): string => `Camber set again to ${camber}`,
    heldRoll: (roll: string): string =>
      `Held: ${roll} of body roll for every setup. At the same lateral acceleration a lower car rolls by another amount: the springs, the centre of gravity and the roll centre decide.`,
    setHow: 'Set again at the top mount (of a double wishbone by its upper arm), at each height.',
    none: 'beyond reach',
    waiting: 'Working it out …',
  },
  wheels: {
    title: 'Both wheels',
    caption: (roll: string): string => `Both wheels at ${roll} of body roll`,
    what: 'Quantity',
    unit: 'Unit',
    outer: 'Outer',
    inner: 'Inner',
    rows: {
      travel: 'Travel in the turn',
      camber: 'Camber to the body',
      inclination: 'Inclination to the road',
      plusMinus: '± of that, 95 %',
      toe: 'Toe-in',
      steer: 'Steer, into the turn',
      stopLeft: 'Bump left to the stop',
      solidLeft: 'Bump left until solid',
      bumpLeft: 'Bump the links alone leave',
      droopLeft: 'Droop the links alone leave',
    },
    first: {
      outer: 'Of the links, the outer wheel’s come to their end first, in bump.',
      inner: 'Of the links, the inner wheel’s come to their end first, in droop.',
    },
    links:
      'No bump stop is given: it ends bump long before the links do, and a stop that is touched makes roll unlike that of springs.',
    stop: 'Enter the gap to the bump stop',
    touched: (left: string): string =>
      `The bump stop is touched before that: it has ${left} less than this roll needs. Then the axle is stiffer, rolls less and lifts.`,
    ackermann: (outer: string, inner: string, radius: string): string =>
      `A turn of ${radius} asks for ${outer} outside and ${inner} inside so that no wheel scrubs (Ackermann, no slip angles).`,
    rack: (size: string): string => `The rack is ${size} into the turn.`,
    rollCentre: (height: string, aside: string): string => `Roll centre: ${height}, ${aside}.`,
    level: (height: string): string => `With the body level: ${height}.`,
    above: (size: string): string => `${size} above the road`,
    below: (size: string): string => `${size} below the road`,
    far: 'Two nearly parallel lines meet there: nothing to choose a part by.',
    out: (size: string): string => `${size} towards the outer wheel`,
    in: (size: string): string => `${size} towards the inner wheel`,
    middle: 'in the middle',
    perDegree: (size: string): string => `A degree more of roll changes the outer wheel’s inclination by ${size}.`,
  },
  wanted: {
    title: 'What would bring it to your target?',
    enter: 'Type the inclination you want',
    note: 'No data on the best inclination could be read, so none is suggested. Tyre temperatures across the tread and a stopwatch are how people find theirs.',
    now: (size: string): string => `Wanted: ${size} to the road, outer wheel.`,
    camber: (size: string, change: string): string =>
      `With this roll: static camber ${size}, set where the car stands (${change}).`,
    tooMuch: (most: string): string =>
      `That is more than any road car takes: no part sets more than about ${most}. Ask for less, or for less roll.`,
    more: (size: string): string => `${size} more negative`,
    less: (size: string): string => `${size} less negative`,
    same: 'as it is',
    roll: (size: string, now: string): string => `With camber as it is: ${size} of body roll instead of ${now}.`,
    noCamber: (limit: string): string =>
      `No static camber that can be set does it at this roll: the nearest is ${limit}.`,
    noRoll: (limit: string): string => `No roll does it with camber as it is: the nearest is ${limit}.`,
    change: 'Change it',
    waiting: 'Working it out …',
  },
  sheets: {
    tyreRoll: {
      title: 'Roll on the tyres',
      label: 'The tyres add',
      howTo:
        'A photo from straight behind shows the body’s whole roll, on springs and tyres; cable ties show the springs’ share. The difference goes here. Leave it empty where you do not know it: 0 is taken.',
    },
    radius: {
      title: 'Radius of the turn',
      label: 'Radius',
      howTo:
        'From the turn’s centre to the middle of the rear axle. With the wheelbase it tells how far the wheels are steered at walking pace: slip angles are not in it. Leave it empty for steering straight.',
    },
    wheelbase: {
      title: 'Wheelbase',
      label: 'Wheelbase',
      howTo:
        'From the middle of the front axle to that of the rear one: from the handbook, or with a tape along the car.',
    },
    track: {
      title: 'Track',
      label: 'Track',
      howTo:
        'From wheel centre to wheel centre across the car: one tyre’s inner edge to the other’s outer edge. How far a wheel moves at a roll goes by it.',
    },
    camber: {
      title: 'Static camber, set again',
      label: 'Camber where it stands',
      howTo:
        'What an alignment sets where the car stands now, at the top mount. Leave it empty for camber as height and parts leave it. Top in is negative.',
    },
    wanted: {
      title: 'Inclination you want',
      label: 'Outer wheel to the road',
      howTo:
        'The outer wheel’s angle to the road in this turn, top outward positive. No best value is known here: it is your target.',
    },
  },
  steerNeeds: 'Steering is counted once both radius and wheelbase are given.',
  noSteer:
    'Readings and curves tell no steering: for steer, roll centre and parts enter hard points or the six measurements.',
  doubtNote:
    'Every ± on this page is a 95 % interval. It is that of the outer wheel’s inclination at this roll, the roll taken as exact.',
  links:
    'Rigid links and tyres, a level road, no heave: the outer wheel rises as far as the inner one falls. Left and right are taken as alike.',
} as const;
