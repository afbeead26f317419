import type { CarDocument } from '../document/car.js';
import { loadInUse, NEEDED_OF_OTHER, USUAL_CENTRE_PLUS_MINUS } from '../document/turn-roll.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import type { CorneringRequest } from './cornering-request.js';
import type { LoadWithLinks, MarksWithLinks } from './roll-source.js';

/** What is held in the turn of a car besides its roll: the tyres' part of it, and steer where both its figures are given. */
export function heldInTurn({ turn }: CarDocument): Pick<CorneringRequest, 'tyreRoll' | 'steer'> {
  const { tyreRoll, radius, wheelbase } = turn ?? {};
  return {
    ...(tyreRoll !== undefined && { tyreRoll }),
    ...(radius !== undefined && wheelbase !== undefined && { steer: { radius, wheelbase } }),
  };
}

/** What cable ties show, of a car that has them. A tie shows no droop: where nobody read it, the inner wheel fell as far as the outer one rose. */
export function marksOf({ turn }: CarDocument): MarksWithLinks {
  const { outer, inner, motionRatio, plusMinus } = turn!.marks!;
  return {
    outerTravel: outer!,
    innerTravel: inner ?? outer!,
    ...(motionRatio !== undefined && { motionRatio }),
    ...(turn!.track !== undefined && { track: turn!.track }),
    ...(plusMinus !== undefined && { markUncertainty: plusMinus / NORMAL_95 }),
  };
}

/**
 * The load on a car that stands `drop` mm below stock height: its centre of gravity is lower by the drop. Shorter springs take it off the gap
 * to the stop as well, which was given where the car was measured.
 */
export function loadOf(car: CarDocument, drop: number): LoadWithLinks {
  const load = loadInUse(car);
  const { measuredAt = 0, lowered, turn } = car;
  const { unsprungMass, rollCentre, barRate, barRatio, stopGap, stopRate } = load;
  const { otherMass, otherTrack, otherRollCentre, otherSpringRate, otherMotionRatio, otherBarRate, otherBarRatio } =
    load;
  const isOther = NEEDED_OF_OTHER.every((key) => load[key] !== undefined);
  const bar = (rate: number | undefined, ratio: number | undefined) =>
    rate !== undefined && { bar: { rate, ...(ratio !== undefined && { motionRatio: ratio }) } };
  return {
    lateral: load.lateral!,
    // Where nobody gave it, it is missing.
    centreOfGravityHeight: load.centreHeight === undefined ? load.centreHeight! : load.centreHeight - drop,
    heightUncertainty: (load.centrePlusMinus ?? USUAL_CENTRE_PLUS_MINUS) / NORMAL_95,
    axle: {
      sprungMass: load.sprungMass!,
      springRate: load.springRate!,
      ...(load.motionRatio !== undefined && { motionRatio: load.motionRatio }),
      ...(turn?.track !== undefined && { track: turn.track }),
      ...(rollCentre !== undefined && { rollCentreHeight: rollCentre }),
      ...(unsprungMass !== undefined && { unsprungMass }),
      ...bar(barRate, barRatio),
      ...(stopGap !== undefined && stopRate !== undefined && { stop: { gap: stopGap, rate: stopRate } }),
    },
    ...(isOther && {
      otherAxle: {
        sprungMass: otherMass!,
        track: otherTrack!,
        rollCentreHeight: otherRollCentre!,
        springRate: otherSpringRate!,
        ...(otherMotionRatio !== undefined && { motionRatio: otherMotionRatio }),
        ...bar(otherBarRate, otherBarRatio),
      },
    }),
    ...(lowered !== 'dampers' && { lowerThanGap: drop - measuredAt }),
    ...(load.rates && { isRateSure: true }),
  };
}

/** By the path in a request, where the same stands in a car. */
const PLACES: Readonly<Record<string, string>> = {
  'marks.outerTravel': 'marks.outer',
  'marks.innerTravel': 'marks.inner',
  'marks.motionRatio': 'marks.motionRatio',
  'marks.markUncertainty': 'marks.plusMinus',
  'marks.track': 'track',
  'load.lateral': 'load.lateral',
  'load.centreOfGravityHeight': 'load.centreHeight',
  'load.heightUncertainty': 'load.centrePlusMinus',
  'load.axle.sprungMass': 'load.sprungMass',
  'load.axle.unsprungMass': 'load.unsprungMass',
  'load.axle.track': 'track',
  'load.axle.rollCentreHeight': 'load.rollCentre',
  'load.axle.springRate': 'load.springRate',
  'load.axle.motionRatio': 'load.motionRatio',
  'load.axle.bar.rate': 'load.barRate',
  'load.axle.bar.motionRatio': 'load.barRatio',
  'load.axle.stop.gap': 'load.stopGap',
  'load.axle.stop.rate': 'load.stopRate',
  'load.otherAxle.sprungMass': 'load.otherMass',
  'load.otherAxle.track': 'load.otherTrack',
  'load.otherAxle.rollCentreHeight': 'load.otherRollCentre',
  'load.otherAxle.springRate': 'load.otherSpringRate',
  'load.otherAxle.motionRatio': 'load.otherMotionRatio',
  'load.otherAxle.bar.rate': 'load.otherBarRate',
  'load.otherAxle.bar.motionRatio': 'load.otherBarRatio',
};

/** Where in a car a problem of a worked-out roll stands; undefined of any other. */
export const rollPlace = (path: string): string | undefined => {
  const { [path]: place } = PLACES;
  return place && `turn.${place}`;
};
