import { css } from 'lit';

/** Of a list of sets of parts. */
export const setStyles = css`
  .sets {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 10px;
    align-items: center;
  }
  .sets > * {
    flex: 1 1 100%;
    order: 3;
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
  /* In the row of the choice's name: the names of sets take the whole width. */
  .sets > .chosen-set {
    display: contents;
  }
  .chosen-set > span {
    flex: 1 1 0;
  }
  .sets > .chosen-set > select {
    order: 2;
    flex: 0 1 auto;
  }
  .sets > .add-set {
    order: 1;
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
