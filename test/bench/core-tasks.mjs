import { normal, randomNumbers } from '../core/driveway/random-car.ts';

/*
 * What `bumpline/core` is asked in abba.mjs, by its public names only, so that another commit can be asked the same. Every task gives a
 * number of its answer: two commits that do not answer alike are not compared by their speed. Cars and readings are invented, and
 * the same for whoever asks.
 */

const POSES = 10_000;
const POINTS = 201;
const SERIES = 8;
const EVENLY = Float64Array.from({ length: POINTS }, (_, i) => -70 + (140 * i) / (POINTS - 1));
const WHEELS = {
  before: { size: '205/55R16', rimWidthInch: 6.5, offset: 45 },
  after: { size: '215/45R17', rimWidthInch: 7.5, offset: 40 },
};
const PLACES = [
  { name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 12, distance: 371, out: 25 } },
  { name: 'liner screw', fixedTo: 'body', is: 'bodywork', at: { clock: 10, distance: 404, out: -12 } },
  {
    name: 'spring perch',
    fixedTo: 'carrier',
    is: 'chassis',
    at: { clock: 12, distance: 288, out: -21, from: 'inner' },
  },
];

/** A strut of an ordinary car, its points moved by up to 8 mm. With `plusMinus`, as it was measured with a tape. */
function randomStrut(random) {
  const moved = (...point) => point.map((x) => x + 16 * (random() - 0.5));
  return {
    kind: 'strut',
    wheelCentre: [0, 738, 302],
    loadedRadius: 302,
    camber: -0.6,
    toe: 0.08,
    lowerArm: { front: moved(24, 356, 193), rear: moved(-268, 362, 198), ball: moved(0, 694, 176) },
    strut: { top: moved(-79, 574, 822), low: moved(-38, 625, 462) },
    tieRod: { inner: moved(-124, 340, 256), outer: moved(-128, 664, 245) },
    plusMinus: { other: 3 },
  };
}

/** Nobody asked about it before. */
const newCorner = (corner, i) => ({ kind: 'corner', corner: { ...corner, wheelCentre: [0, 738 + 1e-6 * i, 302] } });
const newDriveway = (i) => ({
  kind: 'driveway',
  driveway: {
    armLength: { value: 338 + 1e-6 * i, plusMinus: 3 },
    pivotHeight: { value: 193, plusMinus: 3 },
    ballHeight: { value: 176, plusMinus: 3 },
    wheelCentreHeight: { value: 302, plusMinus: 3 },
    topHeight: { value: 822, plusMinus: 3 },
    damperLean: { value: 8, plusMinus: 0.5 },
    camber: { value: -0.6, plusMinus: 0.1 },
  },
});

/** Camber in degrees of passes up the travel, with a zero of their own and scatter. */
function readingsOf(random, passes, heights, rate) {
  return Array.from({ length: passes }, (_, pass) => {
    const zero = 0.05 * normal(random);
    return Array.from({ length: heights }, (_, i) => {
      const travel = Math.round(-50 + (110 * i) / (heights - 1));
      return { travel, value: rate * travel + 1e-4 * travel ** 2 + zero + 0.02 * normal(random), pass: `${pass + 1}` };
    });
  }).flat();
}

/**
 * @param {Record<string, any>} core what a commit exports
 * @returns {{ name: string, lacks: string[], make: () => (i: number) => number }[]} `make` prepares a task, which gets the number of its
 *   run; `lacks`: names it needs that this commit has not
 */
export function tasksOf(core) {
  const random = randomNumbers(1);
  const corner = randomStrut(random);
  const travels = Float64Array.from({ length: POSES }, () => -70 + 140 * random());
  const series = (passes, heights) =>
    Array.from({ length: SERIES }, () => readingsOf(random, passes, heights, -0.014 - 0.004 * random()));
  const fits = { 49: series(7, 7), 150: series(5, 30) };

  const fitting = (count) => () => (i) => core.fitCurve(fits[count][i % SERIES]).residualSd;
  const loweringNew = (sourceOf) => () => (i) =>
    core.lowering({ source: sourceOf(i), drop: 30, dropPlusMinus: 3 }).change.value;
  /** The drop runs up and down over 50 mm, 0.1 mm a step. */
  const loweringDragged = (source) => () => (i) =>
    core.lowering({ source, drop: 0.1 * Math.abs((i % 1000) - 500), dropPlusMinus: 3 }).change.value;

  const task = (name, needs, make) => ({ name, lacks: needs.filter((one) => core[one] === undefined), make });
  return [
    task('pose: 10,000 single ones', ['buildLinkage', 'createTravelSweep', 'sweepTravelInto'], () => {
      const linkage = core.buildLinkage(corner);
      const [out, one] = [core.createTravelSweep(1), new Float64Array(1)];
      return () => {
        let sum = 0;
        for (let i = 0; i < POSES; i++) {
          one[0] = travels[i];
          core.sweepTravelInto(out, linkage, one);
          sum += out.camber[0];
        }
        return sum;
      };
    }),
    task('sweep of 201 poses', ['buildLinkage', 'createTravelSweep', 'sweepTravelInto'], () => {
      const linkage = core.buildLinkage(corner);
      const out = core.createTravelSweep(POINTS);
      return () => {
        core.sweepTravelInto(out, linkage, EVENLY);
        return out.camber[POINTS - 1];
      };
    }),
    task('exact derivatives, 201 poses', ['buildLinkage', 'sweepDerivatives'], () => {
      const linkage = core.buildLinkage(corner);
      return () => core.sweepDerivatives(corner, linkage, EVENLY).camber[0];
    }),
    task('fit of 49 readings', ['fitCurve'], fitting(49)),
    task('fit of 150 readings', ['fitCurve'], fitting(150)),
    task(
      'lowering, hard points, a new car',
      ['lowering'],
      loweringNew((i) => newCorner(corner, i)),
    ),
    task('lowering, hard points, a dragged drop', ['lowering'], loweringDragged(newCorner(corner, 0))),
    task('lowering, driveway, a new car', ['lowering'], loweringNew(newDriveway)),
    task('lowering, driveway, a dragged drop', ['lowering'], loweringDragged(newDriveway(0))),
    task('compare: two sets, new bump', ['compareCurves', 'curveFrom', 'fitCurve'], () => {
      const curves = [-0.014, -0.018].map((rate) => ({
        curve: core.curveFrom(core.fitCurve(readingsOf(randomNumbers(2), 3, 9, rate)).curve),
      }));
      // Never the same bump twice running: the last break-even is remembered.
      return (i) => {
        const bump = 30 + (i % 97) / 1000;
        return core.compareCurves({ curves, heights: [0, 25], bump }).cells[1][1].change.value;
      };
    }),
    task(
      'motion with 33° of lock, a new car',
      ['wheelMotion'],
      () => (i) => core.wheelMotion({ source: newCorner(corner, i), lock: 33 }).centre[0],
    ),
    task('clearance straight ahead, three places', ['wheelMotion', 'clearance'], () => {
      const motion = core.wheelMotion({ source: newCorner(corner, 0) });
      const limits = { stopGap: 34, stopLength: 55, strokeDroop: 78 };
      return (i) => {
        const drop = 10 + 0.1 * (i % 200);
        return core.clearance({ motion, isLeft: true, ...WHEELS, places: PLACES, limits, drop }).places[0].worst.gap;
      };
    }),
    task(
      'turn: rolled and steered, a new car',
      ['cornering'],
      () => (i) =>
        core.cornering({ source: newCorner(corner, i), drop: 25, roll: 2, steer: { angle: 6 } }).outer.inclination,
    ),
  ];
}
