import { css } from 'lit';

/** Short answers to one question, side by side. */
export const inRowStyles = css`
  .options.many {
    display: flex;
    flex-wrap: wrap;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: 6px;
  }
  .options.in-row {
    display: grid;
    grid-auto-columns: minmax(0, 1fr);
    grid-auto-flow: column;
    gap: 0;
  }
  fieldset + .fields {
    margin-block-start: 12px;
  }
  fieldset.beside legend {
    float: inline-start;
    inline-size: 38%;
    padding-block: 11px;
  }
  fieldset.beside .options {
    margin: 0;
  }
  .options.in-row label.choice {
    position: relative;
    justify-content: center;
    padding-inline: 4px;
    border-radius: 0;
    color: var(--_now);
  }
  .options.in-row .choice + .choice {
    margin-inline-start: -1px;
  }
  /* The whole of it is what is pressed. */
  .options.in-row input[type='radio'] {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    appearance: none;
    cursor: pointer;
  }
  .options.in-row .choice:has(:checked) {
    z-index: 1;
    color: var(--_ink);
    font-weight: 600;
  }
`;
