import { css } from 'lit';

/**
 * A table wider than its sheet, scrolled sideways within it: the name of a row stays in sight, and a column comes to rest beside it, not
 * half under it, where a figure would look like another.
 */
export const tableScrollStyles = css`
  .table-scroll {
    --_row-name: min(30cqi, 144px);
    position: relative;
    overflow-x: auto;
    overscroll-behavior-x: contain;
    scroll-snap-type: x mandatory;
    scroll-padding-inline-start: var(--_row-name);
    /* A shadow at the edge as long as there is more beyond it. */
    background:
      linear-gradient(to left, var(--_paper) 50%, transparent) right / 32px 100% local no-repeat,
      linear-gradient(to left, color-mix(in srgb, var(--_ink) 22%, transparent), transparent) right / 12px 100% scroll
        no-repeat;
  }
  .table-scroll :is(td, thead th) {
    scroll-snap-align: start;
  }
  .table-scroll th[scope='row'] {
    inline-size: var(--_row-name);
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
