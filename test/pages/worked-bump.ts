import { inside, page, tableRows } from './site-source.js';

/*
 * The worked numbers of the page on bump travel, from its own table, by the formulas as the page prints them. Nothing is imported
 * from core/. mm at the wheel unless said, N, N/mm, kg.
 *
 * Wheel rate k · MR²: Barton and Fieldhouse, Automotive Chassis Engineering, 2018, equation 3.33; the term F · dMR/dz by
 * differentiation of F · MR; frequency and static load by elementary mechanics, standard gravity 9.80665 m/s².
 */

const BUMP = 'how-much-bump-is-left/index.html';
const GRAVITY = 9.80665;
/** How the page's second look at the motion ratio has it grow, per mm of bump. */
const RATIO_SLOPE = 0.0005;
const ARM_RATIO = 0.6;
const TRIMMED_OFF = 15;
const LOAD_FACTOR = 2;

const mm = (value: () => number) => ({ unit: 'mm', value });
const percent = (value: () => number) => ({ unit: '%', value });
/** With its unit written behind it. */
const pure = (value: () => number) => ({ unit: '', value });

/** Travel after which a damper has shortened by so much, its ratio growing with travel: MR z + slope z²/2 = shortening. */
const travelIntegrated = (shortening: number, ratio: number): number =>
  (Math.sqrt(ratio * ratio + 2 * RATIO_SLOPE * shortening) - ratio) / RATIO_SLOPE;

/** By data-name. */
export function workedBump(): Record<string, { unit: string; value: () => number }> {
  const table = inside(page(BUMP), 'table', 'data-example="corner"');
  const rows = new Map(tableRows(table).map(({ name, cells }) => [name, cells[0]!]));
  const given = (name: string): number => {
    const cell = rows.get(name);
    if (cell === undefined) throw new Error(`The table has no row "${name}".`);
    return Number(/\d+(?:\.\d+)?/.exec(cell)![0]);
  };
  const gap = given('Gap on the rod');
  const plusMinus = Number(/±\D*(\d+)/.exec(rows.get('Gap on the rod')!)![1]);
  const stop = given('Length of the stop');
  const share = given('Of it usable');
  const ratio = given('Motion ratio');
  const stroke = given('Damper bottoms, on the rod');
  const strokeOut = given('Damper fully out, on the rod');
  const tyre = given('Tyre meets the liner');
  const archHeight = given('Hub centre to arch lip');
  const drop = given('Drop');
  const spring = given('Spring');
  const sprung = given('On the scales') - given('Unsprung');

  const usable = () => share * stop;
  const touch = () => gap / ratio;
  const solid = () => (gap + usable()) / ratio;
  const trimUsable = () => share * (stop - TRIMMED_OFF);
  const trimRod = () => gap + TRIMMED_OFF + trimUsable();
  const wheelRate = () => spring * ratio * ratio;
  const load = () => sprung * GRAVITY;
  const slopeTerm = () => (load() / ratio) * RATIO_SLOPE;
  const springLoadAt = (travel: number) => load() + wheelRate() * travel;
  const stopLoad = () => LOAD_FACTOR * load() - springLoadAt(solid());
  const rateForAll = () => ((LOAD_FACTOR - 1) * load()) / solid();

  return {
    'bump.usable': mm(usable),
    'bump.on-rod': mm(() => gap + usable()),
    'bump.touch': mm(touch),
    'bump.solid': mm(solid),
    'bump.plus-minus': mm(() => plusMinus / ratio),
    // Uniform from a third to two thirds: standard uncertainty 1/√12 of the range (GUM, JCGM 100:2008, 4.3.7).
    'bump.share-plus-minus': mm(() => Math.hypot(plusMinus, (1.96 * stop) / 3 / Math.sqrt(12)) / ratio),
    'bump.droop': mm(() => strokeOut / ratio),
    'bump.bottom': mm(() => stroke / ratio),
    'bump.touch-after': mm(() => touch() - drop),
    'bump.solid-after': mm(() => solid() - drop),
    'bump.bottom-after': mm(() => stroke / ratio - drop),
    'bump.droop-after': mm(() => strokeOut / ratio + drop),
    'bump.tyre-after': mm(() => tyre - drop),
    'bump.takes-over': mm(() => tyre - solid()),
    'bump.one-division': mm(() => (gap + usable()) / ratio),
    'bump.integrated': mm(() => travelIntegrated(gap + usable(), ratio)),
    'bump.integrated-less': mm(() => solid() - travelIntegrated(gap + usable(), ratio)),
    'bump.arm-mounted': mm(() => gap / ARM_RATIO),
    'bump.trim-gap': mm(() => gap + TRIMMED_OFF),
    'bump.trim-usable': mm(trimUsable),
    'bump.trim-rod': mm(trimRod),
    'bump.trim-touch-later': mm(() => TRIMMED_OFF / ratio),
    'bump.trim-solid': mm(() => trimRod() / ratio),
    'bump.trim-won': mm(() => trimRod() / ratio - solid()),
    'bump.trim-past': mm(() => trimRod() - stroke),
    'bump.sprung': pure(() => sprung),
    'bump.load': pure(load),
    'bump.spring-force': pure(() => load() / ratio),
    'bump.wheel-rate': pure(wheelRate),
    'bump.rate-lost': percent(() => 100 * (1 - ratio * ratio)),
    'bump.slope-term': pure(slopeTerm),
    'bump.slope-share': percent(() => (100 * slopeTerm()) / wheelRate()),
    'bump.frequency': pure(() => Math.sqrt((1000 * wheelRate()) / sprung) / (2 * Math.PI)),
    'bump.deflection': mm(() => load() / wheelRate()),
    'bump.load-at-touch': pure(() => springLoadAt(touch())),
    'bump.times-at-touch': pure(() => springLoadAt(touch()) / load()),
    'bump.load-at-solid': pure(() => springLoadAt(solid())),
    'bump.times-at-solid': pure(() => springLoadAt(solid()) / load()),
    'bump.load-2': pure(() => LOAD_FACTOR * load()),
    'bump.without-stop': mm(() => ((LOAD_FACTOR - 1) * load()) / wheelRate()),
    'bump.stop-load': pure(stopLoad),
    'bump.stop-load-rod': pure(() => stopLoad() / ratio),
    'bump.stop-share': percent(() => (100 * stopLoad()) / load()),
    'bump.solid-length': mm(() => stop - usable()),
    'bump.raise-to': mm(() => archHeight - solid()),
    // What is along the rod keeps its gap: solid comes as far above the new height as it did above the old one.
    'bump.raise-to-dampers': mm(() => archHeight - drop - solid()),
    'bump.tyre-height': mm(() => archHeight - tyre),
    'bump.rate-for-all': pure(rateForAll),
    'bump.spring-for-all': pure(() => rateForAll() / (ratio * ratio)),
  };
}
