import { numberProblem } from '../quantity/number-problem.js';
import { InputError } from '../quantity/problem.js';
import { readTyreSize, type TyreSize } from './tyre-size.js';

/** A new tyre on a rim, inflated and not loaded. mm, unrounded unless said. */
export interface TyreDimensions {
  size: TyreSize;
  rimWidthInch: number;
  measuringRimInch: number;
  /** Between the bead seats. */
  rimDiameter: number;
  /** NaN outside the permitted rims: the formula says nothing there. */
  sectionWidth: number;
  sectionHeight: number;
  freeDiameter: number;
  /** Whole mm, as the standards print them: the height is rounded first. */
  shown: { sectionWidth: number; sectionHeight: number; overallDiameter: number };
  /** What may still be sold as this size: 4 % more width, a diameter of d + 2 H · 1.04. */
  largest: { sectionWidth: number; freeDiameter: number };
  smallest: { freeDiameter: number };
  permittedRimInch: [narrowest: number, widest: number];
  /** `stretched`: the rim is wider than permitted; `pinched`: narrower. */
  fit: 'permitted' | 'stretched' | 'pinched';
  /** Of 30-series and lower the theoretical rim's factor is from memory and uncertain. */
  isFactorUncertain?: true;
}

/** Change of section width per change of rim width (UN Regulation No. 30, footnote to 6.1.1.1). */
const K = 0.4;
const MM_PER_INCH = 25.4;
/** Nominal rim diameter by its code, whole mm (UN Regulation No. 30, 6.1.2.1; 15 and 16 read, the others from memory). */
const RIM_DIAMETER = new Map(
  [330, 356, 381, 406, 432, 457, 483, 508, 533, 559, 584, 610].map((mm, i) => [13 + i, mm] as const),
);
/** UN Regulation No. 30, 6.1.4 and 6.1.5, from memory. */
const WIDTH_TOLERANCE = 1.04;
const HEIGHT_TOLERANCE = [0.97, 1.04] as const;

/** Theoretical rim as a share of S₁: 0.70 for 50-series and above, 0.85 for 45 and below (read, secondary); 0.90 from memory. */
const theoreticalShare = (aspect: number): number => (aspect >= 50 ? 0.7 : aspect > 30 ? 0.85 : 0.9);

/** Measuring rim as a share of S₁: from memory; agrees with every published size in the tests. */
const measuringShare = (aspect: number): number =>
  aspect >= 80 ? 0.7 : aspect >= 60 ? 0.75 : aspect >= 50 ? 0.8 : aspect >= 45 ? 0.85 : aspect >= 35 ? 0.9 : 0.92;

/**
 * What a tyre measures on a rim: S = S₁ + K (A − A₁), A the rim's width in mm, A₁ = x S₁, K = 0.4; D = d + 2 H, H = S₁ · aspect/100
 * (UN Regulation No. 30, 6.1.1.1 and 6.1.2).
 *
 * @param size `225/45R17`
 * @param rimWidthInch default: the measuring rim
 * @param path before `size` and `rimWidthInch` in problems, with its dot
 * @throws InputError for a size that cannot be read, or a rim from 3 to 16 in that is none
 */
export function tyreDimensions(size: string, rimWidthInch?: number, path = ''): TyreDimensions {
  const read = readTyreSize(size, `${path}size`);
  const { sectionMm, aspectPercent, rimCode } = read;
  if (rimWidthInch !== undefined) {
    const problem = numberProblem(`${path}rimWidthInch`, rimWidthInch, 3, 16);
    if (problem) throw new InputError([problem]);
  }
  const measuring = Math.round((2 * measuringShare(aspectPercent) * sectionMm) / MM_PER_INCH) / 2;
  const rim = rimWidthInch ?? measuring;
  // From memory, and on the careful side: the tyre maker's table decides.
  const permitted: [number, number] = [measuring - (aspectPercent >= 50 ? 1 : 0.5), measuring + 1];
  const fit = rim > permitted[1] ? 'stretched' : rim < permitted[0] ? 'pinched' : 'permitted';
  const width =
    fit === 'permitted'
      ? sectionMm + K * (rim * MM_PER_INCH - theoreticalShare(aspectPercent) * sectionMm)
      : Number.NaN;
  const height = (sectionMm * aspectPercent) / 100;
  const rimDiameter = RIM_DIAMETER.get(rimCode) ?? Math.round(rimCode * MM_PER_INCH);
  const diameter = (share: number) => rimDiameter + 2 * height * share;
  return {
    size: read,
    rimWidthInch: rim,
    measuringRimInch: measuring,
    rimDiameter,
    sectionWidth: width,
    sectionHeight: height,
    freeDiameter: diameter(1),
    shown: {
      sectionWidth: Math.round(width),
      sectionHeight: Math.round(height),
      overallDiameter: rimDiameter + 2 * Math.round(height),
    },
    largest: { sectionWidth: width * WIDTH_TOLERANCE, freeDiameter: diameter(HEIGHT_TOLERANCE[1]) },
    smallest: { freeDiameter: diameter(HEIGHT_TOLERANCE[0]) },
    permittedRimInch: permitted,
    fit,
    ...(aspectPercent <= 30 && { isFactorUncertain: true as const }),
  };
}
