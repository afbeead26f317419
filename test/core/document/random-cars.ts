import fc from 'fast-check';
import { type CarDocument, CORNER_NAMES, EMPTY_CAR } from '../../../core/document/car.js';
import { DRIVEWAY_FIELDS, type DrivewayKey } from '../../../core/driveway/driveway.js';
import { STRUT_POINT_KEYS } from '../../../core/linkage/corner.js';

/** As people type: to a tenth of a millimetre, a hundredth of a degree. */
const typed = (least: number, most: number, step = 0.1) =>
  fc
    .integer({ min: Math.ceil(least / step), max: Math.floor(most / step) })
    .map((n) => Number((n * step).toFixed(4)) + 0);
const doubt = typed(0, 20);
const measured = (key: DrivewayKey) =>
  fc.record({ value: typed(DRIVEWAY_FIELDS[key].least, DRIVEWAY_FIELDS[key].most), plusMinus: doubt });
export const MEASURED_KEYS = [
  'ballOffset',
  'hubOffset',
  'track',
  'armLength',
  'pivotHeight',
  'ballHeight',
  'wheelCentreHeight',
  'topHeight',
  'damperLean',
  'kingpin',
  'caster',
  'bumpSteer',
] as const;
const sparse = <T>(values: Record<string, fc.Arbitrary<T>>) => fc.record(values, { requiredKeys: [] });
const filled = (part: object | undefined) => part !== undefined && Object.keys(part).length > 0;

export const cars: fc.Arbitrary<CarDocument> = fc
  .record({
    corner: fc.constantFrom(...CORNER_NAMES),
    by: fc.constantFrom('driveway', 'points'),
    drop: typed(-100, 100),
    rest: sparse<unknown>({
      dropPlusMinus: doubt,
      stopGap: typed(0, 100),
      lowered: fc.constantFrom('springs', 'dampers'),
      measuredAt: typed(-60, 60),
      camberReadLower: fc.constantFrom(8, 20),
      other: fc.record({ drop: typed(-100, 100), camber: typed(-5, 5, 0.01) }),
    }),
    bumpTravel: fc.option(typed(0, 200), { nil: undefined }),
    measures: sparse(Object.fromEntries(MEASURED_KEYS.map((key) => [key, measured(key)]))),
    points: sparse(
      Object.fromEntries(
        STRUT_POINT_KEYS.map((key) => [key, fc.tuple(typed(-900, 900), typed(0, 900), typed(0, 900))]),
      ),
    ),
    single: sparse({ camber: typed(-5, 5, 0.01), toe: typed(-2, 2, 0.01), loadedRadius: typed(200, 400) }),
    sure: doubt,
  })
  .map(({ corner, by, drop, rest, bumpTravel, measures, points, single, sure }) => {
    const plusMinus = Object.fromEntries(Object.keys(points).map((key) => [key, sure]));
    return {
      ...EMPTY_CAR,
      cornerName: corner,
      by,
      provenance: {
        corner: { by: 'user' },
        drop: { by: 'user' },
        way: { by: 'user' },
        ...(bumpTravel !== undefined && { bumpTravel: { by: 'user' } }),
        ...(rest.stopGap !== undefined && { fit: { by: 'user' } }),
      },
      given: {
        points,
        ...single,
        ...(filled(measures) && { measures }),
        ...(filled(plusMinus) && { plusMinus }),
      },
      drop,
      ...rest,
      ...(bumpTravel !== undefined && { bumpTravel }),
    } as CarDocument;
  })
  .filter(({ given, other }) => Object.keys(given).length > 1 || filled(given.points) || other !== undefined);
