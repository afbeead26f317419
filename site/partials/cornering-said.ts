import {
  FIRST,
  openingText,
  plusMinusOf,
  sentence,
  wayText,
} from '../../components/bumpline-cornering/bumpline-cornering.words.js';
import type { TurnOnSheet } from '../../components/bumpline-cornering/cornering-view.js';
import { dropText } from '../../components/element/drop-words.js';
import { fill } from '../../components/element/sentence.js';
import { carOf, heightsOf } from '../../components/page-data/page-source.js';
import { cornerSourceOf } from '../../core/answers/car-request.js';
import { cornering, corneringDoubt } from '../../core/answers/from-source.js';
import { USUAL_ROLL } from '../../core/answers/usual-roll.js';
import { asLinks } from '../../core/document/as-links.js';
import { EMPTY_CAR, withPageHeights } from '../../core/document/car.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { readAngleAttribute } from '../../core/quantity/angle-attribute.js';
import { attribute, type Element, findAll, tableOf } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** Of hard points in a table, else of the built-in example; at the drop and the roll in attributes. */
export function corneringSaid(element: Element): Said {
  const table = findAll(element, ({ tagName }) => tagName === 'table').find(
    (one) => attribute(one, 'data-example') === undefined,
  );
  const { given, problems } = table
    ? readPointSheet(tableOf(table), DISPLAY.language)
    : { given: { points: {} }, problems: [] };
  const heights = heightsOf({ drop: attribute(element, 'drop') });
  const roll = readAngleAttribute(attribute(element, 'roll') ?? `${USUAL_ROLL}`, 'roll', 'roll');
  checkNone(element, [...problems, ...heights.problems, ...(roll.ok ? [] : [roll.problem])]);
  const stands = withPageHeights(EMPTY_CAR, heights.car, false);
  const car = asLinks(carOf({ car: { given }, problems }, stands, false));
  const request = { source: cornerSourceOf(car), drop: car.drop, roll: roll.ok ? roll.value : USUAL_ROLL };
  const answer: TurnOnSheet = {
    ...cornering(request),
    doubt: corneringDoubt(request),
    drop: car.drop,
    suspensionRoll: request.roll,
    camber: undefined,
    request,
    set: undefined,
  };
  return {
    stretches: fill(FIRST.spoken, {
      opening: openingText(answer, DISPLAY),
      drop: dropText(answer.drop, DISPLAY),
      way: wayText(answer.drop),
      rest: sentence(answer, car, DISPLAY),
    }),
    figures: figures('inclination', answer.outer.inclination, plusMinusOf(answer, 'outer'), 'camber'),
  };
}
