import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type ToeCure, toeAtAmount } from '../../core/answers/toe-cure.js';
import { TOE_ADJUSTMENTS, type ToeAdjustment } from '../../core/linkage/toe-adjustment.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { renderSlider } from '../controls/slider.js';
import type { SliderTick } from '../controls/slider-ticks.js';
import { renderFacts } from '../element/facts.js';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-toe.labels.js';
import { type Cure, RANGE_MM } from './cure.js';
import { amountText, cureLines, isFlatter, optima, plateLine, remainsLines, triedLine } from './cure.words.js';
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
    })}
    <p class="note tried">${(cure.found && triedLine(cure.found, amount, display)) ?? WORDS.asItIs}</p>`;
}

/** What flattens toe, and what that leaves. */
export function renderCure(view: ToeView, cure: Cure): TemplateResult {
  const { answer, display } = view;
  const { found, doubt } = cure;
  return html`<section class="cure" aria-label=${WORDS.title}>
    <p><b>${WORDS.title}</b></p>
    ${
      answer && found
        ? html`${cureLines(found, doubt, display).map((line) => html`<p>${line}</p>`)} ${renderTry(view, cure)}`
        : html`<p class="note">${cure.fault ?? (cure.problems.length > 0 ? WORDS.beyond : WORDS.waiting)}</p>`
    }
  </section>`;
}

/** The three measures of flat, what one plate does, and how it is fitted. */
export function renderOptima({ car, display }: ToeView, { found }: Cure): TemplateResult {
  const { adjust = TOE_ADJUSTMENTS[0] } = car.toe ?? {};
  return html`<details class="optima-fold prints">
    <summary>${WORDS.fold}</summary>
    ${
      found
        ? html`${[...remainsLines(found, display), plateLine(found, display)].map((line) => html`<p>${line}</p>`)}
            ${renderFacts(optima(found, display), 'optima')}`
        : nothing
    }
    <p class="note">${WORDS.how[adjust]} ${WORDS.toeSet} ${WORDS.again}</p>
  </details>`;
}

/** The best amount at one tap. */
function renderTry(view: ToeView, { found }: Cure): TemplateResult | typeof nothing {
  const { minimax } = found!.correction;
  const best = Math.round(2 * minimax.amount) / 2;
  if (best === (view.car.toe?.amount ?? 0) || !isFlatter(minimax)) return nothing;
  const { display } = view;
  const use = () => {
    view.set(WORDS.step, { amount: best === 0 ? undefined : best });
    view.endStep();
  };
  const text = best === 0 ? WORDS.asIs : amountText(found!.adjust, best, display);
  return html`<button type="button" class="button try" @click=${use}>${WORDS.use(text)}</button>`;
}

/** Nearer to each other no shims are made, mm. */
const APART_MM = 0.5;

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
  const amounts = [leastSquares.amount, minimax.amount, ...(slope ? [slope.amount] : [])];
  // Marks in one place have one name.
  if (slope && Math.max(...amounts) - Math.min(...amounts) < APART_MM)
    return [at, tick(minimax.amount, WORDS.ticks.all)];
  return [
    at,
    ...(slope ? [tick(slope.amount, WORDS.ticks.slope)] : []),
    tick(leastSquares.amount, WORDS.ticks.leastSquares),
    tick(minimax.amount, WORDS.ticks.minimax),
  ];
}

/** How far the steering is turned: the wheels differ then. */
export function renderSteered(view: ToeView, cure: Cure, step: Step): TemplateResult {
  const { car, display } = view;
  const { rack = 0 } = car.toe ?? {};
  const { steered: TEXTS } = NAMES;
  return html`<details class="steered" ?open=${rack !== 0}>
    <summary>${TEXTS.fold}</summary>
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
    ${rack !== 0 && cure.turned ? html`<p class="note">${steeredText(cure.turned, view)}</p>` : nothing}
  </details>`;
}

/** What both wheels do with the steering turned, and which is which: a wheel that points inboard is the outer one of its turn. */
function steeredText(turned: ToeCure, { car, display }: ToeView): string {
  const { steered: TEXTS } = NAMES;
  const { amount = 0 } = car.toe ?? {};
  const { travel, at, window } = turned;
  const [here, there] = [travel.indexOf(at), travel.indexOf(at + window[1])];
  const change = (side: 'this' | 'other') => {
    const toe = toeAtAmount(turned, amount, side);
    return formatQuantity(toe[there]! - toe[here]!, 'toe', display.units, {
      language: display.language,
      sign: 'always',
    }).text;
  };
  const steer = toeAtAmount(turned, amount)[here]!;
  const tell = steer > 0 ? TEXTS.outer : TEXTS.inner;
  return tell(
    show(Math.abs(steer), 'steer', display),
    change('this'),
    change('other'),
    show(window[1], 'travel', display),
  );
}

/** As far as a road car's rack goes, mm: common practice, no source. */
const RACK_MM = 60;
