import type { BumplineEventMap } from './events.js';

/**
 * What an attribute takes, by the values of its property: text and numbers. A switch is on as soon as it stands there, so most
 * frameworks would switch it on with `false` as well.
 */
export type AttributeOf<Value> = Value extends boolean
  ? true | ''
  : Value extends string | number | undefined
    ? Value
    : never;

/** An event of an element, by its name, with what it carries: the answer is that of the element. */
export type EventOf<Element, Name extends keyof BumplineEventMap<unknown>> = BumplineEventMap<
  Element extends { readonly answer: infer Answer } ? NonNullable<Answer> : unknown
>[Name] & { readonly currentTarget: Element };
