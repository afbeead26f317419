import { css, html, type TemplateResult } from 'lit';
import { FIRST_CAUTIONS } from './first-cautions.js';

/** Cautions by the place where the risk is. Short and specific; they cannot be dismissed. */
export const CAUTIONS = {
  ...FIRST_CAUTIONS,
  stands:
    'Measure with the car on its wheels, or on stands under rated points with the other wheels chocked. Never under a car on a jack, nobody inside, phone away while you are under it.',
  springOut:
    'Take the spring out before you move a corner through its travel: with it in, jacking one arm lifts the body off its stands. A compressed spring can kill: use a proper compressor that suits the coil. Keep hose, sensor lead and driveshaft from hanging.',
  afterHeight:
    'After a change of height: wheel alignment, headlamp aim, calibration of driver-assistance sensors, load-sensing brake valve, ground clearance.',
  rules:
    'Rules on lowering differ from country to country. Ask your own authority or a licensed inspector before you drive.',
  otherLimits:
    'With shorter dampers the stroke stays, and every other limit comes nearer by the drop: tyre to arch, driveshaft, arm to body, brake hose. Check each by hand at full bump.',
  stop: 'A stop that is met in a turn stiffens that axle suddenly. A trimmed one lets the damper hit its own end and break.',
  wheelParts:
    'Load and speed index no lower than the car needs, rim width approved for the tyre, spacers with full thread engagement and hub centring. Cutting a liner or an arch can bare wiring and seams that rust.',
  lowJoint:
    'A longer joint bends its stud harder: engineered parts only, never a spacer or a home-made stud. Where the tie rod is not corrected with it, toe moves in bump. Check the joint against the rim, fit new self-locking nuts, have the wheels aligned.',
  wheelRules:
    'Rules differ: in Austria, by one inspection body’s summary, 5 mm to chassis parts and 10 mm to bodywork in every load state, lock to lock, with no clip-on travel limiters; in Germany a tyre or rim that touches the body is unroadworthy, and clearance is judged with the tyre tolerances the standards allow. Both from secondary copies, perhaps out of date. Ask your own authority or a licensed inspector.',
} as const;

export type CautionId = keyof typeof CAUTIONS;

/** @param label names the block apart from others on the page */
export function renderCautions(ids: readonly CautionId[], label = 'Cautions'): TemplateResult {
  return html`<aside class="cautions" aria-label=${label}>
    <ul>
      ${ids.map((id) => html`<li>${CAUTIONS[id]}</li>`)}
    </ul>
  </aside>`;
}

export const cautionStyles = css`
  aside.cautions {
    border: 1px solid var(--_limit);
    border-inline-start-width: 4px;
    border-radius: 3px;
    padding: 8px 12px;
    font-size: 14px;
    line-height: 1.4;
    background: var(--_limit-wash);
  }
  .cautions ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .cautions li + li {
    margin-block-start: 6px;
  }
`;
