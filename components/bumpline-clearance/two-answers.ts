import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import type { Problem } from '../../core/quantity/problem.js';
import { AnswerController } from '../element/answer-controller.js';
import { nextTask } from '../element/next-task.js';
import { type Asked, knownMotion, STEERED, SWEPT } from './clearance-question.js';

/** A pause in a drag after which is looked for what would just clear, ms. */
const STEERED_AFTER_MS = 160;
/** A rest after the first answer, for what else the page has to draw, ms. */
const PREPARED_AFTER_MS = 600;

/**
 * The answer with what would just clear; while something is dragged the same without that, at once, and the whole one follows when the
 * drag pauses. Both are by one function over the whole steering: no verdict changes when the thumb rests.
 */
export class TwoAnswers implements ReactiveController {
  readonly #swept: AnswerController<DrawnClearance, Asked>;
  readonly #whole: AnswerController<DrawnClearance, Asked>;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #latest: Asked | undefined;
  #preparing: ReturnType<typeof setTimeout> | undefined;
  /** From the first step of a drag until its end is answered whole. */
  #isAfterDrag = false;
  /** While something is dragged. */
  isDragged = false;

  /**
   * @param onAnswer an answer came that is shown
   * @param onFallBack the answer from before an edit stands again
   */
  constructor(host: ReactiveControllerHost, onAnswer: () => void, onFallBack: () => void) {
    this.#swept = new AnswerController(host, SWEPT, () => {
      if (this.#shown === this.#swept) onAnswer();
    });
    this.#whole = new AnswerController(
      host,
      STEERED,
      () => {
        if (this.isWhole) this.#isAfterDrag = false;
        this.#prepare(this.#whole.answered!);
        onAnswer();
      },
      onFallBack,
    );
    host.addController(this);
  }

  /** The motion and the code of a drag come while nobody drags yet: the first step would wait for them. */
  #prepare(request: Asked): void {
    clearTimeout(this.#preparing);
    if (knownMotion(request)) return;
    const isNewest = () => this.#latest === request;
    // A place a task: the first of them runs code that never ran before.
    const swept = async () => {
      const parts = request.places.length > 0 ? request.places.map((place) => [place]) : [[]];
      for (const places of parts) {
        if (!isNewest()) return;
        await SWEPT({ ...request, places }, { slot: {}, isNewest });
        await nextTask();
      }
    };
    // What is wrong is told where it is asked.
    this.#preparing = setTimeout(() => void swept().catch(() => {}), PREPARED_AFTER_MS);
  }

  hostDisconnected(): void {
    clearTimeout(this.#preparing);
  }

  ask(request: Asked): void {
    const { isDragged } = this;
    this.#latest = request;
    this.#isAfterDrag ||= isDragged;
    clearTimeout(this.#timer);
    const askWhole = () => {
      this.#timer = undefined;
      this.#whole.ask(request);
    };
    if (!isDragged) {
      askWhole();
      return;
    }
    this.#swept.ask(request);
    this.#timer = setTimeout(askWhole, STEERED_AFTER_MS);
  }

  /** Whether what is shown is the whole answer to what was asked last. */
  get isWhole(): boolean {
    return this.#latest !== undefined && this.#whole.answered === this.#latest;
  }

  get #shown() {
    return this.#isAfterDrag && !this.isWhole && this.#swept.answer ? this.#swept : this.#whole;
  }

  get answer(): DrawnClearance | undefined {
    return this.#shown.answer;
  }

  /** The request that it belongs to. */
  get answered(): Asked | undefined {
    return this.#shown.answered;
  }

  get problems(): Problem[] {
    return this.#shown.problems;
  }

  get fault(): string | undefined {
    return this.#shown.fault;
  }

  async settle(): Promise<void> {
    await this.#swept.settle();
    while (this.#timer !== undefined) await new Promise((resolve) => setTimeout(resolve, STEERED_AFTER_MS / 4));
    await this.#whole.settle();
  }

  beginEdit(): void {
    this.#whole.beginEdit();
  }

  endEdit(): void {
    this.#whole.endEdit();
  }
}
