import { words } from '../../core/quantity/words.js';

/** What a ± comes from, or pulls at readings. The worker names it in English; here it is named in the language that is spoken. */
export const CAUSES = words('element/causes', {
  /** @param label the core's: `ball joint`, `the gauge’s scale`, `tolerance of the arm`, `zero of pass Pass 2` */
  named: (label: string): string => label,
});

/** A cause of doubt, for people. */
export const causeName = (label: string): string => CAUSES.named(label);
