import { fTail } from '../../math/f-tail.js';
import type { Reading } from '../reading.js';
import { LIMITS } from './data-warning.js';
import { type Row, robustFit, type Shape, shapeOf, weightedFit } from './robust-fit.js';

/** A cubic follows the difference of two linkages over 120 mm. */
const DEGREE = 3;
/**
 * What is known of a gauge on a hub before anything is read, as if so many readings of this scatter had been taken, °: a few heights
 * alone would tell nothing of theirs. Common practice, no source.
 */
const GAUGE = { sd: 0.06, dof: 4 } as const;
/** Chance that passes of one set are told to differ, before it is shared by the ways of parting them. */
const LEVEL = 0.006;
/** A difference of shape that play, drift of the gauge and a tape make as well, °. Common practice, no source. */
const SMALL = 0.08;
/** A reading further from its own pass than so many scatters of it, and than any gauge reads, °, is a slip of the keys: not judged by. */
const STRAY = { scatters: 5, degrees: 0.15, most: 2 } as const;
/** More passes nobody takes, and they are parted in too many ways. */
const MOST_PASSES = 12;

/** Readings of one strand. */
export type Pass = readonly Pick<Reading, 'travel' | 'value'>[];

/** A curve through rows, each pass of them with a zero of its own. */
interface Fit {
  squares: number;
  dof: number;
}

/** Passes taken for those of one set, by their index. */
interface Group {
  passes: number[];
  rows: Row[];
  fit: Fit;
}

const rowsOf = (pass: Pass, group: number): Row[] =>
  pass.map(({ travel, value }) => ({ travel, value, group, direction: 0 }));

/** A pass without what was mistyped in it. */
function withoutStrays(pass: Pass): Pass {
  const rows = rowsOf(pass, 0);
  const { residuals, scatter } = robustFit(rows, shapeOf(rows, DEGREE));
  const limit = Math.max(STRAY.scatters * scatter, STRAY.degrees);
  const strays = residuals.flatMap((off, i) => (Math.abs(off) > limit ? [i] : []));
  return strays.length > STRAY.most ? pass : pass.filter((_, i) => !strays.includes(i));
}

function fitOf(rows: readonly Row[], shape: Shape): Fit {
  const heights = new Set(rows.map(({ travel }) => travel)).size;
  const degree = Math.max(0, Math.min(DEGREE, heights - 1));
  const { sd, dof } = weightedFit(rows, { ...shape, degree, hasDirection: false });
  return dof > 0 ? { squares: sd * sd * dof, dof } : { squares: 0, dof: 0 };
}

/** The chance that two groups of one curve would lie so far from a common one: F test of the reduction in squares. */
function chanceOf(one: Group, other: Group, joined: Fit): number {
  const squares = one.fit.squares + other.fit.squares;
  const dof = one.fit.dof + other.fit.dof;
  const above = joined.dof - dof;
  const below = dof + GAUGE.dof;
  const scatter = (squares + GAUGE.dof * GAUGE.sd ** 2) / below;
  return above > 0 ? fTail((joined.squares - squares) / above / scatter, above, below) : 1;
}

/** How far apart two shapes go over the heights that both have, whatever their zeros, °. */
function apart(one: Group, other: Group, shape: Shape): number {
  const sides = [one.rows, other.rows];
  const ends = sides.map((side) => side.map(({ travel }) => travel).sort((a, b) => a - b));
  const low = Math.max(...ends.map((travels) => travels[0]!));
  const high = Math.min(...ends.map((travels) => travels.at(-1)!));
  if (!(high > low)) return 0;
  const curves = sides.map((side) => {
    const degree = Math.max(1, Math.min(2, new Set(side.map(({ travel }) => travel)).size - 1));
    const made = weightedFit(side, { ...shape, degree, hasDirection: false });
    return (travel: number) => -made.residual({ ...side[0]!, travel, value: 0 });
  });
  const steps = Array.from({ length: 9 }, (_, i) => low + ((high - low) * i) / 8);
  const between = steps.map((travel) => curves[0]!(travel) - curves[1]!(travel));
  return Math.max(...between) - Math.min(...between);
}

