import { css, html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { QUANTITIES, type Quantity } from '../../core/quantity/quantities.js';
import { fromShown, toShown } from '../../core/quantity/units.js';
import { type Display, show } from '../element/sentence.js';
import { placeTicks, type SliderTick, THUMB_RADIUS } from './slider-ticks.js';
import { beginTouch, endTouch, isDrag, isHeld, takeBack } from './slider-touch.js';

export interface SliderOptions {
  /** Unique in its shadow root. */
  id: string;
  label: string;
  quantity: Quantity;
  display: Display;
  /** In the API's unit, as are min, max and the ticks: mm, or degrees. */
  value: number;
  min: number;
  max: number;
  ticks?: readonly SliderTick[];
  /** Known width of the slider, CSS px. Default: what is left of a 320 px screen, which holds on wider ones too. */
  width?: number;
  /** What a screen reader says of the value. Default: the value with its unit. */
  valueText?: string;
  /** While it is being moved. */
  onInput: (value: number) => void;
  /** When it comes to rest: what is worth an undo step and a spoken answer. */
  onChange: () => void;
  /** The step of undo that it makes: ended before a finger begins another, and taken back where the browser takes the finger away. */
  step?: { end(): void; cancel(): void };
}

const NARROW = 288;

/**
 * A native range input with a label and named ticks under it. A text field for the same value is the host's to add: not
 * everybody can drag.
 */
export function renderSlider(options: SliderOptions): TemplateResult {
  const {
    id,
    label,
    value,
    min,
    max,
    quantity,
    display,
    ticks = [],
    width = NARROW,
    valueText = show(value, quantity, display),
    onInput,
    onChange,
    step,
  } = options;
  const { units, scale = 1 } = display;
  const { dimension } = QUANTITIES[quantity];
  const shown = (one: number) => toShown(one, dimension, units);
  const placed = placeTicks(ticks, min, max, width, scale);
  const rows = placed.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const fraction = max > min ? Math.min(Math.max((value - min) / (max - min), 0), 1) : 0;
  const take = (input: HTMLInputElement) => onInput(fromShown(input.valueAsNumber, dimension, units));
  // Min, max and step stand before the value: a browser clamps the value to what it knows when it is set.
  return html`<div class="slider" .style=${`--rows: ${rows}; --fraction: ${fraction}`}>
    <label class="slider-label" for=${id}>${label}</label>
    <input
      type="range"
      id=${id}
      min=${shown(min)}
      max=${shown(max)}
      step=${dimension === 'plain' ? 0.05 : dimension === 'angle' ? (units.angle === 'arcminutes' ? 6 : 0.1) : units.length === 'in' ? 0.05 : 1}
      .value=${live(String(shown(value)))}
      aria-valuetext=${valueText}
      aria-describedby="${id}-ticks"
      @pointerdown=${(event: PointerEvent) => beginTouch(event) && step?.end()}
      @pointermove=${(event: PointerEvent) => isDrag(event) && take(event.target as HTMLInputElement)}
      @pointerup=${(event: PointerEvent) => endTouch(event) && take(event.target as HTMLInputElement)}
      @pointercancel=${(event: PointerEvent) => takeBack(event) && step?.cancel()}
      @input=${({ target }: Event) => !isHeld(target as Element) && take(target as HTMLInputElement)}
      @change=${({ target }: Event) => !isHeld(target as Element) && onChange()}
    />
    <div class="slider-ticks" aria-hidden="true">
      ${placed.map(({ kind, label, fraction, labelWidth, shift, row }) => {
        // Kept over its mark, and set towards the side where the mark is when its neighbours have pushed it aside.
        const align = shift < labelWidth / 4 ? 'start' : shift > (labelWidth * 3) / 4 ? 'end' : 'center';
        const place = `--at: ${fraction}; --row: ${row}; --shift: ${shift}px`;
        return html`<span class="slider-mark ${kind}" .style=${place}></span
          ><span class="slider-name ${kind}" .style=${`${place}; inline-size: ${labelWidth}px; text-align: ${align}`}
            >${label}</span
          >`;
      })}
    </div>
    <span class="visually-hidden" id="${id}-ticks">${ticks.map((tick) => tick.label).join(', ')}</span>
  </div>`;
}

const radius = css`${THUMB_RADIUS}px`;

const thumb = css`
  border: 2px solid var(--_now);
  border-radius: 50%;
  background: radial-gradient(var(--_now) 58%, var(--_paper) 62%);
`;

export const sliderStyles = css`
  .slider {
    --_thumb: calc(2 * ${radius});
    --_reach: calc(100% - 2 * ${radius});
    position: relative;
    min-inline-size: 0;
  }
  .slider-label {
    display: block;
    font-size: 0.875em;
    color: var(--_soft);
  }
  .slider input {
    appearance: none;
    display: block;
    inline-size: 100%;
    block-size: 44px;
    margin: 0;
    background: none;
    font: inherit;
    cursor: pointer;
    /* The thumb lies over the marks. */
    position: relative;
    z-index: 1;
    /* A swipe up or down that begins on the slider scrolls the page. */
    touch-action: pan-y pinch-zoom;
  }
  .slider input:focus-visible {
    outline: none;
  }
  .slider input::-webkit-slider-runnable-track {
    block-size: 4px;
    border-radius: 2px;
    background: linear-gradient(
      to right,
      var(--_now) calc(${radius} + var(--fraction) * (100% - 2 * ${radius})),
      var(--_hair) 0
    );
  }
  .slider input::-moz-range-track {
    block-size: 4px;
    border-radius: 2px;
    background: var(--_hair);
  }
  .slider input::-moz-range-progress {
    block-size: 4px;
    border-radius: 2px;
    background: var(--_now);
  }
  .slider input::-webkit-slider-thumb {
    appearance: none;
    inline-size: var(--_thumb);
    block-size: var(--_thumb);
    margin-block-start: calc(2px - ${radius});
    ${thumb}
  }
  .slider input::-moz-range-thumb {
    box-sizing: border-box;
    inline-size: var(--_thumb);
    block-size: var(--_thumb);
    ${thumb}
  }
  .slider input:focus-visible::-webkit-slider-thumb {
    outline: 3px solid var(--_now);
    outline-offset: 2px;
  }
  .slider input:focus-visible::-moz-range-thumb {
    outline: 3px solid var(--_now);
    outline-offset: 2px;
  }
  .slider-ticks {
    position: relative;
    block-size: calc(var(--rows) * 1.5385em);
    margin-block-start: -6px;
    font-size: 0.8125em;
    line-height: 1.5385em;
  }
  /* Half the thumb at each end is where its centre never comes: the marks leave it out too. */
  .slider-mark {
    position: absolute;
    inset-block-start: -12px;
    inset-inline-start: calc(${radius} + var(--at) * var(--_reach) - 0.5px);
    inline-size: 1px;
    block-size: 12px;
    background: var(--_soft);
    opacity: 0.7;
  }
  .slider-mark.limit {
    inline-size: 3px;
    margin-inline-start: -1px;
    background: var(--_limit);
    opacity: 1;
  }
  .slider-mark.turn {
    background: none;
    border-inline-start: 2px dotted var(--_ink);
    opacity: 1;
  }
  .slider-name {
    position: absolute;
    inset-block-start: calc(var(--row) * 1.5385em);
    inset-inline-start: calc(${radius} + var(--at) * var(--_reach) - var(--shift));
    overflow: hidden;
    white-space: nowrap;
    text-overflow: ellipsis;
    color: var(--_soft);
  }
  .slider-name.limit {
    color: var(--_limit);
    font-weight: 600;
  }
  .slider-name.turn {
    color: var(--_ink);
  }
  @media (forced-colors: active) {
    .slider input {
      appearance: auto;
    }
    .slider input:focus-visible {
      outline: 3px solid Highlight;
    }
    .slider-mark {
      forced-color-adjust: none;
    }
  }
`;
