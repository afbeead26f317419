import { type CarDocument, EMPTY_CAR } from '../../core/document/car.js';
import { carSchema } from '../../core/document/car-schema.js';
import { type PageCar, withPageCar } from '../../core/document/page-car.js';
import { inspectData } from '../../core/document/schema-problems.js';
import { shown } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';

/** A whole car that a page gave, as far as it can be read. */
export interface ReadPageCar {
  said: PageCar;
  problems: Problem[];
  /** Puts it where nobody has said anything: see `withPageCar`. */
  put(car: CarDocument, said: PageCar, had?: PageCar): CarDocument;
}

const NAMES = ['car'];
/** What the schema wants, and a page need not say. */
const UNSAID = { version: 1, provenance: {} } as const;

/**
 * Reads `{ "car": { … } }`: a car document as a saved file has it, or as much of one as there is to say. Who gave what in it does not
 * count: all of it is the page's. With anything wrong nothing of it is taken.
 */
export function readPageCar(data: { car: unknown }): ReadPageCar {
  const read = (said: PageCar, problems: Problem[]): ReadPageCar => ({ said, problems, put: withPageCar });
  const { car: given } = data;
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    return read({}, [{ code: 'wrong-shape', path: 'car', value: shown(given) }]);
  }
  const strange = Object.keys(data).filter((name) => !NAMES.includes(name));
  const names = strange.map((value): Problem => ({ code: 'unknown-name', path: 'JSON script', value, names: NAMES }));
  const { problems, output } = inspectData(() => carSchema, { ...EMPTY_CAR, ...given, ...UNSAID }, 'car');
  const all = [...names, ...problems.map((one) => ({ ...one, path: one.path === 'car' ? 'car' : `car.${one.path}` }))];
  if (all.length > 0 || !output) return read({}, all);
  const said = Object.entries(output).filter(([field]) => Object.hasOwn(given, field) && !(field in UNSAID));
  return read(Object.fromEntries(said), []);
}
