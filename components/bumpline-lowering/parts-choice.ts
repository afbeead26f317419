import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { camberSetupOf, isPartsOnly, sourceKindOf, useSetup } from '../../core/document/setup-in-use.js';
import { shownName } from '../car/shown-names.words.js';
import { lower } from '../element/sentence.js';
import { NAMES } from './bumpline-lowering.labels.js';
import type { LoweringView } from './lowering-view.js';

/** Which set of parts the readings are of, where there are several; readings of toe make no answer here. */
export function renderParts(app: Pick<LoweringView, 'car' | 'change' | 'host'>): TemplateResult | typeof nothing {
  const { car } = app;
  const ofCamber = (car.setups ?? []).flatMap((setup, index) =>
    setup.quantity === 'camber' && !isPartsOnly(setup) ? [{ setup, index }] : [],
  );
  // An element that names its set is about that one.
  if (app.host.setup || sourceKindOf(car) !== 'readings' || ofCamber.length < 2) return nothing;
  const inUse = camberSetupOf(car)!;
  const choose = (event: Event) => {
    const index = Number((event.target as HTMLSelectElement).value);
    app.change('setup', `${NAMES.parts}, ${shownName(inUse.name)}`, (before) => useSetup(before, index));
  };
  return html`<label class="parts"
    >${NAMES.parts}
    <select class="quiet" @change=${choose}>
      ${ofCamber.map(
        ({ setup, index }) =>
          html`<option value=${index} .selected=${live(setup === inUse)}>${shownName(setup.name)}, ${lower(shownName(setup.cornerName))}</option>`,
      )}
    </select></label
  >`;
}
