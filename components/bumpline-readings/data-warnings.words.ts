import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { words } from '../../core/quantity/words.js';
import type { Reading, ReadingQuantity } from '../../core/readings/reading.js';
import type {
  DataWarning,
  DataWarningKind,
  DataWarningOf,
  FigureOf,
} from '../../core/readings/warnings/data-warning.js';
import { type Fix, fixOf } from '../../core/readings/warnings/fix.js';
import { shownName } from '../car/shown-names.words.js';

export { dataWarningsIn } from '../../core/readings/warnings/data-warnings.js';

export interface DataWarningTextOptions {
  units: UnitSystem;
  language: string;
  /** Camber by default. */
  quantity?: ReadingQuantity | undefined;
}

export interface DataWarningText {
  /** What looks wrong: the reading named by its pass and height. */
  text: string;
  /** What to do about it. */
  remedy: string;
  /** What a tap may do about it, with the words of its button. Never done unasked. */
  fix?: Fix & { label: string };
}

/** How one set of readings is written. */
interface Pen {
  readings: readonly Reading[];
  name: ReadingQuantity;
  /** What they were taken with. */
  instrument: string;
  /** A height, with its sign. */
  at(mm: number): string;
  /** A length or an amount, without sign. */
  length(mm: number): string;
  degrees(value: number): string;
  /** A value as it was written down: no figure is rounded away and none added. */
  typed(value: number): string;
  amount(value: number): string;
  pass(pass: string): string;
  /** "Pass 2, +30 mm" */
  reading(index: number): string;
}

function penOf(
  readings: readonly Reading[],
  { units, language, quantity: name = 'camber' }: DataWarningTextOptions,
): Pen {
  const show = (value: number, quantity: Quantity, sign: 'auto' | 'always' = 'auto') =>
    formatQuantity(value, quantity, units, { language, sign }).text;
  // "Pass 2" as it was named; a bare "2" reads as a pass only with the word.
  const pass = (given: string) => (!given ? WORDS.noPass : /^\W*\d/.test(given) ? WORDS.pass(given) : shownName(given));
  const at = (mm: number) => show(mm, 'travel', 'always');
  return {
    readings,
    name,
    instrument: readings.every(({ pair }) => pair) ? WORDS.paired : WORDS.gauge,
    at,
    length: (mm) => show(Math.abs(mm), 'travel'),
    degrees: (value) => show(value, name),
    typed: (value) => (units.angle === 'degrees' ? `${formatNumber(value, 4, language)}°` : show(value, name)),
    amount: (value) => show(Math.abs(value), name),
    pass,
    reading: (i) => `${readings[i]!.pass ? `${pass(readings[i]!.pass!)}, ` : ''}${at(readings[i]!.travel)}`,
  };
}

type Words = readonly [text: string, remedy: string];
type Write<K extends DataWarningKind> = (warning: DataWarningOf<K>, pen: Pen) => Words;

const listed = (passes: readonly string[], pen: Pen): string => WORDS.listed(passes.map(pen.pass));

/** "−1.5° does not fit": as it stands in the readings. */
function figure({ of, readings }: DataWarning & { of: FigureOf }, pen: Pen): string {
  const reading = pen.readings[readings[0]!]!;
  return of === 'travel' ? WORDS.height(pen.at(reading.travel)) : pen.typed(reading.value);
}
const proposal = ({ of, proposed }: { of: FigureOf; proposed: number }, pen: Pen) =>
  of === 'travel' ? pen.at(proposed) : pen.typed(proposed);

