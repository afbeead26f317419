import { css } from 'lit';

/** Of an element of which its author shows a part. */
export const compactStyles = css`
  /* Only what its author shows: side by side where there is room for two. */
  .compact {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px 32px;
    align-items: start;
  }
  .compact > * {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
    min-inline-size: 0;
    max-inline-size: 44em;
  }
  .compact > .shown-table {
    max-inline-size: none;
  }
  @container (min-width: 47.5em) {
    .compact:has(> .shown-drawing + .shown-chart) {
      grid-template-columns: minmax(0, 1.05fr) minmax(0, 1fr);
    }
    .compact > .shown-table {
      grid-column: 1 / -1;
    }
  }
  .compact.coming {
    visibility: hidden;
  }
  .compact:empty {
    display: none;
  }
`;
