import type { WordsOf } from '../../core/quantity/words.js';
import { words } from '../../core/quantity/words.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = words('geometry/first', {
  title: 'What the links do, and what parts change',
  drop: 'Drop',
  lowered: 'Lowered',
  raised: 'Raised',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Last answer: {verb} {drop}',
  step: 'drop {drop}',
  chosen: 'the set that is on',
  spoken: '{verb} {drop}{rest}',
  bare: ', the roll centre stands {height} the ground{stock}. In the next {over} of bump camber changes by {camber}{toe}.',
  fitted:
    ', the roll centre stands {bareHeight} the ground{stock}. With “{set}” it stands {height}, and the next {over} of bump change camber by {camber} ({bareCamber} without it){toe}.',
  stock: ' ({height} at stock height)',
  above: '{height} above',
  below: '{height} below',
  toe: ' and toe by {toe}',
  toeBoth: ' and toe by {toe} ({bareToe} without it)',
  measureToe: '. Toe: measure it',
  toeIn: '{size} in',
  toeOut: '{size} out',
  toeFlat: '{size}, too small to tell from zero',
  noBump: 'no bump',
  missing: ' But {count} points of this are still {whose}.',
  missingOne: ' But 1 point of this is still {whose}.',
});

export type FirstWords = WordsOf<typeof FIRST>;
