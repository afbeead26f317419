import { css } from 'lit';
import { cautionStyles } from '../shared/cautions.js';
import { chartStyles } from '../shared/chart/chart.styles.js';
import { drawingStyles } from '../shared/drawing/render.js';
import { sheetStyles } from '../shared/sheet.styles.js';
import { sliderStyles } from '../shared/slider.js';
import { numbersStyles } from '../shared/table.js';
import { whereStyles } from './where.styles.js';

const own = css`
  .problems {
    padding: 8px 12px;
    border: 1px solid var(--_contact);
    border-inline-start-width: 4px;
    border-radius: 3px;
    font-size: 15px;
  }
  .queries {
    margin: 0;
    padding: 8px 12px;
    border: 1px solid var(--_limit);
    border-inline-start-width: 4px;
    border-radius: 3px;
    font-size: 15px;
    list-style: none;
  }
  .queries li + li {
    margin-block-start: 8px;
  }
  .queries .button {
    display: block;
    margin-block-start: 6px;
  }
  .problems ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .problems .button {
    display: block;
    margin-block-start: 6px;
  }
  .problems li + li {
    margin-block-start: 6px;
  }
  .problems p {
    margin: 6px 0 0;
    color: var(--_soft);
    font-size: 14px;
  }
  .body,
  .column {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 10px;
    min-inline-size: 0;
  }
  .drawing-place {
    min-inline-size: 0;
  }
  /* Pictures only: text beside them keeps its contrast. */
  .sheet[data-state='stale'] .drawing svg,
  .sheet[data-state='stale'] .chart-sheet {
    opacity: 0.7;
  }
  .sheet[data-state='stale'] .hint,
  .sheet[data-state='stale'] .slider-ticks {
    visibility: hidden;
  }
  .sheet[data-state='stale'] .chart-flag {
    visibility: hidden;
  }
  .hint {
    margin: 0;
    padding: 2px 0 2px 10px;
    border-inline-start: 3px solid var(--_next);
    font-size: 15px;
  }
  .at-cursor {
    min-block-size: 20px;
    margin: 2px 0 0;
    font-size: 14px;
    line-height: 20px;
    color: var(--_soft);
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
  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
  }
  .link-text {
    inline-size: 100%;
    font: 400 13px/1.3 monospace;
  }
  .more {
    /* Three folded lists, before they are there. */
    min-block-size: 136px;
    border-block-start: 1px solid var(--_hair);
  }
  details {
    border-block-end: 1px solid var(--_hair);
  }
  summary {
    display: list-item;
    min-block-size: 44px;
    padding-block: 11px;
    line-height: 22px;
    color: var(--_now);
    cursor: pointer;
  }
  .note {
    margin: 0 0 8px;
    font-size: 14px;
    color: var(--_soft);
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
  dl {
    margin: 0 0 8px;
    font-size: 15px;
  }
  dl > div {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 12px;
    padding-block: 3px;
  }
  dd {
    margin: 0;
    font-weight: 600;
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
  own,
];
