import type { At, Cell, Comparison, Net } from '../../core/answers/compare.js';
import type { Crossing, Interval } from '../../core/curve/break-even.js';
import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';
import { setupsBy } from '../../core/document/setup-in-use.js';
import { exampleText } from '../car/stand-in.js';
import { SHARED } from '../element/first.words.js';
import {
  amount,
  counting,
  type Display,
  fill,
  lower,
  plain,
  type Stretch,
  say,
  show,
  value,
} from '../element/sentence.js';
import type { ComparedSets } from './compared-sets.js';
import { FIRST, type FirstWords } from './first.words.js';

export { FIRST };

export interface Told {
  names: readonly string[];
  /** Which of them is the car's own curve; −1: none. */
  own: number;
  heights: readonly number[];
  comparison: Comparison;
  /** The two cells that are compared, and what lies between. */
  from: At;
  to: At;
  net: Net | undefined;
}

/** "at stock height", "25 mm lower" */
export const heightText = (drop: number, display: Display, words: FirstWords = FIRST): string =>
  placed(drop, display, [words.stock, words.lower, words.higher]);

/** "at stock height", "at 25 mm lower" */
export const placeText = (drop: number, display: Display, words: FirstWords = FIRST): string =>
  placed(drop, display, [words.stock, words.atLower, words.atHigher]);

function placed(drop: number, display: Display, [stock, lower, higher]: readonly [string, string, string]): string {
  return say(drop === 0 ? stock : drop < 0 ? higher : lower, { size: show(Math.abs(drop), 'drop', display) });
}

export const cellName = (
  at: At,
  { names, heights }: Pick<Told, 'names' | 'heights'>,
  display: Display,
  words: FirstWords = FIRST,
): string => say(words.cell, { name: lower(names[at.curve]!), where: placeText(heights[at.height]!, display, words) });

/** What follows "Over 40 mm of bump": both cells, what lies between, and where the two break even. */
export function sentence(told: Told, display: Display, words: FirstWords = FIRST): Stretch[] {
  const { comparison, from, to, net } = told;
  const said = (at: At, isFirst: boolean) =>
    addsWords(told, at, comparison.cells[at.curve]![at.height]!, display, isFirst, words);
  const isOne = from.curve === to.curve && from.height === to.height;
  const isKnown = (at: At) => comparison.cells[at.curve]![at.height]!.change !== undefined;
  const pairWords = (): Stretch[] => {
    if (isKnown(to) && isKnown(from)) {
      return fill(words.both, { to: said(to, true), from: said(from, false), net: netWords(net, display, words) });
    }
    const [known, unknown] = isKnown(to) ? [to, from] : [from, to];
    return isKnown(known)
      ? fill(words.half, { known: said(known, true), unknown: said(unknown, true) })
      : fill(words.neither, { to: said(to, true), from: said(from, true) });
  };
  return [...(isOne ? fill(words.single, { to: said(to, true) }) : pairWords()), ...breakWords(told, display, words)];
}

function addsWords(
  told: Told,
  at: At,
  { change, isBeyondSolid }: Cell,
  display: Display,
  isFirst: boolean,
  words: FirstWords,
): Stretch[] {
  const isMany = isPlural(told.names[at.curve]!);
  const cell = cellName(at, told, display, words);
  if (!change) return fill(isBeyondSolid ? words.cannot : isMany ? words.wereNot : words.wasNot, { cell });
  const size = amount(Math.abs(change.value), change.plusMinus, 'camberChange', display);
  const [many, one] =
    change.value > 0
      ? [words.takeAway, words.takesAway]
      : isFirst
        ? [words.add, words.adds]
        : [words.sameToo, words.sameToo];
  const said = fill(isMany ? many : one, { cell, change: size });
  return isFirst ? fill(words.ofNegative, { said }) : said;
}

/** More, less or the same. */
function netWords(net: Net | undefined, display: Display, words: FirstWords): Stretch[] {
  if (!net) return fill(words.end);
  const { value: size, plusMinus, isTold } = net.total;
  if (!isTold && plusMinus !== undefined) return fill(words.same, { within: show(plusMinus, 'camberChange', display) });
  return fill(size < 0 ? words.more : words.less, { size: amount(Math.abs(size), plusMinus, 'camberChange', display) });
}

