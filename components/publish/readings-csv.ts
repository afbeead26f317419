import type { Setup } from '../../core/document/setup.js';
import { type Cell, toCsv } from '../controls/csv.js';
import { READINGS_CSV } from './readings-csv.words.js';

const { columns: WORDS, ways: WAYS, units: UNITS } = READINGS_CSV;

/** Of several columns those that say anything of some reading. */
interface Column {
  label: string;
  unit?: string;
  cell(setup: Setup, index: number): Cell;
}

/** All that may stand in it. */
const COLUMNS: readonly Column[] = [
  { label: WORDS.parts, cell: ({ name }) => name },
  { label: WORDS.corner, cell: ({ cornerName }) => cornerName },
  { label: WORDS.pass, cell: ({ readings }, i) => readings[i]!.pass ?? null },
  { label: WORDS.direction, cell: ({ readings }, i) => (readings[i]!.going ? WAYS[readings[i]!.going] : null) },
  { label: WORDS.travel, unit: UNITS.length, cell: ({ readings }, i) => readings[i]!.travel },
  {
    label: WORDS.camber,
    unit: UNITS.angle,
    cell: ({ readings, quantity }, i) => (quantity === 'camber' ? readings[i]!.value : null),
  },
  {
    label: WORDS.toe,
    unit: UNITS.angle,
    cell: ({ readings, quantity }, i) => (quantity === 'toe' ? readings[i]!.value : null),
  },
  { label: WORDS.front, unit: UNITS.length, cell: ({ readings }, i) => readings[i]!.pair?.[0] ?? null },
  { label: WORDS.rear, unit: UNITS.length, cell: ({ readings }, i) => readings[i]!.pair?.[1] ?? null },
  { label: WORDS.body, unit: UNITS.length, cell: ({ readings }, i) => readings[i]!.body ?? null },
  { label: WORDS.again, cell: ({ readings }, i) => (readings[i]!.again ? READINGS_CSV.yes : null) },
  { label: WORDS.aside, cell: ({ setAside = [] }, i) => (setAside.includes(i) ? READINGS_CSV.yes : null) },
];

/**
 * Readings as they were taken, one a row, those that were set aside too: mm and degrees, whatever the page shows. What no reading has
 * has no column.
 */
export function readingsCsv(setups: readonly Setup[]): string {
  const taken = setups.flatMap((setup) => setup.readings.map((_, index) => [setup, index] as const));
  const columns = COLUMNS.filter(({ cell }) => taken.some(([setup, index]) => cell(setup, index) !== null));
  return toCsv(
    columns,
    taken.map(([setup, index]) => columns.map(({ cell }) => cell(setup, index))),
  );
}
