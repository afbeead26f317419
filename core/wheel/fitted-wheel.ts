import { isMissing, numberProblem } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { type TyreDimensions, tyreDimensions } from './tyre-dimensions.js';
import { LIP_THICKNESS_MM, RIB_MM } from './tyre-section.js';
import { planeOf, type WheelSpec } from './wheel.js';

/** A tyre on its rim on the hub: mm, outboard positive, from the hub's face. */
export interface FittedWheel {
  spec: WheelSpec;
  dimensions: TyreDimensions;
  /** Measured on this rim, else by the formula; without a protective rib. */
  sectionWidth: number;
  isMeasured: boolean;
  freeRadius: number;
  /** The rim's middle plane. */
  plane: number;
  /** Outermost and innermost of tyre, rib and rim lip. */
  outerEdge: number;
  innerEdge: number;
  /** As the standard lets a tyre of this size be. */
  largest: { sectionWidth: number; freeRadius: number };
}

const WIDTH_TOLERANCE = 1.04;

/**
 * @param path of the wheel in problems
 * @throws InputError with all that is wrong with it; a missing `sectionWidth` where the rim is outside the permitted ones
 */
export function fittedWheel(spec: WheelSpec, path: string): FittedWheel {
  if (isMissing(spec) || typeof spec !== 'object') throw new InputError([{ code: 'missing', path, value: spec }]);
  const problems: Problem[] = [];
  const number = (key: keyof WheelSpec, least: number, most: number, isNeeded = false) => {
    if (spec[key] === undefined && !isNeeded) return;
    const problem = numberProblem(`${path}.${key}`, spec[key], least, most);
    if (problem) problems.push(problem);
  };
  number('rimWidthInch', 3, 16, true);
  number('offset', -100, 150, true);
  number('spacer', 0, 100);
  number('sectionWidth', 100, 400);
  number('treadWidth', 50, 400);
  number('shoulderRadius', 0, 100);
  let dimensions: TyreDimensions | undefined;
  try {
    // A bad rim is told above.
    const isRim = numberProblem('', spec.rimWidthInch, 3, 16) === undefined;
    dimensions = tyreDimensions(spec.size, isRim ? spec.rimWidthInch : undefined, `${path}.`);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems.push(...error.problems);
  }
  const sectionWidth = spec.sectionWidth ?? dimensions?.sectionWidth ?? Number.NaN;
  if (dimensions && problems.length === 0 && Number.isNaN(sectionWidth)) {
    problems.push({ code: 'missing', path: `${path}.sectionWidth`, value: spec.sectionWidth });
  }
  if (!dimensions || problems.length > 0) throw new InputError(problems);
  const plane = planeOf(spec);
  const half = Math.max(
    sectionWidth / 2 + (spec.rimProtector ? RIB_MM : 0),
    (spec.rimWidthInch * 25.4) / 2 + LIP_THICKNESS_MM,
  );
  return {
    spec,
    dimensions,
    sectionWidth,
    isMeasured: spec.sectionWidth !== undefined,
    freeRadius: dimensions.freeDiameter / 2,
    plane,
    outerEdge: plane + half,
    innerEdge: plane - half,
    largest: {
      // What was measured is the tyre that is there.
      sectionWidth: spec.sectionWidth ?? sectionWidth * WIDTH_TOLERANCE,
      freeRadius: dimensions.largest.freeDiameter / 2,
    },
  };
}
