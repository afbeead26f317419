import { dataText } from './data-text.js';

/** Not seen, struck out, or not text. */
const UNSEEN = new Set(['STYLE', 'SCRIPT', 'TEMPLATE', 'NOSCRIPT', 'DEL', 'S', 'STRIKE', 'RT', 'RP']);
/** What holds something else than text: a figure in one of them is set in marks that no number has. */
const FOREIGN = new Set(['INPUT', 'SELECT', 'TEXTAREA', 'METER', 'PROGRESS', 'CANVAS', 'IFRAME', 'OBJECT', 'TABLE']);
const FORMULA = 'msup, msub, msubsup, mfrac, mroot, msqrt, mover, munder';
const BLOCKS = new Set(['BR', 'P', 'DIV', 'LI', 'UL', 'OL', 'DL', 'DT', 'DD', 'SECTION', 'DETAILS', 'SUMMARY', 'HR']);

/** A footnote's mark: 1, a, *, [1], (b), `1, 2`; not m, which is a unit. */
const MARK = /^(?:[[(]?(?:\d{1,3}|[a-lnp-z]|([a-z])\1|[*†‡§¶‖#]{1,3})[\])]?(?:\s*[,;]\s*(?=.)|$))+$/i;
const IN_BRACKETS = /^[[(]?[^\d\s[\]()]{1,2}[\])]?$|^[[(].{1,3}[\])]$/;
const NOTE_CLASS = /(?:^|[\s_-])(?:foot|end)?note|(?:^|[\s_-])(?:fn|refs?|reference|cite)(?:[\s_-]|$)/i;
const HIDDEN_CLASS = /(?:^|\s)(?:sr-only|visually-?hidden|screen-reader(?:-text)?|a11y-hidden)(?:\s|$)/i;
/** Marks of an angle, units, fractions and the endings of ordinals that are set high, but belong to what stands before them. */
const RAISED = [
  [/^[o°º]$/i, '°'],
  [/^['’′]$/, '′'],
  [/^["”″]$/, '″'],
  [/^(?:mm|cm|in)$/i, ' $&'],
  [/^(?:st|nd|rd|th|tm|®|™)$/i, '$&'],
  [/^\d+\s*[/⁄]\s*\d+$/, ' $&'],
  [/^[¼-¾⅐-⅞]$/, '$&'],
] as const;
/** Set high, a sign begins a power or a tolerance, and such a word is another unit: no footnote. */
const NO_FOOTNOTE = /^[-+−±]|^(?:m|ft|thou|mil|yd|deg)$/i;

const SIGN = /^\s*[-+−–±]\s*$/;
const DIGIT_FIRST = /^[^\p{L}\d]*\d/u;

/**
 * The text of a cell, as far as it is a number, a unit or a name. Left out: footnote marks (`sup`, `sub`, links to a note), what is
 * hidden or struck out, scripts and styles. A `<data value>` stands for its text. What is none of it stays, marked where it would
 * read as a digit (10³, two lines of figures), so that such a cell is no number.
 */
export function cellText(cell: Element): string {
  const read = (isShown: boolean) => {
    const lines = textOf(cell, isShown)
      .split('\n')
      .map((line) => line.replace(/\s+/g, ' ').trim())
      .filter((line) => line !== '');
    return lines.join(lines.length > 1 && lines.every((line) => DIGIT_FIRST.test(line)) ? '; ' : ' ');
  };
  // What only assistive technology is kept from is all there is.
  return read(false) || (cell.querySelector('[aria-hidden=true]') ? read(true) : '');
}

function textOf(parent: Node, isShown: boolean): string {
  let text = '';
  const nodes = [...parent.childNodes];
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i]!;
    if (node instanceof Text) text += node.data.replace(/\s+/g, ' ');
    else if (node instanceof Element) {
      const fraction = fractionAt(nodes, i);
      if (fraction) {
        text += ` ${fraction.text}`;
        i = fraction.last;
      } else text += elementText(node, text, isShown, nodes[i + 1]);
    }
  }
  return text;
}

const seenAs = new WeakMap<Element, boolean>();

/**
 * By its attributes and the names of its classes; by the page's own style sheets only as long as the page shows it, for once the
 * element has drawn itself its light DOM is not shown, and has no style.
 */
function isHidden(element: Element): boolean {
  const { display, visibility } = (element as HTMLElement).style ?? {};
  if (element.hasAttribute('hidden') || display === 'none' || visibility === 'hidden') return true;
  if (HIDDEN_CLASS.test(element.className)) return true;
  const known = seenAs.get(element);
  if (known !== undefined) return known;
  const style = element.isConnected ? getComputedStyle(element) : undefined;
  if (!style?.display) return false;
  const hidden = style.display === 'none' || style.visibility === 'hidden';
  seenAs.set(element, hidden);
  return hidden;
}

/** @param before what stands before it in its parent @param next the node behind it */
function elementText(element: Element, before: string, isShown: boolean, next: Node | undefined): string {
  const name = element.nodeName.toUpperCase();
  const inner = () => textOf(element, isShown);
  if (UNSEEN.has(name) || isHidden(element)) return '';
  if (element.getAttribute('role') === 'doc-noteref') return '';
  if (NOTE_CLASS.test(element.className) && MARK.test(inner().trim())) return '';
  // A sign kept from screen readers is seen by everybody else.
  if (!isShown && element.getAttribute('aria-hidden') === 'true') return SIGN.test(inner()) ? inner() : '';
  if (name === 'INPUT' && (element as HTMLInputElement).type === 'hidden') return '';
  if (FOREIGN.has(name)) return ` ‹${(element as HTMLInputElement).value ?? inner()}›`;
  if (name === 'IMG') return element.getAttribute('alt') ?? '';
  if (name === 'MATH') return element.querySelector(FORMULA) ? ` ‹${inner()}›` : inner();
  if (name === 'DATA') return dataText(element.getAttribute('value') ?? '', inner().trim());
  if (name === 'SUP' || name === 'SUB') return raised(element, before, inner().trim(), next);
  if (name === 'A') return linked(element, inner());
  // Smaller digits behind a number are as likely a footnote as a part of it.
  if (name === 'SMALL' && /\d$/.test(before.trim()) && /^\s*\d/.test(inner())) return `\n${inner()}`;
  return BLOCKS.has(name) ? `\n${inner()}\n` : inner();
}

function raised(element: Element, before: string, text: string, next: Node | undefined): string {
  const known = RAISED.find(([pattern]) => pattern.test(text));
  if (known) return text.replace(known[0], known[1]);
  const isLink = element.querySelector('a[href*="#"], [role=doc-noteref]') !== null;
  if (isLink || text === '') return '';
  const isPower = /(?:^|[×x·⋅*.]\s*)[-−]?10$/i.test(before.trim()) && /^[-−+]?\d+$/.test(text);
  const isFraction = /^\s*[/⁄]/.test(next?.textContent ?? '');
  return isPower || isFraction || NO_FOOTNOTE.test(text) ? `^${text}` : '';
}

/** A link beside a number that is no more than a footnote's mark; one that holds the number, or its unit, is its text. */
function linked(link: Element, text: string): string {
  const mark = text.trim();
  const beside = link.parentNode!.textContent!.replace(text, '');
  if (!/\d/.test(beside) || !MARK.test(mark)) return text;
  return IN_BRACKETS.test(mark) || link.getAttribute('href')?.includes('#') ? '' : ` ${text}`;
}

/** `<sup>1</sup>⁄<sub>4</sub>` */
function fractionAt(nodes: readonly Node[], i: number): { text: string; last: number } | undefined {
  const [top, bar, bottom] = nodes.slice(i, i + 3);
  if (top?.nodeName !== 'SUP' || bottom?.nodeName !== 'SUB' || !/^\s*[/⁄]\s*$/.test(bar?.textContent ?? ''))
    return undefined;
  const text = `${top.textContent!.trim()}/${bottom.textContent!.trim()}`;
  return /^\d+\/\d+$/.test(text) ? { text, last: i + 2 } : undefined;
}
