import { css, html, type TemplateResult } from 'lit';
import { CLEARANCE_EXAMPLE } from '../../core/wheel/clearance-guides.js';
import { FIRST_CAUTIONS } from './first-cautions.js';
import { PARTS } from './parts.labels.js';

/** Cautions by the place where the risk is. Short and specific; they cannot be dismissed. */
export const CAUTIONS = {
  ...FIRST_CAUTIONS,
  stands:
    'On its wheels, or on axle stands (jack stands) under the jacking points: hard level ground, the other wheels chocked. Never under a car on a jack, nobody inside, phone away.',
  springOut:
    'Spring and bump stop out before you move a corner through its travel: with either in, the jack lifts the car off its stands. Stay below where the stop would be solid, or the damper bottoms and does the same.',
  spring:
    'A compressed spring can kill: a compressor made for that coil that grips at least half of its circumference, or a workshop.',
  carried:
    'Disconnect first: level-sensor links, adaptive-damper leads, the anti-roll bar’s links. Then something carries the arm, always: brake hose, sensor lead and driveshaft must not hang. A gas damper pushes.',
  hub: 'Measure travel at the hub: without the spring’s load a rubber top mount moves.',
  bushes: 'Loosen the bush bolts only until the rubber is free, and tighten them last, at ride height.',
  afterHeight:
    'After a change of height: wheel alignment, headlamp aim, calibration of driver-assistance sensors, load-sensing brake valve, ground clearance.',
  rules:
    'Rules on lowering differ from country to country. Ask your own authority or a licensed inspector before you drive.',
  otherLimits:
    'With shorter dampers the stroke stays, and every other limit comes nearer by the drop: tyre to arch, driveshaft, arm to body, brake hose.',
  stop: 'A stop met in a turn stiffens that axle suddenly. A trimmed one lets the damper hit its own end and break.',
  wheelParts:
    'Load and speed index no lower than the car needs, rim width approved for the tyre, spacers with full thread engagement and hub centring. Cutting a liner or an arch can bare wiring and seams that rust.',
  camber:
    'Camber bolts hold by clamp force alone: bolts made for it, new nuts, the maker’s torque. Much negative camber wears inner edges and lengthens braking.',
  lowJoint:
    'A longer joint bends its stud harder: engineered parts only, for joint and tie-rod end. It reaches the end of its swing sooner: it must not bind, nor touch the rim, at full droop, full bump and full lock. Without the tie rod corrected, toe moves in bump. New self-locking nuts, then alignment.',
  armPart:
    'Other arms or pivots move everything that ends travel: at full droop, full bump and full lock nothing may bind or rub, driveshaft, brake hose and rim included. Parts made for the car, new self-locking nuts, then alignment.',
  topMount:
    'The top mount holds the corner of the car: a plate made for it, every bolt to the maker’s torque. Full bump and full lock: tyre and spring must clear the inner arch. Then alignment.',
  knuckle:
    'A knuckle or spindle that was bent, heated or welded can break: only a part made and machined for it. The driveshaft and the brake caliper must fit as before.',
  steering:
    'A steering joint that comes apart takes the steering with it: parts made for the car, full thread engagement, new self-locking nuts or split pins, free from lock to lock at droop and bump. Then alignment.',
  hardTurn:
    'Turns this hard belong on a closed course, by its rules, never on the road. The driver only drives; a logger keeps the figure.',
  onCourse:
    'On a closed course, by its rules, never on the road. Somebody else takes the picture, from where spectators may stand; the driver only drives. Fit and read cable ties on level ground: engine off, parking brake on, wheels chocked, no part of you under the car.',
  wheelRules: `Rules differ. ${CLEARANCE_EXAMPLE} Ask your own authority or a licensed inspector before you drive.`,
} as const;

export type CautionId = keyof typeof CAUTIONS;

/** One of the above, or one made for the answer it stands under. */
export type Caution = CautionId | { text: string };

/** @param label names the block apart from others on the page */
export function renderCautions(cautions: readonly Caution[], label: string = PARTS.cautions): TemplateResult {
  return html`<aside class="cautions" aria-label=${label}>
    <ul>
      ${cautions.map((one) => html`<li>${typeof one === 'string' ? CAUTIONS[one] : one.text}</li>`)}
    </ul>
  </aside>`;
}

export const cautionStyles = css`
  aside.cautions {
    border: 1px solid var(--_limit);
    border-inline-start-width: 4px;
    border-radius: 3px;
    padding: 8px 12px;
    font-size: 0.875em;
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
