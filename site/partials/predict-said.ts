import {
  FIRST,
  fromText,
  lengthText,
  opening,
  sentence,
  wayText,
} from '../../components/bumpline-predict/bumpline-predict.words.js';
import { dropText } from '../../components/element/drop-words.js';
import { fill } from '../../components/element/sentence.js';
import { heightsOf } from '../../components/page-data/page-source.js';
import { tried } from '../../core/answers/from-source.js';
import { predictSteps } from '../../core/answers/predict.js';
import { EMPTY_CAR, withPageHeights } from '../../core/document/car.js';
import { learntSourceOf } from '../../core/document/learnt-in-use.js';
import { linkedSets } from '../../core/document/linked-sets.js';
import { predictInUse, USUAL_PREDICT_OVER_MM } from '../../core/document/predict-in-use.js';
import { finished } from '../../core/math/finished.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { attribute, type Element, findAll } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

const isOwn = (one: Element) =>
  one.tagName === 'script' || (one.tagName === 'table' && attribute(one, 'data-example') === undefined);

/**
 * Of the built-in example with the first of its sets of parts, at the drop and over the bump in attributes.
 *
 * @throws {Error} of links or readings that are the page's own: which table is of which, the element alone knows
 */
export function predictSaid(element: Element): Said {
  const heights = heightsOf({ drop: attribute(element, 'drop') });
  const read = readLengthAttribute(attribute(element, 'over') ?? `${USUAL_PREDICT_OVER_MM}`, 'travel', 'over');
  checkNone(element, [...heights.problems, ...(read.ok ? [] : [read.problem])]);
  if (findAll(element, isOwn).length > 0)
    throw new Error(
      `A page with links or readings of its own writes the first sentence of <${element.tagName}> itself.`,
    );
  const car = withPageHeights(EMPTY_CAR, heights.car, false);
  const [set] = linkedSets(car);
  const source = learntSourceOf(predictInUse(car).car)!;
  const over = read.ok ? read.value : USUAL_PREDICT_OVER_MM;
  const { parts = [] } = set!.setup;
  const answer = finished(predictSteps(tried({ source, parts, drop: car.drop, over })));
  const onSheet = { ...answer, source, set, measuredAt: 0 };
  const { predicted, byTape } = answer;
  return {
    stretches: fill(FIRST.spoken, {
      set: opening(car, set!.setup.name),
      drop: dropText(car.drop, DISPLAY),
      way: wayText(car.drop),
      over: lengthText(over, DISPLAY),
      from: fromText(over),
      rest: sentence(onSheet, DISPLAY),
    }),
    figures: [
      ...figures('change', predicted.value, predicted.plusMinus, 'camberChange'),
      ...figures('by-tape', byTape.value, byTape.plusMinus, 'camberChange').slice(1),
    ],
  };
}
