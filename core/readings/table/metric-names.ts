/** How headings and prose name metric lengths. */
export const METRIC_NAMES: readonly (readonly ['mm' | 'cm', RegExp])[] = [
  ['mm', /\bmm\b|\bmillimet(?:re|er)s?\b/i],
  ['cm', /\bcm\b|\bcentimet(?:re|er)s?\b/i],
];
