import type { SolvedLinks, SolvedSource } from '../curve-sources/solved-source.js';
import type { Problem } from '../quantity/problem.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { rollFromAcceleration } from '../travel/roll.js';
import { PART_WAYS } from './camber-ways.js';
import { MOST_ROLL } from './cornering-request.js';
import type { LeastCostRow } from './least-cost-answer.js';
import { columnSteps } from './least-cost-column.js';
import type { Costed, SetupCosts } from './least-cost-front.js';
import { type Grid, type Option, sizeOf } from './least-cost-grid.js';
import { type LeastCostRequest, USUAL_TOLERANCE_DEG } from './least-cost-request.js';
import { type Setup, Setups } from './least-cost-setups.js';

/** A setup on its springs and bar, and where its outer wheel comes to. */
export interface Reached extends Costed {
  setup: Setup;
  choice: Choice;
  roll: number;
  inclination: number;
}

/** What is on besides what camber is set by. */
interface Choice {
  drop: Option<number>;
  joint: Option<{ mm: number; correctTieRod?: boolean }>;
  way?: Option<unknown>;
  spring: Option<number | undefined>;
  bar: Option<number | undefined>;
}

const ROUNDING_DEG = 1e-9;
const AS_IT_IS: Option<undefined> = { value: undefined, price: 0, unpriced: 0 };

/** All setups of a grid, tried one after another. */
export class LeastCostSearch {
  readonly asItIs: Setup;
  readonly turnAsItIs: { inclination: number; roll: number };
  readonly tried: number;
  readonly #request: LeastCostRequest;
  readonly #setups: Setups;
  readonly #grid: Grid;
  #order = 0;

  /** @throws InputError where the car as it is cannot take the turn */
  constructor(request: LeastCostRequest, source: SolvedSource, links: SolvedLinks, grid: Grid) {
    this.#request = request;
    this.#grid = grid;
    this.#setups = new Setups(request, source, links);
    this.asItIs = this.#setups.asItIs;
    this.tried = sizeOf(grid);
    const roll = this.#rollOf(this.asItIs, undefined, undefined);
    this.turnAsItIs = { roll, inclination: this.asItIs.turn.at(roll).outer.inclination };
  }

