import type { CarDocument } from '../../core/document/car.js';
import { fitSetup, isPartsOnly, sourceKindOf } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';

/** The car with the set of parts of that name in use, for an element that is about it; as it is where there is none of that name. */
export function withNamedSetup(car: CarDocument, name: string | null | undefined): CarDocument {
  const index = name
    ? (car.setups?.findIndex((setup) => setup.name === name && setup.quantity === 'camber') ?? -1)
    : -1;
  if (index >= 0 && isPartsOnly(car.setups![index]!)) return withPartsOn(car, index);
  return index < 0 || (car.setup === index && car.by === 'readings') ? car : { ...car, setup: index, by: 'readings' };
}

/** Parts are put on what else was given of the car. */
function withPartsOn(car: CarDocument, index: number): CarDocument {
  const by = sourceKindOf({ ...car, setups: [] });
  return fitSetup(by === car.by ? car : { ...car, by }, index);
}

/** What is wrong with the name that an element is given: no set of camber is called so. */
export function namedSetupProblem(car: CarDocument, name: string | null | undefined): Problem | undefined {
  if (!name) return undefined;
  const names = (car.setups ?? []).flatMap((setup) => (setup.quantity === 'camber' ? [setup.name] : []));
  return names.includes(name) ? undefined : { code: 'unknown-name', path: 'setup', value: name, names };
}
