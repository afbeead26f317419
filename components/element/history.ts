import type { SheetView } from './sheet-view.js';

type View = Pick<SheetView, 'drafts' | 'host' | 'model' | 'speak'>;

/** What undo would take back: a text that cannot be read goes first, so that no number goes with it. */
export function undoLabel({ drafts, model }: View): string | undefined {
  const unread = drafts.lastUnread;
  return unread === undefined ? model.undoLabel : `“${drafts.text(unread)}”`;
}

export function undo(view: View): void {
  const { drafts, host, model } = view;
  view.speak();
  const unread = drafts.lastUnread;
  if (unread === undefined) model.undo();
  else drafts.drop(unread);
  host.requestUpdate();
}

export function redo(view: View): void {
  view.speak();
  view.model.redo();
}

/**
 * Ctrl+Z (⌘Z), and with Shift redo, wherever the focus is on a sheet. In a field the browser itself takes back what is being typed; a
 * text that was left and cannot be read is taken back as the button does it.
 */
export function onUndoKeys(view: View): void {
  view.host.addEventListener('keydown', (event) => {
    const { key, ctrlKey, metaKey, altKey, shiftKey } = event;
    if (key.toLowerCase() !== 'z' || !(ctrlKey || metaKey) || altKey || event.defaultPrevented) return;
    const field = event.composedPath()[0] as Element;
    // What is typed there is not ours yet.
    if (field.matches('textarea, input[type=text]:not([aria-invalid=true]):not([readonly])')) return;
    event.preventDefault();
    (shiftKey ? redo : undo)(view);
  });
}
