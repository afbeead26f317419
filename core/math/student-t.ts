/*
 * With z² = ν ln(1 + t²/ν) (Wallace, Annals of Mathematical Statistics 30, 1959) and x = z²/ν, the density of Student's t,
 * c (1 + t²/ν)^(−(ν+1)/2) dt, becomes c exp(−z²/2) √(x / (1 − exp(−x))) dz: nearly normal at any ν, exactly normal as ν → ∞.
 * c is that which makes the half line weigh one half, so no gamma function is needed. The tail is integrated by the
 * double exponential rule (Takahasi and Mori 1974) with s = exp(u − exp(−u)), and ln(tail) is inverted by Newton's method,
 * which from the normal bound tail ≤ ½ exp(−z²/2) starts on the side where it cannot overshoot.
 */
const STEP = 1 / 8;
/** Distances past z, with the rule's weights. */
const NODES: [number, number][] = [];
for (let u = -3.5; u <= 2.5; u += STEP) {
  const s = Math.exp(u - Math.exp(-u));
  NODES.push([s, STEP * s * (1 + Math.exp(-u))]);
}

/** √(x / (1 − exp(−x))). */
const skew = (x: number): number => (x > 0 ? Math.sqrt(x / -Math.expm1(-x)) : 1);

/** The tail beyond z, divided by exp(−z²/2) so that it cannot underflow, and not yet by the whole. */
function tail(z: number, perDof: number): number {
  let sum = 0;
  for (const [s, weight] of NODES) sum += weight * Math.exp(-s * (z + s / 2)) * skew(perDof * (z + s) ** 2);
  return sum;
}

/** What was asked before: the band of a curve asks for a few hundred, and again with each redraw. */
const known = new Map<string, number>();
const MOST_KNOWN = 1000;

/**
 * The value that a variable of Student's t distribution stays below with probability `p`. Relative error below 1e-12.
 *
 * @param p 0 < p < 1; 0.975 for a two-sided 95 % interval
 * @param dof degrees of freedom, any positive real; Infinity gives the normal distribution
 * @throws RangeError outside these ranges
 */
export function studentTQuantile(p: number, dof: number): number {
  const key = `${p} ${dof}`;
  let t = known.get(key);
  if (t === undefined) {
    t = quantile(p, dof);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, t);
  }
  return t;
}

function quantile(p: number, dof: number): number {
  if (!(p > 0 && p < 1 && dof > 0)) throw new RangeError(`No t quantile for p = ${p}, dof = ${dof}.`);
  const outside = Math.min(p, 1 - p);
  if (outside === 0.5) return 0;
  const perDof = 1 / dof;
  const wanted = Math.log(2 * outside * tail(0, perDof));
  let z = Math.sqrt(-2 * Math.log(2 * outside));
  for (let i = 0, step = z; i < 30 && Math.abs(step) > 1e-9 * z; i++) {
    const beyond = tail(z, perDof);
    step = ((Math.log(beyond) - (z * z) / 2 - wanted) * beyond) / skew(perDof * z * z);
    z += step;
  }
  const x = z * z * perDof;
  // t = √(ν (exp(x) − 1)), written so that exp(x) may exceed the largest number
  const t = x > 0 ? Math.exp(x / 2) * Math.sqrt(-Math.expm1(-x) * dof) : z;
  return p < 0.5 ? -t : t;
}
