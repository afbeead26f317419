import { html, nothing, type TemplateResult } from 'lit';
import type { GeometryOutput } from '../../core/answers/geometry.js';
import { changeDifference, explainedChange, outputDifference } from '../../core/answers/geometry-at.js';
import type { Doubted } from '../../core/answers/lowering.js';
import type { CarDocument } from '../../core/document/car.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { pointsMissing } from '../bumpline-lowering/bumpline-lowering.words.js';
import { shownName } from '../car/shown-names.words.js';
import { renderShares } from '../element/doubt-lists.js';
import { type Fact, renderFacts } from '../element/facts.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-geometry.labels.js';
import { isDoubtStated, type WorkbenchAnswer } from './geometry-view.js';
import { heightName } from './views.js';

const { changes: WORDS, why: WHY } = NAMES;

/** What the set in the sentence changes at the drop, each with its own ±; none without a set. */
export function changesOf(answer: WorkbenchAnswer, car: CarDocument, display: Display): Fact[] {
  const { bare, sets, shown, drop, over } = answer;
  const fitted = sets[shown];
  if (!fitted) return [];
  const { outputs } = bare.curves;
  const hasDoubt = isDoubtShown(answer, car);
  const { units, language } = display;
  const text = ({ value, plusMinus }: Doubted, quantity: Quantity): string => {
    const stated = hasDoubt ? plusMinus : undefined;
    const doubt = stated === undefined ? {} : { plusMinus: stated };
    // To whole millimetres where nothing says how well it is known.
    const shown = stated === undefined && quantity === 'travel' ? Math.round(value) : value;
    const size = formatQuantity(shown, quantity, units, { language, sign: 'always', ...doubt }).text;
    return stated !== undefined && Math.abs(value) <= stated ? WORDS.nothing(size) : size;
  };
  const height = (output: GeometryOutput): Doubted => outputDifference(fitted, bare, output, drop);
  const change = (output: GeometryOutput): Doubted => changeDifference(fitted, bare, output, drop + over, drop);
  return [
    { label: WORDS.rollCentre, text: text(height('rollCentreHeight'), 'travel') },
    { label: WORDS.camber(show(over, 'travel', display)), text: text(change('camber'), 'camberChange') },
    { label: WORDS.toe, text: outputs.toe ? text(change('toe'), 'toe') : WORDS.measureToe },
    { label: WORDS.scrubRadius, text: text(height('scrubRadius'), 'travel') },
  ];
}

/** Of a car that is nobody's, part a user's and part the example's, no ± is stated. */
const isDoubtShown = (answer: WorkbenchAnswer, car: CarDocument): boolean =>
  isDoubtStated(answer) && pointsMissing(car) === 0;

/** The same as a folded list under the sets. */
export function renderChanges(
  answer: WorkbenchAnswer,
  car: CarDocument,
  display: Display,
): TemplateResult | typeof nothing {
  const fitted = answer.sets[answer.shown];
  if (!fitted) return nothing;
  return html`<details class="changes">
    <summary>${WORDS.title(shownName(fitted.set.setup.name), heightName(answer.drop, display))}</summary>
    ${renderFacts(changesOf(answer, car, display))}
  </details>`;
}

/** What the ± of the camber change is made of, and that of what the set changes of it. */
export function renderWhy(answer: WorkbenchAnswer, car: CarDocument, display: Display): TemplateResult {
  if (!isDoubtShown(answer, car)) {
    return html`<details class="why"><summary>${WHY.title}</summary><p class="note">${NAMES.noDoubt}</p></details>`;
  }
  const { bare, sets, shown, drop, over } = answer;
  const fitted = sets[shown];
  const { language } = display;
  const bump = show(over, 'travel', display);
  const whole = explainedChange(fitted ?? bare, 'camber', drop + over, drop);
  return html`<details class="why">
    <summary>${WHY.title}</summary>
    <p class="note">${fitted ? WHY.camber(shownName(fitted.set.setup.name), bump) : WHY.bare(bump)}</p>
    ${renderShares(whole.contributions, language)}
    <p class="note">${NAMES.doubtNote}</p>
    ${
      fitted
        ? html`<p class="note">${WHY.change(shownName(fitted.set.setup.name))}</p>
            ${renderShares(changeDifference(fitted, bare, 'camber', drop + over, drop).contributions, language)}`
        : nothing
    }
  </details>`;
}
