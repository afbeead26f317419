import { RIM_LIP_MM, RIM_RIB_MM } from './fitted-wheel.js';

/**
 * The section of a tyre on its rim in the half-plane of the wheel's axis: u from the wheel's middle plane, r from its axis, mm.
 * Symmetric in u, and at every radius one stretch |u| ≤ w(r): tread, shoulder, sidewall to its bulge, bulge to bead, the rim's lip,
 * and the barrel below it. Spokes are not part of it.
 */
export interface TyreSection {
  /** Half the widest of it, tyre or rim's lip. */
  readonly halfWidth: number;
  readonly freeRadius: number;
  /** Where the sidewall is widest. */
  readonly bulge: { readonly u: number; readonly r: number };
  /** The rim's lip, and the barrel's inside. */
  readonly lip: { readonly u: number; readonly r: number };
  readonly innerRadius: number;
  /** Signed distance of a point to the section: positive outside. The solid of revolution is as far away. */
  distance(u: number, r: number): number;
  /** Points along the half outline from the tread's middle to the barrel's, arcs as chords. */
  outline(perArc?: number): [u: number, r: number][];
}

export interface SectionShape {
  /** As measured on this rim, without a protective rib. */
  sectionWidth: number;
  freeRadius: number;
  /** Nominal rim diameter / 2. */
  rimRadius: number;
  rimWidth: number;
  /** Default 0.86 of the section width. */
  treadWidth?: number | undefined;
  shoulderRadius?: number | undefined;
  rimProtector?: boolean | undefined;
}

/** From memory: height of a J lip over the bead seat, and the barrel's wall with its seat. */
const LIP_HEIGHT_MM = 17.3;
const BARREL_WALL_MM = 15;
const RIB_HEIGHT_MM = 12;
/** Common practice, no source. */
const TREAD_SHARE = 0.86;
const SHOULDER_SHARE = 0.6;

/** A straight piece, or an arc that bulges away from the section. */
type Piece =
  | { kind: 'line'; u0: number; r0: number; u1: number; r1: number }
  | { kind: 'arc'; u: number; r: number; radius: number; from: number; to: number };

/** Angles of arcs are atan2(r, u): a right angle is straight up, 0 sideways. */
export function tyreSection(shape: SectionShape): TyreSection {
  const { freeRadius, rimRadius, rimWidth, rimProtector } = shape;
  const half = shape.sectionWidth / 2;
  const lipRadius = rimRadius + LIP_HEIGHT_MM;
  const lip = { u: rimWidth / 2 + RIM_LIP_MM, r: lipRadius };
  const bulgeRadius = Math.max((rimRadius + freeRadius) / 2, lipRadius + 1);
  const innerRadius = rimRadius - BARREL_WALL_MM;

  // Shoulder and upper sidewall: the sidewall's circle is level with the bulge and touches the shoulder's from outside.
  // A tread so narrow that they would need more than a quarter turn is taken to be as wide as they allow.
  const told = (shape.treadWidth ?? TREAD_SHARE * shape.sectionWidth) / 2;
  const aside = Math.min(Math.max(half - told, 2), freeRadius - bulgeRadius);
  const tread = half - aside;
  const shoulder = Math.min(
    Math.max(shape.shoulderRadius ?? SHOULDER_SHARE * aside, 1),
    0.9 * aside,
    0.9 * (freeRadius - bulgeRadius),
  );
  const rise = freeRadius - shoulder - bulgeRadius;
  const upper = (aside * aside + rise * rise - shoulder * shoulder) / (2 * (aside - shoulder));
  const turn = Math.atan2(rise, tread - (half - upper));
  const turnRadius = freeRadius - shoulder + shoulder * Math.sin(turn);

  // Bulge to bead: another circle level with the bulge, through the lip's inner edge, or down to the lip where that is far inside.
  const bead = rimWidth / 2;
  const fall = bulgeRadius - lipRadius;
  const inset = Math.min(half - bead, fall);
  const isRound = inset > 0.01;
  const lower = isRound ? (inset * inset + fall * fall) / (2 * inset) : 0;
  const ribRadius = rimProtector ? Math.min(lipRadius + RIB_HEIGHT_MM, bulgeRadius) : lipRadius;
  const ribHalf = half + RIM_RIB_MM;

  /** Half-width of the lower sidewall at a radius. */
  const lowerHalf = (r: number): number =>
    isRound
      ? half - lower + Math.sqrt(Math.max(0, lower * lower - (bulgeRadius - r) ** 2))
      : half - (inset * (bulgeRadius - r)) / fall;

  const pieces: Piece[] = [
    { kind: 'line', u0: 0, r0: freeRadius, u1: tread, r1: freeRadius },
    { kind: 'arc', u: tread, r: freeRadius - shoulder, radius: shoulder, from: turn, to: Math.PI / 2 },
    { kind: 'arc', u: half - upper, r: bulgeRadius, radius: upper, from: 0, to: turn },
  ];
  const foot = lowerHalf(ribRadius);
  if (isRound) {
    const from = Math.atan2(ribRadius - bulgeRadius, foot - (half - lower));
    pieces.push({ kind: 'arc', u: half - lower, r: bulgeRadius, radius: lower, from, to: 0 });
  } else {
    pieces.push({ kind: 'line', u0: half, r0: bulgeRadius, u1: foot, r1: ribRadius });
  }
  let at: [number, number] = [foot, ribRadius];
  const lineTo = (u: number, r: number) => {
    pieces.push({ kind: 'line', u0: at[0], r0: at[1], u1: u, r1: r });
    at = [u, r];
  };
  if (rimProtector) {
    lineTo(ribHalf, ribRadius);
    lineTo(ribHalf, lipRadius);
  }
  lineTo(lip.u, lipRadius);
  lineTo(lip.u, innerRadius);
  lineTo(0, innerRadius);

  const halfAt = (r: number): number => {
    if (r > turnRadius) return tread + Math.sqrt(Math.max(0, shoulder * shoulder - (r - freeRadius + shoulder) ** 2));
    if (r > bulgeRadius) return half - upper + Math.sqrt(Math.max(0, upper * upper - (r - bulgeRadius) ** 2));
    if (r > ribRadius) return lowerHalf(r);
    return r > lipRadius ? ribHalf : lip.u;
  };
  const flat = flatten(pieces);

  return {
    halfWidth: Math.max(rimProtector ? ribHalf : half, lip.u),
    freeRadius,
    bulge: { u: half, r: bulgeRadius },
    lip,
    innerRadius,
    distance(u, r) {
      const aside = Math.abs(u);
      const away = Math.sqrt(nearestSquare(flat, aside, r));
      return r <= freeRadius && r >= innerRadius && aside <= halfAt(r) ? -away : away;
    },
    outline: (perArc = 8) => outlineOf(pieces, perArc),
  };
}

