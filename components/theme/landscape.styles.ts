import { css } from 'lit';

/** The dialog on a phone that lies on its side. */
export const landscapeStyles = css`
  /* The picture beside what is asked, so that both are in view. */
  @media (min-width: 36em) and (max-height: 30em) {
    dialog {
      max-inline-size: 47.5em;
      max-block-size: 100%;
      margin-block: auto;
    }
    .entry:has(> .where) {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1.35fr);
      column-gap: 18px;
    }
    .entry:has(> .where) > * {
      grid-column: 2;
    }
    .entry:has(> .where) > :is(h2, .buttons) {
      grid-column: 1 / -1;
    }
    .entry > .where {
      position: sticky;
      inset-block-start: 8px;
      grid-row: 2 / span 12;
      grid-column: 1;
      align-self: start;
    }
    .entry > div.where {
      max-block-size: 14em;
    }
    .entry > div.where svg {
      max-block-size: 14em;
    }
  }
`;
