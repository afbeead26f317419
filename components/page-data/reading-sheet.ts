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

/** A published table of readings: the texts of its cells, and what else it says. */
export interface ReadingSheet {
  rows: string[][];
  caption: string;
  /** By name, without `data-`. */
  attributes: Readonly<Record<string, string | undefined>>;
  language: string;
}

/** What `data-order` may say: that a table lists its rows in another order than they were read in. */
export const ORDERS = ['any'] as const;

const WORDS = { front: ['front-sign', FRONT_SIGNS], order: ['order', ORDERS] } as const;

/** Reads a published table, about which nobody can be asked: see `readReadingTable`. */
export function readReadingSheet(sheet: ReadingSheet, quantity: ReadingQuantity): Understanding {
  const { rows, caption, attributes, language } = sheet;
  const problems: Problem[] = [];
  const answers: Record<string, string> = {};
  for (const name of ['zero', 'base']) {
    const { [name]: text } = attributes;
    if (text === undefined) continue;
    const read = readLengthAttribute(text, 'coordinate', `data-${name}`);
    const [least, most] = BASES;
    const limit =
      !read.ok || name === 'zero' ? undefined : read.value < least ? least : read.value > most ? most : undefined;
    if (!read.ok) problems.push(read.problem);
    else if (limit === undefined) answers[name] = text;
    else problems.push({ code: 'out-of-range', path: `data-${name}`, value: text, limit });
  }
  for (const [name, [id, names]] of Object.entries(WORDS)) {
    const { [name]: text } = attributes;
    if (text === undefined) continue;
    if ((names as readonly string[]).includes(text)) answers[id] = text;
    else problems.push({ code: 'unknown-name', path: `data-${name}`, value: text, names });
  }
  const { units: said, foreign } = unitsInProse(caption);
  const length = said.length === 1 && said[0] === 'in' ? 'in' : 'mm';
  const options = { quantity, units: { ...METRIC, length }, language, answers } as const;
  const understanding = understandSheet(upright(rows), options);
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
