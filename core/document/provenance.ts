import type { CarDocument, GivenCorner } from './car-schema.js';

/** Who can give something. What neither gave is the example's. */
export type Giver = 'page' | 'user';

/** What of a car one person gives together, by the fields of the document that hold it. A curve is always a page's. */
const FIELDS = {
  corner: ['given', 'whole'],
  bumpTravel: ['bumpTravel'],
  setups: ['setups', 'setup'],
  fit: ['fit', 'limits', 'stopGap', 'loads'],
} as const satisfies Record<string, readonly (keyof CarDocument)[]>;

export type CarPart = keyof typeof FIELDS;
export type PartValues<P extends CarPart> = Partial<Pick<CarDocument, (typeof FIELDS)[P][number]>>;

/** Who gave a part as it stands in the document. */
export const givenBy = ({ provenance }: CarDocument, part: CarPart): Giver | 'example' =>
  provenance[part]?.by ?? 'example';

/** What one of the two gave of a part: the user's own, or the page's, whether it is shown or stands in. */
export function gave<P extends CarPart>(car: CarDocument, part: P, by: Giver): PartValues<P> {
  const found = car.provenance[part] as { by: Giver; standIn?: PartValues<P> } | undefined;
  if (found?.by === by) return valuesOf(car, part);
  return by === 'page' ? (found?.standIn ?? {}) : {};
}

/**
 * Changes what one of the two gave of a part. With the user's first value theirs begins, and what the page gave stands in; what a
 * page says from then on stands in as well.
 *
 * @param change is given what they gave so far
 */
export function give<P extends CarPart>(
  car: CarDocument,
  part: P,
  by: Giver,
  change: (own: PartValues<P>) => PartValues<P>,
): CarDocument {
  const { [part]: before, ...others } = car.provenance;
  const values = change(gave(car, part, by));
  const canStandIn = part === 'corner' || part === 'fit';
  const isBehind = by === 'page' && before?.by === 'user';
  if (isBehind && !canStandIn) return car;
  const page = isBehind ? values : before && gave(car, part, 'page');
  const standIn = canStandIn && (isBehind || by === 'user') && page && isFilled(page) ? { standIn: page } : {};
  if (isBehind) return { ...car, provenance: { ...others, [part]: { by: 'user', ...standIn } } };
  // A user who has taken the last value back has begun all the same.
  const isGiven = isFilled(values) || (by === 'user' && canStandIn);
  const provenance = { ...others, ...(isGiven && { [part]: { by, ...standIn } }) };
  return { ...without(car, part), ...values, provenance };
}

const PARTS = Object.keys(FIELDS) as CarPart[];

/** The car without what a page gave of it. */
export const usersOnly = (car: CarDocument): CarDocument =>
  PARTS.reduce((own, part) => (givenBy(car, part) === 'user' ? own : without(own, part)), car);

/** A car of which a user gave all that is there. */
export const byUser = (car: CarDocument): CarDocument => ({
  ...car,
  provenance: Object.fromEntries(
    PARTS.filter((part) => isFilled(valuesOf(car, part))).map((part) => [part, { by: 'user' }]),
  ),
});

/** Parts that hold something which nobody is said to have given. */
export const nobodys = (car: CarDocument): CarPart[] =>
  PARTS.filter((part) => givenBy(car, part) === 'example' && isFilled(valuesOf(car, part)));

function without(car: CarDocument, part: CarPart): CarDocument {
  const rest: Partial<CarDocument> = { ...car };
  for (const field of FIELDS[part]) delete rest[field];
  return { ...rest, given: rest.given ?? NOTHING } as CarDocument;
}

const NOTHING: GivenCorner = { points: {} };
const isFilled = (values: object): boolean => Object.keys(values).length > 0;

function valuesOf<P extends CarPart>(car: CarDocument, part: P): PartValues<P> {
  const values: Partial<Record<keyof CarDocument, unknown>> = {};
  for (const field of FIELDS[part]) {
    const { [field]: value } = car;
    const isNone = value === undefined || (field === 'given' && isBare(car.given));
    if (!isNone) values[field] = value;
  }
  return values as PartValues<P>;
}

/** Whether nothing of a corner was given. */
export const isBare = ({ points, ...others }: GivenCorner): boolean => !isFilled(points) && !isFilled(others);
