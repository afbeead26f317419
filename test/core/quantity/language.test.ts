import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalMark } from '../../../core/quantity/format.js';
import { languageTag } from '../../../core/quantity/language.js';

/* BCP 47 (RFC 5646) says what a tag is; POSIX locales (de_DE.UTF-8@euro) and lists stand in pages' `lang` all the same. */

describe('languageTag', () => {
  it.each([
    ['en_US', 'en-US'],
    ['de_DE', 'de-DE'],
    ['pt_br', 'pt-BR'],
    ['de_DE.UTF-8', 'de-DE'],
    ['de_DE@euro', 'de-DE'],
    ['DE', 'de'],
    [' de ', 'de'],
    ['de, en', 'de'],
    ['en, de', 'en'],
    ['de;q=0.8', 'de'],
    ['de-DE-u-nu-latn', 'de-DE-u-nu-latn'],
    ['de-DE-u', 'de'],
    ['de-DE-unreasonable', 'de'],
    ['', 'en'],
    ['x', 'en'],
    ['english', 'en'],
    ['C', 'en'],
    ['POSIX', 'en'],
    ['*', 'en'],
    ['{{ lang }}', 'en'],
    ['undefined', 'en'],
    [undefined, 'en'],
    [null, 'en'],
  ])('takes %j as %s', (said, tag) => {
    expect(languageTag(said)).toBe(tag);
  });

  it('never throws, and every Intl takes what it gives', () => {
    const odd = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'deEN_-.@,;x0 u') }));
    fc.assert(
      fc.property(odd, (said) => {
        const tag = languageTag(said);
        expect(() => new Intl.NumberFormat(tag)).not.toThrow();
        expect(() => new Date(0).toLocaleDateString(tag, { dateStyle: 'long' })).not.toThrow();
        expect(decimalMark(said)).toMatch(/^[.,٫]$/);
      }),
    );
  });
});

describe('decimalMark', () => {
  // CLDR: German, Brazilian Portuguese and Spanish of Spain write a comma, English and Spanish of Mexico a point.
  it.each([
    ['de_DE', ','],
    ['pt_br', ','],
    ['es-ES', ','],
    ['es_MX', '.'],
    ['en_US', '.'],
    ['english', '.'],
    ['de-DE-u-nu-latn', ','],
  ])('of %s is %s', (said, mark) => {
    expect(decimalMark(said)).toBe(mark);
  });
});
