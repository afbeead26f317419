/** Texts that every sheet has under its sentence. */
export const SHEET = {
  fault: 'The calculation failed. This is our fault, not yours; your numbers are kept.',
  retry: 'Try again',
  correct: 'Correct it',
  undo: 'Undo',
  redo: 'Redo',
} as const;
