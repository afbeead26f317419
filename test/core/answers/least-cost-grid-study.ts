import { PART_WAYS } from '../../../core/answers/camber-ways.js';
import type { LeastCostRequest, OwnWay } from '../../../core/answers/least-cost-request.js';
import { axleAt } from '../../../core/linkage/axle.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { ballJointExtended } from '../../../core/linkage/parts/ball-joint.js';
import { rebuilt } from '../../../core/linkage/parts/part.js';
import { partOf } from '../../../core/linkage/parts/part-data.js';
import { camberAndToeSet, toeReset } from '../../../core/linkage/parts/targets.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { rackForMeanSteer } from '../../../core/linkage/turned-in.js';
import { InputError } from '../../../core/quantity/problem.js';
import { rollFromAcceleration } from '../../../core/travel/roll.js';

/*
 * Every setup of a request's steps on one strut, tried whole: nothing is left out, kept or pruned, and camber, toe, bump travel and bump
 * steer come by other ways than in the search (Newton in two unknowns, bisection, a dense sweep). What both share is the linkage.
 */
export interface GridSetup {
  drop: number;
  way?: OwnWay;
  camber: number;
  joint?: number;
  spring?: number;
  bar?: number;
  inclination: number;
  roll: number;
  costs: { bumpTravel: number; bumpSteer: number; scrubChange: number; price: number };
  unpriced: string[];
}

type Request = Omit<LeastCostRequest<unknown>, 'source'>;

/** @returns those within the limits */
export function wholeGrid(request: Request, corner: StrutCorner): GridSetup[] {
  const { drop: now, height, camber, joints = [], springs = [], bars = [], limits = {} } = request;
  const measured = buildLinkage(corner);
  const toe = request.toe ?? corner.toe;
  const lowered = (drop: number) => toeReset(rebuilt(measured, { wheelCentreZ: measured.wheelCentreZ + drop }), toe);
  const before = lowered(now);
  const found: GridSetup[] = [];
  const drops = height ? counted(height.from, height.to, height.step!) : [now];
  if (!drops.includes(now) && now >= height!.from && now <= height!.to) drops.push(now);
  for (const drop of drops) {
    for (const [j, joint] of [undefined, ...joints].entries()) {
      const jointed = had(() =>
        joint
          ? toeReset(
              ballJointExtended({ mm: joint.mm, correctTieRod: joint.correctTieRod === true })(lowered(drop)),
              toe,
            )
          : lowered(drop),
      );
      if (!jointed) continue;
      const set = [{ linkage: jointed, way: undefined, price: 0 as number | undefined }, ...setWays(jointed)];
      for (const { linkage, way, price } of set) {
        const here = sweepTravel(linkage, [0]);
        const inRange = !camber || (here.camber[0]! >= camber.from - 1e-9 && here.camber[0]! <= camber.to + 1e-9);
        if (!inRange) continue;
        const costs = {
          bumpTravel: -bumpMore(linkage, before),
          bumpSteer: bumpSteer(linkage, request.window ?? [-40, 40]),
          scrubChange: Math.abs(here.scrubRadius[0]! - sweepTravel(before, [0]).scrubRadius[0]!),
        };
        if (costs.bumpSteer > (limits.bumpSteer ?? Infinity) || Number.isNaN(costs.bumpSteer)) continue;
        if (costs.scrubChange > (limits.scrubChange ?? Infinity)) continue;
        if ((request.bumpLeft ?? 0) - costs.bumpTravel < (limits.bumpLeft ?? -Infinity)) continue;
        for (const [s, spring] of [undefined, ...springs].entries()) {
          for (const [b, bar] of [undefined, ...bars].entries()) {
            const things: [string, number | undefined][] = [];
            if (drop !== now) things.push(['height', height!.price]);
            if (joint) things.push([`joint ${j}`, joint.price]);
            if (way) things.push([`way ${way}`, price]);
            if (spring) things.push([`spring ${s}`, spring.price]);
            if (bar) things.push([`bar ${b}`, bar.price]);
            const roll = rollOf(request, linkage, drop - now, spring?.rate, bar?.rate);
            const inclination = had(() => inclinationOf(linkage, roll, request.steer));
            if (inclination === undefined) continue;
            found.push({
              drop,
              camber: here.camber[0]!,
              ...(way && { way }),
              ...(joint && { joint: j - 1 }),
              ...(spring && { spring: s - 1 }),
              ...(bar && { bar: b - 1 }),
              inclination,
              roll,
              costs: { ...costs, price: things.reduce((sum, [, one]) => sum + (one ?? 0), 0) },
              unpriced: things.filter(([, one]) => one === undefined).map(([name]) => name),
            });
          }
        }
      }
    }
  }
  return found;

  function setWays(jointed: Linkage) {
    if (!camber) return [];
    return camber.ways!.flatMap(({ way, price }) =>
      counted(camber.from, camber.to, camber.step!).flatMap((wanted) => {
        const made = had(() =>
          camberAndToeSet(jointed, { camber: wanted, toe }, (amount) => partOf(PART_WAYS[way].data(amount, corner))),
        );
        return made && Math.abs(made.amount) <= PART_WAYS[way].most ? [{ linkage: made.linkage, way, price }] : [];
      }),
    );
  }
}

/** Multiples of a step from one end to the other. */
function counted(from: number, to: number, step: number): number[] {
  const all: number[] = [];
  for (let i = Math.floor(from / step) - 1; i * step <= to + 1e-9; i++) if (i * step >= from - 1e-9) all.push(i * step);
  return all;
}

function had<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

function inclinationOf(linkage: Linkage, roll: number, steer: Request['steer']): number {
  if (!steer) return axleAt(linkage, linkage, { roll }).right.inclination;
  if (!('angle' in steer)) throw new Error('The study steers by an angle.');
  const { rack, isReached } = rackForMeanSteer(linkage, roll, steer.angle);
  if (!isReached) throw new InputError([{ code: 'out-of-range', path: 'steer.angle', value: steer.angle }]);
  return axleAt(linkage, linkage, { roll, rack }).right.inclination;
}

function rollOf({ roll, load }: Request, linkage: Linkage, lower: number, spring?: number, bar?: number): number {
  if (!load) return roll!;
  const { rollCentreHeight, motionRatio, halfTrack } = sweepTravel(linkage, [0]);
  return rollFromAcceleration({
    ...load,
    centreOfGravityHeight: load.centreOfGravityHeight - lower,
    axle: {
      motionRatio: motionRatio[0]!,
      track: 2 * halfTrack[0]!,
      ...load.axle,
      rollCentreHeight: rollCentreHeight[0]!,
      springRate: spring ?? load.axle.springRate,
      bar: bar === undefined ? load.axle.bar : { ...load.axle.bar, rate: bar },
    },
  }).roll;
}

/** How much further into bump until the damper is as short as before, by bisection. */
function bumpMore(linkage: Linkage, before: Linkage): number {
  const length = sweepTravel(before, [0]).damperLength[0]!;
  let [low, high] = [Math.max(linkage.reach.droop, -100), Math.min(linkage.reach.bump, 100)];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (sweepTravel(linkage, [middle]).damperLength[0]! > length) low = middle;
    else high = middle;
  }
  return low;
}

function bumpSteer(linkage: Linkage, [low, high]: readonly [number, number]): number {
  const { toe } = sweepTravel(
    linkage,
    Array.from({ length: 401 }, (_, i) => low + ((high - low) * i) / 400),
  );
  return Math.max(...toe) - Math.min(...toe);
}
