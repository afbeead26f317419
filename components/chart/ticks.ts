/** The smallest step of 1, 2, 3 or 5 times a power of ten that is at least `least`. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  // A hair of tolerance: 10 ** −1 is not exactly a tenth of 1.
  return power * [1, 2, 3, 5, 10].find((factor) => factor * power >= least * (1 - 1e-9))!;
}

/**
 * Round figures from low to high, both included where they are round, at most `most` of them.
 * @param unit size of one unit of what the reader sees, in the unit of low and high.
 */
export function niceTicks(low: number, high: number, most: number, unit = 1): number[] {
  const from = low / unit;
  const to = high / unit;
  if (!(to > from)) return [low];
  const ticks = (step: number) => {
    const first = Math.ceil(from / step - 1e-9);
    const last = Math.floor(to / step + 1e-9);
    return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step * unit || 0);
  };
  let step = niceStep((to - from) / Math.max(2, most));
  let figures = ticks(step);
  while (figures.length > Math.max(2, most)) {
    step = niceStep(step * 1.01);
    figures = ticks(step);
  }
  return figures;
}

/**
 * The y axis: a margin around what is drawn, its ends on half steps so that it stands still while a value changes a little.
 * @param extent least and greatest value; undefined where nothing is drawn.
 */
export function axisRange(extent: [number, number] | undefined, most: number, unit = 1, minSpan = 0): [number, number] {
  const [low, high] = extent ?? [-unit, unit];
  const span = Math.max(high - low, minSpan, Math.abs(high) * 1e-6, unit * 1e-6);
  const middle = (low + high) / 2;
  const margin = 0.58 * span;
  const half = (niceStep((2 * margin) / unit / Math.max(2, most)) * unit) / 2;
  return [Math.floor((middle - margin) / half) * half, Math.ceil((middle + margin) / half) * half];
}
