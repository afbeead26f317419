/** English words over a chart. */
export const CHART = {
  /** Before the figures that are read off there. */
  at: (travel: string): string => `at ${travel}`,
} as const;
