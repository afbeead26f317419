import { readFileSync } from 'node:fs';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { independentAxle } from '../reference/independent-axle.js';
import { withLoweredJoint } from '../reference/independent-joint.js';
import type { IndependentCorner } from '../reference/independent-strut.js';
import {
  type IndependentShares,
  independentShares,
  rollAt,
  setAgain,
  stiffnessFor,
} from '../reference/independent-turn.js';
import { page } from './site-source.js';

/*
 * The worked numbers of the page on camber in the turn, by test/reference/independent-turn.ts, independent-axle.ts and
 * independent-joint.ts, which share nothing with core/; only the example's hard points come from there. Those of steering are rows of
 * caster_kpi_camber.csv.
 */

export const DROP = 25;
export const JOINT_MM = 22;
export const ROLL = 3;
const DEGREES = 180 / Math.PI;

const stock: IndependentCorner = EXAMPLE_CORNER;
const joint = withLoweredJoint(stock, { mm: JOINT_MM, isTieRodCorrected: true });
const asBuilt = { camber: stock.camber, toe: stock.toe };

export const SETUPS = {
  stock: { corner: stock, drop: 0 },
  low: { corner: stock, drop: DROP },
  // As the page on lowering has it.
  'low-30': { corner: stock, drop: 30 },
  joint: { corner: joint, drop: DROP },
  // A degree more negative, at stock height.
  degree: { corner: setAgain(stock, 0, { ...asBuilt, camber: stock.camber - 1 }), drop: 0 },
} as const;
export type Setup = keyof typeof SETUPS;

/** Invented: centre of gravity of the sprung mass over the road at stock height, mm, and the acceleration at which stock rolls by ROLL. */
export const GRAVITY_CENTRE_MM = 520;
export const ACCELERATION = 0.6;

/** Of the example at stock height, mm: what the pages say. */
const BUMP_TRAVEL_MM = Number(/ bump-travel="(\d+)"/.exec(page('what-lowering-does-to-camber/index.html'))![1]);

/** Above the road before the body rolls, mm. */
const rollCentreOf = (setup: Setup): number =>
  independentAxle(SETUPS[setup].corner, SETUPS[setup].drop, 0, 0).rollCentre[1];

/** Centre of gravity above the roll centre before the body rolls, mm. */
function armOf(setup: Setup): number {
  const { corner, drop } = SETUPS[setup];
  return GRAVITY_CENTRE_MM + independentAxle(corner, drop, 0, 0).bodyHeight - rollCentreOf(setup);
}
/** With the springs and bar of stock, degrees. */
export function rollOf(setup: Setup): number {
  const stiffness = stiffnessFor(ACCELERATION, armOf('stock'), ROLL / DEGREES);
  return rollAt(ACCELERATION, armOf(setup), stiffness) * DEGREES;
}

/** `isSet`: camber and toe set again at that height to what stock has. */
export function sharesOf(setup: Setup, { roll = ROLL, isSet = false } = {}): IndependentShares {
  const { corner, drop } = SETUPS[setup];
  return isSet ? independentShares(setAgain(corner, drop, asBuilt), 0, roll) : independentShares(corner, drop, roll);
}

/** Change of camber by steer, degrees on the ground, of a row without static camber: inner and outer wheel. */
export function steered(caster: number, kingpin: number, steer: number): { inner: number; outer: number } {
  const text = readFileSync(new URL('../reference/caster_kpi_camber.csv', import.meta.url), 'utf8');
  const [head, ...rows] = text
    .split(/\r?\n/)
    .filter((line) => line && !line.startsWith('#'))
    .map((line) => line.split(','));
  const row = rows.find((cells) => [caster, kingpin, steer, 0].every((value, i) => Number(cells[i]) === value));
  if (!row) throw new Error(`caster_kpi_camber.csv has no row ${caster}, ${kingpin}, ${steer}.`);
  // Steered to the left the left wheel is the inner one.
  const cell = (name: string) => Number(row[head!.indexOf(name)]);
  return { inner: cell('left_change_groundsteer'), outer: cell('right_change_groundsteer') };
}

/** By data-name. */
export const workedTurn = (): Record<string, { unit: string; value: () => number }> => {
  const degrees = (value: () => number) => ({ unit: '°', value });
  const mm = (value: () => number) => ({ unit: 'mm', value });
  const ofSetup = (setup: Setup) => ({
    [`turn.${setup}`]: degrees(() => sharesOf(setup).road),
    [`turn.${setup}-bump`]: degrees(() => sharesOf(setup).bump),
    [`turn.${setup}-set`]: degrees(() => sharesOf(setup, { isSet: true }).road),
    [`turn.${setup}-roll`]: degrees(() => rollOf(setup)),
    [`turn.${setup}-pushed`]: degrees(() => sharesOf(setup, { roll: rollOf(setup) }).road),
    [`turn.${setup}-pushed-set`]: degrees(() => sharesOf(setup, { roll: rollOf(setup), isSet: true }).road),
  });
  return {
    ...ofSetup('stock'),
    ...ofSetup('low'),
    ...ofSetup('joint'),
    'turn.given-back': { unit: '%', value: () => (-100 * sharesOf('stock').bump) / ROLL },
    'turn.degree': degrees(() => sharesOf('degree').road),
    'turn.travel': mm(() => sharesOf('stock').travel),
    'turn.low-30': degrees(() => sharesOf('low-30').road),
    'turn.low-30-set': degrees(() => sharesOf('low-30', { isSet: true }).road),
    'turn.low-30-pushed': degrees(() => sharesOf('low-30', { roll: rollOf('low-30') }).road),
    'turn.low-body': degrees(() => sharesOf('low').standing + sharesOf('low').bump),
    'turn.joint-added': degrees(() => sharesOf('joint').standing - sharesOf('stock').standing),
    'turn.low-added': degrees(() => sharesOf('low').standing - sharesOf('stock').standing),
    'turn.low-left': mm(() => BUMP_TRAVEL_MM - DROP),
    'turn.centre-fall': mm(() => rollCentreOf('stock') - rollCentreOf('low')),
    'turn.low-travel': mm(() => sharesOf('low').travel),
    'turn.track': mm(() => sharesOf('stock').track),
    'turn.from-marks': degrees(() => Math.atan((2 * sharesOf('stock').travel) / sharesOf('stock').track) * DEGREES),
    'turn.pixel': degrees(() => Math.atan(1 / 1200) * DEGREES),
    'turn.steer-both': degrees(() => steered(5, 10, 20).outer),
    'turn.steer-caster': degrees(() => steered(5, 0, 20).outer),
    'turn.steer-kingpin': degrees(() => steered(0, 10, 20).outer),
  };
};
