import fc from 'fast-check';
import { curvature, lengthsKept, noJumps, travelsHold } from '../core/linkage/properties.ts';
import { randomCorner } from '../core/linkage/random-corner.ts';
import { randomWishbone } from '../core/linkage/random-wishbone.ts';

/*
 * The linkage's properties over tens of thousands of random corners; the tests run some hundreds of the same. Bundled and
 * started by run.mjs. Throws on the first corner that breaks one.
 */
const RUNS = 20_000;
const JUMP_RUNS = 2_000;

const run = (name, corners, check, numRuns) => {
  const started = performance.now();
  fc.assert(fc.property(corners, check), { seed: 20260, numRuns, endOnFailure: true });
  console.log(
    `${name.padEnd(52)} ${String(numRuns).padStart(6)} corners  ${((performance.now() - started) / 1000).toFixed(1)} s`,
  );
};

for (const [kind, corners] of [
  ['strut', randomCorner],
  ['wishbone', randomWishbone],
]) {
  run(`${kind}: lengths kept, carrier rigid`, corners, lengthsKept, RUNS);
  run(`${kind}: static at 0, any order, ends where it says`, corners, travelsHold, RUNS);
  run(`${kind}: no jump up to the ends of reach`, corners, noJumps, JUMP_RUNS);
}
run('wishbone: camber curve bends downward', randomWishbone, (corner) => curvature(corner) < 0, RUNS);
