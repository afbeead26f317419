import { passOf } from './belonging.js';
import type { FigureOf, Finding } from './finding.js';
import type { Reading } from './reading.js';

/** One thing that a user may have done about a finding. Indexes into the readings that were looked at. */
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

/** What can be done about a finding in one step; nothing where only the user can know. */
export function fixOf(finding: Finding, readings: readonly Reading[]): Fix | undefined {
  const [first, second] = finding.readings as [number, number];
  switch (finding.kind) {
    case 'wrong-sign':
    case 'decimal-slip':
      return { kind: finding.of, index: first, value: finding.proposed };
    case 'swapped':
      return { kind: 'swap', indexes: [first, second] };
    case 'mixed-units':
      return { kind: 'scale', indexes: finding.readings, of: finding.of, factor: finding.factor };
    case 'reversed-pass':
      return finding.other === undefined ? { kind: 'negate-pass', pass: finding.pass, of: finding.of } : undefined;
    case 'slipped-within':
      return { kind: 'new-pass', indexes: finding.readings, pass: freeName(finding.pass, readings) };
    case 'two-sets':
      return { kind: 'new-set', indexes: finding.readings, passes: finding.others };
    case 'drift':
    case 'pass-apart':
      return finding.apart && { kind: 'new-set', indexes: finding.apart.readings, passes: finding.apart.passes };
    case 'stranger':
      return { kind: 'set-aside', index: first };
    case 'duplicate':
      if (finding.odd !== undefined) return { kind: 'set-aside', index: finding.odd };
      return finding.isSameValue ? { kind: 'set-aside', index: second } : undefined;
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
      case 'travel':
        return i === fix.index ? { ...reading, [fix.kind]: fix.value } : reading;
      case 'swap': {
        const place = fix.indexes.indexOf(i);
        return place < 0 ? reading : { ...reading, value: readings[fix.indexes[1 - place]!]!.value };
      }
      case 'scale':
        return fix.indexes.includes(i) ? { ...reading, [fix.of]: reading[fix.of] * fix.factor } : reading;
      case 'negate-pass':
        return passOf(reading) === fix.pass ? { ...reading, [fix.of]: 0 - reading[fix.of] } : reading;
      case 'new-pass':
        return fix.indexes.includes(i) ? { ...reading, pass: fix.pass } : reading;
      default:
        return reading;
    }
  });
}
