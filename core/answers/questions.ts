import { lowering } from './lowering.js';
import { readings } from './readings.js';

/** Every question that can be asked, by name: plain request → plain answer. The worker serves exactly these. */
export const questions = { lowering, readings };

export type Questions = typeof questions;
