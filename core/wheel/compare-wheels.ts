import { InputError, type Problem } from '../quantity/problem.js';
import { type FittedWheel, fittedWheel } from './fitted-wheel.js';
import type { WheelSpec } from './wheel.js';

/** One wheel against the one before: new less old, mm, outboard positive. */
export interface WheelComparison {
  before: FittedWheel;
  after: FittedWheel;
  sectionWidth: number;
  freeDiameter: number;
  plane: number;
  /** Positive: further out. */
  outerEdge: number;
  /** Positive: further out, and so further from what is inboard. */
  innerEdge: number;
  /** Half the difference of diameters: by how much the car stands higher. */
  rideHeight: number;
  /** Of diameters, less 1: positive gears longer, and the speedometer reads less than is driven. */
  gearing: number;
  /** Where both say it. */
  loadIndex?: number;
}

/** @throws InputError with all that is wrong with either */
export function compareWheels(before: WheelSpec, after: WheelSpec): WheelComparison {
  const problems: Problem[] = [];
  const take = (spec: WheelSpec, path: string): FittedWheel | undefined => {
    try {
      return fittedWheel(spec, path);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
      return undefined;
    }
  };
  const old = take(before, 'before');
  const now = take(after, 'after');
  if (!old || !now) throw new InputError(problems);
  const freeDiameter = 2 * (now.freeRadius - old.freeRadius);
  const [was, is] = [old.dimensions.size.loadIndex, now.dimensions.size.loadIndex];
  return {
    before: old,
    after: now,
    sectionWidth: now.sectionWidth - old.sectionWidth,
    freeDiameter,
    plane: now.plane - old.plane,
    outerEdge: now.outerEdge - old.outerEdge,
    innerEdge: now.innerEdge - old.innerEdge,
    rideHeight: freeDiameter / 2,
    gearing: now.freeRadius / old.freeRadius - 1,
    ...(was !== undefined && is !== undefined && { loadIndex: is - was }),
  };
}
