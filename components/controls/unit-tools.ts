import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { CONTROLS } from './controls.labels.js';

/** The element whose units they are. */
interface Units {
  units: UnitSystem['length'];
  angles: UnitSystem['angle'];
}

/** Two quiet choices in the head of a sheet: lengths in mm or in, angles in degrees or arc minutes. */
export function renderUnitTools(host: Units, onLength?: () => void): TemplateResult {
  return html`<select
      class="quiet"
      aria-label=${CONTROLS.lengths}
      .value=${live(host.units === 'in' ? 'in' : 'mm')}
      @change=${(event: Event) => {
        host.units = (event.target as HTMLSelectElement).value as Units['units'];
        onLength?.();
      }}
    >
      <option value="mm">mm</option>
      <option value="in">in</option></select
    ><select
      class="quiet"
      aria-label=${CONTROLS.angles}
      .value=${live(host.angles === 'arcminutes' ? 'arcminutes' : 'degrees')}
      @change=${(event: Event) => {
        host.angles = (event.target as HTMLSelectElement).value as Units['angles'];
      }}
    >
      <option value="degrees">${CONTROLS.degrees}</option>
      <option value="arcminutes">${CONTROLS.arcminutes}</option>
    </select>`;
}
