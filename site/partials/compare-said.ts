import { FIRST, sentence } from '../../components/bumpline-compare/bumpline-compare.words.js';
import { compareRequest, heightsOf, overOf } from '../../components/bumpline-compare/compare-settings.js';
import { firstCells } from '../../components/bumpline-compare/compared-sets.js';
import { fill, show } from '../../components/element/sentence.js';
import { sourceOfSetup } from '../../core/answers/car-request.js';
import { compareCurves, netChange } from '../../core/answers/compare.js';
import { curveOf } from '../../core/curve/curve.js';
import { solveSource } from '../../core/curve-sources/solve-source.js';
import { camberOf } from '../../core/curve-sources/solved-source.js';
import { EMPTY_CAR } from '../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import type { Setup } from '../../core/document/setup.js';
import { attribute, type Element, findAll } from './markup.js';
import { readingsIn } from './readings-in.js';
import { DISPLAY, figures, type Said } from './said.js';

/** The sets of a page's table, else the example's. */
function setupsIn(element: Element): readonly Setup[] {
  const tables = findAll(element, ({ tagName }) => tagName === 'table');
  const table = tables.find((one) => attribute(one, 'data-example') === undefined) ?? tables[0];
  if (!table) return EXAMPLE_SETUPS;
  const { readings, sets, doubts } = readingsIn(element, table, 'camber');
  return sets.map(({ name, readings: own }) => ({
    name: name || FIRST.unnamed,
    cornerName: 'Front left',
    quantity: 'camber',
    readings: own.map((i) => readings[i]!),
    ...(doubts && { doubts }),
  }));
}

/** Of the sets in a table, at the heights and over the bump in attributes. @throws {Error} of fewer than two sets or heights */
export function compareSaid(element: Element): Said {
  const setups = setupsIn(element);
  const page = { heights: attribute(element, 'heights'), over: attribute(element, 'over') };
  const [heights, over] = [heightsOf(EMPTY_CAR, page), overOf(EMPTY_CAR, page)];
  if (setups.length < 2 || heights.length < 2)
    throw new Error(
      `<${element.tagName}> compares two sets at two heights: there are ${setups.length} at ${heights.length}.`,
    );
  const curves = setups.map((setup) => ({ curve: curveOf(camberOf(solveSource(sourceOfSetup(setup)))) }));
  const request = compareRequest({ curves, heights, over, solid: undefined });
  const comparison = compareCurves(request);
  const { from, to } = firstCells({ rows: [], own: undefined, yours: 0, pages: setups.length });
  const net = netChange(request, from, to);
  const told = { names: setups.map(({ name }) => name), own: -1, heights, comparison, from, to, net };
  const changeAt = (key: string, { curve, height }: typeof from) => {
    const change = comparison.cells[curve]![height]!.change;
    return change ? figures(key, change.value, change.plusMinus, 'camberChange') : [];
  };
  const even = comparison.breakEvens[to.curve - 1]?.change;
  const half =
    even?.kind === 'at' ? Math.max(even.drop - even.interval.low, even.interval.high - even.drop) : undefined;
  return {
    stretches: fill(FIRST.spoken, { over: show(over, 'travel', DISPLAY), rest: sentence(told, DISPLAY) }),
    figures: [
      ...changeAt('to', to),
      ...changeAt('from', from),
      ...(net ? figures('net', net.total.value, net.total.plusMinus, 'camberChange') : []),
      ...(even?.kind === 'at' ? figures('break-even', even.drop, half, 'drop') : []),
    ],
  };
}
