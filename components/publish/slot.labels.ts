/** English words of the fold before what is in it has come. */
export const SLOT = {
  pictures: 'Save pictures',
  readings: 'Save readings',
  both: 'Save pictures and readings',
  coming: 'On its way …',
  lost: 'This part could not be fetched. It is tried again when the connection is back.',
} as const;
