import fc from 'fast-check';

/** A sheet of readings as somebody might write it: what was read, and in which of many ways it is written down. Knows nothing of core/. */
export interface Written {
  text: string;
  rows: string[][];
  readings: { travel: number; value: number; pass?: string; going?: 'up' | 'down' }[];
}

const SEPARATORS = { tab: '\t', semicolon: ';', comma: ',', blanks: '   ', bar: '|' } as const;

export interface Way {
  separator: keyof typeof SEPARATORS;
  mark: '.' | ',';
  minus: '-' | '−' | '–' | '‐';
  plus: boolean;
  length: 'mm' | 'cm' | 'in';
  angle: 'decimals' | 'degree-sign' | 'minutes' | 'minutes-alone';
  unitAt: 'heading' | 'second-heading' | 'cell';
  headings: boolean;
  form: 'columns' | 'long';
  /** mm; travel without. */
  zero: number | undefined;
  gap: '' | '-' | 'n/a' | 'x';
  names: 'Pass' | 'run';
  direction: 'words' | 'arrows' | 'signs' | 'none';
  bom: boolean;
  lineEnd: '\n' | '\r\n';
}

export const ways: fc.Arbitrary<Way> = fc.record({
  separator: fc.constantFrom(...(Object.keys(SEPARATORS) as Way['separator'][])),
  mark: fc.constantFrom('.', ','),
  minus: fc.constantFrom('-', '−', '–', '‐'),
  plus: fc.boolean(),
  length: fc.constantFrom('mm', 'cm', 'in'),
  angle: fc.constantFrom('decimals', 'degree-sign', 'minutes', 'minutes-alone'),
  unitAt: fc.constantFrom('heading', 'second-heading', 'cell'),
  headings: fc.boolean(),
  form: fc.constantFrom('columns', 'long'),
  zero: fc.constantFrom(undefined, 365, 351.5),
  gap: fc.constantFrom('', '-', 'n/a', 'x'),
  names: fc.constantFrom('Pass', 'run'),
  direction: fc.constantFrom('words', 'arrows', 'signs', 'none'),
  bom: fc.boolean(),
  lineEnd: fc.constantFrom('\n', '\r\n'),
});

export interface Taken {
  heights: number[];
  /** By pass, then by height: minutes of arc, or a gap. Whole minutes can be written in every notation. */
  passes: (number | null)[][];
}

