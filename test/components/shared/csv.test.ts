import { expect, it } from 'vitest';
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
