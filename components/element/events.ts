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

declare global {
  interface HTMLElementEventMap {
    'bumpline-change': BumplineChangeEvent;
    'bumpline-answer': BumplineAnswerEvent<unknown>;
  }
}
