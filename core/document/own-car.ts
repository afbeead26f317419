import { askedOf, IN_PARTS, usersAsked, withPagesAsked } from './asked-of-car.js';
import { type CarDocument, dropBy, EMPTY_CAR, wayBy } from './car.js';
import {
  type CarPart,
  gave,
  give,
  givenBy,
  isBare,
  isFilled,
  isUsers,
  PART_FIELDS,
  valuesOf,
  without,
} from './provenance.js';

const PARTS = Object.keys(PART_FIELDS) as CarPart[];

/** The car without what a page gave of it. */
export function usersOnly(car: CarDocument): CarDocument {
  const bare = withPagesAsked(car, {});
  const { curve: _, ...own } = PARTS.reduce((all, part) => (isUsers(all, part) ? all : without(all, part)), bare);
  const { drop: ofDrop, way: ofWay } = own.provenance;
  const { dropPlusMinus, ...others } = own;
  const users = PARTS.filter((part) => isUsers(car, part)).map((part) => [part, { by: 'user' }]);
  const isDropOwn = dropBy(car) === 'user';
  const isWayOwn = wayBy(car) === 'user';
  return {
    ...others,
    ...(isDropOwn ? dropPlusMinus !== undefined && { dropPlusMinus } : { drop: EMPTY_CAR.drop }),
    ...(!isWayOwn && { by: EMPTY_CAR.by, cornerName: EMPTY_CAR.cornerName }),
    provenance: {
      ...Object.fromEntries(users),
      ...(isDropOwn && ofDrop && { drop: ofDrop }),
      ...(isWayOwn && ofWay && { way: ofWay }),
    },
  };
}

/** A car of which a user gave all that is there. */
export const byUser = (car: CarDocument): CarDocument => ({
  ...car,
  provenance: {
    ...Object.fromEntries(PARTS.filter((part) => holds(car, part)).map((part) => [part, { by: 'user' }])),
    drop: { by: 'user' },
    way: { by: 'user' },
  },
});

/** The same of all that anybody gave; what nobody gave stays the example's. */
export function asUsersOwn(car: CarDocument): CarDocument {
  const whole = byUser(car);
  const { drop, way, ...parts } = whole.provenance;
  const isDrop = dropBy(car) !== 'example';
  const isWay = wayBy(car) !== 'example';
  return { ...whole, provenance: { ...parts, ...(isDrop && drop && { drop }), ...(isWay && way && { way }) } };
}

/** The fields of a car that hold something a user gave. */
export function usersFields(car: CarDocument): (keyof CarDocument)[] {
  const own = usersOnly(car);
  const given = isBare(own.given) && own.whole === undefined ? [] : (['given'] as const);
  const parts = IN_PARTS.filter((field) => field !== 'given' && own[field as keyof CarDocument] !== undefined);
  const drop = dropBy(car) === 'user' ? (['drop'] as const) : [];
  return [...given, ...drop, ...parts, ...Object.keys(askedOf(own))] as (keyof CarDocument)[];
}

/** Whether a user gave anything of a car, or of what is asked of it. */
export const isAnyUsers = (car: CarDocument): boolean =>
  PARTS.some((part) => isUsers(car, part)) ||
  dropBy(car) === 'user' ||
  wayBy(car) === 'user' ||
  isFilled(usersAsked(car));

/** A car with what a user gave of another over it; what is a page's stays, or stands in for what they did not give. */
export function withUsers(car: CarDocument, users: CarDocument): CarDocument {
  const over = (all: CarDocument, part: CarPart) =>
    isUsers(users, part) && !(part === 'corner' && isBare(users.given) && users.whole === undefined && !isFree(all))
      ? give(all, part, 'user', () => gave(users, part, 'user'))
      : all;
  const { curve, ...all } = { ...PARTS.reduce(over, car), ...usersAsked(users) };
  const { drop, dropPlusMinus, cornerName, by } = users;
  const isDrop = dropBy(users) === 'user';
  const isWay = wayBy(users) === 'user';
  const { dropPlusMinus: pages, ...rest } = all;
  const found = isDrop ? dropPlusMinus : pages;
  const user = { by: 'user' } as const;
  return {
    ...rest,
    ...(isDrop && { drop }),
    ...(found !== undefined && { dropPlusMinus: found }),
    ...(isWay && { cornerName, by }),
    // A page's curve is that of the page's car.
    ...(curve && !isUsers(all, 'corner') && { curve }),
    provenance: { ...rest.provenance, ...(isDrop && { drop: user }), ...(isWay && { way: user }) },
  };
}

/** What a page gave of a car, without its user's. Of what always has a value theirs was lost, and the example's stands in. */
export function pagesOnly(car: CarDocument): CarDocument {
  const bare = PARTS.reduce((all, part) => {
    if (!isUsers(all, part)) return all;
    const { [part]: _, ...provenance } = all.provenance;
    const given = gave(all, part, 'page');
    const entry = isFilled(given) && { [part]: { by: 'page' } };
    return { ...without(all, part), ...given, provenance: { ...provenance, ...entry } };
  }, car);
  const others = Object.fromEntries(Object.entries(bare).filter(([field]) => !(field in usersAsked(bare))));
  const { drop, way, ...provenance } = bare.provenance;
  const { dropPlusMinus: _, ...found } = others as CarDocument;
  return {
    ...found,
    ...bare.provenance.asked?.standIn,
    ...(dropBy(car) === 'user'
      ? { drop: EMPTY_CAR.drop }
      : bare.dropPlusMinus !== undefined && { dropPlusMinus: bare.dropPlusMinus }),
    ...(wayBy(car) === 'user' && { by: EMPTY_CAR.by, cornerName: EMPTY_CAR.cornerName }),
    provenance: {
      ...provenance,
      ...(drop?.by === 'page' && { drop }),
      ...(way?.by === 'page' && { way }),
    },
  };
}

/** Whether no page gave the corner: what a link says of none is a user's own then, begun with their readings or the other side. */
const isFree = (car: CarDocument): boolean => givenBy(car, 'corner') !== 'page' && !car.curve;

/** Parts that hold something which nobody is said to have given. */
export const nobodys = (car: CarDocument): CarPart[] =>
  PARTS.filter((part) => givenBy(car, part) === 'example' && holds(car, part));

/** Of the corner there is always a record. */
const holds = (car: CarDocument, part: CarPart): boolean =>
  part === 'corner' ? car.whole !== undefined || !isBare(car.given) : isFilled(valuesOf(car, part));
