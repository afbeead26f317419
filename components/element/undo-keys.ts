import type { SheetView } from './sheet-view.js';

/**
 * Ctrl+Z (⌘Z) and with Shift redo, wherever the focus is on a sheet. In a field the browser itself takes back what is being typed;
 * a text that was left and cannot be read is taken back as the button does it.
 */
export function onUndoKeys(view: Pick<SheetView, 'host' | 'drafts' | 'undo' | 'redo'>): void {
  view.host.addEventListener('keydown', (event) => {
    if (event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const [target] = event.composedPath();
    const isTyped = target instanceof HTMLInputElement && target.type === 'text' && !target.readOnly;
    const isUnread = target instanceof HTMLInputElement && target.getAttribute('aria-invalid') === 'true';
    if (event.defaultPrevented || target instanceof HTMLTextAreaElement || (isTyped && !isUnread)) return;
    event.preventDefault();
    if (event.shiftKey) view.redo();
    else view.undo();
  });
}
