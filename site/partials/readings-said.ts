import {
  ending,
  FEWEST_HEIGHTS,
  opening,
  overText,
} from '../../components/bumpline-readings/bumpline-readings.words.js';
import { value } from '../../components/element/sentence.js';
import { readings } from '../../core/answers/readings.js';
import { EXAMPLE_SETUP } from '../../core/document/setups.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { attribute, type Element, findAll } from './markup.js';
import { readingsIn } from './readings-in.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** Of the first set of readings in a table: the page's, else the one that shows the built-in example. */
export function readingsSaid(element: Element): Said {
  const tables = findAll(element, ({ tagName }) => tagName === 'table');
  const table = tables.find((one) => attribute(one, 'data-example') === undefined) ?? tables[0];
  const quantity = attribute(element, 'quantity') === 'toe' ? 'toe' : 'camber';
  const found = table && readingsIn(element, table, quantity);
  const [first] = found?.sets ?? [];
  const some = found ? (first?.readings.map((i) => found.readings[i]!) ?? found.readings) : EXAMPLE_SETUP.readings;
  const read = readLengthAttribute(attribute(element, 'over') ?? '25', 'travel', 'over');
  checkNone(element, read.ok ? [] : [read.problem]);
  if (new Set(some.map(({ travel }) => travel)).size < FEWEST_HEIGHTS)
    throw new Error(`<${element.tagName}> has readings at fewer than ${FEWEST_HEIGHTS} heights: no curve.`);
  const degree = Number(attribute(element, 'degree') ?? Number.NaN);
  const answer = readings({
    quantity,
    readings: some,
    doubts: found?.doubts,
    degree: Number.isNaN(degree) ? undefined : degree,
    over: attribute(element, 'over') !== undefined && read.ok ? read.value : undefined,
  });
  const { used, passes, over, change, repeated } = answer;
  return {
    stretches: [...opening(answer), value(overText(over, DISPLAY)), ...ending(answer, DISPLAY)],
    figures: [
      { key: 'count', shown: String(used.length), value: String(used.length) },
      { key: 'passes', shown: String(passes), value: String(passes) },
      ...(change ? figures('change', change.value, change.plusMinus, 'camberChange') : []),
      ...(repeated === undefined ? [] : figures('repeated', repeated, undefined, 'camberChange')),
    ],
  };
}
