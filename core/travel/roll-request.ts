import { isMissing, numberChecks } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import type { AxleInRoll } from './axle-in-roll.js';
import { RATE_N_PER_MM, RATIO, TRACK_MM } from './roll-ranges.js';

/** How far does a car roll in a steady turn? */
export interface RollRequest {
  /** Lateral acceleration, g. */
  lateral: number;
  /** Of the sprung mass, above the road, mm. */
  centreOfGravityHeight: number;
  /** Standard uncertainty of that, mm. */
  heightUncertainty?: number;
  axle: AxleInRoll;
  /** Without it the other axle is taken to have the same roll moment for its stiffness. */
  otherAxle?: AxleInRoll;
}

/** Common practice, no source: wide enough for any road car. */
const MOST_LATERAL_G = 3;
const HEIGHT_MM = [100, 1500] as const;
const MOST_DOUBT_MM = 500;
const AXLE = {
  sprungMass: [50, 3000],
  track: TRACK_MM,
  rollCentreHeight: [-1000, 1000],
  springRate: RATE_N_PER_MM,
  motionRatio: RATIO,
  unsprungMass: [0, 1000],
  unsprungHeight: [0, 1000],
} as const satisfies Partial<Record<keyof AxleInRoll, readonly [number, number]>>;
const NEEDED: readonly string[] = ['sprungMass', 'track', 'rollCentreHeight', 'springRate'];
const MOST_GAP_MM = 300;

/** All that is wrong with a request. */
export function rollProblems(request: RollRequest): Problem[] {
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  check('lateral', request.lateral, 0, MOST_LATERAL_G);
  check('centreOfGravityHeight', request.centreOfGravityHeight, ...HEIGHT_MM);
  if (request.heightUncertainty !== undefined) check('heightUncertainty', request.heightUncertainty, 0, MOST_DOUBT_MM);
  return [
    ...problems,
    ...axleProblems('axle', request.axle),
    ...(request.otherAxle === undefined ? [] : axleProblems('otherAxle', request.otherAxle)),
  ];
}

function axleProblems(path: 'axle' | 'otherAxle', axle: unknown): Problem[] {
  if (isMissing(axle)) return [{ code: 'missing', path, value: undefined }];
  if (typeof axle !== 'object') return [{ code: 'wrong-shape', path, value: axle }];
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const given = axle as AxleInRoll;
  for (const [key, [least, most]] of Object.entries(AXLE)) {
    const value = given[key as keyof typeof AXLE];
    if (value !== undefined || NEEDED.includes(key)) check(`${path}.${key}`, value, least, most);
  }
  const { bar, stop } = given;
  if (bar) {
    check(`${path}.bar.rate`, bar.rate, ...RATE_N_PER_MM);
    if (bar.motionRatio !== undefined) check(`${path}.bar.motionRatio`, bar.motionRatio, ...RATIO);
  }
  if (stop) {
    check(`${path}.stop.gap`, stop.gap, 0, MOST_GAP_MM);
    check(`${path}.stop.rate`, stop.rate, ...RATE_N_PER_MM);
  }
  return problems;
}
