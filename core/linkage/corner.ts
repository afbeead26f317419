/** A point or vector: x forward, y left, z up (ISO 8855), mm. */
export type Vector3 = readonly [x: number, y: number, z: number];

/** A lower (or upper) arm: the line through its two body pivots, and its ball joint on the carrier. */
export interface Arm {
  /** Front body pivot, mm. */
  front: Vector3;
  /** Rear body pivot, mm. */
  rear: Vector3;
  /** Ball joint, mm. */
  ball: Vector3;
}

/** A steering tie rod: ball joint on the rack, ball joint on the carrier's steering arm. */
export interface TieRod {
  /** Inner end, on the rack, mm. */
  inner: Vector3;
  /** Outer end, on the steering arm, mm. */
  outer: Vector3;
}

/**
 * A damper strut. Its sliding axis is a line fixed to the carrier that always passes through the top mount's centre.
 * `low` is any second point on that line, fixed to the carrier.
 */
export interface Strut {
  /** Top mount, mm. */
  top: Vector3;
  /** Any point low down on the middle line of the damper tube, mm. */
  low: Vector3;
}

/** What a wishbone's damper stands on. */
export type DamperFoot = 'lowerArm' | 'upperArm' | 'carrier';

/** A wishbone's damper: its end on the body, and its end on an arm or on the carrier. */
export interface Damper {
  /** Its end on the body, mm. */
  top: Vector3;
  /** Its other end, mm. */
  low: Vector3;
  /** Default `lowerArm`. */
  on?: DamperFoot;
}

/** How sure one is: half-width of a 95 % interval, mm, of each coordinate of the named points. `other` stands for the rest. */
export type PlusMinus = Partial<Record<HardPointKey | 'other', number>>;

/** What every corner has. Hard points of a LEFT corner at reference height: z = 0 at the ground, y = 0 at the car's centreline, mm and degrees. */
export interface CornerBase {
  /** The wheel’s centre. */
  wheelCentre: Vector3;
  /** Static loaded radius: hub centre to ground, mm. */
  loadedRadius: number;
  /** Static camber, degrees, positive top outward. */
  camber: number;
  /** Static toe of this wheel, degrees, positive toe-in. */
  toe: number;
  /** The lower arm. */
  lowerArm: Arm;
  /** The tie rod. */
  tieRod: TieRod;
  /** How sure you are of each point, mm (95 %): `{ "lowerArm.ball": 2, "other": 3 }`. */
  plusMinus?: PlusMinus;
}

export interface StrutCorner extends CornerBase {
  /** A MacPherson strut, or a double wishbone. */
  kind: 'strut';
  /** Of a strut. */
  strut: Strut;
}

export interface WishboneCorner extends CornerBase {
  /** A double wishbone. */
  kind: 'wishbone';
  /** Of a double wishbone. */
  upperArm: Arm;
  /** Without it there are no damper outputs. */
  damper?: Damper;
}

/** Hard points of the LEFT corner at stock height. A point is x forward, y left from the centreline, z up from the ground, mm; angles are in degrees. */
export type Corner = StrutCorner | WishboneCorner;

/** Every hard point of a strut corner, in the order in which a drawing numbers them. */
export const STRUT_POINT_KEYS = [
  'lowerArm.front',
  'lowerArm.rear',
  'lowerArm.ball',
  'strut.top',
  'strut.low',
  'tieRod.inner',
  'tieRod.outer',
  'wheelCentre',
] as const;

/** Every hard point of a double wishbone corner without its damper. */
export const WISHBONE_POINT_KEYS = [
  'lowerArm.front',
  'lowerArm.rear',
  'lowerArm.ball',
  'upperArm.front',
  'upperArm.rear',
  'upperArm.ball',
  'tieRod.inner',
  'tieRod.outer',
  'wheelCentre',
] as const;

const DAMPER_POINT_KEYS = ['damper.top', 'damper.low'] as const;

export type StrutPointKey = (typeof STRUT_POINT_KEYS)[number];
export type HardPointKey = StrutPointKey | (typeof WISHBONE_POINT_KEYS)[number] | (typeof DAMPER_POINT_KEYS)[number];

/** The hard points that a corner of this kind has. */
export function hardPointKeys(corner: Corner): readonly HardPointKey[] {
  if (corner.kind === 'strut') return STRUT_POINT_KEYS;
  return corner.damper ? [...WISHBONE_POINT_KEYS, ...DAMPER_POINT_KEYS] : WISHBONE_POINT_KEYS;
}

/** The point a key names; undefined where this kind of corner has none of that name. */
export function hardPoint(corner: StrutCorner, key: StrutPointKey): Vector3;
export function hardPoint(corner: Corner, key: HardPointKey): Vector3 | undefined;
export function hardPoint(corner: Corner, key: HardPointKey): Vector3 | undefined {
  const [part, end] = key.split('.') as [keyof Corner, string | undefined];
  const found = (corner as unknown as Record<string, unknown>)[part];
  return (end === undefined ? found : (found as Record<string, unknown> | undefined)?.[end]) as Vector3 | undefined;
}

/** A copy of the corner with one point elsewhere. */
export function withHardPoint(corner: Corner, key: HardPointKey, point: Vector3): Corner {
  const [part, end] = key.split('.') as [keyof Corner, string | undefined];
  if (end === undefined) return { ...corner, [part]: point };
  return { ...corner, [part]: { ...(corner[part] as object), [end]: point } };
}
