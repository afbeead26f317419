import { type Token, tokensOf } from './label-tokens.js';
import {
  AVERAGE,
  DIFFERENCE,
  FILLER,
  GOING_DOWN,
  GOING_UP,
  LETTER,
  OCCASION,
  ORDINAL,
  ORDINAL_END,
  PASS,
  PASS_TOO,
  ROMAN,
  SPREAD,
  STANDARD,
} from './label-words.js';

export type Summary = 'average' | 'spread' | 'difference';

/** A label on its way to being understood: what was taken out of its name so far, and as what. */
export interface Draft {
  text: string;
  /** Of what may name something: neither units nor what is read. */
  tokens: Token[];
  passWords: Token[];
  counter: Token[];
  directionTokens: Token[];
  summary?: Summary;
  summaryTokens: Token[];
}

/** More passes nobody takes, and part numbers begin. */
const MOST_COUNTED = 12;

export const isMark = ({ kind }: Token): boolean => kind === 'mark';
export const isWay = ({ kind, text }: Token): boolean =>
  kind === 'arrow' || GOING_UP.test(text) || GOING_DOWN.test(text);
const isNumberSign = ({ text }: Token): boolean => /^[#№]$/.test(text);

export function draftOf(text: string, canBeUnit: (unit: string) => boolean): Draft {
  const tokens = tokensOf(text, canBeUnit).filter(({ kind }) => kind !== 'about');
  return { text, tokens, passWords: [], counter: [], directionTokens: [], summaryTokens: [] };
}

/** Tokens that are still a draft's name. */
const rest = ({ tokens, passWords, counter, directionTokens, summaryTokens }: Draft): Token[] => {
  const taken = new Set([...passWords, ...counter, ...directionTokens, ...summaryTokens]);
  return tokens.filter((token) => !taken.has(token));
};
export const words = (draft: Draft): Token[] => rest(draft).filter((token) => !isMark(token));

/** The rest as it was written, without what only joins words at its ends. */
export function nameOf(draft: Draft): string {
  const kept = rest(draft);
  const isEnd = (token: Token) => isMark(token) || isNumberSign(token) || FILLER.test(token.text);
  const from = kept.findIndex((token) => !isEnd(token));
  if (from < 0) return '';
  let name = '';
  let end = 0;
  for (const token of kept.slice(from, kept.findLastIndex((one) => !isEnd(one)) + 1)) {
    if (name && token.start > end) name += ' ';
    name += token.text;
    end = token.end;
  }
  return name
    .replace(/[([]\s*[)\]]/g, ' ')
    .replace(/([-,;:/–−])(?:\s*[-,;:/–−])+/g, '$1')
    .replace(/\s+(?=[,;:)\]])/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

/** For comparing: without case, accents, marks and plurals. */
export const normal = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}.,]+/gu, ' ')
    .replace(/(\p{L}{3,})s(?!\p{L})/gu, '$1')
    .trim();

export const stemOf = (draft: Draft): string => normal(nameOf(draft));

/** Averages and the like: their words, and how many they are of. */
export function takeSummary(draft: Draft): void {
  const { tokens } = draft;
  const at = (test: RegExp) => tokens.filter(({ kind, text }) => kind === 'word' && test.test(text));
  const all = tokens.filter((token) => !isMark(token));
  const [only] = all;
  const spread = all.length === 1 && /^n$/i.test(only!.text) ? [only!] : at(SPREAD);
  for (const [summary, found] of [
    ['spread', spread],
    ['difference', at(DIFFERENCE)],
    ['average', at(AVERAGE)],
  ] as const) {
    if (found.length === 0) continue;
    draft.summary = summary;
    const counts = tokens.filter(
      ({ kind, text }) => kind === 'number' || /^n$/i.test(text) || PASS.test(text) || PASS_TOO.test(text),
    );
    const taken = new Set([...found, ...(summary === 'average' ? counts : [])]);
    // "Std dev": the first word alone is of standard parts.
    const i = all.indexOf(found[0]!);
    if (summary === 'spread' && i > 0 && STANDARD.test(all[i - 1]!.text)) taken.add(all[i - 1]!);
    draft.summaryTokens = [...taken];
    return;
  }
  const spelt = spreadSpelt(tokens);
  if (spelt.length > 0) Object.assign(draft, { summary: 'spread', summaryTokens: spelt });
}

/** "s.d.", "écart-type": words that only together are of a spread. */
function spreadSpelt(tokens: readonly Token[]): Token[] {
  for (const [pattern, count] of [
    [/^s\.d\.?$/i, 4],
    [/^[ée]cart[- ]?type$/i, 3],
  ] as const) {
    for (let i = 0; i < tokens.length; i++) {
      for (let n = 2; n <= count; n++) {
        const some = tokens.slice(i, i + n);
        if (pattern.test(some.map(({ text }) => text).join(''))) return some;
      }
    }
  }
  return [];
}

const isCount = ({ kind, text }: Token): boolean =>
  kind === 'number' && /^\d{1,2}$/.test(text) && Number(text) <= MOST_COUNTED;
