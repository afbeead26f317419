import type { RollCentre } from '../curve/roll-centre.js';
import { rollCentreOfDriveway } from '../curve-sources/driveway-roll-centre.js';
import type { TriedSource } from '../curve-sources/solved-source.js';
import type { CornerSource } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { sweepTravel } from '../linkage/sweep.js';
import { InputError } from '../quantity/problem.js';

/** Between two of these it is a straight line to some hundredths of a millimetre. */
const STEP_MM = 5;
/** By how many standard uncertainties a source is put off either way to see what it does. */
const NUDGE = 0.1;

/**
 * The roll centre of a corner, with or without parts on it, and how its sources of doubt show in it: by central differences.
 *
 * @returns undefined of a source that has no links
 * @throws InputError with what is wrong with the source
 */
export function* rollCentre({ source }: { source: TriedSource }): Generator<undefined, RollCentre | undefined> {
  if ('problems' in source) throw new InputError(source.problems);
  const { links } = source;
  if (!links) return undefined;
  const { linkage, moved, motion } = links;
  const besides = rollCentreOfDriveway(source, links);
  const sources: readonly CornerSource[] = [...links.sources, ...besides.map((one) => one.source)];
  const [low, high] = [motion.travel[0]!, motion.travel.at(-1)!];
  const travel = Float64Array.from(stepsWithin(low, high));
  const heights = (of: Linkage) => sweepTravel(of, travel).rollCentreHeight;
  const height = heights(linkage);
  const parts = new Float64Array(travel.length * sources.length);
  for (const [s, one] of sources.entries()) {
    yield;
    const known = besides.find(({ source: added }) => added === one)?.partsAt(travel);
    if (known) {
      for (let i = 0; i < travel.length; i++) parts[i * sources.length + s] = known[i]!;
      continue;
    }
    const [up, down] = [NUDGE, -NUDGE].map((times) => heights(moved(one, times))) as [Float64Array, Float64Array];
    travel.forEach((_, i) => {
      const part = (up[i]! - down[i]!) / (2 * NUDGE);
      // Close to an end of reach one of them may be beyond its own: as just before.
      parts[i * sources.length + s] = Number.isNaN(part) ? (parts[(i - 1) * sources.length + s] ?? 0) : part;
    });
  }
  return { travel, height, sources: sources.map(({ id, label, dof }) => ({ id, label, dof })), parts };
}

function* stepsWithin(low: number, high: number): Generator<number> {
  for (let i = Math.ceil(low / STEP_MM); i * STEP_MM <= high; i++) yield i * STEP_MM;
}
