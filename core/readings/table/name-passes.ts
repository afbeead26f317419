import type { Column } from './columns.js';
import type { Strand } from './strands.js';
import type { Taken } from './take-readings.js';
import type { UnderstandOptions } from './understanding.js';

/**
 * Gives the strands of one set their pass: by the user's word, by their names, else in turn, one up and one down together being one
 * pass. A single strand without a name has none.
 *
 * @param all of the sheet
 */
export function namePasses(
  strands: readonly Strand[],
  all: readonly Strand[],
  columns: readonly Column[],
  taken: readonly Taken[],
  options: UnderstandOptions,
): void {
  const given = strands.map((strand) => options.columns?.[strand.column]?.pass || strand.label.pass);
  const directions = strands.map((strand) => options.columns?.[strand.column]?.going ?? strand.label.going);
  const passes = numbered(strands, given, directions);
  for (const [i, strand] of strands.entries()) {
    const pass = passes[i];
    for (const t of strand.taken) {
      const { reading } = taken[t]!;
      if (directions[i]) reading.going ??= directions[i]!;
      if (pass) reading.pass = pass;
    }
    // Of a column that holds several there is nothing to say at its head.
    const column = columns[strand.column]!;
    const isAlone = all.filter((other) => other.column === strand.column).length === 1;
    if (isAlone && (column.role === 'value' || column.role === 'dialFront')) {
      if (directions[i]) column.going = directions[i];
      if (pass && !strand.isCalled) column.pass = pass;
    }
  }
}

function numbered(
  strands: readonly Strand[],
  given: readonly (string | undefined)[],
  directions: readonly ('up' | 'down' | undefined)[],
): (string | undefined)[] {
  const names = new Map<string, Set<string>>();
  const isFree = (name: string, going: string) => !names.get(name)?.has(going) && !names.get(name)?.has('');
  const take = (name: string, going: string) => names.set(name, (names.get(name) ?? new Set()).add(going));
  // Called by nothing in its row, beside rows that are: the pass without a name.
  const isOpen = (i: number) => given[i] === undefined && !strands[i]!.isCalled;
  const open = strands.flatMap((_, i) => (isOpen(i) ? [i] : []));
  const passes = [...given];
  for (const [i, name] of given.entries()) {
    if (name === undefined) continue;
    const going = directions[i] ?? '';
    let free = name;
    // The same words over other columns, or over the same heights again, are another pass.
    for (let n = 2; !isFree(free, going); n++) free = `${name} (${n})`;
    take(free, going);
    passes[i] = free;
  }
  if (strands.length === 1) return passes;
  let n = 0;
  for (const i of open) {
    const going = directions[i] ?? '';
    // One up and one down in turn are one pass.
    while (n === 0 || !isFree(`Pass ${n}`, going) || (going === '' && names.has(`Pass ${n}`))) n++;
    take(`Pass ${n}`, going);
    passes[i] = `Pass ${n}`;
  }
  // Up and down of one pass and nothing else: it needs no name.
  const isOne = open.length === strands.length && new Set(passes).size === 1;
  return isOne ? given.slice() : passes;
}
