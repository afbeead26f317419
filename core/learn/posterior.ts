import type { KnownCorner } from '../curve-sources/solve-corner.js';
import type { HardPointKey, Vector3 } from '../linkage/corner.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { choleskyOfSum } from '../math/qr.js';
import { type Estimated, learntCornerOf } from './learn.js';

/** What is left of a source's share below which it is rounding, in standard uncertainties beforehand. */
const NOTHING = 1e-6;

/** What one unknown has left open of the links: by how much each source of the corner is off with it, in its own standard uncertainties. */
export interface LeftOpen {
  id: string;
  label: string;
  dof: number;
  column: ArrayLike<number>;
}

/** Of what was estimated, what its covariance is made of. */
export type Covered = Pick<Estimated, 'factor' | 'passes' | 'unknowns' | 'columns' | 'sets'>;

/**
 * What readings leave open of a corner, by its causes. The error of the estimate is Σ·(Jᵀε − θ): each unknown θ, of gauge, tape and
 * passes as of the links, adds its column of the covariance Σ, and the scatter ε of the readings what is left; together they are Σ again.
 */
export function leftOpen({ factor, passes, unknowns, columns, sets }: Covered): LeftOpen[] {
  const first = passes.length;
  const size = unknowns.sources.length;
  const count = first + size;
  // Σ of the links against all.
  const covariance = (i: number, j: number) => factor.reduce((sum, column) => sum + column[first + i]! * column[j]!, 0);
  const rows = Array.from({ length: size }, (_, i) =>
    Float64Array.from({ length: count }, (__, j) => covariance(i, j)),
  );
  const column = (j: number) => Float64Array.from(rows, (row) => -row[j]!);
  const isThere = ({ column: of }: LeftOpen) => Math.hypot(...Array.from(of)) > NOTHING;
  const ofLinks = unknowns.sources.map(
    ({ id, label, dof }, s): LeftOpen => ({ id, label, dof, column: column(first + s) }),
  );
  // Zeros, heights and drifts of single passes are scatter to a reader, and average out with it.
  const isShared = (id: string) => SHARED.includes(id) || id.endsWith('.zeroHeight');
  const shared = passes.flatMap(({ id, label }, j): LeftOpen[] =>
    isShared(id) ? [{ id: `readings.${id}`, label, dof: Number.POSITIVE_INFINITY, column: column(j) }] : [],
  );
  const n = columns[0]?.length ?? 0;
  const parts = [
    ...passes.flatMap(({ id }, j) => (isShared(id) ? [] : [column(j)])),
    ...Array.from({ length: n }, (_, r) =>
      Float64Array.from(rows, (row) => columns.reduce((sum, of, j) => sum + row[j]! * of[r]!, 0)),
    ),
  ];
  const scatter = choleskyOfSum(parts, size);
  const dof = Math.min(...sets.map((set) => set.dof));
  const scattered = Array.from(
    { length: size },
    (_, k): LeftOpen => ({
      id: `readings.scatter.${k}`,
      label: 'scatter of readings',
      dof,
      column: Float64Array.from({ length: size }, (__, i) => scatter[i * size + k]!),
    }),
  );
  return [...ofLinks, ...shared, ...scattered].filter(isThere);
}

const SHARED = ['drift', 'gaugeScale', 'tapeScale', 'toe.drift', 'toe.gaugeScale'];

/**
 * The corner as readings leave it: where its points most likely are, and what moves them together. As any other known corner, but for
 * fewer ways to be wrong in.
 *
 * @param widened more than 1: readings and corner contradict each other, and what was not known before is so many times larger instead
 */
export function knownAfterwards(estimated: Estimated, widened: number): KnownCorner {
  const { unknowns } = estimated;
  const { known, sources } = unknowns;
  // Amounts of parts that were on belong to these parts, and no others.
  const ofCorner = sources.filter(({ part }) => !part).length;
  return {
    ...known,
    ...(known.driveway && { driveway: { ...known.driveway, isLearnt: true as const } }),
    corner: learntCornerOf(estimated),
    sources: (widened > 1 ? asBefore(sources, widened) : leftOpen(estimated)).map((cause) =>
      mixed(sources.slice(0, ofCorner), cause),
    ),
  };
}

const asBefore = (sources: readonly CornerSource[], times: number): LeftOpen[] =>
  sources.map(({ id, label, dof }, s) => ({ id, label, dof, column: sources.map((_, i) => (i === s ? times : 0)) }));

/** Sources moved together, so much of each. */
function mixed(sources: readonly CornerSource[], { id, label, dof, column }: LeftOpen): CornerSource {
  const moves: Partial<Record<HardPointKey, Vector3>> = {};
  let camber = 0;
  sources.forEach((source, s) => {
    const by = column[s]!;
    // What shows with parts alone is added where parts are.
    if (by === 0 || source.isOfPartsAlone) return;
    camber += by * (source.camber ?? 0);
    for (const [key, [x, y, z]] of Object.entries(source.moves) as [HardPointKey, Vector3][]) {
      const [u, v, w] = moves[key] ?? [0, 0, 0];
      moves[key] = [u + by * x, v + by * y, w + by * z];
    }
  });
  return { id, label, dof, moves, ...(camber !== 0 && { camber }) };
}
