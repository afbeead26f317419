import type { FitOptions } from '../../../core/curve/fit.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import { normal } from '../driveway/random-car.js';
import type { Noise } from './noisy-series.js';

/**
 * What a cell of the study is to hold. `stated`: what goes wrong is drawn from the stated doubt; 93 to 97 % are covered, of sets of at
 * most 20 readings 90 %. `inside`: a fixed error inside what is allowed for; at least 93 %. `beyond`: as much as is allowed for, or
 * more; printed, and named by the page under "Not in any ±".
 */
export type Goal = 'stated' | 'inside' | 'beyond';

export interface Cell {
  name: string;
  goal: Goal;
  noise: Noise;
  options?: FitOptions;
  /** Of the changes over the longest bump the band of scatter alone holds less than this. */
  plainMost?: number;
}

/** Half-width of a 95 % interval ÷ standard uncertainty, normal law. */
const NORMAL_95 = 1.96;
const stated = (plusMinus: number) => (random: () => number) => (plusMinus / NORMAL_95) * normal(random);
const { gaugeScale, tapeScale, zeroHeight, drift } = DEFAULT_DOUBTS;
/** Gauge, tape, zero height and drift as doubtful as the defaults say. */
const STATED: Noise = {
  gaugeScale: stated(gaugeScale / 100),
  tapeScale: stated(tapeScale / 100),
  heightZero: stated(zeroHeight),
  drift: stated(drift),
};
/** Heights of each pass off by so many mm, standard deviation, about those of the set; half of them 5 mm apart. */
const apart = (_: number, random: () => number) => 5 * normal(random);

