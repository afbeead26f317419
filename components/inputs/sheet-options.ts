import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { CarDocument } from '../../core/document/car.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { type OptionGroup, offered, type SheetSpec } from './sheet-spec.js';

/** Short answers stand beside each other where there are more than these. */
const MANY = 4;
/** So few in a row stand beside their question. */
const FEW = 3;
/** More than these are a list to unfold. */
const LISTED = 8;

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
  if (items.length > LISTED) {
    return html`<div class="field">
      <label for="option-${index}">${group.legend}</label>
      <select
        class="text listed"
        id="option-${index}"
        .value=${live(chosen)}
        @change=${(event: Event) => onChoose((event.target as HTMLSelectElement).value)}
      >
        ${items.map(({ id, label }) => html`<option value=${id} ?selected=${id === chosen}>${label}</option>`)}
      </select>
    </div>`;
  }
  return html`<fieldset class=${group.inRow && items.length <= FEW ? 'beside' : nothing}>
    <legend>${group.legend}</legend>
    <div class="options ${group.inRow ? 'in-row' : items.length > MANY ? 'many' : ''}">
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
  if (!instead || (instead.key === 'stopGap' && sourceKindOf(car) === 'readings')) return nothing;
  return html`<button type="button" class="text-button" @click=${() => onShow(instead.key)}>${instead.label}</button>`;
}
