import { askedOf, withPagesAsked } from './asked-of-car.js';
import { type CarDocument, dropBy, EMPTY_CAR, wayBy } from './car.js';
import { type CarPart, gave, give, isBare, isFilled, isUsers, PART_FIELDS, valuesOf } from './provenance.js';
import { byReadings } from './setups.js';
import { wheelInUse } from './wheels-in-use.js';

/** What a page says of a whole car: the fields of a document that it names, and nothing of who gave them. */
export type PageCar = Partial<Omit<CarDocument, 'version' | 'provenance'>>;

const PARTS = Object.keys(PART_FIELDS) as CarPart[];
/** What stands where nobody has said anything. */
const asDocument = (car: PageCar): CarDocument => ({ ...EMPTY_CAR, ...car });

/** Whether a page gave a part already, by attributes or a table. */
const isGiven = (car: CarDocument, part: CarPart): boolean => {
  const { given, ...values } = gave(car, part, 'page') as Partial<CarDocument>;
  return isFilled(values) || (given !== undefined && !isBare(given)) || (part === 'corner' && car.curve !== undefined);
};

/**
 * A car with what a page says of a whole one, where nobody has said anything yet: what a user gave stays, and so does what the page
 * says in attributes.
 *
 * @param had what the page said before: it is taken back
 */
export function withPageCar(car: CarDocument, said: PageCar, had: PageCar = {}): CarDocument {
  const free = isFilled(had) ? without(car, had) : car;
  const parted = PARTS.reduce((all, part) => withPart(all, said, part), free);
  const { cornerName, by, drop, dropPlusMinus } = said;
  const isWay = wayBy(parted) !== 'user' && (cornerName !== undefined || by !== undefined);
  const isDrop = dropBy(parted) === 'example' && drop !== undefined;
  const page = { by: 'page' } as const;
  const found = {
    ...parted,
    ...(isWay && cornerName !== undefined && { cornerName }),
    ...(isWay && by !== undefined && { by }),
    ...(isDrop && { drop, ...(dropPlusMinus !== undefined && { dropPlusMinus }) }),
    provenance: { ...parted.provenance, ...(isWay && { way: page }), ...(isDrop && { drop: page }) },
  };
  return withPagesAsked(found, askedOf(said));
}

function withPart(car: CarDocument, said: PageCar, part: CarPart): CarDocument {
  const { given, ...others } = valuesOf(asDocument(said), part) as Partial<CarDocument>;
  const values = { ...others, ...(given && !isBare(given) && { given }) };
  const { curve } = part === 'corner' ? said : {};
  if ((!isFilled(values) && !curve) || isGiven(car, part)) return car;
  const next = give(car, part, 'page', () => values);
  if (part === 'setups') return byReadings(next);
  if (part !== 'corner' || isUsers(car, 'corner')) return next;
  const isOfPoints = others.whole !== undefined || Object.keys(given?.points ?? {}).length > 0;
  const by = isOfPoints ? 'points' : next.by;
  return { ...next, ...(wayBy(car) !== 'user' && { by }), ...(curve && { curve }) };
}

/** A car without what a page said of it as a whole. */
function without(car: CarDocument, had: PageCar): CarDocument {
  const bare = PARTS.reduce((all, part) => {
    const pages = gave(all, part, 'page') as PageCar;
    const isHad = Object.entries(pages).some(([field, value]) => had[field as keyof PageCar] === value);
    return isHad ? give(all, part, 'page', () => ({})) : all;
  }, car);
  const { curve, dropPlusMinus, ...rest } = bare;
  const { drop, way, ...others } = rest.provenance;
  const isDrop = drop?.by === 'page' && rest.drop === had.drop;
  const isWay = way?.by === 'page';
  return withPagesAsked(
    {
      ...rest,
      ...(curve && curve !== had.curve && { curve }),
      ...(isDrop ? { drop: EMPTY_CAR.drop } : dropPlusMinus !== undefined && { dropPlusMinus }),
      ...(isWay && { by: EMPTY_CAR.by, cornerName: EMPTY_CAR.cornerName }),
      provenance: { ...others, ...(drop && !isDrop && { drop }), ...(way && !isWay && { way }) },
    },
    {},
  );
}

/** Wheels as the answer takes them: a page's stand alone, where of a user's one stands in for what they did not say of the other. */
function wholeWheels(car: CarDocument): PageCar['fit'] {
  const { fit } = car;
  if (!fit?.before && !fit?.after) return fit;
  return { ...fit, before: wheelInUse(car, 'before').spec, after: wheelInUse(car, 'after').spec };
}

/** All of a car that anybody gave, as a page says it; what was predicted and kept is its reader's record, and no page's. */
export function asPageCar(car: CarDocument): PageCar {
  const { version: _, provenance: __, predictions: ___, given, drop, dropPlusMinus, by, cornerName, ...rest } = car;
  const { fit, ...others } = rest;
  const isWay = wayBy(car) !== 'example';
  const isDrop = dropBy(car) !== 'example';
  return {
    ...(isWay && { cornerName, by }),
    ...(!isBare(given) && { given }),
    ...(isDrop && { drop, ...(dropPlusMinus !== undefined && { dropPlusMinus }) }),
    ...others,
    ...(fit && { fit: wholeWheels(car) }),
  } as PageCar;
}
