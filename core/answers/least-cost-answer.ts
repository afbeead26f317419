import type { LeastCost } from '../document/cost-weights.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import type { OwnWay } from './least-cost-request.js';

/** One setup that brings the outer wheel where it is wanted. mm, degrees, N/mm. */
export interface LeastCostRow {
  drop: number;
  /** Static camber, where it then stands. */
  camber: number;
  /** What sets it, and how much of that it takes, in the sense of `PART_WAYS`. Left out: camber is as height and joint leave it. */
  way?: OwnWay;
  amount?: number;
  unit?: 'mm' | 'degrees';
  /** Place in the request's lists. Left out: as it is. */
  joint?: number;
  spring?: number;
  bar?: number;
  /** What is put on the links. */
  parts: PartData[];
  /** Of the outer wheel to the road, and the suspension roll it is at. */
  inclination: number;
  roll: number;
  /** Of the outer wheel from where it stands, bump positive. */
  bumpInTurn: number;
  costs: {
    /** Given up at the wheel; negative where some is won. */
    bumpTravel: number;
    /** Peak to peak; left out where the tie rod is not known. */
    bumpSteer?: number;
    /** Either way. */
    scrubChange: number;
    /** Of all that has a price. */
    price: number;
  };
  /** Whether something in it has no price: `price` is the least it costs then. */
  isPriceOpen: boolean;
  /** Where they were given as the car is. */
  bumpLeft?: number;
  gapStrut?: number;
  /** In which nothing that reaches it costs less; a price only where it is known. */
  bestIn: LeastCost[];
}

export interface LeastCostAnswer {
  inclination: number;
  tolerance: number;
  /** The car as it is, toe set. */
  asItIs: { camber: number; inclination: number; roll: number; bumpSteer?: number; scrubRadius: number };
  /** At most five, best first. */
  rows: LeastCostRow[];
  /** How many setups there were, how many of them reach it within the limits, and how many of those no other one beats in every cost. */
  tried: number;
  reach: number;
  unbeaten: number;
}
