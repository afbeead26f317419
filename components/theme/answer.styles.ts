import { css } from 'lit';

/** The answer in a dialog's footer, and the dialog of a phone on its side: what is typed and what it changes are in one view. */
export const answerStyles = css`
  dialog .answer {
    flex: 1 0 100%;
    margin: -2px 0 0;
    font-size: 0.875em;
    line-height: 1.3;
  }
  .buttons:has(.answer) {
    flex-wrap: wrap;
  }
  /* On a phone the first field is in view with the answer, whatever the letters. */
  @media (max-width: 39.99em) {
    .how > .where,
    .how > .where svg {
      max-block-size: calc(0.2 * var(--_window-height, 100vh));
    }
  }
  /* A phone on its side: how it is measured beside what is typed, and the answer beside the buttons. */
  @media (max-height: 30em) and (min-width: 40em) {
    dialog {
      max-inline-size: min(48em, 96%);
      max-block-size: calc(0.98 * var(--_window-height, 100%));
    }
    dialog .entry {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      gap: 0 24px;
      align-items: start;
    }
    .entry > * {
      grid-column: 2;
    }
    .entry > fieldset {
      margin-block-start: 8px;
    }
    .entry > :is(h2, .buttons, .cautions) {
      grid-column: 1 / -1;
    }
    .entry > .how {
      grid-area: 2 / 1 / span 40;
    }
    .how > .where,
    .how > .where svg {
      max-block-size: calc(0.5 * var(--_window-height, 100vh));
    }
    dialog .answer {
      flex: 1;
      align-self: center;
    }
    .buttons .main {
      flex: none;
      min-inline-size: 8em;
    }
    .buttons:has(.answer) {
      flex-wrap: nowrap;
    }
  }
`;
