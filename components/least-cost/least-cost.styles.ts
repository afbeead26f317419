import { css } from 'lit';

export const leastCostStyles = css`
  .least-cost h3 {
    margin: 8px 0 4px;
    font: 600 1.0625em/1.3 var(--_sans);
  }
  .least-cost .wanted {
    margin: 4px 0 8px;
    padding: 0;
    list-style: none;
  }
  .cost-weights {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 19em), 1fr));
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
    inline-size: 10.5em;
    flex: none;
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
  .setups tbody {
    border-block-start: 1px solid var(--_hair);
    break-inside: avoid;
  }
  .setups th[scope='rowgroup'] {
    padding-block: 8px 2px;
    font-weight: 600;
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
  .setups small.least {
    color: var(--_now);
    font-weight: 600;
  }
  .found.last .setups {
    opacity: 0.7;
  }
  .search-inputs ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  @container (min-width: 47.5em) {
    .setups tbody {
      font-size: 1em;
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