const isOrdinal = ({ text }: Token): boolean => ORDINAL.test(text);
const isLetter = ({ kind, text }: Token): boolean => kind === 'word' && (LETTER.test(text) || ROMAN.test(text));

/** The number or the letter of a pass: beside a word for it, behind a number sign, last or first. */
export function takeNumber(draft: Draft): void {
  if (draft.summary) return;
  draft.counter = countOf(draft);
  // A number sign is nothing without its number.
  const signs = draft.tokens.filter((token) => isNumberSign(token) && !draft.counter.includes(token));
  if (draft.counter.length > 0) draft.counter = [...signs, ...draft.counter];
}

/** Puts the words for passes aside on its way. */
function countOf(draft: Draft): Token[] {
  const solid = draft.tokens.filter((token) => !isMark(token));
  draft.passWords = [
    ...solid.filter(({ text }) => PASS.test(text)),
    ...solid.filter(({ text }) => PASS_TOO.test(text)),
  ];
  const of = (from: number, to: number) => solid.slice(from, to + 1);
  /** Where a number begins that ends at `at`, "1st": −1 where none does. */
  const begins = (at: number): number => {
    const [token, before] = [solid[at], solid[at - 1]];
    if (!token) return -1;
    if (isCount(token) || isOrdinal(token)) return at;
    return before && isCount(before) && before.end === token.start && ORDINAL_END.test(token.text) ? at - 1 : -1;
  };
  for (const word of draft.passWords) {
    const i = solid.indexOf(word);
    let next = i + 1;
    while (solid[next] && /^(?:#|№|no|nr|n)$/i.test(solid[next]!.text)) next++;
    const after = solid[next];
    const before = begins(i - 1);
    if (after && (isCount(after) || isOrdinal(after) || isLetter(after))) return of(i + 1, next);
    if (before >= 0) return of(before, i - 1);
  }
  const sharp = solid.findIndex((token, i) => isNumberSign(token) && solid[i + 1] && isCount(solid[i + 1]!));
  const last = solid.findLastIndex((token) => !isWay(token) && !draft.passWords.includes(token));
  const first = solid.findIndex((token) => !isWay(token) && !draft.passWords.includes(token));
  const [ended, begun] = [begins(last), solid[first]];
  if (sharp >= 0) return of(sharp, sharp + 1);
  if (ended >= 0 && !isOrdinal(solid[ended]!)) return of(ended, last);
  if (begun && isCount(begun)) return of(first, begins(first + 1) === first ? first + 1 : first);
  return begun && isOrdinal(begun) && draft.passWords.length > 0 ? [begun] : [];
}

/** Letters, Roman numbers, ordinals and occasions count passes where what else stands there is the same. */
export function takeCounters(drafts: readonly Draft[]): void {
  const groups = new Map<string, { draft: Draft; token: Token }[]>();
  for (const draft of drafts) {
    if (draft.counter.length > 0 || draft.summary) continue;
    const left = words(draft).filter((token) => !isWay(token));
    const occasions = left.filter(
      ({ text }) => OCCASION.test(text) || /^\d{1,2}[./]\d{1,2}(?:[./]\d{2,4})?$/.test(text),
    );
    if (occasions.length > 0) {
      draft.counter = occasions;
      continue;
    }
    const [first, last] = [left[0], left.at(-1)];
    const token = last && (isLetter(last) || isOrdinal(last)) ? last : first && isOrdinal(first) ? first : undefined;
    if (!token) continue;
    const key = stemOf({ ...draft, counter: [token], directionTokens: draft.tokens.filter(isWay) });
    groups.set(key, [...(groups.get(key) ?? []), { draft, token }]);
  }
  for (const [key, group] of groups) {
    const isOne = (draft: Draft) => group.some((one) => one.draft === draft);
    const isBeside = key !== '' && drafts.some((draft) => !isOne(draft) && !draft.summary && stemOf(draft) === key);
    const distinct = new Set(group.map(({ token }) => token.text.toLowerCase())).size;
    if (distinct > 1 || isBeside) for (const { draft, token } of group) draft.counter = [token];
  }
}

/**
 * A word for a pass is no name, unless it is one elsewhere and nothing else would name these parts: `Serie 1` beside `Tiefer 1`, the
 * Serie of `1. Durchgang Serie`, the set of `Set 1 pass 2`.
 */
export function takePassWords(drafts: readonly Draft[]): void {
  for (const draft of drafts) {
    const sure = draft.passWords.filter(({ text }) => PASS.test(text));
    if (sure.length > 0) draft.passWords = sure;
  }
  const isNamed = drafts.some((draft) => !draft.summary && words(draft).length > 0);
  for (const draft of drafts) {
    if (words(draft).length > 0) continue;
    const sure = draft.passWords.filter(({ text }) => PASS.test(text));
    if (isNamed || (sure.length > 0 && drafts.length > 1)) draft.passWords = sure;
  }
}
