import { words } from '../../core/quantity/words.js';
import { CLEARANCE_EXAMPLE } from '../../core/wheel/clearance-guides.js';

/** What an authority asks of wheels, where one may look for more. */
export const WHEEL_CAUTIONS = words('element/wheel-cautions', {
  wheelRules: `${CLEARANCE_EXAMPLE} Ask your own authority what it asks for.`,
});
