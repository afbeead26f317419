/** What adding static camber changes elsewhere, and what its ways can be sorted by; `inTurn` is the outer wheel in the car's turn. */
export const CAMBER_COSTS = [
  'kingpin',
  'scrubRadius',
  'caster',
  'casterTrail',
  'halfTrack',
  'camberChange',
  'toeBefore',
  'bumpSteer',
  'rollCentreHeight',
  'inclinationAt15',
  'inclinationAt30',
  'innerAt15',
  'innerAt30',
  'inTurn',
  'bumpTravel',
  'gapStrut',
] as const;
export type CamberCost = (typeof CAMBER_COSTS)[number];

/** The other way round than it is sorted first. */
export const COST_ORDERS = ['reversed'] as const;
