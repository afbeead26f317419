import { css } from 'lit';
import { chartStyles } from '../chart/chart.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { whereStyles } from '../inputs/where.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';

const own = css`
  /* On a phone one picture at a time, over the sliders that move both; side by side the two columns are what they are. */
  .views,
  .column {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 10px;
  }
  .views {
    gap: 6px;
  }
  /* As wide as the other, so that it is drawn: paper shows both. */
  .views:not(.from-side) > .side-view,
  .views.from-side > .section-view {
    block-size: 0;
    margin-block-start: -6px;
    overflow: hidden;
    visibility: hidden;
  }
  .from-side > .side-view {
    order: -1;
  }
  .from-side > :is(.view-name, .which-view) {
    order: -2;
  }
  .which-view {
    display: grid;
    grid-template-columns: 1fr 1fr;
  }
  .which-view .button {
    padding-inline: 6px;
    border-color: var(--_hair);
    border-radius: 4px 0 0 4px;
    color: var(--_now);
  }
  .which-view .button + .button {
    margin-inline-start: -1px;
    border-radius: 0 4px 4px 0;
  }
  .which-view .button[aria-pressed='true'] {
    position: relative;
    border-color: var(--_now);
    background: var(--_now-wash);
    color: var(--_ink);
    font-weight: 600;
  }
  /* A phone on its side: picture and sliders side by side. */
  @media (max-height: 30em) {
    @container (min-width: 36em) and (max-width: 47.49em) {
      .views {
        grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr);
        gap: 6px 16px;
      }
      .views > :is(.view-name, .which-view) {
        grid-column: 1 / -1;
      }
      .views > .pose {
        grid-column: 2;
        grid-row: 3;
      }
      .views > .drawing-place {
        grid-column: 1;
        grid-row: 3;
      }
    }
  }
  @container (min-width: 47.5em) {
    .which-view {
      display: none;
    }
    .views > .drawing-place.drawing-place {
      block-size: auto;
      margin: 0;
      order: 0;
      visibility: visible;
    }
    .body {
      grid-template-rows: auto auto 1fr;
    }
    .control {
      grid-area: 1 / 2;
    }
    .body > .column.column {
      grid-area: 2 / 2 / 4 / 3;
    }
    .views {
      grid-area: 1 / 1 / 3 / 2;
    }
    /* Shown without the chart: both pictures side by side. */
    .compact > .shown-drawing:not(:has(+ .shown-chart)) {
      max-inline-size: none;
    }
    .shown-drawing:not(:has(+ .shown-chart)) > .views {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      gap: 6px 32px;
    }
    .shown-drawing:not(:has(+ .shown-chart)) > .views > :is(.view-name, .pose) {
      grid-column: 1 / -1;
    }
    .shown-drawing:not(:has(+ .shown-chart)) > .views > .drawing-place {
      grid-row: 2;
    }
    .no-drawing > .control {
      grid-area: 1 / 1 / 2 / 3;
    }
    .no-drawing > .column.column {
      grid-area: 2 / 1 / 3 / 3;
    }
  }
  .poses {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(7.5em, 1fr));
    gap: 4px 12px;
  }
  .tightest .title {
    margin: 0 0 2px;
    font: 600 0.9375em/1.3 var(--_sans);
  }
  .tightest ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .tightest .input-row[aria-pressed='true'] {
    background: var(--_now-wash);
    box-shadow: inset 3px 0 var(--_now);
    padding-inline-start: 8px;
  }
  .tightest .touches {
    color: var(--_contact);
  }
  .tightest .close {
    color: var(--_limit);
  }
  .changes .none.none {
    display: block;
  }
  .changes .none :is(dt, dd) {
    display: inline;
  }
  .changes .none dd {
    font-weight: 400;
    color: var(--_soft);
  }
  /* Names of places break: beside them there is room for more figures. */
  .numbers th[scope='row'] {
    min-inline-size: 7.5em;
    white-space: normal;
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
  .sheet[data-state='stale'] :is(.changes, .tightest, .view-name, .wheels table, .travel dl) {
    visibility: hidden;
  }
  .sentence[data-verdict='touches'] .value:first-of-type {
    color: var(--_contact);
  }
  .sentence[data-verdict='close'] .value:first-of-type {
    color: var(--_limit);
  }
  @media print {
    .views > .drawing-place.drawing-place {
      block-size: auto;
      margin: 0;
      visibility: visible;
    }
    .which-view {
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
