import type { CurveData } from '../curve/curve-data.js';
import { rollCentreOfDriveway } from '../curve-sources/driveway-roll-centre.js';
import type { TriedSource } from '../curve-sources/solved-source.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { sweepTravel, type TravelSweep } from '../linkage/sweep.js';
import { interpolate } from '../math/interpolate.js';
import type { Source } from '../uncertainty/estimate.js';
import { type GeometryOutput, outputsOf, shownTravels } from './geometry.js';
import { linksOf } from './links-of.js';

/** The doubt of the outputs, at fewer travels: it changes slowly. */
export interface GeometryDoubt {
  sources: Source[];
  /** Ascending, mm. */
  travel: Float64Array;
  /** By output, travels × sources: what each cause adds, in standard uncertainties, mm or degrees. */
  parts: Partial<Record<GeometryOutput, Float64Array>>;
}

/** Of the travels, one in so many is asked for its doubt. */
const EVERY = 8;
/** By how many standard uncertainties a source is put off either way: angles and centres are smooth on this scale. */
const NUDGE = 0.1;

/** Some of them, with both ends and, where it is among them, the place where the source was measured. */
const thinned = (travel: Float64Array): Float64Array =>
  travel.filter((one, i) => i % EVERY === 0 || one === 0 || i === travel.length - 1);

/**
 * How far what `geometryOf` says can be trusted, by central differences (first order: GUM 5.1.2), a source a step. What a set of parts
 * shares with the bare links has the same sources, by id. Of a car measured in the driveway camber is known as its curve is, and the roll
 * centre as `rollCentre` says: both count what six measurements in front view leave open besides.
 *
 * @throws InputError as `geometryOf`
 */
export function* geometryDoubtSteps({ source }: { source: TriedSource }): Generator<undefined, GeometryDoubt> {
  const links = linksOf(source);
  const { linkage, moved, sources: own } = links;
  const ofDriveway = 'driveway' in source && source.driveway ? source.camber : undefined;
  const besides = 'problems' in source ? [] : rollCentreOfDriveway(source, links);
  const sources = [...own, ...besides.map((one) => one.source)];
  const travel = thinned(shownTravels(linkage));
  const here = sweepTravel(linkage, travel);
  const outputs = outputsOf(source, linkage);
  const parts: GeometryDoubt['parts'] = Object.fromEntries(
    outputs.map((output) => [output, new Float64Array(travel.length * sources.length)]),
  );
  const put = (output: GeometryOutput, s: number, partAt: (i: number) => number) => {
    for (let i = 0; i < travel.length; i++) parts[output]![i * sources.length + s] = partAt(i);
  };
  for (const [s, one] of sources.entries()) {
    if (ofDriveway) {
      const partAt = partOf(ofDriveway, one);
      put('camber', s, (i) => partAt(travel[i]!));
    }
    const known = besides.find(({ source: added }) => added === one)?.partsAt(travel);
    if (known) {
      put('rollCentreHeight', s, (i) => known[i]!);
      continue;
    }
    const [up, down] = [NUDGE, -NUDGE].map((times) => sweepTravel(moved(one, times), travel)) as [
      TravelSweep,
      TravelSweep,
    ];
    for (const output of outputs) {
      if (ofDriveway && output === 'camber') continue;
      put(output, s, (i) => {
        const [more, less, now] = [up[output][i]!, down[output][i]!, here[output][i]!];
        // Close to an end of reach one of them may be beyond its own.
        return (Number.isNaN(more) ? now - less : Number.isNaN(less) ? more - now : (more - less) / 2) / NUDGE;
      });
    }
    yield undefined;
  }
  return { sources: sources.map(({ id, label, dof }) => ({ id, label, dof })), travel, parts };
}

/** What a source adds to a curve over travel, by straight lines; nothing where it is none of the curve's. */
function partOf(curve: CurveData, { id }: CornerSource): (travel: number) => number {
  const s = curve.sources.findIndex((source) => source.id === id);
  if (s < 0 || curve.kind !== 'sampled') return () => 0;
  const { travel, parts, sources } = curve;
  const column = travel.map((_, i) => parts[i * sources.length + s]!);
  return (at) => interpolate(travel, column, at);
}
