import { isMissing, numberChecks, shown } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';

import { TOE_ADJUSTMENTS, type ToeAdjustment } from './toe-adjustment.js';

/** How toe is to be flattened: mm and degrees. */
export interface ToeCorrectionOptions {
  /** Wheel travel of the ride height, bump positive. Default 0. */
  at?: number;
  /** Travel to be driven, from the ride height: droop and bump. Default 40 mm either way. */
  window?: readonly [number, number];
  /** Toe-in of this wheel, degrees, set again straight ahead at the ride height by the rod's length. Default as it stands there. */
  toe?: number;
  /** Which end of the tie rod goes up or down. Default the outer one. */
  adjust?: ToeAdjustment;
  /** Amounts to choose from. Default 30 mm either way. */
  range?: readonly [number, number];
  /** Rack displacement with which the wheel moves, positive towards the car's left. Default 0, straight ahead. */
  rack?: number;
}

/** The options with what was left out. */
export type CheckedToeCorrection = Required<Omit<ToeCorrectionOptions, 'toe'>> & Pick<ToeCorrectionOptions, 'toe'>;

/** The shortest window that has a change to be flattened, mm. */
const SHORTEST_WINDOW = 1;
/** No steering rack of a road car moves further either way, mm: common practice, no source. */
const LONGEST_RACK = 400;

/** @throws InputError with all that is wrong with the options */
export function checkedCorrection(options: ToeCorrectionOptions): CheckedToeCorrection {
  const { at = 0, window = [-40, 40], toe, adjust = 'outerEnd', range = [-30, 30], rack = 0 } = record(options);
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const { travel, toe: toes, partLength } = QUANTITIES;
  check('at', at, travel.min, travel.max);
  if (isPair(window, 'window', problems)) {
    check('window.0', window[0], travel.min, 0);
    check('window.1', window[1], 0, travel.max);
    const isLong = window[1] - window[0] >= SHORTEST_WINDOW;
    if (window[0] <= 0 && !isLong && window[1] >= 0) {
      problems.push({ code: 'out-of-range', path: 'window.1', value: window[1], limit: window[0] + SHORTEST_WINDOW });
    }
  }
  if (toe !== undefined) check('toe', toe, toes.min, toes.max);
  if (!TOE_ADJUSTMENTS.includes(adjust)) {
    const value = typeof adjust === 'string' ? adjust : undefined;
    problems.push({ code: 'unknown-name', path: 'adjust', value, names: TOE_ADJUSTMENTS });
  }
  if (isPair(range, 'range', problems)) {
    check('range.0', range[0], partLength.min, partLength.max);
    // From the least on, where that is a number.
    check('range.1', range[1], Number.isFinite(range[0]) ? range[0] : partLength.min, partLength.max);
  }
  check('rack', rack, -LONGEST_RACK, LONGEST_RACK);
  if (problems.length > 0) throw new InputError(problems);
  return { at, window, ...(toe !== undefined && { toe }), adjust, range, rack };
}

/** @throws InputError where the options are none */
function record(options: ToeCorrectionOptions): ToeCorrectionOptions {
  if (typeof options === 'object' && options !== null) return options;
  const code = isMissing(options) ? 'missing' : 'wrong-shape';
  throw new InputError([{ code, path: 'options', value: shown(options) }]);
}

function isPair(value: unknown, path: string, problems: Problem[]): boolean {
  const isOne = typeof value === 'object' && (value as ArrayLike<unknown> | null)?.length === 2;
  if (!isOne) problems.push({ code: 'wrong-shape', path, value: typeof value === 'object' ? undefined : value });
  return isOne;
}
