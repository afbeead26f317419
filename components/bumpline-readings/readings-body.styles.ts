import { css } from 'lit';
import { chartStyles } from '../chart/chart.styles.js';
import { numbersStyles } from '../controls/table.js';
import { sharedBodyStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';

const own = css`
  .passes,
  .coefficients {
    margin: 6px 0 0;
    padding: 0;
    list-style: none;
    font-size: 0.875em;
    line-height: 1.4286em;
  }
  .passes li {
    display: flex;
    gap: 8px;
    padding-block: 2px;
  }
  .passes svg {
    flex: none;
    margin-block-start: 2px;
  }
  .passes path {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.25;
  }
  .passes .said {
    color: var(--_soft);
  }
  .pick {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 2px 12px;
    padding-block: 4px;
    font-size: 0.9375em;
  }
  .pick .text {
    inline-size: auto;
    min-inline-size: 9.375em;
    max-inline-size: 100%;
    font-size: 1.0667em;
    text-align: start;
  }
  .pick .name {
    flex: 1 1 11.875em;
  }
  .candidates {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: 0.875em;
    line-height: 1.4286em;
  }
  .candidates th,
  .candidates td {
    padding: 5px 8px;
    text-align: end;
    font-weight: 400;
  }
  .candidates thead th {
    vertical-align: bottom;
    font-weight: 600;
  }
  .candidates th:first-child {
    text-align: start;
    white-space: nowrap;
  }
  .candidates tr[aria-current='true'] > * {
    color: var(--_now);
    font-weight: 600;
  }
  .coefficients {
    margin-block-end: 8px;
    font-variant-numeric: tabular-nums;
    overflow-wrap: anywhere;
  }
  @container (min-width: 47.5em) {
    .body {
      grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr);
      gap: 20px 32px;
    }
  }
`;

export const bodyStyles = [chartStyles, numbersStyles, sheetStyles, sharedBodyStyles, doubtStyles, own];
