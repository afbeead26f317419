/** What links are taken from: as they were measured, or as readings correct them. */
export const LINKS_FROM = ['measured', 'learnt'] as const;
