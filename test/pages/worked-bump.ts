import { inside, page, tableRows } from './site-source.js';

/*
 * The worked numbers of the page on bump travel, from its own table, by the formulas as the page prints them. Nothing is imported
 * from core/. mm at the wheel unless said.
 */

const BUMP = 'how-much-bump-is-left/index.html';
const TRIMMED_OFF = 15;

const mm = (value: () => number) => ({ unit: 'mm', value });

/** Rows of the page's table of what was measured. */
export const givenBump = (): Map<string, string> =>
  new Map(tableRows(inside(page(BUMP), 'table', 'data-example="corner"')).map(({ name, cells }) => [name, cells[0]!]));

/** By data-name. */
export function workedBump(): Record<string, { unit: string; value: () => number }> {
  const rows = givenBump();
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
  const tyre = given('Tyre meets the liner');
  const archHeight = given('Hub centre to arch lip');
  const drop = given('Drop');

  const usable = () => share * stop;
  const touch = () => gap / ratio;
  const solid = () => (gap + usable()) / ratio;
  const trimRod = () => gap + TRIMMED_OFF + share * (stop - TRIMMED_OFF);

  return {
    'bump.usable': mm(usable),
    'bump.touch': mm(touch),
    'bump.solid': mm(solid),
    'bump.plus-minus': mm(() => plusMinus / ratio),
    // Uniform from a third to two thirds: standard uncertainty 1/√12 of the range (GUM, JCGM 100:2008, 4.3.7).
    'bump.share-plus-minus': mm(() => Math.hypot(plusMinus, (1.96 * stop) / 3 / Math.sqrt(12)) / ratio),
    'bump.bottom': mm(() => stroke / ratio),
    'bump.touch-after': mm(() => touch() - drop),
    'bump.solid-after': mm(() => solid() - drop),
    'bump.bottom-after': mm(() => stroke / ratio - drop),
    'bump.tyre-after': mm(() => tyre - drop),
    'bump.takes-over': mm(() => tyre - solid()),
    'bump.trim-rod': mm(trimRod),
    'bump.trim-touch-later': mm(() => TRIMMED_OFF / ratio),
    'bump.trim-won': mm(() => trimRod() / ratio - solid()),
    // The damper's end comes before the shorter stop's.
    'bump.trim-gain': mm(() => Math.min(trimRod(), stroke) / ratio - solid()),
    'bump.arch-lowered': mm(() => archHeight - drop),
    'bump.raise-to': mm(() => archHeight - solid()),
    'bump.tyre-height': mm(() => archHeight - tyre),
  };
}
