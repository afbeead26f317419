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
