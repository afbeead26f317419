import type { SheetView } from './sheet-view.js';

/** A button that was pressed may be gone with what it was about: a keyboard goes on at the way back, and not at the top of the page. */
export async function keepFocus(view: Pick<SheetView, 'host' | 'answered'>): Promise<void> {
  const { host } = view;
  await host.updateComplete;
  await view.answered();
  await host.updateComplete;
  const root = host.renderRoot as ShadowRoot;
  const isLost = root.activeElement === null && host.ownerDocument.activeElement === host.ownerDocument.body;
  if (isLost) root.querySelector<HTMLElement>('.undo')?.focus({ preventScroll: true });
}
