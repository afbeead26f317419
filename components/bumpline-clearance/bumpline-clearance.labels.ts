import { explainProblem } from '../../core/quantity/explain.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded, words } from '../../core/quantity/words.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import type { Display } from '../element/sentence.js';
import type { SheetField, SheetSpec } from '../inputs/sheet-spec.js';

/** All English words of the element besides those of its first answer. */
export const NAMES = words('clearance/labels', {
  section: 'The corner from the front, cut through the wheel and',
  side: 'The wheel in its arch seen from outside, with',
  placesSeen: 'places that were measured.',
  picture: {
    view: 'Which view',
    front: 'From the front',
    side: 'From the side',
    oldWheel: 'old wheel',
    newWheel: 'new wheel',
    travel: 'Wheel travel',
    steer: 'Steering',
    full: 'full bump',
    ride: 'ride',
    tightest: 'tightest',
    aheadTick: 'ahead',
    ahead: 'straight ahead',
    left: 'left',
    right: 'right',
    at: { full: 'At full bump', ride: 'At ride height' },
    inTravel: (size: string, isBump: boolean): string => `At ${size} of ${isBump ? 'bump' : 'droop'}`,
    steered: (degrees: number, side: string): string => `steered ${degrees}° ${side}`,
    gap: (size: string): string => `gap ${size}`,
    inside: (size: string): string => `${size} into it`,
    old: (size: string, isInside: boolean): string => `old wheel ${size}${isInside ? ' into it' : ''}.`,
    sketched: 'Strut, hub and arch are sketched.',
  },
  above: 'above ride height',
  gap: 'gap',
  inboard: '← inboard',
  outboard: 'outboard →',
  front: 'front of car',
  smallest: 'smallest gap',
  dashed: 'The dashed line is the old wheel.',
  slider: 'New wheel further out by',
  asBefore: 'as the old wheel',
  notAlone: 'Not enough by itself',
  alsoEndless: 'No limit in what you can buy or set',
  justClears: 'just clears',
  chartTitle: 'Gap through the travel',
  tightest: 'Tightest places',
  chartX: 'Wheel travel',
  chartY: 'Gap',
  old: 'old wheel',
  needed: 'margin',
  solid: 'solid',
  touch: 'stop touched',
  ride: 'ride height',
  wouldClear: 'What would just clear',
  howFar: 'How far you can still go',
  wouldNote: 'Each by itself, with margin, allowance and ± all left.',
  farNote: 'Each by itself, until one more would no longer clear.',
  looked:
    'What would just clear is looked for among what you can buy or set (common practice, no source): ET 0 to 60, at most 15 mm further in, and spacers up to 30 mm; 2.5° of camber either way; tyre sizes that fit this rim and stay within 4 % of the old wheel’s diameter; packers on the damper rod up to 30 mm, as long as the car does not stand on its stop.',
  wheels: 'Old wheel and new',
  numbers: 'Measurements used',
  addPlace: 'Add a place',
  own: 'Put in my own car',
  next: (what: string): string => `Next: ${what}`,
  motion: 'how the wheel moves',
  steering: 'Straight ahead so far; steering is being worked out.',
  aheadOnly: 'Straight ahead only: the steering is not known.',
  assumedLock: 'Full lock is assumed to be',
  doubt: 'Every ± on this page is a 95 % interval.',
  fields: {
    drop: 'Drop',
    plane: 'Wheels further out',
    sizeBefore: 'Size of the old wheel’s tyre',
    sizeAfter: 'Size of the new wheel’s tyre',
  },
  rim: (
    isBefore: boolean,
    width: string,
    isWide: boolean,
    range: readonly [string, string],
    size: string,
    stands: string,
  ): string =>
    `The rim of the ${isBefore ? 'old' : 'new'} wheel, ${width}\u202fin, is too ${isWide ? 'wide' : 'narrow'} for its tyre, which is made for ${range[0]} to ${range[1]}\u202fin (${size}; the tyre maker’s table decides). ${stands}No formula gives its width there: check the rim width, or measure the tyre on that rim and enter its width.`,
  sizeNotYours: 'The size is not yours yet. ',
  rimNotYours: 'The rim width is not yours yet. ',
  chart: (place: string, ride: string, least: string, verdict: string): string =>
    `Gap between tyre and ${place} over wheel travel: ${ride} at ride height, ${least} at its smallest, ${verdict}.`,
  table: (corner: string): string => `Gaps between tyre and arch, ${corner.toLowerCase()}.`,
  columns: {
    place: 'Place',
    ride: 'Ride height',
    solid: 'Stop solid',
    least: 'Smallest',
    doubt: '±',
    largest: 'Largest tyre',
    verdict: 'Verdict',
  },
  article: /^the /,
  wheelRows: {
    old: 'old wheel',
    new: 'new wheel',
    change: 'change',
    tyre: 'Tyre',
    sectionWidth: 'Section width on its rim',
    sectionHeight: 'Section height',
    freeDiameter: 'Free diameter',
    outerEdge: 'Outer edge from hub face',
    innerEdge: 'Inner edge from hub face',
    rideHeight: 'Ride height, from the diameter',
    gearing: 'Gearing, from the diameter',
    largestWidth: 'Width at most',
    largestDiameter: 'Diameter at most',
    fit: (isStretched: boolean, range: readonly number[]): string =>
      `This rim is ${isStretched ? 'wider' : 'narrower'} than this size is made for (${range.join(' to ')} in; the tyre maker’s table decides): a ${isStretched ? 'stretched' : 'pinched'} tyre. Its width is the one you measured.`,
    uncertain: 'For so low a series the standard’s factor is uncertain: measure the width.',
    standard:
      'Section width by UN Regulation No. 30: the nominal width, plus 0.4 of what the rim is wider than the theoretical rim. By the same regulation a tyre of this size may be as large as the last two lines say. Gaps are worked out with the free radius, not the loaded one.',
  },
  doubts: {
    the: (label: string): string => `the ${label}`,
    bumpSteer: 'bump steer',
    bare: /^(where|how) /,
    from: (size: string, percent: string, name: string, advice: string): string =>
      `Of this ±\u202f${size}, ${percent} comes from ${name}${advice}.`,
    caster: ': an alignment sheet tells it',
    next: ': measure it next',
    again: ': worth measuring again, with more care',
  },
  italics: 'In italics: example values; replace them with yours. Tap a line to change it.',
  sheets: {
    before: 'Old wheel',
    beforeHow:
      'The wheel that was on when you measured the places: gaps are counted from its sidewall. The offset is stamped on the rim; it is positive where the mounting face lies outboard of the rim’s middle.',
    after: 'New wheel',
    afterHow: 'The tyre and rim you want to fit. What you leave empty counts as it stands there in italics.',
    tyreWidth: 'Tyre: width on the sidewall',
    tyreAspect: 'Tyre: aspect',
    tyreRim: 'Tyre: rim diameter',
    rimWidth: 'Rim width',
    offset: 'Offset (ET)',
    spacer: 'Spacer',
    withSpacer: (size: string): string => `spacer ${size}`,
    copy: 'Take tyre, rim and offset from the old wheel',
    sectionWidth: 'Width as measured',
    sectionWidthHow:
      'Across the sidewalls of the new tyre, on its rim and inflated. It replaces the formula. A tyre stretched over too wide a rim can only be measured.',
    treadWidth: 'Tread width',
    treadWidthHow:
      'Across the flat of the new tread. If you leave it empty, 86 % of the tyre’s width is taken (common practice, no source).',
    shoulderRadius: 'Shoulder radius',
    shoulderRadiusHow: 'Where the new tyre’s tread turns into its sidewall. Square shoulders have a small radius.',
    lock: 'Full lock',
    lockHow: 'How far this wheel turns from straight ahead. Enter 0 for a wheel that does not steer.',
    bodywork: 'Margin to bodywork',
    bodyworkHow: (example: string): string =>
      `The gap to the bodywork that must stay free, on top of the allowance. 10\u00a0mm is common practice, no source. ${example} Your own authority’s rule counts.`,
    chassis: 'Margin to chassis parts',
    chassisHow: (example: string): string =>
      `The same to damper, spring perch, rods and legs. 5\u00a0mm is common practice, no source. ${example}`,
    allowance: 'Allowance for flex',
    allowanceHow: 'How far bushes and tyre carcass flex under load. 3\u00a0mm is common practice, no source.',
    camberBy: 'Camber changed with the wheels',
    camberByHow:
      'If you change camber at the same time, at a top mount for instance. A minus leans the top further in.',
    sideways: 'Sideways motion',
    sidewaysHow:
      'How far the wheel moves out for each millimetre of bump. A gauge on the hub cannot tell. If you leave it empty, the arc of common links is assumed (1\u00a0mm inboard at 30\u00a0mm of bump), with a wider ±.',
  },
  whose: {
    yours: 'yours',
    page: 'the page’s value',
    example: 'example value',
    old: 'as on the old wheel',
    usual: 'usual for this size',
    none: 'none',
  },
  place: {
    title: 'A place in the arch',
    what: 'What is it?',
    where: (isLeft: boolean): string => `Where on the clock? ${isLeft ? 9 : 3} is forward.`,
    isIn: 'in',
    isOut: 'out',
    how: (isInner: boolean, isTread: boolean): string =>
      `Old wheel on, car on its wheels. Measure ${
        isTread
          ? 'from the old tyre’s tread straight out to the place. If the tyre is worn, take off the depth it has lost. '
          : 'from the hub’s centre straight to the place. '
      }Then measure how far it lies outboard of the ${isInner ? 'inner' : 'outer'} sidewall, by plumb line; inboard is a minus.`,
    measuredFrom: 'Measured from',
    fromHub: 'hub centre',
    fromTread: 'old tread',
    overTread: 'Old tread to the place',
    isOver: 'from the old tread',
    distance: 'Hub centre to the place',
    outboard: (isInner: boolean): string => `Outboard of the ${isInner ? 'inner' : 'outer'} sidewall`,
    drawing:
      "Left: the wheel seen square from outside, with the hours of a clock and the distance from the hub's centre to the place. Right: seen from the front, how far the place lies outboard of the tyre's sidewall by a plumb line.",
    frontLeft: '← front',
    frontRight: 'front →',
    place: 'place',
    plumbLine: 'place, plumb line',
    rimDrawing:
      'A rim cut through: its width between the bead seats, its middle plane, and the offset from there to the face that lies on the hub.',
    tyreWidth: 'tyre width',
    rimWidth: 'rim width',
    offset: 'offset',
    hub: 'hub',
  },
  /** What a row is about, from a wheel that does not clear and from one that does. */
  changes: {
    plane: ['Offset or spacer', 'Offset or spacer'],
    width: ['Narrower tyre', 'Wider tyre'],
    diameter: ['Smaller tyre', 'Larger tyre'],
    camber: ['Camber', 'Camber'],
    bump: ['Less bump', 'More bump'],
    drop: ['Height', 'Height'],
  },
  ends: {
    idle: 'no effect',
    idleWhy: ': shorter springs leave full bump where the stop is',
    endless: 'no limit in what you can buy or set',
    notAlone: 'not enough by itself',
    unseen: 'inner side not checked',
    unseenWhy: ': no place there was measured',
    upTo: (clears: boolean, change: string): string => `${clears ? 'up to ' : ''}${change}`,
    plane: (clears: boolean, size: string, isIn: boolean): string =>
      `${clears ? 'up to' : 'wheels'} ${size} further ${isIn ? 'in' : 'out'}`,
    planeHow: (how: string): string => `: ${how}`,
    offsetOrSpacer: (et: string, was: string, spacer: string): string =>
      `${et} in place of ${was}, or a spacer of ${spacer}`,
    spacer: (size: string, was: string): string => `a spacer of ${size} in place of ${was}`,
    offset: (hadSpacer: boolean, et: string, was: string): string =>
      `${hadSpacer ? 'no spacer and ' : ''}${et} in place of ${was}`,
    across: { width: 'across the sidewalls', diameter: 'in diameter' },
    width: ['narrower', 'wider'],
    diameter: ['smaller', 'larger'],
    tyre: (clears: boolean, size: string, changed: string, across: string): string =>
      `${clears ? 'up to' : 'at least'} ${size} ${changed} ${across}`,
    noNext: '; the next size is too large',
    noSize: '; no size for this rim is',
    size: (size: string): string => `${size} clears by the numbers`,
    sits: (size: string, isLower: boolean): string => `, the car sits ${size} ${isLower ? 'lower' : 'higher'}`,
    brake: ', if the brake fits inside the smaller rim',
    camber: (size: string, isMore: boolean): string => `${size} ${isMore ? 'more' : 'less'} negative camber`,
    camberHow: ', set at the top mount',
    later: (size: string): string => `full bump up to ${size} later`,
    laterHow: ', by a shorter stop',
    limited: (size: string): string => `bump limited by ${size}`,
    packers: (size: string): string => ` (packers of ${size} on the rod)`,
    left: (solid: string, was: string): string => `: bump to solid ${solid} in place of ${was}`,
    touch: (touch: string, was: string): string => `, to first touch of the stop ${touch} in place of ${was}`,
    drop: (size: string, isHigher: boolean): string => `${size} ${isHigher ? 'higher' : 'lower'}`,
  },
});

