/** What carries one axle in roll. kg, mm, N/mm; rates and ratios of one side, both sides alike. */
export interface AxleInRoll {
  /** Carried by this axle's springs. */
  sprungMass: number;
  /** Between the two contact points. */
  track: number;
  /** Above the road, from the linkage. */
  rollCentreHeight: number;
  springRate: number;
  /** −d(spring length)/d(wheel travel). Default 1. */
  motionRatio?: number;
  /** Anti-roll bar: force at one end per mm of that end, the other one held; `motionRatio` from wheel travel to that end, default 1. */
  bar?: { rate: number; motionRatio?: number } | undefined;
  /** Bump stop: its gap at ride height and its rate, along the damper, with the springs' motion ratio. */
  stop?: { gap: number; rate: number } | undefined;
  unsprungMass?: number;
  /** Of its centre of gravity above the road. */
  unsprungHeight?: number;
}

/** Roll at which the outer wheel meets its stop, radians, small angles; Infinity without a stop. */
export const touchesAt = ({ stop, motionRatio = 1, track }: AxleInRoll): number =>
  stop ? (2 * stop.gap) / (motionRatio * track) : Number.POSITIVE_INFINITY;

/**
 * The moment with which an axle answers roll, N·mm, and its mean wheel travel, mm.
 *
 * Springs: each wheel goes φ t/2, so k t²/2 · φ with the wheel rate k = rate · MR². Bar: its ends go apart by twice one end's way, so
 * rate · MR² t² · φ. Stop, rate s at the wheel, gap g at the wheel: the springs of both sides balance what it pushes up,
 * 2k·heave = −s (x − g), x = φ t/2 + heave being the outer wheel's bump; so it acts as s/(1 + s/2k) on φ t/2 − g.
 *
 * @param roll radians; which side is the outer one does not matter
 */
export function axleMoment(axle: AxleInRoll, roll: number): { moment: number; heave: number } {
  const { track, springRate, motionRatio = 1, bar, stop } = axle;
  const wheelRate = springRate * motionRatio ** 2;
  const linear = (wheelRate * track ** 2) / 2 + (bar ? bar.rate * (bar.motionRatio ?? 1) ** 2 * track ** 2 : 0);
  const beyond = stop ? (Math.abs(roll) * track) / 2 - stop.gap / motionRatio : 0;
  if (!stop || beyond <= 0) return { moment: linear * roll, heave: 0 };
  const rate = stop.rate * motionRatio ** 2;
  const push = (rate * beyond) / (1 + rate / (2 * wheelRate));
  return { moment: linear * roll + (Math.sign(roll) * push * track) / 2, heave: -push / (2 * wheelRate) };
}
