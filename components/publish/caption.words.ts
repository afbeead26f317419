import { words } from '../../core/quantity/words.js';
import { counted } from '../element/sentence.js';

/** English words that are written below a picture. */
export const CAPTION = words('publish/caption', {
  method: (parts: readonly string[]): string => `Method: ${parts.join('; ')}.`,
  readings: (name: string, count: number, passes: number): string =>
    `a curve fitted to ${counted(count, 'reading')} in ${counted(passes, 'pass', 'passes')}, “${name}”`,
  more: (count: number): string => `and ${counted(count, 'more set of readings', 'more sets of readings')}`,
  overBase: {
    dials: (base: string): string => `toe by two dials ${base} apart`,
    tape: (base: string): string => `toe by a tape over ${base}`,
  },
  driveway: 'measurements with tape and gauge, taken as a strut that is flat in front view',
  points: 'hard points, solved in three dimensions',
  curve: 'a curve that was given',
  interval: 'every ± is a 95 % interval',
  where: (corner: string, date: string): string => `${corner}, worked out on ${date}.`,
  source: (address: string, version: string): string => `Source: ${address}, worked out with Bumpline ${version}.`,
  noAddress: (version: string): string => `Worked out with Bumpline ${version}.`,
  whose: {
    example: 'The numbers are an invented example’s.',
    yours: 'The numbers are those of a reader of the page.',
    partlyYours: 'Some of the numbers are those of a reader of the page; the rest stand in for what was not given.',
    pages: 'The numbers are those of the page.',
    partlyPages: 'Some of the numbers are those of the page; the rest are an invented example’s.',
  },
  band: '95 % interval',
});
