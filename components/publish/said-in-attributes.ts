import type { PageCar } from '../../core/document/page-car.js';
import { isFilled } from '../../core/document/provenance.js';
import type { TravelLimits } from '../../core/travel/travel-limits.js';
import type { SnippetTag } from './relevant.js';

/** What a snippet says in attributes, and what is left to be said of the car. */
export interface InAttributes {
  attributes: Record<string, string>;
  rest: PageCar;
}

/** As attributes are read: a point for decimals, and no exponent. */
const figure = (size: number): string => String(Number(size.toFixed(6)) + 0);
const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** As `readLimits` reads it. */
const limitsText = (limits: TravelLimits): string =>
  Object.entries(limits)
    .map(([name, size]) => `${kebab(name)} ${figure(size as number)}`)
    .join('; ');

const HAS_DROP: readonly SnippetTag[] = [
  'bumpline-lowering',
  'bumpline-clearance',
  'bumpline-geometry',
  'bumpline-toe',
  'bumpline-cornering',
  'bumpline-static-camber',
  'bumpline-predict',
];

/** Settings that an attribute can say, by the field that holds them; with any other beside them the field stays whole. */
const SETTINGS: Readonly<Partial<Record<SnippetTag, readonly [field: keyof PageCar, attributes: readonly string[]]>>> =
  {
    'bumpline-compare': ['compare', ['heights', 'over']],
    'bumpline-toe': ['toe', ['over']],
    'bumpline-cornering': ['turn', ['roll']],
    'bumpline-static-camber': ['camberAdded', ['by', 'over']],
    'bumpline-predict': ['predict', ['over']],
  };

/** Whatever attributes of the element can say of it, they say: that is what an author changes first. */
export function saidInAttributes(tag: SnippetTag, said: PageCar): InAttributes {
  const rest: Record<string, unknown> = { ...said };
  const attributes: Record<string, string> = {};
  const move = (field: keyof PageCar, name: string, text: string) => {
    attributes[name] = text;
    delete rest[field];
  };
  const { drop, dropPlusMinus, bumpTravel, stopGap, limits = {}, curve } = said;
  const isLowering = tag === 'bumpline-lowering';
  if (isLowering && curve?.kind === 'coefficients' && !curve.standardUncertainties) {
    move('curve', 'coefficients', curve.coefficients.join(' '));
    attributes.domain = curve.domain.map(figure).join(' ');
  }
  // Its ± is said together with it, or in no attribute.
  const isSaid = HAS_DROP.includes(tag) && drop !== undefined && (dropPlusMinus === undefined || isLowering);
  if (isSaid) move('drop', 'drop', figure(drop));
  if (isSaid && dropPlusMinus !== undefined) move('dropPlusMinus', 'drop-plus-minus', figure(dropPlusMinus));
  if (isLowering && bumpTravel !== undefined) move('bumpTravel', 'bump-travel', figure(bumpTravel));
  const ends = { ...(stopGap !== undefined && { stopGap }), ...limits };
  // A page's wheels and what ends travel are given together.
  const areAlone = said.loads === undefined && (said.fit === undefined || canBeAttributes(said));
  if ((isLowering || tag === 'bumpline-clearance') && isFilled(ends) && areAlone) {
    move('limits', 'limits', limitsText(ends));
    delete rest.stopGap;
  }
  if (tag === 'bumpline-clearance' && canBeAttributes(said)) wheels(said, attributes, rest);
  if (tag === 'bumpline-readings' && said.readingsOver !== undefined) {
    move('readingsOver', 'over', figure(said.readingsOver));
  }
  const [field, names] = SETTINGS[tag] ?? [];
  const settings = field && (said[field] as Record<string, unknown> | undefined);
  if (settings && Object.keys(settings).every((name) => names!.includes(name))) {
    for (const [name, value] of Object.entries(settings)) attributes[name] = [value].flat().map(asFigure).join(', ');
    delete rest[field];
  }
  return { attributes, rest: rest as PageCar };
}

/** A car without the settings that attributes name: a page's JSON would count before them. */
export function withoutNamed(tag: SnippetTag, said: PageCar, attributes: Readonly<Record<string, string>>): PageCar {
  const [field] = SETTINGS[tag] ?? [];
  const settings = field && (said[field] as Record<string, unknown> | undefined);
  if (tag === 'bumpline-readings' && 'over' in attributes) {
    const { readingsOver: _, ...others } = said;
    return others;
  }
  if (!settings) return said;
  const left = Object.entries(settings).filter(([name]) => !(name in attributes));
  const { [field]: _, ...others } = said;
  return left.length > 0 ? ({ ...others, [field]: Object.fromEntries(left) } as PageCar) : others;
}

const asFigure = (size: unknown): string => figure(size as number);

const SIMPLE = ['size', 'rimWidthInch', 'offset', 'spacer'];

/** Whether attributes can say all of the wheels: two of them by size, rim, offset and spacer, and full lock. */
function canBeAttributes({ fit }: PageCar): boolean {
  if (!fit) return false;
  const { before, after, lock: _, ...others } = fit;
  const all = [before, after].filter((wheel) => wheel !== undefined);
  return !isFilled(others) && all.every((wheel) => Object.keys(wheel).every((name) => SIMPLE.includes(name)));
}

function wheels({ fit }: PageCar, attributes: Record<string, string>, rest: Record<string, unknown>): void {
  for (const which of ['before', 'after'] as const) {
    const wheel = fit?.[which];
    if (!wheel) continue;
    const { size = '', rimWidthInch, offset, spacer } = wheel;
    const figures = [rimWidthInch!, offset!, ...(spacer === undefined ? [] : [spacer])].map(figure);
    attributes[`wheel-${which}`] = [size, ...figures].join(', ');
  }
  if (fit?.lock !== undefined) attributes.lock = figure(fit.lock);
  delete rest.fit;
}
