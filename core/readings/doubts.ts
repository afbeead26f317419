/**
 * How far the instruments of one set of readings can be trusted: half-widths of 95 % intervals. Absent is the default of
 * `DEFAULT_DOUBTS`, 0 leaves a source out.
 */
export interface ReadingDoubts {
  /** By which share the gauge may show all angles too large or too small, per cent. */
  readonly gaugeScale?: number;
  /** The same of the tape that heights are measured with, per cent. */
  readonly tapeScale?: number;
  /** By how much the height that is called zero may be off, mm. */
  readonly zeroHeight?: number;
  /** How far the gauge's zero may wander from the first reading of a pass to its last, degrees. Counts where the readings do not tell it. */
  readonly drift?: number;
}

/**
 * 1 %: a digital angle gauge is good to 0.1° in 10°, a tape to 1 mm in 100 mm where both ends are read by eye. 2 mm: hub to arch,
 * measured twice. 0.13°: a drift of 0.1° in every pass is then covered 94 times in 100. Common practice, no source.
 */
export const DEFAULT_DOUBTS: Required<ReadingDoubts> = { gaugeScale: 1, tapeScale: 1, zeroHeight: 2, drift: 0.13 };

export const DOUBT_KEYS = Object.keys(DEFAULT_DOUBTS) as readonly (keyof ReadingDoubts)[];

/** The most that can be said: beyond it the readings say nothing. */
export const MOST_DOUBTS: Required<ReadingDoubts> = { gaugeScale: 50, tapeScale: 50, zeroHeight: 100, drift: 5 };
