import type { Vector3, WishboneCorner } from '../../../core/linkage/corner.js';
import wishbone from '../../reference/derived_double_wishbone_3d.json' with { type: 'json' };

const points = wishbone.hard_points_mm;
const point = (list: number[]) => list as unknown as Vector3;

/** The corner of test/reference/derived_double_wishbone_3d.json. */
export const wishboneCorner: WishboneCorner = {
  kind: 'wishbone',
  wheelCentre: point(points.wheel_centre),
  loadedRadius: points.wheel_radius,
  camber: wishbone.design_camber_deg,
  toe: wishbone.design_toe_in_deg,
  lowerArm: {
    front: point(points.lower_inner_front),
    rear: point(points.lower_inner_rear),
    ball: point(points.lower_ball_joint),
  },
  upperArm: {
    front: point(points.upper_inner_front),
    rear: point(points.upper_inner_rear),
    ball: point(points.upper_ball_joint),
  },
  tieRod: { inner: point(points.tie_rod_inner), outer: point(points.tie_rod_outer) },
};
