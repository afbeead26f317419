import { inside, page, tableRows } from './site-source.js';

/*
 * The worked numbers of the page on clearance, from its own tables, by the formulas as the page prints them. Nothing is imported
 * from core/. mm and degrees; outboard is positive.
 *
 * Section width: S = S1 + 0.4 (A − A1), UN Regulation No. 30, 6.1.1.1 and its footnote. A1 as a share of S1 (0.70 from 50-series up,
 * 0.85 below): read second-hand. Tolerances of 4 % on width and on section height: from memory of the same regulation.
 */

const CLEARANCE = 'will-it-clear-at-full-bump/index.html';
const MM_PER_INCH = 25.4;
/** Nominal rim diameters in whole mm, by code. */
const RIM_MM: Record<string, number> = { 16: 406, 17: 432 };

const number = (text: string): number => Number(text.replace('−', '-').replace(/[^\d.-]/g, ''));

interface Wheel {
  section: number;
  aspect: number;
  rim: number;
  rimInch: number;
  offset: number;
}

/** The two wheels of the table: before, after. */
function wheelsOf(table: string): Wheel[] {
  const rows = new Map(tableRows(table).map(({ name, cells }) => [name, cells]));
  return [0, 1].map((at) => {
    const [, section, aspect, code] = /^(\d{3})\/(\d{2})R(\d{2})$/.exec(rows.get('Tyre')![at]!)!;
    return {
      section: Number(section),
      aspect: Number(aspect),
      rim: RIM_MM[code!]!,
      rimInch: number(rows.get('Rim width')![at]!),
      offset: number(rows.get('Offset')![at]!),
    };
  });
}

const sectionWidth = ({ section, aspect, rimInch }: Wheel): number =>
  section + 0.4 * (rimInch * MM_PER_INCH - (aspect >= 50 ? 0.7 : 0.85) * section);
const sectionHeight = ({ section, aspect }: Wheel): number => (section * aspect) / 100;
const diameter = (wheel: Wheel, share = 1): number => wheel.rim + 2 * sectionHeight(wheel) * share;
/** As tables print it: the height is rounded first. */
const printedDiameter = (wheel: Wheel): number => wheel.rim + 2 * Math.round(sectionHeight(wheel));
/** From the hub's face. */
const outerEdge = (wheel: Wheel): number => sectionWidth(wheel) / 2 - wheel.offset;
const innerEdge = (wheel: Wheel): number => -sectionWidth(wheel) / 2 - wheel.offset;
const sine = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);

const mm = (value: () => number) => ({ unit: 'mm', value });
const degrees = (value: () => number) => ({ unit: '°', value });
const percent = (value: () => number) => ({ unit: '%', value });

