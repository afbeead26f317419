import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { byUser } from '../../../core/document/own-car.js';
import { clear, find, put, settled } from '../contract/stage.js';

describe('an answer of the example, beside what is wrong with one’s own car', () => {
  afterEach(clear);

  for (const tag of [
    'bumpline-lowering',
    'bumpline-geometry',
    'bumpline-static-camber',
    'bumpline-cornering',
  ] as const) {
    it(`does not stand on <${tag}>: it is of another car`, async () => {
      const [element] = await put(tag, `<${tag}></${tag}>`);
      const own = element as typeof element & { car: CarModel; state: string };
      own.car = new CarModel({ ...EMPTY_CAR, drop: 25 });
      await settled(own);
      const measures = { topHeight: { value: 310, plusMinus: 3 }, ballHeight: { value: 290, plusMinus: 3 } };
      own.car.update('tape', (car) => byUser({ ...car, by: 'driveway', given: { points: {}, measures } }));
      await settled(own);
      expect(find(own, '#problems')).not.to.equal(null);
      expect(own.state).to.equal('problem');
      expect(find(own, '.sentence .before')).to.equal(null);
    });
  }
});
