import { type CarDocument, givenPointCount } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { setupsBy, sourceKindOf } from '../../core/document/setup-in-use.js';
import { ownFitment, ownValues, WHEEL_VALUES } from '../../core/document/wheels-in-use.js';
import { PARTS, type Part, type PartBy, partsBy } from '../../core/document/whose-parts.js';
import { correctedBy } from '../car/corrected-by.js';
import { say } from '../element/sentence.js';
import { FIRST, type FirstWords } from './first.words.js';

const { whose: WORDS } = FIRST;

type Words = FirstWords['whose'];

const isWheel = (part: Part): part is 'before' | 'after' => part === 'before' || part === 'after';

/** "new wheel 1 of 3": what the user gave of a part that is not all theirs; undefined where that is nothing. */
function begun(car: CarDocument, part: Part, words: Words = WORDS): string | undefined {
  const counted = (count: number, all: number) =>
    say(words.begun, { part: words.short[part], count: String(count), all: String(all) });
  if (isWheel(part)) {
    const count = ownValues(car, part);
    if (count > 0) return counted(count, WHEEL_VALUES.length);
    return ownFitment(car)[part]?.spacer === undefined ? undefined : words.spacer;
  }
  const isPoints = part === 'motion' && isUsers(car, 'corner') && sourceKindOf(car) === 'points';
  return isPoints && givenPointCount(car) > 0 ? counted(givenPointCount(car), 8) : undefined;
}

const has = (parts: Record<Part, PartBy>, by: PartBy): Part[] => PARTS.filter((part) => parts[part] === by);

/** Whose these numbers are: what is all of it the user's, and of what some is; else what the page gave. */
export function ownership(car: CarDocument, words: Words = WORDS): string {
  const corrected = sourceKindOf(car) === 'readings' ? undefined : correctedBy(car);
  return [whoseParts(car, words), ...(corrected ? [say(words.links, { corrected })] : [])].join('; ');
}

function whoseParts(car: CarDocument, words: Words): string {
  const parts = partsBy(car);
  const own = has(parts, 'yours');
  const list = (names: readonly string[]) => together(names, words.short, words.wheels).join(', ');
  const names = PARTS.flatMap((part) => {
    const name = own.includes(part) ? words.short[part] : begun(car, part, words);
    return name === undefined ? [] : [name];
  });
  if (own.length === PARTS.length) return words.allYours;
  if (names.length > 0) return say(words.yours, { parts: list(names) });
  const given = has(parts, 'page');
  if (given.length === PARTS.length) return words.allPages;
  if (given.length === 0) return words.example;
  const named = (some: readonly Part[]) => list(some.map((part) => words.short[part]));
  const others = has(parts, 'example');
  return others.length > 0
    ? say(words.pagesAndExamples, { parts: named(given), others: named(others) })
    : say(words.pages, { parts: named(given) });
}

/** Both wheels are one thing to say. */
function together(names: readonly string[], of: Words['short'], both: string): string[] {
  if (!names.includes(of.before) || !names.includes(of.after)) return [...names];
  return names.flatMap((name) => (name === of.after ? [] : [name === of.before ? both : name]));
}

export function completeness(car: CarDocument): 'example' | 'incomplete' | 'ready' {
  const parts = partsBy(car);
  const given = PARTS.filter((part) => parts[part] === 'yours' || parts[part] === 'page');
  if (given.length === PARTS.length) return 'ready';
  // The example at another height is the example still.
  const isDropOnly = given.every((part) => part === 'drop');
  return isDropOnly && PARTS.every((part) => begun(car, part) === undefined) ? 'example' : 'incomplete';
}

/** Whether the user has begun with a car of their own. */
const isBegun = (car: CarDocument): boolean =>
  isUsers(car, 'fit') || isUsers(car, 'corner') || (sourceKindOf(car) === 'readings' && setupsBy(car) === 'user');

/** Stands first, while anything of the answer is the example’s or the page’s: of another car’s tyres no verdict is theirs. */
export function notYours(car: CarDocument, words: Words = WORDS): string {
  return Object.values(partsBy(car)).every((by) => by === 'yours' || by === 'old') ? '' : words.notYours;
}

/** What of a car that somebody has begun is still the example's, or the page's, or taken as something else. */
export function standInWords(car: CarDocument, words: Words = WORDS): string {
  const whole = partsBy(car);
  const isPages = !isBegun(car);
  if (isPages && has(whole, 'page').length === 0) return '';
  // The head names the rest of a page's; whose linkage and whose height it is decides the verdict.
  const deciding = { motion: whole.motion, drop: whole.drop } as Partial<Record<Part, PartBy>>;
  const parts = (isPages ? deciding : whole) as Record<Part, PartBy>;
  const { long } = words;
  const still = (by: PartBy, whose: string) => {
    const names = together(
      has(parts, by).map((part) =>
        isWheel(part) && begun(car, part) ? say(words.partOf, { part: long[part] }) : long[part],
      ),
      long,
      words.theWheels,
    );
    const last = names.pop();
    if (last === undefined) return '';
    const list = names.length > 0 ? say(words.and, { list: names.join(', '), last }) : last;
    const isMany = names.length > 0 || last === words.theWheels || last === long.places;
    return say(isMany ? words.areStill : words.isStill, { parts: list, whose });
  };
  const assumed = has(parts, 'assumed').map((part) => say(words.assumed, { part: long[part] }));
  const old = parts.after === 'old' ? words.asOld : '';
  const pages = isPages ? '' : still('page', words.thePages);
  return `${still('example', words.examples)}${pages}${assumed.join('')}${old}`;
}
