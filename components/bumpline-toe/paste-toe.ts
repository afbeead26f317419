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
    taken: asRead,
  });

/** The readings are heard, and were begun where the car stands: of a car that somebody lowered, that is their zero. */
function asRead(car: CarDocument, before: CarDocument): CarDocument {
  const heard = withToe(car, { from: undefined });
  return dropBy(before) === 'user' && before.drop !== 0 ? withZero(heard, before.drop) : heard;
}
