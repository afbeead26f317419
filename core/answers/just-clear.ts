import { travelBudget } from '../travel/budget.js';
import { Poses } from '../wheel/gaps.js';
import type { ChangeEnd, ChangeId, ClearanceAnswer, JustClear } from './clearance-answer.js';
import { rangeOf } from './clearance-gaps.js';
import type { ClearanceRequest } from './clearance-request.js';
import { envelopeOf } from './envelope-of.js';
import { bumpBounds, bumpLeftAt } from './limited-bump.js';
import { otherTyre } from './other-tyre.js';
import { type Search, solved } from './solve-change.js';
import type { Trial, Trials } from './trial.js';
import {
  FURTHEST_CAMBER,
  LOWEST_MORE_MM,
  type OtherTyre,
  otherDiameters,
  otherWidths,
  planeBounds,
} from './what-is-sold.js';

export type { ChangeEnd, ChangeId, JustClear } from './clearance-answer.js';

/** In what steps each is looked for, and by how much a step of one moves a gap at most, mm. */
const STEPS: Record<ChangeId, Pick<Search, 'step' | 'moves'>> = {
  plane: { step: 1.5, moves: 1 },
  width: { step: 2, moves: 1.5 },
  diameter: { step: 2, moves: 1.5 },
  // About a joint, a metre at most.
  camber: { step: 0.25, moves: 17.5 },
  bump: { step: 1.5, moves: 0 },
  drop: { step: 2, moves: 0 },
};

/** Which way each may end: from a wheel that does not clear, and from one that does. */
const WAYS: Record<ChangeId, readonly [out: readonly (1 | -1)[], further: readonly (1 | -1)[]]> = {
  plane: [
    [-1, 1],
    [-1, 1],
  ],
  width: [[-1], [1]],
  diameter: [[-1], [1]],
  camber: [
    [-1, 1],
    [-1, 1],
  ],
  bump: [[-1], [1]],
  drop: [[-1], [1]],
};

/**
 * What would just clear, or how far one can still go, each changed alone: where gap less margin, allowance and ± is nothing. Only
 * what one can buy or set is looked at (`what-is-sold.ts`).
 */
export function* justClear(
  request: ClearanceRequest,
  answer: ClearanceAnswer,
  trials: Trials,
  wheel: Trial,
): Generator<undefined, JustClear[]> {
  const clears = answer.verdict === 'clears';
  const searches = searchesOf(request, answer, wheel);
  const found: JustClear[] = [];
  for (const id of Object.keys(STEPS) as ChangeId[]) {
    if (id === 'drop' && request.lowered !== 'dampers') {
      found.push({ id, ends: [], isIdle: true });
      continue;
    }
    const ends: ChangeEnd[] = [];
    for (const way of WAYS[id][clears ? 1 : 0]) {
      const search: Search = { ...STEPS[id], ...searches[id] };
      const by = yield* solved(search, way, clears, trials);
      const size = yield* otherTyre(tyresOf(id, answer, way > 0), clears, wheel, trials);
      if (by === undefined && !size) continue;
      ends.push({
        ...(by !== undefined && { by }),
        ...(size && { size: size.spec.size }),
        ...(id === 'bump' && by! < 0 && { bump: bumpLeftAt(request, answer.budget, wheel.range[1] + by!) }),
      });
    }
    ends.sort((a, b) => Math.abs(a.by ?? 0) - Math.abs(b.by ?? 0));
    // One way out is enough: the nearest.
    found.push({ id, ends: clears ? ends : ends.slice(0, 1) });
  }
  return found;
}

const tyresOf = (id: ChangeId, { wheels }: ClearanceAnswer, isMore: boolean): OtherTyre[] =>
  id === 'width' ? otherWidths(wheels, isMore) : id === 'diameter' ? otherDiameters(wheels, isMore) : [];

/** Between which bounds each is looked for, and the wheel with that changed. */
function searchesOf(
  request: ClearanceRequest,
  answer: ClearanceAnswer,
  wheel: Trial,
): Record<ChangeId, Pick<Search, 'bounds' | 'trial'>> {
  const { motion, drop, camberBy = 0, measuredAt, lowered, limits, bumpTravel } = request;
  const { wheels, budget } = answer;
  const { after, plane } = wheels;
  const [low, high] = [motion.travel[0]!, motion.travel.at(-1)!];
  const furthest = (tyres: OtherTyre[], of: (tyre: OtherTyre) => number) =>
    tyres.map(of).sort((a, b) => Math.abs(b) - Math.abs(a))[0] ?? 0;
  const both = (id: ChangeId, of: (tyre: OtherTyre) => number): [number, number] => [
    Math.min(0, furthest(tyresOf(id, answer, false), of)),
    Math.max(0, furthest(tyresOf(id, answer, true), of)),
  ];
  return {
    plane: {
      bounds: planeBounds(after.spec),
      trial: (by) => ({ ...wheel, envelope: envelopeOf(after, plane + by) }),
    },
    width: {
      bounds: both('width', ({ sectionWidth }) => sectionWidth - after.sectionWidth),
      trial: (by) => ({ ...wheel, envelope: envelopeOf(after, plane, after.sectionWidth + by) }),
    },
    diameter: {
      bounds: both('diameter', ({ freeDiameter }) => freeDiameter - 2 * after.freeRadius),
      trial: (by) => ({ ...wheel, envelope: envelopeOf(after, plane, after.sectionWidth, after.freeRadius + by / 2) }),
    },
    camber: {
      bounds: [-FURTHEST_CAMBER, FURTHEST_CAMBER],
      trial: (by) => ({ ...wheel, poses: by === 0 ? wheel.poses : new Poses(motion, camberBy + by) }),
    },
    bump: {
      bounds: bumpBounds(request, budget),
      trial: (by) => {
        const travel = wheel.range[1] + by;
        return { ...wheel, range: [wheel.range[0], travel], solid: { ...wheel.solid!, travel } };
      },
    },
    drop: {
      bounds: [Math.max(low - drop, Math.min(0, -drop)), Math.max(0, Math.min(LOWEST_MORE_MM, high - drop))],
      trial: (by) => {
        const there = travelBudget({
          path: motion.damper,
          limits,
          drop: drop + by,
          ...(lowered && { lowered }),
          ...(bumpTravel !== undefined && { bumpTravel }),
          ...(measuredAt !== undefined && { measuredAt }),
          ...(motion.reach && motion.from === 'points' && { reach: motion.reach }),
        });
        return { ...wheel, solid: there.bump.solid, range: rangeOf(motion, there, drop + by) };
      },
    },
  };
}
