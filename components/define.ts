/** Registers every element. */
export { RegisteredBumplineCar } from './bumpline-car/bumpline-car.define.js';
export { RegisteredBumplineLowering } from './bumpline-lowering/bumpline-lowering.define.js';
