import { numberProblem, shown } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { MM_PER_INCH } from '../quantity/units.js';
import { dimensionsOf, rimProblem, type TyreDimensions } from './tyre-dimensions.js';
import { tyreSizeOf } from './tyre-size.js';
import { planeOf, type WheelSpec } from './wheel.js';

/** A tyre on its rim on the hub. mm; `plane` and the edges from the hub's face, positive outboard. */
export interface FittedWheel {
  spec: WheelSpec;
  dimensions: TyreDimensions;
  /** Measured if given, else by the formula. */
  sectionWidth: number;
  isMeasured: boolean;
  /** Hub centre to tread, the tyre carrying nothing: not the loaded radius. */
  freeRadius: number;
  /** Middle plane of the rim. */
  plane: number;
  /** The outermost of sidewall, its rib and the rim's lip. */
  outerEdge: number;
  /** The innermost, as far from the plane. */
  innerEdge: number;
  /** The most the standards allow a new tyre of this size; a measured width stays as measured. */
  largest: { sectionWidth: number; freeRadius: number };
}

/** The rim's lip beyond the bead seat, each side. From memory: the flange of a J rim is 10 to 13 mm wide. */
export const RIM_LIP_MM = 11;
/** A protective rib, each side: 8 mm of overall width. From memory, UN Regulation No. 30. */
export const RIM_RIB_MM = 4;

/**
 * Throws InputError with all problems at once, at `offset` (−100 to 150), `spacer` (0 to 100), `sectionWidth` (100 to 400),
 * `treadWidth` (50 to 400), `shoulderRadius` (0 to 100), `rimProtector`, `rimWidthInch` and `size` (see tyreDimensions), each
 * after `path` and a dot where there is one. `sectionWidth` is `missing` where the rim is outside the permitted ones and
 * nothing was measured.
 */
export function fittedWheel(spec: WheelSpec, path?: string): FittedWheel {
  const problems: Problem[] = [];
  const wheel = fittedWheelOf(problems, spec, path);
  if (!wheel) throw new InputError(problems);
  return wheel;
}

/** The same; adds to `problems` what is wrong, and gives undefined then. */
export function fittedWheelOf(problems: Problem[], spec: WheelSpec, path?: string): FittedWheel | undefined {
  if (typeof spec !== 'object' || !spec) {
    problems.push({ code: spec == null ? 'missing' : 'wrong-shape', path: path ?? 'wheel', value: shown(spec) });
    return undefined;
  }
  const sound = problems.length;
  const at = (key: string) => (path ? `${path}.${key}` : key);
  const note = (problem?: Problem) => {
    if (problem) problems.push(problem);
    return !problem;
  };
  const inRange = (key: 'spacer' | 'sectionWidth' | 'treadWidth' | 'shoulderRadius', least: number, most: number) =>
    spec[key] === undefined || note(numberProblem(at(key), spec[key], least, most));

  const size = tyreSizeOf(problems, spec.size, at('size'));
  const hasRim = note(rimProblem(at('rimWidthInch'), spec.rimWidthInch));
  note(numberProblem(at('offset'), spec.offset, -100, 150));
  inRange('spacer', 0, 100);
  inRange('sectionWidth', 100, 400);
  inRange('treadWidth', 50, 400);
  inRange('shoulderRadius', 0, 100);
  const { rimProtector = false } = spec;
  if (typeof rimProtector !== 'boolean') {
    note({ code: 'wrong-shape', path: at('rimProtector'), value: shown(rimProtector) });
  }
  if (!size || !hasRim) return undefined;

  const dimensions = dimensionsOf(size, spec.rimWidthInch);
  const isMeasured = spec.sectionWidth !== undefined;
  const sectionWidth = spec.sectionWidth ?? dimensions.sectionWidth;
  if (Number.isNaN(sectionWidth) && !isMeasured) note({ code: 'missing', path: at('sectionWidth'), value: undefined });
  if (problems.length > sound) return undefined;

  const plane = planeOf(spec);
  const half = Math.max(
    sectionWidth / 2 + (rimProtector ? RIM_RIB_MM : 0),
    (spec.rimWidthInch * MM_PER_INCH) / 2 + RIM_LIP_MM,
  );
  return {
    spec,
    dimensions,
    sectionWidth,
    isMeasured,
    freeRadius: dimensions.freeDiameter / 2,
    plane,
    outerEdge: plane + half,
    innerEdge: plane - half,
    largest: {
      sectionWidth: isMeasured ? sectionWidth : dimensions.largest.sectionWidth,
      freeRadius: dimensions.largest.freeDiameter / 2,
    },
  };
}
