import { words } from '../../core/quantity/words.js';

/** English words of the list of parts: what each is called, what its amounts are, what to measure at the part itself. */
export const PARTS = words('parts/parts', {
  add: 'Add a part',
  added: 'add a part',
  remove: 'Take this part off',
  removed: 'take a part off',
  changed: (part: string): string => `amount: ${part}`,
  trusted: (part: string): string => `how sure: ${part}`,
  none: 'No parts yet. Choose one below.',
  plusMinus: '±',
  within: 'The part is as sold within',
  where: 'Where it acts, and what to measure',
  find: {
    title: 'How large must it be?',
    rate: (height: string): string => `To have the camber rate of stock height back, ${height}.`,
    camber: (height: string): string => `Static camber to reach, ${height}`,
    lower: (drop: string): string => `${drop} lower`,
    higher: (drop: string): string => `${drop} higher`,
    stock: 'at stock height',
    find: 'Work it out',
    waiting: 'Working it out…',
    found: (field: string, size: string): string => `${field} ${size}.`,
    open: 'No ± is stated of the links, so none is given here.',
    besides: 'The ± is that of the links and the other parts; the part’s own comes on top.',
    use: (size: string): string => `Use ${size}`,
    rateEnds: (size: string, rate: string, wanted: string): string =>
      `Out of reach: it ends with ${size}, at ${rate} in 10 mm of bump, and ${wanted} is wanted.`,
    camberEnds: (size: string, camber: string, wanted: string): string =>
      `Out of reach: it ends with ${size}, at ${camber}, and ${wanted} is wanted.`,
    untold:
      'What is known of the links does not tell it: the ± is wider than any such part. Correct the tie rod with it, or measure more.',
    failed: 'It could not be worked out. Press again.',
    unknown: 'Static camber was not measured. Give it with the other measurements first.',
  },
  tieRod: 'Tie-rod end lowered to match',
  tieRodUpper: 'Tie-rod end moved with it',
  rod: { corrected: 'tie rod corrected', asItWas: 'tie rod as it was' },
  again: 'Set again after the parts are on',
  alignment: {
    toe: 'Toe',
    'camber-and-toe': 'Toe and camber',
    'as-fitted': 'Nothing',
  },
  camberSet: {
    strut: 'Camber is set at the top mount, then toe at the tie rod.',
    wishbone: 'Camber is set by the length of the upper arm, then toe at the tie rod.',
  },
  rodUndone: 'Setting toe again takes this part’s length back out. Choose “Nothing” to see what it does by itself.',
  bolt: 'Assumed until you measure it: the other bolt is on the damper’s line, 60 mm above the wheel centre.',
  springOnArm: (size: string): string =>
    `The spring stands on this arm. This joint lowers the car by about ${size} by itself; the answer holds the wheel centre’s height, so add that to the drop.`,
  springOnArmUp: (size: string): string =>
    `The spring stands on this arm. This joint lifts the car by about ${size} by itself; the answer holds the wheel centre’s height, so take that off the drop.`,
  notOn: {
    strut: (part: string): string => `A strut has no place for ${part}. Take this part off.`,
    wishbone: (part: string): string => `A wishbone has no place for ${part}. Take this part off.`,
  },
  drawn: 'The corner from the front. The place where this part acts is marked, with an arrow the positive way.',
  fields: {
    lower: 'Ball centre lower by',
    higher: 'Ball centre higher by',
    out: 'Outboard',
    ahead: 'Forward',
    down: 'Down',
    up: 'Up',
    longer: 'Longer by',
    front: 'Front pivot raised by',
    rear: 'Rear pivot raised by',
    inboard: 'Inboard',
    rearward: 'Rearward',
    turned: 'Turned by',
    boltIn: 'Other bolt, inboard of the wheel centre',
    boltUp: 'Other bolt, above the wheel centre',
    boltAhead: 'Other bolt, ahead of the wheel centre',
    camber: 'Camber added',
    toe: 'Toe-in added',
    raised: 'Raised by',
    wheelOut: 'Wheel further out by',
  },
  /** As a list says which of several amounts it is. */
  brief: {
    out: 'outboard',
    down: 'down',
    ahead: 'forward',
    front: 'front',
    rear: 'rear',
    inboard: 'inboard',
    rearward: 'rearward',
    up: 'up',
    camber: 'camber',
    toe: 'toe-in',
  },
  kinds: {
    lowerJoint: {
      title: 'Lower ball joint, longer',
      short: 'lower joint',
      what: 'the lower ball joint',
      plus: '+ lowers the arm’s outer end, − raises it.',
    },
    lowerJointMoved: {
      title: 'Lower ball joint, moved',
      short: 'lower joint',
      what: 'the lower ball joint',
      plus: 'Where the ball’s centre goes in the knuckle; negative is the other way.',
    },
    upperJoint: {
      title: 'Upper ball joint, longer',
      short: 'upper joint',
      what: 'the upper ball joint',
      plus: '+ raises the arm’s outer end over the knuckle, − lowers it.',
    },
    upperJointMoved: {
      title: 'Upper ball joint, moved',
      short: 'upper joint',
      what: 'the upper ball joint',
      plus: 'Where the ball’s centre goes in the knuckle; negative is the other way.',
    },
    arm: {
      title: 'Arm, longer',
      short: 'arm',
      what: 'the arm',
      plus: '+ moves the foot of the wheel outboard: more negative camber.',
    },
    upperArm: {
      title: 'Upper arm, longer',
      short: 'upper arm',
      what: 'the upper arm',
      plus: '+ moves the top of the wheel outboard: less negative camber.',
    },
    pivots: {
      title: 'Inner pivots, raised',
      short: 'inner pivots',
      what: 'the raised inner pivots',
      plus: '+ raises the arm’s inner end in the body, − lowers it.',
    },
    upperPivots: {
      title: 'Upper inner pivots, raised',
      short: 'upper pivots',
      what: 'the raised upper pivots',
      plus: '+ raises the upper arm’s inner end in the body, − lowers it.',
    },
    topMount: {
      title: 'Top mount, moved',
      short: 'top mount',
      what: 'the moved top mount',
      plus: 'Inboard adds negative camber, rearward adds caster. Negative is the other way.',
    },
    bolts: {
      title: 'Knuckle bolts, turned',
      short: 'knuckle bolts',
      what: 'the turned knuckle bolts',
      plus: '+ tilts the top of the wheel inboard: more negative camber.',
    },
    spin: {
      title: 'Camber in the knuckle',
      short: 'knuckle',
      what: 'the knuckle',
      plus: 'Added as camber is written: − tilts the top of the wheel inboard.',
    },
    rodEnd: {
      title: 'Tie-rod end, raised',
      short: 'tie-rod end',
      what: 'the raised tie-rod end',
      plus: '+ raises the rod’s outer end at the knuckle, − lowers it.',
    },
    rod: {
      title: 'Tie rod, longer',
      short: 'tie rod',
      what: 'this length',
      plus: '+ makes it longer, − shorter.',
    },
    rack: {
      title: 'Rack, raised',
      short: 'rack',
      what: 'the raised rack',
      plus: '+ raises the rack in the body, − lowers it.',
    },
    wheel: {
      title: 'Wheel offset or spacer',
      short: 'wheel offset',
      what: 'the wheel offset',
      plus: '+ moves the wheel outboard: a spacer, or a smaller ET.',
    },
  },
  /** What to measure at the part itself. */
  measures: {
    joint:
      'Put the old joint and the new one side by side. On each, measure from the taper’s seat to the centre of the ball. Only the difference counts: a longer stud whose ball stays where it was changes nothing.',
    jointMoved:
      'Put both parts side by side. Measure how far the ball’s centre is moved from the holes or the taper that hold the part.',
    arm: 'Lay both arms on a bench. On each, measure from the line through the inner bushes to the centre of the ball.',
    pivots:
      'Measure from a fixed place on the body, such as the chassis leg, to the middle of each inner bolt, before and after.',
    topMount:
      'Measure how far the bearing’s centre moves in the tower, not how far the plate slides under its bolts. Up is a mount whose bearing is higher.',
    bolts:
      'An angle gauge on the hub before and after, on the same spot, gives the angle. The other bolt is the one that stays: measure from the wheel centre to its middle.',
    spin: 'Both knuckles on a bench: an angle gauge on the hub’s face against the bore that takes the damper, on each.',
    rodEnd:
      'Put both rod ends side by side. On each, measure from the taper’s seat to the centre of the ball; add a spacer’s thickness.',
    rod: 'Count the turns: one turn is the pitch of the thread.',
    rack: 'The thickness of the spacers, or the height of the inner ball joint over the floor, before and after.',
    wheel: 'Old ET minus new ET, plus the thickness of a spacer.',
  },
});
