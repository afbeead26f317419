import { html, svg, type TemplateResult } from 'lit';
import { WHERE } from './where.labels.js';
import { whereArrow } from './where-arrow.js';

/** The bump stop on the damper's rod, not to scale: the gap to it, its length, and what is left of the stroke either way. */
export type GapKey = 'stopGap' | 'limits.stopLength' | 'limits.strokeBump' | 'limits.strokeDroop' | 'limits.springBind';

const ROD = 150;
const MOUNT = 18;
const STOP_END = 66;
const BODY = 104;

const MARKS: Record<GapKey, readonly [from: number, to: number]> = {
  stopGap: [STOP_END, BODY],
  'limits.stopLength': [MOUNT + 6, STOP_END],
  'limits.strokeBump': [MOUNT + 6, BODY],
  'limits.strokeDroop': [BODY, 150],
  'limits.springBind': [34, 150],
};

export const isGapKey = (key: string): key is GapKey => key in MARKS;

export function renderWhereGap(key: GapKey): TemplateResult {
  const [from, to] = MARKS[key];
  const x = ROD + 62;
  const isSpring = key === 'limits.springBind';
  const coil = [0, 1, 2, 3, 4].map((i) => `M${ROD - 34} ${36 + 24 * i}L${ROD + 34} ${48 + 24 * i}`).join('');
  return html`<svg
    class="where"
    viewBox="0 0 300 172"
    role="img"
    aria-label=${WHERE.gap}
  >
    ${svg`<path class="wide" d="M${ROD - 44} ${MOUNT}H${ROD + 44}" />
    <path class="links" d="M${ROD} ${MOUNT}V${BODY}" />
    <rect class="tyre" x=${ROD - 13} y=${MOUNT + 6} width="26" height=${STOP_END - MOUNT - 6} rx="7" />
    <path d="M${ROD - 19} ${BODY}H${ROD + 19}V164M${ROD - 19} ${BODY}V164" />
    ${isSpring ? svg`<path class="links" d=${coil} />` : ''}
    <path class="chain" d="M${ROD + 20} ${from}H${x + 8}M${ROD + 20} ${to}H${x + 8}" />
    ${whereArrow(x, from, to)}
    <text class="link" x="8" y=${MOUNT + 4}>${WHERE.topMount}</text>
    <text class="link" x="8" y=${(MOUNT + STOP_END) / 2 + 6}>${WHERE.bumpStop}</text>
    <text class="link" x="8" y=${BODY + 24}>${WHERE.body}</text>`}
  </svg>`;
}
