import { numberProblem } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { MM_PER_INCH } from '../quantity/units.js';
import { type TyreSize, tyreSizeOf } from './tyre-size.js';

/** A new tyre, inflated and without load. mm and inches; unrounded but for `shown`. */
export interface TyreDimensions {
  size: TyreSize;
  /** The rim asked about, or the measuring rim. */
  rimWidthInch: number;
  /** The rim on which the standards state the tyre's width. */
  measuringRimInch: number;
  /** Narrowest and widest rim: a careful guess, the tyre maker's table decides. */
  permittedRimInch: [low: number, high: number];
  /** `stretched`: the rim is too wide for the tyre; `pinched`: too narrow. */
  fit: 'permitted' | 'stretched' | 'pinched';
  /** Nominal, at the bead seats, whole mm. */
  rimDiameter: number;
  /** Without ribs and lettering. NaN unless `fit` is `permitted`: the formula holds there only. */
  sectionWidth: number;
  sectionHeight: number;
  /** Of the tyre that carries nothing. */
  freeDiameter: number;
  /** Whole mm as the standards round: the diameter is that of the rounded height. */
  shown: { sectionWidth: number; sectionHeight: number; overallDiameter: number };
  /** The most the standards allow a new tyre of this size. */
  largest: { sectionWidth: number; freeDiameter: number };
  smallest: { freeDiameter: number };
  /** The theoretical rim of 30-series and below is uncertain, and so is the section width, by 2 % of the nominal. */
  isFactorUncertain: boolean;
}

/** From this series up, the share of S₁ that is the measuring rim's width. From memory; agrees with every size of the tests. */
const MEASURING_RIM = [
  [80, 0.7],
  [60, 0.75],
  [50, 0.8],
  [45, 0.85],
  [35, 0.9],
  [0, 0.92],
] as const;

const LEAST_RIM = 3;

/** S changes by this share of the change of rim width. */
const WIDTH_BY_RIM = 0.4;

/**
 * What a tyre measures on a rim, by default on its measuring rim.
 *
 * UN Regulation No. 30, paragraph 6.1.1.1: S = S₁ + 0.4 (A − A₁), A the rim's width, A₁ = x S₁ with x = 0.70 for 50-series
 * and above, 0.85 for 45-series and below; from memory 0.90 for 30-series and below. From memory: 6.1.2, D = d + 2H with
 * d the nominal diameter in whole mm and H = S₁ × aspect / 100; 6.1.4 and 6.1.5, S at most 4 % wider (6 % if not radial), D
 * from d + 2H × 0.97 to d + 2H × 1.04 (1.08 if not radial).
 *
 * Throws InputError at `size` (see readTyreSize) and `rimWidthInch` (3 to 16), both at once.
 */
export function tyreDimensions(size: string, rimWidthInch?: number): TyreDimensions {
  const problems: Problem[] = [];
  const read = tyreSizeOf(problems, size, 'size');
  const problem = rimWidthInch === undefined ? undefined : rimProblem('rimWidthInch', rimWidthInch);
  if (problem) problems.push(problem);
  if (!read || problem) throw new InputError(problems);
  return dimensionsOf(read, rimWidthInch);
}

export const rimProblem = (path: string, rimWidthInch: unknown): Problem | undefined =>
  numberProblem(path, rimWidthInch, LEAST_RIM, 16);

/** The formula alone, wherever the rim lies, mm. */
export function formulaWidth({ sectionMm, aspectPercent }: TyreSize, rimWidthInch: number): number {
  const x = aspectPercent >= 50 ? 0.7 : aspectPercent > 30 ? 0.85 : 0.9;
  return sectionMm + WIDTH_BY_RIM * (rimWidthInch * MM_PER_INCH - x * sectionMm);
}

/** Of what has been read and checked. */
export function dimensionsOf(size: TyreSize, rim?: number): TyreDimensions {
  const { sectionMm, aspectPercent, construction } = size;
  const share = MEASURING_RIM.find(([series]) => aspectPercent >= series)![1];
  const measuringRimInch = Math.round((2 * share * sectionMm) / MM_PER_INCH) / 2;
  const rimWidthInch = rim ?? measuringRimInch;
  // Common practice, no source.
  const low = Math.max(LEAST_RIM, measuringRimInch - (aspectPercent >= 50 ? 1 : 0.5));
  const high = measuringRimInch + 1;
  const fit = rimWidthInch > high ? 'stretched' : rimWidthInch < low ? 'pinched' : 'permitted';
  const rimDiameter = Math.round(size.rimCode * MM_PER_INCH);
  const sectionWidth = fit === 'permitted' ? formulaWidth(size, rimWidthInch) : NaN;
  const sectionHeight = (sectionMm * aspectPercent) / 100;
  const diameter = (height: number) => rimDiameter + 2 * height;
  const [wider, higher] = construction === 'R' ? [1.04, 1.04] : [1.06, 1.08];
  const shownHeight = Math.round(sectionHeight);
  return {
    size,
    rimWidthInch,
    measuringRimInch,
    permittedRimInch: [low, high],
    fit,
    rimDiameter,
    sectionWidth,
    sectionHeight,
    freeDiameter: diameter(sectionHeight),
    shown: {
      sectionWidth: Math.round(sectionWidth),
      sectionHeight: shownHeight,
      overallDiameter: diameter(shownHeight),
    },
    largest: { sectionWidth: sectionWidth * wider, freeDiameter: diameter(sectionHeight * higher) },
    smallest: { freeDiameter: diameter(sectionHeight * 0.97) },
    isFactorUncertain: aspectPercent <= 30,
  };
}
