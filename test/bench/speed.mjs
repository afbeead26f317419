import { lowering, tried } from '../../core/answers/from-source.ts';
import { loweringOf } from '../../core/answers/lowering.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { buildLinkage } from '../../core/linkage/build-linkage.ts';
import { hardPoint, hardPointKeys, withHardPoint } from '../../core/linkage/corner.ts';
import { sweepDerivatives } from '../../core/linkage/derivatives.ts';
import { ARM_ANGLE, BALL, POSE_SIZE, poseAt, SPIN, UPPER } from '../../core/linkage/pose.ts';
import { createTravelSweep, sweepTravel, sweepTravelInto } from '../../core/linkage/sweep.ts';
import { wishboneCorner } from '../core/linkage/wishbone-corner.ts';
import derived from '../reference/derived_strut_3d.json' with { type: 'json' };
import { independentStrut, TOLERANCE } from '../reference/independent-strut.ts';
import { abba, quantile, times } from './in-turn.mjs';

/*
 * How fast the strut solver is. Bundled and started by run.mjs. Nothing here passes or fails: a machine's speed is no property
 * of the project. Compare ratios, which come from interleaved runs; single times are for orientation.
 */
const POINTS = 201;
const points = derived.hard_points_mm;
const corner = {
  kind: 'strut',
  wheelCentre: points.wheel_centre,
  loadedRadius: points.wheel_radius,
  camber: derived.design_camber_deg,
  toe: derived.design_toe_in_deg,
  lowerArm: { front: points.arm_inner_front, rear: points.arm_inner_rear, ball: points.ball_joint },
  strut: { top: points.strut_top, low: points.point_on_strut_axis_fixed_to_knuckle },
  tieRod: { inner: points.tie_rod_inner, outer: points.tie_rod_outer },
};
const linkage = buildLinkage(corner);
const travels = Float64Array.from({ length: POINTS }, (_, i) => -80 + (160 * i) / (POINTS - 1));
const downward = travels.slice().reverse();
const out = createTravelSweep(POINTS);
const pose = new Float64Array(POSE_SIZE);
const angles = new Float64Array(5);
/** Results end here, so that no work is optimised away. An array: a plain number would be boxed anew each time. */
const sink = new Float64Array(1);

/** Position from the arm's angle, and the five angles of the wheel and the steering axis. */
function armDrivenSweep() {
  for (let i = 0; i < POINTS; i++) {
    pose[ARM_ANGLE] = linkage.home - 0.22 + (0.44 * i) / (POINTS - 1);
    poseAt(pose, linkage);
    angles[0] = Math.atan2(-pose[SPIN + 2], pose[SPIN + 1]);
    angles[1] = Math.asin(-pose[SPIN + 2]);
    angles[2] = Math.atan2(pose[SPIN], pose[SPIN + 1]);
    angles[3] = Math.atan2(pose[BALL] - pose[UPPER], pose[UPPER + 2] - pose[BALL + 2]);
    angles[4] = Math.atan2(pose[BALL + 1] - pose[UPPER + 1], pose[UPPER + 2] - pose[BALL + 2]);
    sink[0] += angles[0] + angles[4];
  }
}

function travelSweep() {
  sweepTravelInto(out, linkage, travels);
  sink[0] += out.camber[POINTS - 1];
}

// The peer goes up and down in turn: every pose starts from its neighbour, the first one too.
const peer = independentStrut(corner);
for (let travel = 0; travel > -80; travel -= 5) peer.solve(travel);
const peerAngles = new Float64Array(2);
let upward = true;
let unsolved = 0;
function peerSweep() {
  const order = upward ? travels : downward;
  upward = !upward;
  for (let i = 0; i < POINTS; i++) {
    if (!peer.solve(order[i])) unsolved++;
    peer.angles(peerAngles);
    sink[0] += peerAngles[0];
  }
}

const repeat = (task, count) => () => {
  for (let i = 0; i < count; i++) task();
};
const REPEATS = 40;
const QUADS = 60;

const armed = abba(repeat(armDrivenSweep, REPEATS), peerSweep, QUADS);
const swept = abba(repeat(travelSweep, REPEATS), peerSweep, QUADS);

const wishbone = buildLinkage(wishboneCorner);
const wishboneOut = createTravelSweep(POINTS);
const wishboneSweep = () => {
  sweepTravelInto(wishboneOut, wishbone, travels);
  sink[0] += wishboneOut.camber[POINTS - 1];
};
const besideStrut = abba(repeat(wishboneSweep, REPEATS), repeat(travelSweep, REPEATS), QUADS);

