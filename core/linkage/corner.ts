/** A point or vector: x forward, y left, z up (ISO 8855), mm. */
export type Vector3 = readonly [x: number, y: number, z: number];

/** A lower (or upper) arm: the line through its two body pivots, and its ball joint on the carrier. */
export interface Arm {
  front: Vector3;
  rear: Vector3;
  ball: Vector3;
}

/** A steering tie rod: ball joint on the rack, ball joint on the carrier's steering arm. */
export interface TieRod {
  inner: Vector3;
  outer: Vector3;
}

/**
 * A damper strut. Its sliding axis is a line fixed to the carrier that always passes through the top mount's centre.
 * `low` is any second point on that line, fixed to the carrier.
 */
export interface Strut {
  top: Vector3;
  low: Vector3;
}

/** How sure one is: half-width of a 95 % interval, mm, of each coordinate of the named points. `other` stands for the rest. */
export type PlusMinus = Partial<Record<HardPointKey | 'other', number>>;

/** Hard points of a LEFT corner at reference height: z = 0 at the ground, y = 0 at the car's centreline, mm and degrees. */
export interface StrutCorner {
  kind: 'strut';
  wheelCentre: Vector3;
  /** Static loaded radius: hub centre to ground, mm. */
  loadedRadius: number;
  /** Static camber, degrees, positive top outward. */
  camber: number;
  /** Static toe of this wheel, degrees, positive toe-in. */
  toe: number;
  lowerArm: Arm;
  strut: Strut;
  tieRod: TieRod;
  plusMinus?: PlusMinus;
}

export type Corner = StrutCorner;

/** Every hard point of a strut corner, in the order in which a drawing numbers them. */
export const HARD_POINT_KEYS = [
  'lowerArm.front',
  'lowerArm.rear',
  'lowerArm.ball',
  'strut.top',
  'strut.low',
  'tieRod.inner',
  'tieRod.outer',
  'wheelCentre',
] as const;

export type HardPointKey = (typeof HARD_POINT_KEYS)[number];

/** The point a key names. */
export function hardPoint(corner: Corner, key: HardPointKey): Vector3 {
  switch (key) {
    case 'lowerArm.front':
      return corner.lowerArm.front;
    case 'lowerArm.rear':
      return corner.lowerArm.rear;
    case 'lowerArm.ball':
      return corner.lowerArm.ball;
    case 'strut.top':
      return corner.strut.top;
    case 'strut.low':
      return corner.strut.low;
    case 'tieRod.inner':
      return corner.tieRod.inner;
    case 'tieRod.outer':
      return corner.tieRod.outer;
    case 'wheelCentre':
      return corner.wheelCentre;
  }
}

/** A copy of the corner with one point elsewhere. */
export function withHardPoint(corner: Corner, key: HardPointKey, point: Vector3): Corner {
  if (key === 'wheelCentre') return { ...corner, wheelCentre: point };
  const [part, end] = key.split('.') as ['lowerArm' | 'strut' | 'tieRod', string];
  return { ...corner, [part]: { ...corner[part], [end]: point } };
}
