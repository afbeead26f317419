import { type BreakEven, breakEven } from '../curve/break-even.js';
import type { Curve } from '../curve/curve.js';
import { type Compared, Joint } from '../curve/joint.js';
import { type RollCentre, rollCentreAt } from '../curve/roll-centre.js';
import { causeOf as causeOfLinks } from '../linkage/causes.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { causeOf as causeOfReadings } from '../readings/causes.js';
import { type Contribution, contributions } from '../uncertainty/combine.js';
import type { Estimate, Source } from '../uncertainty/estimate.js';
import type { Doubted } from './lowering.js';

/** A curve of camber, and of links what else they do. */
export interface ComparedCurve extends Compared {
  /** Counted from the same height. The sources of toe are those of camber, by the same ids. */
  readonly toe?: Curve | undefined;
  readonly rollCentre?: RollCentre | undefined;
}

/** Part or height: what does each change? Degrees and mm. */
export interface CompareRequest {
  /** The first is the reference. */
  curves: readonly ComparedCurve[];
  /** Drops from stock height. The first is the reference's own. */
  heights: readonly number[];
  /** Bump travel from each height over which camber changes are compared. */
  bump: number;
  /** Droop from each height, as a positive amount; default 0: not looked at. */
  droop?: number;
  /** Travel from stock height at which the suspension is solid, where that is known: nothing is compared beyond. */
  solid?: number;
}

/** A value with its ±, and whether it can be told from nothing. */
export interface Told extends Doubted {
  isTold: boolean;
}

export interface Cell {
  /** Camber change over the bump from there; undefined where the curve, or the bump travel, does not reach so far. */
  change?: Told;
  /** The same over the droop. */
  droopChange?: Told;
  /** Degrees per mm at the height. */
  rate?: Told;
  /** Camber at the height, and at the end of the bump, degrees, as far as the curve knows camber itself. */
  camber?: number;
  /** At the end of the bump, degrees. */
  camberAtEnd?: number;
  /** Toe change over the bump, positive toe-in. Only of what knows it: hard points. */
  toeChange?: Told;
  /** Of the roll centre above the ground at the height, mm. Only of links. */
  rollCentre?: Told;
  /** The end of the bump lies beyond solid. */
  isBeyondSolid?: true;
}

export interface Comparison {
  /** By curve, then by height. */
  cells: Cell[][];
  /** Of every curve but the first, against the first at the first height. */
  breakEvens: BreakEven[];
}

/** One cell of the table. */
export interface At {
  curve: number;
  height: number;
}

/** From one cell to another: what height alone and part alone change, by both ways of getting there. */
export interface Net {
  total: Told;
  /** Height first, on the old parts; then the part at the new height. */
  heightFirst: { height: Told; part: Told };
  /** Part first, at the old height; then lowered with it. */
  partFirst: { part: Told; height: Told };
  /** How much more the part does at the new height than at the old one. 0 where nothing hangs together. */
  interaction: Told;
  /** What the ± of the total comes from: shares of variance, largest first, adding up to 1. Empty where no doubt is known. */
  contributions: Contribution[];
}

const MOST_BUMP_MM = 150;

const lastOf = new WeakMap<Curve, { reference: Curve; asked: string; found: BreakEven }>();

/** Dragging the height of one cell moves no break-even: each curve's last one is remembered. */
function knownBreakEven({ curves, heights, bump, solid }: CompareRequest, joint: Joint, other: number): BreakEven {
  const [old, now] = [curves[0]!, curves[other]!];
  const asked = JSON.stringify([heights[0], bump, solid, old.shares, now.shares, old.instruments, now.instruments]);
  const last = lastOf.get(now.curve);
  if (last?.reference === old.curve && last.asked === asked) return last.found;
  const found = breakEven(
    curves,
    joint,
    { reference: 0, other },
    { heights, bump, ...(solid !== undefined && { solid }) },
  );
  lastOf.set(now.curve, { reference: old.curve, asked, found });
  return found;
}

/**
 * Every curve at every height.
 *
 * @throws InputError: no curves, no heights, or travels and drops that none has
 */
export function compareCurves(request: CompareRequest): Comparison {
  check(request);
  const { curves, heights, bump, droop = 0, solid = Number.POSITIVE_INFINITY } = request;
  const joint = new Joint(curves);
  const centres = centreJoint(curves);
  const told = (estimate: Estimate, curve: number, by = joint) => toldOf(by, by.sum([curve, estimate, 1]));
  const cells = curves.map(({ curve, toe, rollCentre }, i) =>
    heights.map((height): Cell => {
      const isIn = (t: number) => t >= curve.domain[0] && t <= curve.domain[1];
      if (!isIn(height)) return {};
      const end = height + bump;
      const isBeyond = end > solid + 1e-9;
      const centre = rollCentre && rollCentreAt(rollCentre, height);
      return {
        rate: told(curve.slopeEstimate(height), i),
        camber: curve.value(height),
        ...(centre && !Number.isNaN(centre.value) && { rollCentre: told(centre, i, centres) }),
        ...(toe && isIn(end) && !isBeyond && { toeChange: told(toe.changeEstimate(end, height), i) }),
        ...(isBeyond && { isBeyondSolid: true as const }),
        ...(isIn(end) &&
          !isBeyond && { change: told(curve.changeEstimate(end, height), i), camberAtEnd: curve.value(end) }),
        ...(droop > 0 &&
          isIn(height - droop) && { droopChange: told(curve.changeEstimate(height - droop, height), i) }),
      };
    }),
  );
  return {
    cells,
    breakEvens: curves.slice(1).map((_, i) => knownBreakEven(request, joint, i + 1)),
  };
}

