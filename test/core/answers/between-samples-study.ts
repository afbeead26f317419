import { clearanceSteered } from '../../../core/answers/clearance.js';
import { envelopeOf } from '../../../core/answers/envelope-of.js';
import { wheelMotion } from '../../../core/answers/from-source.js';
import { verdictOf } from '../../../core/answers/verdict.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN, TRAVEL, WHEEL } from '../../../core/linkage/pose.js';
import { findReach, moveTo } from '../../../core/linkage/travel.js';
import type { Vec } from '../../../core/math/vector.js';
import { type Envelope, gapTo, Poses } from '../../../core/wheel/gaps.js';
import type { Place } from '../../../core/wheel/place.js';
import { placed } from '../../../core/wheel/placed.js';
import type { WheelMotion } from '../../../core/wheel/wheel-motion.js';
import { randomCar, randomNumbers } from '../driveway/random-car.js';
import { finished } from './finished.js';

/** What an answer says of a place, and what lies at some point of a grid far finer than what the answer is made of. */
export interface Compared {
  car: number;
  place: Place;
  said: number;
  found: number;
  isVerdictSame: boolean;
}

/** Hundredths of a millimetre are what is promised between the samples. */
const PROMISED_MM = 0.01;

/** The places of which more was said than is there, or another verdict. */
export const broken = (compared: readonly Compared[]): Compared[] =>
  compared.filter(({ said, found, isVerdictSame }) => said - found > PROMISED_MM || !isVerdictSame);

const BEFORE = { size: '205/55R16', rimWidthInch: 6.5, offset: 45 };
const PLUS_MINUS_MM = 5;
const NEEDED_MM = 8;
const TRAVELS = 61;
const RACKS = 241;

/**
 * Invented cars (`randomCar`) with invented places in their arches: fixed to the body, on both sides of the wheel, all round the
 * clock; so near that many of them decide. The grid is walked by the solver of the linkage itself, at every one of its points.
 */
export function compareCars(cars: number, seed: number, placesEach = 6): Compared[] {
  const random = randomNumbers(seed);
  return Array.from({ length: cars }, (_, car) => {
    const corner = randomCar(random);
    const motion = wheelMotion({ source: { kind: 'corner', corner }, lock: 28 + 12 * random() });
    const after = { size: '235/40R18', rimWidthInch: 8.5, offset: 20 + 30 * random() };
    const places = Array.from({ length: placesEach }, (_one, k): Place => {
      const from = k % 2 === 0 ? ('inner' as const) : ('outer' as const);
      const out = from === 'inner' ? -5 - 60 * random() : 60 * random() - 20;
      const at = { clock: 12 * random(), distance: 200 + 190 * random(), out, from };
      return { name: 'invented', fixedTo: 'body', is: 'chassis', at, plusMinus: PLUS_MINUS_MM };
    });
    const request = { motion, isLeft: true, before: BEFORE, after, places, limits: { shaftBump: 60 }, drop: 20 };
    const answer = finished(clearanceSteered(request));
    const { wheels } = answer;
    const old = envelopeOf(wheels.before, 0);
    const points = places.map((place) => placed(place, old, new Poses(motion), 0, true).measured);
    const least = leastOnGrid(corner, motion, envelopeOf(wheels.after, wheels.plane), points, answer.range);
    return answer.places.map(
      ({ worst, verdict }, i): Compared => ({
        car,
        place: places[i]!,
        said: worst.gap,
        found: least[i]!,
        isVerdictSame: verdict === verdictOf({ gap: least[i]!, plusMinus: PLUS_MINUS_MM }, NEEDED_MM),
      }),
    );
  }).flat();
}

function leastOnGrid(
  corner: StrutCorner,
  { rack }: WheelMotion,
  envelope: Envelope,
  points: readonly Vec[],
  [low, high]: readonly [number, number],
): number[] {
  const linkage = buildLinkage(corner);
  const pose = new Float64Array(POSE_SIZE);
  const least = points.map(() => Number.POSITIVE_INFINITY);
  const origin = corner.wheelCentre;
  for (let j = 0; j < RACKS; j++) {
    const displacement = rack[0]! + ((rack.at(-1)! - rack[0]!) * j) / (RACKS - 1);
    const reach = findReach(linkage, displacement);
    pose[RACK] = displacement;
    pose[ARM_ANGLE] = linkage.home;
    for (let i = 0; i < TRAVELS; i++) {
      pose[TRAVEL] = low + ((high - low) * i) / (TRAVELS - 1);
      if (!moveTo(pose, linkage, reach)) continue;
      const centre: Vec = [pose[WHEEL]! - origin[0], pose[WHEEL + 1]! - origin[1], pose[WHEEL + 2]! - origin[2]];
      const spin: Vec = [pose[SPIN]!, pose[SPIN + 1]!, pose[SPIN + 2]!];
      points.forEach((point, p) => {
        const gap = gapTo(envelope, { centre, spin }, point);
        if (gap < least[p]!) least[p] = gap;
      });
    }
  }
  return least;
}
