import { html, nothing, type TemplateResult } from 'lit';
import { GRID } from './reading-grid.labels.js';

export interface NumberKeysOptions {
  decimalMark: string;
  /** Whether angles are written in degrees and minutes. */
  hasMinutes: boolean;
  /** Whether two figures stand in a cell. */
  hasPairs: boolean;
  /** What a minus means beside the sign key: "minus: top in". */
  signs: string;
  onKey: (key: string) => void;
}

/** Keys for figures: big enough for a thumb in a glove, with the minus that phones' own keypads lack. */
export function renderNumberKeys({
  decimalMark,
  hasMinutes,
  hasPairs,
  signs,
  onKey,
}: NumberKeysOptions): TemplateResult {
  const key = (name: string, face: string, label?: string, kind = '') =>
    html`<button
      type="button"
      class="key ${kind}"
      tabindex="-1"
      aria-label=${label ?? nothing}
      @pointerdown=${(event: PointerEvent) => event.preventDefault()}
      @click=${() => onKey(name)}
    >
      ${face}
    </button>`;
  return html`<div class="keys" role="group" aria-label=${GRID.keys.group}>
    ${['7', '8', '9'].map((digit) => key(digit, digit))} ${key('Backspace', '⌫', GRID.keys.erase)}
    ${['4', '5', '6'].map((digit) => key(digit, digit))} ${key('sign', '±', `${GRID.keys.sign}, ${signs}`)}
    ${['1', '2', '3'].map((digit) => key(digit, digit))} ${key('Enter', GRID.keys.next, GRID.keys.nextLabel, 'tall')}
    ${hasPairs ? key(' / ', '/', GRID.keys.part) : hasMinutes ? key('°', '°', GRID.keys.degrees) : key('00', '00')} ${key('0', '0')}
    ${hasMinutes && !hasPairs ? key('′', '′', GRID.keys.minutes) : key(decimalMark, decimalMark, GRID.keys.mark)}
  </div>`;
}

/** Types a key into a field at its caret, as a keyboard would; `sign` turns the sign of all of it, or of the last of two figures. */
export function typeKey(input: HTMLInputElement, key: string): void {
  const { selectionStart, selectionEnd, value } = input;
  const [from, to] = [selectionStart ?? value.length, selectionEnd ?? value.length];
  if (key === 'sign') {
    const from = value.lastIndexOf(' / ') < 0 ? 0 : value.lastIndexOf(' / ') + 3;
    const last = value.slice(from);
    const rest = last.replace(/^\s*[-−–+]\s*/, '');
    const caret = Math.max(0, to + (rest === last ? 1 : rest.length - last.length));
    input.value = value.slice(0, from) + (rest === last ? `−${last}` : rest);
    input.setSelectionRange(caret, caret);
  } else if (key === 'Backspace') {
    const start = from === to ? Math.max(0, from - 1) : from;
    input.setRangeText('', start, to, 'end');
  } else {
    input.setRangeText(key, from, to, 'end');
  }
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
}
