import '../../../components/define.js';
import type { BumplineClearance } from '../../../components/bumpline-clearance/bumpline-clearance.js';

let place: HTMLElement | undefined;

/** Puts markup on the page and waits for its element; takes away what the test before put there. */
export async function show(markup: string, widthPx = 360): Promise<BumplineClearance> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = `${widthPx}px`;
  place.innerHTML = markup;
  document.body.append(place);
  const element = place.querySelector('bumpline-clearance') as BumplineClearance;
  await element.settled;
  return element;
}

/** The sentence as one reads it, with the numbers that stand in fields and buttons. */
export function sentenceOf(element: Element): string {
  const read = (node: Node): string => {
    if (node instanceof HTMLInputElement) return `${node.value} `;
    if (node instanceof Text) return node.data;
    return [...node.childNodes].map(read).join('');
  };
  return read(element.shadowRoot!.querySelector('.sentence')!).replace(/\s+/g, ' ').trim();
}
