import { css } from 'lit';
import { setStyles } from '../bumpline-geometry/set-list.styles.js';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { whereStyles } from '../inputs/where.styles.js';
import { partsStyles } from '../parts/parts.styles.js';
import { sharedBodyStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';
import { tableScrollStyles } from '../theme/table-scroll.styles.js';

const own = css`
  .body,
  .rest {
    min-inline-size: 0;
  }
  .rest {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 10px;
  }
  .legend {
    margin: 0;
  }
  .section-title {
    margin: 0 0 2px;
  }
  .figures {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: 0.875em;
    line-height: 1.4286em;
  }
  .figures caption {
    padding-block: 4px;
    text-align: start;
    font-weight: 600;
    font-size: 1.0714em;
  }
  .figures th,
  .figures td {
    padding: 5px 6px;
    border-block-start: 1px solid var(--_hair);
    text-align: end;
    font-weight: 400;
    font-variant-numeric: tabular-nums lining-nums;
  }
  .figures thead th,
  .figures thead td {
    border: 0;
    color: var(--_soft);
    vertical-align: bottom;
  }
  .figures tbody th,
  .figures thead td {
    inline-size: 40%;
    padding-inline-start: 0;
    text-align: start;
  }
  .figures tbody td {
    white-space: nowrap;
  }
  .figures tbody tr:first-child > * {
    font-weight: 600;
  }
  .found ul,
  .next ul,
  .needs ul {
    margin: 0;
    padding: 0;
    list-style: none;
    font-size: 0.9375em;
  }
  .found li,
  .next li,
  .needs li {
    padding-block: 3px;
  }
  .found .note {
    margin-block-start: 6px;
  }
  .slip {
    margin-block: 4px;
    padding: 4px 10px;
    border-inline-start: 3px solid var(--_limit);
  }
  .slip-readings {
    border: 0;
  }
  .slip-readings table {
    border-collapse: collapse;
    font-variant-numeric: tabular-nums lining-nums;
  }
  .slip-readings th,
  .slip-readings td {
    padding: 2px 10px 2px 0;
    text-align: end;
    font-weight: 400;
  }
  .slip-readings .after > * {
    font-weight: 600;
  }
  .slip-readings .button {
    margin-block: 8px;
  }
  .needs li {
    display: flex;
    justify-content: space-between;
    gap: 12px;
    border-block-end: 1px solid var(--_hair);
  }
  .needs .missing b {
    color: var(--_limit-ink, var(--_ink));
  }
  .needs .done b {
    color: var(--_soft);
    font-weight: 400;
  }
  .needs .note {
    margin-block-start: 8px;
  }
  .links-from .note,
  .record p {
    margin: 0 0 6px;
  }
  .record .kept,
  .agreement {
    font-size: 0.9375em;
  }
  .agreement {
    padding: 4px 10px;
    border-inline-start: 3px solid var(--_next);
  }
  .agreement.differs {
    border-color: var(--_limit);
  }
  .record-text {
    font: 400 0.8125em/1.3 monospace;
    inline-size: 100%;
  }
  @container (min-width: 47.5em) {
    .body {
      gap: 20px 32px;
      grid-template-columns: minmax(0, 6fr) minmax(0, 5fr);
    }
  }
  @media print {
    :is(.fitted-choice, .links-from),
    .sets .add-set,
    .sets .pick {
      display: none;
    }
  }
`;

export const bodyStyles = [
  chartStyles,
  sliderStyles,
  numbersStyles,
  sheetStyles,
  tableScrollStyles,
  whereStyles,
  doubtStyles,
  sharedBodyStyles,
  partsStyles,
  setStyles,
  own,
];
