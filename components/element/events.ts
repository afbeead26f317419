import type { Problem } from '../../core/quantity/problem.js';

/** Something a user changed: the path of the value and the value in mm or degrees; undefined when it was taken back. */
export class BumplineChangeEvent extends Event {
  readonly path: string;
  readonly value: unknown;
  constructor(path: string, value: unknown) {
    super('bumpline-change', { bubbles: true, composed: true });
    this.path = path;
    this.value = value;
  }
}

/** A new answer stands on the sheet. */
export class BumplineAnswerEvent<A> extends Event {
  readonly answer: A;
  constructor(answer: A) {
    super('bumpline-answer', { bubbles: true, composed: true });
    this.answer = answer;
  }
}

/** What is wrong has changed: with the page's data, with what was typed, or with the program (`fault`). None left: all of it is mended. */
export class BumplineProblemEvent extends Event {
  readonly problems: readonly Problem[];
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
