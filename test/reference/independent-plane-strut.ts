/*
 * A second computation of the plane strut that the driveway measurements describe, to check the project's own with. Nothing is
 * imported from core/, and nothing shared: no hard points in space, no solver, no derivative.
 *
 * Method: in front view, with the ball joint as origin of the carrier, the damper's axis is a line fixed to the carrier that
 * passes the ball joint at the given offset and always goes through the top mount. The arm's angle gives the ball joint; the
 * direction from there to the top mount and the constant distance of the line from the ball joint give the carrier's turn
 * (asin); the wheel centre turns with it. The arm angle for a travel by bisection. Source: plane kinematics of a slider that
 * turns about a fixed point, as in any textbook of mechanisms.
 */
export interface PlaneStrut {
  armLength: number;
  pivotHeight: number;
  ballHeight: number;
  wheelCentreHeight: number;
  topHeight: number;
  /** Degrees, top inboard positive. */
  damperLean: number;
  /** The ball joint outboard of the damper's axis, at right angles to it, mm. */
  ballOffset: number;
  /** The wheel centre outboard of the ball joint, mm. */
  hubOffset: number;
}

/** Camber at a travel (mm, bump positive) less that at 0, degrees, positive top outward. NaN where it cannot be reached. */
export function planeStrutCamberChange(strut: PlaneStrut, travelMm: number): number {
  const { armLength, pivotHeight, ballHeight, wheelCentreHeight, topHeight, ballOffset, hubOffset } = strut;
  const lean = (strut.damperLean * Math.PI) / 180;
  // Outboard from the pivot, up from the floor.
  const startAngle = Math.asin((ballHeight - pivotHeight) / armLength);
  const ballOut = armLength * Math.cos(startAngle);
  // Along the axis from the ball joint's foot on it to the top mount's height, then inboard.
  const along = (topHeight - ballHeight + ballOffset * Math.sin(lean)) / Math.cos(lean);
  const topOut = ballOut - ballOffset * Math.cos(lean) - along * Math.sin(lean);

  const at = (angle: number) => {
    const out = armLength * Math.cos(angle);
    const height = pivotHeight + armLength * Math.sin(angle);
    const away = Math.hypot(out - topOut, topHeight - height);
    const toTop = Math.atan2(out - topOut, topHeight - height);
    // The line to the top mount and the axis differ by the angle whose sine is the offset over their length.
    const turn = toTop - Math.asin(ballOffset / away) - lean;
    // A growing lean takes the wheel's top inboard with it.
    const rise = (wheelCentreHeight - ballHeight) * Math.cos(turn) + hubOffset * Math.sin(turn);
    return { travel: height + rise - wheelCentreHeight, camber: (-turn * 180) / Math.PI };
  };
  let low = startAngle - 0.5;
  let high = startAngle + 0.5;
  if (!(at(low).travel < travelMm && at(high).travel > travelMm)) return Number.NaN;
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (at(middle).travel < travelMm) low = middle;
    else high = middle;
  }
  return at((low + high) / 2).camber - at(startAngle).camber;
}
