import type { ReadingQuantity } from '../reading.js';
import {
  type Draft,
  draftOf,
  isMark,
  isWay,
  nameOf,
  normal,
  type Summary,
  stemOf,
  takeCounters,
  takeNumber,
  takePassWords,
  takeSummary,
  words,
} from './label-draft.js';
import type { Token } from './label-tokens.js';
import { BUMP, DROOP, FILLER, GOING_UP, LETTER, LOWERED, ORDINAL_END, PASS, RAISED, ROMAN } from './label-words.js';

/** What the words over a column, or before a block of rows, say; told together with those of its siblings. */
export interface Label {
  /** What names the parts, as written; empty where nothing does. */
  set: string;
  /** The same for comparing: labels with one stem are of one set. */
  stem: string;
  /** What tells it from others of the same stem: `Pass 2`, `run b`, `morning`. */
  pass?: string;
  /** A word as pass, run or sweep says that it is one. */
  isPass: boolean;
  going?: 'up' | 'down';
  /** The direction was told by bump or droop, which name a side of zero as well. */
  side?: 1 | -1;
  summary?: Summary;
}

/**
 * What each label says, by its own words and by those of the others: `Stock 1` beside `Stock 2` is a pass of Stock; `lowered` is a way
 * of the wheel only where nothing else stands beside it, `down` also where it is set off or has its counterpart.
 *
 * @param texts of one sheet, in its order
 */
