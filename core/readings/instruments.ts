const RADIANS = Math.PI / 180;

/**
 * Camber from a phone whose back lies flat on the outer face of the wheel (or on a plate on the hub), screen outward: −asin(cos β cos γ).
 * Source: W3C Device Orientation and Motion, rotation Z–X′–Y″; the upward direction in the device's axes has the component
 * cos β cos γ along the screen's normal. Free of alpha and of how the phone is turned on the wheel.
 *
 * For differences only: a phone is good to ±1° absolute, and its zero is removed by taking readings from the same phone left in one
 * place, or turned over. The angles come in steps of 0.1°, alone a standard uncertainty of 0.03°.
 *
 * @param betaDegrees as in a DeviceOrientationEvent
 * @param gammaDegrees the same
 * @returns degrees, positive top outward; strictly the inclination of the wheel, equal to camber at zero toe
 */
export function camberFromOrientation(betaDegrees: number, gammaDegrees: number): number {
  const up = Math.cos(betaDegrees * RADIANS) * Math.cos(gammaDegrees * RADIANS);
  return -Math.asin(Math.min(1, Math.max(-1, up))) / RADIANS + 0;
}

/**
 * Toe from one gauge that gives the difference between the front and the rear of a plate, or of a rim, over a base.
 *
 * @param differenceMm by how much the front edge stands further in than the rear edge
 * @param baseMm between the two places, positive; along the plate, not along the car
 * @returns degrees, toe-in positive. NaN without a base
 */
export function toeFromGauge(differenceMm: number, baseMm: number): number {
  return baseMm > 0 ? Math.atan(differenceMm / baseMm) / RADIANS : Number.NaN;
}

/**
 * Toe from two dials on a plate: the difference of the two counts, over the base between them. Each dial alone carries half of the
 * steer and all of the plate's sideways movement; that and the camber cancel in the difference where both dials stand at one height.
 *
 * @param frontMm reading of the front dial, growing as the plate moves inboard there
 * @param rearMm the same at the rear
 * @param baseMm between the dials, positive
 * @returns degrees, toe-in positive. NaN without a base
 */
export function toeFromDials(frontMm: number, rearMm: number, baseMm: number): number {
  return toeFromGauge(frontMm - rearMm, baseMm);
}

/** Of a toe that comes of two readings: degrees, standard, each reading good to `doubtMm`. Turning a 0.01 mm dial's step into an angle. */
export function toeDoubt(doubtMm: number, baseMm: number): number {
  return (Math.SQRT2 * doubtMm) / baseMm / RADIANS;
}
