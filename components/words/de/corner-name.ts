const CORNERS: Readonly<Record<string, string>> = {
  'front left': 'vorn links',
  'front right': 'vorn rechts',
  'rear left': 'hinten links',
  'rear right': 'hinten rechts',
};

/** A corner of the car, which its document names in English, as it stands in a German sentence. */
export const cornerName = (corner: string): string => CORNERS[corner.toLowerCase()] ?? corner;
