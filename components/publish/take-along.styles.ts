import { css } from 'lit';

/** A row for each thing: its name, and beside it the forms it can be had in. */
export const takeAlongStyles = css`
  .take-along .things {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    max-inline-size: 36em;
    margin: 0 0 8px;
    padding: 0;
    list-style: none;
  }
  .take-along li {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 12px;
    align-items: center;
  }
  .take-along .thing {
    flex: 1 1 7em;
    font-size: 0.9375em;
  }
  .take-along select {
    flex: 1 1 9em;
    max-inline-size: 100%;
  }
  .take-along .forms {
    display: flex;
    gap: 8px;
  }
  .take-along .said {
    min-block-size: 1.45em;
    margin: 0 0 8px;
    font-size: 0.9375em;
    overflow-wrap: anywhere;
  }
  .take-along .svg-instead {
    display: block;
    margin-block-start: 6px;
  }
  .take-along .table-text {
    inline-size: 100%;
    font: 400 0.8125em/1.3 monospace;
  }
  /* A picture has paper's colours where the page's are forced, too. */
  .to-take .chart-sheet .grid {
    color: var(--_hair);
  }
`;
