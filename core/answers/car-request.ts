import type { AnySource, LearntSource, PartsSource, ReadingsSource } from '../curve-sources/source.js';
import { asLinks } from '../document/as-links.js';
import { bumpTravelOf, type CarDocument, drivewayOf, limitsOf } from '../document/car.js';
import { learntSourceOf } from '../document/learnt-in-use.js';
import { predictNeeds } from '../document/predict-needs.js';
import type { Setup } from '../document/setup.js';
import { camberSetupOf, fittedSetup, readingsInUse, sourceKindOf, toeSetupOf } from '../document/setup-in-use.js';
import { cornerOf } from '../document/strut-in-use.js';
import type { TravelLimits } from '../travel/travel-limits.js';
import type { LoweringRequest } from './lowering.js';

/** The readings of a set that count, as a source. */
export function sourceOfSetup(setup: Setup): ReadingsSource {
  const { quantity, degree, zeroAt, doubts } = setup;
  return {
    kind: 'readings',
    readings: readingsInUse(setup),
    ...(quantity === 'toe' && { quantity }),
    ...(degree !== undefined && { degree }),
    ...(zeroAt !== undefined && { zeroAt }),
    ...(doubts && { doubts }),
  };
}

/** What the answer about a car is made from. */
export function sourceOfCar(car: CarDocument): AnySource {
  const sourceKind = sourceKindOf(car);
  if (sourceKind === 'readings') return sourceOfSetup(camberSetupOf(car)!);
  const corner = cornerSourceOf(car);
  return withParts(corner, fittedSetup(car)) ?? corner;
}

/**
 * What an answer about toe is made from: readings of it, else hard points with the fitted parts on; undefined where nothing tells toe,
 * which six measurements and a curve of camber do not.
 */
export function toeSourceOf(car: CarDocument): AnySource | undefined {
  const setup = toeSetupOf(car);
  if (setup) return sourceOfSetup(setup);
  const corner = cornerSourceOf(car.curve ? car : asLinks(car));
  return tellsToe(corner) ? (withParts(corner, fittedSetup(car)) ?? corner) : undefined;
}

/** Whether what is known of a corner tells how far its wheel steers itself. */
export const tellsToe = (of: AnySource): boolean =>
  of.kind === 'corner' ||
  (of.kind === 'learnt' && (of.of.kind === 'corner' || of.toe !== undefined)) ||
  (of.kind === 'curve' && of.curve.quantity === 'toe');

/** Whether a source has links, with parts on or without, as they were measured or as readings correct them. */
export const isOfLinks = ({ kind }: Pick<AnySource, 'kind'>): boolean =>
  kind === 'corner' || kind === 'driveway' || kind === 'parts' || kind === 'learnt';

/** A corner with the parts of a set on it; undefined where there is nothing to put on, or nothing to put it on. */
export const withParts = (of: AnySource, setup: Setup | undefined): PartsSource | LearntSource | undefined =>
  !setup?.parts
    ? undefined
    : of.kind === 'learnt'
      ? { ...of, parts: setup.parts, ...(setup.alignment && { alignment: setup.alignment }) }
      : of.kind === 'corner' || of.kind === 'driveway'
        ? { kind: 'parts', of, parts: setup.parts, ...(setup.alignment && { alignment: setup.alignment }) }
        : undefined;

/** What the corner's own curve is made from, whatever readings there are. */
export function cornerSourceOf(car: CarDocument): AnySource {
  if (car.curve) return car.curve;
  const learnt = car.links === 'learnt' && predictNeeds(car).length === 0 ? learntSourceOf(car) : undefined;
  if (learnt) return learnt;
  const sourceKind = sourceKindOf({ ...car, setups: [] });
  if (car.whole === undefined && sourceKind === 'driveway') return { kind: 'driveway', driveway: drivewayOf(car) };
  return { kind: 'corner', corner: cornerOf(car) };
}

/** The question about lowering that a car document asks. @param source of the car */
export function loweringRequestOf(car: CarDocument, source = sourceOfCar(car)): LoweringRequest<AnySource> {
  const { stopGap, limits } = limitsOf(car);
  const { drop, dropPlusMinus, lowered, measuredAt, camberReadLower, other } = car;
  const bumpTravel = bumpTravelOf(car);
  return {
    source,
    drop,
    ...(dropPlusMinus !== undefined && { dropPlusMinus }),
    ...(bumpTravel !== undefined && { bumpTravel }),
    // Readings know nothing of the damper that gaps are measured along, unless somebody gave its ratio.
    ...(stopGap !== undefined && (source.kind !== 'readings' || limits?.motionRatio !== undefined) && { stopGap }),
    ...(limits && { limits: source.kind === 'readings' && limits.motionRatio === undefined ? offRod(limits) : limits }),
    ...(lowered && { lowered }),
    ...(camberReadLower !== undefined && car.given.camber !== undefined && { camberReadLower }),
    ...(other && { other }),
    ...(measuredAt !== undefined && { measuredAt }),
  };
}

/** What is not measured along the damper. */
const offRod = ({ shaftBump, shaftDroop }: TravelLimits): TravelLimits => ({
  ...(shaftBump !== undefined && { shaftBump }),
  ...(shaftDroop !== undefined && { shaftDroop }),
});
