import { css } from 'lit';

/** A table wider than its sheet, scrolled sideways within it: the name of a row stays in sight. */
export const tableScrollStyles = css`
  .table-scroll {
    position: relative;
    overflow-x: auto;
    overscroll-behavior-x: contain;
  }
  .table-scroll th[scope='row'] {
    position: sticky;
    z-index: 1;
    inset-inline-start: 0;
    background: var(--_paper);
    text-align: start;
    font-weight: 600;
    hyphens: auto;
    /* A browser without a dictionary has no hyphens. */
    overflow-wrap: anywhere;
  }
`;
