import type { GapAt } from './clearance.js';

/**
 * `clears`: at the bad end of the ± all that must stay free is left. `touches`: at the good end of the ± nothing is left; a gap of
 * 0 mm is contact. Anything between is too close to tell.
 */
export type Verdict = 'clears' | 'close' | 'touches';

/** From bad to good. */
const VERDICTS: readonly Verdict[] = ['touches', 'close', 'clears'];

export const rankOf = (verdict: Verdict): number => VERDICTS.indexOf(verdict);

/** @param needed what must stay free, margin and allowance, mm */
export function verdictOf({ gap, plusMinus }: Pick<GapAt, 'gap' | 'plusMinus'>, needed: number): Verdict {
  if (gap - plusMinus >= needed) return 'clears';
  return gap + plusMinus <= 0 ? 'touches' : 'close';
}
