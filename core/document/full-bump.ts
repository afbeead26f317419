import type { End } from '../travel/budget.js';
import type { Place } from '../wheel/place.js';
import { bumpTravelOf, type CarDocument } from './car.js';
import { areLimitsGiven } from './limits-in-use.js';
import { givenBy } from './provenance.js';

/** Where bump ends. Without `governedBy`: by any of what was given. */
type Bump = Pick<End, 'travel' | 'atLeast'> & Partial<Pick<End, 'governedBy'>>;

/** Whose figures say where full bump is. */
export type Whose = 'yours' | 'page' | 'example';

/**
 * How far a corner is raised by hand to look at full bump, with spring and bump stop out: whole mm, to the safe side, so that nobody
 * raises it further than where its suspension would be solid.
 */
export interface FullBump {
  /** By how much hub centre to arch lip is shorter than with the car on its wheels at the drop, rounded down. */
  shorter: number;
  /** Hub centre to arch lip there, rounded up, where the lip above the hub was measured. */
  hubToArch?: number;
  whose: Whose;
}

/**
 * @param solid where bump ends on the car at that drop; see TravelBudget
 * @param drop the height the car stands at, mm lower than the reference height
 * @returns undefined where nobody knows where the suspension is solid, only that it is not before, or where no bump is left
 */
export function fullBumpOf(car: CarDocument, solid: Bump | undefined, drop: number): FullBump | undefined {
  if (!solid || solid.atLeast) return undefined;
  const shorter = Math.floor(solid.travel - drop + ROUNDING_MM);
  if (!(shorter > 0)) return undefined;
  const whose = ownerOf(car, solid.governedBy);
  const lip = whose === arePlacesOf(car) ? lipAboveHub(car.fit?.places) : undefined;
  if (lip === undefined) return { shorter, whose };
  return { shorter, whose, hubToArch: Math.ceil(lip - (solid.travel - (car.measuredAt ?? 0)) - ROUNDING_MM) };
}

/** 32 mm that a sum gives as 31.999… are 32 mm. */
const ROUNDING_MM = 1e-6;

function ownerOf(car: CarDocument, governedBy: End['governedBy'] | undefined): Whose {
  if (!areLimitsGiven(car)) return 'example';
  const isTravelPages = bumpTravelOf(car) !== undefined && givenBy(car, 'bumpTravel') === 'page';
  const isFitmentPages = givenBy(car, 'fit') === 'page';
  const isPages =
    governedBy === undefined
      ? isTravelPages || isFitmentPages
      : governedBy === 'bumpTravel'
        ? isTravelPages
        : isFitmentPages;
  return isPages ? 'page' : 'yours';
}

const arePlacesOf = (car: CarDocument): Whose => (givenBy(car, 'fit') === 'page' ? 'page' : 'yours');

/** Hub centre to arch lip, straight up: the distance by which lowering is counted. */
function lipAboveHub(places: readonly Place[] = []): number | undefined {
  for (const { name, fixedTo, at } of places) {
    // Counted from a tread, it knows no better where the hub is than the tyre's size does.
    const isAbove = 'clock' in at && at.clock % 12 === 0 && at.from !== 'inner' && !at.beyond;
    if (isAbove && fixedTo === 'body' && /^arch lip$/i.test(name.trim())) return at.distance;
  }
  return undefined;
}
