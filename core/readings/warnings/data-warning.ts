/** Where a figure was mistaken: in the angle or in the height. */
export type FigureOf = 'value' | 'travel';

/** Passes that may be of other parts than the rest, and their readings: no figure tells that from a drift, or from heights that are off. */
export interface TwoSets {
  passes: string[];
  readings: number[];
}

/**
 * What looks wrong in a set of readings, as data. `readings` are indexes into the readings that were given; angles in degrees,
 * heights in mm. `pass` is empty for the one pass that has no name.
 */
export type DataWarning = { readings: number[] } & (
  | {
      /** With the sign turned, or the decimal point moved, the reading belongs; as it stands it does not. */
      kind: 'wrong-sign' | 'decimal-slip';
      of: FigureOf;
      /** What it would be. */
      proposed: number;
    }
  | {
      /** Readings, or with `pass` a whole pass, in another unit than the rest: multiplied by `factor` they belong. */
      kind: 'mixed-units';
      of: FigureOf;
      /** The unit in which they seem to be written. */
      unit: 'arcminutes' | 'degrees' | 'in' | 'mm';
      factor: number;
      isWholePass: boolean;
      pass?: string;
    }
  | { kind: 'swapped' }
  | {
      /** The pass runs against the others: its heights, or its values, have the other sign. */
      kind: 'reversed-pass';
      of: FigureOf;
      pass: string;
      /** With two passes only: the other one, which it may be instead. */
      other?: string;
    }
  | {
      /** From `from` on all later readings of the pass, which are named, are shifted. */
      kind: 'slipped-within';
      pass: string;
      shift: number;
      /** The last height before and the first after. */
      before: number;
      from: number;
    }
  | {
      /** The zero of the pass lies this far from that of the others. */
      kind: 'slipped-between';
      pass: string;
      offset: number;
      /** With two passes only. */
      other?: string;
    }
  | {
      /** The reference on the body moved by `mm` (upward positive): within a pass, or from pass `other` to `pass`. */
      kind: 'body-moved';
      pass: string;
      isWithin: boolean;
      other?: string;
      mm: number;
      /** By how much an angle read at the steepest part of the curve is off with it, not negative. */
      degrees: number;
    }
  | {
      /** Does not belong, and nothing here explains it. */
      kind: 'outlier';
      /** What the other readings make of its height and pass. */
      expected: number;
    }
  | {
      /** One height more than once in a pass and direction. */
      kind: 'duplicate';
      isSameValue: boolean;
      /** That of them which does not belong, if one is. */
      odd?: number;
    }
  | { kind: 'few-readings'; dof: number; more: number }
  | { kind: 'short-pass'; pass: string }
  | {
      /** Nothing was read between two heights; the curve leaves the straight line between them by `bend`. */
      kind: 'gap';
      from: number;
      to: number;
      bend: number;
    }
  | { kind: 'pattern'; degree: number; better: number }
  | { kind: 'up-down'; upLessDown: number }
  | { kind: 'repeatability'; sd: number; limit: number }
  | {
      /** `passes` follow one curve and `others`, whose readings are named, another: by `degrees` over their travel. */
      kind: 'two-sets';
      passes: string[];
      others: string[];
      degrees: number;
    }
  /** The gauge's zero wandered by so much from the first reading of each pass to its last; the curve is without it. */
  | { kind: 'drift'; drift: number; apart?: TwoSets }
  /** Neighbours go together: so many readings tell as much as `effective` independent ones. */
  | { kind: 'correlated'; count: number; effective: number }
  | {
      /** A pass runs at a slope of its own: by `degrees` over its travel, as heights that are off by `mm` (upward positive) would have it. */
      kind: 'pass-apart';
      pass: string;
      degrees: number;
      /** Absent where the curve is so straight that no height would explain it. */
      mm?: number;
      /** With two passes only: the other one, which it may be instead. */
      other?: string;
      apart?: TwoSets;
    }
  /** Every value is a multiple of `step`. */
  | { kind: 'coarse'; step: number }
);

export type DataWarningKind = DataWarning['kind'];
export type DataWarningOf<K extends DataWarningKind> = DataWarning & { kind: K };

