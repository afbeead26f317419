/** Cautions that belong to a first answer: rendered with its sentence, out of the same file. The longer ones are in cautions.ts. */
export const FIRST_CAUTIONS = {
  predicted: 'These numbers are no fitting check, and never permission to drive.',
  clearByHand:
    'A clearance by numbers is never permission to drive: tyre, brake hose and sensor lead must stay free everywhere, from lock to lock, half way up and at full bump.',
} as const;
