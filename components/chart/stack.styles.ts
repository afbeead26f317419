import { css } from 'lit';
import { chartStyles } from './chart.styles.js';

const own = css`
  .stack {
    position: relative;
    container-type: inline-size;
  }
  .stack-tools {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 14px;
    align-items: center;
    font-size: 0.9375em;
  }
  .stack-choice {
    display: grid;
    flex: 1 1 0;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 8px;
    align-items: center;
    min-inline-size: 0;
  }
  .stack-tools .legend {
    display: none;
  }
  .stack-values {
    display: flex;
    flex-wrap: wrap;
    gap: 0 10px;
  }
  .stack-values b {
    font-weight: 600;
    white-space: nowrap;
  }
  /* Each in a row of its own, by its name. */
  .stack-values > span {
    flex: 1 1 100%;
  }
  .at-now {
    color: var(--_now);
  }
  .sample {
    flex: none;
    inline-size: 28px;
    block-size: 8px;
    margin-inline-end: 6px;
    color: var(--_before);
  }
  .sample path {
    fill: none;
    stroke: currentColor;
    stroke-width: 2;
  }
  :is(.now, .at-now) > .sample {
    color: var(--_now);
  }
  .stack-charts {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px 28px;
    margin-block-start: 6px;
  }
  .stack-chart {
    min-inline-size: 0;
    margin: 0;
  }
  .stack-chart figcaption {
    display: flex;
    flex-wrap: wrap;
    gap: 0 10px;
    align-items: baseline;
    font-size: 0.8125em;
    line-height: 1.5;
  }
  .stack-values {
    color: var(--_soft);
  }
  .canvas-box {
    position: relative;
    overflow: hidden;
    block-size: 12.5em;
  }
  .sheet[data-state='stale'] .canvas-box {
    opacity: 0.7;
  }
  .canvas-box:focus-visible {
    outline: 3px solid var(--_now);
    outline-offset: 1px;
    border-radius: 2px;
  }
  .stack-paper,
  .stack-chart:not(.chosen) {
    display: none;
  }
  .stack-how {
    display: none;
  }
  @container (min-width: 38em) {
    .stack-choice {
      display: none;
    }
    .stack-chart:not(.chosen),
    .stack-how {
      display: block;
    }
    /* Many charts: what each line is stands once, above them all. */
    .stack-tools .legend {
      display: flex;
    }
    .stack-values .called {
      display: none;
    }
    .stack-values > span {
      flex: none;
    }
    .canvas-box {
      block-size: 10em;
    }
  }
  @container (min-width: 44em) {
    .stack-charts {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
  @media print {
    .canvas-box,
    .stack-values,
    .stack-choice,
    .stack-tools > button,
    .stack-how {
      display: none;
    }
    .stack-charts {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .stack-chart,
    .stack-chart:not(.chosen) {
      display: block;
      break-inside: avoid;
    }
    .stack-paper {
      display: block;
    }
    .stack-paper svg {
      display: block;
      inline-size: 100%;
      block-size: auto;
    }
  }
`;

/** Charts over each other; on paper they look as the SVG chart does. */
export const stackStyles = [chartStyles, own];
