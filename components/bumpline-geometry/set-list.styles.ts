import { css } from 'lit';

/** Of a list of sets of parts. */
export const setStyles = css`
  .sets {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 10px;
    align-items: end;
  }
  .sets > * {
    flex: 1 1 100%;
    min-inline-size: 0;
  }
  .sets .pick {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
    justify-items: start;
    font-size: 0.9375em;
  }
  .sets .pick select {
    max-inline-size: 100%;
  }
  /* Beside the choice where there is room. */
  .sets > .chosen-set {
    flex: 1 1 9em;
  }
  .sets > .add-set {
    flex: 0 0 auto;
  }
  .set > .adopt {
    margin-block-end: 10px;
  }
  .sets .pick input {
    inline-size: 100%;
    text-align: start;
  }
`;
