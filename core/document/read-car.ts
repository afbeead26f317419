import { InputError, type Problem } from '../quantity/problem.js';
import { type CarDocument, carSchema } from './car-schema.js';
import { nobodys } from './own-car.js';
import { inspectData } from './schema-problems.js';

/**
 * Takes a whole car from anything, as parsed JSON. A corner handed over whole inside it stays as it came: `readCorner` judges that.
 *
 * @throws InputError with every problem found, each with its path, never another error.
 */
export function readCar(data: unknown): CarDocument {
  const { problems, output } = inspectData(() => carSchema, data, 'car');
  if (problems.length > 0) throw new InputError(problems);
  const car = output as CarDocument;
  // What nobody gave would count for nothing.
  const unsaid = nobodys(car).map(
    (part): Problem => ({ code: 'missing', path: `provenance.${part}`, value: undefined }),
  );
  if (unsaid.length > 0) throw new InputError(unsaid);
  return car;
}