export const CELLS: readonly Cell[] = [
  { name: 'as stated, all up', goal: 'stated', noise: STATED },
  { name: 'as stated, up and down in turn', goal: 'stated', noise: { ...STATED, layout: 'in turn' } },
  { name: 'as stated, there and back', goal: 'stated', noise: { ...STATED, layout: 'there and back' } },
  { name: 'as stated, first height read again', goal: 'stated', noise: { ...STATED, layout: 'return' } },
  { name: 'as stated, correlation 0.5', goal: 'stated', noise: { ...STATED, correlation: 0.5 } },
  {
    name: 'as stated, correlation 0.5, in turn',
    goal: 'stated',
    noise: { ...STATED, correlation: 0.5, layout: 'in turn' },
  },
  { name: 'as stated, heights rounded to 10 mm', goal: 'inside', noise: { ...STATED, roundTo: 10 } },
  {
    name: 'as stated, passes 5 mm apart in height',
    goal: 'stated',
    noise: { ...STATED, passHeight: apart, leastPasses: 2 },
  },
  {
    name: 'as stated, friction 0.2°, way told',
    goal: 'stated',
    noise: { ...STATED, friction: 0.2, layout: 'there and back' },
  },
  { name: 'nothing wrong, all up (plain)', goal: 'inside', noise: {} },
  { name: 'nothing wrong, in turn', goal: 'inside', noise: { layout: 'in turn' } },
  { name: 'drift 0.1°, all up', goal: 'inside', noise: { drift: 0.1 }, plainMost: 0.7 },
  { name: 'drift 0.1°, in turn', goal: 'inside', noise: { drift: 0.1, layout: 'in turn' } },
  { name: 'drift 0.2°, in turn', goal: 'inside', noise: { drift: 0.2, layout: 'in turn' } },
  { name: 'drift 0.2°, there and back', goal: 'inside', noise: { drift: 0.2, layout: 'there and back' } },
  {
    name: 'drift 0.1°, first height read again',
    goal: 'inside',
    noise: { drift: 0.1, layout: 'return' },
    plainMost: 0.75,
  },
  { name: 'drift 0.2°, first height read again', goal: 'inside', noise: { drift: 0.2, layout: 'return' } },
  { name: 'drift 0.2°, all up', goal: 'beyond', noise: { drift: 0.2 } },
  { name: 'correlation 0.5', goal: 'inside', noise: { correlation: 0.5 }, plainMost: 0.84 },
  { name: 'correlation 0.5, in turn', goal: 'inside', noise: { correlation: 0.5, layout: 'in turn' } },
  {
    name: 'every other pass 5 mm higher',
    goal: 'inside',
    noise: { passHeight: (pass) => (pass % 2) * 5 },
    plainMost: 0.87,
  },
  {
    name: 'passes 5 mm apart in height, in turn',
    goal: 'beyond',
    noise: { passHeight: apart, layout: 'in turn' },
  },
  { name: 'heights rounded to 10 mm', goal: 'inside', noise: { roundTo: 10 } },
  { name: 'heights rounded to 10 mm, in turn', goal: 'inside', noise: { roundTo: 10, layout: 'in turn' } },
  { name: 'tape 1 % short, in turn', goal: 'inside', noise: { tapeScale: 0.01, layout: 'in turn' } },
  { name: 'gauge 1 % high, in turn', goal: 'inside', noise: { gaugeScale: 0.01, layout: 'in turn' } },
  {
    name: 'tape 3 % short, ±3 % declared, in turn',
    goal: 'inside',
    noise: { tapeScale: 0.03, layout: 'in turn' },
    options: { tapeScale: 3 },
    plainMost: 0.85,
  },
  {
    name: 'gauge 3 % high, ±3 % declared, in turn',
    goal: 'inside',
    noise: { gaugeScale: 0.03, layout: 'in turn' },
    options: { gaugeScale: 3 },
  },
  {
    name: 'body creeps 3 %, ±3 % declared, in turn',
    goal: 'inside',
    noise: { tapeScale: -0.03, layout: 'in turn' },
    options: { tapeScale: 3 },
  },
  { name: 'tape 3 % short, in turn', goal: 'beyond', noise: { tapeScale: 0.03, layout: 'in turn' } },
  { name: 'gauge 3 % high, in turn', goal: 'beyond', noise: { gaugeScale: 0.03, layout: 'in turn' } },
  { name: 'body creeps 3 %, in turn', goal: 'beyond', noise: { tapeScale: -0.03, layout: 'in turn' } },
  {
    name: 'zero height 1.5 mm off, in turn',
    goal: 'inside',
    noise: { heightZero: 1.5, layout: 'in turn' },
    plainMost: 0.92,
  },
  { name: 'zero height 2 mm off, in turn', goal: 'beyond', noise: { heightZero: 2, layout: 'in turn' } },
  { name: 'zero height 5 mm off, in turn', goal: 'beyond', noise: { heightZero: 5, layout: 'in turn' } },
  { name: 'friction 0.2°, way told, in turn', goal: 'inside', noise: { friction: 0.2, layout: 'in turn' } },
  {
    name: 'friction 0.2°, way told, there and back',
    goal: 'inside',
    noise: { friction: 0.2, layout: 'there and back' },
  },
  {
    name: 'friction 0.2°, way not told, there and back',
    goal: 'inside',
    noise: { friction: 0.2, layout: 'there and back', isWayTold: false },
  },
  {
    name: 'friction 0.2° in a loop, way told, in turn',
    goal: 'inside',
    noise: { friction: 0.2, frictionShape: 'loop', layout: 'in turn' },
  },
  {
    name: 'friction 0.2° in a loop, all up',
    goal: 'beyond',
    noise: { friction: 0.2, frictionShape: 'loop' },
  },
  {
    name: 'friction 0.2° after each turn, way told, in turn',
    goal: 'beyond',
    noise: { friction: 0.2, frictionShape: 'play', layout: 'in turn' },
  },
  {
    name: 'friction 0.2° after each turn, there and back',
    goal: 'beyond',
    noise: { friction: 0.2, frictionShape: 'play', layout: 'there and back' },
  },
];
