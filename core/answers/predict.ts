import { curveOf } from '../curve/curve.js';
import type { CurveData } from '../curve/curve-data.js';
import { travelsWithinReach } from '../curve-sources/solve-corner.js';
import { linkageWith, solveKnownParts } from '../curve-sources/solve-parts.js';
import type { FittedReadings, SolvedCamber, TriedSource } from '../curve-sources/solved-source.js';
import { ALIGNMENTS, type Alignment } from '../curve-sources/source.js';
import { USUAL_PREDICT_OVER_MM } from '../document/predict-in-use.js';
import type { Goodness } from '../learn/goodness.js';
import { DOUBTFUL, type LearntCorner, type LearntPass, type LearntSet } from '../learn/learn-corner.js';
import { type AskedChange, type NextMeasurement, nextMeasurementSteps } from '../learn/next-measurements.js';
import type { OddPass } from '../learn/odd-pass.js';
import { predictRollCentre } from '../learn/predict-curve.js';
import type { Pull } from '../learn/pulls.js';
import { shiftedStock } from '../learn/shifted-stock.js';
import type { Slip } from '../learn/slips.js';
import { readOf } from '../learn/solve-learnt.js';
import type { Turned } from '../learn/turned.js';
import { causeOf } from '../linkage/causes.js';
import { movedBy } from '../linkage/corner-source.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { sweepTravel } from '../linkage/sweep.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import type { ReadingQuantity } from '../readings/reading.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import type { Doubted } from './lowering.js';

/** What would parts do that nobody has fitted yet, on a corner learnt from readings? */
export interface PredictRequest<S = TriedSource> {
  /** Of kind `learnt`. */
  source: S;
  /** None: what was measured itself. */
  parts: readonly PartData[];
  /** What is set again once they are on. Default toe. */
  alignment?: Alignment;
  /** How far below stock height the car stands, mm, and where the corner was measured. */
  drop: number;
  measuredAt?: number;
  /** Bump over which the change is told, mm; negative: droop. Default 40. */
  over?: number;
  quantity?: ReadingQuantity;
}

/** What the sentence says of it, and what it was learnt from. */
export interface PredictSaid {
  /** What is predicted. */
  quantity: ReadingQuantity;
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** The bump from there over which the change is told, mm. */
  over: number;
  /** The change over that bump from the drop, degrees: with the parts, as learnt; and as the tape alone has it. */
  predicted: Doubted;
  /** As the tape alone has it, degrees. */
  byTape: Doubted;
  /** Over all travels that the links allow, from where the corner was measured, mm and degrees. */
  curves: { predicted: CurveData; byTape: CurveData };
  /** Between which travels readings stand, mm. */
  measured: readonly [number, number];
  /** The readings, each pass’s zero taken off. */
  readings?: FittedReadings;
  /** What was read, set by set. */
  sets: readonly LearntSet[];
  /** What was read, pass by pass. */
  passes: readonly LearntPass[];
  /** How well readings and hard points go together. */
  goodness: Goodness;
  /** Factor on every ± where readings and hard points do not go together; 1 where they do. */
  widened: number;
  /** Measurements that the rest contradicts most. */
  pulls: readonly Pull[];
  /** Places where the gauge seems to have moved on its mount. */
  slips: readonly Slip[];
  /** A pass that does not belong, and what readings that contradict the corner would have to have turned round: see `LearntCorner`. */
  odd?: OddPass;
  /** What the readings would have to have turned round, or be measured in. */
  turned?: Turned;
  /** What the ± of the change comes from: shares of variance, largest first. */
  contributions: readonly Contribution[];
}

/** What can be said besides, which takes as long again. */
export interface PredictMore {
  /** The change without the parts, degrees. */
  stock: Doubted;
  /** What the stock readings' own curve says, begun earlier: see `shiftedStock`. */
  shifted?: number;
  /** Roll centre above the ground at the drop, mm. */
  rollCentre?: Doubted;
  /** The same without the parts. */
  stockRollCentre?: Doubted;
  /** The curve without the parts. */
  stockCurve: CurveData;
  /** What would narrow the predicted change most, best first. */
  next: readonly NextMeasurement[];
}

export interface PredictAnswer extends Omit<PredictSaid, 'curves'>, Omit<PredictMore, 'stockCurve'> {
  curves: PredictSaid['curves'] & { stock: CurveData };
}

/** The scatter of readings is one cause, however many ways it goes. */
const ofCause = (source: Source) =>
  source.id.startsWith('readings.scatter.') ? { id: 'readings.scatter', label: source.label } : causeOf(source);

const NUDGE = 0.1;

