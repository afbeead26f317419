import { add, type Vec } from '../../math/vector.js';
import { checkNumbers, notOnThisKind, type Part, rebuilt } from './part.js';

export interface ArmOptions {
  /** Default `lower`. */
  arm?: 'lower' | 'upper';
}

/** An arm whose ball joint stands `mm` further from its pivot axis; its place along that axis stays. */
export function armLonger({ mm, arm = 'lower' }: ArmOptions & { mm: number }): Part {
  checkNumbers({ 'arm.mm': mm });
  return (linkage) => {
    const name = arm === 'lower' ? 'lowerArm' : 'upperArm';
    const shape = linkage.lengths[name];
    if (!shape) return notOnThisKind('arm.arm', linkage);
    return rebuilt(linkage, { lengths: { ...linkage.lengths, [name]: { ...shape, radius: shape.radius + mm } } });
  };
}

/** The body's pivots of an arm raised, mm each. The arm keeps its shape. */
export function innerPivotsRaised({ front, rear, arm = 'lower' }: ArmOptions & { front: number; rear: number }): Part {
  checkNumbers({ 'innerPivots.front': front, 'innerPivots.rear': rear });
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