/** Most serious first: what bends the curve, then what hides its doubt, then what leaves it weak. */
export const DATA_WARNING_KINDS: readonly DataWarningKind[] = [
  'reversed-pass',
  'mixed-units',
  'wrong-sign',
  'decimal-slip',
  'swapped',
  'body-moved',
  'slipped-within',
  'outlier',
  'duplicate',
  'few-readings',
  'two-sets',
  'pattern',
  'gap',
  'coarse',
  'repeatability',
  'drift',
  'pass-apart',
  'correlated',
  'up-down',
  'slipped-between',
  'short-pass',
];

/** Those that say of a reading or of a pass that it is wrong. While one stands, what the whole set shows is not told. */
export const ACCUSING: ReadonlySet<DataWarningKind> = new Set<DataWarningKind>([
  'reversed-pass',
  'mixed-units',
  'wrong-sign',
  'decimal-slip',
  'swapped',
  'slipped-within',
  'slipped-between',
  'outlier',
]);

/**
 * From where on something is told. Set on simulated readings of random linkages (gauge 0.03 to 0.1°, heights off by 1 mm, passes
 * 0.3° apart either way) so that at most one clean set in fifty accuses anything: `node test/bench/run.mjs data-warnings`.
 */
export const LIMITS = {
  /** Chance that any reading of a clean set is told to be an outlier, shared by its readings (Bonferroni). */
  outlierLevel: 0.006,
  /** A reading belongs up to this many standard deviations: 1 in 370 of those that do is missed. */
  belongs: 3,
  /** Readings left over after the model's numbers, below which no reading is accused. */
  judgingDof: 4,
  /** Less scatter than this is luck or a calculation, °. Half the last figure of a gauge that shows 0.02 or 0.05°. Common practice, no source. */
  leastScatter: 0.012,
  /** A pass is tried the other way about, or in other units, where its readings lie this many scatters of its own from the others. */
  passApart: 2,
  /** … and that is told where it makes all readings lie closer by this factor. */
  passGain: 1.5,
  /** A gauge slip inside a pass: standard errors, as the largest of some dozen places where it may have been; and °, below which it does no harm. */
  slipErrors: 4.8,
  slipDegrees: 0.1,
  /** Readings on each side of it; fewer are outliers. */
  slipReadings: 3,
  /** Zeros of passes lie up to 0.3° either way when a gauge is put on again. Common practice, no source. */
  offsetDegrees: 0.65,
  /** A rule is read to half a millimetre, twice; more than this the body moved. Common practice, no source. */
  bodyMm: 1.5,
  /** Student's t at 8 degrees of freedom is 2.31: the band is a sixth wider than with many. */
  fewDof: 8,
  /** A gap: as a multiple of the usual step, and °, by which the curve leaves a straight line in it. Common practice, no source. */
  gapSteps: 3,
  gapBend: 0.1,
  /** Scatter of a gauge on the hub, heights set to 1 mm, °. Worse than a careless day. Common practice, no source. */
  repeatability: 0.16,
  /** Standard errors, and °, below which play does not matter. */
  upDownErrors: 2.5,
  upDownDegrees: 0.03,
  /** Drift of the gauge inside a pass: standard errors, and °, below which it is what any gauge does. Common practice, no source. */
  driftErrors: 3.5,
  driftDegrees: 0.06,
  /** Chance that neighbours go together so much where they know nothing of each other, below which it is told. */
  correlatedLevel: 0.005,
  /** A pass at a slope of its own: standard errors, and ° over its travel. Common practice, no source. */
  apartErrors: 3.4,
  apartDegrees: 0.08,
  /** A height that is off by more than this, mm, explains no slope: another cause does. Common practice, no source. */
  apartMm: 25,
  /** Chance that the next power of the curve is told to be needed where it is not. */
  patternLevel: 0.001,
  /** Steps of a scale, °, that are too coarse where the whole curve spans fewer than this many of them. */
  coarseSteps: [1, 0.5, 0.25, 0.2],
  coarseSpan: 12,
} as const;
