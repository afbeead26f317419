import { css } from 'lit';
import { drawingStyles } from '../drawing/render.js';

/** The pictures of the sheets: what is measured, from where to where. */
const own = css`
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
  svg.where path,
  svg.where .tyre {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1;
  }
  svg.where .tyre {
    stroke: var(--_hair);
    fill: var(--_tyre);
    fill-opacity: 0.5;
  }
  svg.where .tyre-edge {
    fill: var(--_tyre);
    stroke: var(--_ink);
    stroke-width: 1.6;
  }
  svg.where :is(.rim, .plain) {
    fill: var(--_sheet);
    stroke: var(--_ink);
    stroke-width: 1;
  }
  svg.where .thin {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 0.7;
  }
  svg.where .bob {
    fill: var(--_ink);
  }
  svg.where .wide {
    stroke-width: 1.8;
  }
  svg.where .links {
    stroke: var(--_soft);
    stroke-width: 2.4;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  svg.where .metal {
    fill: var(--_sheet);
    stroke: var(--_ink);
    stroke-width: 1.4;
  }
  svg.where .foam {
    fill: var(--_tyre);
    stroke: var(--_ink);
    stroke-width: 1.4;
  }
  svg.where .coil {
    stroke-width: 3;
    stroke: var(--_soft);
    stroke-linejoin: round;
  }
  svg.where .hatch {
    stroke: var(--_soft);
    stroke-width: 0.8;
  }
  svg.where .leader {
    stroke: var(--_soft);
    stroke-width: 0.8;
  }
  svg.where .dot {
    fill: var(--_soft);
  }
  /* A rod as a tube: a line within a wider one. */
  svg.where .tube {
    stroke: var(--_ink);
    stroke-width: 6;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  svg.where .tube-in {
    stroke: var(--_sheet);
    stroke-width: 3.4;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  svg.where .pin {
    fill: var(--_sheet);
    stroke: var(--_ink);
    stroke-width: 1.4;
  }
  svg.where .gauge {
    fill: var(--_now-wash);
    stroke: var(--_now);
    stroke-width: 1.6;
  }
  svg.where .chain {
    stroke: var(--_soft);
    stroke-width: 0.8;
    stroke-dasharray: 9 2.5 1 2.5;
  }
  svg.where .measure {
    stroke: var(--_now);
  }
  svg.where .here {
    fill: var(--_now);
    stroke: var(--_sheet);
    stroke-width: 1.5;
  }
  svg.where text {
    fill: var(--_soft);
    font: 400 12px/1 var(--_sans);
  }
  svg.where .link {
    font-size: 11px;
  }
  svg.where .name {
    fill: var(--_now);
    font-size: 15px;
    font-weight: 700;
    stroke: var(--_sheet);
    stroke-width: 3px;
    paint-order: stroke;
  }
`;

/** Some of them are drawn as the workshop drawing is. */
export const whereStyles = [drawingStyles, own];
