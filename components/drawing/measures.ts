import type { BalloonState, Item, Point } from './items.js';
import { type FrontViewPose, halfWidthOf, moved, onPage, path } from './strut-parts.js';

/** What can be measured of a strut in front view without taking it apart; named as the core names it. */
export type MeasureKey = 'armLength' | 'pivotHeight' | 'ballHeight' | 'wheelCentreHeight' | 'damperLean' | 'topHeight';

export interface Measure {
  key: MeasureKey;
  /** The value as it stands on the dimension. */
  text: string;
  state: BalloonState;
  /** What a screen reader says before the value. */
  label: string;
}

/** Where the value stands along its dimension line, as a share of it. */
const SHARE: Record<MeasureKey, number> = {
  armLength: 0.5,
  pivotHeight: 0.42,
  ballHeight: 0.4,
  wheelCentreHeight: 0.82,
  damperLean: 0.5,
  topHeight: 0.62,
};

/** Where the dimension lines stand, mm from the part they belong to. */
const ARM_BELOW = 62;
const PIVOT_INBOARD = 66;
const TOP_INBOARD = 146;
const BALL_OUTBOARD = 56;
const CENTRE_OUTBOARD = 128;
/** Of the arc that shows the lean, from the top mount along the damper. */
const LEAN_RADIUS = 300;

/** Dimension lines with their values as chips, after ISO 129-1: what is measured, where it is measured. */
export function measureItems(pose: FrontViewPose, reference: FrontViewPose, measures: readonly Measure[]): Item[] {
  const now = onPage(pose.groundZ);
  const then = onPage(reference.groundZ);
  // The lines outboard of the wheel stay where they are, whatever the wheel does.
  const edge = reference.wheelCentre[0] + halfWidthOf(reference);
  return measures.flatMap((measure) => {
    const { line, middle } = drawn(measure.key, pose, now, edge);
    const home = drawn(measure.key, reference, then, edge).middle;
    const { key, text, state, label } = measure;
    const along = key === 'armLength' || key === 'damperLean' ? 'right' : 'up';
    return [...line, { kind: 'chip', key, text, state, label, at: middle, home, along } satisfies Item];
  });
}

function drawn(
  key: MeasureKey,
  pose: FrontViewPose,
  page: (point: Point) => Point,
  edge: number,
): { line: Item[]; middle: Point } {
  const [pivot, ball, top, low, centre] = [pose.armPivot, pose.ball, pose.top, pose.low, pose.wheelCentre].map(
    page,
  ) as [Point, Point, Point, Point, Point];
  const height = (of: Point, at: number): { line: Item[]; middle: Point } => ({
    line: [{ kind: 'dimension', from: [of[0], 0], to: of, along: 'up', at, ink: 'soft' }],
    middle: [at, of[1] * SHARE[key]],
  });
  switch (key) {
    case 'pivotHeight':
      return height(pivot, pivot[0] - PIVOT_INBOARD);
    case 'ballHeight':
      return height(ball, edge + BALL_OUTBOARD);
    case 'wheelCentreHeight':
      return height(centre, edge + CENTRE_OUTBOARD);
    case 'topHeight':
      return height(top, pivot[0] - TOP_INBOARD);
    case 'armLength': {
      const length = Math.hypot(ball[0] - pivot[0], ball[1] - pivot[1]) || 1;
      const down: Point = [(ball[1] - pivot[1]) / length, (pivot[0] - ball[0]) / length];
      const middle = moved(
        [pivot[0] + SHARE[key] * (ball[0] - pivot[0]), pivot[1] + SHARE[key] * (ball[1] - pivot[1])],
        down,
        ARM_BELOW,
      );
      return {
        line: [{ kind: 'dimension', from: pivot, to: ball, along: 'line', at: ARM_BELOW, ink: 'soft' }],
        middle,
      };
    }
    case 'damperLean': {
      // Directions from straight up: the plumb line hangs down, the damper's axis as well.
      const axis = 180 - (Math.atan2(low[0] - top[0], top[1] - low[1]) * 180) / Math.PI;
      const foot = moved(top, [0, -1], LEAN_RADIUS + 24);
      return {
        line: [
          path([moved(top, [0, -1], 12), foot], { weight: 'narrow', ink: 'soft' }),
          { kind: 'angle', centre: top, radius: LEAN_RADIUS, from: axis, to: 180, ink: 'soft', weight: 'narrow' },
        ],
        middle: moved(top, [-1, -LEAN_RADIUS / 70], 70),
      };
    }
  }
}
