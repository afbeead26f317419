import type { ReactiveControllerHost } from 'lit';
import { type CompareRequest, compareCurves } from '../../core/answers/compare.js';
import type { Curve } from '../../core/curve/curve.js';
import type { Setup } from '../../core/document/setup.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import type { CarCurves } from '../car/car-curves.js';
import type { SheetAnswers } from '../element/sheet-app.js';
import { compareRequest, requestProblems } from './compare-settings.js';
import type { Answered, NamedCurve } from './compare-view.js';
import { givenCurves, isSame, setCurves } from './compared-curves.js';

export interface Asked {
  /** Of the car that they belong to. */
  curves: CarCurves;
  setups: readonly Setup[];
  /** In their place, from a page's script. */
  given: readonly NamedCurve[] | undefined;
  heights: CompareRequest['heights'];
  over: number;
  solid: number | undefined;
  names: readonly string[];
}

/** Compares at once where the curves are known; else fits them first, in the core of readings. */
export class CompareAnswers implements SheetAnswers<Answered, Asked> {
  answer: Answered | undefined;
  answered: Asked | undefined;
  problems: Problem[] = [];
  fault: string | undefined;
  readonly #host: ReactiveControllerHost;
  readonly #onAnswer: () => void;
  #latest: Asked | undefined;
  #curves: { setups: readonly Setup[]; curves: Curve[] } | undefined;
  #fitting: Promise<void> | undefined;

  constructor(host: ReactiveControllerHost, onAnswer: () => void) {
    this.#host = host;
    this.#onAnswer = onAnswer;
  }

  ask(asked: Asked): void {
    this.#latest = asked;
    if (asked.given || (this.#curves && isSame(this.#curves.setups, asked.setups))) {
      this.#compare(asked);
      return;
    }
    const fitting = this.#fit(asked).finally(() => {
      if (this.#fitting === fitting) this.#fitting = undefined;
      this.#host.requestUpdate();
    });
    this.#fitting = fitting;
  }

  async #fit({ curves: car, setups }: Asked): Promise<void> {
    const isWanted = () => !this.#latest!.given && isSame(setups, this.#latest!.setups);
    try {
      const curves = await setCurves(car, setups);
      // While they were fitted others may have come.
      if (!isWanted()) return;
      this.#curves = { setups, curves };
      this.#compare(this.#latest!);
    } catch (error) {
      if (error instanceof InputError) this.problems = error.problems;
      else this.fault = error instanceof Error ? error.message : String(error);
    }
  }

  #compare(asked: Asked): void {
    const { curves: car, given, heights, over, solid, names } = asked;
    this.fault = undefined;
    try {
      const curves = given ? givenCurves(car, given) : this.#curves!.curves.map((curve) => ({ curve }));
      const request = compareRequest({ curves, heights, over, solid });
      this.answer = { comparison: compareCurves(request), request, names };
      this.answered = asked;
      this.problems = [];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.problems = requestProblems(error);
      return;
    }
    this.#onAnswer();
  }

  async settle(): Promise<void> {
    while (this.#fitting) await this.#fitting;
  }

  /** Half-typed numbers are cells that stay empty: there is nothing to go back to. */
  beginEdit(): void {}
  endEdit(): void {}
}
