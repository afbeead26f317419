import { solveInPlace } from '../math/solve.js';
import { add, cross, dot, subtract, type Vec } from '../math/vector.js';
import { type Arm, type Corner, type HardPointKey, hardPointKeys } from './corner.js';
import type { Linkage } from './linkage.js';
import { ARM_ANGLE, BALL, LOW, POSE_SIZE, RACK, ROTATION, SPIN, TIE_OUTER, TRAVEL, UPPER, WHEEL } from './pose.js';
import { findReach, moveTo } from './travel.js';

/**
 * How camber and toe change with every coordinate of a corner, at each travel: degrees per mm, row by row, travels × (points ×
 * 3), points in the order of `keys`. Static camber and toe are held, so everything is 0 at travel 0. Out of reach: NaN.
 */
export interface CornerDerivatives {
  keys: readonly HardPointKey[];
  camber: Float64Array;
  toe: Float64Array;
}

const DEGREES = 180 / Math.PI;
/** Of the carrier: three of translation, three of rotation. */
const FREEDOMS = 6;
const X: Vec = [1, 0, 0];
const Y: Vec = [0, 1, 0];
const UP: Vec = [0, 0, 1];

/**
 * Exact first derivatives by differentiating the constraints at a solved position. Each constraint is one linear equation in the
 * carrier's small displacement τ (of its wheel centre) and rotation θ: row · (τ, θ) = what the coordinates' changes ask of it.
 * With the rows as matrix A, camber's derivative is c · A⁻¹ b for every coordinate's b; one solution λ of Aᵀλ = c serves them
 * all (the adjoint).
 *
 * Of a point X fixed to the carrier, R X₀ is meant where its reference coordinates change: δx = τ + θ × (x − x_W) + R δX₀.
 *
 * @param linkage built from `corner`, without parts
 */
export function sweepDerivatives(
  corner: Corner,
  linkage: Linkage,
  travels: ArrayLike<number>,
  options?: { rack?: number },
): CornerDerivatives {
  const keys = hardPointKeys(corner);
  const width = 3 * keys.length;
  const camber = new Float64Array(travels.length * width).fill(Number.NaN);
  const toe = camber.slice();
  const rack = options?.rack ?? 0;
  const reach = rack === 0 ? linkage.reach : findReach(linkage, rack);
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = linkage.home;
  pose[RACK] = rack;
  for (let i = 0; i < travels.length; i++) {
    pose[TRAVEL] = travels[i]!;
    if (!moveTo(pose, linkage, reach)) continue;
    const { rows, asks } = constraints(corner, pose);
    const adjoint = adjointOf(rows, pose);
    if (!adjoint) continue;
    keys.forEach((key, at) => {
      for (let axis = 0; axis < 3; axis++) {
        let ofCamber = 0;
        let ofToe = 0;
        rows.forEach((_, row) => {
          const asked = asks[row]!(key)?.[axis] ?? 0;
          ofCamber += adjoint[2 * row]! * asked;
          ofToe += adjoint[2 * row + 1]! * asked;
        });
        camber[i * width + 3 * at + axis] = ofCamber * DEGREES;
        toe[i * width + 3 * at + axis] = ofToe * DEGREES;
      }
    });
  }
  return { keys, camber, toe };
}

type Row = readonly [push: Vec, turn: Vec];
/** What a unit change of each coordinate of the named point puts on the right of the constraint, for x, y and z. */
type Ask = (key: HardPointKey) => Vec | undefined;

const at = (pose: Float64Array, offset: number): Vec => [pose[offset]!, pose[offset + 1]!, pose[offset + 2]!];

/** Rᵀ v: a world vector seen by the carrier, so that v · R δX₀ = (Rᵀ v) · δX₀. */
function intoCarrier(pose: Float64Array, v: Vec): Vec {
  const r = (k: number) => pose[ROTATION + k]!;
  return [
    r(0) * v[0] + r(3) * v[1] + r(6) * v[2],
    r(1) * v[0] + r(4) * v[1] + r(7) * v[2],
    r(2) * v[0] + r(5) * v[1] + r(8) * v[2],
  ];
}

/** Rv: a carrier vector in the world. */
function intoWorld(pose: Float64Array, v: Vec): Vec {
  const row = (k: number): Vec => at(pose, ROTATION + k);
  return [dot(row(0), v), dot(row(3), v), dot(row(6), v)];
}

