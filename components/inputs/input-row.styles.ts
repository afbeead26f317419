import { css } from 'lit';

/** Lists of numbers that an answer rests on, each a button. */
export const inputRowStyles = css`
  .inputs ul,
  .travel ul {
    margin: 0 0 8px;
    padding: 0;
    list-style: none;
  }
  .input-row {
    display: grid;
    grid-template-columns: 1.7333em minmax(8em, 1fr) minmax(0, auto);
    align-items: center;
    gap: 8px;
    inline-size: 100%;
    min-block-size: 44px;
    padding: 4px 0;
    border: 0;
    border-block-start: 1px solid var(--_hair);
    background: none;
    color: var(--_ink);
    font: 400 0.9375em/1.3 var(--_sans);
    text-align: start;
    cursor: pointer;
  }
  .input-row .item {
    color: var(--_soft);
    text-align: center;
  }
  .input-row .value {
    text-align: end;
    font-variant-numeric: tabular-nums;
    font-style: italic;
    color: var(--_soft);
    white-space: pre-wrap;
  }
  /* Nothing stands there yet: it is given by pressing it. */
  .input-row:hover {
    background: var(--_now-wash);
  }
  /* It opens something. */
  .input-row .value::after {
    display: inline-block;
    margin-inline-start: 0.3em;
    content: '›' / '';
    color: var(--_now);
    font-style: normal;
  }
  .input-row .enter {
    color: var(--_now);
    font-style: normal;
    text-decoration: underline dotted;
    text-underline-offset: 4px;
  }
  .input-row:hover {
    background: var(--_now-wash);
  }
  /* A list without numbers has no room for them. */
  @container (min-width: 18.01em) {
    ul:not(:has(.item:not(:empty))) > li > .input-row {
      grid-template-columns: minmax(8em, 1fr) minmax(0, auto);
    }
  }
  ul:not(:has(.item:not(:empty))) > li > .input-row .item {
    display: none;
  }
  .input-row .value.words {
    max-inline-size: 13.3333em;
    white-space: normal;
    text-align: end;
  }
  .input-row .name small {
    display: block;
    color: var(--_soft);
    font-size: 0.8667em;
  }
  /* Fields of a dialog stand under each other, whatever stands behind them. */
  .long-units .entry-box .unit {
    min-inline-size: 3.6em;
  }
  /* Large text on a phone. */
  @container (max-width: 18em) {
    .input-row {
      grid-template-columns: 1.7333em minmax(0, 1fr);
    }
    .input-row .value,
    .input-row .value.words {
      grid-column: 2;
      text-align: start;
    }
    ul:not(:has(.item:not(:empty))) > li > .input-row :is(.name, .value) {
      grid-column: 1 / -1;
    }
  }
  .input-row .own,
  .input-row.yours .value {
    font-style: normal;
    font-weight: 600;
    color: var(--_ink);
  }
`;
