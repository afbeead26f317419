import { tags } from '../element/define.js';

const DIV = '[data-bumpline]';

/** By name, what no element is called and the author was told of. */
const told = new Set<string>();

/**
 * Puts into a `<div data-bumpline="lowering" data-drop="30">` the element that it stands for, with what stood in it: for systems that let
 * an author's `data-*` through, and no tags that they do not know. The div stays, and their styles with it. One that has its element
 * already, of another copy of this program too, is left alone.
 */
function upgrade(div: Element): void {
  const name = div.getAttribute('data-bumpline')!;
  const tag = `bumpline-${name}`;
  const known = customElements.get(tag) as { observedAttributes?: string[] } | undefined;
  if (!known) {
    if (!told.has(name))
      console.warn(
        `Bumpline: data-bumpline="${name}" is no element: write ${tags.map((one) => one.slice(9)).join(', ')}.`,
        div,
      );
    told.add(name);
    return;
  }
  if (div.querySelector(`:scope > ${tag}`)) return;
  const element = document.createElement(tag);
  // Nothing but what an element of ours takes: who lets `data-onclick` through would not let `onclick`.
  for (const attribute of known.observedAttributes ?? []) {
    const value = div.getAttribute(`data-${attribute}`);
    if (value !== null) element.setAttribute(attribute, value);
  }
  element.append(...div.childNodes);
  div.append(element);
}

/** A car's div comes before those inside it, which stay in its element. */
function upgradeIn(root: Element): void {
  for (const one of [root, ...root.querySelectorAll(DIV)]) if (one.matches(DIV)) upgrade(one);
}

/** Upgrades the divs of the page, those that come later too. */
export function upgradeDivs(): void {
  // What is inside a div must have come whole.
  if (document.readyState === 'loading') {
    document.addEventListener('DOMContentLoaded', upgradeDivs);
    return;
  }
  upgradeIn(document.documentElement);
  new MutationObserver((records) => {
    for (const { addedNodes } of records) for (const node of addedNodes) if (node instanceof Element) upgradeIn(node);
  }).observe(document, { childList: true, subtree: true });
}
