import { css } from 'lit';

/** The reset, head and sentence: what the first answer needs. */
const first = css`
  :host {
    container-type: inline-size;
    /* Where a page makes it as wide as its content, of which a container tells nothing. */
    contain-intrinsic-inline-size: 240px;
    padding: 0;
  }
  /*
   * The one reset, inside, where no rule of the host page reaches: one of its own for every element would beat :host. The size is the
   * reader's own (medium), whatever root and article have; all inside is in em of it. What a page does to hide or to switch off what it
   * holds is no styling: that goes through, as its colour scheme does.
   */
  .inside {
    all: initial;
    display: block;
    /* One more, in whose em queries are asked. */
    container-type: inline-size;
    visibility: inherit;
    pointer-events: inherit;
    interactivity: inherit;
    color-scheme: inherit;
    color: var(--_ink);
    font: normal 400 medium / 1.45 var(--_sans);
    font-variant-numeric: tabular-nums lining-nums;
    text-align: start;
    -webkit-text-size-adjust: 100%;
    text-size-adjust: 100%;
    -webkit-user-select: text;
    user-select: text;
  }
  .sheet {
    display: grid;
    gap: 6px;
    padding: 4px 16px 16px;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 2px;
    /* The height of the buttons that come later. */
    min-block-size: 44px;
    font-size: 0.875em;
    color: var(--_soft);
  }
  .head p {
    flex: 1 1 6em;
    margin: 0;
    min-inline-size: 0;
  }
  .head b {
    color: var(--_ink);
    font-weight: 600;
  }
  /* Where the two choices will stand. */
  .tools-room {
    inline-size: calc(9.5em + 2px);
  }
  .sentence {
    margin: 0;
    font: 400 1.375em/1.36 var(--_serif);
    text-wrap: pretty;
  }
  .sentence b {
    font-weight: 600;
    white-space: nowrap;
    font-variant-numeric: tabular-nums lining-nums;
  }
  /* What becomes a button, as wide as that. */
  .sentence .to-ask {
    display: inline-block;
    min-inline-size: 44px;
    text-align: center;
  }
  .sentence .doubt {
    font-weight: 400;
    color: var(--_soft);
  }
  .sentence .not-yours {
    display: block;
    font: 600 0.6818em/1.5 var(--_sans);
    color: var(--_limit);
  }
  .sentence small {
    font: 400 0.6818em/1 var(--_sans);
    color: var(--_soft);
  }
  .sentence .stand-ins {
    display: block;
    line-height: 1.3;
  }
  /* Quieter, and still readable: the text colour that holds its contrast. */
  .before,
  .before b {
    color: var(--_soft);
  }
  .before {
    display: block;
    font-size: 0.8em;
  }
  aside.cautions {
    padding: 8px 12px;
    border: 1px solid var(--_limit);
    border-inline-start-width: 4px;
    border-radius: 3px;
    font-size: 0.8125em;
    line-height: 1.35;
    background: var(--_limit-wash);
  }
  .cautions summary {
    display: list-item;
    min-block-size: 44px;
    padding-block: 11px;
    cursor: pointer;
  }
  .is-compact > aside.cautions.cautions {
    margin: 0;
    padding-block: 0;
    columns: auto;
  }
  /* Its fold is not seen to move when what stands above it comes; what takes its time is not waited for. */
  .is-compact.is-coming > aside.cautions {
    visibility: hidden;
  }
  .is-compact > .cautions > details {
    border: 0;
  }
  .cautions ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .cautions li {
    break-inside: avoid;
  }
  .cautions li + li {
    margin-block-start: 6px;
  }
  /* So that what stands at the end is not seen to move when the rest comes before it. */
  .body-room {
    block-size: 50em;
  }
  /* Small, because drawing and slider are to be in view below it on a phone. */
  .cautions.first {
    margin: -3px 0 0;
    padding-inline-start: 8px;
    border-inline-start: 4px solid var(--_limit);
    font-size: 0.8125em;
    line-height: 1.25;
    color: var(--_soft);
  }
  /* The type is the sentence's, the target a finger's: the room above and below is taken back by the margin. */
  .drop {
    field-sizing: content;
    box-sizing: border-box;
    min-inline-size: 3.6em;
    max-inline-size: 8em;
    block-size: max(44px, 1.3636em);
    margin-block: calc((1.3636em - max(44px, 1.3636em)) / 2);
    padding: 0 0.22em;
    border: 0;
    border-radius: 4px;
    background: linear-gradient(var(--_now-wash), var(--_now-wash)) center / 100% 1.3636em no-repeat;
    color: var(--_now);
    font: 600 1em/1 var(--_serif);
    font-variant-numeric: tabular-nums lining-nums;
    text-align: center;
    text-decoration: underline dotted 2px;
    text-underline-offset: 4px;
    vertical-align: baseline;
  }
  .drop[aria-invalid='true'] {
    color: var(--_contact);
    text-decoration: underline 2px;
  }
  /* Within its own line, and over what stands in the next. */
  .drop:focus-visible {
    position: relative;
    z-index: 1;
    outline-offset: calc((1.3636em - max(44px, 1.3636em)) / 2 - 3px);
  }
  /* Large text on a phone: a verdict of several words breaks like any other, a number still does not. */
  @container (max-width: 18em) {
    .sentence b {
      white-space: normal;
    }
  }
  @container (min-width: 47.5em) {
    .sheet {
      padding: 12px 24px 24px;
    }
    .sentence {
      font-size: 1.875em;
    }
    .sheet > aside.cautions {
      margin-block-start: 14px;
      padding: 12px 16px;
      columns: 2;
      column-gap: 32px;
    }
    .sentence :is(.not-yours, small) {
      font-size: 0.5em;
    }
    .drop {
      margin-block: calc((1.2667em - max(44px, 1.2667em)) / 2);
      background-size: 100% 1.3333em;
    }
  }
`;

export const firstStyles = [first];
