/** English words that stand in an element before anything of it has come. */
export const SHELL = {
  slow: 'The calculator is still on its way …',
  lost: 'The calculator could not be fetched. It is tried again when the connection is back; if that does not help, reload the page.',
} as const;
