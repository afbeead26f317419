import { css } from 'lit';
import { paperStyles } from './alignment-paper.js';

const own = css`
  .alignment-part {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
    justify-items: start;
  }
  .alignment {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    justify-self: stretch;
  }
  .alignment :is(h3, h4, p) {
    margin: 0;
  }
  .alignment h3 {
    font: 600 1.0625em/1.3 var(--_sans);
  }
  .alignment h4 {
    margin-block: 10px 4px;
    font: 600 0.9375em/1.3 var(--_sans);
  }
  .alignment .fields {
    display: grid;
    gap: 8px;
    margin-block: 4px;
  }
  .alignment .pick {
    display: grid;
    gap: 4px;
    font-size: 0.9375em;
  }
  .alignment .pick select {
    inline-size: 100%;
    min-block-size: 44px;
    padding-inline: 8px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_paper);
    color: var(--_ink);
    font: 400 1em/1.2 var(--_sans);
  }
  .alignment .turns {
    display: grid;
    gap: 4px;
    padding: 6px 10px;
    border-inline-start: 3px solid var(--_now);
    background: var(--_now-wash);
  }
  .alignment .turns p:first-child {
    font-weight: 600;
  }
  .alignment .turns,
  .alignment .order {
    font-size: 0.9375em;
    line-height: 1.45;
  }
  .alignment .order {
    margin: 0;
    padding-inline-start: 1.4em;
  }
  .alignment .order li + li {
    margin-block-start: 8px;
  }
  .alignment .order span {
    display: block;
  }
  .alignment .told p {
    font-size: 0.9375em;
  }
  .alignment > .button {
    justify-self: start;
  }
  .paper {
    display: none;
  }
  @container (min-width: 47.5em) {
    .alignment .fields {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      gap: 8px 32px;
    }
  }
  @media print {
    .alignment-open,
    .alignment {
      display: none;
    }
    .paper {
      display: block;
      break-before: page;
      break-after: page;
      justify-self: stretch;
    }
  }
`;

export const alignmentStyles = [paperStyles, own];
