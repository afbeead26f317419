/** English words of the button that opens the alignment sheet. */
export const OPEN = {
  open: 'Alignment sheet',
  close: 'Close the alignment sheet',
  missing: 'This part could not be fetched. Check the connection and press the button again; nothing is lost.',
} as const;
