import { words } from '../../core/quantity/words.js';

/** English words that stand in an element before anything of it has come. */
export const SHELL = words('element/shell', {
  slow: 'The calculator is still loading …',
  lost: 'The calculator could not be fetched. We try again once you are back online; if that does not help, reload the page.',
});
