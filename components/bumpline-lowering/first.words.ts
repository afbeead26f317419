import type { WordsOf } from '../element/sentence.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = {
  title: 'What lowering does to camber',
  drop: 'Drop',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Before:',
  change: 'Camber change: find the drop that adds so much',
  lowering: 'Lowering',
  raising: 'Raising',
  spoken: '{verb} {drop}{rest}',
  says: '{change}{camber}{bump}.{turn}',
  nothing: ' changes nothing',
  does: {
    adds: ' adds {change} of negative camber',
    takes: ' takes {change} of negative camber away',
    notTold: ' changes camber by {change}: cannot be told from nothing',
  },
  would: {
    adds: ' it would add {change} of negative camber',
    takes: ' it would take {change} of negative camber away',
    notTold: ' it would change camber by {change}: cannot be told from nothing',
  },
  camber: ', to *{camber}*',
  keeps: ' and keeps {left} of bump stroke{end}',
  leaves: ' and leaves {left} of bump{end}',
  onStop: ' and *stands on its bump stop*',
  noBump: ' and leaves *no bump*',
  leavesMost: ' and leaves *at most {left}* of bump{end}',
  toTouch: ' to the first touch of the stop',
  endedBy: ', ended by {limit}',
  onStopAlready: ', which it stands on already',
  touchedAfter: ' and touched after *{travel}*',
  pastStop: ' puts it *{past} past its solid stop*, where it cannot stand. Without the stop{change}.',
  cross: ' Left and right differ by *{size}*.',
  growsLower: ' The change grows the lower it goes.',
  slowsLower: ' The change slows the lower it goes.',
  growsHigher: ' The change grows the higher it goes.',
  slowsHigher: ' The change slows the higher it goes.',
  slowsToStop: ' The change slows all the way to the stop.',
  pastTurn: ' Past {travel} it turns back.',
  turns: ' The change slows, and turns back {travel} lower.',
  missingOne: ' But 1 point of this is still {whose}.',
  missing: ' But {count} points of this are still {whose}.',
} as const;

export type FirstWords = WordsOf<typeof FIRST>;
