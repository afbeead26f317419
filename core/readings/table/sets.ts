import type { groupsAmong } from '../warnings/differ.js';
import { passOrderOf } from '../wheel-direction.js';
import type { Asker } from './ask.js';
import type { BareColumns } from './bare-pairs.js';
import type { Column } from './columns.js';
import { normal } from './label-draft.js';
import { CORNER } from './label-words.js';
import { namePasses } from './name-passes.js';
import type { Strand } from './strands.js';
import type { Taken } from './take-readings.js';
import type { SheetQuestion, SheetSet, UnderstandOptions } from './understanding.js';

/** See `groupsAmong` in differ.ts. */
export type GroupsAmong = typeof groupsAmong;

/** Strands of one set of parts, in the sheet's order. */
interface Group {
  name: string;
  strands: Strand[];
  /** By headings or lines of their own, and not by a guess. */
  isNamed: boolean;
}

/** More names than this are no sets of parts: each row has one of its own. */
const MOST_SETS = 30;

/**
 * Which strands are passes of which parts: by the user's word, by their names' common stem, and, where nothing names parts, by whether
 * they can be one curve. Asked about where names say one set and the figures two.
 *
 * @param bare what the user said of columns without names
 * @returns the sets; passes are named, and directions told, in what was taken
 */
export function setsOf(
  columns: readonly Column[],
  taken: readonly Taken[],
  strands: readonly Strand[],
  options: UnderstandOptions,
  asker: Asker,
  groupsAmong: GroupsAmong = (passes) => [[...passes.keys()]],
  bare?: BareColumns,
): { name: string; strands: Strand[] }[] {
  const said = ({ column }: Strand) => options.columns?.[column];
  const groups = byName(strands, (strand) => said(strand)?.set);
  const asked = new Set<string>();
  const ask = (
    own: readonly Strand[],
    parts: readonly (readonly Strand[])[],
    likeliest: 'sets' | 'passes',
    isApart: boolean,
  ) => {
    const id = asked.size === 0 ? 'sets' : `sets:${own[0]!.column}`;
    asked.add(id);
    return asker.ask({
      id,
      code: 'sets',
      cells: own.flatMap(({ taken: its }) => its.map((t) => taken[t]!.at)),
      example: own[0]!.text,
      choices: [{ id: 'sets' }, { id: 'passes' }],
      likeliest,
      published: isApart ? 'passes' : 'sets',
      isApart,
      groups: parts.map((some) => placeOf(some, strands, taken)),
    });
  };
  // Names beside strands without one may be remarks: unless the curves differ, that is asked.
  const isUnsure =
    groups.length > 1 && groups.some(({ isNamed }) => !isNamed) && !strands.some((strand) => said(strand)?.set);
  if (isUnsure && partsOf(strands, taken, false, groupsAmong).length < 2) {
    const parts = groups.map((group) => group.strands);
    if (ask(strands, parts, 'passes', false) === 'passes') {
      groups.splice(0, groups.length, { name: '', strands: [...strands], isNamed: false });
      for (const { label } of strands) if (label.set) label.pass ??= label.set;
    }
  }
  const sets = groups.flatMap((group): Group[] => {
    const { strands: own } = group;
    // What the user has said is not asked about.
    if (own.length < 2 || own.some((strand) => said(strand)?.set !== undefined)) {
      return [{ ...group, strands: withSweeps(own) }];
    }
    if (bare === 'passes') return [group];
    if (bare === 'sets') {
      const byColumn = [...new Set(own.map(({ column }) => column))].map((c) =>
        own.filter(({ column }) => column === c),
      );
      return byColumn.map((some) => ({ name: group.name, strands: withSweeps(some), isNamed: false }));
    }
    const parts = partsOf(own, taken, groups.length > 1, groupsAmong);
    if (parts.length < 2) return [{ ...group, strands: withSweeps(own) }];
    // Counted beside others that are: "Stock 1, Stock 2" beside "Lowered 1".
    const isPass = own.every(({ label }) => label.isPass || (groups.length > 1 && label.pass !== undefined));
    const chosen = ask(own, parts, isPass ? 'passes' : 'sets', true);
    if (chosen === 'passes') return [group];
    return parts.map((some) => ({ name: partName(group, some), strands: some, isNamed: false }));
  });
  nameSets(sets);
  for (const { strands: own } of sets) namePasses(own, strands, columns, taken, options);
  tellDirections(sets, taken, options.answers?.order === 'any');
  if (sets.length > 1) {
    for (const [c, column] of columns.entries()) {
      const names = new Set(
        sets.flatMap(({ name, strands: own }) => (own.some((one) => one.column === c) ? [name] : [])),
      );
      if (names.size === 1) [column.set] = names;
    }
  }
  return sets;
}

/** By the names' stems; what has none at all is one more. */
function byName(strands: readonly Strand[], setOf: (strand: Strand) => string | undefined): Group[] {
  const groups = new Map<string, Group>();
  for (const strand of strands) {
    const own = setOf(strand);
    const { set } = strand.label;
    const key = normal(own ?? set);
    const group = groups.get(key) ?? { name: own ?? set, strands: [], isNamed: key !== '' };
    group.strands.push(strand);
    groups.set(key, group);
  }
  const all = [...groups.values()];
  if (all.length <= MOST_SETS) return all;
  return [{ name: '', strands: [...strands], isNamed: false }];
}

