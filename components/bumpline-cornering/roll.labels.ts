import { words } from '../../core/quantity/words.js';

/** English words about where the roll of the body comes from. */
export const ROLL = words('cornering/roll', {
  title: 'Where the roll comes from',
  is: (roll: string, from: string): string => `Roll on the springs: ${roll}, ${from}.`,
  from: { typed: 'typed', marks: 'from cable ties', photo: 'from a photo', load: 'from lateral acceleration' },
  usual: 'assumed until you change it',
  ways: { typed: 'Typed', marks: 'Cable ties', photo: 'Photo', load: 'Lateral acceleration' },
  step: {
    typed: 'roll as typed',
    marks: 'roll from cable ties',
    photo: 'roll from a photo',
    load: 'roll from lateral acceleration',
  },
  sliderLateral: 'Lateral acceleration',
  peaks: 'Ties show peaks only: a kerb or the brakes push them too. Roll on the tyres is not in them.',
  innerTaken: 'The inner wheel is taken to drop as far as the outer one rises.',
  tyresOff: (size: string): string => `The ${size} of roll on the tyres is taken off what the photo shows.`,
  tyresIn: 'Roll on the tyres still counts as roll on the springs: enter it under “Tyres”, and it is taken off.',
  oneAxle: 'One axle alone cannot give roll: the other is taken to have the same roll moment for its stiffness.',
  twoAxles: 'Both axles count.',
  otherHalf: 'The other axle counts once its mass, track, roll centre and spring rate have been entered.',
  noStop: 'No bump stop has been entered, so only the springs count. A lowered car may touch its stops sooner.',
  noStopRate: 'The bump stop’s rate has not been entered, so only the springs count, even where the stop is touched.',
  doubtNote:
    'Every ± on this page is a 95 % interval. This one is for the outer wheel’s inclination and includes the roll’s own ±.',
  stopTouched: (at: string, lift: string): string =>
    `The outer bump stop is touched at ${at} of roll. From there the axle is stiffer, and its middle lifts by ${lift}.`,
  stopTouchedStanding: (lift: string): string =>
    `The bump stop is touched as the car stands: the axle is stiffer all the way, and its middle lifts by ${lift}.`,
  stopFree: (at: string): string => `The bump stop is free until ${at} of roll.`,
  liftLeftOut: 'The wheel angles do not include that lift.',
  transfer: (size: string): string => `The outer wheel carries ${size} more than at rest.`,
  doubt: 'The ± of the roll comes from the height of the centre of gravity.',
  doubtTaken: (plusMinus: string): string =>
    `The ± of the roll comes from the height of the centre of gravity: ±\u202f${plusMinus} is assumed until you say how sure you are.`,
  noRollDoubt: 'You have not said how sure you are of the roll, so no ± here includes it.',
  missing: (names: string): string => `To work from lateral acceleration you also need: ${names}.`,
  enter: 'Enter it',
  needs: {
    lateral: 'lateral acceleration',
    springRate: 'spring rate',
    sprungMass: 'sprung mass of the axle',
    centreHeight: 'height of the centre of gravity',
  },
  heldLateral: (lateral: string): string =>
    `Every setup at ${lateral} of lateral acceleration. How far each one rolls follows from its own roll centre and centre of gravity.`,
  ofRoll: (roll: string): string => `${roll} of roll`,
  tooFar: (roll: string): string =>
    `At this lateral acceleration the body would roll by ${roll}, further than we can work out. Enter less of it, or check springs, bar and centre of gravity.`,
  photoLess: (photo: string, tyres: string): string =>
    `The photo shows ${photo} of roll, less than the ${tyres} on the tyres alone. Correct one of them.`,
  back: {
    title: 'Back to stock’s inclination',
    better: (now: string, stock: string): string =>
      `Nothing needs to: at this height the outer wheel already stands more upright to the road (${now}) than at stock height (${stock}). Softer springs or a softer bar would only take that away.`,
    both: (target: string, springs: string, bar: string, roll: string): string =>
      `To bring the outer wheel back to stock’s ${target} at this height: ${springs}, or ${bar}. The body then rolls by ${roll}.`,
    one: (target: string, what: string, roll: string): string =>
      `To bring the outer wheel back to stock’s ${target} at this height: ${what}. The body then rolls by ${roll}.`,
    springs: (rate: string, now: string): string => `springs of ${rate} instead of ${now}`,
    bar: (rate: string, now: string): string => `a bar of ${rate} at its end instead of ${now}`,
    newBar: (rate: string): string => `a bar of ${rate} at the wheel, where none is given`,
    noBar: 'no bar at all',
    alike: 'Both axles changed alike.',
    refused: (target: string, nearest: string): string =>
      `No spring and no bar on this axle brings the outer wheel back to stock’s ${target}: the nearest is ${nearest}.`,
    refusedAtAll: (target: string): string =>
      `No spring and no bar on this axle brings the outer wheel back to stock’s ${target}.`,
    waiting: 'Working it out …',
  },
  drawn: {
    ties: 'A damper: its rod with a cable tie round it, pushed up by the damper body. The gap between body and tie is measured.',
    photo:
      'A car from behind in a left turn: a line through both lamps leans against the line through the feet of both tyres. The angle between them is measured.',
    tie: 'cable tie',
    gap: 'how far it went in',
    body: 'damper body',
    through: 'through',
    lamps: 'both lamps',
    feet: 'through the tyres’ feet',
  },
  sheets: {
    marks: {
      title: 'Roll from cable ties',
      howTo:
        'Put a tie round each damper rod and push it down to the damper body with the car at rest. After the run the gap below the tie is how far that damper went in. A tie shows no droop: if you have no figure for the inner damper, leave it empty.',
      labels: [
        'Outer damper went in',
        'Inner damper came out',
        'Damper travel per wheel travel',
        'Track',
        'How sure of each, ±',
      ],
    },
    photo: {
      title: 'Roll from a photo',
      howTo:
        'From straight behind or ahead, from far away with the zoom, the camera about as high as the lamps. Measure the angle between a line through both lamps and one through the feet of both tyres, and subtract the same angle of the car at rest.',
      labels: ['The photo’s whole roll', 'How sure, ±'],
    },
    lateral: {
      title: 'Lateral acceleration',
      howTo:
        'How hard the turn is. Road tyres on dry tarmac hold about 0.8 to 1 g (common practice, no source). Every setup is compared at the same figure.',
      labels: ['Lateral acceleration'],
    },
    springs: {
      title: 'Springs of this axle',
      howTo:
        'Rate of one spring, as printed on it or as its maker states it. A unit may follow the number: 28 N/mm, 160 lb/in or 2.9 kg/mm.',
      labels: ['Spring rate', 'Spring travel per wheel travel'],
    },
    masses: {
      title: 'Masses on this axle',
      howTo:
        'Both wheels on the scales, driver in the car, less what the springs do not carry: wheels, tyres, brakes, knuckles, half of arms and shafts.',
      labels: ['Carried by the springs', 'Not carried by them', 'Track'],
    },
    centre: {
      title: 'Centre of gravity',
      howTo:
        'Height above the road at stock height, of what the springs carry. Few people know it: 500 to 600 mm is usual for a small car (common practice, no source), so say how sure you are.',
      labels: ['Height at stock height', 'How sure, ±'],
    },
    rollCentre: {
      title: 'Roll centre of this axle',
      howTo:
        'Height above the road, where the car stands; below the road is negative. Readings of camber do not tell it: hard points or the six measurements do. It is held, whatever the drop.',
      labels: ['Height'],
    },
    bar: {
      title: 'Anti-roll bar of this axle',
      howTo:
        'Force at one end for each mm that this end moves, the other one held: from its maker. The ratio says how far that end moves for each mm of the wheel.',
      labels: ['Rate at its end', 'Bar-end travel per wheel travel'],
    },
    stop: {
      title: 'Bump stop in the turn',
      howTo:
        'The gap on the damper’s rod where the car stood when you measured it, and the force per mm once the stop is touched. Lower on shorter springs, the gap is smaller by the drop.',
      labels: ['Gap on the rod', 'Rate of the stop'],
    },
    other: {
      title: 'The other axle',
      howTo:
        'Without it, the other axle is taken to have the same roll moment for its stiffness. Its roll centre is held at the height you give, whatever the drop.',
      labels: ['Carried by its springs', 'Track', 'Roll centre, height', 'Spring rate'],
    },
    otherSprings: {
      title: 'The other axle’s ratios and bar',
      howTo: 'How far its spring and its bar’s end move for each mm of the wheel, and what the bar answers with.',
      labels: ['Spring travel per wheel travel', 'Rate of its bar', 'Bar-end travel per wheel travel'],
    },
  },
  rates: {
    legend: 'That is an unusual rate for this mass. Which is it?',
    check: { label: 'Perhaps another unit: I will look again', short: 'to be checked' },
    asTyped: { label: 'It is in N/mm', short: 'in N/mm' },
  },
});
