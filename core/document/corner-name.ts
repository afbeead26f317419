export const CORNER_NAMES = ['Front left', 'Front right', 'Rear left', 'Rear right'] as const;
export type CornerName = (typeof CORNER_NAMES)[number];
