import { leanedBy } from '../linkage/leaned-by.js';
import type { Linkage } from '../linkage/linkage.js';
import { armLonger } from '../linkage/parts/arm.js';
import { ifJoined, staticAngles } from '../linkage/parts/targets.js';
import { tieRodLonger } from '../linkage/parts/tie-rod.js';
import { topMountMoved } from '../linkage/parts/top-mount.js';
import { ARM_ANGLE } from '../linkage/pose-layout.js';
import { setToToe, standingAt, withRodEnd } from '../linkage/rod-ends.js';
import { opened } from '../linkage/travel.js';
import { InputError } from '../quantity/problem.js';
import { nearestRoot } from './nearest-root.js';

/** Of one wheel: degrees, camber top outward positive, toe-in positive. */
export interface Angles {
  camber: number;
  toe: number;
}

/** What is set on one wheel. */
export interface WheelSetting {
  /** Travel from where the links were measured to where the wheel stands, mm. */
  travel: number;
  /** By how much lower it is to stand, mm. */
  lower: number;
  /** What a gauge reads there; without it, what the links say. */
  camber?: number | undefined;
  toe?: number | undefined;
  /** What it is to be, once the height is right; without it, it is left as it comes. */
  camberWanted?: number | undefined;
  toeWanted?: number | undefined;
}

/** One wheel set in the order height, camber, toe: each moves what comes after it. */
export interface SettingSteps {
  asRead: Angles;
  afterHeight: Angles;
  /** With camber set at the top mount, or at a wishbone's upper arm, and the rod left as it was. */
  afterCamber: Angles;
  /** What that takes: the mount moved outboard, or the arm made longer, mm. */
  camberAmount: number;
  /** By how much the tie rod is to be longer then, mm. */
  rodLonger: number;
  /** What a mm more rod does to toe there, degrees of toe-in. */
  toePerMm: number;
  /** What 5 mm lower does to camber and toe where the wheel stands at first. */
  lowered: Angles;
  /** What a degree more negative camber, set there, does to toe. */
  toePerNegativeDegree: number;
}

const LOWERED_MM = 5;
const NUDGE_MM = 0.1;
/** No top mount is moved further, mm. */
const MOST_MM = 80;
const CLOSE_DEG = 1e-9;

/**
 * On the exact linkage. First its knuckle is leaned and its rod set so that it has what was read; then one thing after another.
 *
 * @param linkage a left corner: of a right one, its mirror image
 * @throws InputError `outside-domain`, path `drop` or `alignment.lower`; `out-of-range`, path `alignment.camberWanted`,
 *   `alignment.toe` or `alignment.toeWanted`, where no mount, and no rod, leads there
 */
export function settingSteps(linkage: Linkage, asked: WheelSetting): SettingSteps {
  const { travel, lower, camberWanted, toeWanted } = asked;
  const read = asItWasRead(linkage, asked);
  const here = anglesAt(read, travel);
  const there = anglesAt(read, travel + lower);
  if (!here) throw new InputError([{ code: 'outside-domain', path: 'drop', value: travel }]);
  if (!there) throw new InputError([{ code: 'outside-domain', path: 'alignment.lower', value: lower }]);
  const below = anglesAt(read, travel + LOWERED_MM) ?? NOWHERE;
  const leaning = moverOf(read);
  const amountFor = (camber: number): number | undefined =>
    nearestRoot(
      (mm) => (anglesAt(leaning(mm), travel + lower)?.camber ?? Number.NaN) - camber,
      [-MOST_MM, MOST_MM],
      CLOSE_DEG,
    );
  const camberAmount = camberWanted === undefined ? 0 : amountFor(camberWanted);
  if (camberAmount === undefined) {
    throw new InputError([{ code: 'out-of-range', path: 'alignment.camberWanted', value: camberWanted }]);
  }
  const leaned = leaning(camberAmount)!;
  const afterCamber = anglesAt(leaned, travel + lower)!;
  const rodFor = (toe: number) => {
    const length = rodAt(leaned, travel + lower, toe);
    if (length === undefined) throw new InputError([{ code: 'out-of-range', path: 'alignment.toeWanted', value: toe }]);
    return length - leaned.lengths.tieRod;
  };
  const oneDegree = amountFor(there.camber - 1);
  const more = oneDegree === undefined ? undefined : anglesAt(leaning(oneDegree), travel + lower);
  const [long, short] = [NUDGE_MM, -NUDGE_MM].map((mm) =>
    anglesAt(
      ifJoined(() => tieRodLonger({ mm })(leaned)),
      travel + lower,
    ),
  );
  return {
    asRead: here,
    afterHeight: there,
    afterCamber,
    camberAmount,
    rodLonger: toeWanted === undefined ? 0 : rodFor(toeWanted),
    toePerMm: ((long?.toe ?? Number.NaN) - (short?.toe ?? Number.NaN)) / (2 * NUDGE_MM),
    lowered: { camber: below.camber - here.camber, toe: below.toe - here.toe },
    toePerNegativeDegree: (more?.toe ?? Number.NaN) - there.toe,
  };
}

const NOWHERE: Angles = { camber: Number.NaN, toe: Number.NaN };

/** The linkage with the camber and toe that a gauge read where it stands. */
function asItWasRead(linkage: Linkage, { travel, camber, toe }: WheelSetting): Linkage {
  const bare = opened(linkage);
  const stands = anglesAt(bare, travel);
  if (!stands) throw new InputError([{ code: 'outside-domain', path: 'drop', value: travel }]);
  let read = camber === undefined ? bare : leanedBy(bare, camber - stands.camber);
  // A turned-in wheel does not lean as its spin axis was leaned: once more for the rest.
  for (let i = 0; i < 2; i++) {
    if (toe !== undefined) {
      const length = rodAt(read, travel, toe);
      if (length === undefined) throw new InputError([{ code: 'out-of-range', path: 'alignment.toe', value: toe }]);
      read = withRod(read, length);
    }
    if (camber !== undefined) read = leanedBy(read, camber - anglesAt(read, travel)!.camber);
  }
  return read;
}

const withRod = (linkage: Linkage, length: number): Linkage =>
  tieRodLonger({ mm: length - linkage.lengths.tieRod })(linkage);

/** Where camber is set: at the top mount, or by the upper arm. Rod and height stay. */
function moverOf(linkage: Linkage): (mm: number) => Linkage | undefined {
  const part = (mm: number) =>
    linkage.kind === 'strut' ? topMountMoved({ vector: [0, mm, 0] }) : armLonger({ mm, arm: 'upper' });
  return (mm) => (mm === 0 ? linkage : ifJoined(() => part(mm)(linkage)));
}

/** The length of the rod with which the wheel has that toe, mm. */
function rodAt(linkage: Linkage, travel: number, toe: number): number | undefined {
  const stands = standingAt(linkage, travel);
  const set = stands && setToToe(linkage, stands, toe);
  return set && withRodEnd(linkage, set, 'outerEnd', 0)?.solver.tieRod;
}

function anglesAt(linkage: Linkage | undefined, travel: number): Angles | undefined {
  const pose = linkage && standingAt(linkage, travel);
  return pose && staticAngles({ ...linkage, home: pose[ARM_ANGLE]! });
}