/** What another language has to give. */
export interface WarningWords {
  gauge: string;
  /** Toe over a base. */
  paired: string;
  noPass: string;
  pass(name: string): string;
  /** A pass's name as it stands within a sentence. */
  lower(pass: string): string;
  listed(passes: readonly string[]): string;
  count(amount: number, word: string): string;
  ownSet(passes: readonly string[]): string;
  height(at: string): string;
  units: Readonly<Record<'arcminutes' | 'degrees' | 'in' | 'mm', string>>;
  /** The unit that the others are in, where one is written in the key's. */
  otherUnits: WarningWords['units'];
  slip: (warning: DataWarningOf<'wrong-sign' | 'decimal-slip'>, pen: Pen) => string;
  fixes: {
    make(value: string): string;
    aside(value: string): string;
    swap: string;
    scale(unit: string): string;
    turn(of: FigureOf): string;
    newSet(passes: readonly string[]): string;
    ownPass: string;
  };
  of: { readonly [K in DataWarningKind]: Write<K> };
}

/** English words about readings that look wrong. */
export const WORDS: WarningWords = words<WarningWords>('readings/data-warnings', {
  gauge: 'gauge',
  paired: 'dials or tape',
  noPass: 'The pass without a name',
  pass: (name) => `Pass ${name}`,
  lower: (pass) => pass.replace(/^The pass/, 'the pass'),
  listed: (passes) => passes.join(', ').replace(/, ([^,]*)$/, ' and $1'),
  count: (amount, word) => `${amount} ${word}${amount === 1 ? '' : 's'}`,
  ownSet: ({ length }) => (length > 1 ? 'they are a set of their own' : 'it is a set of its own'),
  height: (at) => `its height of ${at}`,
  units: { arcminutes: 'arc minutes', degrees: 'degrees', in: 'inches', mm: 'millimetres' },
  otherUnits: { arcminutes: 'degrees', degrees: 'arc minutes', in: 'millimetres', mm: 'inches' },
  slip: (warning, pen) =>
    `${pen.reading(warning.readings[0]!)}: ${figure(warning, pen)} does not fit; ${proposal(warning, pen)} would.`,
  fixes: {
    make: (value) => `Make it ${value}`,
    aside: (value) => `Set ${value} aside`,
    swap: 'Swap them',
    scale: (unit) => `Read as ${unit}`,
    turn: (of) => `Change the sign of its ${of === 'travel' ? 'heights' : 'values'}`,
    newSet: ({ length }) => `Make ${length > 1 ? 'them' : 'it'} a set of ${length > 1 ? 'their' : 'its'} own`,
    ownPass: 'Make it a pass of its own',
  },
  of: {
    'wrong-sign': (warning, pen) => [WORDS.slip(warning, pen), 'Check its sign.'],
    'decimal-slip': (warning, pen) => [WORDS.slip(warning, pen), 'Check whether a figure slipped.'],
    'mixed-units': ({ readings, of, unit, isWholePass, pass = '' }, pen) => {
      const what = of === 'travel' ? 'height' : 'value';
      const first = pen.reading(readings[0]!);
      const last = pen.readings[readings.at(-1)!]!;
      const which = isWholePass
        ? `${pen.pass(pass)}: all ${what}s look like ${WORDS.units[unit]}`
        : readings.length === 1
          ? `${first}: the ${what} looks like ${WORDS.units[unit]}`
          : `${first} to ${pen.at(last.travel)}: ${WORDS.count(readings.length, what)} look like ${WORDS.units[unit]}`;
      const it = readings.length === 1 && !isWholePass ? 'it fits' : 'they fit';
      return [
        `${which} among ${WORDS.otherUnits[unit]}; so read, ${it}.`,
        `Check in which unit ${readings.length === 1 ? 'it was' : 'they were'} written down.`,
      ];
    },
    swapped: ({ readings: [a, b] }, pen) => [
      `${pen.reading(a!)} and ${pen.at(pen.readings[b!]!.travel)}: the values (${pen.typed(pen.readings[a!]!.value)} and ${pen.degrees(
        pen.readings[b!]!.value,
      )}) fit if they are swapped.`,
      'Check whether they were entered in the wrong order.',
    ],
    'reversed-pass': ({ of, pass, other }, pen) => {
      const figures = of === 'travel' ? 'heights' : 'values';
      return other === undefined
        ? [
            `${pen.pass(pass)} runs the other way from the rest; with the sign of its ${figures} turned it fits.`,
            of === 'travel' ? 'Check which way counts as bump.' : 'Check which way the gauge was put on.',
          ]
        : [
            `${pen.pass(pass)} and ${WORDS.lower(pen.pass(other))} run opposite ways; with the sign of the ${figures} of one of them turned they agree.`,
            of === 'travel'
              ? 'Check which of them counts bump as positive.'
              : 'Check in which the gauge was turned about.',
          ];
    },
    'slipped-within': ({ pass, shift, before, from, readings }, pen) => [
      `${pen.pass(pass)}: between ${pen.at(before)} and ${pen.at(from)} the readings jump by ${pen.amount(shift)} and stay there (${WORDS.count(
        readings.length,
        'reading',
      )}).`,
      'The gauge may have slipped. If so, make what came after it a pass of its own.',
    ],
    'slipped-between': ({ pass, offset, other }, pen) => [
      other === undefined
        ? `${pen.pass(pass)} lies ${pen.amount(offset)} ${offset < 0 ? 'below' : 'above'} the other passes.`
        : `${pen.pass(pass)} lies ${pen.amount(offset)} ${offset < 0 ? 'below' : 'above'} ${WORDS.lower(pen.pass(other))}.`,
      `The curve is not affected: each pass has its own zero. The static ${pen.name} is: check how the gauge was put on.`,
    ],
    'body-moved': ({ pass, isWithin, other = '', mm, degrees }, pen) => {
      const moved = `the body ${mm < 0 ? 'sank' : 'rose'} by ${pen.length(mm)}`;
      return [
        isWithin
          ? `${pen.pass(pass)}: ${moved} while it was taken, worth up to ${pen.amount(degrees)}.`
          : `Between ${WORDS.lower(pen.pass(other))} and ${WORDS.lower(pen.pass(pass))} ${moved}, worth up to ${pen.amount(degrees)}.`,
        isWithin
          ? 'Settle the car on its stands, check that spring and bump stop are out, and take the pass again.'
          : 'Check the stands, and set the heights anew before the next pass.',
      ];
    },
    outlier: ({ readings: [i], expected }, pen) => [
      `${pen.reading(i!)}: ${pen.typed(pen.readings[i!]!.value)} does not fit the others, which make it about ${pen.degrees(expected)}.`,
      'Take it again, or set it aside if you know why.',
    ],
    duplicate: ({ readings, isSameValue, odd }, pen) => {
      const values = readings.map((i) => pen.typed(pen.readings[i]!.value));
      const times = readings.length === 2 ? 'twice' : `${readings.length} times`;
      return [
        `${pen.reading(readings[0]!)} is there ${times}${
          isSameValue ? `, each with ${values[0]}` : `: ${values.slice(0, -1).join(', ')} and ${values.at(-1)}`
        }${odd === undefined ? '' : `; ${pen.typed(pen.readings[odd]!.value)} does not fit there`}.`,
        isSameValue ? 'Was it entered twice?' : 'Check whether one belongs to another height.',
      ];
    },
    'few-readings': ({ dof, more }) => [
      dof === 0
        ? 'There are too few readings to tell how far the curve can be trusted.'
        : `Only ${WORDS.count(dof, 'reading')} more than the curve needs: it cannot be trusted far.`,
      `Take at least ${more} more, ideally as another pass.`,
    ],
    'short-pass': ({ pass, readings }, pen) => [
      `${pen.pass(pass)} has ${readings.length === 1 ? 'one reading only, which tells the curve nothing' : 'two readings only, which tell the curve little'}.`,
      'A pass has its own zero: give it three readings or more, or name the pass that it belongs to.',
    ],
    gap: ({ from, to, bend }, pen) => [
      `Nothing was read between ${pen.at(from)} and ${pen.at(to)}, where the curve bends by ${pen.amount(bend)}.`,
      'Take a few readings there.',
    ],
    pattern: ({ degree, better }) => [
      `The readings wander around the curve of degree ${degree}: it is too stiff for them.`,
      `Try degree ${better}.`,
    ],
    'up-down': ({ upLessDown }, pen) => [
      `Going up reads ${pen.amount(upLessDown)} ${upLessDown < 0 ? 'lower' : 'higher'} than going down, more than the gauge scatters.`,
      'Look for play or friction in joints and bushes; come to every height from the same side.',
    ],
    repeatability: ({ sd, limit }, pen) => [
      `Repeated readings scatter by ${pen.amount(sd)}; a gauge on the hub seldom does by more than ${pen.amount(limit)}.`,
      'Check that the gauge sits firmly, the steering is locked straight and each height is set with care.',
    ],
    'two-sets': ({ passes, others, degrees }, pen) => [
      `${listed(others, pen)} ${others.length > 1 ? 'make' : 'makes'} a different curve from ${WORDS.lower(listed(passes, pen))}: ${pen.amount(degrees)} apart over their travel.`,
      `Were other parts fitted? Then ${WORDS.ownSet(others)}.`,
    ],
    drift: ({ drift, apart }, pen) => [
      `The ${pen.instrument} drifted by ${pen.amount(drift)} from the first reading of each pass to its last. The curve is without it.`,
      apart
        ? `Or ${WORDS.lower(listed(apart.passes, pen))} had other parts fitted, and ${WORDS.ownSet(apart.passes)}. If not, clamp the ${pen.instrument} tighter, and read the first height again at the end of each pass.`
        : `Clamp the ${pen.instrument} tighter${pen.instrument === WORDS.gauge ? ' and let it warm up' : ''}. If only one reading says so, check that one.`,
    ],
    'pass-apart': ({ pass, other, degrees, mm, apart }, pen) => [
      `${pen.pass(pass)} runs apart from ${other === undefined ? 'the others' : WORDS.lower(pen.pass(other))} by ${pen.amount(degrees)} over its travel${
        mm === undefined ? '' : `, as if its heights were ${pen.length(mm)} too ${mm < 0 ? 'high' : 'low'}`
      }. The ± is wider for it.`,
      `Check the height that this pass calls zero, and whether the gauge or the body crept. ${
        apart
          ? `Were other parts fitted? Then ${WORDS.ownSet(apart.passes)}.`
          : 'Another pass would tell which is right.'
      }`,
    ],
    correlated: ({ count: all, effective }) => [
      `Readings next to each other are off together: ${all} readings tell no more than ${effective} independent ones would. The ± is wider for it.`,
      'Something creeps while you read: rock the wheel and tap the gauge before each reading, and take the next pass afresh.',
    ],
    coarse: ({ step }, pen) => [
      `Every value is a multiple of ${pen.amount(step)}, which is coarse for a curve.`,
      'Read the gauge more finely if it allows.',
    ],
  },
});

