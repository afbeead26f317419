import loadMujoco from 'mujoco-js';

/*
 * The same joints in an engine that knows nothing of suspensions: MuJoCo, a general-purpose rigid-body engine (Apache-2.0), in
 * its WebAssembly build from the npm registry. Imports nothing from core/. Lengths in mm go in and come out; inside they are
 * scaled to be of order 1, which the engine's soft constraints need.
 */

export type Point = readonly [number, number, number];

/** Points of a corner as built, mm; where `carrierBall` or `rack` is given the engine has to close the links itself. */
export interface EnginePoints {
  lowerFront: Point;
  lowerRear: Point;
  ball: Point;
  tieInner: Point;
  tieOuter: Point;
  wheelCentre: Point;
  camber: number;
  toe: number;
  /** Strut. */
  top?: Point;
  low?: Point;
  /** Wishbone. */
  upperFront?: Point;
  upperRear?: Point;
  upperBall?: Point;
  /** The carrier's own place for its lower ball joint when a part has moved it; the arm's end stays at `ball`. */
  carrierBall?: Point;
  /** Rack displacement, mm to the left: the tie rod keeps its length. */
  rack?: number;
}

export interface EnginePose {
  /** Height of the wheel centre, mm. */
  wheelCentreZ: number;
  camber: number;
  toe: number;
}

const SCALE = 1 / 300;
const DEGREES = 180 / Math.PI;
const STIFF = 'solref="0.004 1" solimp="0.99999 0.99999 0.0001"';
const MOST_STEPS = 60_000;

const write = (point: Point): string => point.map((x) => (x * SCALE).toPrecision(17)).join(' ');
const from = (a: Point, b: Point): Point => [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
const inertia = '<inertial pos="0 0 0" mass="1" diaginertia="0.1 0.1 0.1"/>';
const site = (name: string, at: Point) => `<site name="${name}" pos="${write(at)}"/>`;
const hinge = (name: string, front: Point, rear: Point) =>
  `<joint name="${name}" type="hinge" axis="${write(from(rear, front))}" damping="20"/>`;
const connect = (one: string, other: string) => `<connect site1="${one}" site2="${other}" ${STIFF}/>`;

function model(points: EnginePoints): string {
  const { lowerFront, lowerRear, ball, tieInner, tieOuter, wheelCentre, rack = 0, carrierBall = ball } = points;
  const inner: Point = [tieInner[0], tieInner[1] + rack, tieInner[2]];
  const carrier = (origin: Point, joint: string, sites: string) =>
    `<body name="carrier" pos="${write(from(origin, wheelCentre))}">${joint}${inertia}
      ${site('steering', from(wheelCentre, tieOuter))}${sites}</body>`;
  const arm = (name: string, front: Point, rear: Point, end: Point, inside = '') =>
    `<body name="${name}" pos="${write(rear)}">${hinge(name, front, rear)}${inertia}${site(`${name}-end`, from(rear, end))}${inside}</body>`;
  const tie = `<body name="tie" pos="${write(inner)}"><joint type="ball" damping="1"/>${inertia}${site('tie-end', from(tieInner, tieOuter))}</body>`;
  const joined = [connect('tie-end', 'steering'), connect('lower-end', 'carrier-ball')];
  const ballSite = site('carrier-ball', from(wheelCentre, carrierBall));
  let bodies: string;
  if (points.top && points.low) {
    const { top, low } = points;
    const slide = `<joint type="slide" axis="${write(from(low, top))}" damping="20"/>`;
    bodies = `<body name="rod" pos="${write(top)}"><joint type="ball" damping="1"/>${inertia}${carrier(top, slide, ballSite)}</body>`;
  } else {
    const { upperFront, upperRear, upperBall } = points as Required<EnginePoints>;
    const upperSite = site('carrier-upper', from(wheelCentre, upperBall));
    bodies = `${carrier([0, 0, 0], '<freejoint/>', ballSite + upperSite)}${arm('upper', upperFront, upperRear, upperBall)}`;
    joined.push(connect('upper-end', 'carrier-upper'));
  }
  return `<mujoco><option gravity="0 0 0" timestep="0.002" integrator="implicitfast" solver="Newton" tolerance="1e-14" iterations="100"/>
    <worldbody>${arm('lower', lowerFront, lowerRear, ball)}${bodies}${tie}</worldbody>
    <equality>${joined.join('')}</equality>
    <actuator><position joint="lower" kp="2000"/></actuator></mujoco>`;
}

let loading: ReturnType<typeof loadMujoco> | undefined;

/** Drives the lower arm to each angle (radians from as built, by the right hand about rear → front) and reads the wheel off at rest. */
export async function engineSweep(points: EnginePoints, armAngles: readonly number[]): Promise<EnginePose[]> {
  loading ??= loadMujoco();
  const mujoco = await loading;
  mujoco.FS.writeFile('/m.xml', model(points));
  const built = mujoco.MjModel.loadFromXML('/m.xml');
  const data = new mujoco.MjData(built);
  const id = mujoco.mj_name2id(built, mujoco.mjtObj.mjOBJ_BODY.value, 'carrier');
  const spin: Point = [Math.tan(points.toe / DEGREES), 1, -Math.tan(points.camber / DEGREES)];
  const poses = armAngles.map((angle) => {
    (data.ctrl as Float64Array)[0] = angle;
    for (let step = 0; step < MOST_STEPS; step++) {
      mujoco.mj_step(built, data);
      if (step > 200 && step % 20 === 0 && Math.max(...(data.qvel as Float64Array).map(Math.abs)) < 1e-9) break;
    }
    const turn = (data.xmat as Float64Array).slice(9 * id, 9 * id + 9);
    const [x, y, z] = [0, 1, 2].map((row) => turn[3 * row]! * spin[0] + turn[3 * row + 1]! * spin[1] + turn[3 * row + 2]! * spin[2]) as [number, number, number];
    return {
      wheelCentreZ: (data.xpos as Float64Array)[3 * id + 2]! / SCALE,
      camber: Math.atan2(-z, y) * DEGREES,
      toe: Math.atan2(x, y) * DEGREES,
    };
  });
  data.delete();
  built.delete();
  return poses;
}
