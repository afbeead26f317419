/** Registers every element. */
export { RegisteredBumplineCar } from './bumpline-car/bumpline-car.define.js';
export { RegisteredBumplineClearance } from './bumpline-clearance/bumpline-clearance.define.js';
export { RegisteredBumplineCompare } from './bumpline-compare/bumpline-compare.define.js';
export { RegisteredBumplineCornering } from './bumpline-cornering/bumpline-cornering.define.js';
export { RegisteredBumplineGeometry } from './bumpline-geometry/bumpline-geometry.define.js';
export { RegisteredBumplineLowering } from './bumpline-lowering/bumpline-lowering.define.js';
export { RegisteredBumplinePredict } from './bumpline-predict/bumpline-predict.define.js';
export { RegisteredBumplineReadings } from './bumpline-readings/bumpline-readings.define.js';
export { RegisteredBumplineStaticCamber } from './bumpline-static-camber/bumpline-static-camber.define.js';
export { RegisteredBumplineToe } from './bumpline-toe/bumpline-toe.define.js';
