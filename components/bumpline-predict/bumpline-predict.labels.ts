import { words } from '../../core/quantity/words.js';
import { lower } from '../element/sentence.js';

/** "9th" */
function ordinal(count: number): string {
  const tens = count % 100;
  const end = tens > 10 && tens < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][count % 10] ?? 'th');
  return `${count}${end}`;
}

/** All English words of the element besides those of its first answer. */
export const NAMES = words('predict/labels', {
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
  legend: 'Band: readings and tape, 95 %. Thin lines: tape alone. Crosses: your readings.',
  legendExample: 'Band: readings and tape, 95 %. Thin lines: tape alone. Crosses: readings.',
  legendFitted: 'Circles: readings with the parts on.',
  legendBeyond: 'Dashed: not measured.',
  cursor: (travel: string, predicted: string, tape: string, isMeasured: boolean): string =>
    `${travel}: ${predicted} predicted, ${tape} by the tape alone${isMeasured ? '' : '; nothing was read there'}`,
  cursorUnknown: (travel: string): string => `${travel}: not known`,
  columns: { travel: 'Travel', predicted: 'Predicted', tape: '± by tape alone', stock: 'As it is' },
  numbersOf: (corner: string): string => `Predicted change over wheel travel, ${corner.toLowerCase()}`,
  slider: 'Drop (− higher than stock)',
  of: {
    legend: 'Show',
    camber: 'camber',
    toe: 'toe',
    unknown:
      'Camber readings and six sizes by tape say nothing of toe. For toe, paste readings of toe as well, or enter the hard points.',
  },
  figures: {
    title: 'What the change is made of',
    what: '',
    change: (over: string): string => `Change, ${over}`,
    rollCentre: 'Roll centre',
    withSet: 'With the parts',
    asItIs: 'As it is',
    byTape: 'By tape alone',
    shifted: 'Readings shifted',
    notKnown: 'not known',
    waiting: '…',
  },
  found: {
    title: 'What the readings say',
    together: 'Readings and tape agree.',
    goodness: (perDof: string, dof: string, chance: string): string =>
      `Chi-square: ${perDof} per degree of freedom (${dof}); the links fit as badly by chance in ${chance} of cases.`,
    hardly: (times: string): string =>
      `Readings and tape barely agree: by chance alone only one car in ${times} would be as far off.`,
    doubtful: (times: string): string =>
      `Readings and tape contradict each other. One of them is wrong, and nothing shows which, so the readings narrow nothing here and the ± of the tape counts ${times} times over. The error may be larger still.`,
    pulls: (names: string): string => `Furthest off: ${names}. Measure that again first.`,
    odd: (pass: string, chi: string): string =>
      `${pass} does not belong with the others: it shows a different curve (chi-square ${chi} per degree of freedom against the rest, where about 1 is usual). Was it read on this car, with the same parts on?`,
    oddHeight: (pass: string, size: string, isHigher: boolean): string =>
      `${pass} does not belong with the others: it looks as if it was started ${size} ${isHigher ? 'higher' : 'lower'}, or read with other parts on. Check the height called zero, and which parts were on.`,
    oddEither: (one: string, other: string): string =>
      `${one} and ${lower(other)} do not show the same curve. One of them is of another car, of other parts, or was started at another height.`,
    few: (readings: string, heights: string): string =>
      `There are only ${readings} at ${heights} heights, so the ± is wide. Six heights or more, in two passes, say much more.`,
    oneSided: (side: string, other: string): string =>
      `Everything was read in ${side}. For ${other} only the links tell, so the ± there is wider.`,
    noZero:
      'Nothing was read at the height called zero. That costs nothing: the zero of each pass is found from all its readings.',
    turns: (times: string): string =>
      `One pass went from end to end ${times} times. If you zeroed the gauge again in between, give each part a pass of its own: a heading with the pass’s name, or a column of passes.`,
    passHigher: (pass: string, size: string): string => `${pass} was started ${size} higher than the others.`,
    passLower: (pass: string, size: string): string => `${pass} was started ${size} lower than the others.`,
    pass: (name: string): string => `Pass ${name}`,
    thePass: 'The pass',
    passOfSet: (set: string): string => `The pass of “${set}”`,
    passIn: (pass: string, set: string): string => `${pass} of “${set}”`,
    sides: { bump: 'bump', droop: 'droop' },
    passesTaken: 'This is allowed for.',
    slip: (pass: string, nth: number, travel: string, size: string, isMore: boolean): string =>
      `From the ${ordinal(nth)} reading of ${pass} on, at ${travel}, the gauge reads ${size} ${isMore ? 'more' : 'less'}: did it move on its mount?`,
    look: 'Look at these readings',
    aside: 'Set them aside',
    asideStep: 'readings after a slip set aside',
    from: 'from here on',
    travel: 'Travel',
    reading: 'Gauge',
    limits: 'What the ± allows for',
    unseen:
      'Three things readings cannot show, so the ± allows for them: a drift that is the same in every pass, the scales of gauge and tape, and how far the part really moves its joint.',
    wrongIf: (drift: string, gauge: string, tape: string, zero: string): string =>
      `The error may be larger if the gauge drifts by more than ${drift} in every pass, its scale is off by more than ${gauge}, the tape’s by more than ${tape}, or the height called zero by more than ${zero}; or if a part is not what it is sold as.`,
    alternate: 'Read every other pass downward: a drift that is the same in every pass then shows, and the ± shrinks.',
    droop: (joint: string, more: string, end: string, to: string): string =>
      `A joint ${joint} lower puts the links where readings about ${more} further in droop would be. Yours end at ${end}; read down to ${to}.`,
    beyond: (to: string, end: string): string =>
      `From ${end}, where your readings end, to ${to} it rests on the links alone.`,
    below: (to: string, end: string): string =>
      `From ${to} to ${end}, where your readings begin, it rests on the links alone.`,
  },
  next: {
    title: 'The next best measurement',
    /** @param now the ± of today, where it is told */
    brings: (what: string, then: string, now: string | undefined): string =>
      now === undefined
        ? `${what} would bring it to about ${then}.`
        : `${what} would bring the ${now} of this answer to about ${then}.`,
    waiting: 'Working it out …',
    none: 'No single further measurement would narrow this by much.',
    mendFirst: 'First find what does not fit, above. Until then no further measurement narrows this.',
    what: {
      toeSweep: 'Toe read over wheel travel',
      otherWay: 'One more pass, read the other way (from full bump down),',
      anotherPass: 'One more pass, at the same heights,',
      moreTravel: (mm: string): string => `Every pass read ${mm} further at both ends`,
      otherSide: 'Readings on the side of the travel that is missing, in every pass,',
      caster: 'Caster from an alignment sheet',
      again: (name: string): string => `${name}, measured with care,`,
      point: (name: string, size: string): string => `${name}, measured again to ±\u202f${size},`,
    },
  },
  links: {
    title: 'These links on the other pages',
    use: 'Use these links on the other pages',
    back: 'Back to the links as taped',
    isUsed: (count: string): string =>
      `Every page of this car now uses its links as corrected by ${count}: lowering, compare, clearance, toe, the turn and static camber.`,
    isNot: 'The other pages still use the links as taped.',
    useStep: 'links corrected by readings',
    backStep: 'links as measured',
  },
  record: {
    title: 'Was it right?',
    why: 'Keep this prediction before you fit the parts. Read the curve again with them on, and the two are compared.',
    keep: 'Keep this prediction',
    keepStep: 'a prediction kept',
    kept: (date: string, version: string, what: string): string => `Kept on ${date}, version ${version}: ${what}.`,
    change: (change: string, over: string, drop: string): string => `${change} over ${over}, ${drop}`,
    paste: 'Paste readings with these parts on',
    pasteName: 'Readings with the parts on',
    pasteStep: 'readings with the parts on',
    notBefore:
      'No prediction was kept before these readings. The one shown is made now, from the readings without the parts alone.',
    agrees: (measured: string, predicted: string): string =>
      `Measured with the parts on: ${measured}. Predicted: ${predicted}. They agree.`,
    differs: (measured: string, predicted: string, difference: string): string =>
      `Measured with the parts on: ${measured}. Predicted: ${predicted}. They differ by ${difference}, which is more than both ± allow.`,
    likely: 'Look at what was fitted (the part’s real size, the tie rod), then at the height called zero.',
    otherZero: (from: string): string =>
      `The two agree where these heights are counted from ${from === 'stock height' ? from : `${from}, where the car stands`}. Were they?`,
    countFrom: (from: string): string => `Count them from ${from}`,
    zeroStep: 'the height called zero',
    over: (over: string, from: string): string => `Over ${over} from ${from}, as far as was read.`,
    inside: (inside: string, all: string): string => `${inside} of ${all} readings stand inside the band.`,
    chi: (chi: string, dof: string, chance: string): string =>
      `Chi-square of the differences against both ±: ${chi} at ${dof} degrees of freedom; as large by chance in ${chance} of cases.`,
    comparing: 'Comparing with the readings …',
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
    readings: 'Camber read over wheel travel, before the parts go on',
    links: 'Its links: six lengths and angles by tape, or eight hard points',
    points: (count: string): string => `The rest of its hard points: ${count} of 8 are given`,
    done: 'given',
    missing: 'missing',
    why: 'Readings give the curve as it is now, exactly. The tape gives the links, roughly. Only together do they show what another part would do.',
    curve: 'This page gives only a curve, and a curve has no links to put parts on.',
  },
  paste: 'Paste stock readings',
  pasteMore: 'Paste more stock readings',
  meanwhile: {
    tape: (change: string, asked: string, set: string): string =>
      `By the tape alone: camber ${change} over ${asked}, with “${set}”. Readings of the car as it stands narrow that.`,
    readings: (change: string, asked: string, _set: string): string =>
      `By your readings alone, as the car stands: camber ${change} over ${asked}. For what parts would change, the links are needed as well.`,
    moved: (change: string, asked: string, set: string): string =>
      `By your readings alone, their curve moved by 1.1 times the joint: camber ${change} over ${asked}, with “${set}”. The ± is that of the readings alone.`,
  },
  isAsked: 'This is the set you ask about. The other pages take it as fitted until you choose another.',
  into: {
    told: (read: string, set: string): string =>
      `“${read}” was taken as read with “${set}” on, so it does not count as a stock reading.`,
    back: 'No, it was read as the car stands',
    step: 'readings as the car stands',
  },
  pasted: 'stock readings',
  readings: 'Stock readings',
  missing: 'This part could not be fetched. Check the connection and press the button again; nothing is lost.',
  tape: 'Measure with a tape',
  points: 'Enter hard points',
  next_: (title: string): string => `Next: ${title}`,
  edit: 'My car’s numbers',
  startOver: { name: 'Start over', step: 'the start over' },
  doubtNote: 'Every ± on this page is a 95 % interval.',
  rigid: 'Links are taken as rigid: the give of bushes and tyres, and play, are not included.',
  aligned: 'With the parts on, toe is taken as reset at ride height.',
  noParts: 'no parts',
  problems: {
    /** Readings that no corner near the measured one gives. */
    apart: (times: string): string =>
      `Stock readings do not fit the car as it was measured: the two are ${times} times as far apart as both ± allow.`,
    turned: {
      camber:
        'With the sign of camber reversed they fit. Is it? Camber is negative where the top of the wheel leans in.',
      travel: 'With the sign of travel reversed they fit. Is it? Travel is positive in bump, when the wheel goes up.',
      both: 'With the signs of camber and of travel both reversed they fit. Camber is negative where the top of the wheel leans in; travel is positive in bump.',
      centimetres: 'With heights taken as centimetres they fit. Are they?',
      inches: 'With heights taken as inches they fit. Are they?',
    },
    another: 'Are they of this car, with its stock parts on? No sign turned round makes them fit.',
    again: (names: string): string => `If they are, check the height called zero, then measure again: ${names}.`,
    outOfReach:
      'Stock readings: the links as measured do not reach every height that was read. Check the links for a typing slip, and the height called zero.',
    heights: (count: string, needed: string): string =>
      `Stock readings: they stand at ${count} heights, and ${needed} are needed. Read at more heights, spread over the travel.`,
  },
  sheets: {
    over: {
      title: 'Wheel travel asked about',
      label: 'Bump',
      howTo:
        'The change is given over this much bump from where the car stands. A kerb, braking or a turn usually takes about 40 mm.',
    },
  },
});
