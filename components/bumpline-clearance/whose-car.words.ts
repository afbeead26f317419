import { type CarDocument, givenPointCount } from '../../core/document/car.js';
import { givenBy } from '../../core/document/provenance.js';
import { setupsBy, wayOf } from '../../core/document/setup-in-use.js';
import { ownFit, ownValues, WHEEL_VALUES } from '../../core/document/wheels-in-use.js';
import { PARTS, type Part, type PartBy, partsBy } from '../../core/document/whose-parts.js';
import { upper } from './bumpline-clearance.words.js';

const SHORT: Record<Part, string> = {
  motion: 'motion',
  before: 'old wheel',
  after: 'new wheel',
  places: 'places',
  limits: 'bump travel',
};

const LONG: Record<Part, string> = {
  motion: 'how the wheel moves',
  before: 'the old wheel',
  after: 'the new wheel',
  places: 'the places',
  limits: 'the bump travel',
};

const isWheel = (part: Part): part is 'before' | 'after' => part === 'before' || part === 'after';

/** "new wheel 1 of 3": what the user gave of a part that is not all theirs; undefined where that is nothing. */
function begun(car: CarDocument, part: Part): string | undefined {
  if (isWheel(part)) {
    const count = ownValues(car, part);
    if (count > 0) return `${SHORT[part]} ${count} of ${WHEEL_VALUES.length}`;
    return ownFit(car)[part]?.spacer === undefined ? undefined : 'spacer';
  }
  const isPoints = part === 'motion' && givenBy(car, 'corner') === 'user' && wayOf(car) === 'points';
  return isPoints && givenPointCount(car) > 0 ? `${SHORT.motion} ${givenPointCount(car)} of 8` : undefined;
}

const has = (parts: Record<Part, PartBy>, by: PartBy): Part[] => PARTS.filter((part) => parts[part] === by);

/** Whose these numbers are: what is all of it the user's, and of what some is; else what the page gave. */
export function ownership(car: CarDocument): string {
  const parts = partsBy(car);
  const own = has(parts, 'yours');
  const names = together(
    PARTS.flatMap((part) => {
      const name = own.includes(part) ? SHORT[part] : begun(car, part);
      return name === undefined ? [] : [name];
    }),
    SHORT,
    'wheels',
  );
  if (own.length === PARTS.length) return 'all yours';
  if (names.length > 0) return `${names.join(', ')} yours`;
  const given = has(parts, 'page');
  if (given.length === PARTS.length) return 'this page’s example';
  return given.length > 0
    ? `${together(
        given.map((part) => SHORT[part]),
        SHORT,
        'wheels',
      ).join(', ')} from this page`
    : 'Example';
}

/** Both wheels are one thing to say. */
function together(names: readonly string[], of: Record<Part, string>, both: string): string[] {
  if (!names.includes(of.before) || !names.includes(of.after)) return [...names];
  return names.flatMap((name) => (name === of.after ? [] : [name === of.before ? both : name]));
}

export function completeness(car: CarDocument): 'example' | 'incomplete' | 'ready' {
  const parts = partsBy(car);
  const given = PARTS.filter((part) => parts[part] === 'yours' || parts[part] === 'page');
  if (given.length === PARTS.length) return 'ready';
  return given.length === 0 && PARTS.every((part) => begun(car, part) === undefined) ? 'example' : 'incomplete';
}

/** Whether the user has begun with a car of their own. */
const isBegun = (car: CarDocument): boolean =>
  givenBy(car, 'fit') === 'user' ||
  givenBy(car, 'corner') === 'user' ||
  (wayOf(car) === 'readings' && setupsBy(car) === 'user');

const NOT_YOURS = 'Not your car yet. ';

/** Stands first, while anything of the answer is the example’s or the page’s: of another car’s tyres no verdict is theirs. */
export function notYours(car: CarDocument): string {
  return Object.values(partsBy(car)).every((by) => by === 'yours' || by === 'old') ? '' : NOT_YOURS;
}

/** What of a car that somebody has begun is still the example's, or the page's, or taken as something else. */
export function standInWords(car: CarDocument): string {
  if (!isBegun(car)) return '';
  const parts = partsBy(car);
  const still = (by: PartBy, whose: string) => {
    const names = together(
      has(parts, by).map((part) => (isWheel(part) && begun(car, part) ? `part of ${LONG[part]}` : LONG[part])),
      LONG,
      'the wheels',
    );
    const last = names.pop();
    if (last === undefined) return '';
    const list = names.length > 0 ? `${names.join(', ')} and ${last}` : last;
    const isMany = names.length > 0 || last === 'the wheels' || last === LONG.places;
    return ` ${upper(list)} ${isMany ? 'are' : 'is'} still ${whose}.`;
  };
  const assumed = has(parts, 'assumed').map((part) => ` The rim width of ${LONG[part]} is assumed.`);
  const old = parts.after === 'old' ? ' The new wheel is taken to be as the old one.' : '';
  return `${still('example', 'the example’s')}${still('page', 'the page’s')}${assumed.join('')}${old}`;
}
