import { FIRST, fromText, lengthText, sentence, wayText } from '../../components/bumpline-toe/bumpline-toe.words.js';
import { fill } from '../../components/element/sentence.js';
import { carOf, heightsOf } from '../../components/page-data/page-source.js';
import { cornerSourceOf, toeSourceOf, withParts } from '../../core/answers/car-request.js';
import { toeAcross, toeOf, USUAL_ACROSS_MM, USUAL_TOE_OVER_MM } from '../../core/answers/toe.js';
import { solveSource } from '../../core/curve-sources/solve-source.js';
import { asLinks } from '../../core/document/as-links.js';
import { cornerGivenBy, EMPTY_CAR, withPageHeights } from '../../core/document/car.js';
import { EXAMPLE_SHOWN_BY_TOE, linkedSets } from '../../core/document/linked-sets.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { attribute, type Element, findAll, tableOf } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** Of hard points in a table; else of the built-in example with a lower joint on. At the drop and over the bump in attributes. */
export function toeSaid(element: Element): Said {
  const table = findAll(element, ({ tagName }) => tagName === 'table').find(
    (one) => attribute(one, 'data-example') === undefined,
  );
  const { given, problems } = table
    ? readPointSheet(tableOf(table), DISPLAY.language)
    : { given: { points: {} }, problems: [] };
  const heights = heightsOf({ drop: attribute(element, 'drop') });
  const over = readLengthAttribute(attribute(element, 'over') ?? `${USUAL_TOE_OVER_MM}`, 'travel', 'over');
  checkNone(element, [...problems, ...heights.problems, ...(over.ok ? [] : [over.problem])]);
  const stands = withPageHeights(EMPTY_CAR, heights.car, false);
  const car = asLinks(carOf({ car: { given }, problems }, stands, false));
  const corner = cornerSourceOf(car);
  const set = cornerGivenBy(car) ? undefined : linkedSets(car)[EXAMPLE_SHOWN_BY_TOE]!;
  const source = (set && withParts(corner, set.setup)) ?? toeSourceOf(car)!;
  const { toe } = solveSource(source);
  const answer = {
    ...toeOf({ toe: toe!, drop: car.drop, over: over.ok ? over.value : USUAL_TOE_OVER_MM }),
    source,
    set,
    measuredAt: 0,
  };
  const { value, plusMinus } = answer.change;
  return {
    stretches: fill(FIRST.spoken, {
      over: lengthText(answer.over, DISPLAY),
      from: fromText(answer.over),
      drop: lengthText(answer.drop, DISPLAY),
      way: wayText(answer.drop),
      rest: sentence(answer, car, DISPLAY),
    }),
    figures: [
      ...figures('change', value, plusMinus, 'toe'),
      ...figures('across', toeAcross(value, USUAL_ACROSS_MM), undefined, 'travel'),
    ],
  };
}
