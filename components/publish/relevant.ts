import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';
import { asPageCar, type PageCar } from '../../core/document/page-car.js';
import { isFilled } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';

/** The elements that answer a question. */
export type SnippetTag =
  | 'bumpline-lowering'
  | 'bumpline-readings'
  | 'bumpline-clearance'
  | 'bumpline-compare'
  | 'bumpline-geometry'
  | 'bumpline-toe'
  | 'bumpline-cornering'
  | 'bumpline-static-camber'
  | 'bumpline-predict';

type Field = keyof PageCar;

const CORNER: readonly Field[] = [
  'cornerName',
  'by',
  'given',
  'whole',
  'curve',
  'measuredAt',
  'camberReadLower',
  'links',
];
const SETS: readonly Field[] = ['setups', 'setup', 'fitted'];
const DROP: readonly Field[] = ['drop', 'dropPlusMinus'];
const ENDS: readonly Field[] = ['bumpTravel', 'stopGap', 'limits', 'loads', 'lowered'];

/** What of a car each element can show: whoever reads an article asks that question, and not those of the other elements. */
const FIELDS: Readonly<Record<SnippetTag, readonly Field[]>> = {
  'bumpline-lowering': [...CORNER, ...SETS, ...DROP, ...ENDS, 'other'],
  'bumpline-readings': [...SETS, 'readingsOver', 'readingsDegree'],
  'bumpline-clearance': [...CORNER, ...SETS, ...DROP, ...ENDS, 'fit'],
  'bumpline-compare': [...CORNER, ...SETS, ...ENDS, 'compare'],
  'bumpline-geometry': [...CORNER, ...SETS, ...DROP, ...ENDS],
  'bumpline-toe': [...CORNER, ...SETS, ...DROP, 'toe', 'alignment', 'other'],
  'bumpline-cornering': [...CORNER, ...SETS, ...DROP, ...ENDS, 'turn', 'leastCost'],
  'bumpline-static-camber': [...CORNER, ...SETS, ...DROP, ...ENDS, 'camberAdded', 'turn', 'leastCost'],
  'bumpline-predict': [...CORNER, ...SETS, ...DROP, 'predict'],
};

export const SNIPPET_TAGS = Object.keys(FIELDS) as SnippetTag[];

/** Whether an element's answer has anything of the sets of parts in it, or offers them. */
function areSetsUsed(tag: SnippetTag, car: CarDocument): boolean {
  const { setups = [], fitted, links } = car;
  if (['bumpline-readings', 'bumpline-compare', 'bumpline-predict'].includes(tag)) return true;
  if (sourceKindOf(car) === 'readings' || fitted !== undefined || links === 'learnt') return true;
  // A car of which nothing but readings is known is not the example's, whose steering lock would stand in.
  if (tag === 'bumpline-clearance') return cornerGivenBy(car) === undefined;
  if (tag === 'bumpline-lowering') return false;
  const isRead = tag === 'bumpline-toe' && setups.some(({ quantity }) => quantity === 'toe');
  return isRead || setups.some(({ parts }) => parts !== undefined);
}

/** What of a car an element can show, as a page says it. */
export function relevantOf(tag: SnippetTag, car: CarDocument): { said: PageCar; areSetsLeftOut: boolean } {
  const areSetsIn = areSetsUsed(tag, car);
  const fields = FIELDS[tag].filter((field) => areSetsIn || !SETS.includes(field));
  const said = Object.fromEntries(
    Object.entries(asPageCar(car)).filter(([field, value]) => {
      const isSomething = typeof value !== 'object' || value === null || Array.isArray(value) || isFilled(value);
      return fields.includes(field as Field) && isSomething && value !== undefined;
    }),
  ) as PageCar;
  return { said, areSetsLeftOut: !areSetsIn && (car.setups?.length ?? 0) > 0 };
}