/** By data-name. */
export function workedClearance(): Record<string, { unit: string; value: () => number }> {
  const html = page(CLEARANCE);
  const [before, after] = wheelsOf(inside(html, 'table', 'data-example="wheels"')) as [Wheel, Wheel];
  const rows = new Map(tableRows(inside(html, 'table', 'data-example="arch"')).map(({ name, cells }) => [name, cells]));
  const given = (name: string, column = 0): number => {
    const cell = rows.get(name)?.[column];
    if (cell === undefined) throw new Error(`The table has no row "${name}".`);
    return number(cell);
  };
  const lipOut = given('Arch lip outboard of the old outer sidewall');
  const plusMinus = given('Arch lip outboard of the old outer sidewall', 1);
  const lipDistance = given('Hub centre to arch lip, 12 o’clock');
  const bump = given('Bump until the stop is solid');
  const inboard = given('Hub centre moves inboard on the way');
  const bumpCamber = given('Camber gained on the way');
  const perch = given('Spring perch inboard of the old inner sidewall');
  const setCamber = given('Camber set besides, at the top mount');
  const hubOverBall = given('Hub centre above the lower ball joint');
  const allowance = given('Allowance for rubber');
  const margin = given('Margin to bodywork');

  const outerMoves = () => outerEdge(after) - outerEdge(before);
  const innerMoves = () => innerEdge(after) - innerEdge(before);
  /** Where a sidewall is widest: half way up it. */
  const bulge = () => (after.rim / 2 + diameter(after) / 2) / 2;
  const leanOnTheWay = () => bulge() * sine(-bumpCamber);
  const leanSet = () => (hubOverBall + bulge()) * sine(-setCamber);
  const gapUnleaned = () => lipOut - outerMoves() + inboard + leanOnTheWay();
  const gap = () => gapUnleaned() + leanSet();
  const wider = () => (0.04 * sectionWidth(after)) / 2;
  /** What is left of a gap at the bad end of its ±. */
  const left = (of: number) => of - plusMinus - allowance;
  const missing = () => margin - left(gapUnleaned());

  const worked: Record<string, { unit: string; value: () => number }> = {
    'clear.width-difference': mm(() => sectionWidth(after) - sectionWidth(before)),
    'clear.half-difference': mm(() => (sectionWidth(after) - sectionWidth(before)) / 2),
    'clear.half-inch': mm(() => 0.4 * 0.5 * MM_PER_INCH),
    'clear.plane-moves': mm(() => before.offset - after.offset),
    'clear.outer-moves': mm(outerMoves),
    'clear.inner-moves': mm(innerMoves),
    'clear.diameter-difference': mm(() => diameter(after) - diameter(before)),
    'clear.rides-higher': mm(() => (diameter(after) - diameter(before)) / 2),
    'clear.gearing': percent(() => 100 * (diameter(after) / diameter(before) - 1)),
    'clear.width-largest': mm(() => 1.04 * sectionWidth(after)),
    'clear.wider-a-side': mm(wider),
    'clear.radius-largest': mm(() => diameter(after, 1.04) / 2),
    'clear.radius-more': mm(() => (diameter(after, 1.04) - diameter(after)) / 2),
    'clear.bulge-radius': mm(bulge),
    'clear.lip-over-hub': mm(() => lipDistance - bump),
    'clear.reaches-past': mm(() => diameter(after) / 2 - (lipDistance - bump)),
    'clear.at-ride': mm(() => lipOut - outerMoves()),
    'clear.lean-on-the-way': mm(leanOnTheWay),
    'clear.lean-set': mm(leanSet),
    'clear.gap': mm(gap),
    'clear.left': mm(() => left(gap())),
    'clear.spare': mm(() => left(gap()) - margin),
    'clear.left-largest': mm(() => left(gap()) - wider()),
    'clear.gap-unleaned': mm(gapUnleaned),
    'clear.left-unleaned': mm(() => left(gapUnleaned())),
    'clear.best-unleaned': mm(() => gapUnleaned() + plusMinus - allowance),
    'clear.missing': mm(missing),
    'clear.needs-offset': mm(() => after.offset + missing()),
    'clear.needs-width': mm(() => 2 * missing()),
    'clear.needs-camber': degrees(() => (Math.asin(missing() / (hubOverBall + bulge())) * 180) / Math.PI),
    'clear.perch': mm(() => perch + innerMoves()),
    'clear.height-after': mm(() => sectionHeight(after)),
  };
  for (const [when, wheel] of Object.entries({ before, after })) {
    worked[`clear.theoretical-rim-${when}`] = mm(() => (wheel.aspect >= 50 ? 0.7 : 0.85) * wheel.section);
    worked[`clear.rim-${when}`] = mm(() => wheel.rimInch * MM_PER_INCH);
    worked[`clear.width-${when}`] = mm(() => sectionWidth(wheel));
    worked[`clear.outer-edge-${when}`] = mm(() => outerEdge(wheel));
    worked[`clear.inner-edge-${when}`] = mm(() => innerEdge(wheel));
    worked[`clear.diameter-${when}`] = mm(() => diameter(wheel));
    worked[`clear.radius-${when}`] = mm(() => diameter(wheel) / 2);
    worked[`clear.printed-diameter-${when}`] = mm(() => printedDiameter(wheel));
  }
  return worked;
}
