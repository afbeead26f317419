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

/** A corner with parts on it, or none, learnt from readings: the links as they most likely are, and what the readings leave open. */
export interface LearntSource {
  kind: 'learnt';
  /** As it was measured, with the ± of each measurement. */
  of: Extract<CamberSource, { kind: 'corner' | 'driveway' }>;
  /** With the parts as they stood when it was measured: of camber, and of toe. */
  readings?: readonly Reading[];
  toe?: readonly Reading[];
  /** With other parts, on the same car. */
  setups?: readonly ReadSetup[];
  doubts?: ReadingDoubts;
  toeDoubts?: ReadingDoubts;
  inOrder?: boolean;
  /** How much higher the wheel stood in the body, at the readings' travel zero, than where the corner was measured, mm. Default 0. */
  raisedBy?: number;
  /** Put on one after another; see `PartsSource`. */
  parts?: readonly PartData[];
  alignment?: Alignment;
}

/** What was read with parts on the same car. */
export interface ReadSetup {
  parts: readonly PartData[];
  /** Of camber. */
  readings?: readonly Reading[];
  /** Of toe. */
  toe?: readonly Reading[];
  /** What was set again once the parts were on. Default `as-fitted`: nothing. */
  alignment?: Alignment;
}

/** A source of camber or toe, readings among them. */
export type AnySource = CamberSource | ReadingsSource | PartsSource | LearntSource;

/** The source of one kind. */
export type SourceOf<K extends AnySource['kind']> = Extract<AnySource, { kind: K }>;
