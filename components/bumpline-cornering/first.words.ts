import type { WordsOf } from '../../core/quantity/words.js';
import { words } from '../../core/quantity/words.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = words('cornering/first', {
  title: 'What the tyres see in a turn',
  drop: 'Drop',
  roll: 'Body roll on the springs',
  rollEdit: 'Change the roll',
  rollStep: 'body roll',
  opening: 'With ',
  lateral: 'Lateral acceleration',
  lateralEdit: 'Change the lateral acceleration',
  lateralStep: 'lateral acceleration',
  at: 'At ',
  rolls: ', which rolls the body by {roll}, ',
  rollsUnknown: ', ',
  beforeAt: 'Last answer: at {lateral}, {roll} of roll, {drop} {way}',
  ofRoll: ' of body roll, ',
  stock: ' below stock height',
  lower: ' lower',
  higher: ' higher',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Last answer: {roll} of roll, {drop} {way}',
  step: 'drop {drop}',
  chosen: 'the set that is on',
  spoken: '{opening}{drop}{way}{rest}',
  says: '{parts}, the outer wheel leans {way} by {inclination} against the road ({body} to the body).{held}',
  parts: ' and with “{set}” on',
  out: 'out at the top',
  in: 'in at the top',
  asLeft: ' Static camber is as the height leaves it.',
  setAgain: ' Static camber is reset to {camber}.',
  solid:
    ' But the outer wheel’s stop is solid {short} before the bump travel this roll takes, so the car never gets there.',
  missing: ' But {count} points of this are still {whose}.',
  missingOne: ' But 1 point of this is still {whose}.',
});

export type FirstWords = WordsOf<typeof FIRST>;
