import { FIRST, sentence, verb } from '../../components/bumpline-geometry/bumpline-geometry.words.js';
import { workbenchOf } from '../../components/bumpline-geometry/workbench.js';
import { dropText } from '../../components/element/drop-words.js';
import { fill } from '../../components/element/sentence.js';
import { carOf, heightsOf } from '../../components/page-data/page-source.js';
import { cornerSourceOf, withParts } from '../../core/answers/car-request.js';
import { geometry, geometryDoubt } from '../../core/answers/from-source.js';
import { outputAt, outputChange } from '../../core/answers/geometry-at.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { asLinks } from '../../core/document/as-links.js';
import { EMPTY_CAR, withPageHeights } from '../../core/document/car.js';
import { linkedSets } from '../../core/document/linked-sets.js';
import { readPointSheet } from '../../core/document/point-sheet.js';
import { attribute, type Element, findAll, tableOf } from './markup.js';
import { checkNone, DISPLAY, figures, type Said } from './said.js';

/** Of hard points in a table, else of the built-in example, at the drop in an attribute, with the example's sets of parts. */
export function geometrySaid(element: Element): Said {
  const table = findAll(element, ({ tagName }) => tagName === 'table').find(
    (one) => attribute(one, 'data-example') === undefined,
  );
  const { given, problems } = table
    ? readPointSheet(tableOf(table), DISPLAY.language)
    : { given: { points: {} }, problems: [] };
  const heights = heightsOf({ drop: attribute(element, 'drop') });
  checkNone(element, [...problems, ...heights.problems]);
  const stands = withPageHeights(EMPTY_CAR, heights.car, false);
  const car = asLinks(carOf({ car: { given }, problems }, stands, false));
  const links = (source: AnySource) => ({ curves: geometry({ source }), doubt: geometryDoubt({ source }) });
  const source = cornerSourceOf(car);
  const sets = linkedSets(car).map((set) => ({ set, ...links(withParts(source, set.setup)!) }));
  const answer = workbenchOf(car, links(source), sets, 0);
  const { drop, over, bare } = answer;
  const fitted = answer.sets[0]!;
  const height = (key: string, of: typeof bare, at: number) => {
    const { value, plusMinus } = outputAt(of, 'rollCentreHeight', at);
    // At stock height the sentence says it to whole millimetres.
    return at === 0 ? figures(key, Math.round(value), undefined, 'travel') : figures(key, value, plusMinus, 'travel');
  };
  const camber = outputChange(fitted, 'camber', drop + over, drop);
  return {
    stretches: fill(FIRST.spoken, {
      verb: verb(drop),
      drop: dropText(drop, DISPLAY),
      rest: sentence(answer, car, DISPLAY),
    }),
    figures: [
      ...height('bare-height', bare, drop),
      ...height('stock-height', bare, 0),
      ...height('height', fitted, drop),
      ...figures('camber', camber.value, camber.plusMinus, 'camberChange'),
      ...figures('bare-camber', outputChange(bare, 'camber', drop + over, drop).value, undefined, 'camberChange'),
    ],
  };
}
