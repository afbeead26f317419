import type { FittedWheel } from '../wheel/fitted-wheel.js';
import { type Envelope, Poses } from '../wheel/gaps.js';
import { type Placed, placed } from '../wheel/placed.js';
import { type Track, tracksOf } from '../wheel/track.js';
import { aheadOf, type WheelMotion } from '../wheel/wheel-motion.js';
import type { ClearanceRequest } from './clearance-request.js';
import { envelopeOf } from './envelope-of.js';

/** Where places lie beside the wheel's axis, whatever new wheel is on. */
interface BesideWheels {
  /** The old wheel, by which they were measured. */
  before: Envelope;
  poses: Poses;
  all: readonly Placed[];
  /** Through the motion as asked about, and straight ahead as they were measured. */
  tracks: readonly Track[];
  old: readonly Track[];
}

/** Of a motion, the last that was asked: a new wheel, its offset, a drop and a margin change nothing of it. */
const last = new WeakMap<WheelMotion, { key: string; found: BesideWheels }>();

/** @param motion that of the request, or of it straight ahead; a travel a step where it is not known yet */
export function* besideWheels(
  request: ClearanceRequest,
  motion: WheelMotion,
  wheel: FittedWheel,
): Generator<undefined, BesideWheels> {
  const { places, measuredAt = 0, camberBy = 0, isLeft } = request;
  const key = JSON.stringify([places, measuredAt, camberBy, isLeft, request.before]);
  const known = last.get(motion);
  if (known?.key === key) return known.found;
  const before = envelopeOf(wheel, 0);
  const poses = new Poses(motion, camberBy);
  // Where things were measured the wheels stood as they did before.
  const asMeasured = new Poses(aheadOf(motion));
  const all = places.map((place) => placed(place, before, asMeasured, measuredAt, isLeft));
  const tracks = yield* tracksOf(all, poses);
  const old = yield* tracksOf(all, asMeasured);
  const found = { before, poses, all, tracks, old };
  last.set(motion, { key, found });
  return found;
}
