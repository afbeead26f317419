import { parseQuantity } from '../../core/quantity/parse.js';
import { METRIC, MM_PER_INCH } from '../../core/quantity/units.js';

/** What a text ends in, how it is written, and how many of it are one of the API's. */
const UNITS = [
  [/mm\.?$/i, ' mm', 1],
  [/cm\.?$/i, ' cm', 10],
  [/(?:\bin|\din|inch|inches|["”″])\.?$/i, ' in', MM_PER_INCH],
  [/['’′]$/, '′', 1 / 60],
  [/(?:[°º]|deg|degrees?)$/i, '°', 1],
] as const;

/** Half of the last place that a text shows, in its own unit. */
function halfPlace(text: string): number {
  const decimals = /[.,](\d+)\D*$/.exec(text)?.[1]?.length ?? 0;
  return 0.5001 * 10 ** -decimals;
}

/**
 * What `<data value>` says: its value, written so that it can be read in one way only, in the unit that its text names. A value is
 * in the text's own unit, or already in mm or degrees: which of the two, the figures show.
 *
 * @returns the text itself where the value is no number, and both of them, which is no number, where they contradict each other
 */
export function dataText(value: string, text: string): string {
  const figure = Number(value);
  if (value.trim() === '' || !Number.isFinite(figure)) return text;
  const plain = figure.toFixed(6);
  const [, unit, size] = UNITS.find(([pattern]) => pattern.test(text)) ?? [];
  if (!unit || !size) return plain;
  const isLength = unit.startsWith(' ');
  const parsed = parseQuantity(text, isLength ? 'coordinate' : 'linkAngle', METRIC);
  const read = parsed.ok ? [parsed.value] : (parsed.problem.choices ?? []);
  if (read.length === 0) return plain;
  const near = halfPlace(text);
  if (read.some((one) => Math.abs(one / size - figure) <= near)) return plain + unit;
  if (read.some((one) => Math.abs(one - figure) <= near * size)) return plain + (isLength ? ' mm' : '°');
  return `${value} (${text})`;
}
