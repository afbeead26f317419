import type { Reading } from '../reading.js';
import type { DataWarning, FigureOf } from './data-warning.js';
import { passOf } from './robust-fit.js';

/** One thing that a user may have done about a warning. Indexes into the readings that were looked at. */
export type Fix =
  | { kind: FigureOf; index: number; value: number }
  | { kind: 'set-aside'; index: number }
  | { kind: 'swap'; indexes: [number, number] }
  /** Another unit. */
  | { kind: 'scale'; indexes: number[]; of: FigureOf; factor: number }
  | { kind: 'negate-pass'; pass: string; of: FigureOf }
  /** Gives readings a pass, hence a zero, of their own. */
  | { kind: 'new-pass'; indexes: number[]; pass: string }
  /** Makes readings a set of parts of their own. */
  | { kind: 'new-set'; indexes: number[]; passes: string[] };

/** What can be done about a warning in one step; nothing where only the user can know. */
export function fixOf(warning: DataWarning, readings: readonly Reading[]): Fix | undefined {
  const [first, second] = warning.readings as [number, number];
  switch (warning.kind) {
    case 'wrong-sign':
    case 'decimal-slip':
      return { kind: warning.of, index: first, value: warning.proposed };
    case 'swapped':
      return { kind: 'swap', indexes: [first, second] };
    case 'mixed-units':
      return { kind: 'scale', indexes: warning.readings, of: warning.of, factor: warning.factor };
    case 'reversed-pass':
      return warning.other === undefined ? { kind: 'negate-pass', pass: warning.pass, of: warning.of } : undefined;
    case 'slipped-within':
      return { kind: 'new-pass', indexes: warning.readings, pass: freeName(warning.pass, readings) };
    case 'two-sets':
      return { kind: 'new-set', indexes: warning.readings, passes: warning.others };
    case 'drift':
    case 'pass-apart':
      return warning.apart && { kind: 'new-set', indexes: warning.apart.readings, passes: warning.apart.passes };
    case 'outlier':
      return { kind: 'set-aside', index: first };
    case 'duplicate':
      if (warning.odd !== undefined) return { kind: 'set-aside', index: warning.odd };
      return warning.isSameValue ? { kind: 'set-aside', index: second } : undefined;
    default:
      return undefined;
  }
}

function freeName(pass: string, readings: readonly Reading[]): string {
  const taken = new Set(readings.map(passOf));
  for (let number = 2; ; number++) {
    const name = pass ? `${pass} (${number})` : String(number);
    if (!taken.has(name)) return name;
  }
}

/** The readings after a fix. What is set aside stays, the setup remembers; a set of their own is the document's to make. */
export function applyFix(readings: readonly Reading[], fix: Fix): Reading[] {
  return readings.map((reading, i) => {
    switch (fix.kind) {
      case 'value':
        return i === fix.index ? withValue(reading, fix.value) : reading;
      case 'travel':
        return i === fix.index ? { ...reading, travel: fix.value } : reading;
      case 'swap': {
        const place = fix.indexes.indexOf(i);
        if (place < 0) return reading;
        const { value, pair } = readings[fix.indexes[1 - place]!]!;
        return { ...withoutPair(reading), value, ...(pair && { pair }) };
      }
      case 'scale':
        if (!fix.indexes.includes(i)) return reading;
        return fix.of === 'value'
          ? withValue(reading, reading.value * fix.factor)
          : { ...reading, travel: reading.travel * fix.factor };
      case 'negate-pass':
        if (passOf(reading) !== fix.pass) return reading;
        return fix.of === 'value' ? withValue(reading, 0 - reading.value) : { ...reading, travel: 0 - reading.travel };
      case 'new-pass':
        return fix.indexes.includes(i) ? { ...reading, pass: fix.pass } : reading;
      default:
        return reading;
    }
  });
}

const withoutPair = ({ pair: _, ...reading }: Reading): Reading => reading;

/** Of a sign that is turned the two figures change places; figures that do not give the value any more are no figures of it. */
function withValue(reading: Reading, value: number): Reading {
  const { pair } = reading;
  const turned = pair && value === 0 - reading.value && ([pair[1], pair[0]] as const);
  return { ...withoutPair(reading), value, ...(turned && { pair: turned }) };
}
