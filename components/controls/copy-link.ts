import { html, nothing, type TemplateResult } from 'lit';
import { isUsers } from '../../core/document/provenance.js';
import type { CarModel } from '../car/car-model.js';
import type { Announcer } from '../element/announce.js';
import { copyText } from './clipboard.js';
import { CONTROLS } from './controls.labels.js';

/** The button that copies the page's address with anything of the user's in it, their car or what they ask of it, where the address is kept. */
export function renderCopyLink({ address, car }: CarModel, announcer: Announcer): TemplateResult | typeof nothing {
  const isAsked = car.compare || car.readingsOver !== undefined;
  if (!address || !(isUsers(car, 'corner') || isUsers(car, 'fit') || isAsked)) return nothing;
  return html`<button
      type="button"
      class="text-button copy-link"
      @click=${async (event: Event) => {
        const fallback = (event.currentTarget as Element).nextElementSibling as HTMLTextAreaElement;
        announcer.announce(await copyText(address.link, fallback));
      }}
    >
      ${CONTROLS.copyLink}</button
    ><textarea class="link-text" hidden readonly rows="3" aria-label=${CONTROLS.copyLink}></textarea>`;
}
