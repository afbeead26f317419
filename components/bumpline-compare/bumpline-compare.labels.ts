import { words } from '../../core/quantity/words.js';

/** All English words of the element besides those of its first answer. */
export const LABELS = words('compare/labels', {
  body: {
    pressOther: 'Now press another cell to compare it with this one.',
    one: 'With one set of parts you can compare heights. Add a second one to compare parts.',
    ownOnly:
      'This is your car as it is: you can compare heights. To compare parts, add parts, or readings with other parts fitted.',
    overLess: (bump: string): string => `Compare over ${bump} of bump`,
    fromHigher: (place: string): string => `Compare the car ${place}`,
    cell: (row: number, column: number): string => `This page’s table, row ${row}, column ${column}`,
    height: (number: number): string => `Height ${number}`,
    ofSet: (set: string, field: string): string => `${set}: ${field}`,
    drop: (set: string): string => `Drop: ${set}`,
    stock: 'stock height',
    even: (drop: string): string => `even at ${drop}`,
  },
  table: {
    title: (figure: string): string => `${figure}, by parts and height. Press one cell, then another.`,
    add: 'Add a height',
    remove: 'Remove this height',
    edit: 'Drop of this height',
    outside: 'not measured',
    beyond: 'past solid',
    overDroop: (droop: string): string => `In droop: over the next ${droop} down.`,
    inDroop: (change: string): string => `${change} in droop`,
    predicted: 'predicted',
    measured: 'measured',
    tieRod: (said: string): string => `tie rod ${said}`,
  },
  figures: {
    label: 'Show',
    names: {
      change: 'Camber change in bump',
      camberAtEnd: 'Camber after the bump',
      rate: 'Camber rate',
      toeChange: 'Toe change in bump',
      rollCentre: 'Roll-centre height',
    },
    in: 'in',
    out: 'out',
    measureToe: 'measure it',
    noCamber: 'not known',
    noLinks: 'needs links',
    coming: '…',
    toeNote: 'Readings and six measurements say nothing about toe: measure it.',
    centreNote: 'Roll centre above the ground, both wheels moved alike.',
  },
  costs: {
    title: (cell: string): string => `${cell}, besides camber:`,
    lowered: 'lowered to match',
    moved: 'moved to match',
    in: (size: string): string => `${size} of toe-in`,
    out: (size: string): string => `${size} of toe-out`,
    noToe: (within: string): string => `nothing to toe that can be told from zero (±\u202f${within})`,
    toeLink: (cell: string): string => `Why it steers itself, and what flattens it: ${cell}`,
    toe: (here: string): string => `Adds ${here} over that bump to what the car does without it (bump steer).`,
    toeUnless: (rod: string, here: string, other: string): string =>
      `Adds ${here} over that bump to what the car does without it (bump steer), unless the tie-rod end is ${rod}. With it ${rod}, ${other}.`,
    toeCorrected: (rod: string, here: string, other: string): string =>
      `With the tie-rod end ${rod}, adds ${here} over that bump to what the car does without it (bump steer). Left as it was, ${other}.`,
    measure: 'Toe: measure it. Six measurements cannot tell how a part steers the wheel in bump.',
    measureJoint: (rod: string): string =>
      `Toe: measure it. Unless the tie-rod end is ${rod}, this joint steers the wheel in bump (bump steer). Six measurements cannot tell by how much.`,
    measureCorrected: (rod: string): string =>
      `Toe: measure it. Six measurements cannot tell how far the wheel steers in bump (bump steer), even with the tie-rod end ${rod}.`,
    above: (size: string): string => `Roll centre ${size} above the ground`,
    below: (size: string): string => `Roll centre ${size} below the ground`,
    centre: (here: string): string => `${here}.`,
    centreHigher: (here: string, by: string, cell: string): string => `${here}, ${by} higher than ${cell}.`,
    centreLower: (here: string, by: string, cell: string): string => `${here}, ${by} lower than ${cell}.`,
    centreSame: (here: string, cell: string, within: string): string =>
      `${here}: too close to ${cell} to tell apart (±\u202f${within}).`,
  },
  lists: {
    fromTo: (from: string, to: string): string =>
      `From ${from} to ${to}: by how much each step changes the camber change over the bump.`,
    inOrder: (first: string, second: string): string => `${first}, then ${second}`,
    unmeasured: 'nothing was measured that far',
    against: (reference: string): string =>
      `Compared with ${reference}: the drop at which the same bump changes camber equally. Below that height the part makes up for only part of the drop.`,
    paths: 'Two ways from one to the other',
    heightFirst: 'Height first, then the part',
    partFirst: 'The part first, then height',
    interaction: 'Extra effect of the part when lowered',
    notTold: ', too small to tell from zero',
    rate: 'By camber rate alone',
    each: 'Camber rate, and camber as read',
    camber: (there: string, atEnd: string | undefined): string =>
      atEnd === undefined ? `; ${there}` : `; ${there} to ${atEnd}`,
    eachNote:
      'How fast camber changes at each height, then camber itself, there and at the end of the bump, as the gauge read it. If the gauge’s zero was off, so is this.',
    even: 'Break-even',
    doubt: 'Every ± is a 95 % interval.',
    leftOut: 'The car’s own numbers are left out, because they make no curve:',
    leftOutSet: (name: string): string => `${name} is left out:`,
    why: 'Why ±, and what it leaves out',
    apart:
      'Gauge, tape and zero height count for each set separately, as if each had its own. Using one gauge and one tape for both narrows a break-even by hardly a tenth of a millimetre.',
  },
  reach: {
    solid: (travel: string): string => `The suspension is solid at ${travel}`,
    curve: (name: string, travel: string): string => `${name}: the curve ends at ${travel}`,
    readings: (name: string, travel: string): string => `${name}: the readings end at ${travel}`,
    left: (ends: string, bump: string, height: string): string => `${ends}, ${bump} of bump from ${height}.`,
    above: (ends: string, height: string): string => `${ends}, above ${height}.`,
  },
  wrong: {
    title: 'What looks wrong in the readings',
    more: (count: number): string => `And ${count} more: see the readings by themselves.`,
  },
  sets: {
    add: 'Add readings of parts',
    added: 'add readings of parts',
    sets: 'Your sets of parts',
    allSets: 'Sets of parts',
    ofPage: 'from a page',
    name: 'Name of this set',
    renamed: 'name of a set',
    remove: 'Remove this set',
    removed: 'remove a set',
    addParts: 'Add parts',
    addedParts: 'add parts',
    choose: 'Which part first?',
    parts: (text: string): string => `Parts: ${text}`,
    noLinks:
      'Parts are fitted to the car’s own links. This car is only a curve: enter measurements or hard points to see what parts do.',
    missing: 'The panel for readings could not be fetched. Press again when you are online.',
  },
  chart: {
    x: 'Bump from the height',
    y: 'Camber change',
    solid: 'stop solid',
    described: (lines: string): string => `Camber change over bump and droop, counted from each height: ${lines}.`,
    and: ' and ',
  },
});