/** Of the set that is asked about: a break-even is one with the reference at its own height, so it is said beside that only. */
function breakWords({ comparison, to, from, names }: Told, display: Display, words: FirstWords): Stretch[] {
  const isReference = ({ curve, height }: At) => curve === 0 && height === 0;
  const { curve } = isReference(from) ? to : from;
  const isBeside = isReference(from) || isReference(to);
  const crossing = isBeside && curve !== 0 ? comparison.breakEvens[curve - 1]?.change : undefined;
  return crossing ? crossingWords(crossing, names[curve]!, display, words) : [];
}

/** "Below 23 ± 4 mm of drop lowered joints are ahead." */
export function crossingWords(crossing: Crossing, set: string, display: Display, words: FirstWords = FIRST): Stretch[] {
  const at = (mm: number) => show(Math.round(mm), 'drop', display);
  const [low, high] = crossing.range;
  const parts = {
    name: lower(set),
    are: isPlural(set) ? words.are : words.is,
    within: say(words.within, { low: at(low), high: at(high) }),
    end: at(high),
  };
  switch (crossing.kind) {
    case 'at': {
      const drop = dropWords(crossing.drop, crossing.interval, display, words);
      return fill(crossing.isAheadBelow ? words.below : words.above, { ...parts, drop });
    }
    case 'two': {
      const [first, second] = crossing.drops;
      return fill(words.two, { ...parts, first: at(first), second: at(second) });
    }
    case 'none':
      return fill(words.none, { ...parts, side: words[crossing.side] });
    default:
      return crossing.side
        ? fill(words.upTo, { ...parts, side: words[crossing.side], low: at(Math.floor(crossing.interval.low)) })
        : fill(words.untold, parts);
  }
}

/** A drop with its interval: ± where it is about even, else its two ends, of which one may be open. */
function dropWords(drop: number, interval: Interval, display: Display, words: FirstWords): Stretch[] {
  const { low, high, isLowOpen, isHighOpen } = interval;
  const at = (mm: number) => show(Math.round(mm), 'drop', display);
  const [down, up] = [drop - low, high - drop];
  const isOpen = isLowOpen || isHighOpen;
  if (!isOpen && Math.max(down, up) < 1.5 * Math.min(down, up) + 0.5) {
    return amount(drop, Math.max(down, up), 'drop', display);
  }
  const pattern = !isOpen
    ? words.lowToHigh
    : isLowOpen && isHighOpen
      ? words.anywhere
      : isLowOpen
        ? words.atMost
        : words.atLeast;
  return [value(at(drop)), plain(' '), { text: say(pattern, { low: at(low), high: at(high) }), role: 'doubt' }];
}

/** Names of parts are mostly in the plural. */
const isPlural = (name: string): boolean => /s\b/i.test(name);

export const spoken = (told: Told, over: string, display: Display, words: FirstWords = FIRST): string =>
  say(words.spoken, { over, rest: sentence(told, display, words) });

/** Whose numbers these are. */
export function ownership(
  { sets, own, isExample, yours, pages }: ComparedSets,
  car: CarDocument,
  { whose: words }: FirstWords = FIRST,
): string {
  if (isExample) return exampleText(car);
  const ofCar = own && (own.count ? say(words.car, { name: own.name, count: own.count }) : own.name);
  if (ofCar && sets.length === 0) return ofCar;
  const ofSets = setsOf({ sets, yours, pages }, car, words);
  return ofCar ? say(words.and, { car: ofCar, sets: ofSets }) : ofSets;
}

function setsOf(
  { sets, yours, pages }: Pick<ComparedSets, 'sets' | 'yours' | 'pages'>,
  car: CarDocument,
  words: FirstWords['whose'],
): string {
  const pattern = pages === 0 ? words.yours : yours === 0 && setupsBy(car) === 'page' ? words.ofPage : words.mixed;
  return say(pattern, { sets: counting(sets.length, words.sets), yours: String(yours), pages: String(pages) });
}

/** What stands before an answer about the example where a car was given; empty where none was. */
export function notYours(car: CarDocument, { whose: words }: FirstWords = FIRST): string {
  const by = cornerGivenBy(car);
  return by ? say(words.notYours, { car: by === 'user' ? SHARED.yourCar : SHARED.pagesCar }) : '';
}
