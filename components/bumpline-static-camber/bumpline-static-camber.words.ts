import type { CamberWay } from '../../core/answers/camber-ways.js';
import type { StaticCamberAnswer, WayAnswer } from '../../core/answers/static-camber.js';
import type { CarDocument } from '../../core/document/car.js';
import { worded } from '../../core/quantity/words.js';
import { cornerWords, missingWords } from '../bumpline-lowering/bumpline-lowering.words.js';
import { dropText, wayOf } from '../element/drop-words.js';
import { type Display, fill, type Stretch, say, show, upper } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';

export { FIRST };

/** What is asked until somebody asks something else: a degree more negative, told over what a turn or a kerb moves a wheel. Common practice, no source. */
export const USUAL_BY_DEG = -1;
export const USUAL_OVER_MM = 40;

/** An angle as somebody says it: 1.0°, 1.25°. */
export const angleText = (degrees: number, display: Display): string =>
  show(Math.abs(degrees), 'partAngle', display).replace(/([.,]\d)0°$/, '$1°');

export const wayText = (drop: number, words: FirstWords = FIRST): string => wayOf(drop, words);

export const senseText = (by: number, words: FirstWords = FIRST): string =>
  by > 0 ? words.lessNegative : words.moreNegative;

/** "11.3 mm inboard": what a way takes, or goes to. */
export function amountText(way: CamberWay, amount: number, display: Display, words: FirstWords = FIRST): string {
  const quantity = way === 'knuckle' || way === 'knuckleBolts' ? 'partAngle' : 'partLength';
  const { less, more } = words.amounts[way];
  return say(amount < 0 ? less : more, { size: show(Math.abs(amount), quantity, display) });
}

/** How much of what was added is gone from the outer wheel at 30° of steer; negative where it has more. Degrees. */
const lostSteered = ({ change }: WayAnswer, by: number): number => Math.sign(by) * (by - change.inclinationAt30);

const isNone = (size: number, display: Display): boolean =>
  show(Math.abs(size), 'partAngle', display) === show(0, 'partAngle', display);

/** What follows "1.0° more negative camber at 25 mm lower": how many ways get there, and what the commonest costs in a turn. */
export function sentence(
  { by, ways }: StaticCamberAnswer,
  car: CarDocument,
  display: Display,
  words: FirstWords = FIRST,
): Stretch[] {
  if (by === 0) return [...fill(words.nothing), ...missingWords(car, words)];
  const reached = ways.filter(({ isReached }) => isReached);
  const [lead] = reached;
  const knuckle = reached.find(({ way }) => way === 'knuckle');
  const steered = lead ? lostSteered(lead, by) : Number.NaN;
  const size = show(Math.abs(steered), 'partAngle', display);
  const pattern = !Number.isFinite(steered)
    ? ''
    : isNone(steered, display)
      ? words.keeps
      : steered > 0
        ? words.loses
        : words.gains;
  const counts = reached.length === 1 ? words.one : reached.length === ways.length ? words.all : words.some;
  return [
    ...fill(counts, {
      count: String(reached.length),
      all: String(ways.length),
      lead: lead
        ? fill(words.lead, {
            way: upper(words.way[lead.way]),
            amount: amountText(lead.way, lead.amount, display, words),
            steered: fill(pattern, { size }),
          })
        : '',
      knuckle: knuckle && knuckle !== lead ? knuckleWords(knuckle, by, display, words) : words.end,
    }),
    ...missingWords(car, words),
  ];
}

function knuckleWords(knuckle: WayAnswer, by: number, display: Display, words: FirstWords): Stretch[] {
  const lost = lostSteered(knuckle, by);
  if (!Number.isFinite(lost)) return fill(words.end);
  const size = show(Math.abs(lost), 'partAngle', display);
  const { knuckleKeeps, knuckleAllBut, knuckleGains } = words;
  const rest = isNone(lost, display) ? knuckleKeeps : lost > 0 ? knuckleAllBut : knuckleGains;
  return fill(words.knuckleToo, { rest: fill(rest, { size }) });
}

/** The whole sentence as it is spoken. */
export const spoken = (
  answer: StaticCamberAnswer,
  car: CarDocument,
  display: Display,
  words: FirstWords = FIRST,
): string =>
  say(words.spoken, {
    by: angleText(answer.by, display),
    sense: senseText(answer.by, words),
    drop: dropText(answer.drop, display),
    way: wayText(answer.drop, words),
    rest: sentence(answer, car, display, words),
  });

/** What an element about one corner says. */
export const WORDS = worded(() => cornerWords(FIRST, { spoken }));
