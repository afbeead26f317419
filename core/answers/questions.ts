import { loweringOfChecked } from './lowering.js';

/** What is asked of a linkage, by name: plain request → plain answer. The worker serves exactly these. */
export const questions = { lowering: loweringOfChecked };

export type Questions = typeof questions;
