import { CONTROLS } from './controls.labels.js';

/**
 * Puts a text on the clipboard; where that is not allowed, into a field with all of it selected.
 *
 * @returns what became of it, for people
 */
export async function copyText(text: string, fallback: HTMLTextAreaElement): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    fallback.hidden = true;
    return CONTROLS.copied;
  } catch {
    // No permission, or no secure context: an embedding page decides that, not the reader.
    fallback.hidden = false;
    fallback.value = text;
    fallback.focus();
    fallback.select();
    return CONTROLS.selected;
  }
}
