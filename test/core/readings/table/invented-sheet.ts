import { randomNumbers } from '../../driveway/random-car.js';

/** Two invented sets of parts on exact parabolas, degrees over mm: the second falls faster. */
const CURVES = {
  stock: (t: number) => -0.6 - 0.0135 * t + 9e-5 * t * t,
  lowered: (t: number) => -0.52 - 0.0175 * t + 9e-5 * t * t,
};
export type Curve = keyof typeof CURVES;
export const HEIGHTS = [-40, -30, -20, -10, 0, 10, 20, 30, 40, 50] as const;

/** Columns of readings in turn, each with its own zero and 0.02° of scatter, written down to 0.01°. The same for the same seed. */
export function columnsOf(curves: readonly Curve[], seed = 1, heights: readonly number[] = HEIGHTS): number[][] {
  const random = randomNumbers(seed);
  return curves.map((curve) => {
    const zero = -0.1 + 0.2 * random();
    return heights.map((t) => Number((CURVES[curve](t) + zero + 0.035 * (2 * random() - 1)).toFixed(2)));
  });
}

/** Row by row, each with its average to two decimals, as a spreadsheet shows it. */
export const averageOf = (columns: readonly number[][]): number[] =>
  columns[0]!.map((_, row) =>
    Number((columns.reduce((sum, column) => sum + column[row]!, 0) / columns.length).toFixed(2)),
  );

/** A sheet by tabs: headings, then heights with one cell a column. */
export function sheetOf(
  headings: readonly string[] | string | undefined,
  columns: readonly (readonly (number | string)[])[],
  heights: readonly (number | string)[] = HEIGHTS,
): string {
  const top = headings === undefined ? [] : [typeof headings === 'string' ? headings : headings.join('\t')];
  return [...top, ...heights.map((height, r) => [height, ...columns.map((column) => column[r])].join('\t'))].join('\n');
}
