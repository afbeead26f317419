import { css } from 'lit';
import { setStyles } from '../bumpline-geometry/set-list.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { partsStyles } from '../parts/parts.styles.js';
import { sharedBodyStyles } from '../theme/body.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';
import { tableScrollStyles } from '../theme/table-scroll.styles.js';

const own = css`
  .sort-by {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 10px;
    align-items: center;
    font-size: 0.9375em;
  }
  .sort-by label {
    display: flex;
    flex: 0 1 26em;
    gap: 10px;
    align-items: center;
    min-inline-size: 0;
    white-space: nowrap;
  }
  .ways-scroll {
    margin-inline: -16px;
    padding-inline-end: 16px;
    border-block: 1px solid var(--_hair);
  }
  .ways {
    border-collapse: collapse;
    font-size: 0.875em;
    font-variant-numeric: tabular-nums;
  }
  .ways th,
  .ways td {
    padding: 5px 8px;
    vertical-align: top;
    white-space: nowrap;
  }
  .ways td,
  .ways th[scope='col'] {
    text-align: end;
    font-weight: 400;
  }
  .ways tbody > tr > * {
    border-block-start: 1px solid color-mix(in srgb, var(--_hair) 45%, transparent);
  }
  .ways thead tr > :first-child {
    position: sticky;
    z-index: 1;
    inset-inline-start: 0;
    background: var(--_paper);
    text-align: start;
  }
  .ways tr > :first-child {
    inline-size: 9.5em;
    min-inline-size: 9.5em;
    max-inline-size: 9.5em;
    padding-inline-start: 16px;
    border-inline-end: 1px solid var(--_hair);
    white-space: normal;
  }
  .ways thead th {
    vertical-align: bottom;
  }
  .ways th[scope='colgroup'] {
    font-weight: 400;
    padding-block-end: 0;
    color: var(--_soft);
    text-align: start;
  }
  .ways small {
    display: block;
    color: var(--_soft);
    font-size: 0.9286em;
    font-weight: 400;
    line-height: 1.3;
  }
  .ways b {
    font-weight: 600;
  }
  .ways .as-it-is td {
    color: var(--_soft);
  }
  .ways .unreached :is(b, th[scope]) {
    color: var(--_soft);
    font-weight: 400;
  }
  .ways .unreached b {
    font-style: italic;
  }
  .sort {
    min-block-size: 44px;
    min-inline-size: 44px;
    padding: 2px 0;
    border: 0;
    background: none;
    color: var(--_now);
    font: 500 1em/1.25 var(--_sans);
    text-align: end;
    text-decoration: underline dotted;
    text-underline-offset: 3px;
    white-space: normal;
    cursor: pointer;
  }
  .ways thead th[aria-sort]:not([aria-sort='none']) .sort {
    font-weight: 700;
  }
  .ways .arrow {
    display: inline-block;
    padding-inline-start: 4px;
    font-size: 0.75em;
  }
  .picture-grid {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 9.4em), 1fr));
    gap: 12px 14px;
  }
  .picture {
    margin: 0;
    break-inside: avoid;
    font-size: 0.8125em;
  }
  .picture figcaption {
    font-weight: 600;
    line-height: 1.3;
  }
  .picture small {
    color: var(--_soft);
    font-size: 1em;
    font-weight: 400;
    white-space: nowrap;
  }
  .picture ul {
    margin: 2px 0 0;
    padding: 0;
    list-style: none;
  }
  .picture li {
    display: grid;
    grid-template-columns: 4.4em minmax(0, 1fr) 5em;
    gap: 5px;
    align-items: center;
    line-height: 1.45;
  }
  @supports (grid-template-columns: subgrid) {
    .picture ul {
      display: grid;
      grid-template-columns: auto minmax(0, 1fr) auto;
      column-gap: 5px;
    }
    .picture li {
      grid-column: 1 / -1;
      grid-template-columns: subgrid;
    }
  }
  .picture b {
    font-weight: 500;
    text-align: end;
    font-variant-numeric: tabular-nums;
  }
  .track {
    position: relative;
    block-size: 0.75em;
  }
  .track::before,
  .track::after {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline-start: calc(100% * var(--from));
    inline-size: calc(100% * var(--size));
    background: var(--_now);
    print-color-adjust: exact;
  }
  .track::after {
    inset-block: -0.35em;
    inset-inline-start: calc(100% * var(--zero));
    inline-size: 1px;
    background: var(--_before);
  }
  .picture .unreached {
    color: var(--_soft);
  }
  .picture .unreached .track::before {
    opacity: 0.35;
  }
  .notes ul {
    margin: 4px 0 8px;
    padding-inline-start: 18px;
    font-size: 0.9375em;
  }
  .ways .sorted {
    background: var(--_now-wash);
  }
  .notes .note {
    margin-block-end: 6px;
  }
  .in-turn {
    margin-block-end: 0;
  }
  .in-turn .text-button {
    font-size: 1em;
  }
  /* Of what was asked before: text keeps its contrast. */
  .sheet[data-state='stale'] :is(.ways, .picture) :is(b, th) {
    color: var(--_soft);
  }
  .sheet[data-state='stale'] .track {
    opacity: 0.5;
  }
  @container (min-width: 47.5em) {
    .picture-grid {
      grid-template-columns: repeat(auto-fill, minmax(13em, 1fr));
      gap: 12px 28px;
    }
    .ways-scroll {
      margin-inline: -24px;
      padding-inline-end: 24px;
    }
    .ways tr > :first-child {
      inline-size: 15em;
      min-inline-size: 15em;
      max-inline-size: 15em;
      padding-inline-start: 24px;
    }
  }
  /* All of them side by side. */
  @container (min-width: 68em) {
    .ways-scroll {
      padding-inline-end: 8px;
    }
    /* In a wide font too. */
    .ways {
      font-size: 0.8em;
    }
    .ways :is(th, td) {
      padding-inline: 3px;
    }
    .ways tr > :first-child {
      inline-size: 11.25em;
      min-inline-size: 11.25em;
      max-inline-size: 11.25em;
    }
    .swipe.may-fit {
      display: none;
    }
  }
  @media print {
    .ways-scroll {
      overflow: visible;
      background: none;
    }
    .ways,
    .ways tr > :first-child {
      inline-size: 100%;
      max-inline-size: none;
      border-inline-end: 0;
    }
    .sort-by,
    .ways tr > :not(:first-child),
    .ways thead,
    .ways .as-it-is,
    .ways-scroll + .note,
    .in-turn .roll,
    .sets .add-set,
    .sets .pick {
      display: none;
    }
  }
  @media (forced-colors: active) {
    .track::before,
    .track::after {
      forced-color-adjust: none;
      background: CanvasText;
    }
  }
`;

export const bodyStyles = [
  sliderStyles,
  numbersStyles,
  sheetStyles,
  sharedBodyStyles,
  partsStyles,
  setStyles,
  tableScrollStyles,
  own,
];
