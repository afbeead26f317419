import { BUILDER } from './builder.words.js';

/** Copies a text, where the browser lets a page write to the clipboard; elsewhere it is not there. */
export class CopyButton {
  constructor(button: HTMLElement, status: HTMLElement, text: () => string) {
    button.hidden = !navigator.clipboard;
    const say = (word: string) => {
      button.textContent = word;
      status.textContent = word;
    };
    button.addEventListener('click', () => {
      // The answer may come late or be "no": nothing is claimed before.
      navigator.clipboard.writeText(text()).then(
        () => say(BUILDER.copied),
        () => say(BUILDER.notCopied),
      );
    });
    button.addEventListener('blur', () => say(BUILDER.copy));
  }
}
