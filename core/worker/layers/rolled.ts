import { rolledOf, standingOf } from '../../answers/rolled.js';
import { stiffnessForInclination } from '../../answers/stiffness-for-inclination.js';

/** A turn whose roll is worked out, from marks on the dampers or from lateral acceleration. */
export const questions = { rolled: rolledOf, standingAxle: standingOf, stiffnessForInclination };
