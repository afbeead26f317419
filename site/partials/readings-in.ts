import { readDoubts } from '../../components/page-data/doubts-attribute.js';
import { tableProblems } from '../../components/page-data/table-problems.js';
import { METRIC } from '../../core/quantity/units.js';
import type { ReadingDoubts } from '../../core/readings/doubts.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { upright } from '../../core/readings/table/sideways.js';
import { understandSheet } from '../../core/readings/table/understand-sheet.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { attribute, type Element, tableOf } from './markup.js';
import { checkNone, DISPLAY } from './said.js';

/** A table of readings as an element understands it. @throws {Error} with what is wrong with it */
export function readingsIn(
  element: Element,
  table: Element,
  quantity: ReadingQuantity,
): Understanding & { doubts: ReadingDoubts | undefined } {
  const answers = Object.fromEntries(
    ['zero', 'base', 'front'].flatMap((name) => {
      const text = attribute(table, `data-${name}`);
      return text === undefined ? [] : [[name === 'front' ? 'front-sign' : name, text]];
    }),
  );
  const options = { quantity, units: METRIC, language: DISPLAY.language, answers };
  const understanding = understandSheet(upright(tableOf(table).rows), options);
  const ofDoubts: Parameters<typeof readDoubts>[1] = [];
  const doubts = readDoubts(attribute(table, 'data-doubts'), ofDoubts);
  checkNone(element, [...ofDoubts, ...tableProblems(understanding)]);
  return { ...understanding, doubts };
}
