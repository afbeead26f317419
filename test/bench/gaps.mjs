import { LatheGeometry, Vector2, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { envelopeOf } from '../../core/answers/envelope-of.ts';
import { wheelMotion } from '../../core/answers/from-source.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { EXAMPLE_FITMENT } from '../../core/document/example-fitment.ts';
import { compareWheels } from '../../core/wheel/compare-wheels.ts';
import { Poses } from '../../core/wheel/gaps.ts';
import { placed } from '../../core/wheel/placed.ts';
import { GapSurface } from '../../core/wheel/tightest.ts';
import { gapAtSample, tracksOf } from '../../core/wheel/track.ts';
import { abba, quantile } from './in-turn.mjs';

/*
 * How long gaps of many places over all travel and steering take, on the thread of the page. Bundled and started by run.mjs.
 * Nothing here passes or fails. The peer is three-mesh-bvh, which finds the nearest point of a mesh by a tree of boxes; it is
 * asked about a mesh of the same outline turned about its axis, in the same poses. Its distances have no sign.
 */
const PLACES = 24;
const TRAVELS = 101;
const PER_ARC = 24;
const ROUND = 360;
const QUADS = 7;

const motion = at101(wheelMotion({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, lock: EXAMPLE_FITMENT.lock }));
const poses = new Poses(motion);
const wheels = compareWheels(EXAMPLE_FITMENT.before, EXAMPLE_FITMENT.after);
const before = envelopeOf(wheels.before, 0);
const envelope = envelopeOf(wheels.after, wheels.plane);
// The example's places, and others round the clock, invented.
const all = Array.from({ length: PLACES }, (_, i) => {
  const given = EXAMPLE_FITMENT.places[i];
  const at = { clock: (i * 5) % 12, distance: 280 + 5 * i, out: 30 - 10 * i };
  const fixedTo = ['body', 'carrier', 'tieRod', 'lowerArm', 'between'][i % 5];
  return placed(given ?? { name: 'invented', fixedTo, is: 'chassis', at }, before, poses, 0, true);
});
const racks = [...motion.rack.keys()];
const sink = new Float64Array(1);

let tracks;
const gaps = all.map(() => new Float64Array(TRAVELS * racks.length));
const slices = [];
/** Every gap of the table, a travel a slice. */
function* table() {
  tracks = yield* tracksOf(all, poses);
  for (let i = 0; i < TRAVELS; i++) {
    tracks.forEach((track, p) => {
      for (const j of racks) {
        const index = i * racks.length + j;
        gaps[p][index] = gapAtSample(track, envelope, index);
      }
    });
    yield;
  }
  sink[0] += gaps[0][0];
}
/** What the answer makes of it: the smallest over the steering at every travel, and the tightest spot of all, between the samples. */
function* between() {
  const surfaces = tracks.map((track) => new GapSurface(track, envelope));
  for (const travel of motion.travel) {
    for (const surface of surfaces) sink[0] += surface.leastAt(travel).gap;
    yield;
  }
  for (const surface of surfaces) sink[0] += (yield* surface.tightest(-60, 60)).gap;
}
const run = (steps) => {
  for (;;) {
    const start = performance.now();
    const step = steps.next();
    slices.push(performance.now() - start);
    if (step.done) return;
  }
};
const ours = () => run(table());

const outline = envelope.section.outline(PER_ARC).map(([u, r]) => new Vector2(r, u));
const mirrored = outline.map(({ x, y }) => new Vector2(x, -y)).reverse();
const lathe = new LatheGeometry([...mirrored, ...outline], ROUND);
const mesh = new MeshBVH(lathe);
const peerGap = all.map(() => new Float64Array(TRAVELS * racks.length));

const local = new Vector3();
const nearest = {};
function peer() {
  motion.travel.forEach((travel, i) => {
    for (const rack of racks) {
      const { centre, spin } = poses.at(travel, motion.toe[rack]);
      // Into the mesh's frame: its axis is y. Any two directions across the spin axis serve.
      const size = Math.hypot(spin[1], spin[2]);
      const f = [0, spin[2] / size, -spin[1] / size];
      const e = [spin[1] * f[2] - spin[2] * f[1], spin[2] * f[0] - spin[0] * f[2], spin[0] * f[1] - spin[1] * f[0]];
      all.forEach((one, p) => {
        const [x, y, z] = one.at(poses, travel, motion.toe[rack]);
        const [dx, dy, dz] = [x - centre[0], y - centre[1], z - centre[2]];
        local.set(
          dx * e[0] + dy * e[1] + dz * e[2],
          dx * spin[0] + dy * spin[1] + dz * spin[2] - envelope.shift,
          dx * f[0] + dy * f[1] + dz * f[2],
        );
        peerGap[p][i * racks.length + rack] = mesh.closestPointToPoint(local, nearest).distance;
      });
    }
  });
  sink[0] += peerGap[0][0];
}

const { a, b, ratio } = abba(ours, peer, QUADS);
let furthest = 0;
let compared = 0;
all.forEach((_, p) => {
  peerGap[p].forEach((distance, i) => {
    const gap = gaps[p][i];
    if (Number.isNaN(gap)) return;
    compared++;
    furthest = Math.max(furthest, Math.abs(Math.abs(gap) - distance));
  });
});
// Without the runs that warm up.
slices.splice(0, 3 * (2 * TRAVELS + 1));
slices.sort((x, y) => x - y);
const tableSlices = [...slices];
const rounds = Array.from({ length: 9 }, () => {
  const start = performance.now();
  run(between());
  return performance.now() - start;
}).sort((x, y) => x - y);
const betweenSlices = slices.splice(tableSlices.length).sort((x, y) => x - y);
const count = PLACES * TRAVELS * racks.length;
const told = (sorted) => [quantile(sorted, 0.5), quantile(sorted, 0.99), sorted.at(-1)].map(ms).join(', ');
const ms = (x) => `${x.toFixed(x < 10 ? 2 : 0)} ms`;
console.log(`${PLACES} places × ${TRAVELS} travels × ${racks.length} racks, ${count} distances, ${QUADS} quads`);
console.log(`whole table, all in one        ${ms(a)}   (${((1e6 * a) / count).toFixed(0)} ns a distance)`);
console.log(`slice: median, 99 %, longest   ${told(tableSlices)}`);
console.log(`between its samples            ${ms(quantile(rounds, 0.5))}`);
console.log(`slice: median, 99 %, longest   ${told(betweenSlices)}`);
console.log(`three-mesh-bvh, ${lathe.index.count / 3} triangles  ${ms(b)}`);
console.log(`peer ÷ ours, within a quad     ${ratio.toFixed(1)}`);
console.log(`largest disagreement           ${furthest.toFixed(3)} mm over ${compared} distances, sign aside`);

/** The same motion at 101 travels, evenly over its range. */
function at101(found) {
  const from = new Poses(found);
  const [low, high] = [found.travel[0], found.travel.at(-1)];
  const travel = Float64Array.from({ length: TRAVELS }, (_, i) => low + ((high - low) * i) / (TRAVELS - 1));
  const vectors = (of) =>
    Float64Array.from([...travel].flatMap((t) => [...found.toe].flatMap((toe) => [...of(t, toe)])));
  return {
    ...found,
    travel,
    centre: vectors((t, toe) => from.at(t, toe).centre),
    spin: vectors((t, toe) => from.at(t, toe).spin),
    joints: {
      ...found.joints,
      ball: vectors((t, toe) => from.joint('ball', t, toe)),
      tieOuter: vectors((t, toe) => from.joint('tieOuter', t, toe)),
    },
  };
}
