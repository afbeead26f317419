import { css } from 'lit';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { partsStyles } from '../parts/parts.styles.js';
import { sharedBodyStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';
import { tableScrollStyles } from '../theme/table-scroll.styles.js';

const own = css`
  .toe-link {
    margin: 0;
  }
  .toe-link a {
    display: inline-block;
    padding-block: 10px;
    color: var(--_now);
  }
  .cautions.first {
    margin-block-end: 10px;
  }
  .compare {
    border-collapse: collapse;
    inline-size: 100%;
    font-size: 0.9375em;
    font-variant-numeric: tabular-nums;
  }
  .compare th[scope='row'] {
    min-inline-size: 5.5em;
    padding-inline-end: 3px;
    font-size: 0.9333em;
  }
  .compare thead th {
    font-weight: 400;
  }
  .compare td,
  .compare th {
    padding: 3px;
    vertical-align: middle;
  }
  .compare button {
    inline-size: 100%;
    min-inline-size: 44px;
    min-block-size: 44px;
    padding: 4px 5px;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 400 1em/1.25 var(--_sans);
    cursor: pointer;
  }
  .compare .height {
    border-color: transparent;
    background: none;
    color: var(--_now);
    text-decoration: underline dotted 1.5px;
    text-underline-offset: 3px;
    white-space: nowrap;
  }
  .compare small {
    color: var(--_soft);
    font-size: 0.8667em;
    white-space: nowrap;
  }
  .compare .dash {
    display: block;
    margin-inline: auto;
    stroke: var(--_before);
    stroke-width: 2;
  }
  .compare .beside-name,
  .compare .droop {
    display: block;
  }
  .compare .beside-name {
    font-weight: 400;
    white-space: normal;
  }
  .compare .none {
    color: var(--_soft);
    font-size: 0.8667em;
  }
  .cell-button.from {
    border: 2px dashed var(--_before);
  }
  .cell-button.to {
    border: 2px solid var(--_now);
    background: var(--_now-wash);
  }
  .height-field {
    display: flex;
    gap: 4px;
    align-items: center;
  }
  .height-field .drop {
    inline-size: 5em;
    margin: 0;
    font-size: 1.1333em;
  }
  .height-field button {
    inline-size: 44px;
  }
  .sentence .not-yours {
    color: var(--_limit);
    font-weight: 600;
  }
  .make-yours {
    margin-block: 0 14px;
  }
  .reach .choices {
    margin-block-start: 6px;
  }
  .own-set {
    display: flex;
    flex-wrap: wrap;
    gap: 0 8px;
    margin-block: 6px;
  }
  .own-set small {
    align-self: center;
    white-space: nowrap;
  }
  .own-set .name {
    flex: 1;
    min-inline-size: 0;
  }
  .own-set .own-parts,
  .own-set > .note,
  .own-set .instruments {
    flex: 1 1 100%;
  }
  .own-set .button {
    min-inline-size: 44px;
  }
  .costs {
    padding-inline-start: 10px;
    border-inline-start: 3px solid var(--_next);
    font-size: 0.9375em;
  }
  .costs-title {
    margin: 0;
    font-weight: 600;
  }
  .costs ul {
    margin: 2px 0 0;
    padding-inline-start: 18px;
  }
  .costs li + li {
    margin-block-start: 4px;
  }
  .cells-show {
    display: flex;
    min-inline-size: 0;
    gap: 4px 10px;
    align-items: center;
    font-size: 0.9375em;
  }
  .paths dd,
  .each dd {
    font-weight: 400;
  }
  @container (min-width: 47.5em) {
    .body {
      grid-template-columns: minmax(0, 1.05fr) minmax(0, 1fr);
      gap: 16px 32px;
    }
  }
`;

export const bodyStyles = [
  chartStyles,
  sliderStyles,
  numbersStyles,
  sheetStyles,
  ...partsStyles,
  sharedBodyStyles,
  doubtStyles,
  tableScrollStyles,
  own,
];
