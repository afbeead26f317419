import type { ReactiveControllerHost } from 'lit';
import { AnswerController } from '../element/answer-controller.js';
import { type Asked, fetchDoubts, GEOMETRY, isDoubtKnown } from './geometry-question.js';
import type { WorkbenchAnswer } from './geometry-view.js';

/**
 * Keeps the element's question answered: the curves first, so that a drag has them in its own frame, and how far they can be trusted once
 * it rests. The first answer waits for both.
 */
export class GeometryAnswers extends AnswerController<WorkbenchAnswer, Asked> {
  #latest: Asked | undefined;
  #coming: Promise<void> | undefined;

  constructor(host: ReactiveControllerHost, onAnswer: () => void, onFallBack: () => void) {
    super(host, GEOMETRY, onAnswer, onFallBack);
  }

  override ask(request: Asked): void {
    this.#latest = request;
    super.ask(request);
    if (isDoubtKnown(request)) return;
    const coming = this.#fetch(request).finally(() => {
      if (this.#coming === coming) this.#coming = undefined;
    });
    this.#coming = coming;
  }

  async #fetch(request: Asked): Promise<void> {
    await super.settle();
    const isAsked = () => request === this.#latest && request === this.answered;
    if (!isAsked() || isDoubtKnown(request)) return;
    await fetchDoubts(request, this);
    if (!isAsked() || !isDoubtKnown(request)) return;
    super.ask(request);
    await super.settle();
  }

  override async settle(): Promise<void> {
    while (this.#coming) await this.#coming;
    await super.settle();
  }
}
