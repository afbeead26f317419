import { staticCamberSteps } from '../../answers/static-camber.js';

/** Which way of adding static camber costs what elsewhere. */
export const questions = { staticCamber: staticCamberSteps };
