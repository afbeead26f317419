import type { AgreementAnswer, AgreementRequest } from '../../core/answers/agreement.js';
import { predictionOf } from '../../core/answers/prediction-of.js';
import { type Prediction, predictionFor } from '../../core/document/predictions.js';
import type { Setup } from '../../core/document/setup.js';
import { readingsInUse } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { VERSION } from '../../core/version.js';
import { learn } from '../../core/worker/layers/learn.generated.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import { LastMade } from '../element/last-made.js';
import type { Agreed, PredictOnSheet, PredictView } from './predict-view.js';

interface Request extends AgreementRequest {
  kept: Prediction;
}

const ask = askCore('agreement', [learn]);

/** What was read with the parts on, laid over what was predicted of them: asked beside the element's own question. */
export class Agreement {
  readonly #view: PredictView;
  readonly #answers: AnswerController<AgreementAnswer, Request>;
  readonly #made = new LastMade<Request | undefined>();
  readonly #agreed = new LastMade<Agreed>();
  #asked: Request | undefined;

  constructor(view: PredictView) {
    this.#view = view;
    this.#answers = new AnswerController<AgreementAnswer, Request>(
      view.host,
      ({ kept: _, ...request }, options) => ask(request, options),
      () => view.host.requestUpdate(),
    );
  }

  /** The set that was asked about, where it was read with its parts on. */
  get #read(): Setup | undefined {
    const { answer, car } = this.#view;
    const setup = answer?.set?.setup;
    // What the answer was made from may have been taken back since.
    return setup && setup.readings.length > 0 && car.setups?.includes(setup) && setup.quantity === answer.quantity
      ? setup
      : undefined;
  }

  /** What was kept before; else what would be kept now. */
  predictionOf(answer: PredictOnSheet, setup: Setup, made: string): Prediction {
    return predictionOf(answer, setup, this.#view.answeredCar, { made, version: VERSION });
  }

  get kept(): Prediction | undefined {
    const { answer, car } = this.#view;
    return answer?.set && predictionFor(car, answer.set.setup, answer.quantity);
  }

  /** Asks about what stands on the sheet now. */
  ask(): void {
    const { answer } = this.#view;
    const setup = this.#read;
    const request = this.#made.of([answer, setup, this.kept], () => {
      if (!answer || !setup) return undefined;
      const kept = this.kept ?? this.predictionOf(answer, setup, '2000-01-01');
      const { doubts, zeroAt } = setup;
      return {
        kept,
        prediction: kept,
        readings: readingsInUse(setup),
        ...(doubts && { doubts }),
        ...(zeroAt !== undefined && { zeroAt }),
        // Either from stock height, or from where the car stood as it was predicted.
        orZeroAt: zeroAt ? 0 : kept.drop,
      };
    });
    if (request === this.#asked) return;
    this.#asked = request;
    if (request) this.#answers.ask(request);
  }

  /** Of what stands on the sheet; undefined where there is nothing to compare, or not yet. */
  get found(): Agreed | undefined {
    const { answer, answered } = this.#answers;
    if (!this.#asked || !answer || answered !== this.#asked) return undefined;
    return this.#agreed.of([answer, answered], () => {
      const { kept } = answered;
      return {
        ...answer,
        prediction: kept,
        from: Float64Array.from(kept.change, (_, i) => kept.start + i * kept.step),
        predicted: Float64Array.from(kept.change),
      };
    });
  }

  get isComing(): boolean {
    return this.#asked !== undefined && this.#answers.answered !== this.#asked && this.problems.length === 0;
  }

  get problems(): readonly Problem[] {
    return this.#asked && !this.found ? this.#answers.problems : [];
  }

  settle(): Promise<void> {
    return this.#answers.settle();
  }

  retry(): void {
    if (!this.#answers.fault) return;
    this.#asked = undefined;
    this.ask();
  }
}
