import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { fitSetup, fittedSetup, sourceKindOf } from '../../core/document/setup-in-use.js';
import { shownName } from '../car/shown-names.words.js';
import type { SheetView } from '../element/sheet-view.js';
import { FITTED } from './fitted.labels.js';

/** Which set of parts is on the car's links, where it has any: readings were taken with what was on. */
export function renderFitted(app: Pick<SheetView, 'car' | 'change'>): TemplateResult | typeof nothing {
  const { car } = app;
  const sets = (car.setups ?? []).flatMap((setup, index) => (setup.parts?.length ? [{ setup, index }] : []));
  if (sets.length === 0 || sourceKindOf(car) === 'readings' || car.curve) return nothing;
  const fitted = fittedSetup(car);
  const choose = ({ target }: Event) => {
    const { value } = target as HTMLSelectElement;
    const label = FITTED.step(fitted?.name ?? FITTED.none);
    app.change('fitted', label, (before) => fitSetup(before, value === '' ? undefined : Number(value)));
  };
  return html`<label class="fitted-choice"
    >${FITTED.label}
    <select class="quiet" @change=${choose}>
      <option value="" .selected=${live(fitted === undefined)}>${FITTED.none}</option>
      ${sets.map(({ setup, index }) => html`<option value=${index} .selected=${live(setup === fitted)}>${shownName(setup.name)}</option>`)}
    </select></label
  >`;
}
