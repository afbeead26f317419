import type { WordsOf } from '../element/sentence.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = {
  title: 'What parts would do that you have not bought yet',
  drop: 'Drop',
  over: 'Wheel travel',
  overEdit: 'Ask over another wheel travel',
  measured: 'Measured once, {count}. ',
  reading: { one: '{count} reading', many: '{count} readings' },
  pass: { one: '{count} pass', many: '{count} passes' },
  withSet: 'With “{set}”, ',
  asItStands: 'As it stands, ',
  stock: ' below stock height',
  lower: ' lower',
  higher: ' higher',
  comma: ', over ',
  bump: ' of bump',
  droop: ' of droop',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Last answer: {drop} {way}, over {over}',
  step: 'drop {drop}',
  overStep: 'wheel travel',
  ofStep: 'camber or toe',
  chosen: 'the set that is on',
  spoken: '{set}{drop}{way}, over {over}{from}{rest}',
  camber: ': camber {change}',
  toe: ': toe {change}',
  tape: '; the tape alone would have said {plusMinus}.',
  doubtful:
    ' But the readings and the tape do not go together: the readings narrow nothing, and it could be wrong by more.',
  odd: ' But one pass does not belong with the others: until you have looked at it, it could be wrong by more.',
  slipped:
    ' But the gauge seems to have moved once while you read: until you have looked at that, it could be wrong by more.',
  /** Whose it is, above the sentence. */
  owner: '{links}; {readings}',
  readings: '{count} in {passes}',
  noReadings: 'no readings yet',
  noLinks: 'links not measured yet',
  pages: '{count} in {passes} from this page',
  yours: 'your {count} in {passes}',
} as const;

export type FirstWords = WordsOf<typeof FIRST>;
