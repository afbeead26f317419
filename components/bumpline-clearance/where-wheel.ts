import { html, svg, type TemplateResult } from 'lit';
import { forwardOf, type Place } from '../../core/wheel/place.js';
import { NAMES } from './bumpline-clearance.labels.js';

const { place: WORDS } = NAMES;

const arrow = (x: number, y: number, ux: number, uy: number): string =>
  `M${x - 7 * ux - 3 * uy} ${y - 7 * uy + 3 * ux}L${x} ${y}L${x - 7 * ux + 3 * uy} ${y - 7 * uy - 3 * ux}`;

/** A dimension line with its two heads. */
const tape = (x0: number, y0: number, x1: number, y1: number): string => {
  const length = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length];
  return `M${x0} ${y0}L${x1} ${y1}${arrow(x0, y0, -ux, -uy)}${arrow(x1, y1, ux, uy)}`;
};

/** 45° hatching of a box. */
const hatch = (x: number, y: number, wide: number, high: number): string => {
  let d = '';
  for (let at = 5; at < wide + high; at += 5) {
    const [a, b] = [Math.max(0, at - high), Math.min(at, wide)];
    d += `M${x + a} ${y + at - a}L${x + b} ${y + at - b}`;
  }
  return d;
};

export interface WherePlace {
  clock: number;
  isLeft: boolean;
  /** Measured from the inner sidewall. */
  isInner: boolean;
  /** It lies inboard of that sidewall. */
  isInboard: boolean;
  /** The distance is counted from the tread. */
  isTread: boolean;
  fixedTo: Place['fixedTo'];
}

/** Of the picture from the side. */
const [CX, CY, TYRE, RIM, ARCH] = [84, 118, 54, 35, 73];
/** Of the one from the front: the tyre's sides, its tread and the hub. */
const [INNER, OUTER, TREAD, HUB] = [222, 268, 64, 118];

/** Where a place is measured: seen square from outside at its clock position, and from the front by plumb line. Not to scale. */
export function renderWherePlace({ clock, isLeft, isInner, isInboard, isTread, fixedTo }: WherePlace): TemplateResult {
  // Seen from outside, forward is left of a left wheel.
  const angle = (forwardOf(clock, isLeft) * Math.PI) / 180;
  const side = isLeft ? -1 : 1;
  const at = (radius: number) => [CX + side * radius * Math.sin(angle), CY - radius * Math.cos(angle)] as const;
  const [px, py] = at(isInner ? TYRE - 6 : ARCH);
  const [fx, fy] = isTread ? at(TYRE) : ([CX, CY] as const);
  const around = (radius: number, turn: number) =>
    [CX + radius * Math.sin(turn), CY - radius * Math.cos(turn)] as const;
  const hours = [9, 10, 11, 12, 1, 2, 3].map((hour) => {
    const [x, y] = around(ARCH + 14, (hour * Math.PI) / 6);
    return svg`<text class="link" text-anchor="middle" x=${x} y=${y + 4}>${hour}</text>`;
  });
  const bolts = [0, 1, 2, 3, 4].map((i) => {
    const [x, y] = around(9, (2 * Math.PI * i) / 5);
    return svg`<circle class="thin" cx=${x} cy=${y} r="1.7" />`;
  });
  return html`<svg
    class="where"
    viewBox="0 0 312 176"
    role="img"
    aria-label=${WORDS.drawing}
  >
    ${svg`<circle class="tyre-edge" cx=${CX} cy=${CY} r=${TYRE} /><circle class="rim" cx=${CX} cy=${CY} r=${RIM} />
    <circle class="thin" cx=${CX} cy=${CY} r="14" />${bolts}
    <path class="wide" d="M${CX - ARCH} ${CY + 26}V${CY}A${ARCH} ${ARCH} 0 0 1 ${CX + ARCH} ${CY}V${CY + 26}" />${hours}
    <path class="measure" stroke-width="2" d=${tape(fx, fy, px, py)} /><circle class="here" cx=${px} cy=${py} r="5" />
    <text class="link" x=${isLeft ? 2 : 168} y="174" text-anchor=${isLeft ? 'start' : 'end'}>${isLeft ? WORDS.frontLeft : WORDS.frontRight}</text>
    ${fromTheFront(isInner, isInboard, isTread, fixedTo)}
    <text class="link" text-anchor="end" x="310" y="174">${NAMES.outboard}</text>`}
  </svg>`;
}

