import { pageFitment } from '../../../components/bumpline-clearance/page-fitment.js';
import { limitsOf } from '../../../components/bumpline-lowering/travel-ends.js';
import { pageSetups } from '../../../components/bumpline-readings/page-readings.js';
import { readDoubts } from '../../../components/page-data/doubts-attribute.js';
import { readPageCar } from '../../../components/page-data/page-car.js';
import { carOf, heightsOf, sourceOf } from '../../../components/page-data/page-source.js';
import { readReadingSheet } from '../../../components/page-data/reading-sheet.js';
import { tableProblems } from '../../../components/page-data/table-problems.js';
import type { SnippetTag } from '../../../components/publish/snippet.js';
import { type CarDocument, EMPTY_CAR, withPageHeights } from '../../../core/document/car.js';
import { readPointSheet } from '../../../core/document/point-sheet.js';
import { withPageSetups } from '../../../core/document/setups.js';
import { attributesOf, elementsIn, tablesIn, textIn } from './read-markup.js';

const READS_READINGS: readonly SnippetTag[] = ['bumpline-readings', 'bumpline-compare'];

/** The car that an element has on a page with some HTML in it, by the readers of its page's data; and the attributes of its tag. */
export function carOnPage(tag: SnippetTag, html: string): { car: CarDocument; attributes: Record<string, string> } {
  const [outer] = elementsIn(html);
  const attributes = attributesOf(outer!);
  const script = elementsIn(html).find(({ tagName }) => tagName === 'script');
  const [table] = tablesIn(html);
  const problems: unknown[] = [];
  const heights = heightsOf({
    drop: attributes.drop,
    dropPlusMinus: attributes['drop-plus-minus'],
    bumpTravel: attributes['bump-travel'],
  });
  problems.push(...heights.problems);
  let car = withPageHeights(EMPTY_CAR, heights.car, true);
  const isReadings =
    table && (READS_READINGS.includes(tag) || (tag === 'bumpline-toe' && /Wheel travel/.test(table.rows[0]!.join())));
  const given = table && !script && !isReadings ? readPointSheet(table, table.attributes.lang!) : undefined;
  problems.push(...(given?.problems ?? []));
  const { coefficients, domain } = attributes;
  const light = { problems: [], ...(given && { given: given.given }) };
  const source = sourceOf({ coefficients, domain, light });
  problems.push(...source.problems);
  if (coefficients !== undefined || given) car = carOf(source, car, true);
  if (isReadings && !script) {
    const { lang, ...data } = table.attributes;
    const named = Object.fromEntries(Object.entries(data).map(([name, value]) => [name.slice('data-'.length), value]));
    const quantity = tag === 'bumpline-toe' || attributes.quantity === 'toe' ? 'toe' : 'camber';
    const understanding = readReadingSheet({ ...table, attributes: named, language: lang! }, quantity);
    const read: Parameters<typeof readDoubts>[1] = [];
    const doubts = readDoubts(data['data-doubts'], read);
    problems.push(...tableProblems(understanding), ...read);
    const page = { over: undefined, readings: undefined, degree: attributes.degree, quantity } as const;
    car = withPageSetups(car, pageSetups(page, { understanding, caption: table.caption, doubts }));
  }
  if (tag === 'bumpline-lowering' && attributes.limits) {
    const limits = limitsOf(attributes.limits);
    problems.push(...limits.problems);
    car = limits.recipe(car);
  }
  if (tag === 'bumpline-clearance') {
    const page = {
      drop: attributes.drop,
      limits: attributes.limits,
      lock: attributes.lock,
      wheelBefore: attributes['wheel-before'],
      wheelAfter: attributes['wheel-after'],
      fit: undefined,
    };
    const fitment = pageFitment(page, undefined);
    problems.push(...fitment.problems);
    car = fitment.recipe(car);
  }
  if (script) {
    const read = readPageCar(JSON.parse(textIn(script)));
    problems.push(...read.problems);
    car = read.put(car, read.said);
  }
  if (problems.length > 0) throw new Error(`A page cannot read it: ${JSON.stringify(problems)}\n${html}`);
  return { car, attributes };
}
