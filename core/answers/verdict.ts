import type { GapAt, Verdict } from './clearance-answer.js';

/** From bad to good. */
const VERDICTS: readonly Verdict[] = ['touches', 'close', 'clears'];

export const rankOf = (verdict: Verdict): number => VERDICTS.indexOf(verdict);

/** @param needed what must stay free, margin and allowance, mm */
export function verdictOf({ gap, plusMinus }: Pick<GapAt, 'gap' | 'plusMinus'>, needed: number): Verdict {
  if (gap - plusMinus >= needed) return 'clears';
  return gap + plusMinus <= 0 ? 'touches' : 'close';
}
