import type { PredictMore } from '../../core/answers/predict.js';
import { learn } from '../../core/worker/layers/learn.generated.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import type { PredictOnSheet, PredictView } from './predict-view.js';

interface Request {
  answer: PredictOnSheet;
}

const ask = askCore('predictMore', [learn]);

/** What the sentence does not need: the car as it is, roll centres, the next best measurement. Asked once the sentence stands. */
export class More {
  readonly #view: PredictView;
  readonly #answers: AnswerController<PredictMore, Request>;
  #asked: Request | undefined;

  constructor(view: PredictView) {
    const { host } = view;
    this.#view = view;
    this.#answers = new AnswerController<PredictMore, Request>(
      host,
      ({ answer: { source, set, drop, measuredAt, over, quantity } }, options) => {
        const { parts = [], alignment } = set?.setup ?? {};
        return ask({ source, parts, drop, measuredAt, over, quantity, ...(alignment && { alignment }) }, options);
      },
      () => host.requestUpdate(),
    );
  }

  ask(): void {
    const { answer } = this.#view;
    if (!answer || this.#asked?.answer === answer) return;
    this.#asked = { answer };
    this.#answers.ask(this.#asked);
  }

  /** Of the answer on the sheet. */
  get found(): PredictMore | undefined {
    const { answer, answered } = this.#answers;
    return answered && answered === this.#asked ? answer : undefined;
  }

  /** The curve without parts: that of the same links and readings, whatever parts and drop are asked about. */
  get stock(): PredictMore['stockCurve'] | undefined {
    const { answer, answered } = this.#answers;
    const now = this.#view.answer;
    const isOf = answered?.answer.source === now?.source && answered?.answer.quantity === now?.quantity;
    return isOf ? answer?.stockCurve : undefined;
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
