import { css } from 'lit';

/**
 * The chart's place, its picture and its cursor. The height is a function of the width alone, so the place is kept before the
 * chart is there and nothing moves when it comes.
 */
export const chartStyles = css`
  .chart {
    container-type: inline-size;
    min-inline-size: 0;
  }
  .chart-box {
    position: relative;
    isolation: isolate;
    overflow: hidden;
    font-size: 0.8125em;
    line-height: 1.5385em;
    block-size: clamp(max(256px, min(19.6923em, 80cqi)), 70cqi, 26.1538em);
  }

  .chart-sheet svg {
    display: block;
    font-family: var(--_sans);
    font-variant-numeric: tabular-nums lining-nums;
  }
  .chart-sheet path {
    fill: none;
    stroke: currentColor;
    stroke-linejoin: round;
  }
  .chart-sheet text {
    fill: currentColor;
    text-anchor: middle;
    font-size: 13px;
  }
  .chart-sheet .now {
    color: var(--_now);
  }
  .chart-sheet .before {
    color: var(--_before);
  }
  .chart-sheet .limit {
    color: var(--_limit);
  }
  .chart-sheet .contact {
    color: var(--_contact);
  }
  .chart-sheet .ink,
  .chart-sheet .turn {
    color: var(--_ink);
  }
  .chart-sheet .soft,
  .chart-sheet .tick,
  .chart-sheet .axis,
  .chart-sheet .zero {
    color: var(--_soft);
  }
  .chart-sheet .grid,
  .chart-sheet .outside {
    color: var(--_hair);
  }
  .chart-sheet .tick {
    font-size: 12px;
  }
  .chart-sheet .y {
    text-anchor: end;
  }
  .chart-sheet .name {
    text-anchor: start;
  }
  .chart-sheet .grid {
    stroke-width: 0.5;
  }
  .chart-sheet .hatch.limit {
    stroke-opacity: 0.55;
  }
  .chart-sheet .edge.limit {
    stroke-width: 2;
  }
  .chart-sheet .wash {
    fill: currentColor;
    fill-opacity: 0.17;
    stroke: none;
  }
  .chart-sheet .bound {
    stroke-width: 0.75;
    stroke-opacity: 0.4;
  }
  .chart-sheet .line.now {
    stroke-width: 3;
  }
  .chart-sheet .line.before {
    stroke-width: 1.75;
  }
  .chart-sheet .line.before:not([stroke-dasharray]) {
    stroke-dasharray: 7 4;
  }
  .chart-sheet .bound.thin {
    stroke-opacity: 0.8;
    stroke-dasharray: 2 3;
  }
  .chart-sheet .points {
    stroke-width: 1.25;
  }
  .chart-sheet .plumb.before {
    stroke-dasharray: 4 3;
  }
  .chart-sheet .plumb.turn {
    stroke-dasharray: 8 3 1 3;
  }
  /* Solid marks stand off from their line by a ring of paper, hollow ones by their filling. */
  .chart-sheet .mark {
    stroke-width: 2;
    fill: currentColor;
    stroke: var(--_paper);
  }
  .chart-sheet .mark.before,
  .chart-sheet .mark.turn {
    fill: var(--_paper);
    stroke: currentColor;
  }
  .chart-sheet .word {
    stroke: var(--_paper);
    stroke-width: 4px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .chart-sheet .plate {
    fill: var(--_paper);
  }

  /* A swipe up or down scrolls the page, two fingers zoom it; only a sideways move is the chart's. */
  .chart-scrub {
    position: absolute;
    touch-action: pan-y pinch-zoom;
    cursor: ew-resize;
    user-select: none;
    -webkit-user-select: none;
    -webkit-tap-highlight-color: transparent;
    forced-color-adjust: none;
  }
  .chart-scrub:focus-visible {
    outline: 3px solid var(--_now);
    outline-offset: 1px;
    border-radius: 2px;
  }
  .chart-line,
  .chart-dot,
  .chart-head {
    position: absolute;
    inset-block-start: 0;
    left: 0;
    pointer-events: none;
  }
  /* Under the picture: no word is crossed by it. */
  .chart-line {
    z-index: -1;
    inline-size: 1px;
    margin-inline-start: -0.5px;
    block-size: 100%;
    background: var(--_ink);
  }
  .chart-dot {
    inline-size: 12px;
    block-size: 12px;
    margin: -6px 0 0 -6px;
    border: 2px solid var(--_paper);
    border-radius: 50%;
    background: var(--_now);
  }
  .chart-dot.before {
    border-color: var(--_before);
    background: var(--_paper);
  }
  .chart-head {
    display: flex;
    flex-wrap: wrap;
    align-content: flex-start;
    column-gap: 10px;
    padding-block-start: 2px;
    box-sizing: border-box;
    color: var(--_ink);
    line-height: 1.5385em;
    white-space: nowrap;
  }
  .chart-head > * {
    display: flex;
    align-items: center;
    gap: 5px;
    max-inline-size: 100%;
  }
  /* A long name gives way, its figure does not. */
  .chart-head .called {
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .chart-head :is(i, b) {
    flex: none;
  }
  .chart-head .before {
    color: var(--_before);
    font-size: 1em;
  }
  .chart-head b {
    font-weight: 600;
  }
  .chart-head .now {
    color: var(--_now);
  }
  .chart-head i {
    inline-size: 14px;
    border-block-start: 3px solid;
  }
  .chart-head .before i {
    border-block-start: 2px dashed;
  }
  .chart-scrub [hidden] {
    display: none;
  }

  @media (forced-colors: active) {
    .chart-sheet .grid {
      color: GrayText;
    }
  }
  /* On paper the picture takes the width there is; the cursor is a thing of the screen. */
  @media print {
    .chart-box {
      block-size: auto;
      break-inside: avoid;
    }
    .chart-box:empty,
    .chart-scrub {
      display: none;
    }
    .chart-sheet svg {
      inline-size: 100%;
      block-size: auto;
    }
  }
`;
