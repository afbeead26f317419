/** English words behind whose links they are. */
export const CORRECTED = {
  one: 'corrected by 1 reading',
  many: (count: number): string => `corrected by ${count} readings`,
} as const;
