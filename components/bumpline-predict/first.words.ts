import type { WordsOf } from '../../core/quantity/words.js';
import { words } from '../../core/quantity/words.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = words('predict/first', {
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
  tapeDoubtful: '; the tape alone would claim {plusMinus}.',
  doubtful:
    ' But readings and tape contradict each other. One of them is wrong, so the readings narrow nothing, and the error may be larger still.',
  odd: ' But one pass does not belong with the others. Until you have looked at it, the error may be larger.',
  slipped:
    ' But the gauge seems to have moved once while you read. Until you have looked at that, the error may be larger.',
  /** Whose it is, above the sentence. */
  owner: '{links}; {readings}',
  readings: '{count} in {passes}',
  noReadings: 'no readings yet',
  noLinks: 'links not measured yet',
  pages: '{count} in {passes} from this page',
  yours: 'your {count} in {passes}',
});

export type FirstWords = WordsOf<typeof FIRST>;
