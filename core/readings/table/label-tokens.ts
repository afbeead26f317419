import { ABOUT_VALUES, ARROW, SIGN_HINT, UNIT } from './label-words.js';

/** One word, figure or mark of a label. */
export interface Token {
  text: string;
  start: number;
  end: number;
  kind:
    | 'word'
    | 'number'
    /** A length or an angle of the parts, `22 mm`: part of a name. */
    | 'size'
    | 'arrow'
    /** Sets what stands beside it off: a dash, a comma, a bracket. */
    | 'mark'
    /** Says what is read and in which unit. */
    | 'about';
}

const PARTS = /\d+(?:[.,/]\d+)*|[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]{2,})?|(?!\uFE0F)\S/gu;
const SIZE_UNIT = /^(?:mm|cm|in|inch|inches|["″”]|[°º]|deg|degrees?)$/i;
const SIGN = /^[-+−–]$/;
/** Behind a unit that is a preposition as well: `1 in lower`, not `pass 1 in bump`. */
const COMPARED = /^\s*(?:low|high|long|short|wid|narrow|thick|out|in|up|down|tief|höher|läng|kürz|bas|plus)/i;
const OPEN = /^[([]$/;
const CLOSE = /^[)\]]$/;

/**
 * @param canBeUnit whether a column of such values can be in the unit: `Stock 1 mm` is the first pass, in mm, of toe over a base;
 * camber is in no mm, so that the parts are of 1 mm
 */
export function tokensOf(text: string, canBeUnit: (unit: string) => boolean): Token[] {
  const tokens: Token[] = [];
  for (const { 0: part, index: start } of text.matchAll(PARTS)) {
    const end = start + part.length;
    const rest = text.slice(end);
    const last = tokens.at(-1);
    if (last?.kind === 'number' && SIZE_UNIT.test(part) && isSize(last, part, start, rest, canBeUnit)) {
      const sign = tokens.at(-2);
      // "lowered −20 mm", but not the dash of "OEM-20 mm".
      const isSigned =
        sign && SIGN.test(sign.text) && sign.end === last.start && (tokens.at(-3)?.end ?? -1) < sign.start;
      if (isSigned) tokens.splice(-2, 1);
      Object.assign(last, { kind: 'size', start: isSigned ? sign.start : last.start, end });
      last.text = text.slice(last.start, end);
    } else tokens.push({ text: part, start, end, kind: kindOfPart(part, rest) });
    if (/^steer$/i.test(part) && /^bump$/i.test(last?.text ?? ''))
      for (const one of tokens.slice(-2)) one.kind = 'about';
  }
  return withoutHints(tokens);
}

function kindOfPart(part: string, rest: string): Token['kind'] {
  if (/^\d/.test(part)) return 'number';
  if (ARROW.test(part)) return 'arrow';
  // "in" heads no column where words follow it.
  if (/^in$/i.test(part) && /^\s*[\p{L}\d]/u.test(rest)) return 'word';
  if (UNIT.test(part) || ABOUT_VALUES.test(part)) return 'about';
  return /^[\p{L}\p{M}#№∆σ±∅⌀]/u.test(part) ? 'word' : 'mark';
}

/** Whether a figure and the unit behind it are one size, and not the number of a pass with its column's unit behind it. */
function isSize(
  { text, end }: Token,
  unit: string,
  start: number,
  rest: string,
  canBeUnit: (unit: string) => boolean,
): boolean {
  if (/^in$/i.test(unit) && /^\s*\p{L}/u.test(rest) && !COMPARED.test(rest)) return false;
  const isLast = !/[\p{L}\d]/u.test(rest.replace(/[([][^)\]]*[)\]]/g, ''));
  return !(isLast && start > end && /^\d{1,2}$/.test(text) && canBeUnit(unit));
}

/** Brackets that hold nothing but units and what they say of signs are about the values, whatever they are made of. */
function withoutHints(tokens: Token[]): Token[] {
  const isHint = ({ kind, text }: Token) => kind === 'about' || SIGN_HINT.test(text);
  for (const [i, { text }] of tokens.entries()) {
    if (!OPEN.test(text)) continue;
    const close = tokens.findIndex((token, k) => k > i && CLOSE.test(token.text));
    const inside = tokens.slice(i + 1, close < 0 ? undefined : close);
    if (inside.length > 0 && inside.every(isHint)) for (const token of inside) token.kind = 'about';
  }
  return tokens;
}
