import type { LitElement } from 'lit';
import type { SheetView } from './sheet-view.js';

/** A button that was pressed may be gone with what it was about: a keyboard goes on at the way back, and not at the top of the page. */
export async function keepFocus(view: Pick<SheetView, 'host' | 'answered'>): Promise<void> {
  const { host } = view;
  await host.updateComplete;
  await view.answered();
  await host.updateComplete;
  const root = host.renderRoot as ShadowRoot;
  if (isLost(host)) root.querySelector<HTMLElement>('.undo')?.focus({ preventScroll: true });
}

/** Whether a keyboard stands nowhere: what had the focus is gone. */
const isLost = (host: LitElement): boolean =>
  (host.renderRoot as ShadowRoot).activeElement === null &&
  host.ownerDocument.activeElement === host.ownerDocument.body;

/**
 * A dialog has closed. What opened it may be gone with what it was about, and what was given in it changed the answer: a keyboard, and the
 * eye, go on at the sentence.
 *
 * @param isTaken something was taken as a whole: the sentence is what one wants to see, wherever the button stands
 */
export async function focusSentence(host: LitElement, isTaken = false): Promise<void> {
  await host.updateComplete;
  if (!isTaken && !isLost(host)) return;
  const sentence = host.renderRoot.querySelector<HTMLElement>('.sentence');
  if (!sentence) return;
  sentence.tabIndex = -1;
  sentence.focus({ preventScroll: true });
  const { top, bottom } = sentence.getBoundingClientRect();
  if (top < 0 || bottom > host.ownerDocument.defaultView!.innerHeight) host.scrollIntoView({ block: 'start' });
}