function constraints(corner: Corner, pose: Float64Array): { rows: Row[]; asks: Ask[] } {
  const wheel = at(pose, WHEEL);
  const rows: Row[] = [];
  const asks: Ask[] = [];
  const put = (along: Vec, point: Vec, ask: Ask) => {
    rows.push([along, cross(subtract(point, wheel), along)]);
    asks.push(ask);
  };

  /** A link keeps the distance between a point of the body and one of the carrier: (x − P) · (δx − δP) = (X₀ − P₀) · (δX₀ − δP₀). */
  const link = (
    bodyNow: Vec,
    bodyBuilt: Vec,
    carrierNow: Vec,
    carrierBuilt: Vec,
    bodyKey: HardPointKey,
    carrierKey: HardPointKey,
  ) => {
    const now = subtract(carrierNow, bodyNow);
    const built = subtract(carrierBuilt, bodyBuilt);
    put(now, carrierNow, (key) => {
      if (key === bodyKey) return subtract(now, built);
      return key === carrierKey ? subtract(built, intoCarrier(pose, now)) : undefined;
    });
  };
  const arm = (points: Arm, name: 'lowerArm' | 'upperArm', now: Vec) => {
    link(points.front, points.front, now, points.ball, `${name}.front`, `${name}.ball`);
    link(points.rear, points.rear, now, points.ball, `${name}.rear`, `${name}.ball`);
  };

  arm(corner.lowerArm, 'lowerArm', at(pose, BALL));
  if (corner.kind === 'wishbone') arm(corner.upperArm, 'upperArm', at(pose, UPPER));
  else {
    // The top mount T stays on the carrier's line from Q₀ along d₀ = T₀ − Q₀: (T − x_Q) · q = 0 for two q across the line.
    const { top, low } = corner.strut;
    const built = subtract(top, low);
    const now = subtract(at(pose, UPPER), at(pose, LOW));
    const stretch = Math.sqrt(dot(now, now) / dot(built, built));
    for (const q0 of acrossOf(built)) {
      const q = intoWorld(pose, q0);
      put(q, at(pose, UPPER), (key) => {
        if (key === 'strut.top') return subtract(q, [stretch * q0[0], stretch * q0[1], stretch * q0[2]]);
        return key === 'strut.low' ? [(stretch - 1) * q0[0], (stretch - 1) * q0[1], (stretch - 1) * q0[2]] : undefined;
      });
    }
  }
  const { inner, outer } = corner.tieRod;
  link(add(inner, [0, pose[RACK]!, 0]), inner, at(pose, TIE_OUTER), outer, 'tieRod.inner', 'tieRod.outer');
  // The wheel centre is where the travel says: τ_z + (R δW₀)_z = δW₀_z.
  put(UP, wheel, (key) => (key === 'wheelCentre' ? subtract(UP, intoCarrier(pose, UP)) : undefined));
  return { rows, asks };
}

/** Two vectors across d. */
function acrossOf(d: Vec): [Vec, Vec] {
  const first = cross(d, Math.abs(d[1]) < 0.7 * Math.hypot(...d) ? Y : X);
  return [first, cross(d, first)];
}

/** λ of Aᵀλ = c for camber and for toe: FREEDOMS × 2, row by row; undefined where the position is singular. */
function adjointOf(rows: Row[], pose: Float64Array): Float64Array | undefined {
  const transposed = new Float64Array(FREEDOMS * FREEDOMS);
  rows.forEach(([push, turn], row) => {
    for (let axis = 0; axis < 3; axis++) {
      transposed[axis * FREEDOMS + row] = push[axis]!;
      transposed[(3 + axis) * FREEDOMS + row] = turn[axis]!;
    }
  });
  // camber = atan2(−s_z, s_y) and toe = atan2(s_x, s_y), with δs = θ × s.
  const s = at(pose, SPIN);
  const [sx, sy, sz] = s;
  const upright = sy * sy + sz * sz;
  const level = sx * sx + sy * sy;
  const ofCamber = cross(s, [0, sz / upright, -sy / upright]);
  const ofToe = cross(s, [sy / level, -sx / level, 0]);
  const right = new Float64Array(FREEDOMS * 2);
  for (let axis = 0; axis < 3; axis++) {
    right[(3 + axis) * 2] = ofCamber[axis]!;
    right[(3 + axis) * 2 + 1] = ofToe[axis]!;
  }
  return solveInPlace(transposed, right, FREEDOMS) ? right : undefined;
}
