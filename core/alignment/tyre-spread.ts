import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

/** Three places across a tread. */
export const TREAD_PLACES = ['inner', 'middle', 'outer'] as const;
export type TreadPlace = (typeof TREAD_PLACES)[number];
export type Across = Readonly<Record<TreadPlace, number>>;

/** What is read across a tread: how hot it is, in either scale, or how much tread is left, mm. */
export const TREAD_READINGS = ['temperature', 'tread'] as const;
export type TreadReading = (typeof TREAD_READINGS)[number];

/** A difference of readings, in their unit; half-width of its 95 % interval. */
export interface Difference {
  value: number;
  plusMinus: number;
}

/** Which way static camber, or pressure, might go; `untold` where what was read is within its repeat noise. */
export type CamberWay = 'more-negative' | 'less-negative' | 'untold';
export type PressureWay = 'higher' | 'lower' | 'untold';

export interface SpreadAnswer {
  /** By how much the inner edge works harder than the outer: hotter, or less tread left. */
  innerOverOuter: Difference;
  /** By how much the middle works harder than both edges in the mean. */
  middleOverEdges: Difference;
  camber: CamberWay;
  pressure: PressureWay;
}

export interface SpreadRequest {
  kind: TreadReading;
  across: Across;
  /** How far the same place, read again, differs: half-width of 95 %. */
  repeat: number;
}

/** How hard a place works, from what is read there. */
const sense = (kind: TreadReading): 1 | -1 => (kind === 'tread' ? -1 : 1);

const RANGE = { temperature: QUANTITIES.tyreTemperature, tread: QUANTITIES.treadDepth } as const;

/**
 * Which way camber and pressure might go by what stands across a tread. An inner edge that works harder than the outer one asks for less
 * negative camber, an outer one for more; a middle that works harder than the edges asks for less pressure, edges for more. Common
 * practice, no source: it tells a direction and no amount. Three readings with the same noise σ: their difference has √2 σ, the middle over
 * the mean of two √1.5 σ (GUM, JCGM 100:2008, eq. 10).
 *
 * @throws InputError from `KIND.inner`, `KIND.middle`, `KIND.outer`, `KIND.repeat` by the name of the kind
 */
export function spreadAcross(request: SpreadRequest): SpreadAnswer {
  const problems: Problem[] = [];
  checkAcross(problems, request.kind, request.across, request.kind);
  checkRepeat(problems, request);
  if (problems.length > 0) throw new InputError(problems);
  const { across, repeat } = request;
  const innerOverOuter = { value: leanOf(request), plusMinus: Math.SQRT2 * repeat };
  const middle = sense(request.kind) * (across.middle - (across.inner + across.outer) / 2);
  const middleOverEdges = { value: middle, plusMinus: Math.sqrt(1.5) * repeat };
  return {
    innerOverOuter,
    middleOverEdges,
    camber: wayOf(innerOverOuter, 'less-negative', 'more-negative'),
    pressure: wayOf(middleOverEdges, 'lower', 'higher'),
  };
}

/** Whether a difference is told from nothing, and its side. */
const wayOf = <P, N>({ value, plusMinus }: Difference, positive: P, negative: N): P | N | 'untold' =>
  Math.abs(value) <= plusMinus ? 'untold' : value > 0 ? positive : negative;

const leanOf = ({ kind, across: { inner, outer } }: SpreadRequest): number => sense(kind) * (inner - outer);

export interface AbaRequest {
  kind: TreadReading;
  /** With the first setting, with the other one, and with the first again. */
  first: Across;
  changed: Across;
  again: Across;
  /** Static camber of both settings, degrees. */
  camber: { first: number; changed: number };
  repeat: number;
}

export interface AbaAnswer {
  /** By which a degree more negative camber has the inner edge work harder than the outer one: readings' unit a degree. */
  perNegativeDegree: Difference;
  /** What the change of camber made of it. */
  change: Difference;
  /** By which the first setting came out otherwise the second time: track, tyre, fuel and driver. */
  drift: Difference;
  /** Whether the change is told from noise and drift. */
  isTold: boolean;
}

/** Closer to each other two settings are none, degrees: finer than a gauge reads. */
const APART_DEG = 0.05;

/**
 * A–B–A: what a change of camber made of the spread, with the first setting driven before and after. The mean of both first runs stands
 * for the first setting when the other was driven, as drift that goes on evenly has it: (b − (a₁ + a₂)/2), noise √1.5 of one run's. Drift
 * that did not go evenly leaves at most half of it either way, anywhere between (rectangular, half-width |a₂ − a₁|/2: GUM 4.3.7). The
 * design: common practice, no source.
 *
 * @throws InputError from `first.inner` to `again.outer`, `camber.first`, `camber.changed`, `repeat`; `coincide`, path `camber.changed`
 */
export function abaSlope(request: AbaRequest): AbaAnswer {
  const { kind, camber } = request;
  const problems: Problem[] = [];
  for (const run of ['first', 'changed', 'again'] as const) checkAcross(problems, kind, request[run], run);
  const check = numberChecks(problems);
  for (const run of ['first', 'changed'] as const) {
    check(`camber.${run}`, camber?.[run], QUANTITIES.camber.min, QUANTITIES.camber.max);
  }
  checkRepeat(problems, request);
  if (problems.length === 0 && Math.abs(camber.changed - camber.first) < APART_DEG) {
    problems.push({ code: 'coincide', path: 'camber.changed', value: camber.changed, other: 'camber.first' });
  }
  if (problems.length > 0) throw new InputError(problems);
  const [a1, b, a2] = (['first', 'changed', 'again'] as const).map((run) =>
    leanOf({ kind, across: request[run], repeat: 0 }),
  ) as [number, number, number];
  const ofRun = Math.SQRT2 * request.repeat;
  const uneven = (NORMAL_95 * Math.abs(a2 - a1)) / 2 / Math.sqrt(3);
  const change = { value: b - (a1 + a2) / 2, plusMinus: Math.hypot(Math.sqrt(1.5) * ofRun, uneven) };
  const by = camber.first - camber.changed;
  return {
    change,
    perNegativeDegree: { value: change.value / by, plusMinus: change.plusMinus / Math.abs(by) },
    drift: { value: a2 - a1, plusMinus: Math.SQRT2 * ofRun },
    isTold: Math.abs(change.value) > change.plusMinus,
  };
}

function checkAcross(problems: Problem[], kind: TreadReading, across: Across, path: string): void {
  const check = numberChecks(problems);
  const { min, max } = RANGE[kind];
  for (const place of TREAD_PLACES) check(`${path}.${place}`, across?.[place], min, max);
}

/** A noise of nothing would make a direction of anything. */
function checkRepeat(problems: Problem[], { kind, repeat }: { kind: TreadReading; repeat: number }): void {
  const { max } = RANGE[kind];
  numberChecks(problems)('repeat', repeat, LEAST_REPEAT, max);
}
const LEAST_REPEAT = 0.01;
