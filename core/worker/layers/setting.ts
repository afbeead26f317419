/**
 * Asked nothing itself: what turn, toe, parts and the workbench have in common, links set at a height with toe or camber set again. A car that
 * is only lowered has no use for it.
 */
export const questions = {};
