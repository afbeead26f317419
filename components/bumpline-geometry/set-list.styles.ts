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
    inline-size: 100%;
    text-overflow: ellipsis;
  }
  .pick-row {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 10px;
    align-items: end;
  }
  .pick-row .pick {
    flex: 1 1 10em;
    max-inline-size: 22em;
  }
  .set > .adopt {
    margin-block-end: 10px;
  }
  .sets .pick input {
    inline-size: 100%;
    text-align: start;
  }
`;
