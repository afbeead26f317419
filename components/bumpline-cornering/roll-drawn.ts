import { html, svg, type TemplateResult } from 'lit';
import { whereArrow } from '../inputs/where-arrow.js';
import { ROLL } from './roll.labels.js';

const { drawn: WORDS } = ROLL;

/** A cable tie on the damper’s rod after a run, px: not to scale. */
export function renderTiesDrawn(): TemplateResult {
  const [rod, body, tie] = [128, 112, 70];
  const x = rod + 56;
  return html`<svg class="where" viewBox="0 0 300 166" role="img" aria-label=${WORDS.ties}>
    ${svg`<path class="wide" d="M${rod - 44} 14H${rod + 44}" />
    <path class="links" d="M${rod} 14V${body}" />
    <path d="M${rod - 19} ${body}H${rod + 19}V160M${rod - 19} ${body}V160" />
    <rect class="gauge" x=${rod - 9} y=${tie - 4} width="18" height="8" rx="2" />
    <rect class="gauge" x=${rod + 6} y=${tie - 5} width="10" height="10" rx="2" />
    <path class="chain" d="M${rod + 20} ${tie}H${x + 8}M${rod + 20} ${body}H${x + 8}" />
    ${whereArrow(x, tie, body)}
    <text class="link" x="8" y=${tie + 4}>${WORDS.tie}</text>
    <text class="link" x="8" y=${body + 26}>${WORDS.body}</text>
    <text class="link" x=${x + 10} y=${(tie + body) / 2 + 4}>${WORDS.gap}</text>`}
  </svg>`;
}

/** A car from behind with both lines laid on the picture, its roll exaggerated. */
export function renderPhotoDrawn(): TemplateResult {
  const tilt = 9;
  const rise = 100 * Math.tan((tilt * Math.PI) / 180);
  return html`<svg class="where" viewBox="0 0 300 166" role="img" aria-label=${WORDS.photo}>
    ${svg`<path class="wide" d="M10 150H290" />
    <rect class="tyre" x="70" y="104" width="24" height="46" rx="6" />
    <rect class="tyre" x="196" y="104" width="24" height="46" rx="6" />
    <g transform="rotate(${tilt} 145 120)">
      <path d="M66 126V84Q66 70 80 68L102 34H188L210 68Q224 70 224 84V126Z" />
      <path d="M88 66L106 42H184L202 66Z" />
      <circle class="here" cx="82" cy="88" r="6" />
      <circle class="here" cx="208" cy="88" r="6" />
    </g>
    <path class="measure" stroke-width="1.6" d="M20 ${88 - 1.25 * rise}L290 ${88 + 1.45 * rise}" />
    <path class="measure" stroke-width="1.6" d="M40 150H260" />
    <text class="link" x="4" y="38">${WORDS.through}</text>
    <text class="link" x="4" y="52">${WORDS.lamps}</text>
    <text class="link" x="104" y="164">${WORDS.feet}</text>`}
  </svg>`;
}
