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
import { InputError, type Problem } from '../quantity/problem.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { cornerSources } from './corner-doubt.js';
import { drivewayPartsSources } from './driveway-parts.js';
import { partsDoubt } from './parts-doubt.js';
import { type KnownCorner, knownDriveway, solveLinks } from './solve-corner.js';
import type { SolvedCamber } from './solved-source.js';
import { ALIGNMENTS, type Alignment, type PartsSource } from './source.js';

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
export function solveParts({ of, parts, alignment = 'toe' }: PartsSource): SolvedCamber {
  const known = knownCorner(of);
  const problems: Problem[] = [];
  if (!Array.isArray(parts)) problems.push({ code: 'wrong-shape', path: 'parts', value: undefined });
  if (!ALIGNMENTS.includes(alignment)) {
    problems.push({ code: 'unknown-name', path: 'alignment', value: alignment, names: ALIGNMENTS });
  }
  if (problems.length > 0) throw new InputError(problems);
  return solveKnownParts(known, parts, alignment);
}

/** The same of a corner that is known by whatever told it. @throws InputError of the parts, as `solveParts` */
export function solveKnownParts(known: KnownCorner, parts: readonly PartData[], alignment: Alignment): SolvedCamber {
  const linkage = linkageWith(known.corner, parts, { alignment });
  const sources = sourcesWith(known, parts);
  const moved = (by: CornerMoves, times: number) => movedWith(known.corner, parts, alignment, by, times);
  // Not spread: that would have the curves made at once, which not everybody asks for.
  return Object.assign(
    solveLinks(
      { ...known, sources },
      { linkage, moved, doubt: (_, travel) => partsDoubt(known.corner, moved, linkage, travel, sources) },
    ),
    { parts },
  );
}

/** What a corner is not known to, and the parts on it. */
export const sourcesWith = (known: KnownCorner, parts: readonly PartData[]): CornerSource[] => [
  ...known.sources,
  ...drivewayPartsSources(known, parts),
  ...parts.flatMap(partSources),
];

/** A corner with parts on. @throws InputError as `solveParts` */
export function linkageWith(
  corner: Corner,
  parts: readonly PartData[],
  { alignment, last, isOpen = false }: { alignment: Alignment; last?: Part; isOpen?: boolean },
): Linkage {
  const put = inParts(() => partsOn(parts)(buildLinkage(corner, { isOpen })));
  return aligned(last ? last(put) : put, corner, alignment);
}

/** The same with one source of `sourcesWith` off by so many standard uncertainties; its ends of reach are not looked for. */
export function movedWith(
  corner: Corner,
  parts: readonly PartData[],
  alignment: Alignment,
  by: CornerMoves,
  times: number,
): Linkage {
  const { part } = by;
  const off = movedBy(corner, by, times);
  const [mm, how] = [part ? times * part.by : 0, { alignment, isOpen: true }];
  if (part?.path === ROD) return linkageWith(off, parts, { ...how, last: tieRodEndRaised({ mm }) });
  const put = part ? parts.map((data, at) => (at === part.at ? withMore(data, part.path, mm) : data)) : parts;
  return linkageWith(off, put, how);
}

/** The corner that parts are put on. @throws InputError with all that is wrong with it */
export function knownCorner(of: PartsSource['of']): KnownCorner {
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
