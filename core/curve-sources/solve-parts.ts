import { checkCorner } from '../document/check-corner.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { type CornerMoves, type CornerSource, movedBy } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { armLonger } from '../linkage/parts/arm.js';
import type { Part } from '../linkage/parts/part.js';
import { partsOn } from '../linkage/parts/part-data.js';
import { amountsOf, type PartData, partLabel, withMore } from '../linkage/parts/part-kinds.js';
import { camberAndToeSet, toeReset } from '../linkage/parts/targets.js';
import { tieRodEndRaised } from '../linkage/parts/tie-rod.js';
import { topMountMoved } from '../linkage/parts/top-mount.js';
import { sweepTravel } from '../linkage/sweep.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { cornerSources } from './corner-doubt.js';
import { type KnownCorner, knownDriveway, solveLinks } from './solve-corner.js';
import type { SolvedSource } from './solved-source.js';
import { ALIGNMENTS, type Alignment, type PartsSource } from './source.js';

/** By how many standard uncertainties a source is put off either way to see what it does: angles are smooth on this scale. */
const NUDGE = 0.1;
/** Of a rod's end that was made to match a joint, in the list of what may be off: it is a part of its own. */
const ROD = 'rod';

/**
 * The curves of a corner with parts on it, camber and, of hard points, toe. The wheel centre's height is held. Its sources of doubt are
 * those of the bare corner, by the same ids, so that what two sets of parts share cancels; each amount of a part is one more, and the
 * same part in two sets is the same source.
 *
 * @throws InputError with all that is wrong with the corner or the parts: `parts.1.mm`; `cannot-close`, path `parts.1`, with the link
 *   that does not reach as `other`
 */
export function solveParts({ of, parts, alignment = 'toe' }: PartsSource): SolvedSource {
  const known = knownCorner(of);
  const problems: Problem[] = [];
  if (!Array.isArray(parts)) problems.push({ code: 'wrong-shape', path: 'parts', value: undefined });
  if (!ALIGNMENTS.includes(alignment)) {
    problems.push({ code: 'unknown-name', path: 'alignment', value: alignment, names: ALIGNMENTS });
  }
  if (problems.length > 0) throw new InputError(problems);
  const build = (corner: Corner, on: readonly PartData[], then?: Part, isOpen = true): Linkage => {
    const put = inParts(() => partsOn(on)(buildLinkage(corner, { isOpen })));
    return aligned(then ? then(put) : put, corner, alignment);
  };
  const moved = (by: CornerMoves, times: number): Linkage => {
    const corner = movedBy(known.corner, by, times);
    const { part } = by;
    if (!part) return build(corner, parts);
    const mm = times * part.by;
    if (part.path === ROD) return build(corner, parts, tieRodEndRaised({ mm }));
    return build(
      corner,
      parts.map((data, at) => (at === part.at ? withMore(data, part.path, mm) : data)),
    );
  };
  const linkage = build(known.corner, parts, undefined, false);
  const sources = [...known.sources, ...parts.flatMap(partSources)];
  // Not spread: that would have the curves made at once, which not everybody asks for.
  return Object.assign(
    solveLinks(
      { ...known, sources },
      { linkage, moved, doubt: (_, travel) => partsDoubt(moved, linkage, travel, sources) },
    ),
    { parts },
  );
}

function knownCorner(of: PartsSource['of']): KnownCorner {
  if (of?.kind === 'driveway') return knownDriveway(of.driveway);
  if (of?.kind !== 'corner') {
    const { kind } = (of ?? {}) as { kind?: unknown };
    throw new InputError([{ code: of ? 'wrong-shape' : 'missing', path: 'source.of', value: kind }]);
  }
  const corner = checkCorner(of.corner);
  return { corner, sources: cornerSources(corner) };
}

/** @throws InputError with the paths of the parts below `parts` */
function inParts<T>(run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError) || error.problems.some(({ path }) => !/^\d/.test(path))) throw error;
    throw new InputError(error.problems.map((problem) => ({ ...problem, path: `parts.${problem.path}` })));
  }
}

/** The linkage with what is set again set to the corner's own angles. @throws InputError, path `alignment`, where that cannot be */
function aligned(linkage: Linkage, { camber, toe }: Corner, alignment: Alignment): Linkage {
  if (alignment === 'as-fitted') return linkage;
  const adjust =
    linkage.kind === 'strut'
      ? (mm: number) => topMountMoved({ vector: [0, mm, 0] })
      : (mm: number) => armLonger({ mm, arm: 'upper' });
  try {
    return alignment === 'toe' ? toeReset(linkage, toe) : camberAndToeSet(linkage, { camber, toe }, adjust).linkage;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(
      error.problems.map(({ path, value }) => ({ code: 'cannot-close', path: 'alignment', value, other: path })),
    );
  }
}

/** What is not known of a part, each amount for itself. The same part has the same id, whichever set it stands in. */
function partSources(data: PartData, at: number, all: readonly PartData[]): CornerSource[] {
  const name = JSON.stringify(data);
  const before = all.slice(0, at).filter((other) => JSON.stringify(other) === name).length;
  const source = (path: string, by: number, label: string): CornerSource => ({
    id: `part.${name}.${before}.${path}`,
    label,
    dof: Number.POSITIVE_INFINITY,
    moves: {},
    part: { at, path, by },
  });
  const amounts = amountsOf(data).filter(({ plusMinus }) => plusMinus > 0);
  const isCorrected = 'correctTieRod' in data && data.correctTieRod && amounts.length > 0;
  return [
    ...amounts.map(({ path, plusMinus }) => source(path, plusMinus / NORMAL_95, `tolerance of the ${partLabel(data)}`)),
    ...(isCorrected ? [source(ROD, amounts[0]!.plusMinus / NORMAL_95, 'match of the tie-rod end')] : []),
  ];
}

/** As `cornerDoubt`, by central differences through the parts and what is set again. */
function partsDoubt(
  moved: (by: CornerMoves, times: number) => Linkage,
  linkage: Linkage,
  travel: Float64Array,
  sources: readonly CornerSource[],
): (angle: 'camber' | 'toe') => Float64Array {
  const here = sweepTravel(linkage, travel);
  const swept = sources.map((source) => {
    const [up, down] = [NUDGE, -NUDGE].map((times) => sweepTravel(moved(source, times), travel));
    return { up: up!, down: down! };
  });
  return (angle) => {
    const parts = new Float64Array(travel.length * sources.length);
    swept.forEach(({ up, down }, s) => {
      // Close to an end of reach one of them may be beyond its own.
      let last = 0;
      for (let i = 0; i < travel.length; i++) {
        const [more, less, now] = [up[angle][i]!, down[angle][i]!, here[angle][i]!];
        const found = Number.isNaN(more)
          ? (now - less) / NUDGE
          : Number.isNaN(less)
            ? (more - now) / NUDGE
            : (more - less) / (2 * NUDGE);
        if (!Number.isNaN(found)) last = found;
        parts[i * sources.length + s] = last;
      }
    });
    return parts;
  };
}
