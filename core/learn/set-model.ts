import { partsDoubt } from '../curve-sources/parts-doubt.js';
import type { KnownCorner } from '../curve-sources/solve-corner.js';
import { linkageWith, movedWith, sourcesWith } from '../curve-sources/solve-parts.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { type CornerMoves, type CornerSource, movedBy } from '../linkage/corner-source.js';
import { sweepDerivatives } from '../linkage/derivatives.js';
import type { Linkage } from '../linkage/linkage.js';
import { sweepTravel } from '../linkage/sweep.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import type { ReadSet } from './read-set.js';

/** What of a corner, and of the parts on it, is to be found: unknowns of unit variance, 0 where nothing was read. */
export interface LinkUnknowns {
  known: KnownCorner;
  /** Of the corner first, then amounts of parts that were on in some set. */
  sources: readonly CornerSource[];
}

/** All that the sets know nothing of: the corner's own, and what each set's parts have besides. */
export function linkUnknowns(known: KnownCorner, sets: readonly ReadSet[]): LinkUnknowns {
  const all = new Map<string, CornerSource>();
  for (const source of [known.sources, ...sets.map(({ parts }) => sourcesWith(known, parts))].flat()) {
    if (!all.has(source.id)) all.set(source.id, source);
  }
  return { known, sources: [...all.values()] };
}

/** The corner with its unknowns where `at` says. */
export function cornerAt({ known, sources }: LinkUnknowns, at: ArrayLike<number>): Corner {
  return sources.reduce<Corner>(
    (corner, source, s) =>
      at[s] === 0 || source.isOfPartsAlone || source.part ? corner : movedBy(corner, source, at[s]),
    known.corner,
  );
}

/** What a linkage says at the travels of a set, degrees; undefined where it does not reach them, or does not close. */
export function curveOfSet(unknowns: LinkUnknowns, at: ArrayLike<number>, set: ReadSet): Float64Array | undefined {
  const linkage = unlessRefused(() => linkageOf(unknowns, at, set));
  if (!linkage) return undefined;
  const swept = sweepTravel(linkage, set.travels)[set.quantity];
  return swept.every(Number.isFinite) ? swept : undefined;
}

/** How that changes with each unknown of the links, degrees: a column each, one entry a travel. */
export function slopesOfSet(unknowns: LinkUnknowns, at: ArrayLike<number>, set: ReadSet): Float64Array[] {
  const { sources } = unknowns;
  const { parts, travels, quantity } = set;
  const corner = cornerAt(unknowns, at);
  if (parts.length === 0) {
    const { keys, [quantity]: by } = sweepDerivatives(corner, buildLinkage(corner, { isOpen: true }), travels);
    return sources.map(({ moves, isOfPartsAlone, part }) =>
      isOfPartsAlone || part ? new Float64Array(travels.length) : columnOf(moves, keys, by, travels.length),
    );
  }
  const own = new Map(sourcesWith(unknowns.known, parts).map((source) => [source.id, source]));
  const inSet = sources.filter(({ id }) => own.has(id)).map(({ id }) => own.get(id)!);
  // What parts change is counted from travel 0.
  const withZero = Float64Array.from([...new Set([0, ...travels])].sort((a, b) => a - b));
  const moved = (by: CornerMoves, times: number) => movedWith(corner, parts, set.alignment, by, times);
  const found = partsDoubt(corner, moved, linkageOf(unknowns, at, set), withZero, inSet)(quantity);
  return sources.map((source) => {
    const s = inSet.findIndex(({ id }) => id === source.id);
    return travels.map((travel) => (s < 0 ? 0 : found[withZero.indexOf(travel) * inSet.length + s]!));
  });
}

/** The linkage of a set: the corner, its parts by their amounts as they are taken to be. */
export function linkageOf(unknowns: LinkUnknowns, at: ArrayLike<number>, set: ReadSet): Linkage {
  const corner = cornerAt(unknowns, at);
  if (set.parts.length === 0) return buildLinkage(corner, { isOpen: true });
  return linkageWith(corner, set.parts, { alignment: set.alignment, isOpen: true });
}

function columnOf(
  moves: CornerMoves['moves'],
  keys: readonly string[],
  by: Float64Array,
  travels: number,
): Float64Array {
  const moved = keys.flatMap((key, k) =>
    (moves[key as keyof typeof moves] ?? []).map((mm, axis) => [3 * k + axis, mm] as const),
  );
  const column = new Float64Array(travels);
  for (let i = 0; i < travels; i++) {
    for (const [at, mm] of moved) column[i]! += by[3 * i * keys.length + at]! * mm;
  }
  return column;
}
