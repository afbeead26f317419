import { type DrivewayKey, HOW_SURE, type Measured, scaleOfMeasure } from '../driveway/driveway.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import { type HardPointKey, hardPointKeys } from '../linkage/corner.js';
import { movedBy } from '../linkage/corner-source.js';
import { sweepTravel } from '../linkage/sweep.js';
import { triangularise, upperInverse } from '../math/qr.js';
import { dot } from '../math/sums.js';
import type { ReadingDoubts } from '../readings/doubts.js';
import { plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { type PlanId, plansOf, setsWith } from './further-readings.js';
import { POINT_MM } from './further-sizes.js';
import { asideOfSets, derivativesOf, passUnknowns, withPriors } from './learn.js';
import type { LearntCorner } from './learn-corner.js';
import { type Covered, leftOpen } from './posterior.js';
import type { ReadSet } from './read-set.js';

/** A further measurement, and what it would leave of the doubt that was asked about: expected, whatever it reads. */
export interface NextMeasurement {
  id: PlanId | 'caster' | 'rodLength' | `point.${HardPointKey}` | `measure.${DrivewayKey}`;
  /** Half-width of the 95 % interval afterwards, degrees. */
  plusMinus: number;
  /** The same over that of today, 0 to 1. */
  left: number;
}

/** What is asked about. */
export interface AskedChange {
  /** How it changes with each unknown of the links, per standard uncertainty beforehand, in the order of `learnt.estimated.unknowns.sources`: degrees. */
  slopes: Float64Array;
  /** What no measurement of the corner tells of it, such as a part's tolerance: degrees, each with its cause. */
  rest: readonly { part: number; source: Source }[];
}

/** How well each could be measured, as standard uncertainties: degrees, mm. Common practice, no source. */
const CASTER_SD = 0.15;
const ROD_SD = 1;
const NUDGE = 0.1;

/** A row of the problem: what each unknown of the links does to one more measurement, in its standard deviations. */
type Row = Float64Array;

/**
 * What further measurement narrows an answer most, by the covariance alone: no reading has to be taken to know it (Lindley, Annals of
 * Mathematical Statistics 27, 1956; of linear Gaussian models the gain does not depend on what is read). Readings are put where they would
 * stand, with all that gauge, tape and passes share between them and those that are there, and the whole is worked out again.
 *
 * @returns those that leave less than all of it, best first; none where readings and corner contradict each other, since nothing narrows then
 */
export function* nextMeasurementSteps(
  learnt: LearntCorner,
  asked: AskedChange,
  { toeAllowances = {} }: { toeAllowances?: ReadingDoubts } = {},
): Generator<undefined, NextMeasurement[]> {
  const { estimated, widened } = learnt;
  if (widened > 1) return [];
  const today = plusMinusOf(estimated, asked);
  if (!(today > 0)) return [];
  const found: NextMeasurement[] = [];
  const add = (id: NextMeasurement['id'], of: Covered) => {
    const plusMinus = plusMinusOf(of, asked);
    found.push({ id, plusMinus, left: plusMinus / today });
  };
  for (const plan of plansOf(learnt)) {
    yield;
    const sets = setsWith(learnt, plan, toeAllowances);
    if (sets) add(plan.id, withSets(learnt, sets));
  }
  for (const { id, rows } of othersOf(learnt)) {
    yield;
    add(id, withRows(estimated, rows));
  }
  // Of what was taped the best: nobody measures all of it again.
  const best = (list: NextMeasurement[]) => list.sort((a, b) => a.left - b.left);
  const isTaped = ({ id }: NextMeasurement) => id.startsWith('point.') || id.startsWith('measure.');
  const [taped] = best(found.filter(isTaped));
  return best([...found.filter((one) => !isTaped(one)), ...(taped ? [taped] : [])]).filter(({ left }) => left < 0.99);
}

/** The corner as more readings would leave it: where it stands now, and no further. */
function withSets({ estimated }: LearntCorner, sets: readonly ReadSet[]): Covered {
  const { unknowns, at, passes: before } = estimated;
  const passes = passUnknowns(sets);
  const posed = { unknowns, sets, passes, aside: asideOfSets(unknowns, sets) };
  return factored({ unknowns, sets, passes, columns: derivativesOf(posed, at.subarray(before.length)) });
}

/** The same with other measurements than readings. */
function withRows({ unknowns, sets, passes, columns }: Covered, rows: readonly Row[]): Covered {
  const more = columns.map((column, j) =>
    Float64Array.from([...column, ...rows.map((row) => -(row[j - passes.length] ?? 0))]),
  );
  return factored({ unknowns, sets, passes, columns: more });
}

function factored(of: Omit<Covered, 'factor'>): Covered {
  const solved = withPriors(of.columns, of.columns[0]!.length);
  triangularise(solved, solved.length);
  return { ...of, factor: upperInverse(solved, solved.length) };
}

/** Half-width of the 95 % interval of what was asked, degrees. */
function plusMinusOf(of: Covered, { slopes, rest }: AskedChange): number {
  const open = leftOpen(of);
  const parts = [...open.map(({ column }) => dot(Float64Array.from(column), slopes)), ...rest.map(({ part }) => part)];
  const sources = [...open.map(({ id, label, dof }) => ({ id, label, dof })), ...rest.map(({ source }) => source)];
  return plusMinus95({ value: 0, parts: Float64Array.from(parts) }, sources);
}

/** What could be measured of the corner itself: rows of further measurements. */
function othersOf({ estimated, known, before }: LearntCorner): { id: NextMeasurement['id']; rows: Row[] }[] {
  const { sources } = estimated.unknowns;
  const { corner } = known;
  const row = (ofLinks: (s: number) => number, sd: number): Row =>
    Float64Array.from(sources, ({ part, isOfPartsAlone }, s) => (part || isOfPartsAlone ? 0 : ofLinks(s) / sd));
  const slopeOf = (figure: (of: typeof corner) => number) => (s: number) =>
    (figure(movedBy(corner, sources[s]!, NUDGE)) - figure(movedBy(corner, sources[s]!, -NUDGE))) / (2 * NUDGE);
  const { driveway } = before;
  if (driveway) {
    // Measured again, a measurement takes the place of the one before.
    return sources.flatMap(({ id }, s) => {
      const key = id as DrivewayKey;
      const taken = ({ ...driveway.taken, kingpin: driveway.kingpin } as Partial<Record<string, Measured>>)[key];
      // Bump steer that was measured bends the rod's own share otherwise.
      if (!taken || (key === 'bumpSteer' && !driveway.taken.bumpSteer.measured)) return [];
      const again = HOW_SURE[scaleOfMeasure(key)].careful;
      const rows = replaced(s, taken.plusMinus, again, sources.length);
      return rows.length > 0 ? [{ id: key === 'caster' ? key : (`measure.${key}` as const), rows }] : [];
    });
  }
  const caster = slopeOf((of) => sweepTravel(buildLinkage(of, { isOpen: true }), [0]).caster[0]!);
  const rod = slopeOf(({ tieRod: { inner, outer } }) => Math.hypot(...inner.map((one, axis) => outer[axis]! - one)));
  return [
    { id: 'caster', rows: [row(caster, CASTER_SD)] },
    { id: 'rodLength', rows: [row(rod, ROD_SD)] },
    ...hardPointKeys(corner).map((key) => ({
      id: `point.${key}` as const,
      rows: sources.flatMap(({ moves }, s) => {
        const by = Math.hypot(...(moves[key] ?? []));
        return by > 0 ? replaced(s, NORMAL_95 * by, POINT_MM, sources.length) : [];
      }),
    })),
  ];
}

/** One unknown, its ± beforehand replaced by a smaller one. */
function replaced(s: number, before: number, after: number, count: number): Row[] {
  if (!(after < before)) return [];
  const row = new Float64Array(count);
  row[s] = Math.sqrt((before / after) ** 2 - 1);
  return [row];
}
