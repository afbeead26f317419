import type { Corner } from '../../../core/linkage/corner.js';
import type { PartData } from '../../../core/linkage/parts/part-kinds.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../../../core/readings/doubts.js';
import { ORDINARY, randomCar } from '../driveway/random-car.js';
import { type Afternoon, drawnWishbone, EXACT, PARTS } from './study.js';

/** Seeds of the bench; the tests draw fewer cars of the first. */
export const SEEDS = [1, 2, 3] as const;

/** Cars of the study, each with a tape's doubt of 5 mm in every coordinate. Caster and all else: common practice, no source. */
export const CARS = {
  'strut, rack behind': (random: () => number) => strut(random, (ahead) => ahead < 0),
  'strut, rack ahead': (random: () => number) => strut(random, (ahead) => ahead > 0),
  wishbone: drawnWishbone,
} as const;

export type Cars = keyof typeof CARS;

function strut(random: () => number, isWanted: (rodAheadOfBall: number) => boolean): Corner {
  for (;;) {
    const corner = randomCar(random, { ...ORDINARY, caster: [2, 9] });
    if (isWanted(corner.tieRod.outer[0] - corner.lowerArm.ball[0])) return corner;
  }
}

/** What is wrong besides what is drawn: a fixed bias. */
export interface Bias extends Partial<Pick<Afternoon, 'gaugeScale' | 'tapeScale' | 'zeroHeight' | 'drift'>> {
  /** Of the part's amount, mm. */
  amount?: number;
}

/** `stated`: all is drawn from the stated doubt. `inside`: a fixed bias inside an allowance. `beyond`: beyond it; printed and named. */
export type Goal = 'stated' | 'inside' | 'beyond';

export interface Cell {
  name: string;
  cars: Cars;
  goal: Goal;
  doubts: Required<ReadingDoubts>;
  isAlternating?: boolean;
  /** In place of what would have been drawn; everything else of gauge and tape is right. */
  bias?: Bias;
  parts: Readonly<Record<string, readonly PartData[]>>;
}

const { joint, arm } = PARTS;
const partsOf = (cars: Cars) => (cars === 'wishbone' ? { joint: joint!, arm: arm! } : PARTS);
const cell = (name: string, cars: Cars, doubts: Required<ReadingDoubts>, more: Partial<Cell> = {}): Cell => ({
  name: `${cars}, ${name}`,
  cars,
  goal: 'stated',
  doubts,
  parts: partsOf(cars),
  ...more,
});

const ALL_CARS = Object.keys(CARS) as Cars[];

/** Drawn from what is stated: gauge and tape exactly what they say, or with the usual allowances. */
export const STATED: readonly Cell[] = ALL_CARS.flatMap((cars) => [
  cell('exact', cars, EXACT),
  cell('allowances', cars, DEFAULT_DOUBTS),
  cell('allowances, up and down in turn', cars, DEFAULT_DOUBTS, { isAlternating: true }),
]);

const biased = (name: string, goal: Goal, bias: Bias): Cell =>
  cell(name, 'strut, rack behind', DEFAULT_DOUBTS, { goal, bias, parts: { joint: joint! } });

/** Per cent, mm, degrees: as the allowances are. Of those inside, each is as large as the fit of readings alone stands. */
export const BIASED: readonly Cell[] = [
  biased('nothing wrong', 'inside', {}),
  biased('gauge 1 % high', 'inside', { gaugeScale: 1 }),
  biased('tape 1 % short', 'inside', { tapeScale: 1 }),
  biased('zero height 1.5 mm off', 'inside', { zeroHeight: 1.5 }),
  biased('drift 0.1° in all passes', 'inside', { drift: 0.1 }),
  biased('joint 0.7 mm more than said', 'inside', { amount: 0.7 }),
  biased('gauge 3 % high', 'beyond', { gaugeScale: 3 }),
  biased('tape 3 % short', 'beyond', { tapeScale: 3 }),
  biased('zero height 5 mm off', 'beyond', { zeroHeight: 5 }),
  biased('drift 0.2° in all passes', 'beyond', { drift: 0.2 }),
  biased('joint 3 mm more than said', 'beyond', { amount: 3 }),
];
