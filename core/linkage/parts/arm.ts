import { add, type Vec } from '../../math/vector.js';
import { InputError } from '../../quantity/problem.js';
import { checkName, checkNumbers, given } from './check.js';
import { notOnThisKind, type Part, rebuilt } from './part.js';

export interface ArmOptions {
  /** Default `lower`; a strut has only that one. */
  arm?: 'lower' | 'upper';
}

const ARMS = ['lower', 'upper'];

/**
 * An arm whose ball joint stands `mm` further from its pivot axis (negative: nearer); its place along that axis stays. Changes
 * that one length. Pivots, everything on the carrier and the damper's place on the arm stay.
 *
 * @throws InputError from `arm`, `arm.mm`, `arm.arm`; `out-of-range` with the shortest change as limit when nothing would be
 *   left of the arm
 */
export function armLonger(options: ArmOptions & { mm: number }): Part {
  const { mm, arm = 'lower' } = given(options, 'arm');
  checkNumbers({ 'arm.mm': mm });
  checkName(arm, ARMS, 'arm.arm');
  return (linkage) => {
    const name = arm === 'lower' ? 'lowerArm' : 'upperArm';
    const shape = linkage.lengths[name];
    if (!shape) return notOnThisKind('arm.arm', linkage);
    const radius = shape.radius + mm;
    // The links of an arm through its own pivot axis would join too.
    if (!(radius > 0)) {
      throw new InputError([{ code: 'out-of-range', path: 'arm.mm', value: mm, limit: -shape.radius }]);
    }
    return rebuilt(linkage, { lengths: { ...linkage.lengths, [name]: { ...shape, radius } } });
  };
}

/**
 * The body's two pivots of one arm raised, mm each in the car's z (negative lowers). For both arms put on two of these. Changes
 * two body points. The arm keeps its shape; carrier and the other body points stay.
 *
 * Raised by different amounts, the pivots come to stand further apart or closer together than the arm's own bushes, by little:
 * L' = √(L² + 2·Δz·(front − rear) + (front − rear)²), Δz the front pivot's height over the rear one's. The arm stays rigid, so both
 * bushes give way along their axis, each by half of L' − L as if they were alike: the ball joint keeps its place from the middle
 * between the pivots. Where one bush holds the arm along the axis and the other gives way alone, the ball joint stands (L' − L)/2
 * off that. On the reference strut (pivots 310 mm apart) that is 0.24 mm, 0.02° of caster and under 0.005° of camber and toe
 * for 15 mm up in front and 15 mm down at the rear; for 30 mm each, 1.9 to 3.8 mm and 0.17° to 0.37° of caster.
 *
 * @throws InputError from `innerPivots`, `innerPivots.front`, `innerPivots.rear`, `innerPivots.arm`
 */
export function innerPivotsRaised(options: ArmOptions & { front: number; rear: number }): Part {
  const { front, rear, arm = 'lower' } = given(options, 'innerPivots');
  checkNumbers({ 'innerPivots.front': front, 'innerPivots.rear': rear });
  checkName(arm, ARMS, 'innerPivots.arm');
  const raise = (point: Vec, mm: number): Vec => add(point, [0, 0, mm]);
  return (linkage) => {
    const { body } = linkage;
    if (arm === 'lower') {
      return rebuilt(linkage, {
        body: { ...body, lowerFront: raise(body.lowerFront, front), lowerRear: raise(body.lowerRear, rear) },
      });
    }
    const { upperFront, upperRear } = body;
    if (!upperFront || !upperRear) return notOnThisKind('innerPivots.arm', linkage);
    return rebuilt(linkage, {
      body: { ...body, upperFront: raise(upperFront, front), upperRear: raise(upperRear, rear) },
    });
  };
}
