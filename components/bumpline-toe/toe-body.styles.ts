import { css } from 'lit';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { cautionStyles } from '../element/cautions.js';
import { whereStyles } from '../inputs/where.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';

const own = css`
  .cure {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 6px;
  }
  .cure h3 {
    margin: 0;
    font-size: 1em;
  }
  .cure p {
    margin: 0;
  }
  .cure .try {
    justify-self: start;
  }
  .views {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }
  .views .button {
    flex: 1;
  }
  .views .button[aria-pressed='true'] {
    border-color: var(--_now);
    background: var(--_now-wash);
    color: var(--_now);
    font-weight: 600;
  }
  .rod {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  @media print {
    .actions,
    .numbers,
    .slider,
    .views,
    .cure .try {
      display: none;
    }
    .drop {
      background: none;
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
  doubtStyles,
  sharedBodyStyles,
  twoColumnStyles,
  own,
];
