import papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readingsCsv } from '../../../components/publish/readings-csv.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import type { Setup } from '../../../core/document/setup.js';
import { METRIC } from '../../../core/quantity/units.js';
import { splitText } from '../../../core/readings/table/split-text.js';
import { understandSheet } from '../../../core/readings/table/understand-sheet.js';

const [EXAMPLE] = EXAMPLE_SETUPS as readonly [Setup];
/** Invented. */
const TOE: Setup = {
  name: '=HYPERLINK("x")',
  cornerName: 'Front right',
  quantity: 'toe',
  overBase: { by: 'dials', base: 300, front: 'inboard' },
  readings: [
    { travel: -20, value: -0.25, pass: '+1', going: 'up', pair: [-1.2, 0.1] },
    { travel: 0, value: 0.1, pass: '+1', going: 'up', pair: [0.5, 0] },
    { travel: -20, value: -0.24, pass: '+1', going: 'up', again: true, pair: [-1.15, 0.1], body: 0.4 },
  ],
  setAside: [1],
};

const rowsOf = (csv: string) => papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data;

describe('readings as CSV', () => {
  it('are one a row as they were taken, those that were set aside too, names harmless and numbers numbers', () => {
    const name = `'=HYPERLINK("x")`;
    const pass = "'+1";
    const known = { Parts: name, Corner: 'Front right', Pass: pass, Direction: 'up' };
    expect(rowsOf(readingsCsv([TOE]))).toEqual([
      { ...known, 'Wheel travel (mm)': '-20', 'Toe (°)': '-0.25', 'Front (mm)': '-1.2', 'Rear (mm)': '0.1', ...rest() },
      {
        ...known,
        'Wheel travel (mm)': '0',
        'Toe (°)': '0.1',
        'Front (mm)': '0.5',
        'Rear (mm)': '0',
        ...rest('', '', 'yes'),
      },
      {
        ...known,
        'Wheel travel (mm)': '-20',
        'Toe (°)': '-0.24',
        'Front (mm)': '-1.15',
        'Rear (mm)': '0.1',
        ...rest('0.4', 'yes'),
      },
    ]);
  });

  it('have no column that says nothing', () => {
    const [head] = readingsCsv([EXAMPLE]).split('\r\n');
    expect(head).toBe('Parts,Corner,Pass,Direction,Wheel travel (mm),Camber (°)');
  });

  it('of several sets come back as they were where they are pasted, set by set', () => {
    const options = { quantity: 'camber', units: METRIC, language: 'en', answers: {} } as const;
    const { readings, sets, problems, questions } = understandSheet(splitText(readingsCsv(EXAMPLE_SETUPS)), options);
    expect([problems, questions]).toEqual([[], []]);
    expect(sets!.map(({ name, readings: own }) => [name, own.map((i) => readings[i])])).toEqual(
      EXAMPLE_SETUPS.map((set) => [set.name, set.readings]),
    );
  });
});

const rest = (body = '', again = '', aside = '') => ({
  'Body reference (mm)': body,
  'Read again': again,
  'Set aside': aside,
});
