import { nearest, type Seen, seenFrom, travelWhenShorter } from '../reference/independent-clearance.js';
import { type IndependentCorner, independentStrutSweep, type Point } from '../reference/independent-strut.js';
import type { IndependentShape } from '../reference/independent-tyre-section.js';
import { inside, page, tableRows } from './site-source.js';

/*
 * The worked numbers of the page on clearance, from its own tables, by the formulas as the page prints them, and where it turns the
 * wheel from the hard points that it gives its calculator, by test/reference/independent-clearance.ts. Nothing is imported from
 * core/. mm and degrees; outboard is positive.
 *
 * Section width: S = S1 + 0.4 (A − A1), UN Regulation No. 30, 6.1.1.1 and its footnote. A1 as a share of S1 (0.70 from 50-series up,
 * 0.85 below): read second-hand. Tolerances of 4 % on width and on section height: from memory of the same regulation.
 */

const CLEARANCE = 'will-it-clear-at-full-bump/index.html';
const MM_PER_INCH = 25.4;
/** Nominal rim diameters in whole mm, by code. */
const RIM_MM: Record<string, number> = { 16: 406, 17: 432 };
/** A sidewall as the section is taken: as wide as the table says, tread and shoulder by common practice. */
const shapeOf = (wheel: Wheel): IndependentShape => ({
  sectionWidth: sectionWidth(wheel),
  freeRadius: diameter(wheel) / 2,
  rimRadius: wheel.rim / 2,
  rimWidth: wheel.rimInch * MM_PER_INCH,
});

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
/** From the hub's face. */
const outerEdge = (wheel: Wheel): number => sectionWidth(wheel) / 2 - wheel.offset;
const innerEdge = (wheel: Wheel): number => -sectionWidth(wheel) / 2 - wheel.offset;
const sine = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);

const mm = (value: () => number) => ({ unit: 'mm', value });
const degrees = (value: () => number) => ({ unit: '°', value });

/** What the page hands its calculator: the same tables, and hard points. */
export function clearanceScript(): {
  corner: IndependentCorner;
  fit: {
    places: { at: { clock: number; distance: number; out: number; from?: string }; plusMinus?: number }[];
    lock: number;
    marginBodywork: number;
    marginChassis: number;
    allowance: number;
  };
  limits: Record<string, number>;
  drop: number;
} {
  return JSON.parse(inside(inside(page(CLEARANCE), 'bumpline-clearance'), 'script'));
}

/** The sizes that the page names. */
export const NARROWER = '215/45R17';
export const SMALLER = '225/40R17';

/** Each once: they take their time. */
const once = (value: () => number): (() => number) => {
  let known: number | undefined;
  return () => {
    known ??= value();
    return known;
  };
};

/** The invented car with its wheel turned, by the second computation. */
function turnedCar(before: Wheel, after: Wheel) {
  const { corner, fit, limits } = clearanceScript();
  const [lip] = fit.places;
  const { stopGap, stopLength, stopUsable, stopGapPlusMinus } = limits as Record<string, number>;
  const touch = travelWhenShorter(corner, stopGap!);
  const solid = travelWhenShorter(corner, stopGap! + stopUsable! * stopLength!);
  const plane = before.offset - after.offset;
  const needed = fit.marginBodywork + fit.allowance;
  const [pose] = independentStrutSweep(corner, [solid]);

  // At 12 o'clock the old sidewall is widest half way up it, on a wheel that leans as the car's does at rest.
  const lean = (-corner.camber * Math.PI) / 180;
  const toe = Math.tan((corner.toe * Math.PI) / 180);
  const size = Math.hypot(toe, 1, Math.tan(lean));
  const [spinY, spinZ] = [1 / size, Math.tan(lean) / size];
  const inPlane = (-spinY * spinZ) / Math.sqrt(1 - spinZ ** 2);
  const widest = (before.rim / 2 + diameter(before) / 2) / 2;
  const point: Point = [0, (sectionWidth(before) / 2) * spinY + widest * inPlane + lip!.at.out, lip!.at.distance];

  const seen = (end = solid, more = 0, lock = fit.lock): Seen[] => seenFrom(corner, point, { lock, end, lean: more });
  const all = seen();
  /** The stop's gap is known to so much, and its end as much more or less by the damper's motion. */
  const rate = (travelWhenShorter(corner, 61) - travelWhenShorter(corner, 60)) / 1;
  const plusMinusOf = (shape: IndependentShape, shift: number, spots: readonly Seen[], end = solid): number => {
    const worst = nearest(spots, shape, shift);
    if (Math.abs(worst.travel - end) > 1e-6) return lip!.plusMinus!;
    const before = nearest(
      spots.filter(({ travel, steer }) => Math.abs(travel - (end - 1)) < 1e-6 && Math.abs(steer - worst.steer) < 0.01),
      shape,
      shift,
    );
    return Math.hypot(lip!.plusMinus!, (worst.gap - before.gap) * stopGapPlusMinus! * rate);
  };
  const free = (shape: IndependentShape, shift: number, spots: readonly Seen[] = all, end = solid) =>
    nearest(spots, shape, shift).gap - plusMinusOf(shape, shift, spots, end) - needed;
  /** The least size, between nothing and the most, at which all of it is free. */
  const justFree = (most: number, isFree: (x: number) => boolean): number => {
    let [low, high] = [0, most];
    if (!isFree(high)) return Number.NaN;
    for (let i = 0; i < 13; i++) {
      const middle = (low + high) / 2;
      if (isFree(middle)) high = middle;
      else low = middle;
    }
    return high;
  };
  const shape = shapeOf(after);
  const bump = once(() => justFree(12, (x) => free(shape, plane, seen(solid - x), solid - x) >= 0));
  const damper = (travel: number) => {
    const [rest, there] = independentStrutSweep(corner, [0, travel]);
    return rest!.damperLength - there!.damperLength;
  };
  /** Rod between the end with packers and without. */
  const packers = once(() => damper(solid) - damper(solid - bump()));
  return {
    touch,
    solid,
    inboard: corner.wheelCentre[1] - pose!.wheelCentre[1],
    camber: pose!.camber - corner.camber,
    turned: () => nearest(all, shape, plane),
    ahead: () => nearest(seen(solid, 0, 0), shape, plane).gap,
    plusMinus: () => plusMinusOf(shape, plane, all),
    largest: () =>
      nearest(all, { ...shape, sectionWidth: 1.04 * shape.sectionWidth, freeRadius: diameter(after, 1.04) / 2 }, plane)
        .gap,
    inward: () => justFree(20, (x) => free(shape, plane - x) >= 0),
    narrower: () => justFree(40, (x) => free({ ...shape, sectionWidth: shape.sectionWidth - x }, plane) >= 0),
    smaller: () => justFree(30, (x) => free({ ...shape, freeRadius: shape.freeRadius - x / 2 }, plane) >= 0),
    lean: () => justFree(2.5, (x) => free(shape, plane, seen(solid, -x)) >= 0),
    isFree: (wheel: Wheel) => free(shapeOf(wheel), plane) >= 0,
    bump,
    packers,
  };
}

