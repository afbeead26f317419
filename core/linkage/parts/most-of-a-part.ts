/** More than any part does. */
export const MOST_OF_A_PART = { mm: 150, degrees: 20 } as const;
