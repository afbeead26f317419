import { css } from 'lit';

/** What a ± is made of, what is in none, and the fields of the instruments. */
export const doubtStyles = css`
  .shares {
    margin: 0 0 8px;
    padding: 0;
    list-style: none;
  }
  .shares li {
    position: relative;
    display: flex;
    justify-content: space-between;
    padding: 4px 6px;
    font-size: 0.9375em;
  }
  .shares .bar {
    position: absolute;
    inset: 2px auto 2px 0;
    inline-size: calc(100% * var(--share));
    background: color-mix(in srgb, var(--_next) 18%, transparent);
  }
  .shares li > :not(.bar) {
    position: relative;
  }
  .not-in {
    margin-block-end: 8px;
    font-size: 0.875em;
    line-height: 1.4286em;
  }
  .not-in p {
    margin: 0;
  }
  .not-in ul {
    margin: 4px 0 0;
    padding-inline-start: 18px;
  }
  .not-in li + li {
    margin-block-start: 4px;
  }
  .instruments {
    border: 0;
  }
  .instrument {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 6.9333em;
    gap: 2px 12px;
    align-items: center;
    padding-block: 4px;
    font-size: 0.9375em;
  }
  .instrument .text {
    inline-size: 100%;
    min-block-size: 44px;
    font-size: 1.0667em;
    text-align: end;
  }
  .instrument small {
    grid-column: 1 / 3;
    color: var(--_soft);
    font-size: 0.8667em;
    line-height: 1.3846em;
  }
  @media (forced-colors: active) {
    .shares .bar {
      border: 1px solid CanvasText;
    }
  }
`;
