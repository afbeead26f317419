/** A reading of a pass, mm. */
interface Row {
  travel: number;
  going: 'up' | 'down' | undefined;
  again: boolean;
}

/** A way begins where its pass did if its first height lies this close to that read again, as a share of the pass's range. */
const SAME = 0.05;

/**
 * The order in which a pass was read that began inside its range, or went both ways, and ended with its first height read again: from
 * there on its way, then the other way, then what lay before the first height, which comes last.
 *
 * @param pass indexes into `rows`
 * @param again index of the height read again
 * @returns both orders, which are as likely, where nobody said which half came first; none where the ways alone tell the order, or
 * where it cannot be told
 */
export function ordersByReturn(rows: readonly Row[], pass: readonly number[], again: number): number[][] {
  const rest = pass.filter((i) => !rows[i]!.again);
  const last = pass.filter((i) => rows[i]!.again);
  if (rest.length === 0) return [];
  const travelOf = (i: number) => rows[i]!.travel;
  const off = (i: number) => Math.abs(travelOf(i) - travelOf(again));
  const first = travelOf(rest.reduce((best, i) => (off(i) < off(best) ? i : best)));
  const low = rest.reduce((least, i) => Math.min(least, travelOf(i)), Number.POSITIVE_INFINITY);
  const high = rest.reduce((most, i) => Math.max(most, travelOf(i)), Number.NEGATIVE_INFINITY);
  const along = (side: 1 | -1) => (a: number, b: number) => side * (travelOf(a) - travelOf(b)) || a - b;
  const goingOf = (way: 'up' | 'down' | undefined) => rest.filter((i) => rows[i]!.going === way);
  const [up, down, unsaid] = [goingOf('up'), goingOf('down'), goingOf(undefined)];
  /** From the first height on, the other way, and what is left before it. */
  const from = (way: readonly number[], other: readonly number[], side: 1 | -1): number[] => {
    const ordered = [...way].sort(along(side));
    const isOn = (i: number) => side * (travelOf(i) - first) >= 0;
    return [
      ...ordered.filter(isOn),
      ...[...other].sort(along(side === 1 ? -1 : 1)),
      ...ordered.filter((i) => !isOn(i)),
      ...last,
    ];
  };
  const isInside = first > low && first < high;
  if (unsaid.length === rest.length) {
    if (!isInside) return [];
    // From the first height to one end, and from beside it to the other.
    const [above, below] = [unsaid.filter((i) => travelOf(i) >= first), unsaid.filter((i) => travelOf(i) < first)];
    const [over, under] = [unsaid.filter((i) => travelOf(i) > first), unsaid.filter((i) => travelOf(i) <= first)];
    return [from(above, below, 1), from(under, over, -1)];
  }
  if (unsaid.length > 0) return [];
  if (up.length === 0 || down.length === 0) {
    return isInside ? [up.length > 0 ? from(up, [], 1) : from(down, [], -1)] : [];
  }
  const begins = (way: readonly number[], side: 1 | -1) => {
    const start = way.reduce((best, i) => (along(side)(i, best) < 0 ? i : best));
    return Math.abs(travelOf(start) - first) <= SAME * (high - low);
  };
  const said = rows[again]!.going;
  const way = isInside && said ? said : begins(up, 1) ? 'up' : begins(down, -1) ? 'down' : undefined;
  if (!way) return [];
  return [way === 'up' ? from(up, down, 1) : from(down, up, -1)];
}
