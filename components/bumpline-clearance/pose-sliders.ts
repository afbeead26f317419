import { html, type ReactiveController, type TemplateResult } from 'lit';
import { toShown } from '../../core/quantity/units.js';
import { renderSlider } from '../controls/slider.js';
import type { SliderTick } from '../controls/slider-ticks.js';
import { show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { findMotion, knownMotion } from './clearance-question.js';
import type { ClearanceView } from './clearance-view.js';
import { type DrawnWheels, type Steered, steeredTo, steerRange, tightest } from './drawn-wheels.js';

const { picture: WORDS } = NAMES;

/** Each takes half of a phone's width, CSS px. */
const HALF = 138;

/** Where the pictures show the wheel: at the cursor's travel, and steered as each place is tightest until somebody steers it. */
export class PoseSliders implements ReactiveController {
  readonly #view: ClearanceView;
  /** What somebody wants to see of the answer's place: degrees on the scale of the motion's toe. */
  #wanted: { answer: unknown; place: number | undefined; steer: number } | undefined;
  #stop: (() => void) | undefined;

  constructor(view: ClearanceView) {
    this.#view = view;
    view.host.addController(this);
  }

  hostConnected(): void {
    this.#stop = this.#view.cursor.subscribe(() => this.#follow());
  }

  hostDisconnected(): void {
    this.#stop?.();
  }

  hostUpdated(): void {
    this.#follow();
  }

  /** Degrees that somebody steered it to; undefined: as it is tightest. */
  get wanted(): number | undefined {
    const { answer, selected } = this.#view;
    const wanted = this.#wanted;
    return wanted && wanted.answer === answer && wanted.place === selected ? wanted.steer : undefined;
  }

  steered(drawn: DrawnWheels, place: number): Steered {
    const { wanted } = this;
    const motion = wanted === undefined ? undefined : knownMotion(drawn.asked);
    return wanted === undefined || !motion ? tightest(drawn, place) : steeredTo(drawn, motion, wanted);
  }

  render(drawn: DrawnWheels, place: number): TemplateResult {
    const { answer, asked } = drawn;
    const { display, cursor } = this.#view;
    const [from, to] = answer.range;
    const { solid } = answer.budget.bump;
    const ticks: SliderTick[] = [
      { at: answer.drop, label: WORDS.ride, kind: 'plain' },
      ...(solid ? [{ at: solid.travel, label: WORDS.full, kind: 'limit' as const }] : []),
    ];
    const travel = renderSlider({
      id: 'travel-slider',
      label: WORDS.travel,
      quantity: 'travel',
      display,
      value: cursor.travel,
      min: from,
      max: to,
      ticks,
      width: HALF,
      onInput: (mm) => cursor.set(mm, 'slider'),
      onChange: () => {},
    });
    if (!answer.isSteered || asked.lock === undefined) return html`<div class="poses">${travel}</div>`;
    const motion = knownMotion(asked);
    const [left, right] = motion ? steerRange(motion) : [-asked.lock, asked.lock];
    const { steer } = this.steered(drawn, place);
    const tight = tightest(drawn, place).steer;
    const { isAhead } = answer.places[place]!.decisive;
    // To the right on the slider is to the right of the car.
    const turn = asked.isLeft ? 1 : -1;
    return html`<div class="poses">
      ${travel}
      ${renderSlider({
        id: 'steer-slider',
        label: WORDS.steer,
        quantity: 'steer',
        display,
        value: turn * (this.wanted ?? steer),
        min: Math.min(turn * left, turn * right),
        max: Math.max(turn * left, turn * right),
        ticks: [
          { at: turn * drawn.poses.ahead, label: WORDS.aheadTick, kind: 'plain' },
          ...(isAhead ? [] : [{ at: turn * tight, label: WORDS.tightest, kind: 'limit' as const }]),
        ],
        width: HALF,
        valueText: steerText(turn * steer, drawn),
        onInput: (degrees) => this.#steer(turn * degrees),
        onChange: () => {},
      })}
    </div>`;
  }

  #steer(steer: number): void {
    const { answer, selected, asked, host } = this.#view;
    this.#wanted = { answer, place: selected, steer };
    if (asked && !knownMotion(asked))
      void findMotion(asked).then(
        () => host.requestUpdate(),
        () => {},
      );
    host.requestUpdate();
  }

  /** The cursor moves without a rendering, and so does the thumb. */
  #follow(): void {
    const { host, cursor, display } = this.#view;
    const input = host.renderRoot.querySelector<HTMLInputElement>('#travel-slider');
    if (!input) return;
    const value = toShown(cursor.travel, 'length', display.units);
    const [min, max] = [Number(input.min), Number(input.max)];
    if (input.valueAsNumber !== value) input.value = String(value);
    input.setAttribute('aria-valuetext', show(cursor.travel, 'travel', display));
    const fraction = max > min ? Math.min(Math.max((value - min) / (max - min), 0), 1) : 0;
    input.parentElement!.style.setProperty('--fraction', String(fraction));
  }
}

/** "straight ahead", "steered 21° to the left". @param degrees positive to the right of the car */
export function steerText(degrees: number, { poses, asked }: DrawnWheels): string {
  const ahead = (asked.isLeft ? 1 : -1) * poses.ahead;
  // To the same whole degree as in the sentence.
  const turned = Math.round(degrees);
  if (turned === 0 || Math.abs(degrees - ahead) < 0.5) return WORDS.ahead;
  return WORDS.steered(Math.abs(turned), turned > 0 ? WORDS.right : WORDS.left);
}
