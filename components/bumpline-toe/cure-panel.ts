import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type ToeCure, toeAtAmount } from '../../core/answers/toe-cure.js';
import { TOE_ADJUSTMENTS, type ToeAdjustment } from '../../core/linkage/toe-adjustment.js';
import { renderSlider } from '../controls/slider.js';
import type { SliderTick } from '../controls/slider-ticks.js';
import { renderFacts } from '../element/facts.js';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-toe.labels.js';
import { type Cure, RANGE_MM } from './cure.js';
import { amountText, cureLines, optima } from './cure.words.js';
import type { ToeView } from './toe-view.js';

const { cure: WORDS } = NAMES;

type Step = { end(): void; cancel(): void };

/** What is moved, and by how much: the curve under it follows. */
export function renderMoved(view: ToeView, cure: Cure, step: Step): TemplateResult {
  const { car, display } = view;
  const { adjust = TOE_ADJUSTMENTS[0], amount = 0 } = car.toe ?? {};
  const choose = ({ target }: Event) => {
    const chosen = (target as HTMLSelectElement).value as ToeAdjustment;
    // How far it was moved was said of another end.
    view.set(WORDS.adjustStep, { adjust: chosen === TOE_ADJUSTMENTS[0] ? undefined : chosen, amount: undefined });
  };
  return html`<label class="fitted-choice"
      >${WORDS.choose}
      <select class="quiet adjust" @change=${choose}>
        ${TOE_ADJUSTMENTS.map((one) => html`<option value=${one} .selected=${live(one === adjust)}>${WORDS.adjust[one]}</option>`)}
      </select></label
    >
    ${renderSlider({
      id: 'amount-slider',
      label: WORDS.slider[adjust],
      quantity: 'partLength',
      display,
      value: amount,
      min: Math.min(-RANGE_MM, Math.floor(amount)),
      max: Math.max(RANGE_MM, Math.ceil(amount)),
      ticks: ticks(view, cure),
      onInput: (mm) => view.set(WORDS.step, { amount: mm === 0 ? undefined : mm }, 'toe.amount'),
      onChange: () => view.endDrag(),
      step,
    })}`;
}

/** What flattens toe, what that leaves, and why. */
export function renderCure(view: ToeView, cure: Cure): TemplateResult {
  const { answer, car, display } = view;
  const { adjust = TOE_ADJUSTMENTS[0] } = car.toe ?? {};
  const { found, doubt } = cure;
  return html`<section class="cure" aria-label=${WORDS.title}>
    <p><b>${WORDS.title}</b></p>
    ${
      answer && found
        ? html`${cureLines(found, doubt, display).map((line) => html`<p>${line}</p>`)}
          ${renderTry(view, cure)}
          ${renderFacts(optima(found, display), 'optima')}
          <p class="note">${WORDS.how[adjust]} ${WORDS.toeSet} ${WORDS.again}</p>`
        : html`<p class="note">${cure.fault ?? (cure.problems.length > 0 ? WORDS.beyond : WORDS.waiting)}</p>`
    }
  </section>`;
}

/** The best amount at one tap. */
function renderTry(view: ToeView, { found }: Cure): TemplateResult | typeof nothing {
  const { minimax } = found!.correction;
  const best = Math.round(2 * minimax.amount) / 2;
  if (best === (view.car.toe?.amount ?? 0)) return nothing;
  const { display } = view;
  const use = () => {
    view.set(WORDS.step, { amount: best === 0 ? undefined : best });
    view.endStep();
  };
  const text = best === 0 ? WORDS.asIs : amountText(found!.adjust, best, display);
  return html`<button type="button" class="button try" @click=${use}>${WORDS.use(text)}</button>`;
}

/** Where toe is flattest, by three measures. */
function ticks({ display }: ToeView, { found }: Cure): SliderTick[] {
  const at: SliderTick = { at: 0, label: WORDS.asIs, kind: 'plain' };
  if (!found) return [at];
  const { slope, leastSquares, minimax } = found.correction;
  const size = (amount: number) => show(Math.round(10 * amount) / 10, 'partLength', display);
  const tick = (amount: number, name: string): SliderTick => ({
    at: amount,
    label: `${name} ${size(amount)}`,
    kind: 'turn',
  });
  return [
    at,
    ...(slope ? [tick(slope.amount, WORDS.ticks.slope)] : []),
    tick(leastSquares.amount, WORDS.ticks.leastSquares),
    tick(minimax.amount, WORDS.ticks.minimax),
  ];
}

/** How far the steering is turned: the wheels differ then. */
export function renderSteered(view: ToeView, { found }: Cure, step: Step): TemplateResult {
  const { car, display } = view;
  const { rack = 0 } = car.toe ?? {};
  const { steered: TEXTS } = NAMES;
  const steer = found && found.rack !== 0 ? steerOf(found) : undefined;
  return html`<section class="steered">
    ${renderSlider({
      id: 'rack-slider',
      label: TEXTS.label,
      quantity: 'partLength',
      display,
      value: rack,
      min: Math.min(-RACK_MM, Math.floor(rack)),
      max: Math.max(RACK_MM, Math.ceil(rack)),
      ticks: [{ at: 0, label: TEXTS.ahead, kind: 'plain' }],
      onInput: (mm) => view.set(WORDS.rackStep, { rack: mm === 0 ? undefined : mm }, 'toe.rack'),
      onChange: () => view.endDrag(),
      step,
    })}
    ${steer === undefined ? nothing : html`<p class="note">${(steer > 0 ? TEXTS.outer : TEXTS.inner)(show(Math.abs(steer), 'steer', display))}</p>`}
  </section>`;
}

/** As far as a road car's rack goes, mm: common practice, no source. */
const RACK_MM = 60;

/** How far the wheel is steered where the car stands, degrees: a wheel that points inboard is the outer one of its turn. */
function steerOf(cure: ToeCure): number {
  const at = cure.travel.indexOf(cure.at);
  return toeAtAmount(cure, 0)[at]!;
}