/** All of it. @throws InputError as `predictSaidSteps` */
export function* predictSteps(request: PredictRequest): Generator<undefined, PredictAnswer> {
  const { curves, ...said } = yield* predictSaidSteps(request);
  const { stockCurve, ...more } = yield* predictMoreSteps(request);
  return { ...said, ...more, curves: { ...curves, stock: stockCurve } };
}

/** @throws InputError with all that is wrong with the request, of the source as `learnCorner`, of the parts as `solveParts` */
export function* predictSaidSteps(request: PredictRequest): Generator<undefined, PredictSaid> {
  const asked = checked(request);
  const { learnt, parts, quantity, drop, over, from } = asked;
  yield;
  const predicted = curveWith(asked, learnt.known, parts);
  yield;
  const byTape = byTapeOf(asked);
  yield;
  checkReach(predicted, from, over);
  const readings = readOf(learnt, quantity);
  const measured = measuredIn(asked);
  const estimate = curveOf(predicted).changeEstimate(from + over, from);
  return {
    quantity,
    drop,
    over,
    predicted: changeOf(asked, predicted),
    byTape: changeOf(asked, byTape),
    curves: { predicted: { ...predicted, measured: [...measured] }, byTape },
    measured,
    ...(readings && { readings }),
    sets: learnt.sets,
    passes: learnt.passes,
    goodness: learnt.goodness,
    widened: learnt.widened,
    pulls: learnt.goodness.chance < DOUBTFUL ? learnt.pulls : [],
    slips: learnt.slips,
    ...(learnt.odd && { odd: learnt.odd }),
    ...(learnt.turned && { turned: learnt.turned }),
    contributions: contributions(estimate, predicted.sources, ofCause),
  };
}

/** @throws InputError as `predictSaidSteps` */
export function* predictMoreSteps(request: PredictRequest): Generator<undefined, PredictMore> {
  const asked = checked(request);
  const { learnt, parts, alignment, from, over, quantity } = asked;
  const shifted = quantity === 'camber' ? shiftedStock(learnt.estimated, parts, from, over) : undefined;
  const stock = curveWith(asked, learnt.known, []);
  yield;
  const rollCentreWith = (on: readonly PartData[]): Doubted | undefined => {
    const { height, plusMinus } = predictRollCentre(learnt, on, [from], { alignment });
    return Number.isFinite(height[0]) ? { value: height[0]!, plusMinus: plusMinus[0]! } : undefined;
  };
  const rollCentre = rollCentreWith(parts);
  yield;
  const stockRollCentre = parts.length > 0 ? rollCentreWith([]) : rollCentre;
  yield;
  const next = yield* nextMeasurementSteps(learnt, askedChange(asked));
  return {
    stock: changeOf(asked, stock),
    ...(shifted !== undefined && { shifted }),
    ...(rollCentre && { rollCentre }),
    ...(stockRollCentre && { stockRollCentre }),
    stockCurve: { ...stock, measured: [...measuredIn(asked)] },
    next,
  };
}

/** A request without anything wrong, and the corner that it is of. */
interface Checked extends Required<Omit<PredictRequest, 'source' | 'measuredAt'>> {
  learnt: LearntCorner;
  /** The drop from where the corner was measured, mm. */
  from: number;
}

function checked(request: PredictRequest): Checked {
  const {
    source,
    parts,
    drop,
    measuredAt = 0,
    over = USUAL_PREDICT_OVER_MM,
    alignment = 'toe',
    quantity = 'camber',
  } = request;
  const problems: Problem[] = 'problems' in source ? [...source.problems] : [];
  const check = numberChecks(problems);
  check('drop', drop, QUANTITIES.drop.min, QUANTITIES.drop.max);
  check('over', over, QUANTITIES.travel.min, QUANTITIES.travel.max);
  if (!Array.isArray(parts)) problems.push({ code: 'wrong-shape', path: 'parts', value: undefined });
  if (!ALIGNMENTS.includes(alignment))
    problems.push({ code: 'unknown-name', path: 'alignment', value: alignment, names: ALIGNMENTS });
  if (problems.length > 0) throw new InputError(problems);
  return { learnt: learntIn(source), parts, drop, over, alignment, quantity, from: drop - measuredAt };
}

/** Curves of a corner that were solved before: another drop is of the same, and so is the car without parts. */
const solvedOf = new WeakMap<LearntCorner['known'], { key: string; curve: CurveData }[]>();
const REMEMBERED = 3;

function curveWith(
  { alignment, quantity }: Pick<Checked, 'alignment' | 'quantity'>,
  known: LearntCorner['known'],
  on: readonly PartData[],
): CurveData {
  const key = JSON.stringify([on, alignment, quantity]);
  const before = solvedOf.get(known) ?? [];
  const found = before.find((one) => one.key === key);
  if (found) return found.curve;
  const { camber, toe } = solveKnownParts(known, on, alignment);
  const curve = quantity === 'toe' ? toe : camber;
  if (!curve) throw new InputError([{ code: 'unknown-name', path: 'quantity', value: quantity, names: ['camber'] }]);
  solvedOf.set(known, [...before.slice(1 - REMEMBERED), { key, curve }]);
  return curve;
}

