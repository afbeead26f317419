import type { Slot } from '../../../core/document/point-columns.js';
import type { ColumnRole } from '../../../core/readings/table/understanding.js';

/*
 * Columns as an author heads them, by what the readers make of them: test/pages/reference.test.ts holds every heading against its reader.
 */

interface Told {
  /** What may stand over it; the first is the one to write. */
  headings: readonly string[];
  says: string;
}

/** Of a table of hard points or of six measurements. */
export const POINT_COLUMNS: Readonly<Record<Slot, Told>> = {
  x: { headings: ['x (mm)', 'Forward (mm)', 'Longitudinal'], says: 'Forward from the axle.' },
  y: { headings: ['y (mm)', 'Out (mm)', 'Lateral'], says: 'Left from the centreline.' },
  z: { headings: ['z (mm)', 'Height (mm)', 'Up'], says: 'Up from the ground.' },
  value: { headings: ['Value', 'Measured'], says: 'Of a row with one figure.' },
  plusMinus: {
    headings: ['±', '± (mm)', 'Tolerance'],
    says: 'How sure you are of that row (95 %). A point without one has none.',
  },
  unit: { headings: ['Unit'], says: 'Of the row: mm, cm, in, ° or ′.' },
  note: { headings: ['Note', 'Photo', 'No.'], says: 'Passed over.' },
};

/** Of a table of readings. */
export const READING_COLUMNS: Readonly<Record<ColumnRole, Told>> = {
  travel: {
    headings: ['Wheel travel (mm)', 'Travel (in)', 'Bump/droop (cm)'],
    says: 'From the height that is called zero, bump positive.',
  },
  height: {
    headings: ['Hub to arch (mm)', 'Height (in)'],
    says: 'Shrinks in bump. It becomes travel from its first row on, unless the table says which height is zero.',
  },
  value: {
    headings: ['Camber (°)', 'Pass 1, going up (°)', 'Angle (′)'],
    says: 'What the gauge read, one column a pass. Camber positive top outward, toe positive in.',
  },
  pass: { headings: ['Pass'], says: 'Of the row, in place of a column for each pass.' },
  going: { headings: ['Direction'], says: 'Whether the wheel went up or down.' },
  body: {
    headings: ['Body (mm)', 'Sill (mm)'],
    says: 'A reference on the body, upward: it shows whether the body moved on its stands.',
  },
  dialFront: {
    headings: ['Front dial (mm)', 'Front (in)', 'Front dial (thou)'],
    says: 'Of toe: what is read at the front of the wheel.',
  },
  dialRear: {
    headings: ['Rear dial (mm)', 'Rear (in)', 'Rear dial (thou)'],
    says: 'Of toe: what is read at the rear.',
  },
  derived: { headings: ['Average (°)', 'Mean (°)'], says: 'Worked out from others: left out.' },
  other: { headings: ['Notes', 'Caster (°)', 'Temperature'], says: 'Left out.' },
};
