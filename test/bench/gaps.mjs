import { LatheGeometry, Vector2, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { envelopeOf } from '../../core/answers/envelope-of.ts';
import { wheelMotion } from '../../core/answers/wheel-motion.ts';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.ts';
import { EXAMPLE_FIT } from '../../core/document/example-fit.ts';
import { compareWheels } from '../../core/wheel/compare-wheels.ts';
import { gapTable } from '../../core/wheel/gap-table.ts';
import { Poses, placed } from '../../core/wheel/gaps.ts';
import { abba, quantile } from './abba.mjs';

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

const motion = at101(wheelMotion({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, lock: EXAMPLE_FIT.lock }));
const poses = new Poses(motion);
const wheels = compareWheels(EXAMPLE_FIT.before, EXAMPLE_FIT.after);
const before = envelopeOf(wheels.before, 0);
const envelope = envelopeOf(wheels.after, wheels.plane);
// The example's places, and others round the clock, invented.
const all = Array.from({ length: PLACES }, (_, i) => {
  const given = EXAMPLE_FIT.places[i];
  const at = { clock: (i * 5) % 12, distance: 280 + 5 * i, out: 30 - 10 * i };
  const fixedTo = ['body', 'carrier', 'tieRod', 'lowerArm', 'between'][i % 5];
  return placed(given ?? { name: 'invented', fixedTo, is: 'chassis', at }, before, poses, 0, true);
});
const racks = [...motion.rack.keys()];
const sink = new Float64Array(1);

let table;
const slices = [];
function ours() {
  const steps = gapTable(all, envelope, poses, racks);
  for (;;) {
    const start = performance.now();
    const step = steps.next();
    slices.push(performance.now() - start);
    if (step.done) {
      table = step.value;
      sink[0] += table.gap[0][0];
      return;
    }
  }
}

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
      const { centre, spin } = poses.at(travel, rack);
      // Into the mesh's frame: its axis is y. Any two directions across the spin axis serve.
      const size = Math.hypot(spin[1], spin[2]);
      const f = [0, spin[2] / size, -spin[1] / size];
      const e = [spin[1] * f[2] - spin[2] * f[1], spin[2] * f[0] - spin[0] * f[2], spin[0] * f[1] - spin[1] * f[0]];
      all.forEach((one, p) => {
        const [x, y, z] = one.at(poses, travel, rack);
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
    const gap = table.gap[p][i];
    if (Number.isNaN(gap)) return;
    compared++;
    furthest = Math.max(furthest, Math.abs(Math.abs(gap) - distance));
  });
});
// Without the runs that warm up.
slices.splice(0, 3 * (TRAVELS + 1));
slices.sort((x, y) => x - y);
const count = PLACES * TRAVELS * racks.length;
const ms = (x) => `${x.toFixed(x < 10 ? 2 : 0)} ms`;
console.log(`${PLACES} places × ${TRAVELS} travels × ${racks.length} racks, ${count} distances, ${QUADS} quads`);
console.log(`whole table, all in one        ${ms(a)}   (${((1e6 * a) / count).toFixed(0)} ns a distance)`);
console.log(
  `slice: median, 99 %, longest   ${ms(quantile(slices, 0.5))}, ${ms(quantile(slices, 0.99))}, ${ms(slices.at(-1))}`,
);
console.log(`three-mesh-bvh, ${lathe.index.count / 3} triangles  ${ms(b)}`);
console.log(`peer ÷ ours, within a quad     ${ratio.toFixed(1)}`);
console.log(`largest disagreement           ${furthest.toFixed(3)} mm over ${compared} distances, sign aside`);

/** The same motion at 101 travels, evenly over its range. */
function at101(found) {
  const from = new Poses(found);
  const [low, high] = [found.travel[0], found.travel.at(-1)];
  const travel = Float64Array.from({ length: TRAVELS }, (_, i) => low + ((high - low) * i) / (TRAVELS - 1));
  const vectors = (of) =>
    Float64Array.from([...travel].flatMap((t) => [...found.rack.keys()].flatMap((rack) => [...of(t, rack)])));
  return {
    ...found,
    travel,
    centre: vectors((t, rack) => from.at(t, rack).centre),
    spin: vectors((t, rack) => from.at(t, rack).spin),
    joints: {
      ...found.joints,
      ball: vectors((t, rack) => from.joint('ball', t, rack)),
      tieOuter: vectors((t, rack) => from.joint('tieOuter', t, rack)),
    },
  };
}