/** What the tape alone says does not change with the readings. */
let lastByTape: { key: string; curve: CurveData } | undefined;

function byTapeOf(asked: Checked): CurveData {
  const { learnt, parts, alignment, quantity } = asked;
  const key = JSON.stringify([learnt.before.corner, learnt.before.sources, parts, alignment, quantity]);
  if (lastByTape?.key !== key) lastByTape = { key, curve: curveWith(asked, learnt.before, parts) };
  return lastByTape.curve;
}

function changeOf({ from, over }: Checked, curve: CurveData): Doubted {
  const estimate = curveOf(curve).changeEstimate(from + over, from);
  return { value: estimate.value, plusMinus: plusMinus95(estimate, curve.sources) };
}

/** Between which travels something was read of that angle as the car stood; else of anything. */
function measuredIn({ learnt: { sets }, quantity }: Checked): readonly [number, number] {
  const [first] = sets.filter((set) => set.quantity === quantity && set.parts.length === 0);
  const all = sets.map(({ measured }) => measured);
  return first?.measured ?? [Math.min(...all.map(([low]) => low)), Math.max(...all.map(([, high]) => high))];
}

/** @throws InputError of a source that nothing was learnt of */
function learntIn(source: TriedSource): LearntCorner {
  if ('problems' in source) throw new InputError(source.problems);
  const { learnt } = source as SolvedCamber & { learnt?: LearntCorner };
  if (learnt) return learnt;
  throw new InputError([{ code: 'wrong-shape', path: 'source.kind', value: undefined, names: ['learnt'] }]);
}

/** The predicted curve alone, without its doubt, for while a part's amount is dragged: what an earlier answer's bands are moved to. */
export interface PredictedShape {
  travel: Float64Array;
  value: Float64Array;
}

/** @throws InputError of the source and the parts, as `predictSteps` */
export function predictedShape({
  source,
  parts,
  alignment = 'toe',
  quantity = 'camber',
}: Pick<PredictRequest, 'source' | 'parts' | 'alignment' | 'quantity'>): PredictedShape {
  const learnt = learntIn(source);
  const linkage = linkageWith(learnt.known.corner, parts, { alignment });
  const travel = travelsWithinReach(linkage);
  return { travel, value: sweepTravel(linkage, travel)[quantity].slice() };
}

/** What is asked about, for a further measurement to narrow: by the unknowns of the links, and what is none of these. */
function askedChange(asked: Checked): AskedChange {
  const { learnt, parts, from, over } = asked;
  const curve = curveWith(asked, learnt.known, parts);
  const { parts: all } = curveOf(curve).changeEstimate(from + over, from);
  const ofLinks = new Set(learnt.known.sources.map(({ id }) => id));
  const rest = curve.sources.flatMap((source, s) => (ofLinks.has(source.id) ? [] : [{ part: all[s]!, source }]));
  return { slopes: slopesOf(learnt, parts, asked), rest };
}

/** How the predicted change moves with each unknown of the links, per standard uncertainty beforehand: degrees. */
function slopesOf(
  { known, estimated }: LearntCorner,
  parts: readonly PartData[],
  { alignment, quantity, from, over }: { alignment: Alignment; quantity: ReadingQuantity; from: number; over: number },
): Float64Array {
  const at = Float64Array.of(from, from + over);
  const changeOf = (linkage: ReturnType<typeof linkageWith>) => {
    const angles = sweepTravel(linkage, at)[quantity];
    return angles[1]! - angles[0]!;
  };
  return Float64Array.from(estimated.unknowns.sources, (source) => {
    if (source.part || source.isOfPartsAlone) return 0;
    const [up, down] = [NUDGE, -NUDGE].map((times) =>
      changeOf(linkageWith(movedBy(known.corner, source, times), parts, { alignment, isOpen: true })),
    );
    const slope = (up! - down!) / (2 * NUDGE);
    return Number.isFinite(slope) ? slope : 0;
  });
}

/** @throws InputError where the links end before */
function checkReach({ domain: [low, high] }: CurveData, from: number, over: number): void {
  const problems: Problem[] = [];
  const check = (path: string, value: number, at: number) => {
    if (at < low || at > high) {
      const limit = value + (at < low ? low - at : high - at);
      problems.push({ code: 'outside-domain', path, value, limit });
    }
  };
  check('drop', from, from);
  if (problems.length === 0) check('over', over, from + over);
  if (problems.length > 0) throw new InputError(problems);
}
