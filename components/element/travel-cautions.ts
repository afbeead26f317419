import { words } from '../../core/quantity/words.js';

/** Hazards of moving a corner through its travel, and of where that travel ends. */
export const TRAVEL_CAUTIONS = words('element/travel-cautions', {
  springOut:
    'Spring and bump stop out before you move a corner through its travel: with either in, the jack lifts the car off its stands. Stay below where the stop would be solid, or the damper bottoms and does the same.',
  spring:
    'A compressed spring can kill: a compressor made for that coil that grips at least half of its circumference, or a workshop.',
  carried:
    'Disconnect first: level-sensor links, adaptive-damper leads, the anti-roll bar’s links. Then something carries the arm, always: brake hose, sensor lead and driveshaft must not hang. A gas damper pushes.',
  hub: 'Measure travel at the hub: without the spring’s load a rubber top mount moves.',
  bushes: 'Loosen the bush bolts only until the rubber is free, and tighten them last, at ride height.',
  stop: 'A stop met in a turn stiffens that axle suddenly. A trimmed one lets the damper hit its own end and break.',
  otherLimits:
    'Shorter dampers keep their stroke, but every other limit comes nearer by the drop: tyre to arch, driveshaft, arm to body, brake hose.',
});
