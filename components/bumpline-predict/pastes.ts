import type { CarDocument } from '../../core/document/car.js';
import { emptySetup, removeSetup, withSetupAt } from '../../core/document/setup-edits.js';
import { givenSetup, indexInUse, useSetup } from '../../core/document/setup-in-use.js';
import { PasteSlot } from '../paste/paste-slot.js';
import { NAMES } from './bumpline-predict.labels.js';
import type { PredictView } from './predict-view.js';

/** Takes readings of the car as it stands. */
export const pasteStock = (view: PredictView): PasteSlot =>
  new PasteSlot(view, {
    setup: () => emptySetup(NAMES.readings, 'camber', view.car.cornerName),
    takesEither: true,
    label: NAMES.pasted,
    missing: NAMES.missing,
    taken: (after, before) => fromWhereItStands(after, before),
  });

/** Takes readings with the parts of the set that is asked about on: they become that set's. */
export const pasteFitted = (view: PredictView): PasteSlot =>
  new PasteSlot(view, {
    setup: () => emptySetup(NAMES.record.pasteName, 'camber', view.car.cornerName),
    label: NAMES.record.pasteStep,
    missing: NAMES.missing,
    taken: (after, before) => {
      const index = view.sets[view.shown]?.index;
      return index === undefined ? after : intoSet(fromWhereItStands(after, before), before, index);
    },
  });

/** Readings are counted from where the links were measured, unless somebody says otherwise. */
function fromWhereItStands(after: CarDocument, { measuredAt }: CarDocument): CarDocument {
  const at = indexInUse(after);
  if (!measuredAt || givenSetup(after)?.zeroAt !== undefined) return after;
  return withSetupAt(after, at, (setup) => ({ ...setup, zeroAt: measuredAt }));
}

/** The readings of the set that was added last go into that of the parts; which set was in use stays. */
function intoSet(after: CarDocument, before: CarDocument, index: number): CarDocument {
  const added = indexInUse(after);
  const read = after.setups?.[added];
  const into = after.setups?.[index];
  if (!read || !into?.parts || added === index) return after;
  const { readings, zeroAt, overBase } = read;
  const filled = withSetupAt(after, index, ({ setAside: _, ...setup }) => ({
    ...setup,
    readings,
    ...(zeroAt !== undefined && { zeroAt }),
    ...(overBase && { overBase }),
  }));
  return useSetup(removeSetup(filled, added), indexInUse(before));
}