/** Of parts that are told apart by what seemed to count passes: `Joint A`, not a pass A of Joint. */
function partName({ name }: Group, [strand, ...others]: readonly Strand[]): string {
  const { pass, isPass } = strand!.label;
  if (others.length > 0 || pass === undefined) return name;
  const count = pass.replace(/^Pass (?=\S+$)/, '');
  // A number alone is a poor name.
  if (name === '' && !isPass && /^\d+$/.test(count)) return name;
  strand!.label = { ...strand!.label };
  delete strand!.label.pass;
  return name === '' ? (isPass ? pass : count) : `${name} ${count}`;
}

/** Sweeps that nothing parts, and that are of one curve, are of one pass: the gauge stayed where it was. */
function withSweeps(strands: readonly Strand[]): Strand[] {
  const kept: Strand[] = [];
  for (const strand of strands) {
    const first = strand.isSweep ? kept.findLast((one) => one.column === strand.column) : undefined;
    if (first) first.taken.push(...strand.taken);
    else kept.push(strand);
  }
  return kept;
}

/** Strands that can be one curve, together. Up and down of one pass stay together. */
function partsOf(
  strands: readonly Strand[],
  taken: readonly Taken[],
  hasOthers: boolean,
  groupsAmong: GroupsAmong,
): Strand[][] {
  const units: Strand[][] = [];
  for (const strand of strands) {
    const { pass, going } = strand.label;
    const same = units.find(([first]) => {
      const other = first!.label;
      return going && other.going && other.going !== going && pass !== undefined && other.pass === pass;
    });
    if (same) same.push(strand);
    else units.push([strand]);
  }
  const isPass = strands.every(({ label }) => label.isPass);
  const passes = units.map((unit) => unit.flatMap(({ taken: its }) => its.map((t) => taken[t]!.reading)));
  // Passes that are called so, or stand beside others, may have their zeros where they like.
  const parts = groupsAmong(passes, isPass || hasOthers ? Number.POSITIVE_INFINITY : undefined);
  return parts.map((part) => part.flatMap((i) => units[i]!));
}

/** Where strands stand: their columns, or, of strands in one column, their rows. */
function placeOf(
  some: readonly Strand[],
  strands: readonly Strand[],
  taken: readonly Taken[],
): NonNullable<SheetQuestion['groups']>[number] {
  const columns = [...new Set(some.map(({ column }) => column))];
  const areAlone = strands.every((other) => some.includes(other) || !columns.includes(other.column));
  if (areAlone) return { columns };
  const rows = some.flatMap(({ taken: its }) => its.map((t) => taken[t]!.at[0]));
  return { columns, rows: [rows.reduce((a, b) => Math.min(a, b)), rows.reduce((a, b) => Math.max(a, b))] };
}

/** Names that are missing, or stand twice. A corner names no parts where there is only one set. */
function nameSets(sets: Group[]): void {
  const [only] = sets;
  if (sets.length === 1) {
    if (only!.name.split(/[\s,-]+/).every((word) => CORNER.test(word))) only!.name = '';
    return;
  }
  const taken = new Set<string>();
  for (const [i, set] of sets.entries()) {
    const name = set.name || `Set ${i + 1}`;
    let free = name;
    for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${name} ${n}`;
    taken.add(free.toLowerCase());
    set.name = free;
  }
}

/**
 * Where no direction is marked, the order of heights tells it. In a table that several passes share the order of the rows is the
 * table's and not that of the readings, unless it turns. A pass that ends where it began was read there again.
 *
 * @param isAnyOrder the table says that its rows stand in no order that tells a direction
 */
function tellDirections(sets: readonly Group[], taken: readonly Taken[], isAnyOrder: boolean): void {
  for (const { strands } of sets) {
    const passes = new Map<string, number[]>();
    for (const t of strands.flatMap((strand) => strand.taken).sort((a, b) => a - b)) {
      const key = `${taken[t]!.reading.pass ?? ''}\n${taken[t]!.at[1]}`;
      const own = passes.get(key);
      if (own) own.push(t);
      else passes.set(key, [t]);
    }
    for (const at of passes.values()) {
      const travels = at.map((t) => taken[t]!.reading.travel);
      const { isBack, directions } = passOrderOf(travels, taken[at[0]!]!.reading.going);
      if (isBack) taken[at.at(-1)!]!.reading.again = true;
      if (isAnyOrder || at.some((t) => taken[t]!.reading.going)) continue;
      // Nobody lists a height again below the others unless it was read last: there the order is that of the readings.
      const isShared = at.at(-1)! - at[0]! >= at.length && !isBack;
      if (!directions || (isShared && new Set(directions).size === 1)) continue;
      for (const [k, t] of at.entries()) taken[t]!.reading.going = directions[k]!;
    }
  }
}

/** @param left the readings that are kept, in their order */
export function asSheetSets(
  sets: readonly { name: string; strands: readonly Strand[] }[],
  taken: readonly Taken[],
  left: readonly Taken[],
): SheetSet[] {
  const indexOf = new Map(left.map((one, index) => [one, index] as const));
  return sets.map(({ name, strands }) => ({
    name,
    readings: strands.flatMap((strand) => strand.taken.map((t) => indexOf.get(taken[t]!)!)).sort((a, b) => a - b),
  }));
}
