import {
  angleText,
  FIRST,
  senseText,
  sentence,
  USUAL_BY_DEG,
  USUAL_OVER_MM,
  wayText,
} from '../../components/bumpline-static-camber/bumpline-static-camber.words.js';
import { dropText } from '../../components/element/drop-words.js';
import { fill } from '../../components/element/sentence.js';
import { carOf, heightsOf } from '../../components/page-data/page-source.js';
import { cornerSourceOf } from '../../core/answers/car-request.js';
import { tried } from '../../core/answers/from-source.js';
import { staticCamberSteps } from '../../core/answers/static-camber.js';
import { asLinks } from '../../core/document/as-links.js';
import { EMPTY_CAR, withPageHeights } from '../../core/document/car.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { finished } from '../../core/math/finished.js';
import { readAngleAttribute } from '../../core/quantity/angle-attribute.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { attribute, type Element, findAll, tableOf } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** Of hard points in a table; else of the built-in example. By how much, at the drop and over the bump in attributes. */
export function staticCamberSaid(element: Element): Said {
  const table = findAll(element, ({ tagName }) => tagName === 'table').find(
    (one) => attribute(one, 'data-example') === undefined,
  );
  const { given, problems } = table
    ? readPointSheet(tableOf(table), DISPLAY.language)
    : { given: { points: {} }, problems: [] };
  const heights = heightsOf({ drop: attribute(element, 'drop') });
  const by = readAngleAttribute(attribute(element, 'by') ?? `${USUAL_BY_DEG}`, 'partAngle', 'by');
  const over = readLengthAttribute(attribute(element, 'over') ?? `${USUAL_OVER_MM}`, 'travel', 'over');
  const read = [by, over].flatMap((one) => (one.ok ? [] : [one.problem]));
  checkNone(element, [...problems, ...heights.problems, ...read]);
  const stands = withPageHeights(EMPTY_CAR, heights.car, false);
  const car = asLinks(carOf({ car: { given }, problems }, stands, false));
  const asked = {
    source: cornerSourceOf(car),
    drop: car.drop,
    by: by.ok ? by.value : USUAL_BY_DEG,
    over: over.ok ? over.value : USUAL_OVER_MM,
  };
  const answer = finished(staticCamberSteps(tried(asked)));
  const [lead] = answer.ways.filter(({ isReached }) => isReached);
  return {
    stretches: fill(FIRST.spoken, {
      by: angleText(answer.by, DISPLAY),
      sense: senseText(answer.by),
      drop: dropText(answer.drop, DISPLAY),
      way: wayText(answer.drop),
      rest: sentence(answer, car, DISPLAY),
    }),
    figures: lead
      ? [
          ...figures('amount', lead.amount, undefined, lead.unit === 'mm' ? 'partLength' : 'partAngle'),
          ...figures('lost', Math.abs(answer.by - lead.change.inclinationAt30), undefined, 'partAngle'),
        ]
      : [],
  };
}
