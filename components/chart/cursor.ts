import { afterNextFrame } from '../element/next-task.js';

/** Called once a frame with the newest travel, mm from reference height, bump positive, and who moved it. */
export type CursorListener = (travel: number, by: string) => void;

/** Who moves it with a new answer. What follows the cursor then comes a frame later: the frame of the input is the sentence's. */
export const BY_ANSWER = 'answer';

/**
 * One travel shared by drawing, chart and table. It is no reactive property on purpose: moving it re-renders no element,
 * each view moves its own mark. However often it is set, listeners hear of it once an animation frame, as a `change` event.
 */
export class Cursor extends EventTarget {
  #travel: number;
  #announced: number;
  #by = '';
  #isComing = false;

  /** @param travel mm from reference height, bump positive. */
  constructor(travel = 0) {
    super();
    this.#travel = travel;
    this.#announced = travel;
  }

  /** mm from reference height, bump positive. */
  get travel(): number {
    return this.#travel;
  }

  /** Who set it last, e.g. `chart`, so that a view can ignore its own echo. */
  get by(): string {
    return this.#by;
  }

  /** Moves the cursor; a travel that is no finite number is ignored, because no view could show it. */
  set(travel: number, by: string): void {
    if (!Number.isFinite(travel) || travel === this.#travel) return;
    this.#travel = travel;
    this.#by = by;
    if (this.#isComing) return;
    this.#isComing = true;
    if (by === BY_ANSWER) afterNextFrame(this.#announce);
    else requestAnimationFrame(this.#announce);
  }

  readonly #announce = (): void => {
    this.#isComing = false;
    if (this.#travel === this.#announced) return;
    this.#announced = this.#travel;
    this.dispatchEvent(new Event('change'));
  };

  /** Listens to `change`; gives back the function that stops it. */
  subscribe(listener: CursorListener): () => void {
    const heard = () => listener(this.#travel, this.#by);
    this.addEventListener('change', heard);
    return () => this.removeEventListener('change', heard);
  }
}
