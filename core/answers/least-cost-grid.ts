import type { Linkage } from '../linkage/linkage.js';
import { InputError } from '../quantity/problem.js';
import { PART_WAYS } from './camber-ways.js';
import {
  type LeastCostRequest,
  type OwnWay,
  USUAL_CAMBER_STEP_DEG,
  USUAL_HEIGHT_STEP_MM,
} from './least-cost-request.js';

/** Something that can be put on. */
export interface Option<T> {
  value: T;
  /** Place in the request's list; undefined: as it is. */
  at?: number;
  price: number;
  /** A bit of its own where nobody gave a price. */
  unpriced: number;
}

/** All that is tried: every one with every other. */
export interface Grid {
  drops: readonly Option<number>[];
  joints: readonly Option<{ mm: number; correctTieRod?: boolean }>[];
  /** Rates; undefined as they are. */
  springs: readonly Option<number | undefined>[];
  bars: readonly Option<number | undefined>[];
  ways: readonly Option<OwnWay>[];
  /** Static cambers, ascending, that can be set. */
  cambers: readonly number[];
}

/** Rounding of a multiple of a step. */
const TINY = 1e-9;

/** The multiples of a step between two ends. */
export function stepsOf(from: number, to: number, step: number): number[] {
  const [first, last] = [Math.ceil(from / step - TINY), Math.floor(to / step + TINY)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => Number(((first + i) * step).toFixed(9)));
}

/** @throws InputError `wrong-shape`, path `camber.ways.0.way`, of one that this kind of corner does not have */
export function gridOf(request: LeastCostRequest, kind: Linkage['kind']): Grid {
  const { drop, height, camber, joints = [], springs = [], bars = [], load } = request;
  let bit = 1;
  const priced = <T>(value: T, price: number | undefined, at?: number): Option<T> => {
    const unpriced = price === undefined ? bit : 0;
    if (unpriced) bit *= 2;
    return { value, price: price ?? 0, unpriced, ...(at !== undefined && { at }) };
  };
  const asItIs = <T>(value: T): Option<T> => ({ value, price: 0, unpriced: 0 });
  const lowering = priced(0, height?.price);
  const heights = height ? stepsOf(height.from, height.to, height.step ?? USUAL_HEIGHT_STEP_MM) : [drop];
  const isIn = !height || (drop >= height.from && drop <= height.to);
  const drops = [...new Set(isIn ? [drop, ...heights] : heights)].sort((a, b) => a - b);
  const usual: { way: OwnWay; price?: number } = { way: kind === 'strut' ? 'topMount' : 'longerArm' };
  const ways = camber ? (camber.ways ?? [usual]) : [];
  ways.forEach(({ way }, i) => {
    if (kind === 'strut' || !PART_WAYS[way].isOnStrutAlone) return;
    throw new InputError([{ code: 'wrong-shape', path: `camber.ways.${i}.way`, value: way, other: kind }]);
  });
  return {
    drops: drops.map((value) => (value === drop ? asItIs(value) : { ...lowering, value })),
    joints: [
      asItIs({ mm: 0 }),
      ...joints.map((one, i) => priced(one, one.price, i)).filter(({ value }) => value.mm !== 0),
    ],
    springs: [
      asItIs(undefined),
      ...springs
        .map(({ rate, price }, i) => priced(rate, price, i))
        .filter(({ value }) => value !== load?.axle.springRate),
    ],
    bars: [
      asItIs(undefined),
      ...bars
        .map(({ rate, price }, i) => priced(rate, price, i))
        .filter(({ value }) => value !== (load?.axle.bar?.rate ?? 0)),
    ],
    ways: ways.map(({ way, price }, i) => priced(way, price, i)),
    cambers: camber ? stepsOf(camber.from, camber.to, camber.step ?? USUAL_CAMBER_STEP_DEG) : [],
  };
}

/** How many setups there are of it. */
export const sizeOf = ({ drops, joints, springs, bars, ways, cambers }: Grid): number =>
  drops.length * joints.length * springs.length * bars.length * (1 + ways.length * cambers.length);
