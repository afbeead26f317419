import { costsOf, netChange } from '../../../core/answers/compare.js';
import { rollCentre } from '../../../core/answers/roll-centre.js';
import { curveOf } from '../../../core/curve/curve.js';
import { linkageWith } from '../../../core/curve-sources/solve-parts.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { amountsOf, type PartData, withMore } from '../../../core/linkage/parts/part-kinds.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { finished } from '../../../core/math/finished.js';
import { interpolate } from '../../../core/math/interpolate.js';
import { NORMAL_95 } from '../../../core/uncertainty/normal.js';
import { missed } from '../study-limits.js';
import { six, withErrors } from './coverage.js';
import { normal, ORDINARY, randomCar, randomNumbers } from './random-car.js';

/** mm of bump from stock height over which a part's effect on camber is looked at. */
export const BUMP_MM = 40;

export const STUDIED: Readonly<Record<string, PartData>> = {
  '22 mm lower joint, rod corrected': { part: 'ballJointExtended', mm: 22, correctTieRod: true },
  '22 mm lower joint': { part: 'ballJointExtended', mm: 22 },
  '10 mm longer arm': { part: 'armLonger', mm: 10 },
  'top mount 15 mm inboard': { part: 'topMountMoved', vector: [0, -15, 0] },
};

export interface PartCoverage {
  /** Share of cars whose true effect lies inside the band that is shown. */
  covered: number;
  /** Mean half-width of the band, and root mean square of error, degrees. */
  plusMinus: number;
  error: number;
  /** The same of the roll centre's height at stock height with the part on, and its mean half-width, mm. */
  rollCentreCovered: number;
  rollCentrePlusMinus: number;
  /** The same of by how much the part raises or lowers it. */
  rollCentreChangeCovered: number;
  rollCentreChangePlusMinus: number;
  /** 95 % quantile of the size of the error of the roll centre's height with the part on, at stock height, mm. */
  rollCentre: number;
  /** The same of by how much the part raises or lowers it. */
  rollCentreChange: number;
  /** The same of the toe change over the bump that the plane corner has, degrees: what is not answered. */
  toe: number;
  none: number;
}

/**
 * Random three-dimensional cars, each measured once in the driveway by six measurements with normal errors of their ±, a part with an
 * error of its ± on: how often does the band hold what the part truly changes of the camber change over a bump?
 */
