import type { WordsOf } from '../../core/quantity/words.js';
import { words } from '../../core/quantity/words.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = words('toe/first', {
  title: 'How much the wheel steers itself',
  drop: 'Drop',
  over: 'Wheel travel',
  overEdit: 'Ask over another wheel travel',
  opening: 'Over ',
  bumpFrom: ' of bump from ',
  droopFrom: ' of droop from ',
  stock: ' below stock height',
  lower: ' lower',
  higher: ' higher',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Last answer: over {over}, {drop} {way}',
  step: 'drop {drop}',
  overStep: 'wheel travel',
  chosen: 'the set that is on',
  spoken: 'Over {over}{from}{drop}{way}{rest}',
  one: ', {wheel} turns {way} by {change}{across}{steering}.',
  both: ', both wheels together turn {way} by {change}{across}{steering}.',
  flat: ', {wheel} turns by {change}, too little to tell from zero.',
  bothFlat: ', both wheels together turn by {change}, too little to tell from zero.',
  this: 'this wheel',
  withSet: 'with “{set}” this wheel',
  in: 'in',
  out: 'out',
  across: ' ({length} at {diameter})',
  steering: ', as much as turning the steering wheel by {angle}',
  missing: ' But {count} points of this are still {whose}.',
  missingOne: ' But 1 point of this is still {whose}.',
  isMissing: 'Toe is not known yet: measure it, or enter the hard points of the tie rod and the links.',
});

export type FirstWords = WordsOf<typeof FIRST>;
