import type { Linkage } from './linkage.js';
import { toeOver } from './rod-ends.js';

/** Cubic pieces this long follow a linkage to better than 1e-6 degrees. */
const STEP_MM = 2.5;

/** Toe over the travels around a ride height, of one linkage after another in the same arrays. */
export class ToeWindow {
  /** mm, ascending, evenly spaced either side of the ride height, an even number of steps each. */
  readonly travel: Float64Array;
  /** Place of the ride height among them. */
  readonly home: number;
  /** Toe-in, degrees, and its rate, degrees per mm; what was swept last. */
  readonly toe: Float64Array;
  readonly rate: Float64Array;

  /** @param window mm from `at`; holds 0 */
  constructor(at: number, [low, high]: readonly [number, number]) {
    const steps = [low, high].map((end) => 2 * Math.ceil(Math.abs(end) / (2 * STEP_MM))) as [number, number];
    this.home = steps[0];
    this.travel = Float64Array.from({ length: steps[0] + steps[1] + 1 }, (_, i) => {
      const from = i - this.home;
      if (from === 0) return at;
      return at + (from < 0 ? (-from / steps[0]) * low : (from / steps[1]) * high);
    });
    this.toe = new Float64Array(this.travel.length);
    this.rate = this.toe.slice();
  }

  /** @returns whether all of the window can be driven */
  sweep(linkage: Linkage): boolean {
    return toeOver(linkage, this.travel, this.home, this.toe, this.rate);
  }

  /** Peak-to-peak change of toe, degrees, turning points between the travels among it: of cubic pieces by value and rate. */
  get spread(): number {
    const { travel, toe, rate } = this;
    let [least, most] = [toe[0]!, toe[0]!];
    const take = (value: number) => {
      least = Math.min(least, value);
      most = Math.max(most, value);
    };
    for (let i = 1; i < travel.length; i++) {
      const length = travel[i]! - travel[i - 1]!;
      const [start, step] = [toe[i - 1]!, toe[i]! - toe[i - 1]!];
      const [first, last] = [length * rate[i - 1]!, length * rate[i]!];
      take(toe[i]!);
      // Only a piece that turns over has a turning point inside.
      if (first * last > 0 && first * step > 0) continue;
      // p(t) = start + first t + b t² + a t³; its derivative is zero at the roots of 3a t² + 2b t + first.
      const [a, b] = [first + last - 2 * step, 3 * step - 2 * first - last];
      const inside = b * b - 3 * a * first;
      if (!(inside > 0)) continue;
      const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inside));
      for (const t of [half / (3 * a), first / half]) {
        if (t > 0 && t < 1) take(start + t * (first + t * (b + t * a)));
      }
    }
    return most - least;
  }

  /** Mean square of the change from the ride height, degrees², by Simpson's rule. */
  get square(): number {
    const { travel, toe, home } = this;
    let sum = 0;
    for (let i = 2; i < travel.length; i += 2) {
      const [a, b, c] = [toe[i - 2]! - toe[home]!, toe[i - 1]! - toe[home]!, toe[i]! - toe[home]!];
      sum += ((travel[i]! - travel[i - 2]!) / 6) * (a * a + 4 * b * b + c * c);
    }
    return sum / (travel[travel.length - 1]! - travel[0]!);
  }
}
