import { mean } from '../../math/sums.js';
import type { Strand } from './strands.js';
import type { Taken } from './take-readings.js';
import type { SheetDerived } from './understanding.js';

/** Figures by what they stand beside: the row, or the height where each has rows of its own. */
type Series = ReadonlyMap<string, number>;

/** A strand that others give, and those others. */
export interface Derived {
  strand: Strand;
  kind: SheetDerived['kind'];
  of: readonly Strand[];
}

/**
 * An average's name is enough where its figures agree. Without one it is left out where honest readings would agree so well this
 * seldom, and asked about where seldom enough; what is called a pass must be stranger still.
 */
const CHANCE = {
  nameless: { left: 1e-5, asked: 1e-2 },
  pass: { left: 1e-9, asked: 1e-5 },
} as const;
/** Fewer rows show nothing. */
const FEWEST = 4;
/** Of figures written more finely than those that were read off a gauge: no reading. */
const FINER = 1e-6;
/** More columns nobody averages by hand; and each is tried against the others. */
const MOST_STRANDS = 60;

const median = (values: readonly number[]) => {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
};
const spread = (values: readonly number[]) => {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
};
const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

/** Degrees; arc minutes and their twelfths too. */
const STEPS = [1, 0.5, 0.25, 0.2, 0.1, 1 / 6, 1 / 12, 0.05, 1 / 60, 0.02, 0.01, 0.005, 0.002, 0.001, 1e-4];

/** The step to which figures are written; 0 where it is finer than any. */
function stepOf(values: Iterable<number>): number {
  const all = [...values];
  return STEPS.find((step) => all.every((value) => Math.abs(value / step - Math.round(value / step)) < 1e-4)) ?? 0;
}

/** @returns figures of each strand by row; where strands have rows of their own, by height and how often it came */
function seriesOf(strands: readonly Strand[], taken: readonly Taken[]): Map<Strand, Series> {
  const areBeside = new Set(strands.map(({ column }) => column)).size === strands.length;
  return new Map(
    strands.map((strand) => {
      const times = new Map<number, number>();
      const series = strand.taken.map((t): [string, number] => {
        const { reading, at } = taken[t]!;
        if (areBeside) return [`${at[0]}`, reading.value];
        const time = (times.get(reading.travel) ?? 0) + 1;
        times.set(reading.travel, time);
        return [`${reading.travel} ${time}`, reading.value];
      });
      return [strand, new Map(series)];
    }),
  );
}

/**
 * Whether one series is worked out of others, row by row, as far as both were rounded.
 *
 * @param isReading whether honest readings would come near what is worked out; a spread is nowhere near
 * @returns the chance that readings agree so well; undefined where they do not agree
 */
function agreement(
  one: Series,
  others: readonly Series[],
  combine: (values: readonly number[]) => number,
  isReading: boolean,
): number | undefined {
  const own = stepOf(one.values());
  const given = Math.max(...others.map((other) => stepOf(other.values())));
  const tolerance = own / 2 + 1e-6 + (own === 0 ? 1e-4 : 0);
  let rows = 0;
  let seen = 0;
  let worst = 0;
  const sizes = new Set<number>();
  for (const [key, value] of one) {
    const values = others.flatMap((other) => other.get(key) ?? []);
    if (values.length === 0) continue;
    seen++;
    // Of one figure any is the mean.
    if (values.length >= Math.min(2, others.length)) rows++;
    const off = Math.abs(combine(values) - value);
    worst = Math.max(worst, off);
    sizes.add(Math.round(value * 1e6));
    // The others may be shown more coarsely than they were averaged.
    if (off > tolerance + given / 2) return undefined;
  }
  if (rows < Math.min(FEWEST, one.size) || seen < 0.8 * one.size) return undefined;
  if (rows < FEWEST || worst > tolerance) return 1;
  if (!isReading) return sizes.size > 2 ? 0 : 1;
  const scatter = scatterOf(others) * Math.sqrt(1 + 1 / others.length);
  const chance = Math.min(1, (2 * tolerance) / (scatter * Math.sqrt(2 * Math.PI))) ** rows;
  const isFiner =
    own < given && [...one.values()].some((value) => Math.abs(value / given - Math.round(value / given)) > 0.01);
  return isFiner ? Math.min(chance, FINER) : chance;
}

/** Standard deviation of figures that stand in one row, each series about its own zero, degrees. */
function scatterOf(series: readonly Series[]): number {
  const keys = [...series[0]!.keys()].filter((key) => series.every((one) => one.has(key)));
  const zeros = series.map((one) => mean(keys.map((key) => one.get(key)!)));
  const squares = keys.reduce((sum, key) => {
    const values = series.map((one, i) => one.get(key)! - zeros[i]!);
    return sum + values.reduce((all, value) => all + (value - mean(values)) ** 2, 0);
  }, 0);
  return Math.sqrt(squares / Math.max(1, (keys.length - 1) * (series.length - 1)));
}

/**
 * Strands whose figures others give: averages, medians, spreads and differences of columns beside them, one column less its own value
 * at one height. By their names where their figures agree; by their figures alone where that can be no chance.
 *
 * @param isKept whether the user says that a strand holds readings
 * @returns what is left out; and what is to be asked about: called an average and none of what stands beside it, or perhaps one
 * without being called so
 */
