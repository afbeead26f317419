import fc from 'fast-check';
import type { CurveFit } from '../../../../core/curve/curve-fit.js';
import { fitCurve } from '../../../../core/curve/fit.js';
import type { Corner } from '../../../../core/linkage/corner.js';
import type { Reading } from '../../../../core/readings/reading.js';
import { ACCUSING, type DataWarning, type DataWarningKind } from '../../../../core/readings/warnings/data-warning.js';
import { dataWarningsIn } from '../../../../core/readings/warnings/data-warnings.js';
import { type Noise, randomSeries } from '../../curve/noisy-series.js';
import { randomNumbers } from '../../driveway/random-car.js';
import { randomCorner } from '../../linkage/random-corner.js';
import { randomWishbone } from '../../linkage/random-wishbone.js';
import type { Claim } from '../../study-limits.js';
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

export const look = (readings: readonly Reading[]): DataWarning[] => dataWarningsIn(readings, fitOf(readings));

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
    const warnings = look(readings);
    if (warnings.some(isNamed)) {
      found++;
      if (!warnings.some((warning) => ACCUSING.has(warning.kind) && !isNamed(warning))) alone++;
    } else {
      const key = warnings.map(({ kind }) => kind).join(' ') || 'nothing';
      instead[key] = (instead[key] ?? 0) + 1;
    }
  }
  return { found: found / sets, alone: alone / sets, instead };
}

/** Of clean sets accuse a reading or a pass at most, and of sets with a planted fault name it at least: the promise. */
const MOST_ACCUSED = 0.02;
const LEAST_NAMED = 0.9;

export const accusedClaim = (share: number, draws: number, most = MOST_ACCUSED): Claim => ({
  what: 'accused',
  share,
  draws,
  most,
});
export const namedClaim = (share: number, draws: number): Claim => ({
  what: 'named',
  share,
  draws,
  least: LEAST_NAMED,
});

/** What readings of one garage have in common, and what is claimed of how often it is told and what is told instead. */
export interface Common {
  name: string;
  noise: Noise;
  told: { kind: DataWarningKind; least?: number; most?: number }[];
  /** Never told in one set together. */
  neverBoth?: [DataWarningKind, DataWarningKind];
  accusedMost?: number;
}

export const COMMON: readonly Common[] = [
  {
    name: 'drift of 0.2° in passes up and down is told as drift, and as no slip of the gauge',
    noise: { layout: 'in turn', drift: 0.2 },
    told: [{ kind: 'drift', least: 0.75 }],
    accusedMost: 0.06,
  },
  {
    name: 'drift of 0.3° is told by the first height read again, which is no outlier and not there twice',
    noise: { layout: 'return', drift: 0.3, gauge: [0.03, 0.06] },
    told: [
      { kind: 'drift', least: 0.85 },
      { kind: 'duplicate', most: 0 },
    ],
    accusedMost: 0.06,
  },
  {
    name: 'drift of passes there and back is not told as friction',
    noise: { layout: 'there and back', drift: 0.3, gauge: [0.03, 0.05] },
    told: [{ kind: 'drift', least: 0.8 }],
    neverBoth: ['drift', 'up-down'],
  },
  {
    name: 'scatter that goes together is told',
    noise: { correlation: 0.6, gauge: [0.1, 0.1] },
    // 37.1 % of 900 sets; the limit leaves one standard error of as many, 1.6 %.
    told: [{ kind: 'correlated', least: 0.355 }],
  },
  { name: 'and seldom where it does not go together', noise: {}, told: [{ kind: 'correlated', most: 0.04 }] },
];

/** The claims of so many random sets that have it in common. */
export function commonClaims({ noise, told, neverBoth, accusedMost }: Common, sets: number): Claim[] {
  const random = randomNumbers(4);
  const all = Array.from({ length: sets }, () => {
    const { readings } = randomSeries(random, noise);
    return new Set(dataWarningsIn(readings, fitCurve(readings)).map(({ kind }) => kind));
  });
  const share = (is: (kinds: Set<DataWarningKind>) => boolean) => all.filter(is).length / sets;
  const claims: Claim[] = told.map(({ kind, ...limits }) => ({
    what: kind,
    share: share((kinds) => kinds.has(kind)),
    draws: sets,
    ...limits,
  }));
  if (neverBoth) {
    const both = share((kinds) => neverBoth.every((kind) => kinds.has(kind)));
    claims.push({ what: neverBoth.join(' and '), share: both, draws: sets, most: 0 });
  }
  if (accusedMost !== undefined) {
    const accused = share((kinds) => [...kinds].some((kind) => ACCUSING.has(kind)));
    claims.push(accusedClaim(accused, sets, accusedMost));
  }
  return claims;
}
