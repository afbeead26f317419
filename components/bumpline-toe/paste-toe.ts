import { type CarDocument, dropBy } from '../../core/document/car.js';
import { emptySetup } from '../../core/document/setup-edits.js';
import { withToe } from '../../core/document/toe-settings.js';
import { PasteSlot } from '../paste/paste-slot.js';
import { NAMES } from './bumpline-toe.labels.js';
import { withZero } from './toe-kit.js';
import type { ToeView } from './toe-view.js';

/** Takes readings of toe from a sheet that is pasted or dropped. */
export const pasteToe = (view: ToeView): PasteSlot =>
  new PasteSlot(view, {
    setup: () => emptySetup(NAMES.readings, 'toe', view.car.cornerName),
    label: NAMES.pasted,
    missing: NAMES.missing,
    usualZero: (car) => (dropBy(car) === 'user' ? car.drop : 0),
    taken: asRead,
  });

/** The readings are heard; of a car that somebody lowered they were begun where it stands, unless it is said otherwise. */
function asRead(car: CarDocument, _before: CarDocument, zeroAt: number): CarDocument {
  const heard = withToe(car, { from: undefined });
  return zeroAt === 0 ? heard : withZero(heard, zeroAt);
}