export function partCoverage(part: PartData, { seed, cars }: { seed: number; cars: number }): PartCoverage {
  const random = randomNumbers(seed);
  const total = {
    covered: 0,
    plusMinus: 0,
    error: 0,
    none: 0,
    rollCentreCovered: 0,
    rollCentrePlusMinus: 0,
    rollCentreChangeCovered: 0,
    rollCentreChangePlusMinus: 0,
  };
  const rollCentres: number[] = [];
  const rollCentreChanges: number[] = [];
  const toes: number[] = [];
  for (let n = 0; n < cars; n++) {
    const corner = randomCar(random, ORDINARY);
    const driveway = { kind: 'driveway' as const, driveway: withErrors(six(corner), random) };
    const real = amountsOf(part).reduce(
      (data, { path, plusMinus }) => withMore(data, path, (normal(random) * plusMinus) / NORMAL_95),
      part,
    );
    const truth = trueEffect(corner, real);
    const solved = [solveSource(driveway), solveSource({ kind: 'parts', of: driveway, parts: [part] })];
    const effect = netChange(
      { curves: solved.map(({ camber }) => ({ curve: curveOf(camber), shares: 'car' })), heights: [0], bump: BUMP_MM },
      { curve: 0, height: 0 },
      { curve: 1, height: 0 },
    )?.total;
    if (!effect || !truth) {
      total.none++;
      continue;
    }
    const error = Math.abs(effect.value - truth.camber);
    if (error <= effect.plusMinus!) total.covered++;
    total.plusMinus += effect.plusMinus!;
    total.error += error ** 2;
    const { links } = solved[1]!;
    const [before, after] = solved.map(({ links: of }) => interpolate(of!.motion.travel, of!.rollCentreHeight, 0));
    rollCentres.push(Math.abs(after! - truth.rollCentre));
    const changeError = Math.abs(after! - before! - truth.rollCentreChange);
    rollCentreChanges.push(changeError);
    const [bareCentre, withPart] = solved.map((source) => finished(rollCentre({ source }))!);
    const changed = costsOf(
      {
        curves: solved.map(({ camber }, i) => ({
          curve: curveOf(camber),
          shares: 'car',
          rollCentre: i === 0 ? bareCentre! : withPart!,
        })),
        heights: [0],
        bump: BUMP_MM,
      },
      { curve: 0, height: 0 },
      { curve: 1, height: 0 },
    ).rollCentre!;
    if (changeError <= changed.plusMinus!) total.rollCentreChangeCovered++;
    total.rollCentreChangePlusMinus += changed.plusMinus!;
    const at = withPart!.travel.indexOf(0) * withPart!.sources.length;
    const plusMinus = NORMAL_95 * Math.hypot(...withPart!.parts.slice(at, at + withPart!.sources.length));
    total.rollCentrePlusMinus += plusMinus;
    if (Math.abs(after! - truth.rollCentre) <= plusMinus) total.rollCentreCovered++;
    const { toe } = sweepTravel(links!.linkage, [0, BUMP_MM]);
    toes.push(Math.abs(toe[1]! - toe[0]! - truth.toe));
  }
  const found = cars - total.none;
  const quantile95 = (all: number[]) => all.sort((a, b) => a - b)[Math.floor(0.95 * all.length)]!;
  return {
    covered: total.covered / found,
    plusMinus: total.plusMinus / found,
    error: Math.sqrt(total.error / found),
    rollCentreCovered: total.rollCentreCovered / found,
    rollCentrePlusMinus: total.rollCentrePlusMinus / found,
    rollCentreChangeCovered: total.rollCentreChangeCovered / found,
    rollCentreChangePlusMinus: total.rollCentreChangePlusMinus / found,
    rollCentre: quantile95(rollCentres),
    rollCentreChange: quantile95(rollCentreChanges),
    toe: quantile95(toes),
    none: total.none,
  };
}

/** Undefined where the part does not go on. */
export function trueEffect(corner: StrutCorner, part: PartData) {
  try {
    const bare = sweepTravel(buildLinkage(corner), [0, BUMP_MM]);
    const swept = sweepTravel(linkageWith(corner, [part], { alignment: 'toe' }), [0, BUMP_MM]);
    const camber = swept.camber[1]! - swept.camber[0]! - (bare.camber[1]! - bare.camber[0]!);
    if (Number.isNaN(camber)) return undefined;
    const rollCentre = swept.rollCentreHeight[0]!;
    const rollCentreChange = rollCentre - bare.rollCentreHeight[0]!;
    return { camber, toe: swept.toe[1]! - swept.toe[0]!, rollCentre, rollCentreChange };
  } catch {
    return undefined;
  }
}

/** What is claimed of every part. */
const PART_LIMITS = { covered: [0.92, 1], rollCentre: [0.92, 1] } as const;

export const partsMissed = (
  name: string,
  { covered, rollCentreCovered, rollCentreChangeCovered }: PartCoverage,
  draws: number,
  isSample: boolean,
): string[] =>
  missed(
    [
      { what: `${name}: covered`, share: covered, draws, least: PART_LIMITS.covered[0], most: PART_LIMITS.covered[1] },
      {
        what: `${name}: roll centre covered`,
        share: rollCentreCovered,
        draws,
        least: PART_LIMITS.rollCentre[0],
        most: PART_LIMITS.rollCentre[1],
      },
      { what: `${name}: change of roll centre covered`, share: rollCentreChangeCovered, draws, least: 0.92 },
    ],
    isSample,
  );