/**
 * From one cell to another, change over the bump of each. Every figure by the joint covariance: heights on one curve are one linear
 * functional, separate fits are independent, shared sources cancel.
 *
 * @returns undefined where one of the four cells involved is out of reach
 */
export function netChange(request: CompareRequest, from: At, to: At): Net | undefined {
  const { curves, heights, bump, solid = Number.POSITIVE_INFINITY } = request;
  const joint = new Joint(curves);
  const estimate = ({ curve: i, height: h }: At) => {
    const { curve } = curves[i]!;
    const height = heights[h]!;
    if (height + bump > solid + 1e-9) return undefined;
    const found = curve.changeEstimate(height + bump, height);
    return Number.isNaN(found.value) ? undefined : ([i, found] as const);
  };
  const corners = [
    estimate(from),
    estimate({ curve: from.curve, height: to.height }),
    estimate({ curve: to.curve, height: from.height }),
    estimate(to),
  ];
  const [oldHere, oldThere, newHere, newThere] = corners;
  if (!oldHere || !oldThere || !newHere || !newThere) return undefined;
  type Term = readonly [number, Estimate];
  const less = (a: Term, b: Term) => toldOf(joint, joint.sum([...a, 1], [...b, -1]));
  const total = joint.sum([...newThere, 1], [...oldHere, -1]);
  return {
    total: toldOf(joint, total),
    contributions: contributions(total, joint.sources, causeOf),
    heightFirst: { height: less(oldThere, oldHere), part: less(newThere, oldThere) },
    partFirst: { part: less(newHere, oldHere), height: less(newThere, newHere) },
    interaction: toldOf(joint, joint.sum([...newThere, 1], [...oldThere, -1], [...newHere, -1], [...oldHere, 1])),
  };
}

/** Of a driveway's car more is open of a roll centre than of its curve. */
const centreJoint = (curves: readonly ComparedCurve[]): Joint =>
  new Joint(curves, (at) => curves[at]!.rollCentre?.sources ?? []);

/** What differs between two cells besides camber; of what either does not know, nothing. */
export interface Costs {
  /** Toe change over the bump of each, degrees, positive toe-in. */
  toeChange?: Told;
  /** Of the roll centre at the height of each, mm. */
  rollCentre?: Told;
}

/** From one cell to another: what else changes than camber. What both share cancels. */
export function costsOf(
  { curves, heights, bump, solid = Number.POSITIVE_INFINITY }: CompareRequest,
  from: At,
  to: At,
): Costs {
  const difference = (joint: Joint, estimate: (at: At) => Estimate | undefined): Told | undefined => {
    const [here, there] = [estimate(from), estimate(to)];
    if (!here || !there || Number.isNaN(here.value + there.value)) return undefined;
    return toldOf(joint, joint.sum([to.curve, there, 1], [from.curve, here, -1]));
  };
  const toeChange = difference(new Joint(curves), ({ curve, height }) => {
    const start = heights[height]!;
    return start + bump > solid + 1e-9 ? undefined : curves[curve]!.toe?.changeEstimate(start + bump, start);
  });
  const rollCentre = difference(centreJoint(curves), ({ curve, height }) => {
    const { rollCentre: of } = curves[curve]!;
    return of && rollCentreAt(of, heights[height]!);
  });
  return { ...(toeChange && { toeChange }), ...(rollCentre && { rollCentre }) };
}

const causeOf = (source: Source) => causeOfReadings({ ...source, ...causeOfLinks(source) });

function toldOf(joint: Joint, estimate: Estimate): Told {
  const plusMinus = joint.plusMinus(estimate);
  const { value } = estimate;
  return { value, ...(joint.sources.length > 0 && { plusMinus }), isTold: Math.abs(value) > plusMinus };
}

function check({ curves, heights, bump, droop, solid }: CompareRequest): void {
  const problems: Problem[] = [];
  const number = numberChecks(problems);
  if (curves.length === 0) problems.push({ code: 'too-few', path: 'curves', value: 0, limit: 1 });
  if (heights.length === 0) problems.push({ code: 'too-few', path: 'heights', value: 0, limit: 1 });
  const { min, max } = QUANTITIES.drop;
  for (const [i, height] of heights.entries()) number(`heights.${i}`, height, min, max);
  number('bump', bump, 1, MOST_BUMP_MM);
  if (droop !== undefined) number('droop', droop, 0, MOST_BUMP_MM);
  if (solid !== undefined) number('solid', solid, -MOST_BUMP_MM, 2 * MOST_BUMP_MM);
  if (problems.length > 0) throw new InputError(problems);
}
