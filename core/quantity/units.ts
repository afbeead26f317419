/** What a person wants to read and type. The API itself speaks mm and degrees. */
export type UnitSystem = { length: 'mm' | 'in'; angle: 'degrees' | 'arcminutes' };

export const METRIC: UnitSystem = { length: 'mm', angle: 'degrees' };

/** Exact (international inch). */
export const MM_PER_INCH = 25.4;

/** By whole numbers first, so that 1.5 in are 38.1 mm and not the number below it. */
export const mmFromInches = (inches: number): number => (inches * 254) / 10;
const inchesFromMm = (mm: number): number => (mm * 10) / 254;

/** Of a spring rate, exact: the pound-force is 0.453 592 37 kg at standard gravity. NIST Special Publication 811, appendix B. */
export const N_PER_MM_FROM = {
  'lb/in': (0.45359237 * 9.80665) / MM_PER_INCH,
  'kg/mm': 9.80665,
  'N/m': 1e-3,
  'kN/m': 1,
} as const;

/** Exact: of a length that is told in metres; the international foot. By whole numbers, so that 2500 mm are 2.5 m. */
export const METRES_FROM: Readonly<Record<'mm' | 'cm' | 'in' | 'ft', (reading: number) => number>> = {
  mm: (reading) => reading / 1000,
  cm: (reading) => reading / 100,
  in: (reading) => (reading * 254) / 10_000,
  ft: (reading) => (reading * 3048) / 10_000,
};

/** Exact. */
export const ARCMINUTES_PER_DEGREE = 60;

/** What a number measures. `angleRate` is an angle per wheel travel: degrees per mm in the API. `plain`: one unit for everybody. */
export type Dimension = 'length' | 'angle' | 'angleRate' | 'plain';

/** The travel, mm, over which a rate is shown: 10 mm or one inch, so that it is a figure of the order of the readings themselves. */
export const rateTravelMm = (unitSystem: UnitSystem): number => (unitSystem.length === 'in' ? MM_PER_INCH : 10);

/** From the unit of the API to the unit shown: mm or in; degrees or arc minutes; those per 10 mm or per inch. */
export function toShown(value: number, dimension: Dimension, unitSystem: UnitSystem): number {
  if (dimension === 'plain') return value;
  if (dimension === 'length') return unitSystem.length === 'in' ? inchesFromMm(value) : value;
  const angle = unitSystem.angle === 'arcminutes' ? value * ARCMINUTES_PER_DEGREE : value;
  return dimension === 'angleRate' ? angle * rateTravelMm(unitSystem) : angle;
}

/** From the unit shown to the unit of the API; undoes `toShown`. */
export function fromShown(value: number, dimension: Dimension, unitSystem: UnitSystem): number {
  if (dimension === 'plain') return value;
  if (dimension === 'length') return unitSystem.length === 'in' ? mmFromInches(value) : value;
  const angle = unitSystem.angle === 'arcminutes' ? value / ARCMINUTES_PER_DEGREE : value;
  return dimension === 'angleRate' ? angle / rateTravelMm(unitSystem) : angle;
}
