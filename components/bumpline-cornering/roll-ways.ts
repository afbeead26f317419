import { html, nothing, type TemplateResult } from 'lit';
import { ROLL_WAYS, type RollWay } from '../../core/document/roll-ways.js';
import { isOtherAxleHalf, loadMissing, rollWayOf, USUAL_CENTRE_PLUS_MINUS } from '../../core/document/turn-roll.js';
import { withTurn } from '../../core/document/turn-settings.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { renderSlider, type SliderOptions } from '../controls/slider.js';
import { type Display, lower, show } from '../element/sentence.js';
import { rollText, rollWithDoubt } from './bumpline-cornering.words.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';
import { ROLL } from './roll.labels.js';
import { loadRun, rollSheetOf } from './roll-sheets.js';
import { setLateral } from './sentence-view.js';

type Way = RollWay | 'typed';

/** Where the roll comes from, what that leaves out, and the other ways to come by it. */
export function renderRollWays(view: CorneringView, onShow: (key: string) => void): TemplateResult {
  const { rollWay, car } = view;
  const missing = car.turn?.rollFrom === 'load' && rollWay !== 'load' ? loadMissing(car) : [];
  const open = missing[0] && rollSheetOf(`turn.load.${missing[0]}`)?.key;
  const told = notes(view);
  return html`<section class="roll-ways" aria-label=${ROLL.title}>
    <p>${stands(view)}</p>
    <p class="ways">${(['typed', ...ROLL_WAYS] as const).map(
      (way) =>
        html`<button type="button" class="text-button" aria-pressed=${way === rollWay} @click=${() => press(view, way, onShow)}>${ROLL.ways[way]}</button>`,
    )}</p>
    ${
      open
        ? html`<p class="note">${ROLL.missing(missing.map((key) => ROLL.needs[key]).join(', '))}
            <button type="button" class="text-button" @click=${() => onShow(open)}>${ROLL.enter}</button></p>`
        : nothing
    }
    ${told.length > 0 ? html`<p class="note">${told.join(' ')}</p>` : nothing}
  </section>`;
}

/** As far as the slider goes, g; what is typed may go further. */
const SLIDER_G = 1.5;

/** The slider of what is held where the roll follows from it. */
export function renderLateral(view: CorneringView, step: NonNullable<SliderOptions['step']>): TemplateResult {
  const { car, display } = view;
  const lateral = car.turn?.load?.lateral ?? 0;
  return html`${renderSlider({
    id: 'lateral-slider',
    label: ROLL.sliderLateral,
    quantity: 'lateral',
    display,
    value: lateral,
    min: 0,
    max: Math.max(SLIDER_G, Math.ceil(lateral)),
    onInput: (g) => setLateral(view, lower(ROLL.sliderLateral), Math.round(100 * g) / 100),
    onChange: () => view.endDrag(),
    step,
  })}`;
}

function stands({ rollWay, roll, display, answer, car }: CorneringView): string {
  const { from } = ROLL;
  const isUsual = rollWay === 'typed' && car.turn?.roll === undefined;
  const isAnswered = answer?.suspensionRoll === roll && rollWay !== 'typed';
  return ROLL.is(
    isAnswered ? rollWithDoubt(answer, display) : rollText(roll, display),
    isUsual ? ROLL.usual : from[rollWay],
  );
}

/** Goes over to a way that is known already, and opens its sheet; a way that is not is only asked for. */
function press(view: CorneringView, way: Way, onShow: (key: string) => void): void {
  const { car, rollWay, hasLinks } = view;
  if (way === 'typed') {
    if (rollWay !== 'typed' || car.turn?.rollFrom) view.set(ROLL.step.typed, { rollFrom: undefined });
    view.sentence.askRoll();
    return;
  }
  if (way !== rollWay && rollWayOf(withTurn(car, { rollFrom: way })) === way)
    view.set(ROLL.step[way], { rollFrom: way });
  const [needed] = way === 'load' ? loadMissing(car) : [];
  const found = needed && rollSheetOf(`turn.load.${needed}`);
  onShow((way === 'load' ? (found ?? loadRun(hasLinks)[0]!) : rollSheetOf(`turn.roll.${way}`)!).key);
}

/** What a way takes for granted. */
function notes({ rollWay, answer, answeredCar, display }: CorneringView): string[] {
  const { turn } = answeredCar;
  if (rollWay === 'marks')
    return [
      ROLL.peaks,
      ...(turn?.marks?.inner === undefined ? [ROLL.innerTaken] : []),
      ...(turn?.marks?.plusMinus === undefined ? [ROLL.noRollDoubt] : []),
    ];
  if (rollWay === 'photo') {
    const { tyreRoll } = turn ?? {};
    return [
      tyreRoll === undefined ? ROLL.tyresIn : ROLL.tyresOff(rollText(tyreRoll, display)),
      ...(turn?.photoPlusMinus === undefined ? [ROLL.noRollDoubt] : []),
    ];
  }
  if (rollWay !== 'load' || !answer?.load) return [];
  const { axle, assumesOtherAxle } = answer.load;
  return [
    ...(isOtherAxleHalf(answeredCar) ? [ROLL.otherHalf] : []),
    assumesOtherAxle ? ROLL.oneAxle : ROLL.twoAxles,
    axle.stopTouchedAt === undefined && (turn?.load?.stopGap ?? answeredCar.stopGap) !== undefined
      ? ROLL.noStopRate
      : stopNote(axle, display),
    ...(axle.heave < 0 ? [ROLL.liftLeftOut] : []),
    ...(turn?.load?.unsprungMass === undefined
      ? []
      : [ROLL.transfer(formatQuantity(axle.loadTransfer, 'load', display.units, { language: display.language }).text)]),
    turn?.load?.centrePlusMinus === undefined
      ? ROLL.doubtTaken(show(USUAL_CENTRE_PLUS_MINUS, 'plusMinusLength', display))
      : ROLL.doubt,
  ];
}

function stopNote(
  { stopTouchedAt, isStopTouched, heave }: NonNullable<TurnOnSheet['load']>['axle'],
  display: Display,
): string {
  if (stopTouchedAt === undefined) return ROLL.noStop;
  const at = rollText(stopTouchedAt, display);
  if (!isStopTouched) return ROLL.stopFree(at);
  const lift = show(-heave, 'travel', display);
  return stopTouchedAt === 0 ? ROLL.stopTouchedStanding(lift) : ROLL.stopTouched(at, lift);
}
