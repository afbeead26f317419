import { html, svg, type TemplateResult } from 'lit';
import { forwardOf } from '../../core/wheel/place.js';
import { NAMES } from './bumpline-clearance.labels.js';

const { place: WORDS } = NAMES;

const arrow = (x: number, y: number, ux: number, uy: number): string =>
  `M${x - 7 * ux - 3.5 * uy} ${y - 7 * uy + 3.5 * ux}L${x} ${y}L${x - 7 * ux + 3.5 * uy} ${y - 7 * uy - 3.5 * ux}`;

const tape = (x0: number, y0: number, x1: number, y1: number): string => {
  const length = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length];
  return `M${x0} ${y0}L${x1} ${y1}${arrow(x0, y0, -ux, -uy)}${arrow(x1, y1, ux, uy)}`;
};

/** Where a place is measured: seen square from outside at its clock position, and from the front by plumb line. Not to scale. */
export function renderWherePlace(clock: number, isLeft: boolean, isInner: boolean, isInboard: boolean): TemplateResult {
  const [cx, cy, r] = [96, 112, 48];
  // Seen from outside, forward is left of a left wheel.
  const angle = (forwardOf(clock, isLeft) * Math.PI) / 180;
  const side = isLeft ? -1 : 1;
  const at = (radius: number) => [cx + side * radius * Math.sin(angle), cy - radius * Math.cos(angle)] as const;
  const [px, py] = at(68);
  const hours = [9, 10, 11, 12, 1, 2, 3].map((hour) => {
    const turn = (hour * Math.PI) / 6;
    return svg`<text class="link" text-anchor="middle" x=${cx + 88 * Math.sin(turn)} y=${cy - 88 * Math.cos(turn) + 4}>${hour}</text>`;
  });
  const tyre = 224;
  const edge = isInner ? tyre : tyre + 46;
  const lip = edge + (isInboard ? -20 : 22);
  return html`<svg
    class="where"
    viewBox="0 0 312 172"
    role="img"
    aria-label=${WORDS.drawing}
  >
    ${svg`<circle class="tyre" cx=${cx} cy=${cy} r=${r} /><circle class="pin" cx=${cx} cy=${cy} r="3" /> ${hours}
    <path class="measure" stroke-width="2" d=${tape(cx, cy, px, py)} /><circle class="here" cx=${px} cy=${py} r="5" />
    <text class="link" x=${isLeft ? 8 : 184} y="170" text-anchor=${isLeft ? 'start' : 'end'}>${isLeft ? WORDS.frontLeft : WORDS.frontRight}</text>
    <rect class="tyre" x=${tyre} y="52" width="46" height="108" rx="10" />
    <path class="links" d="M${lip} 20V34" /><circle class="here" cx=${lip} cy="34" r="5" />
    <path class="chain" d="M${lip} 34V118M${edge} 78V118" />
    <path class="measure" stroke-width="2" d=${tape(edge, 104, lip, 104)} />
    <text class="link" x="200" y="14">${isInner ? WORDS.place : WORDS.plumbLine}</text>
    <text class="link" text-anchor="end" x="312" y="170">${NAMES.outboard}</text>`}
  </svg>`;
}

/** What offset and rim width are: a rim cut through, not to scale. */
export function renderWhereWheel(): TemplateResult {
  const [inner, outer, middle, face] = [70, 230, 150, 186];
  return html`<svg
    class="where"
    viewBox="0 0 300 150"
    role="img"
    aria-label=${WORDS.rimDrawing}
  >
    ${svg`<path class="links" d="M${inner - 8} 34V52H${inner + 20}L${inner + 36} 62H${outer - 36}L${outer - 20} 52H${outer + 8}V34M${face} 62V128" />
    <path class="wide" d="M${face} 92H${face - 46}V128" />
    <path class="chain" d="M${middle} 12V140" />
    <path class="measure" stroke-width="2" d=${tape(inner, 26, outer, 26)} />
    <path class="measure" stroke-width="2" d=${tape(middle, 118, face, 118)} />
    <text class="link" x=${inner} y="16">${WORDS.rimWidth}</text>
    <text class="link" x=${middle + 4} y="112">${WORDS.offset}</text>
    <text class="link" text-anchor="end" x=${face - 50} y="106">${WORDS.hub}</text>
    <text class="link" text-anchor="end" x="298" y="146">${NAMES.outboard}</text>`}
  </svg>`;
}
