import { isMissing, numberProblem, shown } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';

/** What the sidewall says. */
export interface TyreSize {
  /** As the standards write it, `P205/60R15 94Y`; marks such as XL left out. */
  text: string;
  prefix?: 'P' | 'LT';
  /** Nominal section width S₁, mm. */
  sectionMm: number;
  /** Nominal section height as a percentage of the nominal section width. */
  aspectPercent: number;
  /** Radial, diagonal (`D` or `-`), bias-belted. */
  construction: 'R' | 'D' | 'B';
  /** Rim diameter code: roughly inches, whole. */
  rimCode: number;
  /** Of the single tyre where two are given. */
  loadIndex?: number;
  speedSymbol?: string;
}

const LEAST_AND_MOST = { sectionMm: [125, 355], aspectPercent: [20, 85], rimCode: [10, 24] } as const;

/** Digits are never joined over a space. A speed letter before the R is how tyres were once marked. */
const SIZE =
  /^(P|LT)?\s*(\d{3})\s*\/?\s*(\d\d)\s*(ZRF?|[SHV]R|RF?|[DB/-])?\s*(\d\d)\s*C?\s*(?:\(?(([12]?\d\d)(?:\/[12]?\d\d)?)\s*([A-HJ-NP-WY])?\)?)?(?:\s*(?:XL|EXTRA LOAD|REINFORCED|RFT?|TL|FR|M\+S))*$/;

/**
 * Reads `245/40R18`, `p205/60r15`, `255/35 ZR 18 (94Y) XL`, `2254517`, `225/45-17`; without a letter for the construction,
 * radial. Throws InputError at `path`: `missing`, `wrong-shape` for what is no metric size (`31x10.5R15`), `out-of-range`
 * for what no car tyre has.
 */
export function readTyreSize(text: string, path = 'size'): TyreSize {
  const problems: Problem[] = [];
  const size = tyreSizeOf(problems, text, path);
  if (!size) throw new InputError(problems);
  return size;
}

/** The same; adds to `problems` what keeps the text from being a size, and gives undefined then. */
export function tyreSizeOf(problems: Problem[], text: unknown, path: string): TyreSize | undefined {
  const given = typeof text === 'string' ? text.trim().toUpperCase() : text;
  const found = typeof given === 'string' && SIZE.exec(given);
  if (!found) {
    problems.push({ code: isMissing(given) ? 'missing' : 'wrong-shape', path, value: shown(text) });
    return undefined;
  }
  const [, prefix, section, aspect, middle = '', rim, service = '', load, symbol] = found;
  const numbers = { sectionMm: Number(section), aspectPercent: Number(aspect), rimCode: Number(rim) };
  const wrong = Object.entries(LEAST_AND_MOST).flatMap(
    ([key, [least, most]]) => numberProblem(path, numbers[key as keyof typeof numbers], least, most) ?? [],
  );
  problems.push(...wrong);
  if (wrong.length > 0) return undefined;
  const construction = middle === '-' ? 'D' : middle === 'D' || middle === 'B' ? middle : 'R';
  const letters = middle.includes('R') ? middle : construction;
  const speedSymbol = symbol ?? /^[SHV]/.exec(middle)?.[0];
  return {
    text: `${prefix ?? ''}${section}/${aspect}${letters}${rim} ${service}${symbol ?? ''}`.trim(),
    ...(prefix && { prefix: prefix as 'P' | 'LT' }),
    ...numbers,
    construction,
    ...(load && { loadIndex: Number(load) }),
    ...(speedSymbol && { speedSymbol }),
  };
}
