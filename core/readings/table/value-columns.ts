import { toeFromGauge } from '../instruments.js';
import { type OverBase, toeOfPair } from '../over-base.js';
import { type Column, isLength } from './columns.js';

/** A column whose cells give one reading each, and the columns that these are read together with. */
export interface ValueColumn {
  value: number;
  /** Of its travel or height: the nearest to the left, else the first. */
  height?: number;
  /** The second of two dials, or of two distances. */
  rear?: number;
  body?: number;
  /** A distance over a base and no angle. */
  isOverBase: boolean;
}

/** One a pass side by side, or one in long form. */
export function valueColumnsOf(columns: readonly Column[]): ValueColumn[] {
  const at = (...roles: Column['role'][]) => columns.flatMap(({ role }, c) => (roles.includes(role) ? [c] : []));
  const heights = at('travel', 'height');
  const bodies = at('body');
  const values = at('value', 'dialFront');
  const [fronts, rears] = [at('dialFront'), at('dialRear')];
  // Pair by pair, whichever stands first.
  const rearOf = (front: number) =>
    fronts.length === rears.length ? rears[fronts.indexOf(front)] : (rears.find((c) => c > front) ?? rears[0]);
  return values.flatMap((value, i): ValueColumn[] => {
    if (columns[value]!.isOpen) return [];
    const next = values[i + 1] ?? columns.length;
    const height = heights.findLast((c) => c < value) ?? heights[0];
    const body =
      bodies.length === 1
        ? bodies[0]
        : (bodies.find((c) => c > value && c < next) ?? bodies.findLast((c) => c < value));
    const isDial = columns[value]!.role === 'dialFront';
    const rear = isDial ? rearOf(value) : undefined;
    if (isDial && rear === undefined) return [];
    return [
      {
        value,
        isOverBase: isDial || isLength(columns[value]!.unit ?? 'degrees'),
        ...(height !== undefined && { height }),
        ...(rear !== undefined && { rear }),
        ...(body !== undefined && { body }),
      },
    ];
  });
}

/** How two figures make an angle, as far as it is known. */
export type HowPaired = { [K in keyof OverBase]: OverBase[K] | undefined };

/** Degrees, by the sheet's sign; NaN where a cell is missing or the base is not known. */
export function angleAt(
  { value, rear, isOverBase }: ValueColumn,
  row: readonly number[],
  { base, front }: HowPaired,
): number {
  const first = row[value]!;
  if (!isOverBase) return first;
  if (base === undefined) return Number.NaN;
  if (rear === undefined) return toeFromGauge(first, base);
  return front === undefined ? Number.NaN : toeOfPair([first, row[rear]!], { base, front });
}
