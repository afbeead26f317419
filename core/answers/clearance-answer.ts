import type { TravelBudget } from '../travel/budget.js';
import type { Contribution } from '../uncertainty/combine.js';
import type { WheelComparison } from '../wheel/compare-wheels.js';
import type { BumpLeft } from './limited-bump.js';

/**
 * `clears`: at the bad end of the ± all that must stay free is left. `touches`: at the good end of the ± nothing is left; a gap of
 * 0 mm is contact. Anything between is too close to tell.
 */
export type Verdict = 'clears' | 'close' | 'touches';

export interface GapAt {
  travel: number;
  /** Toe at reference height that the wheel is steered to, degrees; 0 means straight ahead or nearly. */
  toe: number;
  isAhead: boolean;
  gap: number;
  /** 95 %. */
  plusMinus: number;
}

export interface PlaceAnswer {
  /** What has to stay free besides the allowance, mm. */
  margin: number;
  /** Undefined while nobody has said where the suspension is solid. */
  verdict?: Verdict;
  /** Gap at each travel straight ahead, of the new wheel and of the old one, mm. */
  ahead: Float64Array;
  /** Of the old wheel, mm. */
  before: Float64Array;
  /** The smallest over the steering, mm; the same as `ahead` where nothing is steered. */
  least: Float64Array;
  /** At the drop. */
  ride: GapAt;
  /** Where the suspension is solid. */
  solid?: GapAt;
  /** The smallest over the whole travel. */
  worst: GapAt;
  /** What the verdict is of: at solid, and where it is steered, a larger gap may be less sure. */
  decisive: GapAt;
  /** What the ± of the decisive one is made of, the largest first. */
  shares: Contribution[];
  /** Gap at the worst, mm, with the largest tyre that the standard lets pass as this size. */
  largest: number;
  /** Travel, mm, from the height asked about upward, at which allowance and gap are used up. */
  contact?: number;
}

export interface ClearanceAnswer {
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** The travels that gaps are told at, mm from stock height. */
  travel: Float64Array;
  /** Whether the wheel was turned to full lock as well. */
  isSteered: boolean;
  /** What the new wheel changes. */
  wheels: WheelComparison;
  /** Both ends of travel, and what governs them. */
  budget: TravelBudget;
  /** Between which travels the answer looks, mm: full droop to solid, or as far as is known. */
  range: [from: number, to: number];
  /** One for each place, in the order given. */
  places: PlaceAnswer[];
  /** Index of the place that decides; undefined without places. */
  worst?: number;
  /** Undefined without places, and while nobody said where the suspension is solid. */
  verdict?: Verdict;
  /** The first contact from the height asked about upward, beyond solid too: mm from stock height, and the place’s index. */
  contact?: { travel: number; place: number };
  /** For flex of bushes and tyre, mm. */
  allowance: number;
  /** What alone would make it clear, or how far one can still go. */
  justClear?: JustClear[];
}

/** What can be changed alone until the verdict is just "clears". */
export type ChangeId = 'plane' | 'width' | 'diameter' | 'camber' | 'bump' | 'drop';

/** One end of what can be changed. */
export interface ChangeEnd {
  /**
   * By how much, mm or degrees: the wheel's middle plane outboard (a spacer, or so much less offset), section width, free diameter,
   * static camber, the end of bump at the wheel, drop. Undefined where only a tyre of another width and diameter does it.
   */
  by?: number;
  /** A tyre size that clears, of those that this rim's width permits. */
  size?: string;
  /** What is left where bump ends earlier. */
  bump?: BumpLeft;
}

export interface JustClear {
  /** What is changed: the wheel’s middle plane, tyre width, tyre diameter, camber, the end of bump, or the drop. */
  id: ChangeId;
  /**
   * Where the wheel does not clear: the nearest change that makes it. Where it does: how far one can still go, at most one end each
   * way, the nearest first. Empty: nothing of what one can buy or set ends it.
   */
  ends: readonly ChangeEnd[];
  /** It changes nothing: with shorter springs full bump is where the stop is, whatever the drop. */
  isIdle?: true;
}