/** By data-name. */
export function workedClearance(): Record<string, { unit: string; value: () => number }> {
  const html = page(CLEARANCE);
  const [before, after] = wheelsOf(inside(html, 'table', 'data-example="wheels"')) as [Wheel, Wheel];
  const rows = new Map(tableRows(inside(html, 'table', 'data-example="arch"')).map(({ name, cells }) => [name, cells]));
  const given = (name: string): number => {
    const cell = rows.get(name)?.[0];
    if (cell === undefined) throw new Error(`The table has no row "${name}".`);
    return number(cell);
  };
  const lipOut = given('Arch lip outboard of the old outer sidewall');
  const lipDistance = given('Hub centre to arch lip, 12 o’clock');
  const allowance = given('Allowance for rubber');
  const car = turnedCar(before, after);

  const outerMoves = () => outerEdge(after) - outerEdge(before);
  /** Where a sidewall is widest: half way up it. */
  const bulge = () => (after.rim / 2 + diameter(after) / 2) / 2;
  const leanOnTheWay = () => bulge() * sine(-car.camber);
  const gap = () => lipOut - outerMoves() + car.inboard + leanOnTheWay();
  /** Rounded to the side that clears, as it is said. */
  const up = (value: () => number, step = 0.1) => once(() => Math.ceil(value() / step - 1e-9) * step);
  const inward = up(car.inward);

  const worked: Record<string, { unit: string; value: () => number }> = {
    'clear.width-difference': mm(() => sectionWidth(after) - sectionWidth(before)),
    'clear.half-inch': mm(() => 0.4 * 0.5 * MM_PER_INCH),
    'clear.plane-moves': mm(() => before.offset - after.offset),
    'clear.outer-moves': mm(outerMoves),
    'clear.inner-moves': mm(() => innerEdge(after) - innerEdge(before)),
    'clear.radius-after': mm(() => diameter(after) / 2),
    'clear.solid': mm(() => car.solid),
    'clear.inboard': mm(() => car.inboard),
    'clear.lip-over-hub': mm(() => lipDistance - car.solid),
    'clear.lean-on-the-way': mm(leanOnTheWay),
    'clear.gap': mm(gap),
    'clear.ahead': mm(car.ahead),
    'clear.turned': mm(() => car.turned().gap),
    'clear.turned-steer': degrees(() => Math.abs(car.turned().steer)),
    'clear.turned-plus-minus': mm(car.plusMinus),
    'clear.turned-left': mm(() => car.turned().gap - car.plusMinus() - allowance),
    'clear.turned-largest': mm(car.largest),
    'clear.needs-inward': mm(inward),
    'clear.needs-offset': mm(() => after.offset + inward()),
    'clear.needs-width': mm(up(car.narrower)),
    'clear.needs-diameter': mm(up(car.smaller)),
    'clear.needs-camber': degrees(up(car.lean, 0.01)),
    'clear.needs-bump': mm(up(car.bump)),
    'clear.stop-before': mm(() => car.solid - car.touch),
    'clear.packers': mm(up(car.packers)),
  };
  for (const [when, wheel] of Object.entries({ before, after })) {
    worked[`clear.width-${when}`] = mm(() => sectionWidth(wheel));
    worked[`clear.outer-edge-${when}`] = mm(() => outerEdge(wheel));
    worked[`clear.inner-edge-${when}`] = mm(() => innerEdge(wheel));
    worked[`clear.diameter-${when}`] = mm(() => diameter(wheel));
  }
  return worked;
}

/** Whether a tyre of another size on the new wheel's rim clears the invented car's lip, by the second computation. */
export function clearsWith(size: string): boolean {
  const [before, after] = wheelsOf(inside(page(CLEARANCE), 'table', 'data-example="wheels"')) as [Wheel, Wheel];
  const [, section, aspect, code] = /^(\d{3})\/(\d{2})R(\d{2})$/.exec(size)!;
  const other = { ...after, section: Number(section), aspect: Number(aspect), rim: RIM_MM[code!]! };
  return turnedCar(before, after).isFree(other);
}
