import { css, html, svg, type TemplateResult } from 'lit';
import { BALLOON_RADIUS, type BalloonBox } from './balloons.js';
import type { ChipBox } from './chips.js';
import { circleData, type Px, pathData } from './geometry.js';
import type { BalloonState } from './items.js';
import type { Layout } from './layout.js';

export interface DrawingHandlers {
  /** A balloon was pressed, by finger, mouse or keyboard. Without it the drawing has no buttons. */
  onSelect?: (key: string) => void;
  /** A key is pressed, or a pointer put down, on a balloon or a value: it may be moved by that. */
  onKey?: (key: string, event: KeyboardEvent) => void;
  onGrab?: (key: string, event: PointerEvent) => void;
}

const percent = (part: number, whole: number): string => `${(100 * part) / whole}%`;

/** A line to what a mark is about, with a dot at its end. */
const leaderMark = (leader: BalloonBox['leader']) => svg`<path class="narrow" d=${pathData(leader)}></path>
  <path class="narrow dot fill-solid" d=${circleData(leader[1], 1.5)}></path>`;

/** Example: thin and italic; the user's: bold; next: a second ring; problem: a mark. Colour comes on top. */
function balloonMark({ centre, leader, number, state }: BalloonBox) {
  const [x, y] = centre;
  const example = isNotYours(state);
  return svg`<g class=${inks[state]}>
    ${leaderMark(leader)}
    <path class="ring fill-sheet ${example ? 'narrow' : 'wide'}" d=${circleData(centre, BALLOON_RADIUS)}></path>
    ${isNext(state) ? svg`<path class="narrow" d=${circleData(centre, BALLOON_RADIUS + 3.5)}></path>` : ''}
    ${markText([x, y], number, example)}
    ${state === 'problem' ? problemBadge([x + 11, y - 11]) : ''}
  </g>`;
}

/** A value in its frame; drawn like a balloon of the same state. */
function chipMark({ frame, leader, centre, text, state }: ChipBox) {
  const { x, y, width, height } = frame;
  const example = isNotYours(state);
  const ring = (grow: number, look: string) =>
    svg`<rect class=${look} x=${x - grow} y=${y - grow} width=${width + 2 * grow} height=${height + 2 * grow} rx=${4 + grow}></rect>`;
  return svg`<g class=${inks[state]}>
    ${leader ? leaderMark(leader) : ''}
    ${ring(0, `ring fill-sheet ${example ? 'narrow' : 'wide'}`)} ${isNext(state) ? ring(3, 'narrow') : ''}
    ${markText(centre, text, example)}
    ${state === 'problem' ? problemBadge([x + width, y]) : ''}
  </g>`;
}

const markText = ([x, y]: Px, text: string | number, isExample: boolean) =>
  svg`<text class=${isExample ? 'example' : 'bold'} x=${x} y=${y + 5} font-size="14" text-anchor="middle">${text}</text>`;

const problemBadge = ([x, y]: Px) => svg`<path class="dot fill-solid" d=${circleData([x, y], 7)}></path>
  <text class="on-badge bold" x=${x} y=${y + 4} font-size="11" text-anchor="middle">!</text>`;

const inks = { example: 'soft', yours: 'ink', problem: 'contact', next: 'next', wanted: 'next' } as const;

const isNotYours = (state: BalloonState): boolean => state === 'example' || state === 'wanted';
const isNext = (state: BalloonState): boolean => state === 'next' || state === 'wanted';

/** The picture alone. @param top what of it is left out above, px of the layout */
export function renderPicture(
  { width, height, title, shapes, texts, balloons, chips }: Layout,
  top = 0,
): TemplateResult {
  return html`<svg viewBox="0 ${top} ${width} ${height - top}" width=${width} height=${height - top} role="img" aria-label=${title}>
    ${shapes.map((shape) => svg`<path class=${shape.look} d=${shape.d}></path>`)}
    ${texts.map((text) => {
      const x = text.x + (text.anchor === 'start' ? 0 : text.anchor === 'end' ? text.width : text.width / 2);
      const y = text.y + text.height / 2 + 0.36 * text.size;
      return svg`<text
        class="${text.ink} ${text.bold ? 'bold' : ''}" x=${x} y=${y} font-size=${text.size} text-anchor=${text.anchor}
      >${text.text}</text>`;
    })}
    ${balloons.map(balloonMark)} ${chips.map(chipMark)}
  </svg>`;
}

