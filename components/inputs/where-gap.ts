import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { WHERE } from './where.labels.js';
import { whereArrow } from './where-arrow.js';

/** The bump stop on the damper's rod, not to scale: the gap to it, its length, and what is left of the stroke either way. */
export type GapKey = 'stopGap' | 'limits.stopLength' | 'limits.strokeBump' | 'limits.strokeDroop' | 'limits.springBind';

const ROD = 160;
const MOUNT = 26;
const STOP_END = 78;
const BODY = 116;
const FOOT = 186;
const ARROW = ROD + 84;

const MARKS: Record<GapKey, readonly [from: number, to: number]> = {
  stopGap: [STOP_END, BODY],
  'limits.stopLength': [MOUNT + 6, STOP_END],
  'limits.strokeBump': [MOUNT + 6, BODY],
  'limits.strokeDroop': [BODY, 166],
  'limits.springBind': [MOUNT + 12, 158],
};

export const isGapKey = (key: string): key is GapKey => key in MARKS;

/** The tower's sheet metal with its mount, cut: hatched at 45°. */
const tower = (): SVGTemplateResult => {
  const hatch = Array.from({ length: 15 }, (_, i) => `M${ROD - 60 + 8 * i} ${MOUNT}l9 -10`).join('');
  return svg`<path class="wide" d="M${ROD - 66} ${MOUNT + 12}L${ROD - 56} ${MOUNT}H${ROD + 56}L${ROD + 66} ${MOUNT + 12}" />
    <path class="hatch" d=${hatch} />
    <rect class="metal" x=${ROD - 20} y=${MOUNT} width="40" height="6" />`;
};

/** A foam stop in its three rings. */
const stop = (): SVGTemplateResult => {
  const ring = (STOP_END - MOUNT - 6) / 3;
  const side = (way: number) => `q${9 * way} ${ring / 2} 0 ${ring}`;
  return svg`<path class="foam" d="M${ROD - 15} ${MOUNT + 6}H${ROD + 15}${side(1).repeat(3)}H${ROD - 15}${`q-9 ${-ring / 2} 0 ${-ring}`.repeat(3)}Z" />`;
};

/** The tube with its cap, broken off below. */
const tube =
  (): SVGTemplateResult => svg`<path class="metal" d="M${ROD - 24} ${BODY + 8}V${FOOT}l12 -5l12 8l12 -8l12 5V${BODY + 8}Z" />
  <rect class="metal" x=${ROD - 28} y=${BODY} width="56" height="11" rx="4" />`;

/** A coil spring from seat to seat, in the zigzag of a simplified drawing. */
const spring = (): SVGTemplateResult => {
  const [from, to] = MARKS['limits.springBind'];
  const turns = 7;
  const at = (i: number) => `${i % 2 ? ROD + 48 : ROD - 48} ${from + ((to - from) * i) / turns}`;
  return svg`<path class="coil" d="M${Array.from({ length: turns + 1 }, (_, i) => at(i)).join('L')}" />
    <path class="wide" d="M${ROD - 56} ${from}H${ROD + 56}M${ROD - 56} ${to}H${ROD + 56}" />`;
};

const named = (text: string, y: number, to: number): SVGTemplateResult =>
  svg`<path class="leader" d="M78 ${y - 4}H${to}" /><circle class="dot" cx=${to} cy=${y - 4} r="2" />
    <text class="link" text-anchor="end" x="74" y=${y}>${text}</text>`;

export function renderWhereGap(key: GapKey): TemplateResult {
  const [from, to] = MARKS[key];
  const isSpring = key === 'limits.springBind';
  return html`<svg
    class="where"
    viewBox="0 0 300 194"
    role="img"
    aria-label=${WHERE.gap}
  >
    ${svg`${tower()}
    <rect class="metal" x=${ROD - 6} y=${MOUNT - 12} width="12" height=${BODY - MOUNT + 14} />
    ${stop()} ${tube()} ${isSpring ? spring() : ''}
    <path class="chain" d="M${ROD + 30} ${from}H${ARROW + 8}M${ROD + 30} ${to}H${ARROW + 8}" />
    ${whereArrow(ARROW, from, to)}
    ${named(WHERE.topMount, MOUNT + 1, ROD - 62)}
    ${isSpring ? named(WHERE.spring, 74, ROD - 30) : named(WHERE.bumpStop, 60, ROD - 12)}
    ${isSpring ? '' : named(WHERE.rod, (STOP_END + BODY) / 2 + 4, ROD - 3)}
    ${named(WHERE.body, isSpring ? 178 : BODY + 34, ROD - 20)}`}
  </svg>`;
}
