import { least } from '../math/least.js';
import type { Envelope } from './gaps.js';
import { gapAlong, gapAtSample, type Track } from './track.js';

/** A place in a motion: travel, mm, and steer, degrees, with the gap there. */
export interface Spot {
  travel: number;
  steer: number;
  gap: number;
}

/** Dips of one travel over the steering, and the lowest of them. */
interface Row {
  travel: number;
  dips: readonly Spot[];
  least: Spot;
}

/** A dip between two samples may be so much deeper than both: a shoulder's corner goes by between two rack positions. */
const DEEPER_MM = 3;
/** The same between two travels, which are nearer to each other. */
const DEEPER_OVER_TRAVEL_MM = 2;
/** So near the steer, degrees, and the travel, mm, of a dip are sought: round at its bottom, its gap is then known to some ten-thousandths. */
const NEAR = 0.03;
/** Inside of the tyre, where two ways out are alike, it is a notch. */
const NEAR_INSIDE = 0.001;
const nearOf = (gap: number): number => (gap < 0 ? NEAR_INSIDE : NEAR);
/** Dips that are followed between travels, the deepest first. */
const FOLLOWED = 12;
/** Gaps nearer to each other than this are equal: what goes with the wheel has the same all the way. */
const EQUAL_MM = 1e-6;

/**
 * The gap of one place to one wheel over travel and steering. The lowest of the samples is not the lowest there is: each dip of
 * the samples is followed between them. A distance to a convex body along a straight way has one dip; a way about the kingpin is
 * nearly straight over some degrees, so that a dip shows in the samples on both its sides.
 */
export class GapSurface {
  readonly #track: Track;
  readonly #envelope: Envelope;
  /** Of the motion's own travels by index, and of others. */
  readonly #rows: Row[] = [];
  readonly #others = new Map<number, Row>();
  /** The widest step of the steering, degrees, and its ends. */
  readonly #step: number;
  readonly #locks: readonly [number, number];

  constructor(track: Track, envelope: Envelope) {
    this.#track = track;
    this.#envelope = envelope;
    const { toe } = track.motion;
    let widest = 0;
    for (let j = 1; j < toe.length; j++) widest = Math.max(widest, Math.abs(toe[j]! - toe[j - 1]!));
    this.#step = widest;
    const [first, last] = [toe[0]!, toe.at(-1)!];
    this.#locks = first < last ? [first, last] : [last, first];
  }

