import { words } from '../../core/quantity/words.js';

/** English words of the fold before what is in it has come. */
export const SLOT = words('publish/slot', {
  pictures: 'Save pictures',
  readings: 'Save readings',
  both: 'Save pictures and readings',
  coming: 'On its way …',
  lost: 'This part could not be fetched. It is tried again when the connection is back.',
});
