/** A tyre on a rim on a hub, as it is written on them. */
export interface WheelSpec {
  /** On the sidewall: `225/45R17`. */
  size: string;
  /** Between the bead seats, inches, as rims are named everywhere. */
  rimWidthInch: number;
  /** Middle plane of the rim to its mounting face, mm, positive where the face lies outboard of it (ET on the rim). */
  offset: number;
  /** Between hub face and rim, mm. Default 0. */
  spacer?: number;
  /** Section width measured on this rim, mm: in place of the formula, and the only way for a stretched tyre. */
  sectionWidth?: number;
  /** Across the flat of the tread, mm. Default: a share of the section width. */
  treadWidth?: number;
  /** Where tread turns into sidewall, mm. */
  shoulderRadius?: number;
  /** The tyre has a rib that stands over the rim's lip. */
  rimProtector?: boolean;
}

/** How far the rim's middle plane stands outboard of the hub's face, mm; negative: inboard. */
export const planeOf = ({ offset, spacer = 0 }: WheelSpec): number => spacer - offset;