  /** All that come near enough within the limits. */
  *reaching(): Generator<undefined, Reached[]> {
    const found: Reached[] = [];
    const { tolerance = USUAL_TOLERANCE_DEG } = this.#request;
    yield* this.#walk(tolerance, false, (one) => {
      if (one.miss <= tolerance + ROUNDING_DEG && this.#isWithinLimits(one.setup)) found.push(one);
    });
    return found;
  }

  /** Whether every link is within its own reach in the turn. */
  isSure({ setup, roll }: Reached): boolean {
    if (this.#request.steer === undefined) return true;
    return unlessRefused(() => setup.turn.at(roll)) !== undefined;
  }

  /** What to say where nothing reaches it. */
  *whatIsNear(): Generator<undefined, Problem> {
    const { inclination, tolerance = USUAL_TOLERANCE_DEG, limits = {} } = this.#request;
    let tried: Reached[] = [];
    yield* this.#walk(tolerance, true, (one) => {
      tried.push(one);
    });
    tried = tried.sort((a, b) => a.miss - b.miss);
    for (const nearest of tried) {
      if (this.isSure(nearest))
        return { code: 'out-of-range', path: 'inclination', value: inclination, limit: nearest.inclination };
      yield;
    }
    const { all } = this.#setups;
    for (const [name, value] of Object.entries(limits) as [keyof typeof limits, number][]) {
      const isMost = name === 'bumpSteer' || name === 'scrubChange';
      const had = all
        .map((setup) => this.#limited(setup)[name])
        .filter((one) => one !== undefined && !Number.isNaN(one));
      if (value === undefined || had.length === 0) continue;
      const best = (isMost ? Math.min : Math.max)(...(had as number[]));
      if (isMost ? best > value : best < value) {
        return { code: 'out-of-range', path: `limits.${name}`, value, limit: best };
      }
    }
    return all.length > 0 && Object.keys(limits).length > 0
      ? { code: 'out-of-range', path: 'limits', value: undefined }
      : { code: 'out-of-range', path: 'inclination', value: inclination };
  }

  rowOf({ setup, choice, roll, costs: { unpriced, ...costs } }: Reached): Omit<LeastCostRow, 'bestIn'> {
    const { drop, camber, way, amount, parts, turn } = setup;
    const { outer } = turn.at(roll);
    const { bumpLeft, gapStrut } = this.#limited(setup);
    const { joint, spring, bar } = choice;
    return {
      drop,
      camber,
      ...(way !== undefined && amount !== undefined && { way, amount, unit: PART_WAYS[way].unit }),
      ...(joint.at !== undefined && { joint: joint.at }),
      ...(spring.at !== undefined && { spring: spring.at }),
      ...(bar.at !== undefined && { bar: bar.at }),
      parts,
      inclination: outer.inclination,
      roll,
      bumpInTurn: outer.travel - drop,
      costs,
      isPriceOpen: unpriced !== 0,
      ...(bumpLeft !== undefined && { bumpLeft }),
      ...(gapStrut !== undefined && { gapStrut }),
    };
  }

  /**
   * Every height, joint, spring and bar, with camber as it comes and by every way.
   *
   * @param isInLimits leave out what breaks them before it is looked at where it comes to
   */
  *#walk(tolerance: number, isInLimits: boolean, take: (one: Reached) => void): Generator<undefined, void> {
    const { drops, joints, springs, bars, ways, cambers } = this.#grid;
    const { inclination: wanted, camber: span } = this.#request;
    this.#order = 0;
    const pairs = springs.flatMap((spring) => bars.map((bar) => ({ spring, bar })));
    for (const drop of drops) {
      for (const joint of joints) {
        const left = this.#setups.fitted(drop.value, joint.value);
        yield;
        const isLeftIn =
          left && (!span || (left.camber >= span.from - ROUNDING_DEG && left.camber <= span.to + ROUNDING_DEG));
        if (isLeftIn && (!isInLimits || this.#isWithinLimits(left))) {
          for (const pair of pairs) {
            const one = this.#reached(left, { drop, joint, ...pair });
            if (one) take(one);
            yield;
          }
        }
        for (const way of ways) {
          const at = (camber: number) => this.#setups.fitted(drop.value, joint.value, { way: way.value, camber });
          const column: number[] = [];
          for (const camber of cambers) {
            if (isInLimits) {
              const setup = at(camber);
              yield;
              if (!setup || !this.#isWithinLimits(setup)) continue;
            }
            column.push(camber);
          }
          for (const pair of pairs) {
            const near = left && this.#reached(left, { drop, joint, ...pair });
            const guess = near ? near.setup.camber + wanted - near.inclination : undefined;
            yield* columnSteps(
              column,
              guess,
              (camber) => {
                const setup = at(camber);
                const one = setup && this.#reached(setup, { drop, joint, way, ...pair });
                if (!one) return undefined;
                take(one);
                return one.inclination;
              },
              [wanted - tolerance, wanted + tolerance],
            );
          }
        }
      }
    }
  }

  #reached(setup: Setup, choice: Choice): Reached | undefined {
    const { inclination: wanted } = this.#request;
    const roll = unlessRefused(() => this.#rollOf(setup, choice.spring.value, choice.bar.value));
    if (roll === undefined || !(roll >= 0 && roll <= MOST_ROLL)) return undefined;
    const inclination = setup.turn.outerInclination(roll);
    if (Number.isNaN(inclination)) return undefined;
    const { drop, joint, way = AS_IT_IS, spring, bar } = choice;
    const all = [drop, joint, way, spring, bar] as const;
    this.#order += 1;
    return {
      setup,
      choice,
      roll,
      inclination,
      costs: this.#costsOf(setup, all),
      miss: Math.abs(inclination - wanted),
      changes: all.filter(({ at }) => at !== undefined).length + (drop.value === this.#request.drop ? 0 : 1),
      order: this.#order,
      hardware: [joint.at, way.at, spring.at, bar.at].join('|'),
    };
  }

  #costsOf(setup: Setup, all: readonly Option<unknown>[]): SetupCosts {
    return {
      bumpTravel: -setup.bumpTravel || 0,
      ...(setup.bumpSteer !== undefined && { bumpSteer: setup.bumpSteer }),
      scrubChange: Math.abs(setup.scrubRadius - this.asItIs.scrubRadius),
      price: all.reduce((sum, { price }) => sum + price, 0),
      unpriced: all.reduce((bits, { unpriced }) => bits | unpriced, 0),
    };
  }

  /** Suspension roll, degrees. @throws InputError where the load does not allow it */
  #rollOf(setup: Setup, spring: number | undefined, bar: number | undefined): number {
    const { roll, load, drop } = this.#request;
    if (roll !== undefined || !load) return roll ?? 0;
    const { stop, bar: ownBar, ...axle } = load.axle;
    const rate = spring ?? axle.springRate;
    const motionRatio = axle.motionRatio ?? setup.motionRatio;
    const lower = (load.lowerThanGap ?? 0) * (motionRatio ?? 1);
    const stopGap = Math.max(0, (stop?.gap ?? 0) - lower + setup.damperLonger);
    const fittedBar = bar === undefined ? ownBar : { ...ownBar, rate: bar };
    const found = rollFromAcceleration({
      lateral: load.lateral,
      centreOfGravityHeight: load.centreOfGravityHeight - (setup.drop - drop),
      ...(load.otherAxle && { otherAxle: load.otherAxle }),
      axle: {
        ...axle,
        track: axle.track ?? setup.track,
        springRate: rate,
        rollCentreHeight: setup.rollCentreHeight,
        ...(motionRatio !== undefined && { motionRatio }),
        // No bar is none, and no rate of 0.
        ...(fittedBar && fittedBar.rate > 0 && { bar: fittedBar }),
        ...(stop && { stop: { ...stop, gap: stopGap } }),
      },
    });
    return found.roll;
  }

  /** What the limits are about. */
  #limited(setup: Setup): NonNullable<LeastCostRequest['limits']> {
    const { bumpLeft, gapStrut } = this.#request;
    return {
      ...(bumpLeft !== undefined && { bumpLeft: bumpLeft + setup.bumpTravel }),
      ...(gapStrut !== undefined && setup.gapStrut !== undefined && { gapStrut: gapStrut + setup.gapStrut }),
      ...(setup.bumpSteer !== undefined && { bumpSteer: setup.bumpSteer }),
      scrubChange: Math.abs(setup.scrubRadius - this.asItIs.scrubRadius),
    };
  }

  /** What cannot be told breaks no limit, what cannot be driven breaks any. */
  #isWithinLimits(setup: Setup): boolean {
    const { limits = {} } = this.#request;
    const has = this.#limited(setup);
    if (Number.isNaN(setup.bumpSteer)) return false;
    return (
      !(has.bumpLeft! < (limits.bumpLeft ?? Number.NEGATIVE_INFINITY)) &&
      !(has.gapStrut! < (limits.gapStrut ?? Number.NEGATIVE_INFINITY)) &&
      !(has.bumpSteer! > (limits.bumpSteer ?? Number.POSITIVE_INFINITY)) &&
      !(has.scrubChange! > (limits.scrubChange ?? Number.POSITIVE_INFINITY))
    );
  }
}
