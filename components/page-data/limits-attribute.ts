import { readLengthAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import { TRAVEL_LIMIT_KEYS, type TravelLimits } from '../../core/travel/travel-limits.js';

const PLAIN = new Set(['stopUsable', 'motionRatio']);

/**
 * What a page says of what ends travel, in one attribute: `stop-gap 22; stop-length 50; motion-ratio 0.96`. Lengths in mm, or with
 * their unit; a point for decimals. What cannot be read is a problem and is left out.
 */
export function readLimits(text: string | null | undefined, problems: Problem[]): TravelLimits {
  const limits: TravelLimits = {};
  for (const part of (text ?? '').split(';')) {
    const [, name, value] = /^\s*([a-z-]+)\s+(\S.*?)\s*$/.exec(part) ?? [];
    if (part.trim() === '') continue;
    const key = TRAVEL_LIMIT_KEYS.find(
      (one) => one === name?.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()),
    );
    if (!key || value === undefined) {
      problems.push({ code: 'wrong-shape', path: 'limits', value: part.trim() });
    } else if (limits[key] !== undefined) {
      problems.push({ code: 'wrong-shape', path: 'limits', value: part.trim(), other: name });
    } else if (PLAIN.has(key)) {
      // What is no number reaches the answer as NaN and is named there.
      limits[key] = Number(value);
    } else {
      const parsed = readLengthAttribute(value, 'travel', `limits.${key}`);
      if (parsed.ok) limits[key] = parsed.value;
      else problems.push(parsed.problem);
    }
  }
  return limits;
}
