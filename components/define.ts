/** Registers every element. */
export { RegisteredBumplineLowering } from './bumpline-lowering/bumpline-lowering.define.js';
