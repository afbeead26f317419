import { geometryOf } from '../../answers/geometry.js';
import { geometryDoubtSteps } from '../../answers/geometry-doubt.js';

/** Everything that the links of a corner do over travel, and how far it can be trusted. */
export const questions = { geometry: geometryOf, geometryDoubt: geometryDoubtSteps };
