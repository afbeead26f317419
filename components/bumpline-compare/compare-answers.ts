import type { ReactiveControllerHost } from 'lit';
import { type CompareRequest, compareCurves } from '../../core/answers/compare.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import type { CarCurves } from '../car/car-curves.js';
import type { SheetAnswers } from '../element/sheet-app.js';
import { compareRequest, requestProblems } from './compare-settings.js';
import type { Answered, NamedCurve } from './compare-view.js';
import type { ComparedCurves } from './compared-curves.js';

export interface Asked {
  /** Of the car. */
  curves: ComparedCurves;
  /** What they depend on, and whether the user's own curve is among them. */
  keys: readonly unknown[];
  hasOwn: boolean;
  /** In their place, from a page's script. */
  given: readonly NamedCurve[] | undefined;
  made: CarCurves;
  heights: CompareRequest['heights'];
  over: number;
  solid: number | undefined;
}

/** Compares at once where the curves are known; else has them solved first, or what checks them fetched. */
export class CompareAnswers implements SheetAnswers<Answered, Asked> {
  answer: Answered | undefined;
  answered: Asked | undefined;
  problems: Problem[] = [];
  fault: string | undefined;
  readonly #host: ReactiveControllerHost;
  readonly #onAnswer: () => void;
  #latest: Asked | undefined;
  #fitting: Promise<void> | undefined;
  /** Fetched only where a page's script gives curves. */
  #check: typeof import('./given-curves.js').givenCurves | undefined;

  constructor(host: ReactiveControllerHost, onAnswer: () => void) {
    this.#host = host;
    this.#onAnswer = onAnswer;
  }

  ask(asked: Asked): void {
    this.#latest = asked;
    if (asked.given ? this.#check : asked.curves.known) {
      this.#compare(asked);
      return;
    }
    const fitting = this.#fit(asked).finally(() => {
      if (this.#fitting === fitting) this.#fitting = undefined;
      this.#host.requestUpdate();
    });
    this.#fitting = fitting;
  }

  async #fit({ curves, given }: Asked): Promise<void> {
    try {
      if (given) this.#check = (await import('./given-curves.js')).givenCurves;
      else await curves.solve();
      // While they were solved or fetched others may have come.
      const latest = this.#latest!;
      if (!latest.given !== !given || !(given || curves.known)) return;
      this.#compare(latest);
    } catch (error) {
      if (error instanceof InputError) this.problems = error.problems;
      else this.fault = error instanceof Error ? error.message : String(error);
    }
  }

  #compare(asked: Asked): void {
    const { curves: ofCar, made, given, heights, over, solid } = asked;
    this.fault = undefined;
    try {
      const curves = given ? this.#check!(made, given) : ofCar.curves;
      const rows = given ?? ofCar.compared.rows;
      const request = compareRequest({ curves, heights, over, solid });
      const own = given ? -1 : ofCar.compared.rows.findIndex((row) => row.own);
      const names = rows.map(({ name }) => name);
      this.answer = { comparison: compareCurves(request), request, names, own };
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
