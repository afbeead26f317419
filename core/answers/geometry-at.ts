import { causeOf } from '../linkage/causes.js';
import { interpolate } from '../math/interpolate.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import type { GeometryAnswer, GeometryOutput } from './geometry.js';
import type { GeometryDoubt } from './geometry-doubt.js';
import type { Doubted } from './lowering.js';
import type { MeasuredHeights } from './re-zero.js';

/** What links do over travel from stock height, with its doubt where that is known. */
export interface LinksOverTravel {
  /** What the links do: mm, and degrees. */
  curves: GeometryAnswer;
  /** How far it is known, once that was worked out. */
  doubt?: GeometryDoubt | undefined;
}

/** A value, and what each cause of doubt adds to it, by the cause's id. */
interface Told {
  value: number;
  parts: Map<string, { source: Source; part: number }>;
}

/**
 * The same counted from stock height, where the links were measured on a car that stood elsewhere. Where nobody said what camber is, it
 * is counted from there: only its changes are known.
 */
export function linksFromStock(
  { curves, doubt }: LinksOverTravel,
  { measuredAt = 0, camberReadLower = 0 }: MeasuredHeights,
): LinksOverTravel {
  const { driveway, outputs } = curves;
  const isChangeOnly = driveway !== undefined && driveway.camber === undefined;
  const moved = (travel: Float64Array) => (measuredAt === 0 ? travel : travel.map((one) => one + measuredAt));
  const camberAt = (travel: number) => interpolate(curves.travel, outputs.camber!, travel);
  const by = isChangeOnly
    ? -camberAt(-measuredAt)
    : camberReadLower === 0
      ? 0
      : camberAt(0) - camberAt(camberReadLower);
  return {
    curves: {
      ...curves,
      travel: moved(curves.travel),
      outputs: by === 0 ? outputs : { ...outputs, camber: outputs.camber!.map((camber) => camber + by) },
      motion: { ...curves.motion, travel: moved(curves.motion.travel) },
      reach: { ...curves.reach, droop: curves.reach.droop + measuredAt, bump: curves.reach.bump + measuredAt },
    },
    doubt: doubt && { ...doubt, travel: moved(doubt.travel) },
  };
}

/** Between its travels, a few millimetres apart, by straight lines: off by some ten thousandths of a degree, and hundredths of a millimetre. */
function told({ curves, doubt }: LinksOverTravel, output: GeometryOutput, travel: number): Told {
  const { [output]: values = new Float64Array(curves.travel.length).fill(Number.NaN) } = curves.outputs;
  const { travel: known } = curves;
  const isKnown = travel >= known[0]! && travel <= known[known.length - 1]!;
  const parts: Told['parts'] = new Map();
  const of = doubt?.parts[output];
  doubt?.sources.forEach((source, s) => {
    const column = doubt.travel.map((_, i) => of?.[i * doubt.sources.length + s] ?? 0);
    parts.set(source.id, { source, part: interpolate(doubt.travel, column, travel) });
  });
  return { value: isKnown ? interpolate(known, values, travel) : Number.NaN, parts };
}

/** What one is less another; what both share cancels. */
function less(a: Told, b: Told): Told {
  const parts = new Map(a.parts);
  for (const [id, { source, part }] of b.parts) {
    parts.set(id, { source, part: (parts.get(id)?.part ?? 0) - part });
  }
  return { value: a.value - b.value, parts };
}

function doubted({ value, parts }: Told): Doubted {
  const all = [...parts.values()];
  if (all.length === 0) return { value };
  const estimate = { value, parts: Float64Array.from(all, ({ part }) => part) };
  return {
    value,
    plusMinus: plusMinus95(
      estimate,
      all.map(({ source }) => source),
    ),
  };
}

/** An output at a travel from stock height; NaN where it is not known. The ± is 95 %. */
export const outputAt = (links: LinksOverTravel, output: GeometryOutput, travel: number): Doubted =>
  doubted(told(links, output, travel));

/** What an output changes from one travel to another. */
export const outputChange = (links: LinksOverTravel, output: GeometryOutput, to: number, from: number): Doubted =>
  doubted(less(told(links, output, to), told(links, output, from)));

/** A value, and what its ± is made of, largest first: points by their names, not by their coordinates. */
export interface Explained extends Doubted {
  contributions: Contribution[];
}

function explained(of: Told): Explained {
  const all = [...of.parts.values()];
  const estimate = { value: of.value, parts: Float64Array.from(all, ({ part }) => part) };
  const sources = all.map(({ source }) => source);
  return { ...doubted(of), contributions: contributions(estimate, sources, causeOf) };
}

/** What an output changes from one travel to another, and why it is not known better. */
export const explainedChange = (links: LinksOverTravel, output: GeometryOutput, to: number, from: number): Explained =>
  explained(less(told(links, output, to), told(links, output, from)));

/** How much more an output is with parts than without. What both share cancels. */
export const outputDifference = (
  links: LinksOverTravel,
  bare: LinksOverTravel,
  output: GeometryOutput,
  travel: number,
): Explained => explained(less(told(links, output, travel), told(bare, output, travel)));

/** How much more an output changes from one travel to another with parts than without. */
export const changeDifference = (
  links: LinksOverTravel,
  bare: LinksOverTravel,
  output: GeometryOutput,
  to: number,
  from: number,
): Explained => {
  const change = (of: LinksOverTravel) => less(told(of, output, to), told(of, output, from));
  return explained(less(change(links), change(bare)));
};
