import { type CarDocument, EMPTY_CAR } from './car.js';
import { type CarPart, gave, isFilled, isUsers, without } from './provenance.js';

/**
 * The car as it was before anybody gave links, readings or parts of their own: what a page gave of these stands again, else the example.
 * What is asked of it, and the drop, stay.
 */
export function startedOver(car: CarDocument): CarDocument {
  const { predict: _, predictions: __, links: ___, measuredAt: ____, ...rest } = car;
  const bare = (['corner', 'setups'] as const).reduce<CarDocument>((all, part) => withPagesAlone(all, part), rest);
  return { ...car.provenance.asked?.standIn, ...bare, by: EMPTY_CAR.by };
}

function withPagesAlone(car: CarDocument, part: CarPart): CarDocument {
  if (!isUsers(car, part)) return car;
  const setups = (car.setups ?? [])
    .filter(({ givenBy }) => givenBy === 'page')
    .map(({ givenBy: _, ...setup }) => setup);
  const page = part === 'setups' ? (setups.length > 0 ? { setups } : {}) : gave(car, part, 'page');
  const { [part]: _, ...others } = car.provenance;
  return {
    ...without(car, part),
    ...page,
    provenance: { ...others, ...(isFilled(page) && { [part]: { by: 'page' } }) },
  } as CarDocument;
}
