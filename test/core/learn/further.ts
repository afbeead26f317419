import { predictSteps } from '../../../core/answers/predict.js';
import type { LearntSource } from '../../../core/curve-sources/source.js';
import type { DrivewayKey, DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import type { NextMeasurement } from '../../../core/learn/next-measurements.js';
import { solveLearnt } from '../../../core/learn/solve-learnt.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type Corner, type HardPointKey, hardPoint, withHardPoint } from '../../../core/linkage/corner.js';
import { finished } from '../../../core/math/finished.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import type { Reading } from '../../../core/readings/reading.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { six, withErrors } from '../driveway/coverage.js';
import { normal, ORDINARY, randomCar, randomNumbers } from '../driveway/random-car.js';
import { CARS, type Cars } from './cells.js';
import { type Afternoon, drawnAfternoon, PARTS, readAfternoon, taped } from './study.js';

/** One further measurement of one car: what was promised of it, and what it came to once it had been made. Degrees. */
export interface Promised {
  id: NextMeasurement['id'];
  before: number;
  promised: number;
  reached: number;
}

export interface FurtherStudy {
  seed: number;
  cars: Cars | 'driveway';
  isAlternating?: boolean;
  /** Heights of a pass, mm. */
  heights?: readonly number[];
  passes?: number;
}

const HEIGHTS = Array.from({ length: 17 }, (_, i) => -50 + 6.25 * i);
const MORE_MM = 10;

/** What a lower joint would change, learnt from these. */
export const predicted = (of: LearntSource['of'], readings: readonly Reading[], toe?: readonly Reading[]) => {
  const source = solveLearnt({ kind: 'learnt', of, readings, ...(toe && { toe }) });
  return finished(predictSteps({ source, parts: PARTS.joint!, drop: 25, over: 40 }));
};

/** A car that was measured and read; each of the best further measurements then made, by the true car, and all of it learnt again. */
export function furtherStudy({
  seed,
  cars,
  isAlternating = false,
  heights = HEIGHTS,
  passes = 3,
}: FurtherStudy): Promised[] {
  const random = randomNumbers(seed);
  const strut = cars === 'driveway' ? randomCar(random, ORDINARY) : undefined;
  const truth = cars === 'driveway' ? strut! : CARS[cars](random);
  const exact = strut && six(strut);
  const driveway = exact && withErrors(exact, random);
  const corner = driveway ? undefined : taped(random, truth);
  const of: LearntSource['of'] = driveway ? { kind: 'driveway', driveway } : { kind: 'corner', corner };
  const { passes: drawn, ...day } = drawnAfternoon(random, DEFAULT_DOUBTS, { isAlternating });
  const linkage = buildLinkage(truth);
  const taken = { ...day, passes: drawn.slice(0, passes) };
  const wide = [heights[0]! - MORE_MM, ...heights, heights.at(-1)! + MORE_MM];
  const further = readAfternoon(random, linkage, taken, { heights: wide });
  const readings = further.filter(({ travel }) => heights.includes(travel));
  const answer = predicted(of, readings);
  const before = answer.predicted.plusMinus!;
  const another = (isDown: boolean): Reading[] => {
    const [own] = drawnAfternoon(random, DEFAULT_DOUBTS).passes;
    const pass: Afternoon['passes'][number] = { ...own!, isDown };
    return readAfternoon(random, linkage, { ...day, passes: [pass] }, { heights: [...heights] }).map((one) => ({
      ...one,
      pass: 'd',
    }));
  };
  const retaped = (key: HardPointKey): Corner => {
    const [x, y, z] = hardPoint(truth, key)!;
    const off = () => (2 / NORMAL_95) * normal(random);
    const again = withHardPoint(corner!, key, [x + off(), y + off(), z + off()]);
    return { ...again, plusMinus: { ...corner!.plusMinus, [key]: 2 } };
  };
  const remeasured = (key: DrivewayKey, plusMinus: number): DrivewayMeasurements => {
    const value = (exact as Partial<Record<DrivewayKey, number>>)[key]!;
    return { ...driveway, [key]: { value, plusMinus } };
  };
  const reachedOf = (id: NextMeasurement['id']): number | undefined => {
    const then = (more: ReturnType<typeof predicted>) => more.predicted.plusMinus;
    if (id === 'otherWay') return then(predicted(of, [...readings, ...another(true)]));
    if (id === 'anotherPass') return then(predicted(of, [...readings, ...another(true)]));
    if (id === 'moreTravel') return then(predicted(of, further));
    if (id === 'toeSweep') {
      const sweep = { ...drawnAfternoon(random, DEFAULT_DOUBTS), way: 0 };
      const one = { ...sweep, passes: sweep.passes.slice(0, 1) };
      return then(
        predicted(of, readings, readAfternoon(random, linkage, one, { quantity: 'toe', heights: [...heights] })),
      );
    }
    if (id.startsWith('point.')) {
      return then(predicted({ kind: 'corner', corner: retaped(id.slice(6) as HardPointKey) }, readings));
    }
    if (id.startsWith('measure.')) {
      const key = id.slice(8) as DrivewayKey;
      // Of what was assumed the study knows no true value.
      if (driveway![key] === undefined) return undefined;
      return then(predicted({ kind: 'driveway', driveway: remeasured(key, key === 'damperLean' ? 0.2 : 1) }, readings));
    }
    return undefined;
  };
  return answer.next.flatMap(({ id, plusMinus }) => {
    const reached = reachedOf(id);
    return reached === undefined ? [] : [{ id, before, promised: plusMinus, reached }];
  });
}
