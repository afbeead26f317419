import { css } from 'lit';
import { setStyles } from '../bumpline-geometry/set-list.styles.js';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { whereStyles } from '../inputs/where.styles.js';
import { partsStyles } from '../parts/parts.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';

const own = css`
  .cure {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 6px;
  }
  .cure p {
    margin: 0;
  }
  .cure .try,
  .cure .enter-rod {
    justify-self: start;
  }
  .tried {
    margin: 0;
  }
  .rest {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 10px;
    min-inline-size: 0;
  }
  @container (min-width: 47.5em) {
    .body {
      grid-template-rows: auto auto 1fr;
    }
    .column {
      grid-area: 1 / 2 / 4 / 3;
    }
    .no-drawing {
      grid-template-rows: auto;
    }
    .no-drawing .column {
      grid-area: auto;
    }
  }
  .rod {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  @media print {
    .fitted-choice,
    .sets .add-set,
    .sets .pick,
    .cure .try {
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
  doubtStyles,
  sharedBodyStyles,
  twoColumnStyles,
  partsStyles,
  setStyles,
  own,
];
