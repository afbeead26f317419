import type { At, Cell, Comparison, Net } from '../../core/answers/compare.js';
import type { Crossing, Interval } from '../../core/curve/break-even.js';
import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';
import { setupsBy } from '../../core/document/setup-in-use.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { amount, plain, type Reader, type Stretch, show, textOf, value } from '../shared/sentence.js';
import { exampleText } from '../shared/stand-in.js';
import type { ComparedSets } from './compared-sets.js';
import type { Reaches } from './what-reaches.js';

export interface Told {
  names: readonly string[];
  heights: readonly number[];
  comparison: Comparison;
  /** The two cells that are compared, and what lies between. */
  from: At;
  to: At;
  net: Net | undefined;
}

/** "at stock height", "25 mm lower" */
export const heightText = (drop: number, reader: Reader): string =>
  drop === 0 ? 'at stock height' : `${show(Math.abs(drop), 'drop', reader)} ${drop < 0 ? 'higher' : 'lower'}`;

const placeText = (drop: number, reader: Reader): string => heightText(drop, reader).replace(/^(?!at )/, 'at ');

const lower = (name: string): string =>
  /^[A-Z][a-z]/.test(name) ? name.slice(0, 1).toLowerCase() + name.slice(1) : name;

export const cellName = (at: At, { names, heights }: Pick<Told, 'names' | 'heights'>, reader: Reader): string =>
  `${lower(names[at.curve]!)} ${placeText(heights[at.height]!, reader)}`;

/** What follows "Over 40 mm of bump": both cells, what lies between, and where the two break even. */
export function sentence(told: Told, reader: Reader): Stretch[] {
  const { comparison, from, to, net } = told;
  const [old, now] = [from, to].map(({ curve, height }) => comparison.cells[curve]![height]!);
  const isOne = from.curve === to.curve && from.height === to.height;
  return [
    plain(' '),
    ...addsWords(told, to, now!, reader, true),
    ...(isOne ? [plain('.')] : [plain(', '), ...addsWords(told, from, old!, reader, false), ...netWords(net, reader)]),
    ...breakWords(told, reader),
  ];
}

function addsWords(told: Told, at: At, { change, isBeyondSolid }: Cell, reader: Reader, isFirst: boolean): Stretch[] {
  const name = told.names[at.curve]!;
  const where = cellName(at, told, reader);
  if (!change)
    return [
      plain(`${where} ${isBeyondSolid ? 'cannot go so far' : `${verb(name, 'were', 'was')} not measured so far`}`),
    ];
  const does = change.value > 0 ? verb(name, 'take away', 'takes away') : isFirst ? verb(name, 'add', 'adds') : '';
  return [
    plain(`${where}${does && ` ${does}`} `),
    ...amount(Math.abs(change.value), change.plusMinus, 'camberChange', reader),
    ...(isFirst ? [plain(' of negative camber')] : []),
  ];
}

/** More, less or the same. */
function netWords(net: Net | undefined, reader: Reader): Stretch[] {
  if (!net) return [plain('.')];
  const { total } = net;
  if (!total.isTold && total.plusMinus !== undefined) {
    return [
      plain(': '),
      value('too close to tell apart'),
      plain(`, ±\u202f${show(total.plusMinus, 'camberChange', reader)}.`),
    ];
  }
  const size = amount(Math.abs(total.value), total.plusMinus, 'camberChange', reader);
  return [plain(': '), ...size, plain(total.value < 0 ? ' more.' : ' less.')];
}

/** Of the set that is asked about: a break-even is one with the reference at its own height, so it is said beside that only. */
function breakWords({ comparison, to, from, names }: Told, reader: Reader): Stretch[] {
  const isReference = ({ curve, height }: At) => curve === 0 && height === 0;
  const { curve } = isReference(from) ? to : from;
  const isBeside = isReference(from) || isReference(to);
  const crossing = isBeside && curve !== 0 ? comparison.breakEvens[curve - 1]?.change : undefined;
  return crossing ? crossingWords(crossing, names[curve]!, reader) : [];
}

