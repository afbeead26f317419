import { NORMAL_95 } from '../uncertainty/normal.js';
import type { CarDocument } from './car-schema.js';
import type { RollWay } from './roll-ways.js';
import type { TurnSettings } from './turn-settings.js';

export type RollLoad = NonNullable<TurnSettings['load']>;

/** What lateral acceleration cannot do without, in the order in which it is asked for. */
const NEEDED = ['lateral', 'springRate', 'sprungMass', 'centreHeight'] as const satisfies readonly (keyof RollLoad)[];
export const NEEDED_OF_OTHER = ['otherMass', 'otherTrack', 'otherRollCentre', 'otherSpringRate'] as const;
/** Of an estimate that nobody said anything of, 95 %, mm: common practice, no source. */
export const USUAL_CENTRE_PLUS_MINUS = 50;

/** From where the roll of the body comes: as chosen, once it is whole; else it is typed. */
export function rollWayOf(car: CarDocument): RollWay | 'typed' {
  const { rollFrom, marks, photo } = car.turn ?? {};
  if (rollFrom === 'marks' && marks?.outer !== undefined) return 'marks';
  if (rollFrom === 'photo' && photo !== undefined) return 'photo';
  if (rollFrom === 'load' && loadMissing(car).length === 0) return 'load';
  return 'typed';
}

/** What of a load was given on another page about this corner: mm, N/mm, kg. */
export function loadStandIn({ loads, stopGap }: CarDocument): Partial<RollLoad> {
  const { springRate, cornerMass, unsprungMass, stopRate } = loads ?? {};
  const sprung = cornerMass !== undefined && unsprungMass !== undefined ? 2 * (cornerMass - unsprungMass) : undefined;
  return {
    ...(springRate !== undefined && { springRate }),
    ...(sprung !== undefined && sprung > 0 && { sprungMass: sprung, unsprungMass: 2 * unsprungMass! }),
    ...(stopGap !== undefined && stopGap >= 0 && stopRate !== undefined && { stopGap, stopRate }),
  };
}

/** As given for the turn, else on another page. */
export const loadInUse = (car: CarDocument): Partial<RollLoad> => ({ ...loadStandIn(car), ...car.turn?.load });

/** What lateral acceleration still needs. */
export function loadMissing(car: CarDocument): (typeof NEEDED)[number][] {
  const load = loadInUse(car);
  return NEEDED.filter((key) => load[key] === undefined);
}

/** Whether the other axle is given in part: then it counts for nothing. */
export function isOtherAxleHalf({ turn }: CarDocument): boolean {
  const given = NEEDED_OF_OTHER.filter((key) => turn?.load?.[key] !== undefined);
  return given.length > 0 && given.length < NEEDED_OF_OTHER.length;
}

/** Suspension roll that a photo shows, degrees, and its standard uncertainty: without the tyres’ share, where that is known. */
export function photoRoll({ turn }: CarDocument): { roll: number; uncertainty?: number } {
  const { photo = 0, tyreRoll = 0, photoPlusMinus } = turn ?? {};
  const roll = Number((photo - tyreRoll).toFixed(9));
  return { roll, ...(photoPlusMinus !== undefined && { uncertainty: photoPlusMinus / NORMAL_95 }) };
}
