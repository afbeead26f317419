import { inverse, Matrix, QrDecomposition } from 'ml-matrix';

/*
 * Ordinary least squares by a general-purpose matrix library (ml-matrix), to compare the project's own fit with. Nothing is
 * imported from core/. Columns: powers of travel/50 mm, one dummy for each pass but the first, and +½ / −½ for going up and
 * down; where it is asked for, one for a drift that is the same in all passes: the share of the pass that was read before, by rank of
 * height in the way it went. Textbook formulas (Draper and Smith, Applied Regression Analysis, from memory): b = QR solve, s² = RSS/(n − p),
 * cov = s² (XᵀX)⁻¹, variance of a contrast cᵀb = cᵀ cov c.
 */

export interface RegressionReading {
  travel: number;
  value: number;
  pass?: string;
  going?: 'up' | 'down';
  /** The first height of the pass once more, at its end. */
  again?: true;
}

const SCALE_MM = 50;

export interface Regression {
  dof: number;
  residualSd: number;
  rSquared: number;
  /** Degrees, by pass in order of first appearance, against the mean of all passes. */
  passOffsets: { pass: string | undefined; offset: number }[];
  /** Degrees between two travels, and its standard error. */
  change(to: number, from: number): { value: number; standardError: number };
}

export function independentRegression(
  readings: readonly RegressionReading[],
  degree: number,
  hasDrift = false,
): Regression {
  const passes = [...new Set(readings.map(({ pass }) => pass))].slice(1);
  // Where each pass went one way throughout, the way cannot be told from its zero.
  const hasWays = [...new Set(readings.map(({ pass }) => pass))].some(
    (name) => new Set(readings.filter(({ pass }) => pass === name).map(({ going }) => going)).size > 1,
  );
  const powers = (travel: number) => Array.from({ length: degree + 1 }, (_, k) => (travel / SCALE_MM) ** k);
  const progress = ({ travel, pass, going }: RegressionReading) => {
    const own = readings.filter((other) => other.pass === pass);
    const before = own.filter((other) => (going === 'down' ? other.travel > travel : other.travel < travel)).length;
    return before / (own.length - 1) - 0.5;
  };
  const rows = readings.map((reading) => {
    const { travel, pass, going } = reading;
    return [
    ...powers(travel),
    ...passes.map((name) => (name === pass ? 1 : 0)),
    ...(hasWays ? [going === 'up' ? 0.5 : going === 'down' ? -0.5 : 0] : []),
      ...(hasDrift ? [progress(reading)] : []),
    ];
  });
  const design = new Matrix(rows);
  const rank = rows[0]!.length;
  const y = Matrix.columnVector(readings.map(({ value }) => value));
  const b = new QrDecomposition(design).solve(y);
  const left = Matrix.sub(y, design.mmul(b)).to1DArray();
  const dof = rows.length - rank;
  const rss = left.reduce((sum, one) => sum + one * one, 0);
  const mean = y.to1DArray().reduce((sum, one) => sum + one, 0) / rows.length;
  const total = y.to1DArray().reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const zeros = [0, ...b.to1DArray().slice(degree + 1, degree + 1 + passes.length)];
  const meanZero = zeros.reduce((sum, zero) => sum + zero, 0) / zeros.length;
  const covariance = Matrix.mul(inverse(design.transpose().mmul(design)), rss / dof);
  return {
    dof,
    residualSd: Math.sqrt(rss / dof),
    rSquared: 1 - rss / total,
    passOffsets: zeros.map((zero, i) => ({
      pass: i === 0 ? readings[0]?.pass : passes[i - 1],
      offset: zero - meanZero,
    })),
    change(to, from) {
      const at = powers(from);
      const contrast = new Matrix([
        [...powers(to).map((power, k) => power - at[k]!), ...Array<number>(rank - degree - 1).fill(0)],
      ]);
      return {
        value: contrast.mmul(b).get(0, 0),
        standardError: Math.sqrt(contrast.mmul(covariance).mmul(contrast.transpose()).get(0, 0)),
      };
    },
  };
}
