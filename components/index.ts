/** The element classes and what goes with them; importing this registers nothing. */
export { BumplineCar } from './bumpline-car/bumpline-car.js';
export { BumplineClearance } from './bumpline-clearance/bumpline-clearance.js';
export { BumplineCompare, type NamedCurve } from './bumpline-compare/bumpline-compare.js';
export { BumplineCornering } from './bumpline-cornering/bumpline-cornering.js';
export { BumplineGeometry } from './bumpline-geometry/bumpline-geometry.js';
export { BumplineLowering } from './bumpline-lowering/bumpline-lowering.js';
export { BumplinePredict } from './bumpline-predict/bumpline-predict.js';
export { BumplineReadings } from './bumpline-readings/bumpline-readings.js';
export { BumplineStaticCamber } from './bumpline-static-camber/bumpline-static-camber.js';
export { BumplineToe } from './bumpline-toe/bumpline-toe.js';
export { CarModel } from './car/car-model.js';
export { define } from './element/define.js';
export {
  BumplineAnswerEvent,
  BumplineChangeEvent,
  type BumplineEventMap,
  BumplineProblemEvent,
} from './element/events.js';
export type { SheetState } from './element/sheet-view.js';
export { SHOWN, type Shown } from './element/shown.js';
