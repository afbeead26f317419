import { css, html, type TemplateResult } from 'lit';
import { CLEARANCE_EXAMPLE } from '../../core/wheel/clearance-guides.js';

/** Cautions by the place where the risk is. Short and specific; they cannot be dismissed. */
export const CAUTIONS = {
  stands:
    'Measure with the car on its wheels, or on axle stands (jack stands) under its jacking points, on hard level ground, the other wheels chocked. Never under a car on a jack, nobody inside, and the phone away before you reach in.',
  springOut:
    'Take spring and bump stop out before you move a corner through its travel: with either in, the jack lifts the car off its stands. Without the stop the damper bottoms, just as hard: stay below the height at which the stop would be solid.',
  spring:
    'A compressed spring can kill. Use a compressor made for that coil that grips at least half of its circumference, never separate threaded rods with short claws; or have a workshop do it.',
  carried:
    'Disconnect first, ignition off: level-sensor links, adaptive-damper leads, the anti-roll bar’s links on both sides. Then something carries the arm at all times: brake hose, sensor lead and driveshaft must not hang or be stretched. A gas damper pushes by itself.',
  hub: 'Measure travel at the hub: without the spring’s load a rubber top mount moves, and the damper’s rod no longer tells how far the wheel has come.',
  bushes:
    'Loosen the bush bolts only until the rubber is free, nuts on by their full thread. Tighten them last, with the car on its wheels.',
  afterHeight:
    'After a change of height: wheel alignment, headlamp aim, calibration of driver-assistance sensors, load-sensing brake valve, ground clearance.',
  rules:
    'Rules on lowering differ from country to country. Ask your own authority or a licensed inspector before you drive.',
  otherLimits:
    'With shorter dampers the stroke stays, and every other limit comes nearer by the drop: tyre to arch, driveshaft, arm to body, brake hose. Any of them can end travel before the stop does.',
  predicted: 'These are numbers from measured points, not a fitting check, and never permission to drive.',
  clearByHand:
    'A clearance by numbers is never permission to drive. Look from lock to lock, half way up and at full bump: tyre, brake hose and sensor lead must stay free everywhere, not only where you measured.',
  stop: 'A stop that is met in a turn stiffens that axle suddenly. A trimmed one lets the damper hit its own end and break.',
  wheelParts:
    'Load and speed index no lower than the car needs, rim width approved for the tyre, spacers with full thread engagement and hub centring. Cutting a liner or an arch can bare wiring and seams that rust.',
  camber:
    'Camber set at the knuckle bolts is held by their clamp force alone: bolts made for it, new nuts, the maker’s torque. Much negative camber wears inner edges and lengthens braking. Have toe set afterwards.',
  lowJoint:
    'A longer joint bends its stud harder: engineered parts only, for joint and tie-rod end, never a spacer or a home-made stud. Its ball reaches the end of its swing sooner: it must not bind or touch the rim at full droop, full bump and full lock. Where the tie rod is not corrected, toe moves in bump. New self-locking nuts, then wheel alignment.',
  wheelRules: `Rules differ from country to country. ${CLEARANCE_EXAMPLE} Ask your own authority or a licensed inspector before you drive.`,
} as const;

export type CautionId = keyof typeof CAUTIONS;

/** One of the above, or one made for the answer it stands under. */
export type Caution = CautionId | { text: string };

/** @param label names the block apart from others on the page */
export function renderCautions(cautions: readonly Caution[], label = 'Cautions'): TemplateResult {
  return html`<aside class="cautions" aria-label=${label}>
    <ul>
      ${cautions.map((one) => html`<li>${typeof one === 'string' ? CAUTIONS[one] : one.text}</li>`)}
    </ul>
  </aside>`;
}

export const cautionStyles = css`
  .cautions {
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
