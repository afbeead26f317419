import type { Reading } from '../../../../core/readings/reading.js';
import type { DataWarning, DataWarningKind } from '../../../../core/readings/warnings/data-warning.js';
import { type Care, randomReadings } from './random-readings.js';

/** A set with one fault in it. */
export interface Planted {
  readings: Reading[];
  /** Whether a warning names the fault, its readings or its pass. */
  isNamed(warning: DataWarning): boolean;
}

/** A fault that happens, and the size at which it is planted. */
export interface Fault {
  name: string;
  kind: DataWarningKind;
  care?: Care;
  /** undefined: this set has no place for a fault of that size. */
  plant(readings: Reading[], random: () => number): Planted | undefined;
}

const pick = <T>(list: readonly T[], random: () => number) => list[Math.floor(random() * list.length)];
const named = (kind: DataWarningKind, readings: readonly number[]) => (warning: DataWarning) =>
  warning.kind === kind && readings.every((i) => warning.readings.includes(i));
const passesOf = (readings: readonly Reading[]) => [...new Set(readings.map(({ pass }) => pass!))];
const indexesOf = (readings: readonly Reading[], pass: string | undefined) =>
  [...readings.keys()].filter((i) => readings[i]!.pass === pass);
const withChange = (readings: readonly Reading[], indexes: readonly number[], change: (reading: Reading) => Reading) =>
  readings.map((reading, i) => (indexes.includes(i) ? change(reading) : reading));

/** One reading of those that `isFit`, changed. */
const single =
  (
    kind: DataWarningKind,
    isFit: (reading: Reading) => boolean,
    change: (reading: Reading, random: () => number) => Reading,
  ) =>
  (readings: Reading[], random: () => number): Planted | undefined => {
    const i = pick(
      [...readings.keys()].filter((index) => isFit(readings[index]!)),
      random,
    );
    if (i === undefined) return;
    return { readings: withChange(readings, [i], (reading) => change(reading, random)), isNamed: named(kind, [i]) };
  };

/** Three to six readings after one another in one pass, at most a third of it. */
function block(readings: readonly Reading[], random: () => number): number[] {
  const indexes = indexesOf(readings, pick(passesOf(readings), random));
  const length = Math.min(3 + Math.floor(random() * 4), Math.floor(indexes.length / 3));
  const start = Math.floor(random() * (indexes.length - length));
  return indexes.slice(start, start + length);
}

const wholePass =
  (kind: DataWarningKind, change: (reading: Reading) => Reading, least = 0) =>
  (readings: Reading[], random: () => number): Planted | undefined => {
    const pass = pick(passesOf(readings), random);
    const indexes = indexesOf(readings, pass);
    const values = indexes.map((i) => readings[i]!.value);
    if (Math.abs(values.at(-1)! - values[0]!) < least) return;
    return {
      readings: withChange(readings, indexes, change),
      isNamed: (warning) => warning.kind === kind && 'pass' in warning && warning.pass === pass,
    };
  };

const inches = (reading: Reading) => ({ ...reading, travel: Number((reading.travel / 25.4).toFixed(2)) });
const THREE: Care = { passes: [3, 4] };

