import { readLengthAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import { METRIC } from '../../core/quantity/units.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { upright } from '../../core/readings/sideways.js';
import { understand } from '../../core/readings/understand.js';
import type { Understanding } from '../../core/readings/understanding.js';
import { languageOf } from './language.js';
import { gridOf } from './table-grid.js';

export { captionOf } from './table-grid.js';

/**
 * Reads a page's table of readings: headings name columns and units (mm and degrees otherwise), a `<data value>` in a cell stands
 * for its text, the table's language decides what `1,500` is, and nobody is asked. What a table of heights or dials cannot leave
 * open stands in its attributes, mm: `data-zero`, the height that is called zero, and `data-base`, how far the dials stand apart.
 */
export function readReadingTable(table: HTMLTableElement, quantity: ReadingQuantity): Understanding {
  const problems: Problem[] = [];
  const answers: Record<string, string> = {};
  for (const name of ['zero', 'base']) {
    const text = table.dataset[name];
    if (text === undefined) continue;
    const read = readLengthAttribute(text, 'coordinate', `data-${name}`);
    if (read.ok) answers[name] = text;
    else problems.push(read.problem);
  }
  const options = { quantity, units: METRIC, language: languageOf(table), answers };
  const understanding = understand(upright(gridOf(table).rows), options);
  return { ...understanding, problems: [...problems, ...understanding.problems] };
}
