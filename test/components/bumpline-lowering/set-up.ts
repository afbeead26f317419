import '../contract/cores.js';
import '../../../components/define.js';
import type { BumplineLowering } from '../../../components/bumpline-lowering/bumpline-lowering.js';

export { meddle } from '../contract/cores.js';
export { REFERENCE_CHANGE_40, referenceCorner } from '../reference-corner.js';

/** Hard points of test/reference/derived_double_wishbone_3d.json, and its camber change over 40 mm of bump: −1.77792 − (−0.50000). */
export const wishboneCorner = {
  kind: 'wishbone',
  wheelCentre: [0, 760, 310],
  loadedRadius: 310,
  camber: -0.5,
  toe: 0.1,
  lowerArm: { front: [150, 360, 200], rear: [-160, 370, 210], ball: [5, 720, 190] },
  upperArm: { front: [110, 450, 480], rear: [-130, 460, 470], ball: [-15, 690, 500] },
  tieRod: { inner: [-150, 365, 262], outer: [-140, 695, 255] },
};
export const WISHBONE_CHANGE_40 = -1.27792;

export const referenceTable = `<table>
  <thead><tr><th>Hard point</th><th>x (mm)</th><th>y (mm)</th><th>z (mm)</th></tr></thead>
  <tbody>
    <tr><th>Lower arm, front pivot</th><td>20</td><td>340</td><td>195</td></tr>
    <tr><th>Lower arm, rear pivot</th><td>−290</td><td>350</td><td>205</td></tr>
    <tr><th>Ball joint</th><td>−5</td><td>700</td><td>185</td></tr>
    <tr><th>Top mount</th><td>−35</td><td>585</td><td>835</td></tr>
    <tr><th>Damper, low point</th><td>−18</td><td>632</td><td>470</td></tr>
    <tr><th>Tie rod, inner end</th><td>−140</td><td>345</td><td>268</td></tr>
    <tr><th>Tie rod, outer end</th><td>−135</td><td>660</td><td>262</td></tr>
    <tr><th>Wheel centre</th><td>0</td><td>745</td><td>310</td></tr>
    <tr><th>Loaded radius</th><td colspan="3">310</td></tr>
    <tr><th>Static camber</th><td colspan="3">−0.5</td></tr>
    <tr><th>Static toe</th><td colspan="3">0.1</td></tr>
  </tbody>
</table>`;

let place: HTMLElement | undefined;

/** Puts markup on the page and waits for its elements; takes away what the test before put there. */
export async function show(markup: string, widthPx = 360): Promise<BumplineLowering> {
  place?.remove();
  place = document.createElement('main');
  place.style.width = `${widthPx}px`;
  place.innerHTML = markup;
  document.body.append(place);
  const element = place.querySelector('bumpline-lowering') as BumplineLowering;
  await element.settled;
  return element;
}

export const root = (element: Element): ShadowRoot => element.shadowRoot as ShadowRoot;
export const find = <E extends Element = HTMLElement>(element: Element, selector: string): E =>
  root(element).querySelector(selector) as E;

/** The sentence as one reads it, with the drop that stands in its field. */
export function sentenceOf(element: Element): string {
  const read = (node: Node): string => {
    if (node instanceof HTMLInputElement) return `${node.value} `;
    if (node instanceof Text) return node.data;
    return [...node.childNodes].map(read).join('');
  };
  return read(find(element, '.sentence'))
    .replace(/[ \n]+/g, ' ')
    .trim();
}

export async function type(input: HTMLInputElement, text: string, leave = true): Promise<void> {
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  if (leave) {
    input.dispatchEvent(new Event('change', { bubbles: true }));
    input.blur();
  }
  await ((input.getRootNode() as ShadowRoot).host as BumplineLowering).settled;
}

export const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** The same, with the way of hard points chosen as a user does. */
export async function showPoints(markup: string, widthPx = 360): Promise<BumplineLowering> {
  const element = await show(markup, widthPx);
  find<HTMLButtonElement>(element, '.own').click();
  await wait(0);
  await element.settled;
  find<HTMLInputElement>(element, 'dialog input[value=points]').click();
  find<HTMLDialogElement>(element, 'dialog').close();
  await wait(0);
  await element.settled;
  return element;
}
