import type { BumplineAnswerEvent, BumplineLowering, BumplineToe } from 'bumpline';
import type { RefObject } from 'react';

declare const toe: RefObject<BumplineToe>;
declare const lowering: BumplineLowering;
declare const number: (value: number) => void;

/** None of these may pass the type check. */
export const wrong = [
  // @ts-expect-error: lengths are in mm or in
  <bumpline-lowering key={0} units="cm" />,
  // @ts-expect-error: a drop is a number of millimetres or a text
  <bumpline-lowering key={1} drop={{}} />,
  // @ts-expect-error: a property that is no attribute
  <bumpline-lowering key={2} corner={{}} />,
  // @ts-expect-error: an attribute by the name of its property
  <bumpline-lowering key={3} bumpTravel={62} />,
  // @ts-expect-error: an object in an attribute
  <bumpline-clearance key={4} limits={{}} />,
  // @ts-expect-error: React 18 writes it as an attribute, and a switch that stands there is on
  <bumpline-lowering key={5} keep-in-address={false} />,
  // @ts-expect-error: React 18 hears no such event
  <bumpline-lowering key={6} onbumpline-answer={() => undefined} />,
  // @ts-expect-error: React 18 does not make a class of it here
  <bumpline-lowering key={7} className="wide" />,
  // @ts-expect-error: it refers to another element
  <bumpline-lowering key={8} ref={toe} />,
  // @ts-expect-error: there is no such element
  <bumpline-height key={9} />,
];

// @ts-expect-error: a drop is a number of millimetres or a text
lowering.drop = {};
// @ts-expect-error: the answer has no such number
lowering.addEventListener('bumpline-answer', (event) => number(event.answer.toe.value));
// @ts-expect-error: it answers something else
lowering.addEventListener('bumpline-answer', (event: BumplineAnswerEvent<{ gaps: number[] }>) => event);
