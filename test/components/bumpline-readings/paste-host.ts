import { html, LitElement } from 'lit';
import { Announcer } from '../../../components/element/announce.js';
import { pasteStyles } from '../../../components/paste/paste.styles.js';
import { PasteSheet } from '../../../components/paste/paste-sheet.js';
import type { ReadingsHost } from '../../../components/paste/readings-host.js';
import { sheetStyles } from '../../../components/theme/sheet.styles.js';
import { theme } from '../../../components/theme/theme.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import type { Setup } from '../../../core/document/setup.js';
import { withSetup } from '../../../core/document/setup-edits.js';
import { setupOf } from '../../../core/document/setups.js';
import type { UnitSystem } from '../../../core/quantity/units.js';

const EXAMPLE: Setup = {
  name: 'Invented parts',
  cornerName: 'Front left',
  quantity: 'camber',
  readings: [{ travel: 0, value: -0.5 }],
};

/** A small element around the paste sheet alone, with a past to step back into, as the element of the project has. */
export class PasteHost extends LitElement implements ReadingsHost {
  static override styles = [theme, sheetStyles, pasteStyles];
  readonly host = this;
  display: { units: UnitSystem; language: string } = { units: { length: 'mm', angle: 'degrees' }, language: 'en' };
  /** A page shows something; nothing is the user's own. */
  car: CarDocument = { ...EMPTY_CAR, setups: [EXAMPLE], provenance: { setups: { by: 'page' } } };
  keepsAll = false;
  declare takesEither?: true;
  readonly announcer = new Announcer(this);
  readonly past: { label: string; car: CarDocument }[] = [];
  sheet = new PasteSheet(this);

  get setup(): Setup {
    return setupOf(this.car).setup;
  }

  set setup(setup: Setup) {
    this.car = { ...this.car, setups: [setup] };
  }

  get isOwn(): boolean {
    return setupOf(this.car).isOwn;
  }

  set isOwn(isOwn: boolean) {
    this.car = { ...this.car, provenance: { setups: { by: isOwn ? 'user' : 'page' } } };
  }

  edit(label: string, recipe: (setup: Setup) => Setup): void {
    this.changeSets(label, (car) => withSetup(car, recipe));
  }

  changeSets(label: string, recipe: (car: CarDocument) => CarDocument): void {
    this.past.push({ label, car: this.car });
    this.car = recipe(this.car);
    this.requestUpdate();
  }

  endStep(): void {}

  undo(): void {
    this.car = this.past.pop()?.car ?? this.car;
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
