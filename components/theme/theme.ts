import { css, unsafeCSS } from 'lit';

/** By meaning, as `--_…`: in the light, in the dark. */
const COLOURS: Readonly<Record<string, readonly [light: string, dark: string]>> = {
  paper: ['#f8f8f4', '#11161c'],
  sheet: ['#ffffff', '#1a212a'],
  ink: ['#18212b', '#ece9e2'],
  soft: ['#5b6570', '#a0a9b3'],
  hair: ['#b4bbc2', '#4b5560'],
  now: ['#0b57a4', '#7fb9f2'],
  'now-wash': ['#e4edf7', '#1b2e42'],
  before: ['#66707b', '#98a2ad'],
  limit: ['#8f5600', '#e2ae4f'],
  'limit-wash': ['#fdf3e1', '#2c2413'],
  contact: ['#b3261e', '#ff8a80'],
  next: ['#6f35c9', '#c2a2ff'],
  tyre: ['#e6e6df', '#29313b'],
};

/** The same on paper, and in a picture that leaves the page: it is looked at on any ground. */
export const PAPER: Readonly<Record<string, string>> = {
  paper: '#fff',
  sheet: '#fff',
  ink: '#000',
  soft: '#444',
  hair: '#999',
  now: '#0b57a4',
  'now-wash': '#fff',
  before: '#555',
  limit: '#7a4a00',
  'limit-wash': '#fff',
  contact: '#a01b14',
  next: '#5b27ad',
  tyre: '#eee',
};

const palette = (colour: (light: string, dark: string) => string) =>
  unsafeCSS(
    Object.entries(COLOURS)
      .map(([name, [light, dark]]) => `--_${name}:var(--bumpline-${name},${colour(light, dark)});`)
      .join(''),
  );
const dark = palette((_, dark) => dark);

/**
 * Colours and type. One meaning a colour: `now`, `before`, `limit`, `contact`, `next`.
 * Authors may set the public `--bumpline-*` properties; inside, only the private `--_*` ones are read.
 * Contrast: text colours hold 4.5:1 and line colours 3:1 on `--_paper` and `--_sheet`, light and dark (asserted in the tests).
 */
export const theme = css`
  :host {
    ${palette((light) => light)}
    --_sans: var(--bumpline-sans, system-ui, -apple-system, 'Segoe UI', Roboto, 'Helvetica Neue', sans-serif);
    --_serif: var(--bumpline-serif, Charter, 'Bitstream Charter', 'Sitka Text', Cambria, Georgia, serif);

    display: flow-root;
    box-sizing: border-box;
    color: var(--_ink);
    background: var(--_paper);
    /* Also of a rule for every element: lines that run down a page leave a sheet no width. */
    writing-mode: horizontal-tb !important;
  }
  :host([hidden]) {
    display: none;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  /* The page's scheme, which is light where it names none; its rule for every element does not undo what its attribute says. */
  :host([theme='light']) {
    color-scheme: light !important;
  }
  :host([theme='dark']) {
    color-scheme: dark !important;
  }
  @supports (color: light-dark(red, red)) {
    :host {
      ${palette((light, dark) => `light-dark(${light},${dark})`)}
    }
  }
  /* Browsers of before 2024. */
  @supports not (color: light-dark(red, red)) {
    @media (prefers-color-scheme: dark) {
      :host(:not([theme='light'])) {
        ${dark}
      }
    }
    :host([theme='dark']) {
      ${dark}
    }
  }
  /* As specific as the dark rules above: paper and forced colours win over any scheme. */
  @media print {
    :host([theme]),
    :host(:not([theme])) {
      color-scheme: light !important;
      ${unsafeCSS(
        Object.entries(PAPER)
          .map(([name, colour]) => `--_${name}:${colour};`)
          .join(''),
      )}
    }
  }
  @media (forced-colors: active) {
    :host([theme]),
    :host(:not([theme])) {
      --_paper: Canvas;
      --_sheet: Canvas;
      --_ink: CanvasText;
      --_soft: CanvasText;
      --_hair: CanvasText;
      --_now: LinkText;
      --_now-wash: Canvas;
      --_before: CanvasText;
      --_limit: CanvasText;
      --_limit-wash: Canvas;
      --_contact: CanvasText;
      --_next: CanvasText;
      --_tyre: Canvas;
    }
  }
  /* The page's own words stand where they stood before the element was there, as far as it is for us to say. */
  slot {
    /* What clears floats in them clears none but their own: one keeps the element's place (components/delivery/reserved-heights.mjs). */
    display: flow-root;
    /* As far from the edge as the sentence will, which knows its container: 24px from 760px on. */
    padding: 10px clamp(16px, 100% - 736px, 24px);
  }
  :focus-visible {
    outline: 3px solid var(--_now);
    outline-offset: 2px;
  }
  .visually-hidden {
    position: absolute;
    /* Where its text would stand it may be beyond the page's edge. */
    inset-inline-start: 0;
    width: 1px;
    height: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;
