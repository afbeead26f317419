/** A named place on a slider, in the slider's own unit. */
export interface SliderTick {
  at: number;
  label: string;
  kind: 'plain' | 'limit' | 'turn';
}

export interface PlacedTick extends SliderTick {
  /** 0 at the slider's least value, 1 at its greatest. */
  fraction: number;
  /** Generous estimate of the label's width, CSS px. */
  labelWidth: number;
  /** From the label's left end to its mark, CSS px: 0 where it begins at the mark, labelWidth where it ends there. */
  shift: number;
  /** 0 is the row next to the track. */
  row: number;
}

/** Radius of the thumb, CSS px: a browser lets its centre travel from one radius inside the left end to one inside the right. */
export const THUMB_RADIUS = 14;
/** Mean width of a character at the ticks' 13 px, in text of the usual size: wide on purpose, fonts differ and a space too much does no harm. */
const CHARACTER_PX = 7.6;
const GAP_PX = 6;
const MOST_ROWS = 3;

const importance = { limit: 2, turn: 1, plain: 0 } as const;

interface Measured extends SliderTick {
  fraction: number;
  labelWidth: number;
  centre: number;
}

/**
 * Left ends of the labels of one row, each kept over its own mark and as near to centred as its neighbours let it; undefined
 * where they do not fit side by side.
 * @param row in the order of their marks.
 */
function arrange(row: readonly Measured[], width: number): number[] | undefined {
  const lefts: number[] = [];
  let least = 0;
  for (const { centre, labelWidth } of row) {
    const left = Math.max(centre - labelWidth, least, 0);
    if (left > Math.min(centre, width - labelWidth)) return undefined;
    lefts.push(left);
    least = left + labelWidth + GAP_PX;
  }
  // That packing is the leftmost one; from the right end each label now moves towards the centre of its mark.
  let most = width;
  for (let i = row.length - 1; i >= 0; i--) {
    const { centre, labelWidth } = row[i]!;
    lefts[i] = Math.max(lefts[i]!, Math.min(centre - labelWidth / 2, most - labelWidth));
    most = lefts[i]! - GAP_PX;
  }
  return lefts;
}

/**
 * Puts the labels in as few rows as they need so that none overlaps another, limits first. A plain label that finds no room
 * in the rows the others use is left out; its mark on the track would say nothing without it.
 * @param width of the slider, CSS px. On a wider slider the same places hold as well, since marks only move apart.
 * @param scale how many times larger than usual text is.
 */
export function placeTicks(
  ticks: readonly SliderTick[],
  min: number,
  max: number,
  width: number,
  scale = 1,
): PlacedTick[] {
  const measured = ticks
    .filter(({ at }) => at >= min && at <= max)
    .map((tick): Measured => {
      const fraction = max > min ? (tick.at - min) / (max - min) : 0;
      const labelWidth = Math.min(width, Math.ceil([...tick.label].length * CHARACTER_PX * scale));
      return { ...tick, fraction, labelWidth, centre: THUMB_RADIUS + fraction * (width - 2 * THUMB_RADIUS) };
    })
    .sort((a, b) => importance[b.kind] - importance[a.kind] || a.at - b.at);
  const rows: Measured[][] = [];
  for (const tick of measured) {
    const longer = (row: readonly Measured[]) => [...row, tick].sort((a, b) => a.at - b.at);
    const free = rows.findIndex((row) => arrange(longer(row), width));
    if (free >= 0) rows[free] = longer(rows[free]!);
    else if (rows.length === 0 || (tick.kind !== 'plain' && rows.length < MOST_ROWS)) rows.push([tick]);
  }
  return rows
    .flatMap((row, index) => {
      const lefts = arrange(row, width) ?? [];
      return row.map(({ centre, ...tick }, i) => ({ ...tick, shift: centre - (lefts[i] ?? centre), row: index }));
    })
    .sort((a, b) => a.at - b.at);
}