/** "Below 23 ± 4 mm of drop lowered joints are ahead." */
export function crossingWords(crossing: Crossing, set: string, reader: Reader): Stretch[] {
  const name = lower(set);
  const are = verb(set, 'are', 'is');
  const at = (mm: number) => show(Math.round(mm), 'drop', reader);
  const within = `between ${at(crossing.range[0])} and ${at(crossing.range[1])} of drop`;
  switch (crossing.kind) {
    case 'at':
      return [
        plain(crossing.isAheadBelow ? ' Below ' : ' Above '),
        ...dropWords(crossing.drop, crossing.interval, reader),
        plain(` of drop ${name} ${are} ahead.`),
      ];
    case 'two':
      return [
        plain(` ${start(name)} ${are} even at `),
        value(at(crossing.drops[0])),
        plain(' and again, past the reversal, at '),
        value(at(crossing.drops[1])),
        plain(' of drop.'),
      ];
    case 'none':
      return [plain(` ${start(name)} ${are} ${crossing.side} all the way ${within}.`)];
    default:
      if (crossing.side) {
        const low = at(Math.floor(crossing.interval.low));
        const end = `between there and ${at(crossing.range[1])} cannot be told.`;
        return [
          plain(` Up to `),
          value(low),
          plain(` of drop ${name} ${are} ${crossing.side}; whether they break even ${end}`),
        ];
      }
      return [plain(` Where they break even cannot be told ${within}.`)];
  }
}

/** A drop with its interval: ± where it is about even, else its two ends, of which one may be open. */
function dropWords(drop: number, { low, high, isLowOpen, isHighOpen }: Interval, reader: Reader): Stretch[] {
  const at = (mm: number) => show(Math.round(mm), 'drop', reader);
  if (isLowOpen || isHighOpen) {
    const side = isLowOpen && isHighOpen ? 'anywhere' : isLowOpen ? `at most ${at(high)}` : `at least ${at(low)}`;
    return [value(at(drop)), plain(' '), { text: `(${side})`, role: 'doubt' }];
  }
  const [down, up] = [drop - low, high - drop];
  if (Math.max(down, up) < 1.5 * Math.min(down, up) + 0.5) return amount(drop, Math.max(down, up), 'drop', reader);
  return [value(at(drop)), plain(' '), { text: `(${at(low)} to ${at(high)})`, role: 'doubt' }];
}

/** Names of parts are mostly in the plural. */
const verb = (name: string, many: string, one: string): string => (/s\b/i.test(name) ? many : one);
const start = (name: string): string => name.slice(0, 1).toUpperCase() + name.slice(1);

export const spoken = (told: Told, over: string, reader: Reader): string =>
  `Over ${over} of bump${textOf(sentence(told, reader))}`;

/** Whose numbers these are. */
export function ownership({ sets, isExample, yours, pages }: ComparedSets, car: CarDocument): string {
  if (isExample) return exampleText(car);
  const count = `${sets.length} set${sets.length === 1 ? '' : 's'} of parts`;
  if (pages === 0) return `${count}, yours`;
  return yours === 0 && setupsBy(car) === 'page'
    ? `${count} of this page`
    : `${count}: ${yours} yours, ${pages} from a page`;
}

/** What stands before an answer about the example where a car was given; empty where none was. */
export function notYours(car: CarDocument): string {
  const by = cornerGivenBy(car);
  return by ? `Not ${by === 'user' ? 'your car' : 'the car of this page'}: the example’s parts. ` : '';
}

/** Where the readings end, and what could be compared instead. */
export function reachText({ at, end, isSolid }: Reaches, { names, heights }: Told, reader: Reader): string {
  const name = start(names[at.curve]!);
  const drop = heights[at.height]!;
  const where = formatQuantity(end, 'travel', reader.units, { language: reader.language, sign: 'always' }).text;
  const left = end - drop;
  const ends = isSolid ? `The suspension is solid at ${where}` : `${name}: the readings end at ${where}`;
  return left > 0
    ? `${ends}, ${show(left, 'travel', reader)} of bump from ${heightText(drop, reader).replace('at ', '')}.`
    : `${ends}, above ${heightText(drop, reader).replace('at ', '')}.`;
}

export const FIRST = {
  title: 'Part or height: what does each change?',
  over: 'Bump over which changes are compared',
  waiting: 'Working it out …',
  noAnswer: ' no answer yet.',
  before: 'Last answer:',
  makeYours:
    'Measurements and hard points are not used here yet. To compare parts on your own car, read camber with each set fitted and add the readings below.',
} as const;
