/** ln Γ by Lanczos's series with g = 7 and nine terms (Godfrey 2001): relative error below 1e-13 for positive arguments. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

function lnGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - lnGamma(1 - x);
  const sum = LANCZOS.reduce((all, term, i) => (i === 0 ? term : all + term / (x - 1 + i)), 0);
  const t = x + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Continued fraction of the incomplete beta function (Abramowitz and Stegun 26.5.8), by Lentz's method. */
function fraction(a: number, b: number, x: number): number {
  const least = 1e-300;
  let c = 1;
  let d = 1 / Math.max(least, 1 - ((a + b) * x) / (a + 1));
  let all = d;
  for (let m = 1; m < 300; m++) {
    for (const term of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      const below = 1 + term * d;
      d = 1 / (Math.abs(below) < least ? least : below);
      c = 1 + term / c;
      if (Math.abs(c) < least) c = least;
      all *= c * d;
    }
    if (Math.abs(c * d - 1) < 1e-14) break;
  }
  return all;
}

/** Regularised incomplete beta function. */
function beta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(a, b, x)) / a : 1 - (front * fraction(b, a, 1 - x)) / b;
}

/**
 * The chance that a variable of Fisher's F distribution exceeds `f`: I_x(ν₂/2, ν₁/2) with x = ν₂/(ν₂ + ν₁ f) (Abramowitz and Stegun
 * 26.6.2).
 *
 * @param f not negative
 * @param above degrees of freedom of the numerator, any positive real
 * @param below of the denominator
 */
export const fTail = (f: number, above: number, below: number): number =>
  f > 0 ? beta(below / (below + above * f), below / 2, above / 2) : 1;
