import { FIRST, sentence, verb } from '../../components/bumpline-lowering/bumpline-lowering.words.js';
import { limitsOf } from '../../components/bumpline-lowering/travel-ends.js';
import { dropText } from '../../components/element/drop-words.js';
import { fill } from '../../components/element/sentence.js';
import { carOf, heightsOf } from '../../components/page-data/page-source.js';
import { loweringRequestOf } from '../../core/answers/car-request.js';
import { lowering } from '../../core/answers/from-source.js';
import { EMPTY_CAR, withPageHeights } from '../../core/document/car.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { attribute, type Element, findAll, tableOf } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** The table that is the page's data, else the one that shows the built-in example's measurements. */
function dataTable(element: Element): Element | undefined {
  const tables = findAll(element, ({ tagName }) => tagName === 'table');
  const example = (table: Element) => attribute(table, 'data-example');
  return (
    tables.find((table) => example(table) === undefined) ?? tables.find((table) => example(table) === 'measurements')
  );
}

/** Of measurements or hard points in a table, and of drop, bump travel and limits in attributes. */
export function loweringSaid(element: Element): Said {
  const table = dataTable(element);
  const { given, problems } = table
    ? readPointSheet(tableOf(table), DISPLAY.language)
    : { given: { points: {} }, problems: [] };
  const heights = heightsOf({
    drop: attribute(element, 'drop'),
    dropPlusMinus: attribute(element, 'drop-plus-minus'),
    bumpTravel: attribute(element, 'bump-travel'),
  });
  const limits = limitsOf(attribute(element, 'limits') ?? '');
  checkNone(element, [...problems, ...heights.problems, ...limits.problems]);
  const stands = carOf({ car: { given }, problems }, withPageHeights(EMPTY_CAR, heights.car, false), false);
  const car = attribute(element, 'limits') === undefined ? stands : limits.recipe(stands);
  const answer = lowering(loweringRequestOf(car));
  const { change, bumpLeft, budget, drop } = answer;
  const end = budget?.bump.solid ?? budget?.bump.touch;
  const stated = end?.plusMinus === undefined && car.stopGap !== undefined ? Math.round(bumpLeft ?? 0) : bumpLeft;
  return {
    stretches: fill<'change'>(FIRST.spoken, {
      verb: verb(drop),
      drop: dropText(drop, DISPLAY),
      rest: sentence(answer, car, DISPLAY),
    }),
    figures: [
      ...figures('change', change.value, change.plusMinus, 'camberChange'),
      ...(stated === undefined ? [] : figures('bump-left', stated, end?.plusMinus, 'travel')),
    ],
  };
}
