import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitText } from '../../../../core/readings/table/split-text.js';

describe('what parts the cells is told by the text itself', () => {
  it.each([
    [
      'tabs',
      '-20\t-0.25\n0\t-0.5',
      [
        ['-20', '-0.25'],
        ['0', '-0.5'],
      ],
    ],
    [
      'semicolons',
      '1,5;2,5\n2;3',
      [
        ['1,5', '2,5'],
        ['2', '3'],
      ],
    ],
    [
      'commas',
      '-20,-0.25\n20,-0.9',
      [
        ['-20', '-0.25'],
        ['20', '-0.9'],
      ],
    ],
    [
      'commas and blanks',
      '-20, -0.25\n20, -0.9',
      [
        ['-20', '-0.25'],
        ['20', '-0.9'],
      ],
    ],
    [
      'commas and blanks, decimal commas',
      '-20, -0,25\n20, -0,9',
      [
        ['-20', '-0,25'],
        ['20', '-0,9'],
      ],
    ],
    [
      'blanks, decimal commas',
      '-20,5 -0,25\n20,5 -0,91',
      [
        ['-20,5', '-0,25'],
        ['20,5', '-0,91'],
      ],
    ],
    [
      'blanks, decimal commas, all positive',
      '20,5 100,25\n30,5 200,5',
      [
        ['20,5', '100,25'],
        ['30,5', '200,5'],
      ],
    ],
    [
      'several blanks',
      '−20   -0,25\n0  -0,5',
      [
        ['−20', '-0,25'],
        ['0', '-0,5'],
      ],
    ],
    [
      'a comma between whole numbers where nothing else parts',
      '20,25\n30,31',
      [
        ['20', '25'],
        ['30', '31'],
      ],
    ],
    [
      'several blanks beside fractions',
      '1 1/2  -0.25\n2 1/4  -0.5',
      [
        ['1 1/2', '-0.25'],
        ['2 1/4', '-0.5'],
      ],
    ],
    [
      'single blanks beside fractions',
      '1 1/2 -0.25\n-2 1/4 -0.5',
      [
        ['1 1/2', '-0.25'],
        ['-2 1/4', '-0.5'],
      ],
    ],
    [
      'blanks before units',
      '20 mm -0.25 °\n30 mm -0.5 °',
      [
        ['20 mm', '-0.25 °'],
        ['30 mm', '-0.5 °'],
      ],
    ],
    [
      'bars',
      '| -20 | -0.25 |\n| 0 | -0.5 |',
      [
        ['-20', '-0.25'],
        ['0', '-0.5'],
      ],
    ],
    [
      'signs between two figures',
      '-20: -0.25\n0: -0.5',
      [
        ['-20', '-0.25'],
        ['0', '-0.5'],
      ],
    ],
    [
      'arrows between two figures',
      '-20 mm -> -0.25°\n0 mm = -0.5°',
      [
        ['-20 mm', '-0.25°'],
        ['0 mm', '-0.5°'],
      ],
    ],
    [
      'heights along a line',
      'Travel mm 20 0 -20\nPass 1 -0.9 -0.5 0.1',
      [
        ['Travel mm', 'Pass 1'],
        ['20', '-0.9'],
        ['0', '-0.5'],
        ['-20', '0.1'],
      ],
    ],
    [
      'inch marks',
      '1" -0°18\'\n2" -0°30\'',
      [
        ['1"', "-0°18'"],
        ['2"', "-0°30'"],
      ],
    ],
  ])('%s', (_, text, rows) => {
    expect(splitText(text)).toEqual(rows);
  });

  const PAIRS = [
    ['-30', '0.62'],
    ['-20', '0.33'],
  ];
  it.each([
    '-30:0.62, -20:0.33',
    '-30:0.62; -20:0.33',
    '-30:0.62;-20:0.33',
    '-30 : 0.62 -20 : 0.33',
    '-30=0.62 / -20=0.33',
    '-30 -> 0.62 -20 -> 0.33',
    '-30→0.62 and -20→0.33.'.slice(0, -1),
    '(-30, 0.62), (-20, 0.33)',
    '[-30; 0.62] [-20; 0.33]',
    '-30:0.62,-20:0.33,',
  ])('pairs in one line of text: %s', (text) => {
    expect(splitText(text)).toEqual(PAIRS);
  });
  it.each([
    [
      '−30:0,62, −20:0,33',
      [
        ['−30', '0,62'],
        ['−20', '0,33'],
      ],
    ],
    [
      '-30:0,62,-20:0,33',
      [
        ['-30', '0,62'],
        ['-20', '0,33'],
      ],
    ],
    [
      '30:1,20:2,10:3',
      [
        ['30', '1'],
        ['20', '2'],
        ['10', '3'],
      ],
    ],
    [
      "-30 mm: 0°37', -20 mm: 0°20'",
      [
        ['-30 mm', "0°37'"],
        ['-20 mm', "0°20'"],
      ],
    ],
    ['-30:0.62, -20:0.33\n-10:0.1, 0:-0.2', [...PAIRS, ['-10', '0.1'], ['0', '-0.2']]],
    [
      '-30: 0.62, 0.70; -20: 0.33, 0.41',
      [
        ['-30', '0.62', '0.70'],
        ['-20', '0.33', '0.41'],
      ],
    ],
    ['Stock: -30:0.62, -20:0.33', [['Stock', ''], ...PAIRS]],
    [
      'Pass 1: -30:0.62, -20:0.33\n20 mm lower: -30:0.62, -20:0.33',
      [['Pass 1', ''], ...PAIRS, ['20 mm lower', ''], ...PAIRS],
    ],
    ['Stock\n-30:0.62, -20:0.33', [['Stock', ''], ...PAIRS]],
  ])('pairs in running text, with decimal commas, units and names: %s', (text, rows) => {
    expect(splitText(text)).toEqual(rows);
  });
  it('what is not all pairs is parted as any other text', () => {
    expect(splitText('1:2:3, 4:5\n6, 7')).not.toEqual([['1', '2']]);
    expect(splitText('Camber: front left\n-20, -0.25\n0, -0.5')[1]).toEqual(['-20', '-0.25']);
  });

  it('quoted cells by RFC 4180: the separator, a line’s end and a doubled quotation mark inside', () => {
    expect(splitText('"-20,5","-0,25","so ""far"""\r\n"0","-0,5","a\r\nb"')).toEqual([
      ['-20,5', '-0,25', 'so "far"'],
      ['0', '-0,5', 'a\nb'],
    ]);
  });

  it('an inch mark at a cell’s beginning swallows nothing', () => {
    expect(splitText('"\t-0.25\n1\t-0.5\n2\t-0.7')).toEqual([
      ['"', '-0.25'],
      ['1', '-0.5'],
      ['2', '-0.7'],
    ]);
  });

  it('a byte order mark and blank lines at the end are no cells; lines between are kept', () => {
    expect(splitText('\uFEFFtravel;camber\r\n1;2\r\n\r\n3;4\r\n\r\n \r\n')).toEqual([
      ['travel', 'camber'],
      ['1', '2'],
      [''],
      ['3', '4'],
    ]);
    expect(splitText(' \n\uFEFF\n')).toEqual([]);
    expect(splitText('')).toEqual([]);
  });

  it('empty cells at a line’s end are kept', () => {
    expect(splitText('1\t2\t\n3\t4\t5')).toEqual([
      ['1', '2', ''],
      ['3', '4', '5'],
    ]);
  });

  it('non-breaking spaces part as blanks do, and stay inside a cell where something else parts', () => {
    expect(splitText('−20\u00a0\u00a0−0.25\n0\u00a0\u00a0−0.5')).toEqual([
      ['−20', '−0.25'],
      ['0', '−0.5'],
    ]);
    expect(splitText('−20\u00a0mm\t−0.25')).toEqual([['−20\u00a0mm', '−0.25']]);
  });

  it('a title or the line of a section stays whole between lines that blanks part', () => {
    expect(splitText('Pass 1 going up\n-20 -0.25\n0 -0.5\nPass 2 going down\n0 -0.5')).toEqual([
      ['Pass 1 going up'],
      ['-20', '-0.25'],
      ['0', '-0.5'],
      ['Pass 2 going down'],
      ['0', '-0.5'],
    ]);
  });

  it('names of parts between lines that blanks part stay whole, whatever figures and blanks are in them', () => {
    const block = [
      ['-20', '-0.25'],
      ['0', '-0.5'],
    ];
    const lines = block.map((cells) => cells.join(' ')).join('\n');
    for (const name of ['Lowered joints', '20 mm lower', 'Joints 22 mm', '22 lower joint', 'Front left, lowered']) {
      expect(splitText(`${name}\n${lines}\n${name}:\n${lines}`)).toEqual([[name], ...block, [name], ...block]);
    }
    expect(splitText(`travel camber\n${lines}\n10 #REF`)).toEqual([['travel', 'camber'], ...block, ['10', '#REF']]);
    expect(splitText('travel stock lowered\n-20 -0.25 -0.1\n0 -0.5 -0.4')[0]).toEqual(['travel', 'stock', 'lowered']);
  });

  it('loses no figure of any text', () => {
    const figures = (text: string) => (text.match(/\d/g) ?? []).sort().join('');
    const piece = fc.oneof(
      fc.constantFrom(
        ' ',
        '  ',
        '\t',
        '\n',
        '\r\n',
        ',',
        ', ',
        ';',
        '|',
        '"',
        '""',
        '-',
        '−',
        '.',
        '\u00a0',
        'up',
        'Travel',
        '\uFEFF',
      ),
      fc.nat({ max: 999 }).map(String),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
        const text = pieces.join('');
        expect(figures(splitText(text).flat().join(' '))).toBe(figures(text));
      }),
      { seed: 23, numRuns: 2000, endOnFailure: true },
    );
  });
});
