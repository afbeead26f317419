import type { CarDocument } from '../../core/document/car.js';
import { emptySetup } from '../../core/document/setup-edits.js';
import { PasteSlot } from '../paste/paste-slot.js';
import { NAMES } from './bumpline-predict.labels.js';
import { type IntoParts, readInto, sortedOut } from './pasted-sets.js';
import type { PredictView } from './predict-view.js';

/** Readings are counted from where the links were measured, unless somebody says otherwise. */
const whereMeasured = ({ measuredAt = 0 }: CarDocument): number => measuredAt;

/**
 * Takes readings of the car as it stands; those that their sheet names by parts go to the set that has them.
 *
 * @param onInto told of readings that went there
 */
export const pasteStock = (view: PredictView, onInto: (into: IntoParts | undefined) => void): PasteSlot =>
  new PasteSlot(view, {
    setup: () => emptySetup(NAMES.readings, 'camber', view.car.cornerName),
    takesEither: true,
    label: NAMES.pasted,
    missing: NAMES.missing,
    usualZero: whereMeasured,
    taken: (after, before, zeroAt) => {
      const { car, into } = sortedOut(withZero(after, before, zeroAt), before, view.sets, view.shown);
      onInto(into);
      return car;
    },
  });

/** Takes readings with the parts of the set that is asked about on: they become that set's. */
export const pasteFitted = (view: PredictView): PasteSlot =>
  new PasteSlot(view, {
    setup: () => emptySetup(NAMES.record.pasteName, 'camber', view.car.cornerName),
    label: NAMES.record.pasteStep,
    missing: NAMES.missing,
    // Stock readings were counted from one height, and so are these, unless the car was put lower since.
    usualZero: whereMeasured,
    taken: (after, before, zeroAt) => {
      const set = view.sets[view.shown];
      const counted = withZero(after, before, zeroAt);
      return set ? addedSince(counted, before).reduce((car, added) => readInto(car, added, set), counted) : after;
    },
  });

/** The sets that a sheet has just brought. */
const addedSince = ({ setups = [] }: CarDocument, before: CarDocument) =>
  setups.filter((setup) => !before.setups?.some(({ name }) => name === setup.name));

/** The height that was said to be zero, of all that a sheet has just brought. */
function withZero(after: CarDocument, before: CarDocument, zeroAt: number): CarDocument {
  const added = addedSince(after, before);
  if (zeroAt === 0 || !after.setups) return after;
  return { ...after, setups: after.setups.map((setup) => (added.includes(setup) ? { ...setup, zeroAt } : setup)) };
}
