import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import {
  hardPoint,
  STRUT_POINT_KEYS,
  type StrutCorner,
  type StrutPointKey,
  type Vector3,
} from '../../core/linkage/corner.js';
import { WHERE } from './where.labels.js';

/** Room of the picture, px: the front view, a gap, the side view. Both have one scale. */
const HEIGHT = 158;
const GROUND = HEIGHT - 8;
const CENTRELINE = 8;
const FRONT_WIDTH = 172;
const AXLE = FRONT_WIDTH + 62;
const WIDTH = 312;
const TYRE_MM = 200;

type Px = readonly [right: number, down: number];

/**
 * Where one hard point is, and what its three numbers are measured from: links as single lines, seen from the front and from the
 * left.
 */
export function renderWhere(corner: StrutCorner, key: StrutPointKey): TemplateResult {
  const { wheelCentre: wheel, loadedRadius } = corner;
  const scale = Math.min(
    (GROUND - 10) / (corner.strut.top[2] + 40),
    (FRONT_WIDTH - CENTRELINE - 12) / (wheel[1] + TYRE_MM / 2),
  );
  const front = ([, y, z]: Vector3): Px => [CENTRELINE + y * scale, GROUND - z * scale];
  // Seen from the left the car's front is on the left.
  const side = ([x, , z]: Vector3): Px => [AXLE - x * scale, GROUND - z * scale];
  const point = hardPoint(corner, key);
  const radius = loadedRadius * scale;
  const half = (TYRE_MM / 2) * scale;
  const at = front(wheel);
  const hub = side(wheel);
  return html`<svg
    class="where"
    viewBox="0 0 ${WIDTH} ${HEIGHT + 16}"
    role="img"
    aria-label=${WHERE.point}
  >
    ${svg`<g class="tyre">
      <rect x=${at[0] - half} y=${at[1] - radius} width=${2 * half} height=${2 * radius} rx="6" />
      <circle cx=${hub[0]} cy=${hub[1]} r=${radius} />
    </g>
    <path class="wide" d="M0 ${GROUND}H${FRONT_WIDTH}M${FRONT_WIDTH + 8} ${GROUND}H${WIDTH}" />
    <path class="chain" d="M${CENTRELINE} 2V${GROUND}M${AXLE} 2V${GROUND}" />
    <path class="tube" d=${[front, side].map((view) => links(corner, view)).join('')} />
    <path class="tube-in" d=${[front, side].map((view) => links(corner, view)).join('')} />
    ${[front, side].map((view) => STRUT_POINT_KEYS.map((each) => svg`<circle class="pin" cx=${view(hardPoint(corner, each))[0]} cy=${view(hardPoint(corner, each))[1]} r="3" />`))}
    ${dimension('y', [CENTRELINE, front(point)[1]], front(point))}
    ${dimension('z', [front(point)[0], GROUND], front(point))}
    ${dimension('x', [AXLE, side(point)[1]], side(point))}
    ${[front, side].map((view) => svg`<circle class="here" cx=${view(point)[0]} cy=${view(point)[1]} r="5.5" />`)}
    ${named(WHERE.strut, front(corner.strut.top), -8, 24)} ${named(WHERE.arm, front(corner.lowerArm.front), 4, 13)}
    ${named(WHERE.tieRod, front(corner.tieRod.inner), 4, -6)}
    <text x="0" y=${HEIGHT + 12}>${WHERE.fromFront}</text>
    <text x=${FRONT_WIDTH + 8} y=${HEIGHT + 12}>${WHERE.front}</text>`}
  </svg>`;
}

function links({ lowerArm, strut, tieRod }: StrutCorner, view: (point: Vector3) => Px): string {
  const line = (...points: Vector3[]) => `M${points.map((point) => view(point).join(' ')).join('L')}`;
  return [
    line(lowerArm.front, lowerArm.ball, lowerArm.rear),
    line(strut.top, strut.low),
    line(tieRod.inner, tieRod.outer),
  ].join('');
}

const named = (text: string, [x, y]: Px, right: number, down: number): SVGTemplateResult =>
  svg`<text class="link" text-anchor=${right < 0 ? 'end' : 'start'} x=${x + right} y=${y + down}>${text}</text>`;

/** Drawn from what is measured from (a line of the car) to the point; too short a one has no room for its letter. */
function dimension(name: 'x' | 'y' | 'z', from: Px, to: Px): SVGTemplateResult | typeof nothing {
  const isUp = name === 'z';
  const [along, across] = isUp ? [1, 0] : [0, 1];
  const reach = to[along]! - from[along]!;
  if (Math.abs(reach) < 9) return nothing;
  const sign = Math.sign(reach);
  const arrow = (end: Px, towards: number) =>
    isUp
      ? `M${end[0] - 3} ${end[1] - 6 * towards}L${end[0]} ${end[1]}L${end[0] + 3} ${end[1] - 6 * towards}`
      : `M${end[0] - 6 * towards} ${end[1] - 3}L${end[0]} ${end[1]}L${end[0] - 6 * towards} ${end[1] + 3}`;
  // Inboard of an upright and near where a level line begins: further outboard stand the names of the links.
  const middle = from[along]! + (isUp ? reach / 2 : sign * Math.min(Math.abs(reach) / 2, 26));
  const [x, y] = isUp ? [from[across]! - 5, middle + 4] : [middle - 4, from[across]! - 5];
  return svg`<path class="measure" d="M${from.join(' ')}L${to.join(' ')}${arrow(from, -sign)}" /><text class="name" text-anchor=${isUp ? 'end' : 'start'} x=${x} y=${y}>${name}</text>`;
}
