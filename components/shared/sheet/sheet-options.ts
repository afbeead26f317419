import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { CarDocument } from '../../../core/document/car.js';
import { wayOf } from '../../../core/document/setup-in-use.js';
import { type OptionGroup, offered, type SheetSpec } from './sheet-spec.js';

/** A question of a sheet with its answers. */
export function renderOptions(
  group: OptionGroup,
  index: number,
  car: CarDocument,
  onChoose: (id: string) => void,
): TemplateResult | typeof nothing {
  const items = offered(group, car);
  if (items.length === 0) return nothing;
  const chosen = group.read(car);
  return html`<fieldset>
    <legend>${group.legend}</legend>
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
export function renderInstead(
  { instead }: SheetSpec,
  car: CarDocument,
  onShow: (key: string) => void,
): TemplateResult | typeof nothing {
  if (!instead || (instead.key === 'stopGap' && wayOf(car) === 'readings')) return nothing;
  return html`<button type="button" class="text-button" @click=${() => onShow(instead.key)}>${instead.label}</button>`;
}
