import type { CurveData } from '../curve/curve-data.js';
import { curveFromCoefficients } from '../curve/from-coefficients.js';
import type { Driveway } from '../driveway/driveway.js';
import { drivewayCorner } from '../driveway/driveway-corner.js';
import { drivewaySources } from '../driveway/driveway-sources.js';
import { readDriveway } from '../driveway/read-driveway.js';
import { buildLinkage, reachOf } from '../linkage/build-linkage.js';
import type { Corner, StrutCorner } from '../linkage/corner.js';
import type { Linkage } from '../linkage/linkage.js';
import { type Motion, motionOf } from '../linkage/motion.js';
import { sweepTravel } from '../linkage/sweep.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { cornerDoubt, cornerSources } from './corner-doubt.js';

/** Where a camber curve comes from. Every answer about camber takes one and does not care which. */
export type CamberSource =
  | { kind: 'corner'; corner: unknown }
  /** `DrivewayMeasurements`. */
  | { kind: 'driveway'; driveway: unknown }
  | {
      kind: 'coefficients';
      /** Of camber over travel, degrees and mm, constant term first. */
      coefficients: number[];
      /** Travels, mm, between which they hold. */
      domain: [number, number];
      /** Of each coefficient, when they are known and independent. */
      standardUncertainties?: number[];
    }
  | { kind: 'curve'; curve: CurveData }
  | FittedSource;

/** What a curve was fitted to: where each reading stands once its pass's own zero is taken off. */
export interface FittedReadings {
  /** Of the curve. */
  degree: number;
  /** mm from stock height, and degrees, in the order of the readings. */
  travel: Float64Array;
  value: Float64Array;
}

/** Readings already fitted (readings-source.ts), counted from stock height. */
export interface FittedSource {
  kind: 'fitted';
  curve: CurveData;
  readings: FittedReadings;
}

/** What is solved without the schema of corners, which is fetched only for hard points that are handed over. */
export type SolvableSource =
  | Exclude<CamberSource, { kind: 'corner' }>
  /** By `checkCorner`. */
  | { kind: 'checked'; corner: Corner }
  /** What was found wrong with a source before: it is told together with what is wrong with the rest. */
  | { kind: 'refused'; problems: Problem[] };

/** A camber curve, and what only hard points can tell besides. */
export interface SolvedSource {
  curve: CurveData;
  /** The measurements that `corner` was made from. */
  driveway?: Driveway;
  /** What `curve` was fitted to. It is counted from stock height then, wherever else the car was measured. */
  readings?: FittedReadings;
  corner?: Corner;
  motion?: Motion;
  /** Roll centre above the ground at each travel of the motion, mm: both wheels of the axle moved alike. */
  rollCentreHeight?: Float64Array;
  reach?: ReturnType<typeof reachOf>;
}

/** Travels, mm, over which a corner is solved: further than any damper of a car that is lowered. */
const LONGEST_DROOP_MM = -80;
const LONGEST_BUMP_MM = 120;
/** Cubic pieces this long follow a linkage to better than 1e-6 degrees; within 30 mm of the end of reach to some thousandths. */
const STEP_MM = 2.5;
/** The rates grow without bound at the very end of reach. */
const CLEAR_OF_END_MM = 1;

const remembered = new Map<string, SolvedSource>();
const REMEMBERED_AT_MOST = 4;

/**
 * Solves a source. The curve does not change with the height the car is set to, so dragging a height asks for the same source
 * again and again: the last few are remembered. Their arrays are shared between answers: read them only.
 *
 * @throws InputError with every problem of the source.
 */
export function solveSource(source: SolvableSource): SolvedSource {
  if (source === undefined || source === null)
    throw new InputError([{ code: 'missing', path: 'source', value: source }]);
  if (source.kind === 'refused') throw new InputError(source.problems);
  if (source.kind === 'fitted') return { curve: source.curve, readings: source.readings };
  if (source.kind === 'curve') return { curve: source.curve };
  if (source.kind === 'coefficients') return { curve: curveFromCoefficients({ ...source, quantity: 'camber' }) };
  if (source.kind !== 'checked' && source.kind !== 'driveway') {
    throw new InputError([{ code: 'wrong-shape', path: 'source.kind', value: (source as { kind: unknown }).kind }]);
  }
  const known = source.kind === 'checked' ? source.corner : readDriveway(source.driveway);
  const key = JSON.stringify(known);
  let solved = remembered.get(key);
  if (!solved) {
    solved = 'taken' in known ? solveCorner(drivewayCorner(known), known) : solveCorner(known);
    if (remembered.size >= REMEMBERED_AT_MOST) remembered.delete(remembered.keys().next().value as string);
    remembered.set(key, solved);
  }
  return solved;
}

function solveCorner(corner: Corner, driveway?: Driveway): SolvedSource {
  const linkage = buildLinkage(corner);
  const travel = travelsWithinReach(linkage);
  const { camber, camberRate, rollCentreHeight } = sweepTravel(linkage, travel);
  const sources = driveway ? drivewaySources(driveway, corner as StrutCorner) : cornerSources(corner);
  return {
    ...(driveway && { driveway }),
    corner,
    curve: {
      kind: 'sampled',
      quantity: 'camber',
      domain: [travel[0]!, travel[travel.length - 1]!],
      sources: sources.map(({ id, label, dof }) => ({ id, label, dof })),
      travel,
      value: camber,
      slope: camberRate,
      parts: cornerDoubt(corner, linkage, travel, sources),
    },
    rollCentreHeight,
    motion: motionOf(linkage, travel),
    reach: reachOf(linkage),
  };
}

export function travelsWithinReach({ reach }: Linkage): Float64Array {
  const low = Math.max(LONGEST_DROOP_MM, reach.droop + CLEAR_OF_END_MM);
  const high = Math.min(LONGEST_BUMP_MM, reach.bump - CLEAR_OF_END_MM);
  const travels = [];
  for (let i = Math.ceil(low / STEP_MM); i * STEP_MM <= high; i++) travels.push(i * STEP_MM);
  // A linkage that hardly moves still gets its own ends, so that there is a curve at all.
  if (low < 0 && travels[0] !== low) travels.unshift(low);
  if (high > 0 && travels[travels.length - 1] !== high) travels.push(high);
  return Float64Array.from(travels);
}
