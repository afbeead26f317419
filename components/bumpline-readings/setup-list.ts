import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type CarDocument, CORNER_NAMES, type CornerName } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { addSetup, emptySetup, removeSetup, renameSetup } from '../../core/document/setup-edits.js';
import { ownSetups, useSetup } from '../../core/document/setup-in-use.js';
import { setupOf } from '../../core/document/setups.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { worded } from '../../core/quantity/words.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { shownName } from '../car/shown-names.words.js';
import { derivedText } from '../element/left-out.js';
import { lower } from '../element/sentence.js';
import { forgetInstruments, renderInstruments } from '../inputs/instruments.js';
import { NAMES } from './bumpline-readings.labels.js';
import type { ReadingsView } from './readings-view.js';

const QUANTITIES = worded(
  () =>
    [
      ['camber', NAMES.camber],
      ['toe', NAMES.toe],
    ] as const,
);

/** The sets of parts of this car, each with its readings: which one is shown, its name, its corner, what the gauge read. */
export function renderSetups(app: ReadingsView): TemplateResult {
  const { car, setup } = app;
  const setups = car.setups ?? [];
  const isOwn = ownSetups(car).length > 0;
  const index = Math.max(0, setups.indexOf(setup));
  // Another set is shown then: what was typed for this one is none of its.
  const turn = (label: string, recipe: (car: CarDocument) => CarDocument) => {
    forgetInstruments(app.drafts, '');
    app.drafts.drop('zeroAt');
    app.change('setup', lower(label), recipe);
  };
  const select = (
    name: string,
    value: string,
    items: readonly (readonly [string, string])[],
    take: (id: string) => void,
  ) =>
    html`<label class="pick">${name}
      <select class="text" .value=${live(value)} @change=${(event: Event) => take((event.target as HTMLSelectElement).value)}>
        ${items.map(([id, text]) => html`<option value=${id} ?selected=${id === value}>${text}</option>`)}
      </select>
    </label>`;
  // In sight: of several sets only one is shown.
  const choice =
    setups.length > 1
      ? html`<div class="which-set">${select(
          NAMES.shown,
          String(index),
          setups.map(({ name }, i) => [String(i), name] as const),
          (id) => turn(NAMES.shown, (shown) => useSetup(shown, Number(id))),
        )}</div>`
      : nothing;
  const table = setupOf(car).by === 'page' ? app.pageTable : undefined;
  const leftOut = table?.derived.length ? html`<p class="note left-out">${derivedText(table)}</p>` : nothing;
  return html`${choice}${leftOut}<details class="setups">
    <summary>${NAMES.setup}: <b>${shownName(setup.name)}</b></summary>
    ${
      isOwn
        ? html`<label class="pick">${NAMES.setupName}
            <input class="text name" type="text" autocomplete="off" maxlength="60" .value=${live(setup.name)}
              @change=${(event: Event) => {
                const { value } = event.target as HTMLInputElement;
                app.change('setup', lower(NAMES.setupName), (named) => renameSetup(named, index, value));
                app.host.requestUpdate();
              }} />
          </label>`
        : html`<p class="note">${NAMES.notOwn}</p>`
    }
    ${
      isOwn
        ? [
            select(
              NAMES.corner,
              setup.cornerName,
              CORNER_NAMES.map((name) => [name, shownName(name)] as const),
              (cornerName) =>
                app.editShown(lower(NAMES.corner), (moved) => ({
                  ...moved,
                  cornerName: cornerName as CornerName,
                })),
            ),
            select(NAMES.quantity, setup.quantity, QUANTITIES, (quantity) =>
              app.editShown(lower(NAMES.quantity), (read) => ({
                ...read,
                quantity: quantity as ReadingQuantity,
              })),
            ),
          ]
        : nothing
    }
    ${isOwn ? [renderZero(app), renderDoubts(app)] : nothing}
    <div class="actions">
      <button type="button" class="text-button new-setup" @click=${() => turn(NAMES.newSetup, (grown) => addSetup(grown, withInstrumentsOf(setup, emptySetup(NAMES.newName, setup.quantity, setup.cornerName))))}>${NAMES.newSetup}</button>
      ${
        isOwn
          ? html`<button type="button" class="text-button" @click=${() => turn(NAMES.removeSetup, (left) => removeSetup(left, index))}>${NAMES.removeSetup}</button>`
          : nothing
      }
    </div>
  </details>`;
}

/** Other parts are read with the same gauge and tape, but from a height of their own. */
function withInstrumentsOf({ doubts: { gaugeScale, tapeScale } = {} }: Setup, setup: Setup): Setup {
  const doubts = { ...(gaugeScale !== undefined && { gaugeScale }), ...(tapeScale !== undefined && { tapeScale }) };
  return Object.keys(doubts).length > 0 ? { ...setup, doubts } : setup;
}

const renderDoubts = (app: ReadingsView): TemplateResult =>
  renderInstruments({
    setup: app.setup,
    drafts: app.drafts,
    display: app.display,
    path: '',
    onSet: (label, recipe) => app.edit(label, recipe),
    onText: () => app.host.requestUpdate(),
  });

/** Where the zero of the readings lies to stock height, for who measured a car that was lowered already. */
function renderZero(app: ReadingsView): TemplateResult {
  const { setup, drafts, display } = app;
  const { units, language } = display;
  const shown = formatQuantity(setup.zeroAt ?? 0, 'drop', units, { language }).text;
  const problem = drafts.problem('zeroAt');
  const typed = (event: Event) => {
    const zeroAt = drafts.type('zeroAt', (event.target as HTMLInputElement).value, 'drop', units);
    drafts.leave('zeroAt', 'drop', units);
    if (zeroAt !== undefined) {
      app.editShown(lower(NAMES.zeroAt), ({ zeroAt: _, ...rest }) => (zeroAt === 0 ? rest : { ...rest, zeroAt }));
    }
    app.host.requestUpdate();
  };
  return html`<label class="pick">${NAMES.zeroAt}
      <input class="text" type="text" autocomplete="off" inputmode="text" .value=${live(drafts.text('zeroAt') ?? shown)}
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby="zero-note" @change=${typed} />
    </label>
    <p class="note" id="zero-note">${NAMES.zeroNote}</p>`;
}
