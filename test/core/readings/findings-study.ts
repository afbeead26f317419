import fc from 'fast-check';
import type { CurveFit } from '../../../core/curve/curve-fit.js';
import { fitCurve } from '../../../core/curve/fit.js';
import type { Corner } from '../../../core/linkage/corner.js';
import { ACCUSING, type Finding } from '../../../core/readings/finding.js';
import { findingsIn } from '../../../core/readings/findings.js';
import type { Reading } from '../../../core/readings/reading.js';
import { randomNumbers } from '../driveway/random-car.js';
import { randomCorner } from '../linkage/random-corner.js';
import { randomWishbone } from '../linkage/random-wishbone.js';
import { type Fault, planted } from './planted-faults.js';
import { type Care, randomReadings } from './random-readings.js';

export const SEEDS = [1, 2, 3] as const;

/** Corners of the project's other generators, the same for the same seed. */
const drawn = (corners: fc.Arbitrary<Corner>) => {
  const pool = fc.sample(corners, { seed: 9, numRuns: 100 });
  return (random: () => number) => pool[Math.floor(random() * pool.length)]!;
};

/** Kinds of clean sets. */
export const CLEAN: Record<string, Care> = {
  '2 to 4 passes': {},
  'one pass': { passes: [1, 1] },
  'five passes, every 2 mm': { passes: [5, 5], steps: [2] },
  'few heights': { steps: [15, 20] },
  'struts of any proportions': { corner: drawn(randomCorner) },
  'double wishbones': { corner: drawn(randomWishbone) },
};

export function fitOf(readings: readonly Reading[]): CurveFit | undefined {
  try {
    return fitCurve(readings);
  } catch {
    return undefined;
  }
}

export const look = (readings: readonly Reading[]): Finding[] => findingsIn(readings, fitOf(readings));

/** How often clean sets accuse a reading or a pass, and how often each kind is told of them. */
export function cleanStudy(seed: number, sets: number, care?: Care) {
  const random = randomNumbers(seed);
  const told: Record<string, number> = {};
  let accused = 0;
  for (let n = 0; n < sets; n++) {
    const kinds = new Set(look(randomReadings(random, care)).map(({ kind }) => kind));
    if ([...kinds].some((kind) => ACCUSING.has(kind))) accused++;
    for (const kind of kinds) told[kind] = (told[kind] ?? 0) + 1;
  }
  return { accused: accused / sets, told };
}

/** How often a planted fault is found and named, how often with nothing else accused beside it, and what was told instead. */
export function faultStudy(fault: Fault, seed: number, sets: number) {
  const random = randomNumbers(seed);
  const instead: Record<string, number> = {};
  let [found, alone] = [0, 0];
  for (let n = 0; n < sets; n++) {
    const { readings, isNamed } = planted(fault, random);
    const findings = look(readings);
    if (findings.some(isNamed)) {
      found++;
      if (!findings.some((finding) => ACCUSING.has(finding.kind) && !isNamed(finding))) alone++;
    } else {
      const key = findings.map(({ kind }) => kind).join(' ') || 'nothing';
      instead[key] = (instead[key] ?? 0) + 1;
    }
  }
  return { found: found / sets, alone: alone / sets, instead };
}
