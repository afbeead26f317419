import type { Poses } from '../wheel/gaps.js';
import type { Placed } from '../wheel/placed.js';
import { GapSurface } from '../wheel/tightest.js';
import { gapAlong, type Track, tracksOf } from '../wheel/track.js';
import type { ClearanceAnswer } from './clearance-answer.js';
import { doubtOf, gapOf, leastSure, type Moved } from './clearance-gaps.js';

/** A wheel with one thing changed, and between which travels it is looked at. */
export interface Trial extends Moved {
  readonly range: readonly [number, number];
}

/** A place at a travel and a steer. */
export interface TrialSpot {
  readonly place: number;
  readonly travel: number;
  readonly steer: number;
}

/** What may be missing at a place that was not looked at, mm. */
const MISSING_MM = 0.002;
/** Travels between two pauses. */
const ROWS_A_STEP = 12;

/** Asks of wheels that are changed what the answer asked of the wheel in question: the same places, margins and doubts. */
export class Trials {
  readonly #answer: ClearanceAnswer;
  readonly #places: readonly Placed[];
  readonly #tracks: readonly Track[];
  readonly #poses: Poses;

  /** @param tracks of the places in the answer's own poses */
  constructor(answer: ClearanceAnswer, places: readonly Placed[], tracks: readonly Track[], poses: Poses) {
    this.#answer = answer;
    this.#places = places;
    this.#tracks = tracks;
    this.#poses = poses;
  }

  /** Where each place decides in the answer. */
  get decisive(): TrialSpot[] {
    return this.#answer.places.map(({ decisive: { travel, toe } }, place) => ({ place, travel, steer: toe }));
  }

  /** Whether what was asked for clears at spots, those out of range moved to its end, and where the suspension is solid. */
  isFreeAt(trial: Trial, spots: readonly TrialSpot[]): boolean {
    const [low, high] = trial.range;
    return spots.every(({ place, travel, steer }) =>
      [Math.min(Math.max(travel, low), high), high].every((at) => this.#free(trial, { place, travel: at, steer }) >= 0),
    );
  }

  /**
   * Of every place the tightest spot over the whole travel and steering, and that at the end of travel, where it is not free.
   *
   * @param reach by how much the change moves a gap at most, mm: what is further from the tyre cannot matter
   */
  *spotsNotFree(trial: Trial, reach = Number.POSITIVE_INFINITY): Generator<undefined, TrialSpot[]> {
    const found: TrialSpot[] = [];
    const { travel: travels } = this.#answer;
    const [low, high] = trial.range;
    for (const [place, one] of this.#places.entries()) {
      const { least, worst, decisive } = this.#answer.places[place]!;
      const spare = this.#needed(place) + Math.max(worst.plusMinus, decisive.plusMinus) + reach;
      if (worst.gap > spare && low >= this.#answer.range[0] && high <= this.#answer.range[1]) continue;
      const track = trial.poses === this.#poses ? this.#tracks[place]! : (yield* tracksOf([one], trial.poses))[0]!;
      const surface = new GapSurface(track, trial.envelope);
      const isFar = (travel: number) => least[travels.indexOf(travel)]! > spare;
      let rows = 0;
      for (const travel of travels) {
        if (travel <= low || travel >= high || isFar(travel)) continue;
        surface.leastAt(travel);
        if (++rows % ROWS_A_STEP === 0) yield;
      }
      // Steered, less may be left for certain where the gap is not the smallest.
      const unsure = yield* leastSure(trial, one, trial.range);
      const tightest = [yield* surface.tightest(low, high, isFar), surface.leastAt(high)];
      for (const { travel, steer } of unsure ? [...tightest, unsure] : tightest) {
        const spot = { place, travel, steer };
        if (this.#free(trial, spot) < -MISSING_MM) found.push(spot);
      }
      yield;
    }
    return found;
  }

  #needed(place: number): number {
    return this.#answer.places[place]!.margin + this.#answer.allowance;
  }

  /** What is left at a spot beyond all that must stay free, mm. */
  #free(trial: Trial, { place, travel, steer }: TrialSpot): number {
    const one = this.#places[place]!;
    const gap =
      trial.poses === this.#poses
        ? gapAlong(this.#tracks[place]!, trial.envelope, travel, steer)
        : gapOf(trial, one, travel, steer);
    return gap - this.#needed(place) - doubtOf(trial, one, travel, steer);
  }
}
