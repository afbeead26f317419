import { words } from '../../core/quantity/words.js';
import { counted } from '../element/sentence.js';

/** What was read of a page's data, told to its author. */
export const READ = words('page-data/read', {
  points: (count: number): string => counted(count, 'hard point'),
  measures: (count: number): string => counted(count, 'measurement'),
  singles: { loadedRadius: 'loaded radius', camber: 'static camber', toe: 'static toe' },
  whole: 'a corner’s links',
  curve: (count: number): string => counted(count, 'coefficient'),
  readings: (count: number, passes: number): string =>
    `${counted(count, 'reading')} in ${counted(passes, 'pass', 'passes')}`,
  sets: (count: number, readings: number): string =>
    `${counted(count, 'set')} of parts with ${counted(readings, 'reading')}`,
  parts: (count: number): string => counted(count, 'set of parts', 'sets of parts'),
  before: 'the old wheel',
  after: 'the new wheel',
  places: (count: number): string => counted(count, 'place'),
  margins: 'margins and full lock',
  ends: 'what ends travel',
  loads: 'loads',
  drop: 'the drop',
  bumpTravel: 'bump travel',
  settings: 'settings',
  plusMinus: (least: string, most: string): string =>
    least === most ? ` (±${least} mm)` : ` (±${least} to ${most} mm)`,
  from: { table: 'a table', json: 'JSON', both: 'JSON and a table', attributes: 'attributes and properties' },
  cell: (row: number, column: number): string => `row ${row}, column ${column}`,
  quoted: (text: string): string => `“${text}”`,
  given: (of: string, value: string): string => `${of} (${value})`,
  more: (count: number): string => `${count} more`,
  and: ' and ',
  nothing: 'nothing',
  notUnderstood: (what: string): string => `not understood: ${what}`,
  line: (tag: string, what: string, from: string, unread: string): string =>
    `Bumpline: <${tag}> read ${what} from ${from}${unread ? `; ${unread}` : ''}.`,
});
