/*
 * A second computation of how far a point is from a tyre on its rim, to check the project's own against. Nothing is imported
 * from core/, and no formula is shared: circles are found by halving instead of in closed form, the solid of revolution is a
 * surface in space that is searched (round each circle, and along the profile by branch and bound), and inside is told by counting how often a ray leaves a polygon.
 *
 * Source of the shape: the project's own definition of a section, common practice without a source.
 */

export interface IndependentShape {
  sectionWidth: number;
  freeRadius: number;
  rimRadius: number;
  rimWidth: number;
  treadWidth?: number | undefined;
  shoulderRadius?: number | undefined;
  rimProtector?: boolean | undefined;
}

type Point2 = readonly [u: number, r: number];
type Point3 = readonly [x: number, y: number, z: number];

/** One stretch of the half profile, as a function of 0 to 1, and how long it is, mm. */
interface Stretch {
  at(share: number): Point2;
  length: number;
}

/** The root of a function that grows through nought between two numbers. */
function rootOf(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

const straight = (from: Point2, to: Point2): Stretch => ({
  at: (share) => [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])],
  length: Math.hypot(to[0] - from[0], to[1] - from[1]),
});

/** The short way round a circle from one of its points to another. */
function round(centre: Point2, from: Point2, to: Point2): Stretch {
  const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const turn = Math.atan2(to[1] - centre[1], to[0] - centre[0]) - start;
  return {
    at: (share) => [
      centre[0] + radius * Math.cos(start + share * turn),
      centre[1] + radius * Math.sin(start + share * turn),
    ],
    length: Math.abs(radius * turn),
  };
}

/** Half the profile, from the middle of the tread to the middle of the barrel's inside. */
export function independentProfile(shape: IndependentShape): Stretch[] {
  const { sectionWidth, freeRadius, rimRadius, rimWidth } = shape;
  const [S, R] = [sectionWidth / 2, freeRadius];
  // A J lip stands 17.3 mm over the bead seat and 11 mm beside it; the barrel is 15 mm thick; a rib is 12 mm high, 4 mm wide.
  const lip = rimRadius + 17.3;
  const bulge = Math.max((rimRadius + R) / 2, lip + 1);
  // No narrower than leaves the shoulder and sidewall a quarter turn.
  const tread = Math.max(Math.min((shape.treadWidth ?? 0.86 * sectionWidth) / 2, S - 2), S - (R - bulge));
  const shoulder = Math.min(
    Math.max(shape.shoulderRadius ?? 0.6 * (S - tread), 1),
    0.9 * (S - tread),
    0.9 * (R - bulge),
  );
  // The sidewall's circle is level with the bulge, and the shoulder's lies in it and touches it: their centres are as far apart
  // as their radii differ.
  const apart = (radius: number) => Math.hypot(tread - (S - radius), R - shoulder - bulge);
  const upper = rootOf((radius) => radius - shoulder - apart(radius), shoulder, 1e5);
  const sidewall: Point2 = [S - upper, bulge];
  const corner: Point2 = [tread, R - shoulder];
  const way = apart(upper);
  const touch: Point2 = [
    sidewall[0] + (upper / way) * (corner[0] - sidewall[0]),
    sidewall[1] + (upper / way) * (corner[1] - sidewall[1]),
  ];
  const stretches = [straight([0, R], [tread, R]), round(corner, [tread, R], touch), round(sidewall, touch, [S, bulge])];

  // Down to the lip's inner edge: another circle level with the bulge; on a rim wider than the tyre straight, and on one much
  // narrower a quarter of a circle that ends level with the lip.
  const bead: Point2 = [Math.max(rimWidth / 2, S - (bulge - lip)), lip];
  const isRound = S - bead[0] > 0;
  const lower = isRound ? rootOf((a) => a - Math.hypot(bead[0] - (S - a), lip - bulge), 0, 1e6) : 0;
  const top = shape.rimProtector ? Math.min(lip + 12, bulge) : lip;
  const foot: Point2 = isRound
    ? [rootOf((u) => Math.hypot(u - (S - lower), top - bulge) - lower, S - lower, S), top]
    : [S + ((bead[0] - S) * (bulge - top)) / (bulge - lip), top];
  stretches.push(isRound ? round([S - lower, bulge], [S, bulge], foot) : straight([S, bulge], foot));
  const edge = rimWidth / 2 + 11;
  const rib: Point2[] = shape.rimProtector
    ? [
        [S + 4, top],
        [S + 4, lip],
      ]
    : [];
  let at = foot;
  for (const next of [...rib, [edge, lip], [edge, rimRadius - 15], [0, rimRadius - 15]] as Point2[]) {
    stretches.push(straight(at, next));
    at = next;
  }
  return stretches.filter(({ length }) => length > 1e-9);
}

