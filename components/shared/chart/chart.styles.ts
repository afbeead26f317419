import { css } from 'lit';

/**
 * The chart's place, its cursor, and the handful of uPlot 1.6.32's own rules that a chart without legend, title, selection
 * and hover points needs (its whole sheet is 1.9 kB). The height is a function of the width alone, so the place is kept
 * before the chart is there and nothing moves when it comes.
 */
export const chartStyles = css`
  .chart {
    container-type: inline-size;
    min-inline-size: 0;
  }
  .chart[hidden] {
    display: none;
  }
  .chart-box {
    position: relative;
    overflow: hidden;
    block-size: clamp(256px, 70cqi, 340px);
    font-size: 13px;
    line-height: 20px;
  }

  .u-wrap {
    position: relative;
    user-select: none;
  }
  .u-over,
  .u-under,
  .u-axis {
    position: absolute;
    pointer-events: none;
  }
  .u-under {
    overflow: hidden;
  }
  .u-wrap canvas {
    display: block;
    position: relative;
    inline-size: 100%;
    block-size: 100%;
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
  .chart-flag {
    position: absolute;
    inset-block-start: 0;
    left: 0;
    pointer-events: none;
  }
  .chart-line {
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
  .chart-flag {
    inset-block-start: -26px;
    display: flex;
    gap: 10px;
    padding-inline: 6px;
    border-radius: 3px;
    background: var(--_paper);
    color: var(--_ink);
    font-weight: 600;
    line-height: 22px;
    white-space: nowrap;
  }
  .chart-flag > * {
    display: flex;
    align-items: center;
    gap: 5px;
  }
  .chart-flag .now {
    color: var(--_now);
  }
  .chart-flag .before {
    color: var(--_before);
    font-weight: 400;
  }
  .chart-flag i {
    inline-size: 14px;
    border-block-start: 3px solid;
  }
  .chart-flag .before i {
    border-block-start: 2px dashed;
  }
  .chart-scrub [hidden] {
    display: none;
  }

  /* On paper the canvas keeps its own proportions and takes the width there is; the cursor is a thing of the screen. */
  @media print {
    .chart-box {
      block-size: auto;
      break-inside: avoid;
    }
    .chart-box:empty,
    .chart-scrub {
      display: none;
    }
    .chart-box > .uplot,
    .chart-box .u-wrap,
    .chart-box canvas {
      inline-size: 100% !important;
      block-size: auto !important;
    }
  }
`;
