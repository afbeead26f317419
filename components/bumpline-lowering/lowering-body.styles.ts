import { css } from 'lit';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { whereStyles } from '../inputs/where.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';

const own = css`
  .parts {
    display: flex;
    align-items: baseline;
    gap: 6px;
    font-size: 0.9375em;
  }
  .parts select {
    min-inline-size: 0;
    color: var(--_now);
    font-size: 0.9375em;
  }
  .sides {
    border-collapse: collapse;
    font-size: 0.9375em;
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
  .printed {
    display: none;
    margin: 0;
    font-size: 0.8125em;
  }
  @media print {
    .printed {
      display: block;
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
  doubtStyles,
  twoColumnStyles,
  own,
];
