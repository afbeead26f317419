/** The computation's public face. mm, degrees, signs by ISO 8855; see core/linkage/corner.ts for the shape of a corner. */
export { type LeverRequest, rodByLever } from './alignment/rod-by-lever.js';
export { type TurnsAnswer, turnsOf } from './alignment/rod-thread.js';
export { ROD_THREADS, type RodThread } from './alignment/rod-threads.js';
export {
  type AbaAnswer,
  type AbaRequest,
  abaSlope,
  type SpreadAnswer,
  type SpreadRequest,
  spreadAcross,
} from './alignment/tyre-spread.js';
export type { AlignmentAnswer, AlignmentRequest } from './answers/alignment.js';
export { type AmountAnswer, type AmountRequest, amountFor } from './answers/amount.js';
export { CAMBER_WAYS, type CamberWay } from './answers/camber-ways.js';
export { type ClearanceAnswer, clearance, clearanceSteered } from './answers/clearance.js';
export type { ClearanceRequest } from './answers/clearance-request.js';
export {
  type At,
  type Cell,
  type CompareRequest,
  type Comparison,
  compareCurves,
  type Net,
  netChange,
} from './answers/compare.js';
export type { CornerFigures } from './answers/corner-at.js';
export type { CorneringAnswer, CorneringDoubt, WheelInTurn } from './answers/cornering-answer.js';
export type { WantedInclination } from './answers/cornering-questions.js';
export type { CorneringRequest, SteerInTurn } from './answers/cornering-request.js';
export {
  alignment,
  camberForInclination,
  cornering,
  corneringDoubt,
  geometry,
  geometryDoubt,
  leastCost,
  lowering,
  rolled,
  rollForInclination,
  staticCamber,
  stiffnessForInclination,
  type ToeSourceRequest,
  toe,
  toeCure,
  toeCureDoubt,
  wheelMotion,
} from './answers/from-source.js';
export {
  GEOMETRY_OUTPUTS,
  type GeometryAnswer,
  type GeometryOutput,
  type GeometryRequest,
} from './answers/geometry.js';
export type { GeometryDoubt } from './answers/geometry-doubt.js';
export type { LeastCostAnswer, LeastCostRow } from './answers/least-cost-answer.js';
export type { LeastCostRequest, LoadInTurn, OwnWay } from './answers/least-cost-request.js';
export type { Doubted, LoweringAnswer, LoweringRequest } from './answers/lowering.js';
export { partCurve, partCurves } from './answers/part-curve.js';
export { type ReadingsAnswer, type ReadingsRequest, readings } from './answers/readings.js';
export type { LoadWithLinks, MarksWithLinks, RolledAnswer, RolledRequest, RollSource } from './answers/roll-source.js';
export { type ShimAnswer, type ShimRequest, shimFromToe } from './answers/shim.js';
export type { StaticCamberAnswer, StaticCamberRequest, WayAnswer } from './answers/static-camber.js';
export type { StiffnessForInclination, StiffnessRequest } from './answers/stiffness-for-inclination.js';
export { type ToeAnswer, toeAcross } from './answers/toe.js';
export { idealRodOf, type ToeCure, type ToeCureRequest, toeAtAmount } from './answers/toe-cure.js';
export type { CorrectionDoubt, FigureDoubt, ToeCureDoubt } from './answers/toe-cure-doubt.js';
export type { WheelMotionRequest } from './answers/wheel-motion.js';
export type { BreakEven, Crossing } from './curve/break-even.js';
export { curveFrom } from './curve/check-curve-data.js';
export type { Curve } from './curve/curve.js';
export type { CurveData } from './curve/curve-data.js';
export type { Candidate, CurveFit, PassOffset } from './curve/curve-fit.js';
export { turningPoints } from './curve/extrema.js';
export { type FitOptions, fitCurve } from './curve/fit.js';
export { curveFromCoefficients } from './curve/from-coefficients.js';
export type { Compared } from './curve/joint.js';
export type { Alignment, AnySource, CamberSource, PartsSource, ReadingsSource } from './curve-sources/source.js';
export { type CarDocument, EMPTY_CAR } from './document/car.js';
export { COST_WEIGHTS, type CostWeight, LEAST_COSTS, type LeastCost } from './document/cost-weights.js';
export { EXAMPLE_CORNER } from './document/example-corner.js';
export { EXAMPLE_DRIVEWAY } from './document/example-driveway.js';
export { type CarFromLink, carFromLink, carToLink } from './document/link.js';
export { readCar } from './document/read-car.js';
export { readCorner } from './document/read-corner.js';
export { type Query, type QueryCode, unusualOf } from './document/unusual.js';
export {
  type AssumableKey,
  type Assumption,
  BUMP_STEER_OVER_MM,
  COVERED,
  DRIVEWAY_FIELDS,
  DRIVEWAY_KEYS,
  type Driveway,
  type DrivewayField,
  type DrivewayKey,
  type DrivewayMeasurements,
  HOW_SURE,
  isAngle,
  type Measured,
  type Taken,
} from './driveway/driveway.js';
export { drivewayCorner, drivewayDerivatives, type PointDerivatives } from './driveway/driveway-corner.js';
export { DRIVEWAY_WHY } from './driveway/driveway-why.js';
export { readDriveway } from './driveway/read-driveway.js';
export { type AxlePosition, type AxleState, type AxleWheel, axleAt } from './linkage/axle.js';
export { buildLinkage, reachOf } from './linkage/build-linkage.js';
export type {
  Arm,
  Corner,
  Damper,
  HardPointKey,
  PlusMinus,
  Strut,
  StrutCorner,
  TieRod,
  Vector3,
  WishboneCorner,
} from './linkage/corner.js';
export { type CornerDerivatives, sweepDerivatives } from './linkage/derivatives.js';
export type { HeldPath, IdealRod } from './linkage/ideal-rod.js';
export type { Linkage, Reach } from './linkage/linkage.js';
export * from './linkage/parts/index.js';
export { rackForSteer, type SteerRange, steerAngle, steerRange } from './linkage/steer.js';
export {
  createTravelSweep,
  type SweepOptions,
  sweepTravel,
  sweepTravelInto,
  type TravelSweep,
} from './linkage/sweep.js';
export { sweepRight } from './linkage/sweep-right.js';
export { RACK_SIDES, type RackSide, TOE_ADJUSTMENTS, type ToeAdjustment } from './linkage/toe-adjustment.js';
export { type Correction, type ToeCorrection, toeCorrection } from './linkage/toe-correction.js';
export type { ToeCorrectionOptions } from './linkage/toe-correction-options.js';
export { explainProblem } from './quantity/explain.js';
export { explainQuery } from './quantity/explain-query.js';
export { formatQuantity } from './quantity/format.js';
export { parseQuantity } from './quantity/parse.js';
export { InputError, type Problem, type ProblemCode } from './quantity/problem.js';
export type { Quantity } from './quantity/quantities.js';
export type { UnitSystem } from './quantity/units.js';
export { DEFAULT_DOUBTS, type ReadingDoubts } from './readings/doubts.js';
export { camberFromOrientation, toeDoubt, toeFromDials, toeFromGauge } from './readings/instruments.js';
export { type OverBase, type Pair, toeOfPair } from './readings/over-base.js';
export { MOST_READINGS, type Reading, type ReadingQuantity } from './readings/reading.js';
export { understand } from './readings/table/understand.js';
export type {
  CellUnit,
  ColumnRole,
  SheetCell,
  SheetColumn,
  SheetQuestion,
  Understanding,
  UnderstandOptions,
} from './readings/table/understanding.js';
export type { AxleInRoll } from './travel/axle-in-roll.js';
export {
  type BudgetRequest,
  type End,
  type LimitAt,
  type LimitId,
  type TravelBudget,
  travelBudget,
} from './travel/budget.js';
export type { DamperPath } from './travel/damper-path.js';
export { cornerUnderLoad, type LoadAnswer, type LoadRequest } from './travel/loads.js';
export { type RollAnswer, rollFromAcceleration } from './travel/roll.js';
export { type MarkedRoll, type RollMarks, rollFromMarks } from './travel/roll-from-marks.js';
export type { RollRequest } from './travel/roll-request.js';
export { type StiffnessForRoll, stiffnessForRoll } from './travel/stiffness-for-roll.js';
export type { CornerLoads, Lowered, TravelLimits } from './travel/travel-limits.js';
export { type Contribution, contributions, plusMinus95 } from './uncertainty/combine.js';
export type { Estimate, Source } from './uncertainty/estimate.js';
export { VERSION } from './version.js';
export { compareWheels, type WheelComparison } from './wheel/compare-wheels.js';
export { type FittedWheel, fittedWheel } from './wheel/fitted-wheel.js';
export type { ClockPosition, FixedTo, Place } from './wheel/place.js';
export { type TyreDimensions, tyreDimensions } from './wheel/tyre-dimensions.js';
export { type SectionShape, type TyreSection, tyreSection } from './wheel/tyre-section.js';
export { readTyreSize, type TyreSize } from './wheel/tyre-size.js';
export type { WheelSpec } from './wheel/wheel.js';
export type { MotionDoubt, WheelMotion } from './wheel/wheel-motion.js';
