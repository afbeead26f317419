import { parseQuantity } from '../../quantity/parse.js';
import { METRIC } from '../../quantity/units.js';

/** What a cell holds before anything is known of its column. A mark of a gap counts as empty. */
export type CellKind = 'empty' | 'number' | 'word';

const GAP = /^(?:[-‐-―−.…*?×x/\\|:]+|n\/?a|nil|none|missing|missed|no reading)?$/i;
const ARROWS_UP = '[↑⬆▲△]\uFE0F?';
const ARROWS_DOWN = '[↓⬇▼▽]\uFE0F?';
/** A word marks the figure before it; before a figure it begins a name, `down 20 mm`. */
const MARKS = new RegExp(`${ARROWS_UP}|${ARROWS_DOWN}|(?<=\\d\\D{0,4})\\b(?:up|down)\\s*$`, 'gi');
const UP = new RegExp(
  `${ARROWS_UP}|\\b(?:up|upwards?|bump|jounce|rais(?:ed|ing)|rising|compress(?:ed|ing|ion))\\b`,
  'i',
);
const DOWN = new RegExp(
  `${ARROWS_DOWN}|\\b(?:down|downwards?|droop|rebound|lower(?:ed|ing)|falling|extend(?:ed|ing)|extension)\\b`,
  'i',
);

/** Which way the wheel was going by a heading's or a cell's words and arrows; undefined where they name neither or both. */
export function wheelDirectionOf(text: string): 'up' | 'down' | undefined {
  const up = UP.test(text);
  return up === DOWN.test(text) ? undefined : up ? 'up' : 'down';
}

/** The same in a column of directions, where a letter or a sign is enough. */
export function wheelDirectionMark(text: string): 'up' | 'down' | undefined {
  if (/^\s*(?:\+|u)\s*$/i.test(text)) return 'up';
  return /^\s*(?:[-‐-―−]|d)\s*$/i.test(text) ? 'down' : wheelDirectionOf(text);
}

/** What most cells are, seen at once. */
const PLAIN = /^[-+‐-―−]?(?:\d+[.,]?\d*|[.,]\d+)$/;

/** The figure of a cell that also carries an arrow, `−0.25 ↑`. */
export const withoutMarks = (text: string): string => (PLAIN.test(text) ? text : text.replace(MARKS, ' ').trim());

/** Whether a text is a figure in some notation, possible or not. */
function isNumber(text: string): boolean {
  if (!/[\d¼-¾⅐-⅞]/.test(text)) return false;
  return (['coordinate', 'linkAngle'] as const).some((quantity) => {
    const parsed = parseQuantity(text, quantity, METRIC);
    return parsed.ok || parsed.problem.code === 'ambiguous' || parsed.problem.code === 'out-of-range';
  });
}

/**
 * A figure with a mark behind it: 20*, 20², 20 [1]. No number can be read from it, but one was meant. A unit in brackets is no mark: a
 * figure with it heads a column of passes, `1 [deg]`.
 */
const MARKED =
  /^[-+‐-―−]?\d[\d.,]*\s*(?![[(]\s*(?:mm|cm|in|inch|deg|min|arcmin)\.?\s*[\])])(?:[*†‡§¶#?!^¹²³⁰-⁹₀-₉①-⓿❶-➓]+\d*|\[[^\]]{1,4}\]|\(\w{1,3}\))+$/iu;

export function kindOf(text: string): CellKind {
  const bare = text.trim();
  if (PLAIN.test(bare) || MARKED.test(bare)) return 'number';
  if (GAP.test(bare)) return 'empty';
  return isNumber(withoutMarks(text)) ? 'number' : 'word';
}

/** Cells of a row with a word in the first alone. */
export const isLine = (kinds: readonly CellKind[]): boolean =>
  kinds.length > 1 && kinds[0] === 'word' && kinds.every((kind, i) => (kind === 'empty') === i > 0);

const UNIT = /\s*(?:mm|cm|in|inch|inches|["”″])\.?$/i;

/** A figure as it stands, its unit left aside: to tell columns apart, never to compute with. NaN where it is none that could be. */
export function roughNumber(text: string): number {
  if (PLAIN.test(text)) return Number(text.replace(/[‐-―−]/, '-').replace(',', '.'));
  const bare = withoutMarks(text).replace(UNIT, '');
  for (const quantity of ['coordinate', 'linkAngle'] as const) {
    const parsed = parseQuantity(bare, quantity, METRIC);
    if (parsed.ok) return parsed.value;
    if (parsed.problem.choices) return parsed.problem.choices[0]!;
  }
  return Number.NaN;
}