/** Words of the button. */
function label(fix: Fix, warning: DataWarning, pen: Pen): string {
  const { fixes } = WORDS;
  switch (fix.kind) {
    case 'value':
    case 'travel':
      return fixes.make(fix.kind === 'travel' ? pen.at(fix.value) : pen.typed(fix.value));
    case 'set-aside':
      return fixes.aside(pen.typed(pen.readings[fix.index]!.value));
    case 'swap':
      return fixes.swap;
    case 'scale':
      return fixes.scale(WORDS.units[(warning as DataWarningOf<'mixed-units'>).unit]);
    case 'negate-pass':
      return fixes.turn(fix.of);
    case 'new-set':
      return fixes.newSet(fix.passes);
    default:
      return fixes.ownPass;
  }
}

/**
 * A warning in plain words.
 *
 * @param readings those that were looked at: the warning's indexes are into them
 */
export function dataWarningText(
  warning: DataWarning,
  readings: readonly Reading[],
  options: DataWarningTextOptions,
): DataWarningText {
  const pen = penOf(readings, options);
  const [text, remedy] = (WORDS.of[warning.kind] as Write<DataWarningKind>)(warning, pen);
  const fix = fixOf(warning, readings);
  return { text, remedy, ...(fix && { fix: { ...fix, label: label(fix, warning, pen) } }) };
}
