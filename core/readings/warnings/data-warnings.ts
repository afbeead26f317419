import type { CurveFit } from '../../curve/curve-fit.js';
import type { Reading } from '../reading.js';
import {
  ACCUSING,
  DATA_WARNING_KINDS,
  type DataWarning,
  type DataWarningKind,
  type DataWarningOf,
  LIMITS,
} from './data-warning.js';
import { offsetFrom, slipsWithin, turnPasses } from './pass-warnings.js';
import { readingWarnings, unitWarnings } from './reading-warnings.js';
import { passNames, passOf, type Row, rowsOf, shapeOf, type WeightedFit } from './robust-fit.js';
import { bodyMoved, duplicates, thin } from './set-warnings.js';
import { twoSets } from './two-sets.js';
import { driftTold, wholeSet } from './whole-set.js';

/** A height this many half-ranges from the middle is no height of this set. */
const FAR = 2.5;

/**
 * What looks wrong in readings, most serious first. Nothing is changed or left out: a warning is a question to whoever took them.
 * One fault gives one warning: whole passes are looked at first, then slips inside a pass, then single readings, each without what
 * was found before; what the set shows as a whole is told only where no reading or pass is accused.
 *
 * @param readings finite numbers, mm and degrees, without those that the user set aside
 * @param fit of the same readings; without it (too few, say) nothing is told that needs it
 */
export function dataWarningsIn(readings: readonly Reading[], fit: CurveFit | undefined): DataWarning[] {
  // A height that was read again tells of the gauge, and would be an outlier to the rest where that drifted.
  const first = [...readings.keys()].filter((i) => !readings[i]!.again);
  const own = first.map((i) => readings[i]!);
  const drift = fit && driftTold(fit)?.ofReading;
  const warnings = dataWarningsOf(own, fit, drift && first.map((i) => drift[i]!)).map(
    (warning) => ({ ...warning, readings: warning.readings.map((i) => first[i]!) }) as DataWarning,
  );
  if (!warnings.some(({ kind }) => ACCUSING.has(kind) && kind !== 'slipped-between')) {
    // A body that moved is reason enough.
    const isMoved = warnings.some(({ kind }) => kind === 'body-moved');
    const whole = wholeSet(readings, fit).filter(({ kind }) => !(isMoved && BY_BODY.has(kind)));
    warnings.push(...(isMoved ? whole : withTwoSets(whole, readings)));
  }
  const rank = ({ kind }: DataWarning) => DATA_WARNING_KINDS.indexOf(kind);
  return warnings.sort((a, b) => rank(a) - rank(b) || (a.readings[0] ?? 0) - (b.readings[0] ?? 0));
}

/** What a body that sinks on its stands does to the readings as a whole. */
const BY_BODY: ReadonlySet<DataWarningKind> = new Set<DataWarningKind>(['drift', 'pass-apart', 'correlated']);

/** What two curves taken for one do besides. */
const BY_SETS: ReadonlySet<DataWarningKind> = new Set<DataWarningKind>(['pattern', 'repeatability', 'up-down']);

/** Where passes follow two curves: the other explanation of a drift or of a pass that runs apart, or else a warning of its own. */
function withTwoSets(whole: DataWarning[], readings: readonly Reading[]): DataWarning[] {
  const cause = whole.find((one) => one.kind === 'drift' || one.kind === 'pass-apart');
  // A height that was read again tells drift from all else; scatter that goes together parts curves as well.
  if (cause?.kind === 'drift' && readings.some(({ again }) => again)) return whole;
  if (!cause && whole.some(({ kind }) => kind === 'correlated')) return whole;
  const sets = twoSets(readings);
  if (!sets) return whole;
  if (!cause) return [sets, ...whole.filter(({ kind }) => !BY_SETS.has(kind))];
  const apart = { passes: sets.others, readings: sets.readings };
  return whole.map((one) => (one === cause ? { ...cause, apart } : one));
}

