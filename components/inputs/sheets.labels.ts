import { BUMP_STEER_OVER_MM, COVERED } from '../../core/driveway/driveway.js';
import { words } from '../../core/quantity/words.js';

/** What one sheet is called, and how its number is found. */
export interface SheetText {
  title: string;
  howTo: string;
  /** Of its field, where that is not called as the sheet. */
  label?: string;
}

/** English words of all that can be given of a car. */
export const SHEETS = words('inputs/sheets', {
  points: {
    'lowerArm.front': {
      title: 'Lower arm, front pivot',
      howTo: 'Centre of the front bush, where its bolt runs through the arm.',
    },
    'lowerArm.rear': {
      title: 'Lower arm, rear pivot',
      howTo: 'Centre of the rear bush. Any second point on the line the arm swings about will do.',
    },
    'lowerArm.ball': {
      title: 'Lower ball joint',
      howTo: 'Centre of the ball, not of the stud’s nut: about half the ball’s diameter inside the housing.',
    },
    'strut.top': {
      title: 'Top mount',
      howTo: 'Centre of the mount’s bearing or rubber, which the damper rod tilts about.',
    },
    'strut.low': {
      title: 'Damper, low point',
      howTo: 'Any point on the middle line of the damper tube, low down. It sets the line the strut slides along.',
    },
    'tieRod.inner': {
      title: 'Tie rod, inner end',
      howTo: 'Centre of the ball under the rack’s boot, steering straight.',
    },
    'tieRod.outer': {
      title: 'Tie rod, outer end',
      howTo: 'Centre of the ball at the steering arm, steering straight.',
    },
    wheelCentre: {
      title: 'Wheel centre',
      howTo: 'Middle of the hub, in the middle plane of the tyre. Measure x from here and it is 0.',
    },
  },
  axes: ['x, forward of the axle', 'y, out from the centreline', 'z, up from the ground'],
  camber: {
    title: 'Static camber',
    howTo: 'From an alignment sheet, or an angle gauge on the hub. Top in is negative.',
  },
  toe: {
    title: 'Static toe, this wheel alone',
    howTo: 'Half the total toe of the axle. Toe-in is positive.',
  },
  loadedRadius: {
    title: 'Loaded radius',
    howTo:
      'Hub centre straight down to the ground, car on its wheels. Until you enter it, the height of your wheel centre is used.',
  },
  bumpTravel: {
    title: 'Bump travel left',
    howTo:
      'How far the wheel can still rise, hub to arch, until the bump stop is solid, from where your car stands now. Work it out from the gap on the rod and half the stop’s length, or take the maker’s figure: never jack the wheel into its stop to find it.',
  },
  stopGap: {
    title: 'Gap to the bump stop',
    howTo:
      'Along the damper rod, from the end of the bump stop to the damper body, with the car as it stands now. The damper’s motion turns it into wheel travel.',
    label: 'Gap on the rod',
  },
  instead: { gap: 'I measured the gap on the damper’s rod', wheel: 'I measured it at the wheel' },
  other: {
    title: 'The other side',
    howTo:
      'The other wheel of the same axle: how far it has come down, hub centre to arch lip, and its static camber, read as on this side.',
    drop: 'Drop there',
    camber: 'Static camber there',
  },
  dropPlusMinus: {
    title: 'How sure of the drop',
    howTo: 'How far off it may be, in 95 of 100 cases. With a tape from hub centre to arch lip: about ±3 mm.',
  },
  driveway: {
    armLength: {
      title: 'Lower arm length',
      howTo:
        'From the middle of the arm’s inner bolt straight out to the middle of the ball joint. With two inner bolts: from the line through both.',
    },
    pivotHeight: {
      title: 'Height of the arm’s pivot',
      howTo:
        'Floor up to the middle of the inner bolt. With two: to the line through both, straight in from the ball joint.',
    },
    ballHeight: {
      title: 'Height of the ball joint',
      howTo: 'Floor up to the middle of the ball, inside its housing: not the nut, not the boot.',
    },
    wheelCentreHeight: { title: 'Height of the wheel centre', howTo: 'Floor straight up to the middle of the hub.' },
    damperLean: {
      title: 'Lean of the damper',
      howTo:
        'Zero the gauge on the floor, across the car, then lay it along the damper’s tube. Not the spring, not the steering axis. Top towards the engine is positive.',
    },
    topHeight: {
      title: 'Height of the top mount',
      howTo:
        'Floor up to the middle of the top mount: bonnet open, a straight edge laid level over the strut tower and out past the wing (fender).',
    },
    track: {
      title: 'Track',
      howTo:
        'From wheel centre to wheel centre across the car: tyre’s inner edge to the other’s outer edge. Only the roll centre asks for it.',
    },
    hubOffset: {
      title: 'Ball joint to the tyre’s middle',
      label: 'Straight out',
      howTo:
        'On the floor: a plumb line from the middle of the ball joint, and straight out from it to the middle of the tyre. It moves the wheel forward and back when you steer.',
    },
    caster: {
      title: 'Caster',
      howTo: `From an alignment sheet, at the height the car stood. Top leaning rearward is positive. If you leave it out, the ± does not cover a car with more than ${COVERED.caster}°.`,
    },
    bumpSteer: {
      title: 'Bump steer',
      label: 'Toe change',
      howTo: `If you know it: how much this wheel’s toe changes over the first ${BUMP_STEER_OVER_MM} mm of bump. Toe-in is positive. If you leave it out, the ± does not cover a car with more than ${COVERED.bumpSteer}° for each mm.`,
    },
    kingpin: {
      title: 'Kingpin inclination',
      howTo:
        'From an alignment sheet, if you cannot reach the damper. It is a different line from the damper’s: how far the ball joint stands off it (0 to 40 mm) is not known, and the ± covers that.',
    },
  },
  ways: {
    onlyKingpin: 'I only have kingpin inclination, from an alignment sheet',
    leanAfterAll: 'I can measure the damper’s lean after all',
    by: 'What can you measure?',
    driveway: {
      short: 'tape and gauge',
      label: 'Six things with a tape and an angle gauge, car on its wheels: ten minutes, camber only',
    },
    points: { short: 'hard points', label: 'Eight hard points in three directions: an afternoon, a smaller ±' },
    readings: {
      short: 'readings',
      label: 'Your readings: camber as you read it over the wheel’s travel',
    },
    stands: 'How does it stand while you measure?',
    standsWhere: {
      title: 'Height it was measured at',
      howTo:
        'Points, camber, toe and bump travel left are those of the car as it stood when you measured. The drop in the sentence is always counted from stock height.',
    },
    stock: { short: 'stock height', label: 'At stock height' },
    lowered: { short: 'lowered already', label: 'Lowered already' },
    corner: 'Which corner is it?',
    way: { title: 'Your car', howTo: 'Enter what you have. What you leave out is assumed, with a wide ±.' },
    lowerBy: {
      title: 'How much lower it stands',
      howTo: 'Hub centre to arch lip, straight up: how much shorter it is now than at stock height.',
      label: 'Lower by',
    },
    loaded: 'How was the car loaded when it was read?',
    empty: { short: 'empty', label: 'Empty' },
    driver: { short: 'driver in', label: (mm: number): string => `Driver in, about ${mm} mm lower` },
    full: { short: 'loaded', label: (mm: number): string => `Loaded, about ${mm} mm lower` },
    how: 'How is it lowered?',
    springs: {
      short: 'springs',
      label: 'Shorter springs on the same dampers: the drop comes off the bump travel',
    },
    dampers: {
      short: 'dampers',
      label:
        'Coilovers with a screw-adjusted lower body, or shortened dampers: the stroke stays, other limits come nearer',
    },
  },
  /** By the first value of each sheet. */
  ends: {
    stopLength: {
      title: 'Length of the bump stop',
      howTo:
        'Its length off the car and uncompressed, then what has been cut off it since (0 for nothing). The gap is the one you measure with it cut. A stop that is cut too far lets the damper hit its own end and break.',
      labels: ['Length of the stop as made', 'Cut off it'],
      second: 'cut off',
    },
    stopUsable: {
      title: 'How far the stop gives',
      howTo:
        'Which share of the stop’s length is pressed together when it is solid: 0.5 for half, which is usual for foam (common practice, no source). Until you enter it, half is taken, and the ± covers anything from a third to two thirds. What you enter counts as known: leave it empty unless the maker states it or you have compressed one.',
      labels: ['Share of its length'],
    },
    strokeBump: {
      title: 'Damper stroke left in bump',
      howTo:
        'How far the rod can still go in, from where the car stands, before the damper itself bottoms. From its maker, or with the damper off the car: push the bare rod in by hand until it stops.',
      labels: ['Rod still to go in'],
    },
    strokeDroop: {
      title: 'Damper stroke left in droop',
      howTo:
        'How much more of the rod shows when the damper is fully drawn out than where the car stands: from its maker, or with both wheels of the axle hanging and the car on axle stands.',
      labels: ['Rod still to come out'],
    },
    springBind: {
      title: 'Until the coils touch',
      howTo:
        'All gaps between the coils at ride height, added up, along the spring. A coil that lies against its neighbour already does not count.',
      labels: ['Spring still to go'],
    },
    shaftBump: {
      title: 'Driveshaft',
      howTo:
        'Wheel travel up and down from where the car stands until a joint is at the end of its angle or its plunge. Take its maker’s figure, or turn the shaft by hand at each height, spring and bump stop out, never past where the stop would be solid.',
      labels: ['In bump', 'In droop'],
      second: 'in droop',
    },
    motionRatio: {
      title: 'Motion ratio',
      howTo:
        'How much the damper shortens for each mm of wheel travel, 0.91 to 1.00 on 95 of 100 random invented struts. Leave it out where the links are known: it is then worked out along the whole travel.',
      labels: ['Damper travel per wheel travel'],
    },
    springRate: {
      title: 'Spring rate',
      howTo: 'Of one spring, as printed on it or as its maker states it.',
      labels: ['Rate'],
    },
    cornerMass: {
      title: 'Corner weight',
      howTo:
        'What stands on this wheel, driver in the car, and what of it the spring does not carry: wheel, tyre, brake, knuckle, half of arm and shaft.',
      labels: ['On the scales', 'Wheel, brake, knuckle'],
      second: 'unsprung',
    },
    stopRate: {
      title: 'Rate of the bump stop',
      howTo: 'Mean force per mm once it is touched. Without it, how far a load goes into the stop is not known.',
      labels: ['Rate'],
    },
    gasForce: {
      title: 'Gas force of the damper',
      howTo: 'The force that pushes the rod out by itself.',
      labels: ['Force'],
    },
    loadFactor: {
      title: 'Bump load (× static)',
      howTo:
        'Total wheel load to look at, as a multiple of the static sprung corner load: 2 for “2 g”. If you leave it empty, 2 is used.',
      labels: ['Multiple of the static load'],
    },
  },
});
