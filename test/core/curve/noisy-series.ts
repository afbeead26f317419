import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner, Vector3, WishboneCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { Reading } from '../../../core/readings/reading.js';
import { normal, randomCar, randomNumbers, SURE_TRAVEL_MM } from '../driveway/random-car.js';

/** mm of bump from height 0. */
export const CHANGES = [25, 50] as const;

/** A plausible unequal-arm double wishbone: every coordinate uniform within some centimetres. Common practice, no source. */
function randomWishbone(random: () => number): WishboneCorner {
  const about = (centre: Vector3, by: Vector3) =>
    centre.map((at, axis) => at + (2 * random() - 1) * by[axis]!) as unknown as Vector3;
  return {
    kind: 'wishbone',
    wheelCentre: about([0, 750, 310], [10, 40, 20]),
    loadedRadius: 310,
    camber: -1,
    toe: 0.1,
    lowerArm: {
      front: about([150, 360, 200], [40, 30, 15]),
      rear: about([-170, 365, 205], [40, 30, 15]),
      ball: about([0, 715, 190], [15, 20, 20]),
    },
    upperArm: {
      front: about([110, 450, 470], [30, 25, 20]),
      rear: about([-130, 455, 470], [30, 25, 20]),
      ball: about([-15, 690, 500], [15, 20, 25]),
    },
    tieRod: { inner: about([-145, 370, 258], [20, 20, 10]), outer: about([-140, 695, 255], [15, 15, 10]) },
  };
}

/** Three struts to a wishbone, that moves as far as the struts do. */
function randomLinkage(random: () => number) {
  for (;;) {
    const corner: Corner = random() < 0.75 ? randomCar(random) : randomWishbone(random);
    try {
      const linkage = buildLinkage(corner);
      if (linkage.reach.bump >= SURE_TRAVEL_MM && linkage.reach.droop <= -SURE_TRAVEL_MM) return linkage;
    } catch {
      // Does not close.
    }
  }
}

/** Readings of one random car, and the truth at height 0 and at each of CHANGES. */
export interface Series {
  readings: Reading[];
  truth: Float64Array;
}

/** A figure, or how it is drawn for each series. */
type Drawn = number | ((random: () => number) => number);

/** How a garage departs from independent scatter. Each is nothing by default. */
export interface Noise {
  /** Standard deviation of the gauge, degrees, uniform. 0.03 to 0.1 by default. */
  gauge?: readonly [least: number, most: number];
  /** Standard deviation of the height, mm. 1 by default. */
  travelError?: number;
  /**
   * `up` (default): every pass goes up. `in turn`: up, down, up …, and there are at least two. `there and back`: each pass goes up and
   * comes down again. `return`: every pass goes up and ends with its first height read again.
   */
  layout?: 'up' | 'in turn' | 'there and back' | 'return';
  /** Whether the readings say which way the wheel went. By default where it goes both ways. */
  isWayTold?: boolean;
  /** At least so many passes. */
  leastPasses?: number;
  /** Of the gauge's zero from the first reading of each pass to its last, degrees: the same in all passes. */
  drift?: Drawn;
  /** Correlation of a reading's scatter with that of the one before it. */
  correlation?: number;
  /** True travel less recorded travel at zero, mm: of the whole set, and of each pass by its number from 0. */
  heightZero?: Drawn;
  passHeight?: (pass: number, random: () => number) => number;
  /** Heights are written down to so many mm. */
  roundTo?: number;
  /** Shares by which the gauge shows too much, and by which the wheel moved further than the tape says. */
  gaugeScale?: Drawn;
  tapeScale?: Drawn;
  /** Value going up less value coming down, degrees; its shape over a pass. `play` is taken up within 15 mm after each turn. */
  friction?: number;
  frictionShape?: 'constant' | 'loop' | 'play';
}

const figure = (drawn: Drawn = 0, random: () => number) => (typeof drawn === 'number' ? drawn : drawn(random));

/** How far a set of readings reaches, mm, and in how many passes. */
export interface Plan {
  passes: number;
  heights: readonly number[];
  /** Share of heights not read. */
  missing: number;
  /** Whether passes of several may begin late or end early. */
  isPartial: boolean;
}

/**
 * Drawn uniformly: one to five passes, a reading every 2, 5 or 10 mm, from 20 to 65 mm of droop to 50 to 65 mm of bump; up to 30 % of the
 * readings are not taken. Ranges: common practice, no source.
 */
function randomPlan(random: () => number): Plan {
  const between = (least: number, most: number) => least + (most - least) * random();
  const passes = 1 + Math.floor(5 * random());
  const step = [2, 5, 10][Math.floor(3 * random())]!;
  const low = -Math.round(between(20, 65) / step) * step;
  const high = Math.ceil(between(50, 65) / step) * step;
  const missing = between(0, 0.3);
  const heights = Array.from({ length: (high - low) / step + 1 }, (_, i) => low + i * step);
  return { passes, heights, missing, isPartial: true };
}

