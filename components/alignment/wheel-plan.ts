import { rodByLever } from '../../core/alignment/rod-by-lever.js';
import { type TurnsAnswer, turnsOf } from '../../core/alignment/rod-thread.js';
import type { AlignmentAnswer } from '../../core/answers/alignment.js';
import type { Doubted } from '../../core/answers/lowering.js';
import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { knownArm } from '../inputs/known-arm.js';
import { HOW_SURE } from '../inputs/sheet-spec.js';

export const WHEEL_SIDES = ['left', 'right'] as const;
export type WheelSide = (typeof WHEEL_SIDES)[number];

/** What an ordinary gauge resolves, half-widths of 95 %, degrees: the reading's ±, and the tolerance until somebody types one. Common practice, no source. */
export const GAUGE = { camber: 0.1, toe: HOW_SURE.toe[1].plusMinus } as const;

/** As well as a tape reads a steering arm to a line that is only thought, mm. Common practice, no source. */
const LEVER_MM = 5;

/** What is said of one wheel on the sheet. mm and degrees. */
export interface WheelPlan {
  side: WheelSide;
  height: { now?: number | undefined; after?: number | undefined };
  /** By how much lower it is to stand; 0 where nobody said. */
  lower: number;
  camber?: number | undefined;
  toe?: number | undefined;
  /** Of the links, where they are known. */
  found?: AlignmentAnswer | undefined;
  /** Toe once height and camber are right, and what it is then to change by. */
  toeThen?: number | undefined;
  toeChange?: Doubted | undefined;
  rodLonger?: Doubted | undefined;
  /** By the steering arm's arc alone. */
  isByRule: boolean;
  turns?: TurnsAnswer | undefined;
  /** By which a turn longer changes toe, degrees. */
  toePerTurn?: number | undefined;
  isToeWithin: boolean;
  isCamberWithin: boolean;
  problems: Problem[];
}

/** What is given of one wheel. */
export function givenOf(car: CarDocument, side: WheelSide) {
  const { alignment = {} } = car;
  const isLeft = side === 'left';
  const height = {
    now: isLeft ? alignment.heightLeft : alignment.heightRight,
    after: isLeft ? alignment.heightAfterLeft : alignment.heightAfterRight,
  };
  const { heightWanted: wanted } = alignment;
  return {
    height,
    // The lip comes nearer to the hub by as much as the car goes down.
    lower: height.now === undefined || wanted === undefined ? 0 : height.now - wanted,
    camber: isLeft ? alignment.camberLeft : alignment.camberRight,
    toe: isLeft ? alignment.toeLeft : alignment.toeRight,
  };
}

/** @param found what the core says of the wheel's links; without it the steering arm's arc is what there is */
export function wheelPlan(car: CarDocument, side: WheelSide, found: AlignmentAnswer | undefined): WheelPlan {
  const { alignment = {} } = car;
  const given = givenOf(car, side);
  const { toeWanted, pitch, thread = 'one', camberTolerance = GAUGE.camber, toeTolerance = GAUGE.toe } = alignment;
  const { toe } = given;
  const problems: Problem[] = [];
  const tried = <T>(run: () => T): T | undefined => {
    try {
      return run();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
      return undefined;
    }
  };
  const { lever, rack } = knownArm(car);
  // What a tape says of this car tells more of its rod than the example's links do.
  const isByRule = found?.toePerMm === undefined || (isExamples(car) && lever !== undefined && rack !== undefined);
  const known = toe !== undefined && toeWanted !== undefined;
  const toeChange = !known
    ? undefined
    : ((isByRule ? undefined : found?.toeChange) ?? { value: toeWanted - toe, plusMinus: GAUGE.toe });
  const arc = (change: Doubted): Doubted | undefined =>
    lever === undefined || rack === undefined
      ? undefined
      : tried(() =>
          rodByLever({
            toeChange: { value: change.value, plusMinus: change.plusMinus ?? 0 },
            lever: { value: lever, plusMinus: LEVER_MM },
            rack,
          }),
        );
  const rodLonger = toeChange && (isByRule ? arc(toeChange) : found?.rodLonger);
  const turns = rodLonger && pitch !== undefined ? tried(() => turnsOf(rodLonger, { pitch, thread })) : undefined;
  const perMm = isByRule ? perMmOf(arc({ value: 0.1, plusMinus: 0 })) : found?.toePerMm?.value;
  return {
    side,
    ...given,
    found,
    toeThen: toeChange && toeWanted! - toeChange.value,
    toeChange,
    rodLonger,
    isByRule,
    turns,
    toePerTurn: turns && perMm !== undefined ? perMm * turns.perTurn : undefined,
    isToeWithin: toeChange !== undefined && Math.abs(toeChange.value) <= toeTolerance,
    isCamberWithin: found !== undefined && Math.abs(found.camberChange.value) <= camberTolerance,
    problems,
  };
}

const perMmOf = (longer: Doubted | undefined): number | undefined => longer && 0.1 / longer.value;

/** Whether nobody gave any links: they are the example's. */
export const isExamples = (car: CarDocument): boolean => cornerGivenBy(car) === undefined;

/** The wheel that the element's corner is. */
export const sideOf = ({ cornerName }: CarDocument): WheelSide => (cornerName.endsWith('right') ? 'right' : 'left');

/** How far below stock height a wheel stands, mm: the other side's own drop, where it was given. */
export const dropOf = (car: CarDocument, side: WheelSide): number =>
  side === sideOf(car) ? car.drop : (car.other?.drop ?? car.drop);