export function readLabels(texts: readonly string[], quantity: ReadingQuantity = 'camber'): Label[] {
  const isLengthUnit = (unit: string) => /^(?:mm|cm|in|inch|inches|["″”])$/i.test(unit);
  const canBeUnit = (unit: string) => quantity === 'toe' || !isLengthUnit(unit);
  const drafts = texts.map((text) => draftOf(text, canBeUnit));
  for (const draft of drafts) takeSummary(draft);
  for (const draft of drafts) takeNumber(draft);
  takeCounters(drafts);
  takeGoings(drafts);
  takePassWords(drafts);
  dropSummaries(drafts);
  return drafts.map(labelOf);
}

/** A spread or a difference is one of something: "max" over parts that stand nowhere else is their name. */
function dropSummaries(drafts: readonly Draft[]): void {
  const stems = drafts.filter(({ summary }) => !summary).map(stemOf);
  for (const draft of drafts) {
    if (!draft.summary || draft.summary === 'average') continue;
    const stem = stemOf(draft);
    // "Lowered vs stock" is a difference of the two.
    if (stem === '' || stems.some((one) => one !== '' && ` ${stem} `.includes(` ${one} `))) continue;
    delete draft.summary;
    draft.summaryTokens = [];
  }
}

interface Way {
  draft: Draft;
  /** Words and arrows for a way of the wheel. */
  ways: Token[];
  /** Words of a finished state, which name parts as often. */
  states: Token[];
  others: Token[];
  stem: string;
  /** The last word, or the first, is a way. */
  isLast: boolean;
  isFirst: boolean;
}

const upOrDown = (tokens: readonly Token[]): 'up' | 'down' | undefined => {
  const said = new Set(tokens.map(({ text }) => (GOING_UP.test(text) || RAISED.test(text) ? 'up' : 'down')));
  return said.size === 1 ? [...said][0] : undefined;
};

/** Which way the wheel went. */
function takeGoings(drafts: readonly Draft[]): void {
  const all = drafts.map((draft): Way => {
    const left = words(draft);
    const ways = left.filter(isWay);
    const states = left.filter(({ text }) => RAISED.test(text) || LOWERED.test(text));
    const others = left.filter((token) => !isWay(token) && !states.includes(token) && !FILLER.test(token.text));
    const isLast = ways.length > 0 && left.at(-1) === ways.at(-1);
    const isFirst = ways.length > 0 && left[0] === ways[0];
    return { draft, ways, states, others, stem: stemOf({ ...draft, directionTokens: ways }), isLast, isFirst };
  });
  const isPure = ({ others, ways, states }: Way) => others.length === 0 && ways.length > 0 !== states.length > 0;
  const hasName = all.some(({ others, ways, states }) => others.length > 0 || (ways.length > 0 && states.length > 0));
  const arePaired = new Set(all.filter(isPure).map(({ ways, states }) => upOrDown([...ways, ...states]))).size === 2;
  for (const one of all) {
    const { draft, ways, states } = one;
    const arrows = ways.filter(({ kind }) => kind === 'arrow');
    if (arrows.length > 0) draft.directionTokens = arrows;
    else if (isPure(one)) {
      // "Lowered" alone names parts unless "Raised" stands beside it; beside "Stock" a lone "Down" does too.
      const isAlone = states.length === 0 && (!hasName || arePaired);
      if (isAlone || (!hasName && arePaired)) draft.directionTokens = [...ways, ...states];
    } else {
      const [way] = ways;
      if (way && ways.length === 1 && isDirection(way, one, all)) draft.directionTokens = [way];
    }
  }
}

/** Whether `up` beside a name is a direction: set off by a mark, behind `going`, or last where others end in one too. */
function isDirection(way: Token, one: Way, all: readonly Way[]): boolean {
  const { draft, stem } = one;
  const solid = draft.tokens.filter((token) => !isMark(token));
  const i = solid.indexOf(way);
  const [before, after] = [solid[i - 1], solid[i + 1]];
  // "20 mm down" names parts.
  if (before?.kind === 'size' || after?.kind === 'size') return false;
  if (isSetOff(draft, way) || (before && /^(?:going|moving|wheel|way|direction)$/i.test(before.text))) return true;
  if (!one.isLast && !one.isFirst) return false;
  const others = all.filter(
    (other) => other !== one && other.ways.length === 1 && other.others.length + other.states.length > 0,
  );
  const isOpposed = others.some((other) => other.stem === stem && upOrDown(other.ways) !== upOrDown([way]));
  return isOpposed || (one.isLast && others.some((other) => other.stem !== stem && other.isLast));
}

/** Whether a mark stands between the word and the name. */
function isSetOff({ tokens }: Draft, way: Token): boolean {
  const i = tokens.indexOf(way);
  const isOff = (token: Token | undefined) =>
    token !== undefined && isMark(token) && /[-–−,;:/|([)\]]/.test(token.text);
  const [before, after] = [tokens[i - 1], tokens[i + 1]];
  return (!before || isOff(before)) && (!after || isOff(after)) && (isOff(before) || isOff(after));
}

function labelOf(draft: Draft): Label {
  const { text, passWords, directionTokens, summary } = draft;
  const name = nameOf(draft);
  const pass = passOf(draft);
  const [said] = directionTokens;
  const way = said ? upOrDown([said]) : signMark(text);
  const side = said && (DROOP.test(said.text) ? -1 : BUMP.test(said.text) ? 1 : undefined);
  return {
    set: name,
    stem: normal(name),
    isPass: passWords.some((word) => PASS.test(word.text)),
    ...(pass && { pass }),
    ...(way && { going: way }),
    ...(side && { side }),
    ...(summary && { summary }),
  };
}

/** "Pass 1 +", "Pass 1 −": a sign that stands alone at the end. */
function signMark(text: string): 'up' | 'down' | undefined {
  const bare = text
    .replace(/[([][^)\]]*[)\]]/g, '')
    .toLowerCase()
    .replace(/(?<!\p{L})(?:mm|cm|deg|°|′)(?!\p{L})/gu, '')
    .trim();
  if (/[\p{L}\p{N}]\s*\+$/u.test(bare)) return 'up';
  return /[\p{L}\p{N}]\s+[-–−]$/u.test(bare) ? 'down' : undefined;
}

function passOf({ text, tokens, passWords, counter }: Draft): string | undefined {
  const parts = [...passWords, ...counter].sort((a, b) => a.start - b.start);
  if (parts.length === 0) return undefined;
  const [count] = counter.filter((token) => !/^(?:[#№]|no|nr|n)$/i.test(token.text) && !ORDINAL_END.test(token.text));
  if (
    passWords.length === 0 &&
    count &&
    (/^(?:\d{1,2})$/.test(count.text) || LETTER.test(count.text) || ROMAN.test(count.text))
  ) {
    return `Pass ${count.text}`;
  }
  const [from, to] = [parts[0]!, parts.at(-1)!];
  const between = tokens.filter((token) => token.start > from.start && token.start < to.start && !isMark(token));
  // As written, where nothing else stands between.
  return between.every((token) => parts.includes(token))
    ? text.slice(from.start, to.end).replace(/\s+/g, ' ')
    : parts.map((part) => part.text).join(' ');
}
