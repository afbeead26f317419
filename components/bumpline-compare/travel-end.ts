import { type CarDocument, limitsOf } from '../../core/document/car.js';
import { InputError } from '../../core/quantity/problem.js';
import { inTime } from '../delivery/in-time.js';
import { solidOf } from './compare-settings.js';

/** Where bump travel ends. What reckons with a stop and other limits comes only for a car that has some. */
export class TravelEnd {
  readonly #came: () => void;
  #solidTravel: ((car: CarDocument) => number | undefined) | undefined;
  /** Resolves when what reckons with limits is there, where it was wanted. Never rejects. */
  coming: Promise<void> | undefined;

  constructor(came: () => void) {
    this.#came = came;
  }

  /** Travel from stock height, mm; undefined where nothing is known of it. */
  of(car: CarDocument): number | undefined {
    const { stopGap, limits = {} } = limitsOf(car);
    const hasLimits = stopGap !== undefined || Object.keys(limits).length > 0;
    // What dampers are lowered with moves along: no one travel is its end.
    if (!hasLimits || car.lowered === 'dampers') return solidOf(car);
    if (!this.#solidTravel) {
      this.coming ??= this.#fetch();
      return solidOf(car);
    }
    try {
      return this.#solidTravel(car);
    } catch (error) {
      // Told where the limits are given; here less is known.
      if (error instanceof InputError) return solidOf(car);
      throw error;
    }
  }

  async #fetch(): Promise<void> {
    try {
      this.#solidTravel = (await inTime(import('./travel-solid.js'))).solidTravel;
      this.#came();
    } catch (error) {
      // Asked for again with the next question.
      this.coming = undefined;
      console.warn('Bumpline: the limits of travel could not be reckoned with.', error);
    }
  }
}