/**
 * The drawing as one picture for a screen reader, followed by one real button a balloon, laid over it. Everything that can be seen is in
 * the SVG, so that it prints and exports as it stands; positions are shares of the sheet, so that it may be shown at another width.
 * `.style` is a property, which a content security policy allows; a style attribute would be refused.
 */
export function renderDrawing(layout: Layout, handlers: DrawingHandlers = {}): TemplateResult {
  const { width, height, balloons, chips } = layout;
  const buttons = [
    ...balloons.map((balloon) => ({ ...balloon, name: `${balloon.number} ${balloon.label}` })),
    ...chips.map((chip) => ({ ...chip, name: `${chip.label}, ${chip.text}` })),
  ];
  const { onSelect, onKey, onGrab } = handlers;
  return html`<div class="drawing">
    ${renderPicture(layout)}
    ${
      onSelect
        ? buttons.map(
            ({ key, name, centre, width: wide }) => html`<button
              type="button"
              aria-label=${name}
              .style=${`left:${percent(centre[0], width)};top:${percent(centre[1], height)};width:max(44px,${percent(wide, width)})`}
              @click=${() => onSelect(key)}
              @keydown=${(event: KeyboardEvent) => onKey?.(key, event)}
              @pointerdown=${(event: PointerEvent) => onGrab?.(key, event)}
            ></button>`,
          )
        : ''
    }
  </div>`;
}

/** For the root the drawing is rendered into. Colours come from the theme's private properties. */
export const drawingStyles = css`
  .drawing {
    position: relative;
  }
  .drawing svg {
    display: block;
    width: 100%;
    height: auto;
    /* In units of the layout, as its texts are. */
    font-size: 16px;
    font-family: var(--_sans);
    font-variant-numeric: tabular-nums lining-nums;
  }
  .drawing path,
  .drawing rect {
    fill: none;
    stroke: currentColor;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .drawing text {
    fill: currentColor;
    stroke: var(--_paper);
    stroke-width: 3px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .drawing .ink {
    color: var(--_ink);
  }
  .drawing .soft {
    color: var(--_soft);
  }
  .drawing .hair {
    color: var(--_hair);
  }
  .drawing .now {
    color: var(--_now);
  }
  .drawing .before {
    color: var(--_before);
  }
  .drawing .limit {
    color: var(--_limit);
  }
  .drawing .contact {
    color: var(--_contact);
  }
  .drawing .next {
    color: var(--_next);
  }
  .drawing .wide {
    stroke-width: 1.8px;
  }
  .drawing .narrow {
    stroke-width: 0.8px;
  }
  .drawing .none {
    stroke: none;
  }
  .drawing .hatch {
    stroke-opacity: 0.5;
  }
  .drawing .body {
    /* The fill covers the inner half of the line. */
    paint-order: stroke;
  }
  .drawing .body.wide {
    stroke-width: 3.6px;
  }
  .drawing .body.narrow {
    stroke-width: 1.6px;
  }
  .drawing .chain {
    stroke-dasharray: 11 2.5 1 2.5;
    stroke-linecap: butt;
  }
  .drawing .dashed {
    stroke-dasharray: 5 3;
    stroke-linecap: butt;
  }
  .drawing .fill-sheet {
    fill: var(--_sheet);
  }
  .drawing .fill-paper {
    fill: var(--_paper);
  }
  .drawing .fill-tyre {
    fill: var(--_tyre);
  }
  .drawing .fill-wash {
    fill: var(--_now-wash);
  }
  .drawing .fill-solid {
    fill: currentColor;
  }
  .drawing .bold {
    font-weight: 700;
  }
  .drawing g text {
    stroke: none;
  }
  .drawing .example {
    font-style: italic;
  }
  .drawing .dot {
    stroke: var(--_paper);
  }
  .drawing .on-badge {
    fill: var(--_paper);
  }
  .drawing button {
    position: absolute;
    height: 44px;
    margin: 0;
    padding: 0;
    border: 0;
    border-radius: 14px;
    background: none;
    cursor: pointer;
    transform: translate(-50%, -50%);
    touch-action: manipulation;
    forced-color-adjust: none;
  }
  .drawing button:hover {
    box-shadow: inset 0 0 0 2px var(--_now);
  }
  .drawing button:focus-visible {
    outline: 3px solid var(--_now);
    outline-offset: -4px;
  }
`;
