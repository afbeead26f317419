import '../../../components/define.js';
import type { BumplineCompare } from '../../../components/bumpline-compare/bumpline-compare.js';

let place: HTMLElement | undefined;

/** Puts markup on the page and waits for its element; takes away what the test before put there. */
export async function show(markup: string, widthPx = 360): Promise<BumplineCompare> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = `${widthPx}px`;
  place.innerHTML = markup;
  document.body.append(place);
  const element = place.querySelector('bumpline-compare') as BumplineCompare;
  await element.settled;
  return element;
}

/**
 * Two invented sets on exact parabolas a t + c t², so that every figure can be worked out on paper: the change over b from d is
 * a b + c (2 d b + b²). Written to 1e-5° so that no rounding is in it.
 */
export const SETS = [
  { name: 'Standard joints', a: -0.014, c: 0.0001 },
  { name: 'Lowered joints', a: -0.02, c: 0.00012 },
] as const;
export const changeOf = (set: number, drop: number, bump: number): number =>
  SETS[set]!.a * bump + SETS[set]!.c * (2 * drop * bump + bump * bump);

export const TABLE = `<table><caption>Invented</caption>
  <thead><tr><th>Wheel travel (mm)</th>${SETS.map(({ name }) => `<th>${name} (°)</th>`).join('')}</tr></thead>
  <tbody>${Array.from({ length: 13 }, (_, i) => -30 + 10 * i)
    .map(
      (t) => `<tr><th>${t}</th>${SETS.map(({ a, c }) => `<td>${(a * t + c * t * t).toFixed(5)}</td>`).join('')}</tr>`,
    )
    .join('')}</tbody></table>`;

/** The sentence as one reads it. */
export function sentenceOf(element: Element): string {
  const read = (node: Node): string => {
    if (node instanceof HTMLInputElement) return `${node.value} `;
    if (node instanceof Text) return node.data;
    return [...node.childNodes].map(read).join('');
  };
  return read(element.shadowRoot!.querySelector('.sentence')!).replace(/\s+/g, ' ').trim();
}
