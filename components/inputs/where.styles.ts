import { css } from 'lit';

/** The pictures of the sheets: what is measured, from where to where. */
export const whereStyles = css`
  .where {
    display: block;
    inline-size: 100%;
    max-inline-size: 22.5em;
    margin: 0 auto 8px;
    overflow: visible;
  }
  /* A small phone on its side: the fields first. */
  @media (max-height: 30em) and (max-width: 39.99em) {
    .where {
      display: none;
    }
  }
  .where path,
  .where .tyre {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1;
  }
  .where .tyre {
    stroke: var(--_hair);
    fill: var(--_tyre);
    fill-opacity: 0.5;
  }
  .where .tyre-edge {
    fill: var(--_tyre);
    stroke: var(--_ink);
    stroke-width: 1.6;
  }
  .where :is(.rim, .plain) {
    fill: var(--_sheet);
    stroke: var(--_ink);
    stroke-width: 1;
  }
  .where .thin {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 0.7;
  }
  .where .bob {
    fill: var(--_ink);
  }
  .where .wide {
    stroke-width: 1.8;
  }
  .where .links {
    stroke: var(--_soft);
    stroke-width: 2.4;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .where .pin {
    fill: var(--_sheet);
    stroke: var(--_ink);
    stroke-width: 1.4;
  }
  .where .gauge {
    fill: var(--_now-wash);
    stroke: var(--_now);
    stroke-width: 1.6;
  }
  .where .chain {
    stroke: var(--_soft);
    stroke-width: 0.8;
    stroke-dasharray: 9 2.5 1 2.5;
  }
  .where .measure {
    stroke: var(--_now);
  }
  .where .here {
    fill: var(--_now);
    stroke: var(--_sheet);
    stroke-width: 1.5;
  }
  .where text {
    fill: var(--_soft);
    font: 400 12px/1 var(--_sans);
  }
  .where .link {
    font-size: 11px;
  }
  .where .name {
    fill: var(--_now);
    font-size: 15px;
    font-weight: 700;
    stroke: var(--_sheet);
    stroke-width: 3px;
    paint-order: stroke;
  }
`;
