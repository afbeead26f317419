import type { Asker } from './ask.js';
import type { Column } from './columns.js';
import { derivedOf } from './derived.js';
import type { Strand } from './strands.js';
import type { Taken } from './take-readings.js';
import type { SheetDerived, UnderstandOptions } from './understanding.js';

/**
 * Leaves out what other figures of the sheet give. What is called an average and is none of what stands beside it is asked about, and
 * so is what may be one without being called so; until that is answered it counts for nothing. A column that is left out as a whole says so by its role.
 */
export function leaveDerived(
  taken: readonly Taken[],
  strands: readonly Strand[],
  columns: readonly Column[],
  options: UnderstandOptions,
  asker: Asker,
): { kept: Strand[]; derived: SheetDerived[] } {
  const isKept = ({ column }: Strand) => options.columns?.[column]?.role === 'value';
  const found = derivedOf(strands, taken, isKept);
  const left = new Map(found.derived.map((one) => [one.strand, one] as const));
  for (const one of found.doubtful) {
    const { strand } = one;
    const chosen = asker.ask({
      id: `average:${strands.indexOf(strand)}`,
      code: 'average',
      cells: strand.taken.map((t) => taken[t]!.at),
      example: strand.text,
      choices: [{ id: 'leave-out' }, { id: 'use' }],
      likeliest: 'leave-out',
      ...(one.of.length > 0 && { groups: [{ columns: columnsAt(one.of) }] }),
    });
    if (chosen !== 'use') left.set(strand, one);
  }
  const kept = strands.filter((strand) => !left.has(strand));
  for (const { column } of left.keys()) {
    if (!kept.some((strand) => strand.column === column)) columns[column]!.role = 'derived';
  }
  const named = columns.flatMap((column, c): SheetDerived[] => {
    const isNamed = column.role === 'derived' && !strands.some((strand) => strand.column === c);
    return isNamed ? [{ kind: 'spread', label: column.words, column: c, of: [] }] : [];
  });
  const derived = [...left.values()].map(
    ({ strand, kind, of }): SheetDerived => ({
      kind,
      label: strand.text,
      column: strand.column,
      of: columnsAt(of),
    }),
  );
  return { kept, derived: [...derived, ...named].sort((a, b) => a.column - b.column) };
}

const columnsAt = (strands: readonly Strand[]): number[] =>
  [...new Set(strands.map(({ column }) => column))].sort((a, b) => a - b);
