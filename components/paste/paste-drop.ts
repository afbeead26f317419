import { isSheet } from './paste-file.js';

export interface DropOptions {
  /** Whether an event happens in the sheet's own dialog, whose fields take texts by themselves. */
  isOwn: (event: Event) => boolean;
  onText: (text: string) => void;
  onFile: (file: File) => void;
}

/** Whether an event happens in something that is typed into. */
const isField = (event: Event): boolean => {
  const [at] = event.composedPath();
  return at instanceof HTMLElement && (at.matches('input, textarea') || at.isContentEditable);
};

/** Handlers of `paste`, `dragover` and `drop`. What belongs into a field that has the focus is left to it. */
export function dropTarget({ isOwn, onText, onFile }: DropOptions) {
  return {
    paste(event: ClipboardEvent): void {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      const file = event.clipboardData?.files[0];
      if (event.defaultPrevented || (!text.trim() && !file)) return;
      if (text && isField(event) && (isOwn(event) || !isSheet(text))) return;
      event.preventDefault();
      if (text.trim()) onText(text);
      else onFile(file!);
    },
    dragover(event: DragEvent): void {
      const types = event.dataTransfer?.types ?? [];
      if (!types.includes('Files') && (isField(event) || !types.includes('text/plain'))) return;
      event.preventDefault();
      event.dataTransfer!.dropEffect = 'copy';
    },
    drop(event: DragEvent): void {
      const file = event.dataTransfer?.files[0];
      const text = event.dataTransfer?.getData('text/plain') ?? '';
      if (event.defaultPrevented || (!file && (isField(event) || !text.trim()))) return;
      event.preventDefault();
      if (file) onFile(file);
      else onText(text);
    },
  };
}
