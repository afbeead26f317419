import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { CarDocument } from '../../core/document/car.js';
import type { OptionGroup, SheetSpec } from './sheet-spec.js';

/** A question of a sheet with its answers. */
export function renderOptions(
  { legend, items, read }: OptionGroup,
  index: number,
  car: CarDocument,
  onChoose: (id: string) => void,
): TemplateResult {
  const chosen = read(car);
  return html`<fieldset>
    <legend>${legend}</legend>
    <div class="options">
      ${items.map(
        ({ id, label }) => html`<label class="choice"
          ><input
            type="radio"
            name="option-${index}"
            value=${id}
            .checked=${live(id === chosen)}
            @change=${() => onChoose(id)}
          /><span>${label}</span></label
        >`,
      )}
    </div>
  </fieldset>`;
}

/** The way to what can be given in a sheet's place. */
export function renderInstead({ instead }: SheetSpec, onShow: (key: string) => void): TemplateResult | typeof nothing {
  if (!instead) return nothing;
  return html`<button type="button" class="text-button" @click=${() => onShow(instead.key)}>${instead.label}</button>`;
}
