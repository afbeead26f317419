/** What toe is made from although there are readings of it: the links. */
export const TOE_FROM = ['links'] as const;

/** Whose toe is told: of one wheel, or of both together, as total toe (ISO 8855). */
export const TOLD_WHEELS = ['one', 'both'] as const;
export type ToldWheels = (typeof TOLD_WHEELS)[number];
