import { html, svg, type TemplateResult } from 'lit';
import { WHERE } from './where.labels.js';
import { whereLink as link } from './where-link.js';

/** What the front view does not show: the steering axis from the side, and the wheel's toe from above. Not to scale. */
export type SteeredKey = 'caster' | 'bumpSteer';

export const isSteeredKey = (key: string): key is SteeredKey => key === 'caster' || key === 'bumpSteer';

export const renderWhereSteered = (key: SteeredKey): TemplateResult => (key === 'caster' ? caster() : bumpSteer());

const GROUND = 164;
const HUB = [128, 102] as const;
const BALL = [126, 124] as const;
const TOP = [158, 16] as const;
const ARC = 92;

/** From the side, the front of the car on the left: ball joint to top mount, beside the plumb line. */
function caster(): TemplateResult {
  const turn = Math.atan2(TOP[0] - BALL[0], BALL[1] - TOP[1]);
  const end = [BALL[0] + ARC * Math.sin(turn), BALL[1] - ARC * Math.cos(turn)];
  return html`<svg
    class="where"
    viewBox="0 0 300 186"
    role="img"
    aria-label=${WHERE.caster}
  >
    ${svg`<circle class="tyre" cx=${HUB[0]} cy=${HUB[1]} r=${GROUND - HUB[1]} />
    <path class="wide" d="M20 ${GROUND}H280" />
    <circle class="metal" cx=${HUB[0]} cy=${HUB[1]} r="12" />
    <path class="tube" d="M${BALL.join(' ')}L${TOP.join(' ')}" /><path class="tube-in" d="M${BALL.join(' ')}L${TOP.join(' ')}" />
    <path class="chain" d="M${BALL[0]} ${GROUND}V10" />
    <path class="measure" stroke-width="1.6" d="M${BALL[0]} ${BALL[1] - ARC}A${ARC} ${ARC} 0 0 1 ${end.join(' ')}" />
    ${[BALL, TOP].map(([x, y]) => svg`<circle class="pin" cx=${x} cy=${y} r="4" />`)}
    <text class="name" x=${TOP[0] - 24} y="14" text-anchor="end">+</text>
    ${link(WHERE.topMount, TOP[0] + 10, TOP[1] + 4)}${link(WHERE.ball, BALL[0] + 10, BALL[1] + 4)}
    ${link(WHERE.front, 20, GROUND + 15)}${link(WHERE.floor, 256, GROUND + 15)}`}
  </svg>`;
}

const WHEEL = [172, 92] as const;
const HALF = 62;
const TOED = 9;

/** A left wheel from above: as it stands, dashed, and in bump, toed in. */
function bumpSteer(): TemplateResult {
  const tip = (degrees: number, along: number) => {
    const turn = (degrees * Math.PI) / 180;
    return [WHEEL[0] + along * Math.sin(turn), WHEEL[1] - along * Math.cos(turn)] as const;
  };
  const [from, to] = [tip(0, HALF + 18), tip(TOED, HALF + 18)];
  return html`<svg
    class="where"
    viewBox="0 0 300 186"
    role="img"
    aria-label=${WHERE.bumpSteer}
  >
    ${svg`<rect class="tyre" x=${WHEEL[0] - 17} y=${WHEEL[1] - HALF} width="34" height=${2 * HALF} rx="9" transform="rotate(${TOED} ${WHEEL.join(' ')})" />
    <path class="chain" d="M${WHEEL[0]} ${WHEEL[1] + HALF + 16}V6" />
    <path class="measure" stroke-width="1.6" d="M${tip(TOED, -HALF - 12).join(' ')}L${to.join(' ')}M${from.join(' ')}A${HALF + 18} ${HALF + 18} 0 0 1 ${to.join(' ')}" />
    <path class="tube" d="M${WHEEL.join(' ')}H272" /><path class="tube-in" d="M${WHEEL.join(' ')}H272" />
    ${link(WHERE.frontUp, 12, 20)}${link(WHERE.stands, 92, 180)}<text class="name" x=${to[0] + 6} y=${to[1] + 6}>+</text>
    ${link(WHERE.toeIn, to[0] + 20, to[1] + 6)}${link(WHERE.car, 278, WHEEL[1] + 4)}`}
  </svg>`;
}
