import type { LINK_PROBLEM } from '../../../../../core/document/link-problem.js';

/** German words of a link that cannot be read. */
export const LINK_PROBLEM_DE: typeof LINK_PROBLEM = {
  newer:
    'Dieser Link stammt aus einer neueren Version. Lade die Seite neu, oder lass dir die Zahlen selbst geben; bis dahin steht hier das Beispiel.',
  damaged:
    'Dieser Link ist beschädigt, vielleicht wurde er unterwegs abgeschnitten. Lass ihn dir noch einmal schicken; bis dahin steht hier das Beispiel.',
};
