import { inside, page, tableRows } from './site-source.js';

/*
 * The worked numbers of the page on springs, from its own table, by the formulas as the page prints them. Nothing is imported from
 * core/. mm at the wheel unless said, N, N/mm, kg, Hz.
 *
 * Wheel rate k · MR²: Barton and Fieldhouse, Automotive Chassis Engineering, 2018, equation 3.33; the term F · dMR/dz by
 * differentiation of F · MR; frequency and static load by elementary mechanics, standard gravity 9.80665 m/s².
 */

const SPRINGS = 'springs-loads-and-frequencies/index.html';
const GRAVITY = 9.80665;
/** How the page's second look at the motion ratio has it grow, per mm of bump. */
const RATIO_SLOPE = 0.0005;
const ARM_RATIO = 0.6;
const LOAD_FACTOR = 2;
/** The example's own spring and two stiffer ones, N/mm. */
const COMPARED = [28, 40, 60];

const mm = (value: () => number) => ({ unit: 'mm', value });
const percent = (value: () => number) => ({ unit: '%', value });
/** With its unit written behind it. */
const pure = (value: () => number) => ({ unit: '', value });

/** Travel after which a damper has shortened by so much, its ratio growing with travel: MR z + slope z²/2 = shortening. */
const travelIntegrated = (shortening: number, ratio: number): number =>
  (Math.sqrt(ratio * ratio + 2 * RATIO_SLOPE * shortening) - ratio) / RATIO_SLOPE;

/** Rows of the page's table of what is given. */
export const givenSprings = (): Map<string, string> =>
  new Map(
    tableRows(inside(page(SPRINGS), 'table', 'data-example="corner"')).map(({ name, cells }) => [name, cells[0]!]),
  );

/** By data-name. */
export function workedSprings(): Record<string, { unit: string; value: () => number }> {
  const rows = givenSprings();
  const given = (name: string): number => {
    const cell = rows.get(name);
    if (cell === undefined) throw new Error(`The table has no row "${name}".`);
    return Number(/\d+(?:\.\d+)?/.exec(cell)![0]);
  };
  const gap = given('Gap on the rod');
  const ratio = given('Motion ratio');
  const strokeOut = given('Damper fully out, on the rod');
  const drop = given('Drop');
  const spring = given('Spring');
  const sprung = given('On the scales') - given('Unsprung');

  const onRod = gap + given('Of it usable') * given('Length of the stop');
  const touch = gap / ratio;
  const solid = onRod / ratio;
  const load = sprung * GRAVITY;
  const extra = (LOAD_FACTOR - 1) * load;
  const wheelRate = (of = spring) => of * ratio * ratio;
  const springLoadAt = (travel: number) => load + wheelRate() * travel;
  /** What a spring leaves to the stop, percent of the extra load. */
  const stopShare = (of: number, travel: number) => (100 * (extra - wheelRate(of) * travel)) / extra;
  const droopLowered = () => strokeOut / ratio + drop;

  const worked: Record<string, { unit: string; value: () => number }> = {
    'springs.touch': mm(() => touch),
    'springs.solid': mm(() => solid),
    'springs.solid-lowered': mm(() => solid - drop),
    'springs.arm-mounted': mm(() => gap / ARM_RATIO),
    'springs.one-division': mm(() => solid),
    'springs.integrated': mm(() => travelIntegrated(onRod, ratio)),
    'springs.sprung': pure(() => sprung),
    'springs.load': pure(() => load),
    'springs.rate-lost': percent(() => 100 * (1 - ratio * ratio)),
    'springs.spring-force': pure(() => load / ratio),
    'springs.slope-term': pure(() => (load / ratio) * RATIO_SLOPE),
    'springs.times-at-touch': pure(() => springLoadAt(touch) / load),
    'springs.times-at-solid': pure(() => springLoadAt(solid) / load),
    'springs.stop-load': pure(() => LOAD_FACTOR * load - springLoadAt(solid)),
    'springs.without-stop': mm(() => extra / wheelRate()),
    'springs.spring-for-all': pure(() => extra / solid / (ratio * ratio)),
    'springs.spring-for-all-lowered': pure(() => extra / (solid - drop) / (ratio * ratio)),
    'springs.droop': mm(() => strokeOut / ratio),
    'springs.droop-lowered': mm(droopLowered),
    'springs.deflection-40': mm(() => load / wheelRate(40)),
    'springs.loose-40': mm(() => droopLowered() - load / wheelRate(40)),
  };
  for (const of of COMPARED) {
    worked[`springs.rate-${of}`] = pure(() => wheelRate(of));
    worked[`springs.frequency-${of}`] = pure(() => Math.sqrt((1000 * wheelRate(of)) / sprung) / (2 * Math.PI));
    worked[`springs.share-${of}`] = percent(() => stopShare(of, solid));
    worked[`springs.share-lowered-${of}`] = percent(() => stopShare(of, solid - drop));
  }
  return worked;
}
