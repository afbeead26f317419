/** A value and its ±, rounded to one decimal place. */
export interface Rounded {
  value: number;
  plusMinus: number;
  /** The place: 2 means hundredths, −1 means tens. */
  decimals: number;
}

/**
 * The one rounding rule. The ± is rounded to the nearest one significant digit, or two where the first is a 1 (a step from 1 to 2
 * would change it by half; GUM, JCGM 100:2008, 7.2.6 allows two digits at most); the value goes to the same place. Never to
 * a finer place than `finestDecimals`, and a ± that is not zero is never shown as zero there: it becomes one unit of that place.
 *
 * @param plusMinus half-width, not negative, in the unit of the value
 */
export function roundByUncertainty(value: number, plusMinus: number, finestDecimals: number): Rounded {
  let decimals = finestDecimals;
  if (plusMinus > 0 && plusMinus < Infinity) {
    // Two digits first: 0.0196 is 0.020, whose first digit is not a 1, hence 0.02.
    const [digits, exponent] = plusMinus.toExponential(1).split('e');
    decimals = Math.min(finestDecimals, (digits!.startsWith('1') ? 1 : 0) - Number(exponent));
  }
  return {
    value: roundTo(value, decimals),
    plusMinus: plusMinus > 0 ? Math.max(roundTo(plusMinus, decimals), roundTo(10 ** -decimals, decimals)) : plusMinus,
    decimals,
  };
}

/** To the nearest unit of a decimal place, halves away from zero; never −0. */
export function roundTo(value: number, decimals: number): number {
  const unit = 10 ** Math.abs(decimals);
  const size = Math.abs(value);
  const rounded = decimals < 0 ? Math.round(size / unit) * unit : Math.round(size * unit) / unit;
  return rounded === 0 ? 0 : Math.sign(value) * rounded;
}
