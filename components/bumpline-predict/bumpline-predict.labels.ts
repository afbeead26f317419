import { RESTS } from '../element/rests.labels.js';

/** All English words of the element besides those of its first answer. */
export const NAMES = {
  ...RESTS,
  chartX: 'Wheel travel',
  chartY: 'Camber change',
  chartToe: 'Toe change, in +',
  chart: (height: string): string =>
    `What is predicted over wheel travel, counted from where the car stands ${height}, with the band that readings and tape leave, the wider one that the tape alone would leave, and the readings.`,
  predicted: 'predicted',
  stock: 'as it is',
  heights: {
    stock: 'stock height',
    lower: (size: string): string => `${size} lower`,
    higher: (size: string): string => `${size} higher`,
  },
  unmeasured: 'not measured',
  legend: 'Filled band: readings and tape, 95 %. Thin lines: the tape alone. Crosses: your readings as it stands.',
  legendExample:
    'Filled band: readings and tape, 95 %. Thin lines: the tape alone. Crosses: the readings as it stands.',
  legendFitted: 'Circles: read with the parts on.',
  legendBeyond: 'Dashed: nobody measured there, so the links alone speak.',
  cursor: (travel: string, predicted: string, tape: string, isMeasured: boolean): string =>
    `${travel}: ${predicted} predicted, ${tape} by the tape alone${isMeasured ? '' : '; nothing was read there'}`,
  cursorUnknown: (travel: string): string => `${travel}: not known`,
  columns: { travel: 'Travel', predicted: 'Predicted', tape: '± by tape alone', stock: 'As it is' },
  numbersOf: (corner: string): string => `Predicted change over wheel travel, ${corner.toLowerCase()}`,
  slider: 'Drop (− higher than stock)',
  of: { legend: 'Told of', camber: 'camber', toe: 'toe' },
  figures: {
    title: 'What the change is made of',
    what: '',
    change: (over: string): string => `Change over ${over}`,
    rollCentre: 'Roll centre height',
    withSet: 'With the parts, predicted',
    asItIs: 'As it is, learnt',
    byTape: 'With the parts, by the tape alone',
    shifted: 'Your readings’ curve moved along, without links',
    notKnown: 'not known',
    waiting: '…',
  },
  found: {
    title: 'What the readings say',
    together: 'Readings and tape go together.',
    hardly: (times: string): string =>
      `Readings and tape hardly go together: chance alone does as much in one car of ${times}.`,
    doubtful: (times: string): string =>
      `Readings and tape do not go together. One of them is wrong, and nobody knows which, so the readings narrow nothing here: what the tape leaves open counts ${times} times as large. It could be wrong by more still.`,
    pulls: (names: string): string => `Furthest off would be: ${names}. Measure that again first.`,
    passHigher: (pass: string, size: string): string => `${pass} was started ${size} higher than the others.`,
    passLower: (pass: string, size: string): string => `${pass} was started ${size} lower than the others.`,
    pass: (name: string): string => `Pass ${name}`,
    thePass: 'The pass',
    passesTaken: 'That is taken into account.',
    slip: (pass: string, nth: string, travel: string, size: string, isMore: boolean): string =>
      `From the ${nth} reading of ${pass} on, at ${travel}, the gauge reads ${size} ${isMore ? 'more' : 'less'}: did it move on its mount?`,
    look: 'Look at these readings',
    aside: 'Set them aside',
    asideStep: 'readings after a slip set aside',
    from: 'from here on',
    travel: 'Travel',
    reading: 'Gauge',
    unseen:
      'Readings as it stands cannot show three things, so the ± allows for them: a drift that is alike in all passes, the scales of gauge and tape, and how far the part really moves its joint.',
    wrongIf: (drift: string, gauge: string, tape: string, zero: string): string =>
      `It could be wrong by more if the gauge drifts by more than ${drift} in every pass, its scale is off by more than ${gauge}, the tape’s by more than ${tape}, or the height called zero by more than ${zero}; or if a part is not what it is sold as.`,
    alternate: 'Read every other pass downward: what drifts alike in all passes then shows, and the ± gets smaller.',
    droop: (joint: string, more: string, end: string, to: string): string =>
      `A joint ${joint} lower works like readings taken about ${more} further in droop. Yours end at ${end}; read down to ${to}.`,
    beyond: (to: string, end: string): string =>
      `This goes to ${to}, and your readings end at ${end}. Beyond that the links alone speak.`,
    below: (to: string, end: string): string =>
      `This begins at ${to}, and your readings begin at ${end}. Before that the links alone speak.`,
  },
  next: {
    title: 'The next best measurement',
    leaves: (what: string, share: string): string => `${what} would leave ${share} of this ±.`,
    waiting: 'Working it out …',
    none: 'No single measurement more would narrow this by much: another pass of readings does most.',
    share: { half: 'half', third: 'a third', quarter: 'a quarter', other: (percent: string): string => percent },
    what: {
      toeSweep: 'Toe read over wheel travel',
      otherWay: 'One pass more, the other way',
      moreTravel: (mm: string): string => `${mm} more of travel at both ends`,
      caster: 'Caster from an alignment sheet',
      rodLength: 'The tie rod’s length by tape',
      point: (name: string): string => `${name}, measured to a millimetre`,
    },
  },
  links: {
    title: 'These links on the other pages',
    use: 'Use these links on the other pages',
    back: 'Back to the links as the tape has them',
    isUsed: (count: string): string =>
      `Every page of this car now takes its links as ${count} correct them: lowering, compare, clearance, toe, the turn and static camber.`,
    isNot: 'The other pages still take the links as the tape has them.',
    useStep: 'links corrected by readings',
    backStep: 'links as measured',
  },
  record: {
    title: 'Was it right?',
    why: 'Keep this prediction before you fit the parts. Read the curve again with them on, and both are laid over each other.',
    keep: 'Keep this prediction',
    keepStep: 'a prediction kept',
    kept: (date: string, version: string, what: string): string => `Kept on ${date}, version ${version}: ${what}.`,
    change: (change: string, over: string, drop: string): string => `${change} over ${over}, ${drop}`,
    paste: 'Paste readings with these parts on',
    pasteName: 'Readings with the parts on',
    pasteStep: 'readings with the parts on',
    notBefore:
      'No prediction was kept before these readings. The one they are laid over is made now, from the readings without the parts alone.',
    agrees: (measured: string, predicted: string): string =>
      `Measured with the parts on: ${measured}. Predicted: ${predicted}. They agree.`,
    differs: (measured: string, predicted: string, difference: string): string =>
      `Measured with the parts on: ${measured}. Predicted: ${predicted}. They differ by ${difference}, which is more than both ± allow.`,
    likely: 'Look at what was fitted (the part’s real size, the tie rod), then at the height called zero.',
    over: (over: string, from: string): string => `Over ${over} from ${from}, as far as was read.`,
    inside: (inside: string, all: string): string => `${inside} of ${all} readings stand inside the band.`,
    chi: (chi: string, dof: string, chance: string): string =>
      `Chi-square of the differences against both ±: ${chi} at ${dof} degrees of freedom; as large by chance in ${chance} of cases.`,
    comparing: 'Laying the readings over it …',
    remove: 'Remove this record',
    removeStep: 'a prediction removed',
    save: 'Save the record',
    copy: 'Copy it as CSV',
    saved: 'The record was saved.',
    notSaved: 'The record could not be saved.',
    fileName: 'prediction.json',
    text: 'The record as CSV',
    columns: {
      travel: 'Travel from stock height',
      predicted: 'Predicted change',
      plusMinus: '±',
      measured: 'Measured change',
    },
  },
  needs: {
    title: 'What this needs',
    readings: 'Camber read over wheel travel, as the car stands',
    links: 'Its links: six lengths and angles by tape, or eight hard points',
    points: (count: string): string => `The rest of its hard points: ${count} of 8 are given`,
    done: 'given',
    missing: 'missing',
    why: 'The readings say exactly what the curve is as it stands. The tape says roughly where the links are. Only both together say what another part would do.',
    curve: 'This page gives a curve alone. A curve has no links to put parts on.',
  },
  paste: 'Paste my stock readings',
  pasteMore: 'Paste more stock readings',
  pasted: 'stock readings',
  readings: 'Stock readings',
  missing: 'This part could not be fetched. Check the connection and press the button again; nothing is lost.',
  tape: 'Measure six with a tape',
  points: 'Enter my hard points',
  next_: (title: string): string => `Next: ${title}`,
  edit: 'My car’s numbers',
  doubtNote: 'Every ± on this page is a 95 % interval.',
  rigid: 'Rigid links: bushes that give way, tyres and play are not in these numbers.',
  aligned: 'With the parts on, toe is taken as set again where the car stands.',
  noParts: 'no parts',
  problems: {
    outOfReach:
      'Stock readings: the links as they were measured do not reach every height that was read. Check the links for a slip of the keys, and the height called zero.',
    heights: (count: string, needed: string): string =>
      `Stock readings: they stand at ${count} heights, and ${needed} are needed. Read at more heights, spread over the travel.`,
  },
  sheets: {
    over: {
      title: 'Wheel travel asked about',
      label: 'Bump',
      howTo:
        'The change is told over so much bump from where the car stands. 40 mm is what a kerb, a brake dive or a turn usually takes.',
    },
  },
} as const;
