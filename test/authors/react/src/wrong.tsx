import type { BumplineAnswerEvent, BumplineToe } from 'bumpline';
import type { RefObject } from 'react';

declare const toe: RefObject<BumplineToe>;
declare const number: (value: number) => void;

/** None of these may pass the type check. */
export const wrong = [
  // @ts-expect-error: lengths are in mm or in
  <bumpline-lowering key={0} units="cm" />,
  // @ts-expect-error: a drop is a number of millimetres or a text
  <bumpline-lowering key={1} drop={{}} />,
  // @ts-expect-error: so is what stands under the attribute's name
  <bumpline-lowering key={2} bump-travel={{}} />,
  // @ts-expect-error: there is no such property
  <bumpline-lowering key={3} lowered={30} />,
  // @ts-expect-error: what an element says cannot be set
  <bumpline-lowering key={4} answer={undefined} />,
  // @ts-expect-error: a car is no text
  <bumpline-car key={5} car="example" />,
  // @ts-expect-error: the answer has no such number
  <bumpline-lowering key={6} onbumpline-answer={(event) => number(event.answer.toe.value)} />,
  // @ts-expect-error: another element answers something else
  <bumpline-toe key={7} onbumpline-answer={(event: BumplineAnswerEvent<{ gaps: number[] }>) => event} />,
  // @ts-expect-error: a path is a text
  <bumpline-toe key={8} onbumpline-change={(event) => number(event.path)} />,
  // @ts-expect-error: it refers to another element
  <bumpline-lowering key={9} ref={toe} />,
  // @ts-expect-error: there is no such element
  <bumpline-height key={10} />,
];
