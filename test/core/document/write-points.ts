import fc from 'fast-check';

/** A table of hard points as somebody might write it, and what stands in it. Knows nothing of core/. */
export interface WrittenPoints {
  rows: string[][];
  merged: string[][];
  caption: string;
  language: string;
}

type Length = 'mm' | 'cm' | 'in';

export interface Way {
  unit: Length;
  /** Where the unit stands. `first`: over one axis alone. */
  unitAt: 'headings' | 'first' | 'unit-row' | 'over-all' | 'caption' | 'names' | 'cells' | 'row-names';
  /** How a heading writes it. */
  brackets: '()' | '[]' | 'comma' | 'in' | 'bare';
  isLoud: boolean;
  /** Inches in letters, or by their mark. */
  inch: 'in' | 'inch' | 'inches' | '"' | '″';
  axes: 'letters' | 'capitals' | 'words' | 'both';
  order: readonly number[];
  nameLast: boolean;
  plusMinus: 'none' | 'bare' | 'own-unit';
  plusMinusName: '±' | '+/-' | 'tolerance' | 'how sure';
  mark: '.' | ',';
  minus: '-' | '−' | '–';
  notes: boolean;
}

export const ways: fc.Arbitrary<Way> = fc.record({
  unit: fc.constantFrom('mm', 'cm', 'in'),
  unitAt: fc.constantFrom('headings', 'first', 'unit-row', 'over-all', 'caption', 'names', 'cells', 'row-names'),
  brackets: fc.constantFrom('()', '[]', 'comma', 'in', 'bare'),
  isLoud: fc.boolean(),
  inch: fc.constantFrom('in', 'inch', 'inches', '"', '″'),
  axes: fc.constantFrom('letters', 'capitals', 'words', 'both'),
  order: fc.constantFrom([0, 1, 2, 3], [2, 1, 0, 3], [3, 1, 0, 2], [1, 3, 2, 0], [0, 2, 3, 1]),
  nameLast: fc.boolean(),
  plusMinus: fc.constantFrom('none', 'bare', 'own-unit'),
  plusMinusName: fc.constantFrom('±', '+/-', 'tolerance', 'how sure'),
  mark: fc.constantFrom('.', ','),
  minus: fc.constantFrom('-', '−', '–'),
  notes: fc.boolean(),
});

const PER: Record<Length, number> = { mm: 1, cm: 10, in: 25.4 };
const AXES = {
  letters: ['x', 'y', 'z'],
  capitals: ['X', 'Y', 'Z'],
  words: ['Forward of the axle', 'Out from the centreline', 'Height'],
  both: ['x, forward', 'y, outboard', 'z, up from the ground'],
};

/** @param points by name: x, y, z and ±, mm @param radius loaded radius, mm @param camber degrees */
export function writePoints(
  points: Readonly<Record<string, readonly [number, number, number, number]>>,
  radius: number,
  camber: number,
  way: Way,
): WrittenPoints {
  const name = way.unit === 'in' ? way.inch : way.unit;
  const isMark = name === '"' || name === '″';
  const loud = way.isLoud ? name.toUpperCase() : name;
  const said = {
    '()': ` (${loud})`,
    '[]': ` [${loud}]`,
    comma: isMark ? ` (${loud})` : `, ${loud}`,
    in: isMark ? ` (${loud})` : ` in ${loud}`,
    bare: ` ${loud}`,
  }[way.brackets];
  const figure = (mm: number, inCell: boolean, unit: Length = way.unit) => {
    const size = (Math.abs(mm) / PER[unit])
      .toFixed(9)
      .replace(/\.?0+$/, '')
      .replace('.', way.mark);
    return (mm < 0 ? way.minus : '') + size + (inCell ? ` ${unit === way.unit ? name : unit}` : '');
  };
  const isCell = way.unitAt === 'cells';
  const hasDoubt = way.plusMinus !== 'none';
  // A ± with a unit of its own has another one than the table.
  const doubtUnit: Length = way.plusMinus === 'own-unit' ? (way.unit === 'mm' ? 'in' : 'mm') : way.unit;
  const heading = (slot: number): string => {
    if (slot === 3) {
      if (!hasDoubt) return '';
      const own = way.plusMinus === 'own-unit' ? ` (${doubtUnit})` : '';
      return way.plusMinusName + (own || (way.unitAt === 'headings' ? said : ''));
    }
    const unit = way.unitAt === 'headings' || (way.unitAt === 'first' && slot === way.order.find((i) => i < 3));
    return AXES[way.axes][slot]! + (unit ? said : '');
  };
  const slots = way.order.filter((slot) => slot < 3 || hasDoubt);
  const line = (own: string, cells: string[], note: string) => {
    const all = [...cells, ...(way.notes ? [note] : [])];
    return way.nameLast ? [...all, own] : [own, ...all];
  };
  const over = way.unitAt === 'names' ? `Hard point (${loud})` : 'Hard point';
  const rows: string[][] = [];
  const merged: string[][] = [];
  const none = () =>
    line(
      '',
      slots.map(() => ''),
      '',
    ).map(() => '');
  if (way.unitAt === 'over-all') {
    const title = `Position${said}`;
    const cells = slots.map((_, i) => (i === 0 ? title : ''));
    rows.push(line('', cells, ''));
    merged.push(
      line(
        '',
        slots.map(() => title),
        '',
      ),
    );
  }
  rows.push(line(over, slots.map(heading), 'Notes'));
  if (way.unitAt === 'unit-row') {
    rows.push(
      line(
        '',
        slots.map((slot) => (slot === 3 && way.plusMinus === 'own-unit' ? '' : isMark ? `(${loud})` : loud)),
        '',
      ),
    );
  }
  const rowName = (own: string) => (way.unitAt === 'row-names' ? `${own} (${name})` : own);
  for (const [own, at] of Object.entries(points)) {
    const cells = slots.map((slot) =>
      slot < 3
        ? figure(at[slot]!, isCell)
        : way.plusMinus === 'own-unit'
          ? figure(at[3], way.unitAt === 'row-names', doubtUnit)
          : figure(at[3], false),
    );
    rows.push(line(rowName(own), cells, 'see photo 12'));
  }
  const alone = (text: string) => slots.map((slot) => (slot === slots.find((i) => i < 3) ? text : ''));
  rows.push(line(rowName('Loaded radius'), alone(figure(radius, isCell)), ''));
  rows.push(
    line(
      'Static camber',
      alone(`${camber < 0 ? way.minus : ''}${String(Math.abs(camber)).replace('.', way.mark)}°`),
      '',
    ),
  );
  while (merged.length < rows.length) merged.push(none());
  const inWords = { mm: 'mm', cm: 'centimetres', in: 'inches' }[way.unit];
  return {
    rows,
    merged,
    caption:
      way.unitAt === 'caption' ? `Front left, invented, in ${inWords}; bump travel 62 mm` : 'Front left, invented',
    language: way.mark === ',' ? 'de' : 'en',
  };
}
