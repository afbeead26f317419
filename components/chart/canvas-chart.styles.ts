import { css } from 'lit';

/** What uPlot's own sheet says of the parts that are used, in the theme's colours; and where colours are read off. */
export const canvasChartStyles = css`
  .uplot {
    inline-size: min-content;
  }
  .u-wrap {
    position: relative;
    user-select: none;
    -webkit-user-select: none;
  }
  .u-over,
  .u-under,
  .u-axis,
  .u-select,
  .u-cursor-x,
  .u-cursor-y,
  .u-cursor-pt {
    position: absolute;
  }
  .u-under {
    overflow: hidden;
  }
  /* A swipe up or down scrolls the page, two fingers zoom it; only a sideways move is the chart's. */
  .u-over {
    touch-action: pan-y pinch-zoom;
    cursor: crosshair;
  }
  .uplot canvas {
    display: block;
    position: relative;
    inline-size: 100%;
    block-size: 100%;
  }
  .u-select,
  .u-cursor-x,
  .u-cursor-y,
  .u-cursor-pt {
    pointer-events: none;
  }
  .u-select {
    background: color-mix(in srgb, var(--_now) 22%, transparent);
  }
  .u-cursor-x {
    inset-block-start: 0;
    left: 0;
    block-size: 100%;
    border-inline-end: 1px solid var(--_ink);
    will-change: transform;
  }
  .u-cursor-pt {
    inset-block-start: 0;
    left: 0;
    border-radius: 50%;
    border: 0 solid;
    will-change: transform;
  }
  .u-off {
    display: none;
  }
  .chart-probes {
    position: absolute;
    visibility: hidden;
    font-family: var(--_sans);
  }
  .chart-probes i {
    transition: color 1ms;
  }
  .chart-probes .ink {
    color: var(--_ink);
  }
  .chart-probes .soft {
    color: var(--_soft);
  }
  .chart-probes .hair {
    color: var(--_hair);
  }
  .chart-probes .paper {
    color: var(--_paper);
  }
  .chart-probes .now {
    color: var(--_now);
  }
  .chart-probes .before {
    color: var(--_before);
  }
  .chart-probes .limit {
    color: var(--_limit);
  }
`;
