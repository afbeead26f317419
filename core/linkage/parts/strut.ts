import { add, cross, dot, scale, subtract, unit, type Vec } from '../../math/vector.js';
import type { Vector3 } from '../corner.js';
import { checkNumbers, checkVector, notOnThisKind, type Part, rebuilt } from './part.js';

/** The top mount's centre moved in the body, mm in the car's axes: inboard is negative y. The damper's axis stays where it is in the carrier. */
export function topMountMoved({ vector }: { vector: Vector3 }): Part {
  checkVector(vector, 'topMount.vector');
  return (linkage) => {
    const { body } = linkage;
    if (!body.top) return notOnThisKind('topMount', linkage);
    return rebuilt(linkage, { body: { ...body, top: add(body.top, vector) } });
  };
}

/** v turned about a unit axis by an angle, radians (Rodrigues' formula). */
function turned(v: Vec, axis: Vec, angle: number): Vec {
  const along = scale(axis, dot(axis, v) * (1 - Math.cos(angle)));
  return add(add(scale(v, Math.cos(angle)), scale(cross(axis, v), Math.sin(angle))), along);
}

const FORWARD: Vector3 = [1, 0, 0];

/**
 * The knuckle turned at its two bolts to the damper: an eccentric or smaller bolt lets it turn about the other one, and hub, ball
 * joint and steering arm all turn with it. In the carrier's frame that is the damper's axis turned the other way.
 *
 * @param degrees positive: top of the wheel inboard, more negative camber
 * @param otherBolt the bolt it turns about, mm, in the carrier's frame: from the wheel centre as built, in the car's axes
 * @param axis of that bolt, same frame; default forward
 */
export function knuckleBoltsTurned({
  degrees,
  otherBolt,
  axis = FORWARD,
}: {
  degrees: number;
  otherBolt: Vector3;
  axis?: Vector3;
}): Part {
  checkNumbers({ 'knuckleBolts.degrees': degrees });
  checkVector(otherBolt, 'knuckleBolts.otherBolt');
  checkVector(axis, 'knuckleBolts.axis');
  const along = unit(axis);
  const angle = (-degrees * Math.PI) / 180;
  return (linkage) => {
    const { carrier } = linkage;
    const { damperLow, damperAxis } = carrier;
    if (!damperLow || !damperAxis) return notOnThisKind('knuckleBolts', linkage);
    return rebuilt(linkage, {
      carrier: {
        ...carrier,
        damperLow: add(otherBolt, turned(subtract(damperLow, otherBolt), along, angle)),
        damperAxis: turned(damperAxis, along, angle),
      },
    });
  };
}
