import { readLengthAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import { METRIC } from '../../core/quantity/units.js';
import { BASES, FRONT_SIGNS } from '../../core/readings/over-base.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { unitOfCell } from '../../core/readings/table/cell-units.js';
import { lengthUnitsIn } from '../../core/readings/table/heading.js';
import { upright } from '../../core/readings/table/sideways.js';
import { understandSheet } from '../../core/readings/table/understand-sheet.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { foreignAngle, foreignLength, unitsInProse } from '../../core/readings/table/units-in-words.js';
import { languageOf } from '../element/language.js';
import { captionOf, gridOf } from './table-grid.js';

export { readDoubts } from './doubts-attribute.js';
export { captionOf } from './table-grid.js';

/**
 * Reads a page's table of readings: headings name columns and units (mm and degrees otherwise), a `<data value>` in a cell stands
 * for its text, the table's language decides what `1,500` is, and nobody is asked. What a table of heights or dials cannot leave
 * open stands in its attributes, mm: `data-zero`, the height that is called zero, `data-base`, how far the dials or the places
 * of a tape stand apart, and `data-front`: `inboard` where the front figure grows as the front of the wheel moves inboard, else `outboard`.
 * `data-doubts` says how far its instruments can be trusted (`readDoubts`).
 */
export function readReadingTable(table: HTMLTableElement, quantity: ReadingQuantity): Understanding {
  const problems: Problem[] = [];
  const answers: Record<string, string> = {};
  for (const name of ['zero', 'base']) {
    const text = table.dataset[name];
    if (text === undefined) continue;
    const read = readLengthAttribute(text, 'coordinate', `data-${name}`);
    const [least, most] = BASES;
    const limit =
      !read.ok || name === 'zero' ? undefined : read.value < least ? least : read.value > most ? most : undefined;
    if (!read.ok) problems.push(read.problem);
    else if (limit === undefined) answers[name] = text;
    else problems.push({ code: 'out-of-range', path: `data-${name}`, value: text, limit });
  }
  const { front } = table.dataset;
  if (front !== undefined && !(FRONT_SIGNS as readonly string[]).includes(front)) {
    problems.push({ code: 'unknown-name', path: 'data-front', value: front, names: FRONT_SIGNS });
  } else if (front !== undefined) answers['front-sign'] = front;
  const { units: said, foreign } = unitsInProse(captionOf(table));
  const length = said.length === 1 && said[0] === 'in' ? 'in' : 'mm';
  const options = { quantity, units: { ...METRIC, length }, language: languageOf(table), answers } as const;
  const understanding = understandSheet(upright(gridOf(table).rows), options);
  problems.push(...unitProblems(understanding, foreign ?? (said.length === 1 && said[0] === 'cm' ? 'cm' : undefined)));
  // What an attribute says wrongly is not missing besides.
  const others = understanding.problems.filter(({ path }) => !problems.some((one) => one.path === `data-${path}`));
  return { ...understanding, problems: [...problems, ...others] };
}

/**
 * Units over columns that count, and are none of ours: a default in their place would be a wrong number.
 *
 * @param inCaption one that the caption names, and that cannot stand for the columns: it counts where a column names none itself
 */
function unitProblems({ columns, cells }: Understanding, inCaption: string | undefined): Problem[] {
  const problems: Problem[] = [];
  let isBare = false;
  for (const [c, { heading, role, unit }] of columns.entries()) {
    const isOfPair = role === 'dialFront' || role === 'dialRear';
    const isLength = role === 'travel' || role === 'height' || role === 'body' || isOfPair;
    if ((!isLength && role !== 'value') || unit === 'thou') continue;
    const foreign = isLength ? foreignLength(heading) : foreignAngle(heading);
    if (foreign) problems.push({ code: 'wrong-unit', path: `Heading “${heading}”`, value: foreign });
    const isNamed =
      lengthUnitsIn(heading).length > 0 || cells.some((row) => row[c]?.state === 'read' && unitOfCell(row[c].text));
    isBare ||= isLength && !isNamed;
  }
  if (inCaption && isBare) problems.push({ code: 'wrong-unit', path: 'Caption', value: inCaption });
  return problems;
}
