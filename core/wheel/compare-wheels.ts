import { InputError, type Problem } from '../quantity/problem.js';
import { type FittedWheel, fittedWheelOf } from './fitted-wheel.js';
import type { WheelSpec } from './wheel.js';

/** Every difference is after − before, mm. */
export interface WheelComparison {
  /** The old wheel, lengths in mm. */
  before: FittedWheel;
  /** The new wheel, lengths in mm. */
  after: FittedWheel;
  /** By how much it is wider, mm. */
  sectionWidth: number;
  /** By how much it is taller, mm. */
  freeDiameter: number;
  /** Positive outboard, towards the arch. */
  outerEdge: number;
  /** Positive outboard too: negative is towards the strut. */
  innerEdge: number;
  /** Of the wheel’s middle plane, mm outboard. */
  plane: number;
  /** By how much hub and body stand higher: of the free radius. The loaded radius changes nearly as much. */
  rideHeight: number;
  /** Ratio of the free diameters − 1: positive is longer gearing, and the speedometer reads lower than before. */
  gearing: number;
  /** Where both sizes have one; negative carries less. */
  loadIndex?: number;
}

/** Throws InputError with the problems of both at once: `before.offset`, `after.size`; see fittedWheel. */
export function compareWheels(before: WheelSpec, after: WheelSpec): WheelComparison {
  const problems: Problem[] = [];
  const a = fittedWheelOf(problems, before, 'before');
  const b = fittedWheelOf(problems, after, 'after');
  if (!a || !b) throw new InputError(problems);
  const [loadBefore, loadAfter] = [a.dimensions.size.loadIndex, b.dimensions.size.loadIndex];
  const rideHeight = b.freeRadius - a.freeRadius;
  return {
    before: a,
    after: b,
    sectionWidth: b.sectionWidth - a.sectionWidth,
    freeDiameter: 2 * rideHeight,
    outerEdge: b.outerEdge - a.outerEdge,
    innerEdge: b.innerEdge - a.innerEdge,
    plane: b.plane - a.plane,
    rideHeight,
    gearing: b.freeRadius / a.freeRadius - 1,
    ...(loadBefore !== undefined && loadAfter !== undefined && { loadIndex: loadAfter - loadBefore }),
  };
}