  at(travel: number, steer: number): number {
    return gapAlong(this.#track, this.#envelope, travel, steer);
  }

  /** The smallest over the steering at a travel; its gap is NaN where the links reach nowhere. */
  leastAt(travel: number): Spot {
    return this.#row(travel).least;
  }

  /** The smallest between two travels, both included, a dip a step. Where it is the same all the way, at the last. */
  *tightest(
    from: number,
    to: number,
    isSkipped: (travel: number) => boolean = () => false,
  ): Generator<undefined, Spot> {
    const rows = [this.#row(from)];
    for (const travel of this.#track.motion.travel) {
      if (travel > from && travel < to && !isSkipped(travel)) rows.push(this.#row(travel));
    }
    rows.push(this.#row(to));
    let best = this.leastAt(to);
    for (const { least: here } of rows) {
      if (here.gap < best.gap - EQUAL_MM || (Number.isNaN(best.gap) && !Number.isNaN(here.gap))) best = here;
    }
    const near: { dip: Spot; i: number }[] = [];
    rows.forEach(({ dips }, i) => {
      for (const dip of dips) {
        if (dip.gap >= best.gap + DEEPER_OVER_TRAVEL_MM) continue;
        if (this.#isDip(dip, rows[i - 1]) && this.#isDip(dip, rows[i + 1])) near.push({ dip, i });
      }
    });
    near.sort((a, b) => a.dip.gap - b.dip.gap);
    for (const { dip, i } of near.slice(0, FOLLOWED)) {
      const found = this.#follow(dip, rows[i - 1]?.travel ?? from, rows[i + 1]?.travel ?? to);
      if (found.gap < best.gap - EQUAL_MM) best = found;
      yield;
    }
    return best;
  }

  #row(travel: number): Row {
    const index = this.#track.motion.travel.indexOf(travel);
    let row = index < 0 ? this.#others.get(travel) : this.#rows[index];
    if (!row) {
      const dips = this.#dipsAt(travel, index);
      let least: Spot = dips[0] ?? { travel, steer: Number.NaN, gap: Number.NaN };
      for (const dip of dips) if (dip.gap < least.gap) least = dip;
      row = { travel, dips, least };
      if (index < 0) this.#others.set(travel, row);
      else this.#rows[index] = row;
    }
    return row;
  }

  /** @param index of the travel among the motion's own; −1: between them */
  #dipsAt(travel: number, index: number): Spot[] {
    const { toe } = this.#track.motion;
    const count = toe.length;
    const gaps = new Float64Array(count);
    let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let j = 0; j < count; j++) {
      const gap = index < 0 ? this.at(travel, toe[j]!) : gapAtSample(this.#track, this.#envelope, index * count + j);
      gaps[j] = gap;
      if (gap < lowest) lowest = gap;
      if (gap > highest) highest = gap;
    }
    if (lowest === Number.POSITIVE_INFINITY) return [];
    // Where all are equal one says it: straight ahead.
    if (highest - lowest < EQUAL_MM && !Number.isNaN(gaps[count >> 1]!)) {
      return [{ travel, steer: toe[count >> 1]!, gap: gaps[count >> 1]! }];
    }
    const dips: Spot[] = [];
    for (let j = 0; j < count; j++) {
      const gap = gaps[j]!;
      // What the links do not reach is no number, and so neither low nor lower.
      if (gap <= lowest + DEEPER_MM && !(gaps[j - 1]! < gap) && !(gaps[j + 1]! < gap)) {
        dips.push(this.#deepen(travel, j, gaps));
      }
    }
    return dips;
  }

  /** From the lowest of three samples over the steering to the lowest between the outer two. */
  #deepen(travel: number, j: number, gaps: Float64Array): Spot {
    const { toe } = this.#track.motion;
    const sample = { travel, steer: toe[j]!, gap: gaps[j]! };
    const end = (k: number) => (Number.isNaN(gaps[k] ?? Number.NaN) ? sample.steer : toe[k]!);
    const [from, to] = [end(j - 1), end(j + 1)];
    if (from === to) return sample;
    const { x, value } = least((steer) => this.at(travel, steer), from, to, nearOf(sample.gap));
    return value < sample.gap ? { travel, steer: x, gap: value } : sample;
  }

  /** Whether no dip beside it in another row is lower. */
  #isDip({ steer, gap }: Spot, row: Row | undefined): boolean {
    return !row?.dips.some((other) => Math.abs(other.steer - steer) <= this.#step && other.gap < gap);
  }

  /** From a dip of one travel down to the lowest about it. */
  #follow(dip: Spot, from: number, to: number): Spot {
    const near = nearOf(dip.gap);
    const [low, high] = [
      Math.max(this.#locks[0], dip.steer - this.#step),
      Math.min(this.#locks[1], dip.steer + this.#step),
    ];
    const across = (travel: number): Spot => {
      let best = { travel, steer: low, gap: this.at(travel, low) };
      if (low === high) return best;
      const atHigh = this.at(travel, high);
      if (atHigh < best.gap) best = { travel, steer: high, gap: atHigh };
      const { x, value } = least((steer) => this.at(travel, steer), low, high, near);
      return value < best.gap ? { travel, steer: x, gap: value } : best;
    };
    const found = across(least((travel) => across(travel).gap, from, to, near).x);
    return found.gap < dip.gap ? found : dip;
  }
}
