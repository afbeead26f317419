import { words } from '../../core/quantity/words.js';

/** English words of the button that opens the alignment sheet. */
export const OPEN = words('alignment/alignment-open', {
  open: 'Alignment sheet',
  close: 'Close the alignment sheet',
  missing: 'This part could not be fetched. Check the connection and press the button again; nothing is lost.',
});
