import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner, Vector3 } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';

/** Uniform on 0 to 1, the same for the same seed. mulberry32, a public-domain 32-bit generator. */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Standard normal, by the Box–Muller transform. */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Travel both ways, mm, that every car allows. */
export const SURE_TRAVEL_MM = 70;
/** What kind of car is drawn: ranges of caster, degrees, and of bump steer, degrees of toe-in per mm of bump. */
export interface CarKind {
  /** Of the steering axis, ball joint to top mount; or of the damper's axis in its place. */
  caster: Range;
  isOfDamper?: true;
  /** At ride height, aimed at by the height of the inner tie rod end. */
  bumpSteer: Range;
  /** Bump steer is drawn as a size, and its sign by lot. */
  eitherWay?: true;
  /** A car that steers more than this at ride height is drawn again, degrees per mm. */
  most: number;
}

type Range = readonly [least: number, most: number];

/** A strut of any car, for studies that caster is nothing to. Common practice, no source. */
const ANY: CarKind = { caster: [1, 7], isOfDamper: true, bumpSteer: [-0.008, 0.004], most: 0.015 };
/** A road car, of which an alignment sheet would tell caster. Common practice, no source. */
export const ORDINARY: CarKind = { caster: [3, 9], bumpSteer: [-0.008, 0.004], most: 0.015 };
/** As much bump steer as the answers say they cover. */
export const STEERING: CarKind = { caster: [3, 9], bumpSteer: [-0.012, 0.012], most: 0.015 };
/** Beyond what is assumed of a car whose caster nobody gave. */
export const MUCH_CASTER: CarKind = { ...ORDINARY, caster: [8, 13] };
/** Beyond what is assumed of a car whose bump steer nobody gave. */
export const MUCH_BUMP_STEER: CarKind = { caster: [3, 9], bumpSteer: [0.015, 0.03], eitherWay: true, most: 0.032 };

const DEG = Math.PI / 180;

/**
 * A three-dimensional front strut of a plausible road car, left corner. Every figure is uniform in its range and drawn by itself
 * unless said otherwise. Ranges: common practice, no source.
 *
 * | what                                                              | range                                     |
 * | ----------------------------------------------------------------- | ----------------------------------------- |
 * | loaded radius (= wheel-centre height)                             | 280 to 345 mm                             |
 * | half track at the wheel centre                                    | 690 to 810 mm                             |
 * | static camber, toe                                                | −2 to +0.5°, −0.2 to +0.2°                |
 * | ball joint: inboard of, below, ahead of the wheel centre          | 20 to 75, 95 to 150, −15 to 15 mm         |
 * | lower arm's length, in the transverse plane of the ball joint     | 300 to 420 mm                             |
 * | arm's pivot above the ball joint                                  | −25 to 45 mm                              |
 * | pivot axis: angle to x in plan, in side view                      | −4 to 4°, −4 to 4°                        |
 * | pivots: front one ahead of the ball joint, distance to the rear   | 0 to 50, 250 to 350 mm                    |
 * | damper's lean in front view                                       | 3 to 14°                                  |
 * | ball joint outboard of the damper's axis                          | 0 to 40 mm                                |
 * | damper's axis ahead of the ball joint, at its height              | −15 to 15 mm                              |
 * | top mount above the wheel centre                                  | 470 to 590 mm                             |
 * | caster of the steering axis, or of the damper’s                   | of the kind; ordinary 3 to 9°             |
 * | steering arm: behind the ball joint (3 of 4), else ahead of it    | 100 to 150 mm                             |
 * | outer tie rod end above the ball joint; inboard of it when behind, outboard when ahead | 30 to 120; 0 to 50 mm |
 * | inner tie rod end outboard of the arm's pivot                     | −40 to 60 mm                              |
 * | bump steer aimed at by the height of the inner tie rod end        | of the kind; ordinary 0.008° toe-out to 0.004° toe-in per mm |
 *
 * A car that does not close, moves less than 70 mm either way, or steers at ride height beyond its kind is drawn again.
 */