/** Six numbers a piece: a line's end and way and its length squared; an arc's centre, radius and the two unit vectors it lies between. */
function flatten(pieces: readonly Piece[]): Float64Array {
  return Float64Array.from(
    pieces.flatMap((piece) => {
      if (piece.kind === 'line') {
        const [du, dr] = [piece.u1 - piece.u0, piece.r1 - piece.r0];
        return [0, piece.u0, piece.r0, du, dr, du * du + dr * dr || 1, 0, 0];
      }
      const { u, r, radius, from, to } = piece;
      return [1, u, r, radius, Math.cos(from), Math.sin(from), Math.cos(to), Math.sin(to)];
    }),
  );
}

/** By so much an arc reaches over its ends, mm: between two that meet there no way straight out is lost to rounding. */
const OVER_END_MM = 1e-9;

/** Square of the distance to the nearest piece. An arc's ends are its neighbours' as well. */
function nearestSquare(flat: Float64Array, u: number, r: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < flat.length; i += 8) {
    const x = u - flat[i + 1]!;
    const y = r - flat[i + 2]!;
    let square: number;
    if (flat[i] === 0) {
      const du = flat[i + 3]!;
      const dr = flat[i + 4]!;
      const along = Math.min(1, Math.max(0, (x * du + y * dr) / flat[i + 5]!));
      const [a, b] = [x - along * du, y - along * dr];
      square = a * a + b * b;
    } else {
      // Between its ends, which are less than half a turn apart.
      if (flat[i + 4]! * y - flat[i + 5]! * x < -OVER_END_MM) continue;
      if (x * flat[i + 7]! - y * flat[i + 6]! < -OVER_END_MM) continue;
      const away = Math.sqrt(x * x + y * y) - flat[i + 3]!;
      square = away * away;
    }
    if (square < least) least = square;
  }
  return least;
}

function outlineOf(pieces: readonly Piece[], perArc: number): [number, number][] {
  const points: [number, number][] = [];
  for (const piece of pieces) {
    if (piece.kind === 'line') {
      points.push([piece.u0, piece.r0]);
      continue;
    }
    const { u, r, radius, from, to } = piece;
    for (let k = 0; k < perArc; k++) {
      const angle = to + ((from - to) * k) / perArc;
      points.push([u + radius * Math.cos(angle), r + radius * Math.sin(angle)]);
    }
  }
  const last = pieces.at(-1);
  if (last?.kind === 'line') points.push([last.u1, last.r1]);
  return points;
}
