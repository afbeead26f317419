import { learnCorner } from '../../../core/learn/learn-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { normal, randomNumbers } from '../driveway/random-car.js';
import { CARS, type Cell } from './cells.js';
import { drawnCar } from './coverage.js';
import { drawnAfternoon, type Outcome, outcomesOf, PARTS, PASSES, readAfternoon, taped } from './study.js';

/** Of a gauge that moves on its mount in the middle pass, degrees. */
const SLIP_DEG = 0.2;
/** Readings on either side of a slip for it to be inside its pass: a single reading off is no step. */
const LEAST_BESIDE = 2;

export interface SlipsFound {
  /** Sets whose slip lies inside the pass, and of those with it told. */
  inside: number;
  told: number;
  /** Of those told: in the right pass, and within two readings of where it was. */
  inPlace: number;
  /** The same with one at the very first or last reading among them. */
  anywhere: number;
  toldAnywhere: number;
  /** Clean sets, and those with a slip told. */
  clean: number;
  accused: number;
}

/** A slip in the middle one of three passes, by chance before any of its readings but the first. */
export function slipStudy(cell: Cell, { seed, cars }: { seed: number; cars: number }): SlipsFound {
  const random = randomNumbers(seed);
  const found: SlipsFound = { inside: 0, told: 0, inPlace: 0, anywhere: 0, toldAnywhere: 0, clean: cars, accused: 0 };
  for (let n = 0; n < cars; n++) {
    const { corner, readings } = drawnCar(random, cell);
    const ofPass = readings.length / PASSES.length;
    const at = 1 + Math.floor(random() * (ofPass - 1));
    const size = random() < 0.5 ? SLIP_DEG : -SLIP_DEG;
    const slipped = readings.map((reading, i) =>
      reading.pass === PASSES[1] && i % ofPass >= at ? { ...reading, value: reading.value + size } : reading,
    );
    const slipsOf = (of: typeof readings) => learnCorner({ corner, readings: of, allowances: cell.doubts }).slips;
    found.accused += Number(slipsOf(readings).length > 0);
    const slips = slipsOf(slipped);
    const isInside = at >= LEAST_BESIDE && at <= ofPass - LEAST_BESIDE;
    found.anywhere++;
    found.toldAnywhere += Number(slips.length > 0);
    if (!isInside) continue;
    found.inside++;
    if (slips.length === 0) continue;
    found.told++;
    const [largest] = [...slips].sort((a, b) => Math.abs(b.sigma) - Math.abs(a.sigma));
    const isNear = Math.abs((largest!.from % ofPass) - at) <= 2 && Math.sign(largest!.size) === Math.sign(size);
    found.inPlace += Number(largest!.pass === PASSES[1] && isNear);
  }
  return found;
}

export interface HeightsFound {
  cars: number;
  covered: number;
  /** Half-widths, mm. */
  plusMinus: number[];
  outcomes: Outcome[];
}

/** The middle pass started 1 to 3 mm higher or lower than the others, beyond what is allowed for. @param isAsked what the joint does besides */
export function heightStudy(
  cell: Cell,
  { seed, cars, isAsked = false }: { seed: number; cars: number; isAsked?: boolean },
): HeightsFound {
  const random = randomNumbers(seed);
  const found: HeightsFound = { cars, covered: 0, plusMinus: [], outcomes: [] };
  for (let n = 0; n < cars; n++) {
    const truth = CARS[cell.cars](random);
    const corner = taped(random, truth);
    const { passes, ...day } = drawnAfternoon(random, cell.doubts, { isAlternating: cell.isAlternating ?? false });
    const height = (1 + 2 * random()) * Math.sign(normal(random));
    const off = passes.map((pass, p) => (p === 1 ? { ...pass, height } : pass));
    const readings = readAfternoon(random, buildLinkage(truth), { ...day, passes: off });
    const learnt = learnCorner({ corner, readings, allowances: cell.doubts });
    const told = learnt.passes.find(({ pass }) => pass === PASSES[1])!.height!;
    found.covered += Number(Math.abs(told.value - height) <= told.plusMinus);
    found.plusMinus.push(told.plusMinus);
    if (isAsked) found.outcomes.push(...outcomesOf(random, truth, learnt, { joint: PARTS.joint! }));
  }
  return found;
}
