import type { At, CompareRequest } from '../../core/answers/compare.js';

/** What to compare where the two chosen cells cannot be over the bump that was asked for. */
export interface Reaches {
  /** The cell that ends first. */
  at: At;
  /** Travel from stock height at which it ends, mm; whether there because the suspension is solid. */
  end: number;
  isSolid: boolean;
  /** The most bump that both cells have, mm. */
  bump?: number;
  /** Of the cell that ends first: the lowest height from which it reaches over the bump that was asked for, mm of drop. */
  drop?: number;
}

/** Less bump than this tells nothing, mm: the doubt of most readings is as large as what it changes. Common practice, no source. */
const LEAST_BUMP_MM = 5;

/**
 * The bump, or the height, that would do; undefined where both cells are measured as it is.
 *
 * @param step to which lengths are offered, mm: a whole mm, or a twentieth of an inch
 */
export function whatReaches(request: CompareRequest, cells: { from: At; to: At }, step: number): Reaches | undefined {
  const { curves, heights, bump, solid = Number.POSITIVE_INFINITY } = request;
  const both = [cells.from, cells.to].map((at) => {
    const [low, high] = curves[at.curve]!.curve.domain;
    return { at, height: heights[at.height]!, low, end: Math.min(high, solid), isSolid: solid < high };
  });
  const leftOf = ({ height, end }: (typeof both)[number]) => end - height;
  const first = both.reduce((a, b) => (leftOf(b) < leftOf(a) ? b : a));
  const isHigh = both.some(({ height, low }) => height < low);
  if (!isHigh && leftOf(first) >= bump - 1e-9) return undefined;
  const down = (mm: number) => Math.floor(mm / step + 1e-9) * step;
  const most = down(leftOf(first));
  const drop = down(first.end - bump);
  const { at, end, isSolid } = first;
  return {
    at,
    end,
    isSolid,
    ...(!isHigh && most >= LEAST_BUMP_MM && { bump: most }),
    ...(drop >= Math.max(0, first.low) && drop < first.height && { drop }),
  };
}
