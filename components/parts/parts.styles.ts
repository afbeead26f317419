import { css } from 'lit';
import { whereStyles } from '../inputs/where.styles.js';

const own = css`
  .parts-editor {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
    margin-block: 8px;
  }
  .part {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 6px;
    padding: 6px 10px 0;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
  }
  .part-head {
    display: flex;
    gap: 8px;
    align-items: center;
    justify-content: space-between;
  }
  .parts-editor p {
    margin: 0;
  }
  .part .note.query {
    padding-inline-start: 8px;
    border-inline-start: 3px solid var(--_limit);
    color: var(--_ink);
  }
  .part > details {
    border-block-end: 0;
    border-block-start: 1px solid var(--_hair);
  }
  .part-where .note {
    margin-block-end: 10px;
  }
  .parts-editor .check {
    display: flex;
    gap: 8px;
    align-items: center;
    min-block-size: 44px;
    font-size: 0.9375em;
  }
  .check input {
    flex: none;
    inline-size: 1.4em;
    block-size: 1.4em;
    margin: 0;
    font: inherit;
    accent-color: var(--_now);
  }
  .add-part .choices {
    margin-block: 0 10px;
  }
  .part-choices .button {
    padding-inline: 10px;
  }
  .part-where .field {
    margin-block-end: 8px;
  }
`;

/** Of a list of parts, beside those of sheets and cautions. */
export const partsStyles = [whereStyles, own];
