import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { type CarDocument, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { addParts } from '../../../core/document/setup-edits.js';
import { fitSetup } from '../../../core/document/setup-in-use.js';
import { find, wait } from '../bumpline-lowering/set-up.js';
import { sentenceOf, show } from './set-up.js';

const { camber, ...measures } = EXAMPLE_DRIVEWAY;
const car = addParts(
  givenByUser(EMPTY_CAR, (given) => ({ ...given, measures, camber: camber!.value })),
  'Spacer',
  [{ part: 'wheelOffset', mm: 15 }],
);

async function shown(of: CarDocument) {
  const element = await show('<bumpline-clearance></bumpline-clearance>');
  element.car = new CarModel(of);
  await wait(0);
  await element.settled;
  return element;
}

describe('clearance with parts on the car', () => {
  it('asks with them on, steering and all, and says that they are on', async () => {
    const element = await shown(car);
    const bare = element.answer!;
    const select = find<HTMLSelectElement>(element, '.fitted-choice select');
    select.value = '0';
    select.dispatchEvent(new Event('change'));
    await wait(0);
    await element.settled;
    expect(sentenceOf(element)).to.match(/With spacer on: ?\d/);
    // A wheel further out on the same links: its motion is another, steered too.
    expect(element.answer!.isSteered).to.equal(bare.isSteered);
    expect(element.answer!.places[0]!.decisive.gap).not.to.be.closeTo(bare.places[0]!.decisive.gap, 0.01);
  });

  it('keeps the lock of the steering in what it asks', () => {
    const [bare, fitted] = [car, fitSetup(car, 0)].map((of) => clearanceRequestOf(of));
    expect(fitted!.source.kind).to.equal('parts');
    expect(fitted!.lock).to.equal(bare!.lock);
    expect(bare!.lock).to.be.greaterThan(0);
  });
});
