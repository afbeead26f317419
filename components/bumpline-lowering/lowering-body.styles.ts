import { css } from 'lit';
import { sharedBodyStyles } from '../shared/body.styles.js';
import { cautionStyles } from '../shared/cautions.js';
import { chartStyles } from '../shared/chart/chart.styles.js';
import { drawingStyles } from '../shared/drawing/render.js';
import { whereStyles } from '../shared/sheet/where.styles.js';
import { sheetStyles } from '../shared/sheet.styles.js';
import { sliderStyles } from '../shared/slider.js';
import { numbersStyles } from '../shared/table.js';

const own = css`
  .asked {
    min-block-size: 44px;
    min-inline-size: 44px;
    margin-block: -7px;
    padding: 0;
    border: 0;
    background: none;
    color: var(--_ink);
    font: inherit;
    font-weight: 600;
    font-variant-numeric: tabular-nums lining-nums;
    text-decoration: underline dotted 1.5px;
    text-underline-offset: 4px;
    white-space: nowrap;
    cursor: pointer;
  }
  .drawing-place {
    min-inline-size: 0;
  }
  .parts {
    display: flex;
    align-items: baseline;
    gap: 6px;
    font-size: 15px;
  }
  .parts select {
    min-inline-size: 0;
    color: var(--_now);
    font-size: 15px;
  }
  .sides {
    border-collapse: collapse;
    font-size: 15px;
    font-variant-numeric: tabular-nums;
  }
  .sides caption {
    padding-block-end: 4px;
    text-align: start;
  }
  .sides th {
    font-weight: 400;
    text-align: start;
    color: var(--_soft);
  }
  .sides td,
  .sides thead th {
    padding: 4px 0 4px 12px;
    text-align: end;
  }
  .sides tbody tr {
    border-block-start: 1px solid var(--_hair);
  }
  .inputs ul,
  .shares {
    margin: 0 0 8px;
    padding: 0;
    list-style: none;
  }
  .input-row {
    display: grid;
    grid-template-columns: 26px minmax(0, 1fr) auto;
    align-items: center;
    gap: 8px;
    inline-size: 100%;
    min-block-size: 44px;
    padding: 4px 0;
    border: 0;
    border-block-start: 1px solid var(--_hair);
    background: none;
    color: var(--_ink);
    font: 400 15px/1.3 var(--_sans);
    text-align: start;
    cursor: pointer;
  }
  .input-row .item {
    color: var(--_soft);
    text-align: center;
  }
  .input-row .value {
    font-variant-numeric: tabular-nums;
    font-style: italic;
    color: var(--_soft);
    white-space: pre;
  }
  .input-row .value.words {
    max-inline-size: 200px;
    white-space: normal;
    text-align: end;
  }
  .input-row.yours .value {
    font-style: normal;
    font-weight: 600;
    color: var(--_ink);
  }
  .shares li {
    position: relative;
    display: flex;
    justify-content: space-between;
    padding: 4px 6px;
    font-size: 15px;
  }
  .shares .bar {
    position: absolute;
    inset: 2px auto 2px 0;
    inline-size: calc(100% * var(--share));
    background: color-mix(in srgb, var(--_next) 18%, transparent);
  }
  .shares li > :not(.bar) {
    position: relative;
  }
  @container (min-width: 760px) {
    .body {
      grid-template-columns: minmax(0, 1.05fr) minmax(0, 1fr);
      grid-template-rows: auto 1fr;
      gap: 20px 32px;
    }
    .column {
      grid-area: 1 / 2 / 3 / 3;
    }
    .no-drawing .column {
      grid-area: 1 / 1 / 2 / 3;
    }
  }
  .printed {
    display: none;
    margin: 0;
    font-size: 13px;
  }
  @media print {
    .printed {
      display: block;
    }
    .numbers {
      display: none;
    }
    .slider,
    .actions,
    .quiet {
      display: none;
    }
    .drop {
      background: none;
    }
  }
  @media (forced-colors: active) {
    .shares .bar {
      border: 1px solid CanvasText;
    }
  }
`;

export const bodyStyles = [
  drawingStyles,
  chartStyles,
  sliderStyles,
  numbersStyles,
  cautionStyles,
  sheetStyles,
  whereStyles,
  sharedBodyStyles,
  own,
];
