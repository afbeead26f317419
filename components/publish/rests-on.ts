import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { camberSetupOf, sourceKindOf } from '../../core/document/setup-in-use.js';

/** What an answer was made from. Neither readings nor links: a curve that was given. */
export interface RestsOn {
  /** The sets whose readings count. */
  sets: readonly Setup[];
  links?: 'points' | 'driveway';
}

/** What an answer about links is made from, and which readings count besides. */
export const onLinks = (car: CarDocument, sets: readonly Setup[] = []): RestsOn => {
  const links = asLinks(car);
  return { sets, links: links.by === 'driveway' && links.whole === undefined ? 'driveway' : 'points' };
};

/** What an answer about camber is made from. */
export function restsOnOf(car: CarDocument): RestsOn {
  const kind = sourceKindOf(car);
  if (kind === 'readings') return { sets: [camberSetupOf(car)!] };
  if (car.curve) return { sets: [] };
  return { sets: [], links: car.whole === undefined ? kind : 'points' };
}
