/** Γ(a) by its logarithm (Stirling's series after shifting the argument upward; Abramowitz and Stegun 6.1.41): relative error below 1e-12. */
function lnGamma(a: number): number {
  let shift = 0;
  let x = a;
  while (x < 12) {
    shift += Math.log(x);
    x += 1;
  }
  const squared = x * x;
  const series = (1 / 12 - (1 / 360 - (1 / 1260 - 1 / (1680 * squared)) / squared) / squared) / x;
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + series - shift;
}

/**
 * The chance of a chi-square as large as this or larger: the upper regularised incomplete gamma function Q(ν/2, χ²/2), by its series
 * (Abramowitz and Stegun 6.5.29) below ν/2 + 1 and by its continued fraction (6.5.31, Lentz's method) above.
 *
 * @param dof degrees of freedom ν, above 0
 */
export function chiSquareTail(chiSquare: number, dof: number): number {
  if (!(chiSquare > 0)) return 1;
  const a = dof / 2;
  const x = chiSquare / 2;
  const factor = Math.exp(a * Math.log(x) - x - lnGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 10_000 && term > 1e-16 * sum; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return Math.max(0, 1 - factor * sum);
  }
  const least = 1e-300;
  let b = x + 1 - a;
  let c = 1 / least;
  let d = 1 / b;
  let all = d;
  for (let n = 1; n < 10_000; n++) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (Math.abs(an * d + b) < least ? least : an * d + b);
    c = Math.abs(b + an / c) < least ? least : b + an / c;
    const by = d * c;
    all *= by;
    if (Math.abs(by - 1) < 1e-15) break;
  }
  return factor * all;
}
