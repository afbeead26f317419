import { curveOf } from '../curve/curve.js';
import { asLinks } from '../document/as-links.js';
import type { CarDocument } from '../document/car.js';
import { MOST_SAMPLES } from '../document/predicted-words.js';
import type { Prediction } from '../document/predictions.js';
import type { Setup } from '../document/setup.js';
import { plusMinus95 } from '../uncertainty/combine.js';
import type { PredictAnswer } from './predict.js';

/** Between samples, mm: a curve of camber is straight within 0.01° over as much. */
const STEP_MM = 10;
/** Beyond what was measured and asked, mm: the parts' own readings may go further than those before them. */
const BEYOND_MM = 10;

const rounded = (degrees: number): number => Math.round(degrees * 1e4) / 1e4 + 0;

/**
 * What is kept of a prediction, so that nothing that is measured afterwards can change it.
 *
 * @param made the day, as ISO 8601 writes it: nothing in here knows the time
 * @param measuredAt where the corner was measured, mm below stock height
 */
export function predictionOf(
  answer: Pick<PredictAnswer, 'drop' | 'over' | 'quantity' | 'measured' | 'byTape' | 'sets'> & {
    curves: Pick<PredictAnswer['curves'], 'predicted'>;
  },
  setup: Setup,
  car: CarDocument,
  { made, version }: Pick<Prediction, 'made' | 'version'>,
): Prediction {
  const { drop, over, quantity, curves, measured, byTape, sets } = answer;
  const { measuredAt = 0 } = car;
  const curve = curveOf(curves.predicted);
  const at = drop - measuredAt;
  const [low, high] = curve.domain;
  const ends = [Math.min(measured[0], at, at + over), Math.max(measured[1], at, at + over)] as const;
  const first = Math.max(low, ends[0] - BEYOND_MM);
  const last = Math.min(high, ends[1] + BEYOND_MM);
  const step = Math.max(STEP_MM, Math.ceil((last - first) / (MOST_SAMPLES - 1)));
  // Counted from the drop, so that the change is nothing at one of them.
  const before = Math.floor((at - first) / step);
  const count = before + Math.floor((last - at) / step) + 1;
  const changes = Array.from({ length: count }, (_, i) => curve.changeEstimate(at + (i - before) * step, at));
  const { name, parts = [], alignment } = setup;
  const stock = sets.filter((set) => set.parts.length === 0);
  const sum = (of: (set: (typeof sets)[number]) => number) => stock.reduce((all, set) => all + of(set), 0);
  return {
    ...{ made, version, name, parts, ...(alignment && { alignment }), quantity, drop, over },
    from: asLinks(car).by === 'driveway' && car.whole === undefined ? 'driveway' : 'points',
    readings: sum((set) => set.readings),
    passes: sum((set) => set.passes),
    byTape: rounded(byTape.plusMinus ?? 0),
    start: drop - before * step,
    step,
    change: changes.map(({ value }) => rounded(value)),
    plusMinus: changes.map((estimate) => rounded(plusMinus95(estimate, curves.predicted.sources) ?? 0)),
  };
}
