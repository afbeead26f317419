import { curveOf } from '../curve/curve.js';
import type { SolvedLinks, TriedSource } from '../curve-sources/solved-source.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { opened } from '../linkage/travel.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { alignedAtDrop } from './aligned-at-drop.js';
import { corneringOf } from './cornering.js';
import type { CorneringAnswer, CorneringDoubt, WheelInTurn } from './cornering-answer.js';
import { withRoll } from './cornering-curve.js';
import { causesOfDriveway } from './cornering-driveway.js';
import { bodyAngles, turnOf } from './cornering-links.js';
import type { CorneringRequest } from './cornering-request.js';

/** By how many standard uncertainties a source is put off either way: all of it is smooth on this scale. */
const NUDGE = 0.1;

/** What both inclinations are, and what camber to the body is where the wheels went in the turn as it was asked. */
interface Figures {
  outer: number;
  inner: number;
  outerCamber: number;
  innerCamber: number;
}

/**
 * How far both inclinations are known, by central differences (first order: GUM, JCGM 100:2008, 5.1.2), a source a step. What is set
 * again is set again on every neighbour. Of a car measured in the driveway, camber to the body is known as its curve is, which counts what
 * six measurements in front view leave open besides.
 *
 * @throws InputError as `corneringOf`
 */
export function* corneringDoubtSteps(request: CorneringRequest): Generator<undefined, CorneringDoubt> {
  const answer = corneringOf(request);
  if (answer.doubt) return answer.doubt;
  const source = request.source as Exclude<TriedSource, { problems: unknown }>;
  const { sources, moved } = source.links!;
  const known = source.driveway ? camberParts(request, source, answer) : undefined;
  const here = figuresOf(answer);
  const rows: Record<'outer' | 'inner', number>[] = [];
  for (const one of sources) {
    const [more, less] = [NUDGE, -NUDGE].map((by) => neighbour(one, by, moved, request, source, answer));
    // Close to an end of reach one of them may be beyond its own.
    const [to, from] = [more ?? here, less ?? here];
    const times = (more ? NUDGE : 0) + (less ? NUDGE : 0);
    const part = (of: keyof Figures): number => (times > 0 ? (to[of] - from[of]) / times : 0);
    const [outer, inner] = [part('outer'), part('inner')];
    rows.push(
      known
        ? {
            outer: outer - part('outerCamber') + known(one, answer.outer.travel),
            inner: inner - part('innerCamber') + known(one, answer.inner.travel),
          }
        : { outer, inner },
    );
    yield;
  }
  const besides = source.driveway
    ? causesOfDriveway(alignedAtDrop(source.links!.linkage, source, request), source, request, answer)
    : [];
  const doubt = {
    sources: [...sources.map(({ id, label, dof }) => ({ id, label, dof })), ...besides.map((one) => one.source)],
    outer: Float64Array.from([...rows, ...besides], (one) => one.outer),
    inner: Float64Array.from([...rows, ...besides], (one) => one.inner),
  };
  return withRoll(doubt, request, answer.perDegreeOfRoll);
}

const camberOf = ({ bars }: WheelInTurn): number => bars.static + bars.travel;

const figuresOf = ({ outer, inner }: CorneringAnswer): Figures => ({
  outer: outer.inclination,
  inner: inner.inclination,
  outerCamber: camberOf(outer),
  innerCamber: camberOf(inner),
});

/** The turn of a car next to this one; undefined where its links do not join. */
function neighbour(
  by: CornerSource,
  times: number,
  moved: SolvedLinks['moved'],
  request: CorneringRequest,
  source: Exclude<TriedSource, { problems: unknown }>,
  { outer, inner }: CorneringAnswer,
): Figures | undefined {
  return unlessRefused(() => {
    const linkage = alignedAtDrop(opened(moved(by, times)), source, request);
    const there = turnOf(linkage, request, { isNear: true }).at(request.roll);
    return {
      outer: there.outer.inclination,
      inner: there.inner.inclination,
      outerCamber: bodyAngles(linkage, outer.travel - request.drop, 0).camber,
      innerCamber: bodyAngles(linkage, inner.travel - request.drop, 0).camber,
    };
  });
}

/** What each source adds to camber at a travel from stock height; where it is set again, to its change since the drop. */
function camberParts(
  { drop, measuredAt = 0, camber: set }: CorneringRequest,
  { camber: data }: Exclude<TriedSource, { problems: unknown }>,
  { outer, inner }: CorneringAnswer,
): (source: CornerSource, travel: number) => number {
  const curve = curveOf(data!);
  const within = (travel: number) => Math.min(Math.max(travel - measuredAt, curve.domain[0]), curve.domain[1]);
  const parts = new Map([outer.travel, inner.travel, drop].map((at) => [at, curve.estimate(within(at)).parts]));
  return ({ id }, travel) => {
    const s = data!.sources.findIndex((one) => one.id === id);
    if (s < 0) return 0;
    return parts.get(travel)![s]! - (set === undefined ? 0 : parts.get(drop)![s]!);
  };
}
