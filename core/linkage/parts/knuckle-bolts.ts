import { add, cross, dot, length, scale, subtract, unit, type Vec } from '../../math/vector.js';
import { InputError } from '../../quantity/problem.js';
import type { Vector3 } from '../corner.js';
import type { Linkage } from '../linkage.js';
import { checkDirection, checkNumbers, checkVector, given } from './check.js';
import { notOnThisKind, type Part, rebuilt } from './part.js';

const FORWARD: Vector3 = [1, 0, 0];
/** Sine of the angle to the damper below which a bolt's axis counts as along it: about 3°. */
const LEAST_SINE = 0.05;

/**
 * The axis of a damper-to-knuckle bolt: the direction one gives it, made square to the damper. A bolt has no sense of its own; it
 * is taken pointing forward (one square to the car's x axis: as given).
 *
 * @param axis in the carrier's frame (the car's axes at reference height), of any length; default the car's x axis
 * @returns unit vector in the carrier's frame
 * @throws InputError from `knuckleBolts.axis`, `no-direction` also when it lies along the damper; `wrong-shape`, path
 *   `knuckleBolts`, on a wishbone
 */
export function boltAxis(linkage: Linkage, axis: Vector3 = FORWARD): Vector3 {
  checkDirection(axis, 'knuckleBolts.axis');
  const damper = linkage.carrier.damperAxis;
  if (!damper) return notOnThisKind('knuckleBolts', linkage);
  const along = unit(axis);
  const square = subtract(along, scale(damper, dot(along, damper)));
  const sine = length(square);
  if (!(sine > LEAST_SINE)) {
    throw new InputError([{ code: 'no-direction', path: 'knuckleBolts.axis', value: sine, other: 'strut' }]);
  }
  return scale(square, (square[0] < 0 ? -1 : 1) / sine);
}

/** v turned about a unit axis by an angle, radians (Rodrigues' formula). */
function turned(v: Vec, axis: Vec, angle: number): Vec {
  const along = scale(axis, dot(axis, v) * (1 - Math.cos(angle)));
  return add(add(scale(v, Math.cos(angle)), scale(cross(axis, v), Math.sin(angle))), along);
}

/**
 * A strut's knuckle turned at its two bolts to the damper: an eccentric or thinner bolt lets it turn about the OTHER one, and
 * hub, ball joint and steering arm all turn with it. In the carrier's frame, which is the knuckle's, that is the damper's axis
 * turned about the other bolt the other way: this one line changes. Every length and every body point stays.
 *
 * Turned back about the same bolt, the linkage is the one before. "The same bolt" is one whose axis was given: the default is made
 * square to the damper as it is by then, and after 3° the way back misses by about 0.01°. Give `boltAxis(linkage)` of the stock
 * linkage to both.
 *
 * @param options `degrees`: of the knuckle relative to the damper, positive: top of the wheel inboard, more negative camber; less
 *   than 90 either way. `otherBolt`: any point of the bolt it turns about, mm, in the carrier's frame: a hard point (car axes, at
 *   reference height, of the corner as built) minus the wheel centre. `axis`: of that bolt, see `boltAxis`
 * @throws InputError from `knuckleBolts`, `knuckleBolts.degrees`, `knuckleBolts.otherBolt` (`.0` to `.2`), `knuckleBolts.axis`;
 *   `wrong-shape`, path `knuckleBolts`, on a wishbone
 */
export function knuckleBoltsTurned(options: { degrees: number; otherBolt: Vector3; axis?: Vector3 }): Part {
  const { degrees, otherBolt, axis = FORWARD } = given(options, 'knuckleBolts');
  checkNumbers({ 'knuckleBolts.degrees': degrees });
  checkVector(otherBolt, 'knuckleBolts.otherBolt');
  checkDirection(axis, 'knuckleBolts.axis');
  if (!(Math.abs(degrees) < 90)) {
    const limit = Math.sign(degrees) * 90;
    throw new InputError([{ code: 'out-of-range', path: 'knuckleBolts.degrees', value: degrees, limit }]);
  }
  const [x, y, z] = otherBolt;
  const about: Vector3 = [x, y, z];
  const direction: Vector3 = [axis[0], axis[1], axis[2]];
  const angle = (-degrees * Math.PI) / 180;
  return (linkage) => {
    const { carrier } = linkage;
    const { damperLow, damperAxis } = carrier;
    if (!damperLow || !damperAxis) return notOnThisKind('knuckleBolts', linkage);
    const bolt = boltAxis(linkage, direction);
    return rebuilt(linkage, {
      carrier: {
        ...carrier,
        damperLow: add(about, turned(subtract(damperLow, about), bolt, angle)),
        damperAxis: turned(damperAxis, bolt, angle),
      },
    });
  };
}
