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

/** On a phone one picture is shown at a time: from the side there are the places as buttons. */
export async function fromTheSide(element: BumplineClearance): Promise<void> {
  const [, side] = element.shadowRoot!.querySelectorAll<HTMLButtonElement>('.which-view button');
  side!.click();
  await element.updateComplete;
  for (let i = 0; i < 40 && !element.shadowRoot!.querySelector('.side-view svg'); i++)
    await new Promise((resolve) => setTimeout(resolve, 25));
}
