/** What a reader does, and words may follow. */
const HEARD = [
  'click',
  'input',
  'change',
  'keydown',
  'focusin',
  'focusout',
  'pointerdown',
  'pointermove',
  'pointerup',
  'paste',
  'drop',
  'toggle',
  'close',
];

/**
 * What a reader does is answered in the element's language, whichever another one spoke last.
 *
 * @param root that the element is rendered into
 * @param speak has words taken in its language
 */
export function speakWhenHeard<Root extends Node>(root: Root, speak: () => void): Root {
  for (const type of HEARD) root.addEventListener(type, speak, { capture: true, passive: true });
  return root;
}
