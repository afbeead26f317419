import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { CarModel } from '../../../components/car/car-model.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import {
  CLEARANCE_SCENARIOS,
  CLEARS,
  STOP_FIRST,
  STRAIGHT_UP_CORNER,
  STRAIGHT_UP_CORNER_TOLERANCE_MM as TOLERANCE,
  TOO_CLOSE,
  TOUCHES,
} from '../../reference/clearance-scenarios.js';
import { find, root } from '../bumpline-lowering/set-up.js';
import { fromTheSide, sentenceOf, show } from './set-up.js';

/** What the sentence says of each; its millimetres are the first group. */
const SAYS = new Map([
  [CLEARS, /the tyre clears the arch at 12 o’clock by ([\d.]+) ± 5 mm at full bump, straight ahead\./],
  [TOUCHES, /the tyre touches the arch at 12 o’clock: ([\d.]+) ± 5 mm too much at full bump, straight ahead\./],
  [STOP_FIRST, /the tyre clears the arch at 12 o’clock by ([\d.]+) ± 1(?:\.0)? mm at full bump, straight ahead\./],
  [
    TOO_CLOSE,
    /too close to tell\. At (?:9|10) mm of bump, straight ahead, the arch at 12 o’clock is ([\d.]+) ± 5 mm away; 13 mm should stay free\./,
  ],
]);

describe('<bumpline-clearance>, from the example to the sentence, at 360 × 780', () => {
  before(() => setViewport({ width: 360, height: 780 }));

  for (const scenario of CLEARANCE_SCENARIOS) {
    it(`${scenario.name}: as reckoned by hand`, async () => {
      const element = await show('<bumpline-clearance></bumpline-clearance>');
      expect(element.state).to.equal('example');
      const { fit, limits, drop, expected } = scenario;
      const { stopGap, ...rest } = limits;
      element.car = new CarModel({
        ...EMPTY_CAR,
        by: 'points',
        whole: STRAIGHT_UP_CORNER,
        fit: { ...fit, lock: 0 },
        limits: rest,
        ...(stopGap !== undefined && { stopGap }),
        provenance: { corner: { by: 'page' }, fit: { by: 'page' } },
        drop,
      });
      await element.settled;
      expect(element.problems).to.deep.equal([]);
      const { answer } = element;
      const [place] = answer!.places;
      expect(answer!.verdict).to.equal(expected.verdict);
      expect(place!.worst.gap).to.be.closeTo(expected.gap, TOLERANCE);
      expect(place!.ride.gap).to.be.closeTo(expected.rideGap, TOLERANCE);
      expect(place!.solid!.gap).to.be.closeTo(expected.solidGap, TOLERANCE);
      expect(answer!.budget.bump.touch!.travel).to.be.closeTo(expected.touch, TOLERANCE);
      expect(answer!.budget.bump.solid!.travel).to.be.closeTo(expected.solid, TOLERANCE);
      if (expected.contact === undefined) expect(answer!.contact).to.equal(undefined);
      else expect(answer!.contact!.travel).to.be.closeTo(expected.contact, TOLERANCE);

      const sentence = sentenceOf(element);
      const said = SAYS.get(scenario)!.exec(sentence);
      expect(said, sentence).to.not.equal(null);
      expect(Number(said![1])).to.be.closeTo(Math.abs(expected.gap), 0.5 + TOLERANCE);
      // The order of the three: stop touched, solid, contact.
      const whole = (mm: number) => `${Math.round(mm)} mm`;
      if (scenario === TOUCHES) {
        expect(sentence).to.match(/It meets it (?:9|10) mm before the suspension is solid\./);
      } else if (expected.touch > drop) {
        expect(sentence).to.contain(`The stop is touched ${whole(expected.solid - expected.touch)} before that.`);
      }
      if (scenario === STOP_FIRST) expect(sentence).to.match(/The tyre would touch [12] mm beyond full bump\./);
      expect(find(element, '.sentence').dataset.verdict).to.equal(expected.verdict);
      await fromTheSide(element);
      expect(root(element).querySelectorAll('.side-view button')).to.have.length(1);
    });
  }
});
