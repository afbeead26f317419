import type { CamberWay } from '../../core/answers/camber-ways.js';
import type { WordsOf } from '../../core/quantity/words.js';
import { words } from '../../core/quantity/words.js';

/** The English words of the sentence; its patterns are told by `fill`. */
export const FIRST = words('static-camber/first', {
  title: 'Ways to add static camber',
  drop: 'Drop',
  by: 'Camber to add',
  moreNegative: 'more negative',
  lessNegative: 'less negative',
  dropEdit: 'Change the drop',
  turnWay: 'Ask for the other direction',
  camberAt: ' camber at ',
  stock: ' below stock height',
  lower: ' lower',
  higher: ' higher',
  waiting: 'Working it out …',
  noAnswer: ': no answer yet.',
  before: 'Last answer: {by} {sense} camber at {drop} {way}',
  step: 'drop {drop}',
  byStep: 'camber to add {by}',
  chosen: 'the set that is on',
  spoken: '{by} {sense} camber at {drop}{way}{rest}',
  nothing: ': nothing to add.',
  all: ': all {all} ways get there. {lead}{knuckle}',
  some: ': {count} of {all} ways get there. {lead}{knuckle}',
  one: ': only one of {all} ways gets there. {lead}{knuckle}',
  lead: '{way} takes *{amount}*{steered}',
  loses: ' and gives *{size}* of it away at 30° of steer',
  gains: ' and has *{size}* more at 30° of steer',
  keeps: ' and keeps all of it at 30° of steer',
  knuckleToo: '; camber machined into the knuckle {rest}.',
  knuckleKeeps: 'keeps it',
  knuckleAllBut: 'keeps all but *{size}*',
  knuckleGains: 'has *{size}* more',
  end: '.',
  way: {
    topMount: 'a plate at the top mount',
    knuckleBolts: 'turning the knuckle on its bolts',
    knuckle: 'camber machined into the knuckle',
    longerArm: 'a lower arm of another length',
    ballJoint: 'a ball joint offset in the knuckle',
    lowering: 'lowering',
  } satisfies Record<CamberWay, string>,
  /** By how much a part is put in, by the sign. */
  amounts: {
    topMount: { less: '{size} inboard', more: '{size} outboard' },
    knuckleBolts: { less: '{size} out at the top', more: '{size} in at the top' },
    knuckle: { less: '{size} more negative', more: '{size} less negative' },
    longerArm: { less: '{size} shorter', more: '{size} longer' },
    ballJoint: { less: '{size} inboard', more: '{size} outboard' },
    lowering: { less: '{size} higher', more: '{size} lower still' },
  } satisfies Record<CamberWay, { less: string; more: string }>,
  missing: ' But {count} points of this are still {whose}.',
  missingOne: ' But 1 point of this is still {whose}.',
});

export type FirstWords = WordsOf<typeof FIRST>;
