import { withChange } from './independent-joint.js';
import { cornerAtTravel, secantRoot } from './independent-static-camber.js';
import { type IndependentCorner, independentStrut } from './independent-strut.js';

/*
 * A second computation of what one thing set on a strut does to the next: height, then the top mount, then the tie rod. Nothing is imported
 * from core/. The solvers are those of independent-strut.ts and independent-joint.ts (generic Newton on the constraints), the top mount's
 * place by the secant rule; the rod is as long as its ends then are apart.
 */

export interface IndependentSetting {
  /** mm from where the corner's points were taken; mm lower still. */
  travel: number;
  lower: number;
  /** Degrees; of what was not read, the corner's own stands. */
  camber?: number;
  toe?: number;
  camberWanted?: number;
  toeWanted: number;
}

const rodOf = ({ tieRod: { inner, outer } }: IndependentCorner): number =>
  Math.hypot(outer[0] - inner[0], outer[1] - inner[1], outer[2] - inner[2]);

export function independentSetting(corner: IndependentCorner, asked: IndependentSetting) {
  const { travel, lower, camber, toe, camberWanted, toeWanted } = asked;
  let read = cornerAtTravel(corner, travel);
  for (let i = 0; i < 3; i++) {
    if (camber !== undefined) read = withChange(read, { spinCamberBy: camber - read.camber, toe: 'kept' });
    if (toe !== undefined) read = withChange(read, { toe });
  }
  const lowered = cornerAtTravel(read, lower);
  const leaned = (mm: number) => withChange(lowered, { topBy: [0, mm, 0], toe: 'kept' });
  const mountBy = (to: number) => secantRoot((mm) => leaned(mm).camber - to, 0, -2);
  const moved = camberWanted === undefined ? 0 : mountBy(camberWanted);
  const mounted = leaned(moved);
  return {
    read: { camber: read.camber, toe: read.toe },
    afterHeight: { camber: lowered.camber, toe: lowered.toe },
    moved,
    afterCamber: { camber: mounted.camber, toe: mounted.toe },
    rodLonger: rodOf(withChange(mounted, { toe: toeWanted })) - rodOf(mounted),
    toePerNegativeDegree: leaned(mountBy(lowered.camber - 1)).toe - lowered.toe,
    mounted,
  };
}

/** Toe-in, degrees, of a corner where it stands with its tie rod longer by so much, mm. */
export function toeWithRod(corner: IndependentCorner, longer: number): number {
  const strut = independentStrut(corner, corner.lowerArm, longer);
  strut.solve(0);
  return strut.pose().toe;
}
