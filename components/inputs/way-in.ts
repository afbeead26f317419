import type { CarDocument } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import type { SheetSpec } from './sheet-spec.js';
import { WAY_IN as WORDS } from './way-in.labels.js';

/** The way in to one's own car, by how much of it is done. */
export function wayIn(car: CarDocument, next: SheetSpec | undefined): string {
  if (!isUsers(car, 'corner')) return WORDS.own;
  return next ? WORDS.next(next.title) : WORDS.ownNumbers;
}