/** A random three-dimensional linkage measured by a random plan, with the truth that nothing of it knows. */
export function randomSeries(random: () => number, noise: Noise = {}): Series {
  for (;;) {
    const linkage = randomLinkage(random);
    const gauge = noise.gauge ?? [0.03, 0.1];
    const scatter = gauge[0] + (gauge[1] - gauge[0]) * random();
    const plan = randomPlan(random);
    const readings = readingsOf(linkage, plan, scatter, random, noise);
    if (plan.passes < (noise.leastPasses ?? (noise.layout === 'in turn' ? 2 : 1))) continue;
    return { readings, truth: sweepTravel(linkage, [0, ...CHANGES]).camber };
  }
}

/**
 * Readings of a linkage. Half the passes of several begin late or end early, by up to half the heights or two fifths. The zero of each
 * pass is normal with 0.1°, values are written down to 0.01°. What `noise` adds to all readings alike is drawn by itself, so that the
 * same seed gives the same cars.
 *
 * @param scatter of the gauge, degrees
 */
export function readingsOf(
  linkage: ReturnType<typeof buildLinkage>,
  { passes, heights, missing, isPartial }: Plan,
  scatter: number,
  random: () => number,
  noise: Noise,
): Reading[] {
  const { travelError = 1, layout = 'up', correlation = 0, roundTo = 0, passHeight } = noise;
  const extra = randomNumbers(Math.floor(2 ** 32 * random()));
  const scale = 1 + figure(noise.gaugeScale, extra);
  const tape = 1 + figure(noise.tapeScale, extra);
  const heightZero = figure(noise.heightZero, extra);
  const drift = figure(noise.drift, extra);
  const isWayTold = noise.isWayTold ?? (layout === 'in turn' || layout === 'there and back');
  const readings: Reading[] = [];
  for (let pass = 0; pass < passes; pass++) {
    const zero = 0.1 * normal(random);
    const late = random() < 0.5 ? 0 : Math.floor((random() * heights.length) / 2);
    const early = random() < 0.5 ? 0 : Math.floor(random() * heights.length * 0.4);
    const span = passes > 1 && isPartial ? heights.slice(late, heights.length - early) : heights;
    const taken = walk(span, layout, pass, () => random() >= missing);
    const raised = heightZero + (passHeight?.(pass, extra) ?? 0);
    const { camber } = sweepTravel(
      linkage,
      taken.map(({ height }) => tape * height + raised + travelError * normal(random)),
    );
    let wander = normal(random);
    taken.forEach(({ height, going }, i) => {
      if (i > 0) wander = correlation * wander + Math.sqrt(1 - correlation ** 2) * normal(random);
      const lag = friction(noise, height, going, [span[0]!, span.at(-1)!]);
      const drifted = taken.length > 1 ? drift * (i / (taken.length - 1)) : 0;
      const shown = scale * (camber[i]! + zero) + drifted + lag + scatter * wander;
      readings.push({
        travel: roundTo ? Math.round(height / roundTo) * roundTo + 0 : height,
        value: Math.round(100 * shown) / 100,
        pass: `Pass ${pass + 1}`,
        ...(isWayTold && { going }),
        ...(layout === 'return' && i === taken.length - 1 && i > 0 && { again: true as const }),
      });
    });
  }
  return readings;
}

/** The heights of one pass in the order in which they are read. */
function walk(span: readonly number[], layout: Noise['layout'], pass: number, isTaken: () => boolean) {
  const way = (going: 'up' | 'down') => span.filter(isTaken).map((height) => ({ height, going }));
  if (layout === 'in turn' && pass % 2 === 1) return way('down').reverse();
  const up = way('up');
  if (layout === 'there and back') return [...up, ...way('down').reverse()];
  return layout === 'return' && up[0] ? [...up, up[0]] : up;
}

/** mm after a turn, over which play is taken up. */
const PLAY_MM = 15;

function friction(
  { friction: width = 0, frictionShape = 'constant' }: Noise,
  height: number,
  going: 'up' | 'down',
  [low, high]: readonly [number, number],
): number {
  const side = going === 'up' ? width / 2 : -width / 2;
  if (frictionShape === 'constant') return side;
  const x = high > low ? (2 * height - low - high) / (high - low) : 0;
  if (frictionShape === 'loop') return side * (1 - x * x);
  const since = going === 'up' ? height - low : high - height;
  return side * (1 - 2 * Math.exp(-since / (PLAY_MM / 3)));
}