/** Tyre and rim cut through, strut and arch beside them, and how far the place lies aside of the sidewall. */
function fromTheFront(isInner: boolean, isInboard: boolean, isTread: boolean, fixedTo: Place['fixedTo']) {
  const middle = (INNER + OUTER) / 2;
  const edge = isInner ? INNER : OUTER;
  const spot = edge + (isInboard ? -17 : 18);
  const high = isInner ? 84 : 40;
  const level = isInner ? 104 : 92;
  const from = isTread ? TREAD : HUB;
  const lip = isInner ? OUTER + 18 : spot;
  return svg`<path class="wide" d="M206 12H${lip - 18}Q${lip + 8} 14 ${lip + 8} 32V38L${lip} 40" />
    <path d="M${INNER - 24} 12H${INNER + 2}V18H${INNER - 24}Z" class="plain" /><path class="thin" d=${hatch(INNER - 24, 12, 26, 6)} />
    <path class="thin" d="M${INNER - 20} 22L${INNER - 2} 27L${INNER - 21} 33L${INNER - 3} 38L${INNER - 22} 44L${INNER - 4} 49L${INNER - 22} 54" />
    <path class="plain" d="M${INNER - 25} 56H${INNER - 3}V60H${INNER - 9}V112H${INNER - 19}V60H${INNER - 25}Z" />
    <path class="plain" d="M${INNER - 19} 92H${INNER - 8}L${middle - 12} 108V128H${middle - 18}L${INNER - 19} 116Z" />
    <path class="tyre-edge" d="M${INNER + 7} ${TREAD}H${OUTER - 7}Q${OUTER} ${TREAD + 2} ${OUTER} 80Q${OUTER} 88 ${OUTER - 4} 92H${INNER + 4}Q${INNER} 88 ${INNER} 80Q${INNER} ${TREAD + 2} ${INNER + 7} ${TREAD}Z" />
    <path class="plain" d="M${INNER + 3} 89H${INNER + 6}V94H${OUTER - 6}V89H${OUTER - 3}V97H${INNER + 3}Z" />
    <path class="plain" d="M${middle + 8} 97H${middle + 13}L${middle + 3} 108V130H${middle - 2}V108Z" />
    <path class="chain" d="M${INNER - 8} ${HUB}H${isTread || isInner ? OUTER + 8 : OUTER + 40}" />
    ${isInner ? svg`<path class="plain" d=${fixedTo === 'body' ? `M${spot - 5} 66H${spot}V100H${spot - 5}Z` : `M${spot - 6} 78H${spot}V90H${spot - 6}Z`} />` : ''}
    <path class="chain" d="M${spot} ${high}V${level + 8}M${edge} ${isInner ? 80 : 80}V${level + 8}" />
    ${isInner ? '' : svg`<path class="bob" d="M${spot - 3} ${level + 8}H${spot + 3}L${spot} ${level + 16}Z" />`}
    <path class="measure" stroke-width="2" d=${tape(edge, level, spot, level)} />
    ${
      isInner
        ? ''
        : svg`<path class="chain" d="M${lip + 6} 40H${OUTER + 42}" />${isTread ? svg`<path class="chain" d="M${OUTER - 4} ${TREAD}H${OUTER + 42}" />` : ''}
    <path class="measure" stroke-width="2" d=${tape(OUTER + 37, from, OUTER + 37, 40)} />`
    }
    <circle class="here" cx=${spot} cy=${high} r="5" />
    <text class="link" text-anchor="middle" x=${isInner ? INNER + 20 : INNER + 30} y="162">${isInner ? WORDS.place : WORDS.plumbLine}</text>`;
}

/** What width, rim width and offset are: a wheel cut through down to the hub, not to scale. */
export function renderWhereWheel(): TemplateResult {
  return html`<svg
    class="where"
    viewBox="-40 0 380 196"
    role="img"
    aria-label=${WORDS.rimDrawing}
  >
    ${svg`<g transform="translate(4 -22)">
    <path class="tyre-edge" d="M65 58H227Q237 58 243.1 80.2Q247.1 98 247.1 113.6Q246.1 138 237.7 149.1V155H54.3V149.1Q45.9 138 44.9 113.6Q44.9 98 48.9 80.2Q55 58 65 58Z" />
    <path class="plain" d="M54.3 141.1H60.3V155.1H231.7V141.1H237.7V164.1H54.3Z" />
    <path class="plain" d="M197.7 164.1H213.7L191.5 194V214H177.5V192Z" /><path class="thin" d=${hatch(178, 194, 13, 20)} />
    <path class="plain" d="M132 196H177.5V212H132Z" />
    <path class="chain" d="M146 50V216M177.5 160V216M44.9 40V112M247.1 40V112" />
    <path class="measure" stroke-width="2" d="${tape(44.9, 44, 247.1, 44)}${tape(60.3, 132, 231.7, 132)}${tape(146, 178, 177.5, 178)}" />
    <text class="link" text-anchor="middle" x="100" y="38">${WORDS.tyreWidth}</text>
    <text class="link" text-anchor="middle" x="103" y="126">${WORDS.rimWidth}</text>
    <text class="link" text-anchor="end" x="141" y="182">${WORDS.offset}</text>
    <text class="link" text-anchor="end" x="128" y="208">${WORDS.hub}</text></g>
    <text class="link" text-anchor="end" x="298" y="192">${NAMES.outboard}</text>`}
  </svg>`;
}
