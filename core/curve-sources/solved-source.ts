import type { CurveData } from '../curve/curve-data.js';
import type { Driveway } from '../driveway/driveway.js';
import type { Corner } from '../linkage/corner.js';
import type { CornerMoves, CornerSource } from '../linkage/corner-source.js';
import type { Linkage, Reach } from '../linkage/linkage.js';
import type { Motion } from '../linkage/motion.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { InputError, type Problem } from '../quantity/problem.js';

/** What a curve was fitted to: where each reading stands once its pass's own zero is taken off. */
export interface FittedReadings {
  /** The highest power of travel in the curve. */
  degree: number;
  /** mm from stock height, and degrees, in the order of the readings. */
  travel: Float64Array;
  /** Degrees, in the order of the readings. */
  value: Float64Array;
}

/** How the links of a corner move the wheel. */
export interface MovedLinks {
  corner: Corner;
  readonly motion: Motion;
  /** Roll centre above the ground at each travel of the motion, mm: both wheels of the axle moved alike. */
  readonly rollCentreHeight: Float64Array;
  reach: Pick<Reach, 'droop' | 'bump' | 'droopEndedBy' | 'bumpEndedBy'>;
}

/** The links themselves besides. */
export interface SolvedLinks extends MovedLinks {
  linkage: Linkage;
  /** What the corner, and the parts on it, are not known to. */
  sources: readonly CornerSource[];
  /** The linkage with one of them off by so many standard uncertainties. @throws InputError where the links do not join then */
  moved(by: CornerMoves, times: number): Linkage;
}

/** What a source says, solved once: all answers are made of this. Its arrays are shared between answers: read them only. */
export interface SolvedSource<Links extends MovedLinks = SolvedLinks> {
  /** From everything but readings, or a curve, of toe. */
  readonly camber?: CurveData;
  /** From hard points, and from readings of it: nothing else tells how far the wheel steers itself. */
  readonly toe?: CurveData;
  /** What the curve was fitted to. It is counted from stock height then, wherever else the car was measured. */
  readings?: FittedReadings;
  /** The measurements that the links were made from. */
  driveway?: Driveway;
  /** What was put on the links. */
  parts?: readonly PartData[];
  /** Only from hard points, and from the driveway. */
  links?: Links;
}

/** What links and coefficients say: camber always. */
export type SolvedCamber = SolvedSource & { readonly camber: CurveData };

/** A source that was tried: what is wrong with it is told together with what is wrong with the rest of a request. */
export type TriedSource<Links extends MovedLinks = SolvedLinks> = SolvedSource<Links> | { problems: Problem[] };

/** @throws InputError of a source that tells toe alone */
export function camberOf({ camber }: Pick<SolvedSource, 'camber'>): CurveData {
  if (camber) return camber;
  throw new InputError([{ code: 'unknown-name', path: 'source.quantity', value: 'toe', names: ['camber'] }]);
}

/** Tries a source. What is no InputError is thrown on. */
export function triedSource(solve: () => SolvedSource): TriedSource {
  try {
    return solve();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { problems: error.problems };
  }
}
