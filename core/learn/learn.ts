import type { KnownCorner } from '../curve-sources/solve-corner.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { leastSquares } from '../math/least-squares.js';
import { upperInverse } from '../math/qr.js';
import { InputError } from '../quantity/problem.js';
import type { ReadSet } from './read-set.js';
import { cornerAt, curveOfSet, type LinkUnknowns, linkUnknowns, slopesOfSet } from './set-model.js';

/** An unknown of gauge, tape or passes, and where it shows. */
export interface PassUnknown {
  id: string;
  label: string;
  unit: number;
  /** By set: what one unit of it does to each reading, degrees. */
  columns: readonly (Float64Array | undefined)[];
}

/** Readings set against a corner: where its unknowns stand afterwards, and how well. */
export interface Estimated {
  unknowns: LinkUnknowns;
  sets: readonly ReadSet[];
  passes: readonly PassUnknown[];
  /** Of gauge, tape and passes first, then of the links; each in its standard uncertainties beforehand. */
  at: Float64Array;
  /** Columns of R⁻¹: the covariance of the unknowns is their sum of squares. */
  factor: Float64Array[];
  /** Of each reading, in standard deviations, set by set in the order of their rows: reading less model. */
  residuals: Float64Array;
  /** Derivatives of those by each unknown: a column each. */
  columns: Float64Array[];
  isConverged: boolean;
  iterations: number;
  /** Sum of squares: of readings, and of what the unknowns were moved by. */
  sum: number;
}

/**
 * The most likely corner: readings against the linkage, what is stated of its points against where they would have to lie. By Gauss and
 * Newton's method on the linkage's own derivatives; what gauge, tape and passes add is linear, by the slope of the curve that was read.
 *
 * @throws InputError, path `readings`, `cannot-reach`, where the links as measured do not reach the heights that were read
 */
export function estimate(known: KnownCorner, sets: readonly ReadSet[]): Estimated {
  const unknowns = linkUnknowns(known, sets);
  const passes = passUnknowns(sets);
  const count = passes.length + unknowns.sources.length;
  const n = sets.reduce((sum, { rows }) => sum + rows.n, 0);
  const links = (at: Float64Array) => at.subarray(passes.length);
  const aside = asideOfSets(unknowns, sets);

  const residuals = (at: Float64Array): Float64Array | undefined => {
    const out = new Float64Array(n + count);
    let from = 0;
    for (const [k, set] of sets.entries()) {
      const curve = curveOfSet(unknowns, links(at), set);
      if (!curve) return undefined;
      for (let i = 0; i < set.rows.n; i++) out[from + i] = set.values[i]! - curve[set.at[i]!]!;
      for (const [j, { columns }] of passes.entries()) addTo(out, from, columns[k], -at[j]!);
      aside[k]?.forEach((column, s) => {
        if (column) for (let i = 0; i < set.rows.n; i++) out[from + i]! -= column[set.at[i]!]! * links(at)[s]!;
      });
      for (let i = 0; i < set.rows.n; i++) out[from + i]! /= set.sd;
      from += set.rows.n;
    }
    out.set(at, n);
    return out;
  };

  const derivatives = (at: Float64Array) => withPriors(derivativesOf({ unknowns, sets, passes, aside }, links(at)), n);

  const start = new Float64Array(count);
  if (!residuals(start))
    throw new InputError([{ code: 'cannot-close', path: 'readings', value: undefined, other: 'travel' }]);
  const found = leastSquares({ residuals, derivatives }, start, { mostIterations: 40 });
  const columns = derivatives(found.at).map((column) => column.subarray(0, n));
  return {
    unknowns,
    sets,
    passes,
    at: found.at,
    factor: upperInverse(found.r, count),
    residuals: found.residuals.subarray(0, n),
    columns,
    isConverged: found.isConverged,
    iterations: found.iterations,
    sum: found.sum,
  };
}

/** What further readings are of: as what was estimated, before it is. */
export type Posed = Pick<Estimated, 'unknowns' | 'sets' | 'passes'> & {
  aside: readonly ((Float64Array | undefined)[] | undefined)[];
};

/** Derivatives of the readings' residuals by each unknown, a column each, where the links stand so. */
export function derivativesOf({ unknowns, sets, passes, aside }: Posed, links: Float64Array): Float64Array[] {
  const n = sets.reduce((sum, { rows }) => sum + rows.n, 0);
  const columns = Array.from({ length: passes.length + unknowns.sources.length }, () => new Float64Array(n));
  let from = 0;
  for (const [k, set] of sets.entries()) {
    for (const [j, { columns: own }] of passes.entries()) addTo(columns[j]!, from, own[k], -1 / set.sd);
    slopesOfSet(unknowns, links, set).forEach((slope, s) => {
      const column = columns[passes.length + s]!;
      const by = aside[k]?.[s] ?? slope;
      for (let i = 0; i < set.rows.n; i++) column[from + i] = -by[set.at[i]!]! / set.sd;
    });
    from += set.rows.n;
  }
  return columns;
}

/** The same with a row for what is known beforehand of each unknown: nothing but its unit variance. */
export const withPriors = (columns: readonly Float64Array[], n: number): Float64Array[] =>
  columns.map((own, j) => {
    const column = new Float64Array(n + columns.length);
    column.set(own);
    column[n + j] = 1;
    return column;
  });

/** Unknowns that show with parts alone are linear: what they do is taken where nothing was read. */
export const asideOfSets = (unknowns: LinkUnknowns, sets: readonly ReadSet[]): Posed['aside'] =>
  sets.map((set) => (set.parts.length > 0 ? asideOf(unknowns, set) : undefined));

/** What those unknowns do that show with parts alone; undefined of all others. */
function asideOf(unknowns: LinkUnknowns, set: ReadSet): (Float64Array | undefined)[] {
  const isAside = ({ isOfPartsAlone, part }: CornerSource) => isOfPartsAlone || part;
  if (!unknowns.sources.some(isAside)) return [];
  const slopes = slopesOfSet(unknowns, new Float64Array(unknowns.sources.length), set);
  return unknowns.sources.map((source, s) => (isAside(source) ? slopes[s] : undefined));
}

/** Every unknown of gauge, tape and passes, once. */
export function passUnknowns(sets: readonly ReadSet[]): PassUnknown[] {
  const all = new Map<string, { label: string; unit: number; columns: (Float64Array | undefined)[] }>();
  for (const [k, { nuisances }] of sets.entries()) {
    for (const { id, label, unit, column } of nuisances) {
      const one = all.get(id) ?? {
        label,
        unit,
        columns: new Array<Float64Array | undefined>(sets.length).fill(undefined),
      };
      one.columns[k] = column;
      all.set(id, one);
    }
  }
  return [...all].map(([id, one]) => ({ id, ...one }));
}

function addTo(out: Float64Array, from: number, column: Float64Array | undefined, times: number): void {
  column?.forEach((one, i) => {
    out[from + i]! += one * times;
  });
}

/** The corner where its unknowns stand. */
export const learntCornerOf = ({ unknowns, passes, at }: Estimated) => cornerAt(unknowns, at.subarray(passes.length));
