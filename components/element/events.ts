import type { Problem } from '../../core/quantity/problem.js';

/** A reader changed something. */
export class BumplineChangeEvent extends Event {
  /** What was changed: `drop`, `over`, `readings`, a hard point such as `lowerArm.ball` … */
  readonly path: string;
  /** What it is now, lengths in mm and angles in degrees; undefined when it was taken back. */
  readonly value: unknown;
  constructor(path: string, value: unknown) {
    super('bumpline-change', { bubbles: true, composed: true });
    this.path = path;
    this.value = value;
  }
}

/** A new answer stands on the sheet. */
export class BumplineAnswerEvent<A> extends Event {
  /** Lengths in mm, angles in degrees. */
  readonly answer: A;
  constructor(answer: A) {
    super('bumpline-answer', { bubbles: true, composed: true });
    this.answer = answer;
  }
}

/** What is wrong has changed: with your data, with what was typed, or with the program. */
export class BumplineProblemEvent extends Event {
  /** All that is wrong now; none left when all of it is mended. */
  readonly problems: readonly Problem[];
  /** Undefined unless the program failed: then what it said. */
  readonly fault: string | undefined;
  constructor(problems: readonly Problem[], fault?: string) {
    super('bumpline-problem', { bubbles: true, composed: true });
    this.problems = problems;
    this.fault = fault;
  }
}

/** The events of an element whose answer is an `A`. */
export interface BumplineEventMap<A> extends HTMLElementEventMap {
  'bumpline-answer': BumplineAnswerEvent<A>;
}

declare global {
  // They bubble and are composed: whoever listens on the document or the window hears them too.
  interface GlobalEventHandlersEventMap {
    'bumpline-problem': BumplineProblemEvent;
    'bumpline-change': BumplineChangeEvent;
    'bumpline-answer': BumplineAnswerEvent<unknown>;
  }
}
