import type { StrutCorner } from '../../../core/linkage/corner.js';
import strut from '../../reference/derived_strut_3d.json' with { type: 'json' };

const points = strut.hard_points_mm as unknown as Record<string, [number, number, number]> & { wheel_radius: number };

/** The invented corner of test/reference/derived_strut_3d.json, in the project's own form. */
export const referenceCorner: StrutCorner = {
  kind: 'strut',
  wheelCentre: points.wheel_centre!,
  loadedRadius: points.wheel_radius,
  camber: strut.design_camber_deg,
  toe: strut.design_toe_in_deg,
  lowerArm: { front: points.arm_inner_front!, rear: points.arm_inner_rear!, ball: points.ball_joint! },
  strut: { top: points.strut_top!, low: points.point_on_strut_axis_fixed_to_knuckle! },
  tieRod: { inner: points.tie_rod_inner!, outer: points.tie_rod_outer! },
};