export interface IndependentWheel {
  centre: Point3;
  /** Outboard, of any length. */
  spin: Point3;
  shape: IndependentShape;
}

/** How near the search comes, mm. */
const SEARCHED_TO_MM = 0.02;

/** The points of a closed polygon round the half profile and its mirror. */
function polygonOf(shape: IndependentShape): Point2[] {
  const half = independentProfile(shape).flatMap(({ at }) => Array.from({ length: 400 }, (_, i) => at(i / 400)));
  return [...half, ...half.toReversed().map(([u, r]): Point2 => [-u, r])];
}

/** Signed distance from a point to the tyre on its rim, mm, to SEARCHED_TO_MM; negative inside. Made for many points. */
export function independentGap({ centre, spin, shape }: IndependentWheel): (point: Point3) => number {
  const size = Math.hypot(...spin);
  const axis = spin.map((x) => x / size) as unknown as Point3;
  // Any two directions across the axis and each other.
  const helper: Point3 = Math.abs(axis[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const raw = crossOf(axis, helper);
  const e = raw.map((x) => x / Math.hypot(...raw)) as unknown as Point3;
  const f = crossOf(axis, e);
  const stretches = independentProfile(shape);
  const polygon = polygonOf(shape);

  return (point) => {
    // In the wheel's own frame.
    const d: Point3 = [point[0] - centre[0], point[1] - centre[1], point[2] - centre[2]];
    const [a, b, c] = [inner(d, axis), inner(d, e), inner(d, f)];
    /** To the circle that one point of the profile runs on: the nearest of 24 points, then between its neighbours by thirds. */
    const toCircle = (u: number, r: number): number => {
      const at = (angle: number) => Math.hypot(a - u, b - r * Math.cos(angle), c - r * Math.sin(angle));
      const part = Math.PI / 12;
      let nearest = 0;
      for (let i = 1; i < 24; i++) if (at(i * part) < at(nearest * part)) nearest = i;
      let [low, high] = [(nearest - 1) * part, (nearest + 1) * part];
      while (high - low > 1e-5) {
        const third = (high - low) / 3;
        if (at(low + third) < at(high - third)) high -= third;
        else low += third;
      }
      return at((low + high) / 2);
    };
    let best = Number.POSITIVE_INFINITY;
    // Pieces of the profile: stretch, side, middle share, half share. A circle's distance changes by no more than one moves
    // along the profile, so a piece too far away cannot hold the nearest.
    const stack: number[] = [];
    for (const k of stretches.keys()) for (const side of [-1, 1]) stack.push(k, side, 0.5, 0.5);
    while (stack.length > 0) {
      const half = stack.pop()!;
      const share = stack.pop()!;
      const side = stack.pop()!;
      const k = stack.pop()!;
      const stretch = stretches[k]!;
      const [u, r] = stretch.at(share);
      const away = toCircle(side * u, r);
      if (away < best) best = away;
      const reach = half * stretch.length;
      if (away - reach > best - SEARCHED_TO_MM) continue;
      stack.push(k, side, share - half / 2, half / 2, k, side, share + half / 2, half / 2);
    }
    return isInside(polygon, a, Math.hypot(b, c)) ? -best : best;
  };
}

function isInside(polygon: readonly Point2[], u: number, r: number): boolean {
  let inside = false;
  polygon.forEach(([u1, r1], i) => {
    const [u0, r0] = polygon[(i + polygon.length - 1) % polygon.length]!;
    if (r0 > r !== r1 > r && u < u0 + ((r - r0) / (r1 - r0)) * (u1 - u0)) inside = !inside;
  });
  return inside;
}

const inner = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const crossOf = (a: Point3, b: Point3): Point3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