/** Labels of fields that problems name by another path than their sheet's. */
const OWN_FIELDS: Record<string, { label: string; quantity?: Quantity }> = worded(() => ({
  drop: { label: NAMES.fields.drop, quantity: 'drop' },
  plane: { label: NAMES.fields.plane, quantity: 'offset' },
  'before.size': { label: NAMES.fields.sizeBefore },
  'after.size': { label: NAMES.fields.sizeAfter },
}));

export function problemText(
  problem: Problem,
  { units, language }: Display,
  find: (path: string) => { sheet: SheetSpec; field: SheetField | undefined } | undefined,
): string {
  const { path } = problem;
  const own = OWN_FIELDS[path];
  const found = own ? undefined : find(path);
  const label =
    own?.label ??
    (found &&
      (found.field && found.sheet.fields.length > 1
        ? `${found.sheet.title}, ${found.field.label}`
        : found.sheet.title));
  return explainProblem(problem, {
    label,
    quantity: own?.quantity ?? found?.field?.quantity,
    unitSystem: units,
    language,
  });
}

/** Of a rim that the tyre's size is not made for. @param stands which of the two is not the user's own, in words */
export function rimText(
  { size, rimWidthInch }: WheelSpec,
  isWide: boolean,
  isBefore: boolean,
  [low, high]: readonly [number, number],
  stands: string,
  language: string,
): string {
  const inches = (width: number) => formatNumber(width, 1, language);
  return NAMES.rim(isBefore, inches(rimWidthInch), isWide, [inches(low), inches(high)], size, stands);
}

/** "+0.5 %" */
export const percent = (share: number, language: string): string =>
  `${share > 0 ? '+' : ''}${formatNumber(share * 100, 1, language)}\u202f%`;
