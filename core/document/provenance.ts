import type { CarDocument, GivenCorner } from './car-schema.js';

/** Who can give something. What neither gave is the example's. */
export type Giver = 'page' | 'user';

/** What of a car one person gives together, by the fields of the document that hold it. A curve is always a page's. */
export const PART_FIELDS = {
  corner: ['given', 'whole'],
  bumpTravel: ['bumpTravel'],
  setups: ['setups', 'setup', 'fitted'],
  fit: ['fit', 'limits', 'stopGap', 'loads'],
} as const satisfies Record<string, readonly (keyof CarDocument)[]>;

export type CarPart = keyof typeof PART_FIELDS;
export type PartValues<P extends CarPart> = Partial<Pick<CarDocument, (typeof PART_FIELDS)[P][number]>>;

/** What is asked of a car, and what is said of it besides its parts: by field. */
export type Asked = NonNullable<CarDocument['provenance']['asked']>['standIn'];

/** What of it is said of the car that was measured, and of no other. */
const OF_THIS_CAR: readonly string[] = [
  'lowered',
  'camberReadLower',
  'measuredAt',
  'other',
  'links',
] satisfies (keyof Asked)[];

/** Who gave a part as it stands in the document. */
export const givenBy = ({ provenance }: CarDocument, part: CarPart): Giver | 'example' =>
  provenance[part]?.by ?? 'example';

export const isUsers = (car: CarDocument, part: CarPart): boolean => givenBy(car, part) === 'user';

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
  const values = change(gave(car, part, by));
  const canStandIn = part === 'corner' || part === 'fit';
  const isBehind = by === 'page' && isUsers(car, part);
  if (isBehind && !canStandIn) return car;
  const { [part]: _, ...others } = car.provenance;
  const page = by === 'page' ? values : gave(car, part, 'page');
  // A user who has taken the last value back has begun all the same.
  const isBegun = canStandIn && (by === 'user' || isBehind);
  const entry = isBegun ? { by: 'user', ...(isFilled(page) && { standIn: page }) } : isFilled(values) && { by };
  const isNewCar = part === 'corner' && by === 'user' && !isUsers(car, part);
  const given = isBehind ? car : { ...without(isNewCar ? withoutPagesCar(car) : car, part), ...values };
  return { ...given, provenance: { ...others, ...(entry && { [part]: entry }) } };
}

/** Whether a field of what is asked holds what a page gave: nobody has put something of their own in its place. */
export function isPagesAsked({ provenance, ...car }: CarDocument, field: string): boolean {
  const { standIn = {} } = provenance.asked ?? {};
  return field in standIn && standIn[field as keyof Asked] === car[field as keyof Asked];
}

/** A car whose user begins one of their own: what a page said of its own car says nothing of theirs. */
function withoutPagesCar(car: CarDocument): CarDocument {
  const isLeft = ([field]: [string, unknown]) => OF_THIS_CAR.includes(field) && isPagesAsked(car, field);
  return Object.fromEntries(Object.entries(car).filter((entry) => !isLeft(entry))) as CarDocument;
}

export const isFilled = (values: object): boolean => Object.keys(values).length > 0;

const fieldsOf = (car: CarDocument, part: CarPart, isIn: boolean): object =>
  Object.fromEntries(
    Object.entries(car).filter(([field]) => (PART_FIELDS[part] as readonly string[]).includes(field) === isIn),
  );

/** What a car holds of a part, whoever gave it. */
export const valuesOf = <P extends CarPart>(car: CarDocument, part: P): PartValues<P> => fieldsOf(car, part, true);

/** The car without what it holds of a part. */
export const without = (car: CarDocument, part: CarPart): CarDocument =>
  ({ given: { points: {} }, ...fieldsOf(car, part, false) }) as CarDocument;

/** Whether nothing of a corner was given. */
export const isBare = ({ points, ...others }: GivenCorner): boolean => !isFilled(points) && !isFilled(others);
