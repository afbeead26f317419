import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { numberProblem } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';
import { DOUBT_KEYS, MOST_DOUBTS, type ReadingDoubts } from '../../core/readings/doubts.js';

const UNITS = { gaugeScale: '%', tapeScale: '%', drift: '°' } as const;

/**
 * What a page says of the instruments behind its table of readings, in one attribute: `data-doubts="gauge-scale 3 %; zero-height 4 mm"`;
 * `tape-scale` and `drift` (degrees) as well. Half-widths of 95 % intervals, a point for decimals. What cannot be read is a problem
 * and is left out.
 */
export function readDoubts(text: string | null | undefined, problems: Problem[]): ReadingDoubts | undefined {
  const doubts: { -readonly [K in keyof ReadingDoubts]: number } = {};
  for (const part of (text ?? '').split(';')) {
    if (part.trim() === '') continue;
    const [, name, value = ''] = /^\s*([a-z-]+)\s+(\S.*?)\s*$/.exec(part) ?? [];
    const key = DOUBT_KEYS.find((one) => one === name?.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()));
    if (!key) {
      problems.push({ code: 'wrong-shape', path: 'doubts', value: part.trim() });
      continue;
    }
    const read = key === 'zeroHeight' ? lengthOf(value) : numberOf(value, UNITS[key]);
    const problem = numberProblem(key, read ?? value, 0, MOST_DOUBTS[key]);
    if (problem) problems.push(problem);
    else doubts[key] = read!;
  }
  return Object.keys(doubts).length > 0 ? doubts : undefined;
}

function lengthOf(text: string): number | undefined {
  const read = readLengthAttribute(text.replace(/^±\s*/, ''), 'coordinate', 'zeroHeight');
  return read.ok ? read.value : undefined;
}

function numberOf(text: string, unit: string): number | undefined {
  const [, digits] = /^±?\s*(-?\d+(?:\.\d+)?)\s*(\D*)$/.exec(text) ?? [];
  return digits !== undefined && ['', unit].includes(text.replace(/^[±\s\d.-]+/, '').trim())
    ? Number(digits)
    : undefined;
}