/** The peer of the derivatives: every coordinate nudged both ways and the corner solved again. */
const few = travels.filter((_, i) => i % 20 === 0);
function derivativesByDifferences() {
  for (const key of hardPointKeys(corner)) {
    for (let axis = 0; axis < 3; axis++) {
      for (const by of [-0.01, 0.01]) {
        const point = [...hardPoint(corner, key)];
        point[axis] += by;
        sink[0] += sweepTravel(buildLinkage(withHardPoint(corner, key, point)), few).camber[0];
      }
    }
  }
}
const derivativesExact = () => {
  sink[0] += sweepDerivatives(corner, linkage, few).camber[0];
};
const derived24 = abba(repeat(derivativesExact, 4), derivativesByDifferences, QUADS);
if (unsolved > 0) throw new Error(`The peer missed ${unsolved} poses: its times mean nothing.`);

/** Bytes that a task allocates (run.mjs makes the young heap so large that nothing is collected meanwhile), and that it keeps. */
function heapGrowth(task) {
  task();
  gc();
  const before = process.memoryUsage().heapUsed;
  task();
  const allocated = process.memoryUsage().heapUsed - before;
  gc();
  return { allocated, kept: process.memoryUsage().heapUsed - before };
}
const MILLION = Math.ceil(1e6 / POINTS);
const heap = [
  ['arm-driven', heapGrowth(repeat(armDrivenSweep, MILLION))],
  ['travel sweep', heapGrowth(repeat(travelSweep, MILLION))],
];

// A corner nobody asked about before: one point a little elsewhere each time. All 24 coordinates have a ±.
const newCorner = (i) => ({ ...EXAMPLE_CORNER, wheelCentre: [0, 738 + 0.01 * i, 302] });
const ask = (asked, drop) => {
  sink[0] += lowering({ source: { kind: 'corner', corner: asked }, drop, dropPlusMinus: 3 }).change.value;
};
const firstEver = times(() => ask(newCorner(-1), 30), 1)[0];
times((i) => ask(newCorner(i + 1000), 30), 30);
const cold = times((i) => ask(newCorner(i + 2000), 30), 100);
const { source } = tried({ source: { kind: 'corner', corner: newCorner(0) } });
const warm = times((i) => {
  sink[0] += loweringOf({ source, drop: i * 0.1, dropPlusMinus: 3 }).change.value;
}, 500);

const line = (name, ...cells) => console.log(name.padEnd(46), ...cells);
const nanoseconds = (ms) => `${((ms * 1e6) / POINTS / REPEATS).toFixed(0)} ns`;
const microseconds = (ms) => `${(ms * 1e3).toFixed(0)} µs`;
console.log(`Node ${process.version}, ${POINTS} travels, -80 to 80 mm; medians of ${QUADS} ABBA quads`);
console.log(
  `Peer: generic Newton on six equations, numerical central Jacobian, ml-matrix solve, step tolerance ${TOLERANCE}, ` +
    'warm-started from the neighbouring travel; camber and toe only',
);
line('peer, a pose', `${((armed.b * 1e3) / POINTS).toFixed(1)} µs`);
line(
  'arm-driven pose, position, rates, five angles',
  nanoseconds(armed.a),
  `${(armed.ratio * REPEATS).toFixed(0)} × faster`,
);
line('travel sweep, all outputs', microseconds(swept.a / REPEATS), `${(swept.ratio * REPEATS).toFixed(0)} × faster`);
line('  a pose', nanoseconds(swept.a));
line(
  'wishbone travel sweep, all outputs',
  microseconds(besideStrut.a / REPEATS),
  `${(1 / besideStrut.ratio).toFixed(2)} × the strut's time`,
);
line(
  'exact derivatives, 24 coordinates, a travel',
  `${((derived24.a * 1e3) / 4 / few.length).toFixed(1)} µs`,
  `${(derived24.ratio * 4).toFixed(0)} × faster than central differences`,
);
for (const [name, { allocated, kept }] of heap) {
  line(`heap over a million poses, ${name}`, `${allocated} bytes allocated, ${kept} kept`);
}
line('lowering answer, first ever', microseconds(firstEver));
line(
  'lowering answer, new corner, every point with ±',
  microseconds(quantile(cold, 0.5)),
  `p95 ${microseconds(quantile(cold, 0.95))}`,
);
line(
  'lowering answer, corner solved, new drop',
  microseconds(quantile(warm, 0.5)),
  `p95 ${microseconds(quantile(warm, 0.95))}`,
);
if (!Number.isFinite(sink[0])) throw new Error('A task gave no number.');