export const FAULTS: readonly Fault[] = [
  {
    name: 'wrong sign, value of at least 0.35°',
    kind: 'wrong-sign',
    plant: single(
      'wrong-sign',
      ({ value }) => Math.abs(value) >= 0.35,
      (r) => ({ ...r, value: -r.value }),
    ),
  },
  {
    name: 'wrong sign of a height, curve 0.8° apart',
    kind: 'wrong-sign',
    plant: (readings, random) => {
      const far = (r: Reading) => {
        const mirror = readings.find(({ pass, travel }) => pass === r.pass && travel === -r.travel);
        return mirror !== undefined && Math.abs(mirror.value - r.value) > 0.8;
      };
      return single('wrong-sign', far, (r) => ({ ...r, travel: -r.travel }))(readings, random);
    },
  },
  {
    name: 'decimal point one place right, value of at least 0.1°',
    kind: 'decimal-slip',
    plant: single(
      'decimal-slip',
      ({ value }) => Math.abs(value) >= 0.1,
      (r) => ({ ...r, value: r.value * 10 }),
    ),
  },
  {
    name: 'decimal point one place left, value of at least 0.7°',
    kind: 'decimal-slip',
    plant: single(
      'decimal-slip',
      ({ value }) => Math.abs(value) >= 0.7,
      (r) => ({ ...r, value: r.value / 10 }),
    ),
  },
  {
    name: 'decimal point left out, value of at least 0.1°',
    kind: 'decimal-slip',
    plant: single(
      'decimal-slip',
      ({ value }) => Math.abs(value) >= 0.1,
      (r) => ({ ...r, value: r.value * 100 }),
    ),
  },
  {
    name: 'neighbours swapped, 0.6° apart',
    kind: 'swapped',
    care: { steps: [10, 15], gauge: [0.03, 0.06], passes: [3, 4] },
    plant: (readings, random) => {
      const i = pick(
        [...readings.keys()].filter((k) => {
          const next = readings[k + 1];
          return next && next.pass === readings[k]!.pass && Math.abs(next.value - readings[k]!.value) > 0.6;
        }),
        random,
      );
      if (i === undefined) return;
      const [a, b] = [readings[i]!.value, readings[i + 1]!.value];
      const swapped = readings.map((r, k) => (k === i ? { ...r, value: b } : k === i + 1 ? { ...r, value: a } : r));
      return { readings: swapped, isNamed: named('swapped', [i, i + 1]) };
    },
  },
  {
    name: 'three to six readings in arc minutes',
    kind: 'mixed-units',
    plant: (readings, random) => {
      const rows = block(readings, random);
      // Near zero both units are the same.
      const sure = rows.filter((i) => Math.abs(readings[i]!.value) >= 0.1);
      if (sure.length < 2) return;
      return {
        readings: withChange(readings, rows, (r) => ({ ...r, value: Math.round(r.value * 60) })),
        isNamed: (f) => named('mixed-units', sure)(f) && f.readings.every((i) => rows.includes(i)),
      };
    },
  },
  {
    name: 'one reading in arc minutes, of at least 0.5°',
    kind: 'mixed-units',
    plant: single(
      'mixed-units',
      ({ value }) => Math.abs(value) >= 0.5,
      (r) => ({ ...r, value: Math.round(r.value * 60) }),
    ),
  },
  {
    name: 'a pass in arc minutes',
    kind: 'mixed-units',
    care: THREE,
    plant: wholePass('mixed-units', (r) => ({ ...r, value: Math.round(r.value * 60) }), 0.6),
  },
  {
    name: 'a pass with heights in inches',
    kind: 'mixed-units',
    care: THREE,
    plant: wholePass('mixed-units', inches, 0.6),
  },
  {
    name: 'three to six heights in inches, the curve 0.6° from zero height',
    kind: 'mixed-units',
    plant: (readings, random) => {
      const rows = block(readings, random);
      const middle = readings.find(({ pass, travel }) => pass === readings[rows[0]!]!.pass && Math.abs(travel) < 5);
      const sure = rows.filter((i) => Math.abs(readings[i]!.value - (middle?.value ?? NaN)) > 0.6);
      if (sure.length < rows.length) return;
      return {
        readings: withChange(readings, rows, inches),
        isNamed: (f) => named('mixed-units', sure)(f) && f.readings.every((i) => rows.includes(i)),
      };
    },
  },
  {
    name: 'one height in millimetres where inches are read',
    kind: 'mixed-units',
    plant: single(
      'mixed-units',
      ({ travel }) => Math.abs(travel) >= 15,
      (r) => ({ ...r, travel: r.travel * 25.4 }),
    ),
  },
  {
    name: 'a pass with the heights turned about',
    kind: 'reversed-pass',
    care: THREE,
    plant: wholePass('reversed-pass', (r) => ({ ...r, travel: -r.travel }), 0.7),
  },
  {
    name: 'a pass with the values turned about',
    kind: 'reversed-pass',
    care: THREE,
    plant: wholePass('reversed-pass', (r) => ({ ...r, value: -r.value }), 0.7),
  },
  {
    name: 'gauge slipped inside a pass by 0.6 to 1.2°, four readings or more on each side',
    kind: 'slipped-within',
    plant: (readings, random) => {
      const pass = pick(passesOf(readings), random);
      const indexes = indexesOf(readings, pass);
      if (indexes.length < 9) return;
      const cut = 4 + Math.floor(random() * (indexes.length - 7));
      const shift = (0.6 + 0.6 * random()) * (random() < 0.5 ? -1 : 1);
      const later = indexes.slice(cut);
      return {
        readings: withChange(readings, later, (r) => ({ ...r, value: r.value + shift })),
        // One reading more or less may be on either side.
        isNamed: (f) =>
          f.kind === 'slipped-within' && f.pass === pass && Math.abs(f.readings.length - later.length) <= 1,
      };
    },
  },
  {
    name: 'gauge put on again 1.5° off',
    kind: 'slipped-between',
    care: THREE,
    plant: wholePass('slipped-between', (r) => ({ ...r, value: r.value + 1.5 })),
  },
  {
    name: 'body sank by 3 mm inside a pass',
    kind: 'body-moved',
    care: { hasBody: true },
    plant: (readings, random) => {
      const pass = pick(passesOf(readings), random);
      const indexes = indexesOf(readings, pass);
      return {
        readings: withChange(readings, indexes.slice(indexes.length / 2), (r) => ({ ...r, body: r.body! - 3 })),
        isNamed: (f) => f.kind === 'body-moved' && f.isWithin && f.pass === pass,
      };
    },
  },
  {
    name: 'body 3 mm higher in a pass',
    kind: 'body-moved',
    care: { hasBody: true },
    plant: (readings, random) => {
      const pass = pick(passesOf(readings).slice(1), random);
      return {
        readings: withChange(readings, indexesOf(readings, pass), (r) => ({ ...r, body: r.body! + 3 })),
        isNamed: (f) => f.kind === 'body-moved' && !f.isWithin && f.pass === pass,
      };
    },
  },
  {
    name: 'one reading 0.8° off, which no other sign, point or height explains',
    kind: 'outlier',
    plant: (readings, random) => {
      const i = Math.floor(random() * readings.length);
      const { pass, travel, value: right } = readings[i]!;
      const wrong = Number((right + (random() < 0.5 ? 0.8 : -0.8)).toFixed(4));
      const mirror = readings.find((r) => r.pass === pass && r.travel === -travel);
      const others = [-wrong, wrong * 10, wrong / 10];
      if (others.some((value) => Math.abs(value - right) < 0.4)) return;
      if (mirror && Math.abs(mirror.value - wrong) < 0.4) return;
      return {
        readings: withChange(readings, [i], (r) => ({ ...r, value: wrong })),
        isNamed: named('outlier', [i]),
      };
    },
  },
  {
    name: 'the next height entered twice',
    kind: 'duplicate',
    plant: (readings, random) => {
      const i = pick(
        [...readings.keys()].filter((k) => readings[k + 1]?.pass === readings[k]!.pass),
        random,
      )!;
      return {
        readings: withChange(readings, [i + 1], (r) => ({ ...r, travel: readings[i]!.travel })),
        isNamed: named('duplicate', [i, i + 1]),
      };
    },
  },
  { name: 'play of 0.2°', kind: 'up-down', care: { play: 0.2, passes: [2, 2], offset: 0 }, plant: bothWays },
  {
    name: 'gauge that repeats to 0.4° only',
    kind: 'repeatability',
    care: { gauge: [0.4, 0.4] },
    plant: (readings) => ({ readings, isNamed: ({ kind }) => kind === 'repeatability' }),
  },
  {
    name: 'read to 0.5°',
    kind: 'coarse',
    care: { resolution: 0.5 },
    plant: (readings) => ({ readings, isNamed: ({ kind }) => kind === 'coarse' }),
  },
];

/** Each pass goes up and comes down again. */
function bothWays(readings: Reading[]): Planted {
  return { readings: readings.map((r) => ({ ...r, pass: 'Pass 1' })), isNamed: ({ kind }) => kind === 'up-down' };
}

/** Random sets until one has a place for the fault. */
export function planted(fault: Fault, random: () => number): Planted {
  for (;;) {
    const made = fault.plant(randomReadings(random, fault.care), random);
    if (made) return made;
  }
}
