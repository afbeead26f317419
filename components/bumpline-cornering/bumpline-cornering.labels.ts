import { words } from '../../core/quantity/words.js';
/** All English words of the element besides those of its first answer. */
export const NAMES = words('cornering/labels', {
  ends: {
    outer: 'There the outer wheel runs out of bump travel.',
    inner: 'There the inner wheel runs out of droop travel.',
  },
  slider: 'Body roll on the springs',
  usualRoll: '3°, assumed',
  turn: 'Roll, steering, tyres and camber',
  asked: {
    straight: 'Steering straight ahead.',
    steered: (radius: string): string => `Steered for a turn of ${radius} radius.`,
    steer: 'Steer',
    noTyres: 'Roll on the tyres is not counted.',
    tyres: (size: string): string => `The tyres add ${size} of roll.`,
    tyre: 'Tyres',
    asLeft: 'Static camber as the height leaves it.',
    set: (size: string): string => `Static camber reset to ${size}.`,
    camber: 'Camber',
    noTrack: 'Track not entered.',
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
    note: 'Outer wheel; plus is top out. Each bar starts where the one above ends.',
    sum: 'to the road',
    parts: {
      static: 'static camber',
      travel: 'bump',
      steer: 'steer',
      roll: 'body roll',
      tyre: 'tyres',
      rest: 'rest',
    },
    rest: 'Rest: a steered wheel takes on less than the whole roll.',
  },
  setups: {
    title: 'Setups side by side',
    caption: 'Outer wheel’s inclination to the road',
    setup: 'Setup',
    asLeft: 'Camber as the height leaves it',
    setAgain: (camber: string): string => `Camber reset to ${camber}`,
    heldRoll: (roll: string): string =>
      `Every setup at ${roll} of body roll. At the same lateral acceleration a lower car rolls by a different amount, which depends on the springs, the centre of gravity and the roll centre.`,
    setHow: 'Camber is reset at each height: at the top mount, or by the upper arm of a double wishbone.',
    none: 'beyond reach',
    waiting: 'Working it out …',
  },
  wheels: {
    title: 'Both wheels, travel left, roll centre',
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
      bumpLeft: 'Bump left before the links bind',
      droopLeft: 'Droop left before the links bind',
    },
    first: {
      outer: 'The outer wheel’s links run out first, in bump.',
      inner: 'The inner wheel’s links run out first, in droop.',
    },
    links:
      'No bump stop has been entered. It ends bump long before the links do, and once it is touched the car rolls less than on its springs alone.',
    stop: 'Enter the gap to the bump stop',
    touched: (left: string): string =>
      `The bump stop is touched first, ${left} before the bump travel that this roll takes. From there the axle is stiffer, rolls less and lifts.`,
    ackermann: (outer: string, inner: string, radius: string): string =>
      `A turn of ${radius} asks for ${outer} outside and ${inner} inside so that no wheel scrubs (Ackermann, no slip angles).`,
    rack: (size: string): string => `The rack is ${size} into the turn.`,
    rollCentre: (height: string, aside: string): string => `Roll centre: ${height}, ${aside}.`,
    level: (height: string): string => `With the body level: ${height}.`,
    above: (size: string): string => `${size} above the road`,
    below: (size: string): string => `${size} below the road`,
    far: 'It is where two nearly parallel lines meet, so choose no part by it.',
    out: (size: string): string => `${size} towards the outer wheel`,
    in: (size: string): string => `${size} towards the inner wheel`,
    middle: 'in the middle',
    perDegree: (size: string): string =>
      `Each further degree of roll changes the outer wheel’s inclination by ${size}.`,
  },
  wanted: {
    title: 'Reach the inclination you want',
    enter: 'Enter your target',
    note: 'We know of no data on the best inclination, so none is suggested. Tyre temperatures across the tread and a stopwatch show yours.',
    now: (size: string): string => `Wanted: ${size} to the road, outer wheel.`,
    camber: (size: string, change: string): string =>
      `At this roll it takes ${size} of static camber, set where the car stands (${change}).`,
    tooMuch: (most: string): string => `No part sets more than about ${most}: aim lower, or for less roll.`,
    more: (size: string): string => `${size} more negative`,
    less: (size: string): string => `${size} less negative`,
    same: 'as it is',
    roll: (size: string, now: string): string =>
      `With camber as it is, it takes ${size} of body roll instead of ${now}.`,
    noCamber: (limit: string): string => `At this roll no static camber gets there: the nearest is ${limit}.`,
    noRoll: (limit: string): string => `With camber as it is no roll gets there: the nearest is ${limit}.`,
    change: 'Change it',
    waiting: 'Working it out …',
  },
  sheets: {
    tyreRoll: {
      title: 'Roll on the tyres',
      label: 'The tyres add',
      howTo:
        'A photo from straight behind shows all of the body’s roll, on springs and tyres; cable ties show the springs’ part. Enter the difference. If you leave it empty, 0 is used.',
    },
    radius: {
      title: 'Radius of the turn',
      label: 'Radius',
      howTo:
        'From the turn’s centre to the middle of the rear axle. With the wheelbase it gives the steering angles at walking pace, without slip angles. Leave it empty for steering straight ahead.',
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
        'From wheel centre to wheel centre across the car: measure from one tyre’s inner edge to the other’s outer edge. It decides how far a wheel moves at a given roll.',
    },
    camber: {
      title: 'Static camber, reset',
      label: 'Static camber',
      howTo:
        'The camber an alignment sets at the car’s present height. Leave it empty for camber as height and parts leave it. Top in is negative.',
    },
    wanted: {
      title: 'Inclination you want',
      label: 'Outer wheel to the road',
      howTo:
        'The outer wheel’s angle to the road in this turn; plus is top out. We know of no best value: it is your target.',
    },
  },
  steerNeeds: 'Steering counts once both radius and wheelbase have been entered.',
  noSteer:
    'Readings and curves do not include steering. For steering, roll centre and parts, enter hard points or the six measurements.',
  doubtNote:
    'Every ± on this page is a 95 % interval. This one is for the outer wheel’s inclination, with the roll taken as exact.',
  links:
    'Links and tyres are taken as rigid, the road as level, left and right as alike. The outer wheel rises as far as the inner one drops.',
});