/** Heights in half millimetres around zero, camber falling in bump as it does on most cars. */
export const taken: fc.Arbitrary<Taken> = fc
  .record({
    heights: fc.uniqueArray(fc.integer({ min: -120, max: 120 }), { minLength: 4, maxLength: 9 }),
    passes: fc.array(
      fc.array(fc.option(fc.integer({ min: -12, max: 12 }), { freq: 6 }), { minLength: 9, maxLength: 9 }),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  })
  .map(({ heights, passes }) => ({
    heights: [-125, ...heights, 125].map((half) => half / 2),
    passes: passes.map((pass, k) => [
      ...heights.map((half, i) => (pass[i] === null ? null : Math.round(-half * 0.4) - 35 + k + pass[i]!)),
    ]),
  }))
  .map(({ heights, passes }) => ({ heights, passes: passes.map((pass) => [20, ...pass, -90]) }));

/** Without the trailing zeros that a spreadsheet leaves out. */
const short = (size: number, places: number) => size.toFixed(places).replace(/\.?0+$/, '');

export function write({ heights, passes }: Taken, way: Way): Written {
  const sep = SEPARATORS[way.separator];
  const gap = way.separator === 'blanks' && way.gap === '' ? '-' : way.gap;
  const signed = (value: number, size: string) =>
    (value < 0 ? way.minus : way.plus && value > 0 ? '+' : '') + size.replace('.', way.mark);
  const perUnit = { mm: 1, cm: 10, in: 25.4 }[way.length];
  const inCell = way.unitAt === 'cell' || !way.headings;
  const lengthText = (mm: number) => {
    const shown = way.zero === undefined ? mm : way.zero - mm;
    return (
      signed(shown, short(Math.abs(shown) / perUnit, way.length === 'in' ? 6 : 3)) + (inCell ? ` ${way.length}` : '')
    );
  };
  const angleText = (minutes: number) => {
    const size = Math.abs(minutes);
    switch (way.angle) {
      case 'decimals':
      case 'degree-sign':
        return signed(minutes, short(size / 60, 6)) + (way.angle === 'degree-sign' ? '°' : '');
      case 'minutes':
        return signed(minutes, `${Math.floor(size / 60)}°${String(size % 60).padStart(2, '0')}′`);
      case 'minutes-alone':
        return signed(minutes, String(size)) + (inCell ? '′' : '');
    }
  };
  const isLong = way.form === 'long';
  const goings = passes.map(
    (_, k) => (way.direction === 'none' ? undefined : k % 2 ? 'down' : 'up') as 'up' | 'down' | undefined,
  );
  const mark = (going: 'up' | 'down' | undefined) =>
    going === undefined
      ? ''
      : {
          words: going,
          arrows: going === 'up' ? '↑' : '↓',
          signs: going === 'up' ? '+' : isLong ? '-' : '−',
          none: '',
        }[way.direction];
  const name = (k: number) => `${way.names} ${k + 1}`;
  const angleUnit = way.angle === 'minutes-alone' ? 'arc minutes' : '°';
  const isNamed = way.headings && (way.form === 'columns' || passes.length > 0);
  const rows: string[][] = [];
  const heightName = way.zero === undefined ? 'Travel' : 'Hub to arch';
  const hasGoing = isLong && way.direction !== 'none';
  if (way.headings) {
    const first = isLong
      ? ['Pass', ...(hasGoing ? ['Going'] : []), heightName, 'Camber']
      : [heightName, ...passes.map((_, k) => `Camber, ${name(k)} ${mark(goings[k])}`.trim())];
    const units = isLong
      ? ['', ...(hasGoing ? [''] : []), `(${way.length})`, `(${angleUnit})`]
      : [`(${way.length})`, ...passes.map(() => `(${angleUnit})`)];
    if (way.unitAt === 'heading')
      rows.push(
        first.map((text, i) =>
          units[i] ? (/[+−]$/.test(text) ? `${units[i]} ${text}` : `${text} ${units[i]}`) : text,
        ),
      );
    else {
      rows.push(first);
      if (way.unitAt === 'second-heading')
        rows.push(way.separator === 'blanks' ? units.map((unit) => unit || '-') : units);
    }
  }
  const readings: Written['readings'] = [];
  const pass = (k: number) => {
    if (isLong) return name(k);
    return isNamed ? name(k) : passes.length > 1 ? `Pass ${k + 1}` : undefined;
  };
  const add = (travel: number, minutes: number, k: number) => {
    const going = isLong || way.headings ? goings[k] : undefined;
    const named = pass(k);
    readings.push({ travel, value: minutes / 60, ...(named && { pass: named }), ...(going && { going }) });
  };
  if (isLong) {
    for (const [k, values] of passes.entries())
      for (const [i, minutes] of values.entries()) {
        rows.push([
          name(k),
          ...(hasGoing ? [mark(goings[k])] : []),
          lengthText(heights[i]!),
          minutes === null ? gap : angleText(minutes),
        ]);
        if (minutes !== null) add(heights[i]!, minutes, k);
      }
  } else {
    for (const [i, height] of heights.entries()) {
      rows.push([lengthText(height), ...passes.map((values) => (values[i] === null ? gap : angleText(values[i]!)))]);
      for (const [k, values] of passes.entries()) if (values[i] !== null) add(height, values[i]!, k);
    }
  }
  const quoted = (cell: string) =>
    cell.includes(sep) || cell.startsWith('"') ? `"${cell.replaceAll('"', '""')}"` : cell;
  const lines = rows.map((row) => row.map(quoted).join(sep));
  return { text: (way.bom ? '\uFEFF' : '') + lines.join(way.lineEnd) + way.lineEnd, rows, readings };
}

/** Readings of several sets of parts, each with passes; whole minutes of arc. */
export interface TakenSets {
  heights: number[];
  /** By set, pass and height: minutes of arc, or a gap. */
  sets: (number | null)[][][];
}

/** How the columns of several sets are called, and what stands beside them. */
export interface SetWay {
  style: (typeof STYLES)[number];
  /** One for each set, a language's all in it. */
  names: readonly string[];
  counter: '1' | 'a' | '#1' | 'i' | 'pass 1' | '1st run' | 'Pass 1';
  average: 'none' | 'own' | 'named';
  averageName: string;
  extra: 'none' | 'sd' | 'difference' | 'notes';
  form: 'columns' | 'long' | 'sections' | 'group-heading';
  unit: '' | ' (°)' | ' [deg]';
}

const STYLES = ['name first', 'name last', 'in brackets', 'dash'] as const;
/** Invented. The first word that tells them apart may be a direction as well. */
const NAMES: readonly (readonly string[])[] = [
  ['Stock', 'Lowered joint', 'Extended arms'],
  ['std', 'ext', 'dropped'],
  ['Standard joints', 'Joints 22 mm lower', 'Joints 30 mm lower'],
  ['Serie', 'Tiefer', 'Gelenk tief'],
  ['origine', 'rotule abaissée', 'bras longs'],
  ['OEM', 'Raised rack', 'Roll-centre kit'],
  ['Reference', 'Track arms', 'Down 20 mm'],
];
const COUNTERS = ['1', 'a', '#1', 'i', 'pass 1', '1st run', 'Pass 1'] as const;
const AVERAGES = ['avg', 'Mean', 'average', 'Mittelwert', 'Ø', 'moyenne', 'AVG.'];

export const setWays: fc.Arbitrary<SetWay> = fc.record({
  style: fc.constantFrom(...STYLES),
  names: fc.constantFrom(...NAMES),
  counter: fc.constantFrom(...COUNTERS),
  average: fc.constantFrom('none', 'own', 'named'),
  averageName: fc.constantFrom(...AVERAGES),
  extra: fc.constantFrom('none', 'sd', 'difference', 'notes'),
  form: fc.constantFrom('columns', 'long', 'sections', 'group-heading'),
  unit: fc.constantFrom('', ' (°)', ' [deg]'),
});

/** Two or three sets of two or three passes over at least six heights: curves of their own with whole minutes of scatter. */
export const takenSets: fc.Arbitrary<TakenSets> = fc
  .record({
    heights: fc.uniqueArray(fc.integer({ min: -11, max: 11 }), { minLength: 6, maxLength: 10 }),
    slopes: fc.shuffledSubarray([0.55, 0.8, 1.1], { minLength: 2, maxLength: 3 }),
    passes: fc.integer({ min: 2, max: 3 }),
    scatter: fc.infiniteStream(fc.integer({ min: -3, max: 3 })),
  })
  .map(({ heights, slopes, passes, scatter }) => {
    const sorted = heights.sort((a, b) => a - b).map((five) => five * 5);
    const next = () => scatter.next().value as number;
    return {
      heights: sorted,
      sets: slopes.map((slope) =>
        Array.from({ length: passes }, () => {
          const zero = next();
          return sorted.map((height) => Math.round(-slope * height) - 40 + zero + next());
        }),
      ),
    };
  });

const counted = (counter: SetWay['counter'], pass: number): string =>
  ({
    '1': String(pass + 1),
    a: 'abc'[pass]!,
    '#1': `#${pass + 1}`,
    i: ['i', 'ii', 'iii'][pass]!,
    'pass 1': `pass ${pass + 1}`,
    '1st run': `${['1st', '2nd', '3rd'][pass]} run`,
    'Pass 1': `Pass ${pass + 1}`,
  })[counter];

function headed({ style }: SetWay, name: string, count: string): string {
  if (style === 'name first') return `${name} ${count}`;
  if (style === 'in brackets') return /pass|run/i.test(count) ? `${count} (${name})` : `${name} (${count})`;
  if (style === 'dash') return `${name} - ${count}`;
  return /pass|run|\d/i.test(count) ? `${count} ${name}` : `${name} ${count}`;
}

/** Degrees to two decimals, as one reads them off. */
const degrees = (minutes: number) => (minutes / 60).toFixed(2);
const meanOf = (values: readonly (number | null)[]) => {
  const there = values.filter((value) => value !== null).map((minutes) => Number(degrees(minutes)));
  return there.reduce((sum, value) => sum + value, 0) / there.length;
};

/** A sheet of several sets, and what was read of each: in the order of the sets, pass by pass. */
export function writeSets({ heights, sets }: TakenSets, way: SetWay) {
  const expected = sets.map((passes, s) => ({
    name: way.names[s]!,
    passes: passes.map((values) =>
      values.flatMap((minutes, i) =>
        minutes === null ? [] : [{ travel: heights[i]!, value: Number(degrees(minutes)) }],
      ),
    ),
  }));
  const text = (minutes: number | null) => (minutes === null ? '' : degrees(minutes));
  const rows: string[][] = [];
  if (way.form === 'long') {
    rows.push(['Parts', 'Pass', 'Travel (mm)', 'Camber']);
    for (const [s, passes] of sets.entries()) {
      for (const [p, values] of passes.entries()) {
        for (const [i, minutes] of values.entries()) {
          if (minutes !== null)
            rows.push([way.names[s]!, counted(way.counter, p), String(heights[i]), degrees(minutes)]);
        }
      }
    }
    return { rows, expected, averages: 0 };
  }
  if (way.form === 'sections') {
    for (const [s, passes] of sets.entries()) {
      for (const [p, values] of passes.entries()) {
        rows.push([headed(way, way.names[s]!, counted(way.counter, p)), '']);
        for (const [i, minutes] of values.entries())
          if (minutes !== null) rows.push([String(heights[i]), degrees(minutes)]);
      }
    }
    return { rows, expected, averages: 0 };
  }
  const columns: { heading: [group: string, own: string]; cells: string[] }[] = [];
  let averages = 0;
  const isGrouped = way.form === 'group-heading';
  for (const [s, passes] of sets.entries()) {
    const name = way.names[s]!;
    for (const [p, values] of passes.entries()) {
      const count = counted(way.counter, p);
      columns.push({
        heading: isGrouped ? [p === 0 ? name : '', count + way.unit] : ['', headed(way, name, count) + way.unit],
        cells: values.map(text),
      });
    }
    const at = heights.map((_, i) => passes.map((values) => values[i]!));
    if (way.average !== 'none') {
      averages++;
      const own = way.average === 'named' || isGrouped ? way.averageName : `${name} ${way.averageName}`;
      columns.push({ heading: ['', own + way.unit], cells: at.map((values) => meanOf(values).toFixed(3)) });
    }
    if (way.extra === 'sd' && passes.length > 1) {
      const spread = (values: (number | null)[]) => {
        const mean = meanOf(values);
        const there = values.filter((value) => value !== null).map((minutes) => Number(degrees(minutes)));
        return Math.sqrt(there.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (there.length - 1));
      };
      columns.push({
        heading: ['', `${isGrouped ? '' : `${name} `}SD`],
        cells: at.map((values) => spread(values).toFixed(3)),
      });
    }
  }
  if (way.extra === 'difference' && !isGrouped) {
    const cells = heights.map((_, i) =>
      (Number(degrees(sets[1]![0]![i]!)) - Number(degrees(sets[0]![0]![i]!))).toFixed(2),
    );
    columns.push({ heading: ['', 'Difference'], cells });
  }
  if (way.extra === 'notes')
    columns.push({ heading: ['', 'Notes'], cells: heights.map((_, i) => (i === 2 ? 'settled' : '')) });
  if (isGrouped) rows.push(['', ...columns.map(({ heading }) => heading[0])]);
  rows.push(['Travel (mm)', ...columns.map(({ heading }) => heading[1])]);
  for (const [i, height] of heights.entries()) rows.push([String(height), ...columns.map(({ cells }) => cells[i]!)]);
  return { rows, expected, averages };
}