/** How far apart the shapes of two groups of passes go over the heights that both have, whatever the zeros, degrees. */
export function shapesApart(one: readonly Pass[], other: readonly Pass[]): number {
  const rows = [...one, ...other].map((pass, i) => rowsOf(withoutStrays(pass), i));
  const shape = shapeOf(rows.flat(), DEGREE);
  const groupOf = (own: Row[][]): Group => ({ passes: [], rows: own.flat(), fit: { squares: 0, dof: 0 } });
  return apart(groupOf(rows.slice(0, one.length)), groupOf(rows.slice(one.length)), shape);
}

/**
 * Parts passes into those that follow one curve each, whatever the gauge's zero was in each; all together where they differ by no more
 * than their scatter allows. The two that lie closest are joined first; joining stops at two groups whose common curve is worse than
 * two curves by an F test (Draper and Smith, Applied Regression Analysis, 1966), its level shared by the ways of parting so many passes
 * in two (Bonferroni), and whose shapes differ by more than play and drift make.
 *
 * @param passes of at least one reading each, mm and degrees
 * @param zeroApart zeros that lie further apart than this are of different parts too, degrees; Infinity where passes are named so
 * @returns indexes of the passes of each group, both in the order of the passes
 */
export function groupsAmong(passes: readonly Pass[], zeroApart: number = LIMITS.offsetDegrees): number[][] {
  const all = [...passes.keys()];
  if (passes.length < 2 || passes.length > MOST_PASSES) return [all];
  const rows = passes.map((pass, i) => rowsOf(withoutStrays(pass), i));
  const shape = shapeOf(rows.flat(), DEGREE);
  if (new Set(rows.flat().map(({ travel }) => travel)).size < 2) return [all];
  let groups = rows.map((own, i): Group => ({ passes: [i], rows: own, fit: fitOf(own, shape) }));
  const level = LEVEL / (2 ** (passes.length - 1) - 1);
  const joinedFits = new Map<string, Fit>();
  const joinedFit = (one: Group, other: Group) => {
    const key = [...one.passes, ...other.passes].sort((a, b) => a - b).join();
    const known = joinedFits.get(key) ?? fitOf([...one.rows, ...other.rows], shape);
    joinedFits.set(key, known);
    return known;
  };
  while (groups.length > 1) {
    let best: { one: Group; other: Group; fit: Fit; cost: number } | undefined;
    for (const [i, one] of groups.entries()) {
      for (const other of groups.slice(i + 1)) {
        const fit = joinedFit(one, other);
        const isApart = chanceOf(one, other, fit) < level && apart(one, other, shape) >= SMALL;
        const cost = fit.squares - one.fit.squares - other.fit.squares;
        if (!isApart && (!best || cost < best.cost)) best = { one, other, fit, cost };
      }
    }
    if (!best) break;
    const { one, other, fit } = best;
    groups = groups.filter((group) => group !== other);
    groups[groups.indexOf(one)] = {
      passes: [...one.passes, ...other.passes],
      rows: [...one.rows, ...other.rows],
      fit,
    };
  }
  return groups
    .flatMap((group) => partedByZero(group, shape, zeroApart))
    .map((group) => group.sort((a, b) => a - b))
    .sort((a, b) => a[0]! - b[0]!);
}

/** In two at the widest gap between zeros, where it is more than a gauge that is put on again makes. */
function partedByZero({ passes, rows }: Group, shape: Shape, zeroApart: number): number[][] {
  if (passes.length < 2 || !Number.isFinite(zeroApart)) return [passes];
  const made = weightedFit(rows, { ...shape, hasDirection: false });
  const sorted = [...passes].sort((a, b) => made.offset(a) - made.offset(b));
  const gaps = sorted.slice(1).map((pass, i) => made.offset(pass) - made.offset(sorted[i]!));
  const widest = gaps.indexOf(Math.max(...gaps));
  return gaps[widest]! > zeroApart ? [sorted.slice(0, widest + 1), sorted.slice(widest + 1)] : [passes];
}
