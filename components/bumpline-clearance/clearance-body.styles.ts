import { css } from 'lit';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { whereStyles } from '../inputs/where.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';

const own = css`
  /* On a phone the slider comes before the second view; side by side the two columns are what they are. */
  .views,
  .column {
    display: contents;
  }
  .section-view {
    order: -3;
  }
  .fitted-choice,
  .slider,
  .actions {
    order: -2;
  }
  .side-view {
    order: -1;
  }
  @container (min-width: 47.5em) {
    .views,
    .column {
      display: grid;
      grid-template-columns: minmax(0, 1fr);
      align-content: start;
      gap: 10px;
    }
    .column > * {
      order: 0;
    }
  }
  .view-name {
    margin: 0;
    font-size: 0.875em;
    color: var(--_soft);
  }
  .view-name b {
    color: var(--_ink);
  }
  .pairs {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: 0.875em;
    font-variant-numeric: tabular-nums;
  }
  .pairs th {
    font-weight: 400;
    text-align: start;
    color: var(--_soft);
  }
  .pairs td,
  .pairs thead th {
    padding: 4px 0 4px 8px;
    text-align: end;
  }
  .pairs tbody th {
    padding-block: 4px;
    /* Beside sizes and lengths, which do not break, in the widest of fonts on the smallest of phones. */
    overflow-wrap: anywhere;
    hyphens: auto;
  }
  .pairs tbody tr {
    border-block-start: 1px solid var(--_hair);
  }
  .changes {
    padding-block-start: 4px;
  }
  .changes.old dl {
    opacity: 0.45;
  }
  .changes .title {
    margin: 0 0 2px;
    font: 600 0.9375em/1.3 var(--_sans);
  }
  .changes .title small {
    font: 600 0.8667em/1 var(--_sans);
    color: var(--_limit);
  }
  .changes dl > div {
    display: grid;
    grid-template-columns: 8em minmax(0, 1fr);
  }
  .changes dd {
    grid-column: 2;
    font-weight: 400;
  }
  @container (max-width: 18em) {
    .pairs {
      display: block;
      overflow-x: auto;
    }
    .changes dl > div {
      grid-template-columns: minmax(0, 1fr);
    }
    .changes dd {
      grid-column: 1;
    }
  }
  .changes dd b {
    font-weight: 600;
  }
  /* While there is no answer these would be those of the last one. */
  .sheet[data-state='stale'] :is(.changes, .view-name, .wheels table, .travel dl) {
    visibility: hidden;
  }
  .sentence[data-verdict='touches'] .value:first-of-type {
    color: var(--_contact);
  }
  .sentence[data-verdict='close'] .value:first-of-type {
    color: var(--_limit);
  }
  @media print {
    .slider,
    .actions,
    .quiet {
      display: none;
    }
  }
`;

export const bodyStyles = [
  drawingStyles,
  chartStyles,
  sliderStyles,
  numbersStyles,
  sheetStyles,
  whereStyles,
  sharedBodyStyles,
  twoColumnStyles,
  own,
];