export function randomCar(random: () => number, kind: CarKind = ANY): StrutCorner {
  for (;;) {
    const corner = draw(random, kind);
    try {
      const linkage = buildLinkage(corner);
      const { reach } = linkage;
      if (reach.bump < SURE_TRAVEL_MM || reach.droop > -SURE_TRAVEL_MM) continue;
      const { toeRate } = sweepTravel(linkage, [0]);
      const steers = Math.abs(toeRate[0]!);
      if (steers <= kind.most && !(kind.eitherWay && steers < kind.bumpSteer[0])) return corner;
    } catch {
      // Does not close.
    }
  }
}

function draw(random: () => number, kind: CarKind): StrutCorner {
  const between = (least: number, most: number) => least + (most - least) * random();
  const loadedRadius = between(280, 345);
  const wheelCentre: Vector3 = [0, between(690, 810), loadedRadius];
  const ball: Vector3 = [between(-15, 15), wheelCentre[1] - between(20, 75), wheelCentre[2] - between(95, 150)];

  const armLength = between(300, 420);
  const rise = between(-25, 45);
  const pivot: Vector3 = [ball[0], ball[1] - Math.sqrt(armLength ** 2 - rise ** 2), ball[2] + rise];
  const inPlan = Math.tan(between(-4, 4) * DEG);
  const inSide = Math.tan(between(-4, 4) * DEG);
  const along = (x: number): Vector3 => [pivot[0] + x, pivot[1] + x * inPlan, pivot[2] + x * inSide];
  const ahead = between(0, 50);
  const front = along(ahead);
  const rear = along(ahead - between(250, 350));

  // The damper's axis passes the ball joint's height here.
  const lean = Math.tan(between(3, 14) * DEG);
  const offset = between(0, 40) * Math.sqrt(1 + lean * lean);
  const foot: Vector3 = [ball[0] + between(-15, 15), ball[1] - offset, ball[2]];
  const caster = () => Math.tan(between(...kind.caster) * DEG);
  const ofDamper = kind.isOfDamper ? caster() : undefined;
  const topZ = wheelCentre[2] + between(470, 590);
  const topX = (ofDamper === undefined ? ball : foot)[0] - (ofDamper ?? caster()) * (topZ - ball[2]);
  const rearward = (foot[0] - topX) / (topZ - foot[2]);
  const onAxis = (z: number): Vector3 => [foot[0] - rearward * (z - foot[2]), foot[1] - lean * (z - foot[2]), z];
  const top = onAxis(topZ);
  const low = onAxis(wheelCentre[2] + between(120, 200));

  // Without bump steer a rod points, in front view, at the carrier's instant centre: where the arm's line meets the line
  // through the top mount across the damper's axis.
  const isBehind = random() < 0.75;
  const steeringArm = between(100, 150);
  const outer: Vector3 = [
    ball[0] + (isBehind ? -steeringArm : steeringArm),
    ball[1] + (isBehind ? -1 : 1) * between(0, 50),
    ball[2] + between(30, 120),
  ];
  const innerY = pivot[1] + between(-40, 60);
  const armSlope = (ball[2] - pivot[2]) / (ball[1] - pivot[1]);
  const centreY = (top[2] - pivot[2] + armSlope * pivot[1] - lean * top[1]) / (armSlope - lean);
  const centreZ = pivot[2] + armSlope * (centreY - pivot[1]);
  const rodSlope = (outer[2] - centreZ) / (outer[1] - centreY);
  const length = outer[1] - innerY;
  const aimed = between(...kind.bumpSteer) * (kind.eitherWay && random() < 0.5 ? -1 : 1);
  const steer = aimed * DEG * steeringArm * length;
  const inner: Vector3 = [
    outer[0] + between(-10, 10),
    innerY,
    outer[2] - rodSlope * length + (isBehind ? steer : -steer),
  ];
  return {
    kind: 'strut',
    wheelCentre,
    loadedRadius,
    camber: between(-2, 0.5),
    toe: between(-0.2, 0.2),
    lowerArm: { front, rear, ball },
    strut: { top, low },
    tieRod: { inner, outer },
  };
}
