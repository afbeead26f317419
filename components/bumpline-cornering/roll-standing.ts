import type { StandingAxle } from '../../core/answers/roll-source.js';
import { standingIn } from '../car/rolled-question.js';
import type { CorneringView, TurnOnSheet } from './cornering-view.js';

/** Track, motion ratio and roll centre of the links where the car stands: they stand in for what nobody measured. Asked once a sheet is open. */
export class RollStanding {
  readonly #view: CorneringView;
  #asked: TurnOnSheet['request'] | undefined;
  #found: StandingAxle | undefined;

  constructor(view: CorneringView) {
    this.#view = view;
  }

  /** The last that was found; another answer has it looked for again. */
  get axle(): StandingAxle | undefined {
    const { answer } = this.#view;
    if (answer && answer.request !== this.#asked) {
      this.#asked = answer.request;
      void this.#find(answer.request);
    }
    return this.#found;
  }

  async #find(request: TurnOnSheet['request']): Promise<void> {
    try {
      const found = await standingIn(request, this);
      if (this.#asked !== request) return;
      this.#found = found;
      this.#view.host.requestUpdate();
    } catch {
      // What is wrong with the car is told with its answer; without it nothing stands in.
    }
  }
}
