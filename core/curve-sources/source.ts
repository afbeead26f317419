import type { CurveData } from '../curve/curve-data.js';
import type { FitOptions } from '../curve/fit.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import type { ReadingDoubts } from '../readings/doubts.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';

/** Where a camber curve comes from. Every answer about camber takes one and does not care which. */
export type CamberSource =
  | { kind: 'corner'; corner: unknown }
  /** `DrivewayMeasurements`. */
  | { kind: 'driveway'; driveway: unknown }
  | {
      kind: 'coefficients';
      /** Of camber over travel, degrees and mm, constant term first. */
      coefficients: number[];
      /** Travels, mm, between which they hold. */
      domain: [number, number];
      /** Of each coefficient, when they are known and independent. */
      standardUncertainties?: number[];
    }
  | { kind: 'curve'; curve: CurveData };

/** Readings of camber or toe. A gauge on the hub reads the wheel's inclination: its camber as long as it points straight ahead. */
export interface ReadingsSource extends Pick<FitOptions, 'inOrder' | 'plain'> {
  kind: 'readings';
  readings: readonly Reading[];
  /** Default camber. Readings of toe answer nothing about camber. */
  quantity?: ReadingQuantity;
  /** Of the curve; without it the evidence decides. */
  degree?: number;
  /** Drop from stock height, mm, at which the wheel stood where the readings call travel zero. Default 0. */
  zeroAt?: number;
  /** How far gauge, tape and zero height can be trusted. */
  doubts?: ReadingDoubts;
}

/** What is set again at ride height once all parts are on: nothing, toe by the rods, or camber too, at the top mount or upper arm. */
export const ALIGNMENTS = ['as-fitted', 'toe', 'camber-and-toe'] as const;
export type Alignment = (typeof ALIGNMENTS)[number];

/** A corner with parts on it. */
export interface PartsSource {
  kind: 'parts';
  of: Extract<CamberSource, { kind: 'corner' | 'driveway' }>;
  /** Put on one after another. */
  parts: readonly PartData[];
  /** To the corner's own static angles. Default `toe`: a joint or an arm is never fitted without. */
  alignment?: Alignment;
}

/** A source of camber or toe, readings among them. */
export type AnySource = CamberSource | ReadingsSource | PartsSource;

/** The source of one kind. */
export type SourceOf<K extends AnySource['kind']> = Extract<AnySource, { kind: K }>;