/** @param drift of each reading, degrees, where the readings tell one: passes that drifted would be full of slips and outliers */
function dataWarningsOf(
  given: readonly Reading[],
  fit: CurveFit | undefined,
  drift: readonly number[] | undefined,
): DataWarning[] {
  if (given.length === 0) return [];
  const names = passNames(given);
  const turned = rowsOf(given);
  const turnedPasses = turnPasses(turned, names, fit?.curve.quantity ?? 'camber');
  // A pass that was written the other way about looks like a drift.
  const readings =
    drift && turnedPasses.length === 0
      ? given.map((reading, i) => ({ ...reading, value: reading.value - drift[i]! }))
      : given;
  const rows = readings === given ? turned : rowsOf(readings);

  // Heights in another unit lie far outside and would lever the curve.
  const { centre, half } = shapeOf(rows);
  const isFar = ({ travel }: Row) => Math.abs(travel - centre) > FAR * half;
  const near = [...rows.keys()].filter((i) => !isFar(rows[i]!));
  const nearRows = near.map((i) => rows[i]!);
  const nearReadings = near.map((i) => readings[i]!);
  const givenIndexes = (warning: DataWarning): DataWarning => ({
    ...warning,
    readings: warning.readings.map((i) => near[i]!).sort((a, b) => a - b),
  });

  const units = unitWarnings(nearRows, nearReadings).map(givenIndexes);
  let slips = slipsWithin(nearRows, nearReadings).map(givenIndexes) as DataWarningOf<'slipped-within'>[];
  const { warnings: ofReadings, rest, ofFar } = readingWarnings(nearRows, nearReadings);
  let singles = ofReadings.map(givenIndexes);
  singles.push(...rows.flatMap((row, i) => (isFar(row) ? ofFar(row, i, readings[i]!) : [])));

  const body = bodyMoved(readings, rows, rest);
  const moved = (pass: string, isWithin: boolean) => body.some((one) => one.pass === pass && one.isWithin === isWithin);
  slips = slips.filter(({ pass }) => !moved(pass, true));
  const isTurned = (pass: string) => turnedPasses.some((warning) => 'pass' in warning && warning.pass === pass);
  const between = offsetsApart(names, nearRows, rest).filter(({ pass }) => !moved(pass, false) && !isTurned(pass));
  for (const warning of between) {
    warning.readings = [...readings.keys()].filter((i) => passOf(readings[i]!) === warning.pass);
  }
  const twice = duplicates(readings).flatMap((warning): DataWarning[] => {
    const odd = singles.find((one) => warning.readings.includes(one.readings[0]!));
    // A height that is said to be another one stands twice no longer.
    if (odd && 'of' in odd && odd.of === 'travel') return [];
    if (odd?.kind !== 'outlier') return [warning];
    singles = singles.filter((one) => one !== odd);
    return [{ ...warning, odd: odd.readings[0]! }];
  });

  const warnings = joined([...turnedPasses, ...units, ...slips, ...singles, ...between, ...twice, ...body]);
  return [...warnings, ...thin(readings, fit)];
}

/** Passes whose zero lies far from that of the others, before any slip inside them. */
function offsetsApart(
  names: readonly string[],
  rows: readonly Row[],
  rest: WeightedFit,
): DataWarningOf<'slipped-between'>[] {
  const groups = [...names.keys()].filter((group) => Number.isFinite(rest.offset(group)));
  if (groups.length < 2) return [];
  const found = groups.flatMap((group): DataWarningOf<'slipped-between'>[] => {
    const offset = offsetFrom(rest, groups, group);
    const count = rows.filter((row) => row.group === group).length;
    if (!(Math.abs(offset) > LIMITS.offsetDegrees + (3 * rest.sd) / Math.sqrt(count))) return [];
    return [{ kind: 'slipped-between', readings: [], pass: names[group]!, offset }];
  });
  // Of two, neither is the one.
  if (groups.length > 2) return found;
  return found.slice(1).map((one) => ({ ...one, other: names[groups[0]!]! }));
}

/** Single readings in another unit become one warning a pass. */
function joined(warnings: readonly DataWarning[]): DataWarning[] {
  const all: DataWarning[] = [];
  for (const warning of warnings) {
    const same =
      warning.kind === 'mixed-units' &&
      all.find((one) => one.kind === warning.kind && one.unit === warning.unit && one.pass === warning.pass);
    if (same) same.readings = [...same.readings, ...warning.readings].sort((a, b) => a - b);
    else all.push(warning);
  }
  return all;
}
