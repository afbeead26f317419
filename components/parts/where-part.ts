import { html, svg, type TemplateResult } from 'lit';
import type { Corner } from '../../core/linkage/corner.js';
import type { EntryKey } from './part-entries.js';
import { PARTS } from './parts.labels.js';

/** A corner in front view, px: not to scale, the same for every car. The left wheel stands on the right, as one sees it from the front. */
const GROUND = 150;
const PIVOT = [70, 112] as const;
const BALL = [188, 118] as const;
const TOP = [146, 14] as const;
const LOW = [168, 106] as const;
const UPPER_PIVOT = [104, 44] as const;
const UPPER = [176, 38] as const;
const CENTRE = [212, 86] as const;
const RACK = [64, 92] as const;
const ROD_END = [176, 96] as const;
const RADIUS = GROUND - CENTRE[1];
const ARROW = 24;

type Px = readonly [x: number, y: number];

/** Where it acts, and the positive way, to the right and down. */
const ACTS: Record<EntryKey, readonly [at: Px, way: Px]> = {
  lowerJoint: [BALL, [0, 1]],
  lowerJointMoved: [BALL, [1, 0]],
  upperJoint: [UPPER, [0, -1]],
  upperJointMoved: [UPPER, [1, 0]],
  arm: [BALL, [1, 0]],
  upperArm: [UPPER, [1, 0]],
  pivots: [PIVOT, [0, -1]],
  upperPivots: [UPPER_PIVOT, [0, -1]],
  topMount: [TOP, [-1, 0]],
  bolts: [
    [CENTRE[0], CENTRE[1] - RADIUS + 8],
    [-1, 0],
  ],
  spin: [
    [CENTRE[0], CENTRE[1] - RADIUS + 8],
    [1, 0],
  ],
  rodEnd: [ROD_END, [0, -1]],
  rod: [ROD_END, [1, 0]],
  rack: [RACK, [0, -1]],
  wheel: [CENTRE, [1, 0]],
};

export function renderWherePart(key: EntryKey, kind: Corner['kind'] = 'strut'): TemplateResult {
  const [[x, y], [right, down]] = ACTS[key];
  const [endX, endY] = [x + right * ARROW, y + down * ARROW];
  const head = `M${endX - 7 * right + 4 * down} ${endY - 7 * down + 4 * right}L${endX} ${endY}L${endX - 7 * right - 4 * down} ${endY - 7 * down - 4 * right}`;
  const isStrut = kind === 'strut';
  return html`<svg class="where" viewBox="30 0 240 ${GROUND + 6}" role="img" aria-label=${PARTS.drawn}>
    ${svg`<rect class="tyre" x=${CENTRE[0] - 22} y=${CENTRE[1] - RADIUS} width="46" height=${2 * RADIUS} rx="10" />
    <path class="wide" d="M36 ${GROUND}H264" />
    <path class="links" d="M${PIVOT.join(' ')}L${BALL.join(' ')}L${(isStrut ? LOW : UPPER).join(' ')}L${(isStrut ? TOP : UPPER_PIVOT).join(' ')}M${CENTRE.join(' ')}H172" />
    ${isStrut ? svg`<path class="links" stroke-width="9" d="M${LOW.join(' ')}L158 60" />` : ''}
    <path class="chain" stroke-width="1.6" d="M${RACK.join(' ')}L${ROD_END.join(' ')}" />
    ${[PIVOT, BALL, isStrut ? TOP : UPPER_PIVOT, ...(isStrut ? [] : [UPPER])].map(([cx, cy]) => svg`<circle class="pin" cx=${cx} cy=${cy} r="4" />`)}
    <path class="measure" stroke-width="2.6" d="M${x} ${y}L${endX} ${endY}${head}" />
    <circle class="here" cx=${x} cy=${y} r="5.5" />`}
  </svg>`;
}
