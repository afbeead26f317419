import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import type { MeasureKey } from '../drawing/measures.js';
import { WHERE } from './where.labels.js';
import { whereLink as link } from './where-link.js';

/** A corner in front view, px: not to scale, the same for every car. It shows from where to where one measures. */
const GROUND = 164;
const PIVOT = [74, 118] as const;
const BALL = [198, 126] as const;
const TOP = [152, 14] as const;
const LOW = [178, 118] as const;
const CENTRE = [222, 92] as const;
const RADIUS = GROUND - CENTRE[1];

/** The middle of the tyre's section. */
const MIDDLE = CENTRE[0] + 1;

const TAPES: Record<Exclude<MeasureKey, 'damperLean'> | 'hubOffset', readonly [number, number, number, number]> = {
  armLength: [...PIVOT, ...BALL],
  pivotHeight: [PIVOT[0], GROUND, ...PIVOT],
  ballHeight: [BALL[0], GROUND, ...BALL],
  wheelCentreHeight: [CENTRE[0], GROUND, ...CENTRE],
  topHeight: [TOP[0] - 84, GROUND, TOP[0] - 84, TOP[1]],
  hubOffset: [BALL[0], GROUND + 12, MIDDLE, GROUND + 12],
};

/** Where a tape is held, or a gauge is laid. `kingpin`: the line that a sheet means, beside the damper's own. */
export function renderWhereMeasured(key: MeasureKey | 'kingpin' | 'hubOffset'): TemplateResult {
  return html`<svg
    class="where"
    viewBox="0 0 300 186"
    role="img"
    aria-label=${WHERE.measured}
  >
    ${svg`<rect class="tyre" x=${CENTRE[0] - 24} y=${CENTRE[1] - RADIUS} width="50" height=${2 * RADIUS} rx="10" />
    <path class="wide" d="M20 ${GROUND}H280" />
    <path class="links" d="M${PIVOT.join(' ')}L${BALL.join(' ')}L${LOW.join(' ')}L${TOP.join(' ')}M${CENTRE.join(' ')}H${LOW[0] - 4}" />
    <path class="links" stroke-width="9" d="M${LOW.join(' ')}L165 66" />
    ${[PIVOT, BALL, TOP].map(([x, y]) => svg`<circle class="pin" cx=${x} cy=${y} r="4" />`)}
    ${key === 'damperLean' || key === 'kingpin' ? lean(key) : tape(TAPES[key])}
    ${key === 'topHeight' ? svg`<path class="chain" d="M${TOP.join(' ')}H${TOP[0] - 84}" />` : nothing}
    ${key === 'hubOffset' ? svg`<path class="chain" d="M${BALL.join(' ')}V${GROUND + 18}M${MIDDLE} 24V${GROUND + 4}" />` : nothing}
    ${link(WHERE.arm, 118, 112)}${link(WHERE.damper, 112, 62)}${link(WHERE.topMount, 164, 18)}${link(WHERE.floor, 24, GROUND + 15)}`}
  </svg>`;
}

function tape([x0, y0, x1, y1]: readonly [number, number, number, number]): SVGTemplateResult {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length];
  const head = (x: number, y: number, way: number) =>
    `M${x - 7 * way * ux - 3.5 * uy} ${y - 7 * way * uy + 3.5 * ux}L${x} ${y}L${x - 7 * way * ux + 3.5 * uy} ${y - 7 * way * uy - 3.5 * ux}`;
  return svg`<path class="measure" stroke-width="2.4" d="M${x0} ${y0}L${x1} ${y1}${head(x0, y0, -1)}${head(x1, y1, 1)}" />
    <circle class="here" cx=${x1} cy=${y1} r="5.5" />`;
}

/** The plumb line, the line that is read, and the gauge on the tube or the steering axis through the ball joint. */
function lean(key: 'damperLean' | 'kingpin'): SVGTemplateResult {
  const [x, y] = key === 'damperLean' ? LOW : BALL;
  const turn = (Math.atan2(x - TOP[0], y - TOP[1]) * 180) / Math.PI;
  return svg`<path class="chain" d="M${TOP[0]} ${TOP[1] - 8}V${GROUND - 30}" />
    <path class="measure" stroke-width="1.4" d="M${TOP.join(' ')}L${x} ${y}M${TOP[0]} 112A98 98 0 0 0 ${TOP[0] + 98 * Math.sin((turn * Math.PI) / 180)} ${TOP[1] + 98 * Math.cos((turn * Math.PI) / 180)}" />
    ${
      key === 'damperLean'
        ? svg`<rect class="gauge" x="-7" y="-17" width="14" height="34" rx="3" transform="translate(178 86) rotate(${-turn})" />`
        : nothing
    }`;
}
