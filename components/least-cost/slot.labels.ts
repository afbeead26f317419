import { words } from '../../core/quantity/words.js';

/** English words that stand there before the panel has come. */
export const SLOT = words('least-cost/slot', {
  title: 'A wanted inclination at the least cost',
  intro:
    'Say how the outer wheel should stand to the road in the turn. Every mix of camber, height and parts that you allow is then worked out, and the few that cost you least are listed.',
  coming: 'On its way …',
  lost: 'This part could not be fetched. It is tried again when the connection is back.',
});
