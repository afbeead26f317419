/** What the cells of a comparison can show. The first is shown until somebody chooses. */
export const COMPARED_FIGURES = ['change', 'camberAtEnd', 'rate', 'toeChange', 'rollCentre'] as const;
export type ComparedFigure = (typeof COMPARED_FIGURES)[number];
