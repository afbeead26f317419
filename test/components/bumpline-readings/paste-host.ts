import { html, LitElement } from 'lit';
import { pasteStyles } from '../../../components/bumpline-readings/paste.styles.js';
import { PasteSheet } from '../../../components/bumpline-readings/paste-sheet.js';
import type { ReadingsHost } from '../../../components/bumpline-readings/readings-host.js';
import { Announcer } from '../../../components/shared/announce.js';
import { sheetStyles } from '../../../components/shared/sheet.styles.js';
import { theme } from '../../../components/shared/theme.js';
import type { Setup } from '../../../core/document/setup.js';
import type { UnitSystem } from '../../../core/quantity/units.js';

const EMPTY: Setup = { name: 'Invented parts', cornerName: 'Front left', quantity: 'camber', readings: [] };

/** A small element around the paste sheet alone, with a past to step back into, as the element of the project has. */
export class PasteHost extends LitElement implements ReadingsHost {
  static override styles = [theme, sheetStyles, pasteStyles];
  readonly host = this;
  reading: { units: UnitSystem; language: string } = { units: { length: 'mm', angle: 'degrees' }, language: 'en' };
  setup: Setup = { ...EMPTY, readings: [{ travel: 0, value: -0.5 }] };
  isOwn = false;
  readonly announcer = new Announcer(this);
  readonly past: { label: string; setup: Setup; isOwn: boolean }[] = [];
  sheet = new PasteSheet(this);

  edit(label: string, recipe: (setup: Setup) => Setup): void {
    this.past.push({ label, setup: this.setup, isOwn: this.isOwn });
    this.setup = recipe(this.isOwn ? this.setup : { ...EMPTY, quantity: this.setup.quantity });
    this.isOwn = true;
    this.requestUpdate();
  }

  endStep(): void {}

  undo(): void {
    const step = this.past.pop();
    if (step) Object.assign(this, { setup: step.setup, isOwn: step.isOwn });
    this.requestUpdate();
  }

  override render() {
    const { paste, dragover, drop } = this.sheet.dropTarget;
    return html`${this.announcer.render()}
      <div class="sheet" @paste=${paste} @dragover=${dragover} @drop=${drop}>
        <button type="button" id="open" class="button" @click=${() => this.sheet.open()}>Paste readings</button>
        <input aria-label="another field" id="field" class="text" />
      </div>
      ${this.sheet.render()}`;
  }
}
if (!customElements.get('paste-host')) customElements.define('paste-host', PasteHost);
