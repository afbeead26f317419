/**
 * A corner is never jacked into its bump stop: the stop takes the car's weight off its stands. It is raised, spring and bump stop out, to
 * a height that was worked out. These find words that ask for anything else.
 */

const BLOCK =
  /<\/?(?:p|li|td|th|dd|dt|h[1-6]|div|figcaption|caption|title|option|summary|q|text)\b[^>]*>|<meta\b|\n\s*\n/g;
const STRING = /'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g;

/**
 * What people read, block by block: paragraphs and cells of a page, strings of code.
 *
 * @param {{ path: string, text: string }} file its comments blanked out
 * @returns {{ at: number, raw: string, text: string }[]} `text`: without tags, as long as `raw`
 */
export function blocksOf({ path, text }) {
  const blank = (found) => ' '.repeat(found.length);
  const plain = (raw) => raw.replace(/<[^>]*>/g, blank).replace(/&nbsp;/g, blank);
  if (/\.(?:ts|mjs|js)$/.test(path)) {
    return [...text.matchAll(STRING)].map(({ 0: raw, index }) => ({ at: index, raw, text: plain(raw) }));
  }
  const blocks = [];
  let at = 0;
  for (const { 0: mark, index } of [...text.matchAll(BLOCK), { 0: '', index: text.length }]) {
    const raw = text.slice(at, index);
    if (raw.trim()) blocks.push({ at, raw, text: plain(raw) });
    // What stands in a `meta` is read as well.
    at = mark.startsWith('<meta') ? index : index + mark.length;
  }
  return blocks;
}

/** The jack is a thing, to jack is not. */
const MOVES =
  /\b(?:rais(?:e|ed|ing)|lift(?:ed|ing)?|push(?:ed|ing)?|press(?:ed|ing)?|wind(?:ing)?|crank(?:ed|ing)?|pump(?:ed|ing)?|jack(?:ed|ing)|(?<!\b(?:the|a|your|one) )jack)\b|\b(?:take|move|bring|run|go)\b[^.;]{0,30}\bup\b/i;
const GOAL =
  /\b(?:to|into|onto|against|until|till|up to|on|at|meets?|touch(?:es)?|reach(?:es)?)\b[^.;]{0,40}\b(?:bump )?stops?\b/i;
const TO_SOLID = /\b(?:to|at|on|onto|against|until|till)\s+(?:(?:the|its|a)\s+)?solid (?:bump )?stops?\b/i;
const SQUEEZED = /\b(?:compress|squash|squeeze|flatten)(?:ing)?\s+(?:(?:the|its|a)\s+)?(?:bump )?stop\b/i;
/** Not asked for: forbidden, the height at which it would be, or a bare damper on the bench. */
const NOT_ASKED = /\b(?:never|do not|don’t|must not|nobody)\b|\bstop would be\b|\bbare\b/i;
const SPRING_OUT =
  /\bsprings? (?:(?:is|are|must be|comes?|taken|being) )*(?:out\b(?! of)|removed\b)|\b(?:take|taking|with)\b[^.;:]{0,20}\bsprings?\b[^.;:]{0,8}\bout\b/i;
const FULL_BUMP_BY_HAND = /full bump[\s\S]*\bby hand\b|\bby hand\b[\s\S]*full bump/i;
const STOP_OUT =
  /\bstops? (?:is |are |comes? |taken |also )?out\b|\bstop and spring out\b|\bwithout the stop\b|\bthe (?:bump )?stop with it\b|#before-you-drive|working-safely\/#(?:through-its-travel|full-bump)/i;
/** Shorter is a heading. */
const LEAST_LENGTH = 40;

const sentences = (text) =>
  [...text.matchAll(/[^.!?;]+(?:[.!?;](?=\s|$|['"`])|$)|[^.!?;]+[.!?;]/g)].map(({ 0: sentence, index }) => ({
    sentence,
    index,
  }));

/**
 * @param {{ path: string, text: string }} file its comments blanked out
 * @returns {{ at: number, why: string }[]}
 */
export function unsafeWords(file) {
  return blocksOf(file).flatMap(({ at, raw, text }) => {
    const found = sentences(text).flatMap(({ sentence, index }) => {
      const start = at + index + sentence.search(/\S/);
      if (
        !NOT_ASKED.test(sentence) &&
        ((MOVES.test(sentence) && GOAL.test(sentence)) || TO_SOLID.test(sentence) || SQUEEZED.test(sentence))
      )
        return [
          {
            at: start,
            why: 'nobody raises a corner to its stop: spring and bump stop out, to a height that was worked out',
          },
        ];
      if (SPRING_OUT.test(sentence) && !/\bstops?\b/i.test(sentence))
        return [{ at: start, why: 'where the spring is out for moving a corner, the bump stop is out too: say both' }];
      return [];
    });
    if (text.trim().length >= LEAST_LENGTH && FULL_BUMP_BY_HAND.test(text) && !STOP_OUT.test(raw))
      found.push({
        at: at + raw.search(/\S/),
        why: 'full bump by hand is looked at with spring and bump stop out: say so, or link to how',
      });
    return found;
  });
}
