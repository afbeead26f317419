import { lowering } from './lowering.js';

/** Every question that can be asked, by name: plain request → plain answer. The worker serves exactly these. */
export const questions = { lowering };

export type Questions = typeof questions;