export function derivedOf(
  strands: readonly Strand[],
  taken: readonly Taken[],
  isKept: (strand: Strand) => boolean,
): { derived: Derived[]; doubtful: Derived[] } {
  const derived: Derived[] = [];
  const doubtful: Derived[] = [];
  if (strands.length > MOST_STRANDS) return { derived, doubtful };
  const series = seriesOf(strands, taken);
  const by: Agreement = (strand, group, combine, isReading = true) =>
    agreement(
      series.get(strand)!,
      group.map((other) => series.get(other)!),
      combine,
      isReading,
    );
  const isNamed = ({ label }: Strand) => label.summary !== undefined;
  const plain = strands.filter((strand) => !isNamed(strand));
  const leave = (strand: Strand, kind: Derived['kind'], of: readonly Strand[]) => derived.push({ strand, kind, of });
  const isLeft = (strand: Strand) => derived.some((one) => one.strand === strand);

  for (const strand of strands) {
    if (!isNamed(strand) || isKept(strand)) continue;
    const { summary, stem } = strand.label;
    const kin = plain.filter(({ label }) => stem !== '' && label.stem === stem);
    if (summary === 'spread') {
      if (plain.length > 0) leave(strand, 'spread', kin);
    } else if (summary === 'average') {
      const groups = candidates(strand, strands, plain);
      const found = groups.find((group) => by(strand, group, mean) !== undefined);
      const middle = found ?? groups.find((group) => group.length > 2 && by(strand, group, median) !== undefined);
      if (middle) leave(strand, found ? 'average' : 'median', middle);
      else if (kin.length > 0 || (stem === '' && plain.length > 0)) doubtful.push({ strand, kind: 'average', of: [] });
    } else {
      const found = differenceOf(strand, strands, series, by);
      if (found) leave(strand, ...found);
      // What is called a difference, or a change, beside what it may be one of is no reading either.
      else if (strands.some(({ label }) => label.summary !== 'difference' && label.summary !== 'spread')) {
        leave(strand, 'difference', []);
      }
    }
  }
  for (const [i, strand] of plain.entries()) {
    if (isKept(strand)) continue;
    const { pass, isPass, stem } = strand.label;
    const rest = plain.filter((other) => other !== strand && !isLeft(other));
    const kin = rest.filter(({ label }) => label.stem === stem);
    const groups = [kin, ...groupsBeside(strand, strands, (other) => rest.includes(other)), rest].filter(
      (group) => group.length > 1,
    );
    const chances = groups.map((group) => by(strand, group, mean) ?? 1);
    const least = Math.min(1, ...chances);
    const limits = CHANCE[pass !== undefined || isPass ? 'pass' : 'nameless'];
    if (least < limits.asked) {
      const one: Derived = { strand, kind: 'average', of: groups[chances.indexOf(least)]! };
      (least < limits.left ? derived : doubtful).push(one);
      continue;
    }
    if (pass !== undefined || isPass) continue;
    const apart = groups.find(
      (group) => group.length > 2 && [spread, range].some((combine) => by(strand, group, combine, false) === 0),
    );
    const pair = apart ? undefined : differenceOf(strand, plain.slice(0, i), series, by, true);
    if (apart) leave(strand, 'spread', apart);
    else if (pair) leave(strand, ...pair);
  }
  return { derived, doubtful };
}

/** What an average may be one of: what stands beside it, its own parts, others, all; each also of one direction only. */
function candidates(strand: Strand, strands: readonly Strand[], plain: readonly Strand[]): (readonly Strand[])[] {
  const { stem, going } = strand.label;
  const stems = new Set([stem, ...plain.map(({ label }) => label.stem)]);
  const groups = [
    ...groupsBeside(strand, strands, ({ label }) => label.summary === undefined),
    ...[...stems].map((one) => plain.filter(({ label }) => label.stem === one)),
    plain,
  ];
  const oneWay = groups.map((group) => group.filter(({ label }) => going === undefined || label.going === going));
  return [...groups, ...oneWay].filter((group) => group.length > 0);
}

/** Strands right before, and right after, up to the next that is not one; other averages between are passed over. */
function groupsBeside(
  strand: Strand,
  strands: readonly Strand[],
  isOne: (other: Strand) => boolean,
): (readonly Strand[])[] {
  const at = strands.indexOf(strand);
  const run = (side: readonly Strand[]) => {
    const from = side.findIndex(isOne);
    if (from < 0) return [];
    const length = side.slice(from).findIndex((other) => !isOne(other));
    return side.slice(from, length < 0 ? undefined : from + length);
  };
  return [run(strands.slice(0, at).reverse()), run(strands.slice(at + 1))].filter((group) => group.length > 0);
}

type Agreement = (
  strand: Strand,
  group: readonly Strand[],
  combine: (values: readonly number[]) => number,
  isReading?: boolean,
) => number | undefined;

function shiftOf(one: Series, other: Series): number | undefined {
  for (const [key, value] of one) if (other.has(key)) return value - other.get(key)!;
  return undefined;
}

/** Two strands whose difference one is; or, where its name says so, one that it follows at a fixed distance. */
function differenceOf(
  strand: Strand,
  strands: readonly Strand[],
  series: ReadonlyMap<Strand, Series>,
  by: Agreement,
  mustBeSure = false,
): [Derived['kind'], Strand[]] | undefined {
  const others = strands.filter((other) => other !== strand && other.label.summary !== 'spread');
  const isIt = (chance: number | undefined) => chance !== undefined && (chance === 0 || !mustBeSure);
  for (const [i, a] of others.entries()) {
    for (const b of others.slice(i + 1)) {
      const isOff = (sign: number) => isIt(by(strand, [a, b], ([x, y]) => sign * (x! - y!), false));
      if (isOff(1) || isOff(-1)) return ['difference', [a, b]];
    }
    // Without the name it may be another pass of a coarse gauge.
    if (mustBeSure) continue;
    const shift = shiftOf(series.get(strand)!, series.get(a)!);
    if (shift !== undefined && isIt(by(strand, [a], ([x]) => x! + shift, false))) return ['copy', [a]];
  }
  return undefined;
}
