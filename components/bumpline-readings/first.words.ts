import type { WordsOf } from '../../core/quantity/words.js';
import { words } from '../../core/quantity/words.js';

/** All English words that the first answer needs; its patterns are told by `fill`. */
export const FIRST = words('readings/first', {
  title: 'The curve that readings make',
  over: 'Travel from zero',
  waiting: 'Working it out …',
  noAnswer: ' no answer yet.',
  none: 'No answer yet.',
  before: 'Last answer:',
  step: 'degree',
  ofPage: 'Readings of this page',
  camber: 'camber',
  toe: 'toe',
  readings: { one: '{count} reading', many: '{count} readings' },
  heights: { one: '{count} height', many: '{count} heights' },
  passCount: '{count} passes',
  onePass: 'From *{readings}* in one pass: ',
  passes: 'From *{readings}* in *{passes}*: ',
  ofBump: ' of bump ',
  ofDroop: ' of droop ',
  unknown: 'is not known: the readings span {reach}, and the curve ends with them',
  reach: '{low} to {high}',
  notTold: 'changes {quantity} by {change}, too small to tell from zero',
  toeOut: 'adds {change} of toe-out',
  toeIn: 'adds {change} of toe-in',
  adds: 'adds {change} of negative camber',
  takes: 'takes {change} of negative camber away',
  once: '; no height was read twice',
  repeated: '; the gauge repeated within *{within}*',
  end: '.',
  noReadings: 'No {quantity} readings yet. Type them in, or paste them from a sheet.',
  soFar: '{readings} at {heights} so far. {fewest} heights make a curve; every few millimetres make a good one.',
  yours: '{name}, yours',
  which: '{name}, {index} of {count} sets of parts',
});

export type FirstWords = WordsOf<typeof FIRST>;
