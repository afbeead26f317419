import fc from 'fast-check';
import papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { toCsv } from '../../../components/controls/csv.js';

// Checked against RFC 4180, section 2, rules 1 (CRLF after each record), 3 (header line), 5 to 7 (what is quoted, and how).

it('writes a header, CRLF after every record, and units in brackets', () => {
  expect(toCsv([{ label: 'Travel', unit: 'mm' }, { label: 'Camber' }], [[-60, 0.92]])).toBe(
    'Travel (mm),Camber\r\n-60,0.92\r\n',
  );
});

it('quotes commas, quotes and line breaks, and nothing else', () => {
  const rows = [
    ['aaa', 'b"bb', 'c,c'],
    ['two\r\nlines', ' spaced ', "it's"],
  ];
  expect(toCsv([{ label: 'a' }, { label: 'b' }, { label: 'c' }], rows)).toBe(
    'a,b,c\r\naaa,"b""bb","c,c"\r\n"two\r\nlines", spaced ,it\'s\r\n',
  );
});

it('writes numbers without grouping or locale, no −0, and nothing where there is no number', () => {
  const columns = [1, 2, 3, 4, 5].map((n) => ({ label: String(n) }));
  expect(toCsv(columns, [[1234567.5, -0, Number.NaN, null, Number.POSITIVE_INFINITY]]).split('\r\n')[1]).toBe(
    '1234567.5,0,,,',
  );
});

it('writes no noise of binary fractions', () => {
  expect(toCsv([{ label: 'a' }], [[0.1 + 0.2]])).toBe('a\r\n0.3\r\n');
});

it('gives every record as many fields as there are columns', () => {
  expect(toCsv([{ label: 'a' }, { label: 'b' }], [[1], [1, 2, 3]])).toBe('a,b\r\n1,\r\n1,2\r\n');
});

describe('words that a spreadsheet would run', () => {
  const only = (text: string) => toCsv([{ label: 'a' }], [[text]]).slice('a\r\n'.length, -2);

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '\nx', ' =1', '\u00a0=1', '＝1', "'=1"])(
    'have an apostrophe before them: %j',
    (text) => {
      expect(only(text).replace(/^"/, '')[0]).toBe("'");
      expect(only(text).replace(/^"|"$/g, '')).toBe(`'${text}`);
    },
  );

  it.each(['22 mm joint', '−0.5°', '±1 %', 'a=b', "it's", '', "'quoted'"])('others have none: %j', (text) => {
    expect(only(text)).toBe(text);
  });

  it('of a column’s name too', () => {
    expect(toCsv([{ label: '+5 mm arms', unit: '°' }], [])).toBe("'+5 mm arms (°)\r\n");
  });

  it('numbers are none of them: they keep their sign, and stay numbers', () => {
    expect(toCsv([{ label: 'a' }, { label: 'b' }], [[-0.5, -40]])).toBe('a,b\r\n-0.5,-40\r\n');
  });
});

describe('any cells whatever', () => {
  const sign = fc.constantFrom('=', '+', '-', '@', '\t', '\r', '\n', ' ', "'", '"', ',', ';', '＝', '\u00a0', 'x', '1');
  const text = fc.oneof(
    fc.string(),
    fc.array(sign, { maxLength: 6 }).map((signs) => signs.join('')),
  );
  const RUN = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/;
  /** Takes off the one apostrophe that was put before a formula. */
  const asWritten = (cell: string) => (/^'+\s*[=+\-@＝＋－＠]|^'+[\t\r\n]/.test(cell) ? cell.slice(1) : cell);

  it('come back by an independent parser as they were, but for the mark, and none is a formula', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(text, text, fc.double({ noNaN: true, min: -1e6, max: 1e6 }))),
        text,
        (rows, name) => {
          const csv = toCsv([{ label: name }, { label: 'b' }, { label: 'c' }], rows);
          const { data, errors } = papa.parse<string[]>(csv, { delimiter: ',', newline: '\r\n' });
          expect(errors).toEqual([]);
          const [head, ...body] = data.slice(0, -1);
          expect(asWritten(head![0]!)).toBe(name);
          expect(body.map(([a, b]) => [asWritten(a!), asWritten(b!)])).toEqual(rows.map(([a, b]) => [a, b]));
          for (const cell of [head![0]!, ...body.flatMap(([a, b]) => [a!, b!])]) expect(cell).not.toMatch(RUN);
          for (const [i, [, , number]] of rows.entries())
            expect(Number(body[i]![2])).toBeCloseTo(number, 12 - Math.ceil(Math.log10(Math.abs(number) + 1)));
        },
      ),
    );
  });
});
