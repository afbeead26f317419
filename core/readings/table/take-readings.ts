import type { Reading, ReadingQuantity } from '../reading.js';
import { wheelDirectionMark, wheelDirectionOf } from './cell-kind.js';
import type { Column } from './columns.js';
import { sideOf } from './heights.js';
import { readLabels } from './labels.js';
import { type Strand, Strands } from './strands.js';
import type { Sheet } from './table-rows.js';
import { angleAt, type HowPaired, type ValueColumn } from './value-columns.js';

/** A reading and the cell of its value. */
export interface Taken {
  reading: Reading;
  at: [row: number, column: number];
  valueColumn: ValueColumn;
  strand: Strand;
  /** Lines that name its parts, pass or direction. */
  sections: readonly number[];
}

/**
 * Puts the cells of each row together. What shares its words (column, lines above, cells of names) is one strand; which strands are
 * passes of which parts is settled afterwards.
 *
 * @param values mm and degrees by cell, NaN where there is none; travel, not height
 * @param areSides whether "bump" and "droop" over values or rows say on which side of zero a height lies, and no direction
 */
export function takeReadings(
  sheet: Sheet,
  columns: readonly Column[],
  valueColumns: readonly ValueColumn[],
  values: readonly (readonly number[])[],
  over: HowPaired,
  areSides: boolean,
  quantity: ReadingQuantity,
): { taken: Taken[]; strands: Strand[] } {
  const namesAt = columns.flatMap(({ role }, c) => (role === 'pass' ? [c] : []));
  const directionAt = columns.findIndex(({ role }) => role === 'going');
  const strands = new Strands(sheet, columns);
  const taken: Taken[] = [];
  const names = namesAt.map(() => '');
  let directionText = '';
  for (const [r, kind] of sheet.rows.entries()) {
    const texts = sheet.texts[r]!;
    if (kind === 'section') strands.enter(r);
    if (kind !== 'data') continue;
    // A merged cell stands in its first row only; what stood to the right of it is over with it.
    for (const [i, c] of namesAt.entries()) {
      const text = texts[c]!.trim();
      if (text) names.fill('', i + 1)[i] = text;
    }
    if (texts[directionAt]?.trim()) directionText = texts[directionAt];
    for (const valueColumn of valueColumns) {
      const travel = valueColumn.height === undefined ? Number.NaN : values[r]![valueColumn.height]!;
      const value = angleAt(valueColumn, values[r]!, over);
      if (Number.isNaN(travel) || Number.isNaN(value)) continue;
      const body = valueColumn.body === undefined ? Number.NaN : values[r]![valueColumn.body]!;
      const going =
        wheelDirectionMark(directionText) ??
        wheelDirectionOf(texts[valueColumn.value]!) ??
        wheelDirectionOf(texts[valueColumn.height!]!);
      const side = areSides ? sideOf(directionText) : undefined;
      const strand = strands.of(r, valueColumn, names);
      strand.taken.push(taken.length);
      taken.push({
        reading: {
          travel: side ? travel * side + 0 : travel,
          value,
          ...(going && !side && { going }),
          ...(!Number.isNaN(body) && { body }),
          ...(valueColumn.rear !== undefined && {
            pair: [values[r]![valueColumn.value]!, values[r]![valueColumn.rear]!],
          }),
        },
        at: [r, valueColumn.value],
        valueColumn,
        strand,
        sections: strands.sections,
      });
    }
  }
  const found = strands.all;
  const labels = readLabels(
    found.map(({ text }) => text),
    quantity,
  );
  for (const [i, strand] of found.entries()) {
    strand.label = labels[i]!;
    const { side } = strand.label;
    if (!areSides || !side) continue;
    // Where droop is a side of zero it is no direction.
    delete strand.label.going;
    for (const t of strand.taken) taken[t]!.reading.travel = taken[t]!.reading.travel * side + 0;
  }
  return { taken, strands: found };
}
