import { css } from 'lit';

const dark = css`
  --_paper: var(--bumpline-paper, #11161c);
  --_sheet: var(--bumpline-sheet, #1a212a);
  --_ink: var(--bumpline-ink, #ece9e2);
  --_soft: var(--bumpline-soft, #a0a9b3);
  --_hair: var(--bumpline-hair, #4b5560);
  --_now: var(--bumpline-now, #7fb9f2);
  --_now-wash: var(--bumpline-now-wash, #1b2e42);
  --_before: var(--bumpline-before, #98a2ad);
  --_limit: var(--bumpline-limit, #e2ae4f);
  --_limit-wash: var(--bumpline-limit-wash, #2c2413);
  --_contact: var(--bumpline-contact, #ff8a80);
  --_next: var(--bumpline-next, #c2a2ff);
  --_tyre: var(--bumpline-tyre, #29313b);
`;

/**
 * Colours, type and the resets that keep a host page out. One meaning a colour: `now`, `before`, `limit`, `contact`, `next`.
 * Authors may set the public `--bumpline-*` properties; inside, only the private `--_*` ones are read.
 * Contrast: text colours hold 4.5:1 and line colours 3:1 on `--_paper` and `--_sheet`, light and dark (asserted in the tests).
 */
export const theme = css`
  :host {
    --_paper: var(--bumpline-paper, #f8f8f4);
    --_sheet: var(--bumpline-sheet, #ffffff);
    --_ink: var(--bumpline-ink, #18212b);
    --_soft: var(--bumpline-soft, #5b6570);
    --_hair: var(--bumpline-hair, #b4bbc2);
    --_now: var(--bumpline-now, #0b57a4);
    --_now-wash: var(--bumpline-now-wash, #e4edf7);
    --_before: var(--bumpline-before, #66707b);
    --_limit: var(--bumpline-limit, #8f5600);
    --_limit-wash: var(--bumpline-limit-wash, #fdf3e1);
    --_contact: var(--bumpline-contact, #b3261e);
    --_next: var(--bumpline-next, #6f35c9);
    --_tyre: var(--bumpline-tyre, #e6e6df);
    --_sans: var(--bumpline-sans, system-ui, -apple-system, 'Segoe UI', Roboto, 'Helvetica Neue', sans-serif);
    --_serif: var(--bumpline-serif, Charter, 'Bitstream Charter', 'Sitka Text', Cambria, Georgia, serif);

    display: flow-root;
    box-sizing: border-box;
    color: var(--_ink);
    background: var(--_paper);
  }
  /* Inside, where no rule of the host page reaches: one of its own for every element would beat :host. */
  .sheet,
  dialog {
    font: normal 400 16px / 1.45 var(--_sans);
    font-variant-numeric: tabular-nums lining-nums;
    /* Our words are English, and a minus stands before its figure, whichever way the page is written. */
    direction: ltr;
    letter-spacing: normal;
    word-spacing: normal;
    text-align: start;
    text-indent: 0;
    text-shadow: none;
    text-transform: none;
    white-space: normal;
    hyphens: manual;
    -webkit-text-size-adjust: 100%;
  }
  :host([hidden]) {
    display: none;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  @media (prefers-color-scheme: dark) {
    :host(:not([theme='light'])) {
      ${dark}
    }
  }
  :host([theme='dark']) {
    ${dark}
  }
  /* As specific as the dark rules above: paper and forced colours win over any scheme. */
  @media print {
    :host([theme]),
    :host(:not([theme])) {
      --_paper: #fff;
      --_sheet: #fff;
      --_ink: #000;
      --_soft: #444;
      --_hair: #999;
      --_now: #0b57a4;
      --_now-wash: #fff;
      --_before: #555;
      --_limit: #7a4a00;
      --_limit-wash: #fff;
      --_contact: #a01b14;
      --_next: #5b27ad;
      --_tyre: #eee;
    }
  }
  @media (forced-colors: active) {
    :host([theme]),
    :host(:not([theme])) {
      --_paper: Canvas;
      --_sheet: Canvas;
      --_ink: CanvasText;
      --_soft: CanvasText;
      --_hair: GrayText;
      --_now: Highlight;
      --_now-wash: Canvas;
      --_before: CanvasText;
      --_limit: CanvasText;
      --_limit-wash: Canvas;
      --_contact: CanvasText;
      --_next: CanvasText;
      --_tyre: Canvas;
    }
  }
  :focus-visible {
    outline: 3px solid var(--_now);
    outline-offset: 2px;
  }
  .visually-hidden {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;
