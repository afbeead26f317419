import { InputError, type ProblemCode } from '../quantity/problem.js';

/** What stands on a sidewall. */
export interface TyreSize {
  /** As it is usually written: `225/45R17 91W`. */
  text: string;
  /** P or LT. */
  prefix?: string;
  /** Nominal section width S₁, mm. */
  sectionMm: number;
  /** Section height as a share of it, percent. */
  aspectPercent: number;
  construction: 'R' | 'D' | 'B';
  /** Nominal rim diameter, inches. */
  rimCode: number;
  loadIndex?: number;
  speedSymbol?: string;
}

const SIZE =
  /^(P|LT)?(\d{3})\/(\d{2,3})(?:Z?(R)|([DB])|-)(\d{2}(?:\.5)?)C?(?:(\d{2,3})(?:\/\d{2,3})?)?(\(?[A-HJ-NP-Z]\d?\)?)?(?:XL|RF|SL|HL)?$/;
const LIMITS = { section: [125, 355], aspect: [20, 85], rim: [10, 24] } as const;

/**
 * Reads a tyre's size: `225/45R17`, `P205/60R15`, `255/35 ZR18 94Y XL`, in either case and with spaces anywhere.
 *
 * @param path of the text, for problems
 * @throws InputError: missing, wrong-shape, or out-of-range with the bound that was crossed
 */
export function readTyreSize(text: string, path = 'size'): TyreSize {
  const fail = (code: ProblemCode, limit?: number) =>
    new InputError([{ code, path, value: text, ...(limit !== undefined && { limit }) }]);
  const plain = String(text ?? '')
    .toUpperCase()
    .replace(/\s+/g, '');
  if (!plain) throw fail('missing');
  const found = SIZE.exec(plain);
  if (!found) throw fail('wrong-shape');
  const [, prefix, section, aspect, , other, rim, load, speed] = found;
  const [sectionMm, aspectPercent, rimCode] = [Number(section), Number(aspect), Number(rim)];
  for (const [value, [least, most]] of [
    [sectionMm, LIMITS.section],
    [aspectPercent, LIMITS.aspect],
    [rimCode, LIMITS.rim],
  ] as const) {
    if (value < least || value > most) throw fail('out-of-range', value < least ? least : most);
  }
  const construction = (other ?? 'R') as TyreSize['construction'];
  const speedSymbol = speed?.replace(/[()]/g, '');
  const service = [load, speedSymbol].filter(Boolean).join('');
  return {
    text: `${prefix ?? ''}${section}/${aspect}${construction}${rim}${service && ` ${service}`}`,
    ...(prefix && { prefix }),
    sectionMm,
    aspectPercent,
    construction,
    rimCode,
    ...(load && { loadIndex: Number(load) }),
    ...(speedSymbol && { speedSymbol }),
  };
}
