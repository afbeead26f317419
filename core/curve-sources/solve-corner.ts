import type { CurveData } from '../curve/curve-data.js';
import type { Driveway } from '../driveway/driveway.js';
import { drivewayCorner } from '../driveway/driveway-corner.js';
import { drivewaySources } from '../driveway/driveway-sources.js';
import { readDriveway } from '../driveway/read-driveway.js';
import { buildLinkage, reachOf } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { type CornerSource, movedBy } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { motionOf } from '../linkage/motion.js';
import { sweepTravel } from '../linkage/sweep.js';
import { cornerDoubt, cornerSources } from './corner-doubt.js';
import type { SolvedCamber, SolvedLinks } from './solved-source.js';

/** Travels, mm, over which a corner is solved: further than any damper of a car that is lowered. */
const LONGEST_DROOP_MM = -80;
const LONGEST_BUMP_MM = 120;
/** Cubic pieces this long follow a linkage to better than 1e-6 degrees; within 30 mm of the end of reach to some thousandths. */
const STEP_MM = 2.5;
/** The rates grow without bound at the very end of reach. */
const CLEAR_OF_END_MM = 1;

/** A corner, and what it is not known to. */
export interface KnownCorner {
  corner: Corner;
  sources: readonly CornerSource[];
  /** The measurements it was made from. */
  driveway?: Driveway;
}

/** @param driveway `DrivewayMeasurements` @throws InputError with all that is wrong with them */
export function knownDriveway(driveway: unknown): KnownCorner {
  const known = readDriveway(driveway);
  const corner = drivewayCorner(known);
  return { corner, sources: drivewaySources(known, corner), driveway: known };
}

/** @param driveway `DrivewayMeasurements` @throws InputError with all that is wrong with them */
export const solveDriveway = (driveway: unknown): SolvedCamber => solveBare(knownDriveway(driveway));

/** @throws InputError where the links do not close */
export const solveCorner = (corner: Corner): SolvedCamber => solveBare({ corner, sources: cornerSources(corner) });

const solveBare = (known: KnownCorner): SolvedCamber => {
  const { corner, sources } = known;
  return solveLinks(known, {
    linkage: buildLinkage(corner),
    moved: (by, times) => buildLinkage(movedBy(corner, by, times)),
    doubt: (linkage, travel) => cornerDoubt(corner, linkage, travel, sources),
  });
};

/** Links made of a corner, with or without parts on it. */
interface Made extends Pick<SolvedLinks, 'linkage' | 'moved'> {
  /** How the doubt of the sources shows in an angle over travel: see `cornerDoubt`. */
  doubt(linkage: Linkage, travel: Float64Array): ReturnType<typeof cornerDoubt>;
}

/** The links at once; the curves when they are first looked at, since clearance asks for none. */
export function solveLinks({ corner, sources, driveway }: KnownCorner, { linkage, moved, doubt }: Made): SolvedCamber {
  let swept: ReturnType<typeof sweptCurves> | undefined;
  const curves = () => (swept ??= sweptCurves(linkage, sources, doubt));
  const solved: SolvedCamber = {
    ...(driveway && { driveway }),
    get camber() {
      return curves().camber;
    },
    links: {
      corner,
      linkage,
      sources,
      moved,
      reach: reachOf(linkage),
      get motion() {
        return curves().motion;
      },
      get rollCentreHeight() {
        return curves().rollCentreHeight;
      },
    },
  };
  return driveway ? solved : Object.defineProperty(solved, 'toe', { get: () => curves().toe, enumerable: true });
}

function sweptCurves(linkage: Linkage, sources: readonly CornerSource[], doubtOf: Made['doubt']) {
  const travel = travelsWithinReach(linkage);
  const { camberRate, toeRate, rollCentreHeight, ...swept } = sweepTravel(linkage, travel);
  const doubt = doubtOf(linkage, travel);
  const curve = (quantity: 'camber' | 'toe', slope: Float64Array): CurveData => ({
    kind: 'sampled',
    quantity,
    domain: [travel[0]!, travel[travel.length - 1]!],
    sources: sources.map(({ id, label, dof }) => ({ id, label, dof })),
    travel,
    value: swept[quantity],
    slope,
    parts: doubt(quantity),
  });
  let toe: CurveData | undefined;
  return {
    camber: curve('camber', camberRate),
    /** Few ask for it. */
    get toe() {
      toe ??= curve('toe', toeRate);
      return toe;
    },
    motion: motionOf(linkage, travel),
    rollCentreHeight,
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
