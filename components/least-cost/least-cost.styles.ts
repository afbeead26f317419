import { css } from 'lit';

export const leastCostStyles = css`
  .least-cost .wanted {
    margin: 4px 0 8px;
    padding: 0;
    list-style: none;
  }
  .cost-weights {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 2px 24px;
    margin: 0 0 8px;
    padding: 0;
    border: 0;
    min-inline-size: 0;
  }
  .cost-weights legend {
    padding: 0;
    font-weight: 600;
    font-size: 0.9375em;
  }
  .cost-weights label {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 10px;
    font-size: 0.9375em;
  }
  .cost-weights select.listed {
    flex: 0 1 10.5em;
    min-inline-size: 0;
  }
  .setups {
    inline-size: 100%;
    border-collapse: collapse;
    table-layout: fixed;
    font-size: 0.9375em;
    font-variant-numeric: tabular-nums;
  }
  .setups caption {
    padding-block-end: 6px;
    text-align: start;
    font-weight: 600;
  }
  .setups :is(th, td) {
    padding: 4px 6px 6px 0;
    text-align: start;
    vertical-align: top;
    overflow-wrap: break-word;
  }
  .setups thead th {
    color: var(--_soft);
    font-size: 0.8667em;
    font-weight: 400;
    line-height: 1.25;
    vertical-align: bottom;
  }
  .setups tbody tr {
    border-block-start: 1px solid var(--_hair);
    break-inside: avoid;
  }
  .setups tbody .setup {
    padding-block-start: 8px;
    font-weight: 600;
  }
  /* Without room for a column of its own a setup stands over its costs. */
  @container (max-width: 47.49em) {
    .setups :is(thead, tbody, caption) {
      display: block;
    }
    .setups tr {
      display: grid;
      grid-template-columns: repeat(4, minmax(0, 1fr));
      align-items: end;
    }
    .setups tbody tr {
      align-items: start;
    }
    .setups .setup {
      grid-column: 1 / -1;
      padding-block-end: 0;
    }
    .setups thead .setup {
      padding: 0;
    }
  }
  .setups .takes {
    display: block;
  }
  .setups .takes::first-letter {
    text-transform: uppercase;
  }
  .setups small {
    display: block;
    color: var(--_soft);
    font-size: 0.8667em;
    font-weight: 400;
    line-height: 1.3;
  }
  .setups .best {
    font-weight: 700;
  }
  .setups .on-stop {
    color: var(--_contact);
  }
  .setups small.is-best {
    color: var(--_now);
    font-weight: 600;
  }
  .found.last .setups {
    opacity: 0.7;
  }
  .least-cost .input-row {
    grid-template-columns: minmax(8em, 1fr) minmax(0, auto);
  }
  .least-cost .input-row .item {
    display: none;
  }
  .search-inputs ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  @container (min-width: 47.5em) {
    .cost-weights {
      grid-template-columns: repeat(2, minmax(0, 24em));
    }
    .setups .setup {
      inline-size: 40%;
    }
    .setups tbody td {
      padding-block-start: 8px;
    }
  }
  @media print {
    .cost-weights,
    .ask-wanted,
    .search-inputs {
      display: none;
    }
  }
`;
