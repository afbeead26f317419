import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { words } from '../../core/quantity/words.js';

/** Hazards of parts that hold a wheel on, or steer it. */
export const PART_CAUTIONS = words('element/part-cautions', {
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
});

/** By the kind of part. */
const OF_PART: Readonly<Record<PartData['part'], keyof typeof PART_CAUTIONS>> = {
  ballJointExtended: 'lowJoint',
  ballJointMoved: 'lowJoint',
  armLonger: 'armPart',
  innerPivotsRaised: 'armPart',
  topMountMoved: 'topMount',
  knuckleBoltsTurned: 'camber',
  spinAxisTurned: 'knuckle',
  tieRodEndRaised: 'steering',
  tieRodLonger: 'steering',
  rackRaised: 'steering',
  wheelOffset: 'wheelParts',
};

/** Of all parts in some sets. One that a page's script made up has none. */
export const partCautions = (setups: readonly { readonly parts?: readonly PartData[] }[]): string[] =>
  setups.flatMap(({ parts = [] }) => parts.flatMap(({ part }) => PART_CAUTIONS[OF_PART[part]] ?? []));
