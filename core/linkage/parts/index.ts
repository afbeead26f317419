/** Parts: functions from linkage to linkage that can be chained. */
export { type ArmOptions, armLonger, innerPivotsRaised } from './arm.js';
export { type BallJointOptions, ballJointExtended, ballJointMoved } from './ball-joint.js';
export { spinAxisTurned, wheelOffset } from './hub.js';
export { boltAxis, knuckleBoltsTurned } from './knuckle-bolts.js';
export { type Part, withParts } from './part.js';
export { partOf } from './part-data.js';
export { PART_NAMES, type PartData, type PartName } from './part-kinds.js';
export { type CamberSetting, camberAndToeSet, staticAngles, toeReset } from './targets.js';
export { rackRaised, tieRodEndRaised, tieRodLonger } from './tie-rod.js';
export { topMountMoved } from './top-mount.js';
