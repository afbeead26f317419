import { describe, expect, it } from 'vitest';
import { explainProblem } from '../../../core/quantity/explain.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import type { Problem, ProblemCode } from '../../../core/quantity/problem.js';
import type { Quantity } from '../../../core/quantity/quantities.js';
import { METRIC, type UnitSystem } from '../../../core/quantity/units.js';

const INCH: UnitSystem = { length: 'in', angle: 'degrees' };

/** One of each, so that a new code without a sentence fails to compile here. */
const EACH: Record<ProblemCode, Partial<Problem>> = {
  missing: { value: '' },
  'not-a-number': { value: 'abc' },
  'not-finite': { value: NaN },
  ambiguous: { value: '1,500', choices: [1.5, 1500] },
  'wrong-unit': { value: '3 kg' },
  'out-of-range': { value: 700, limit: 600 },
  'wrong-shape': { value: { a: 1 } },
  'unknown-name': { value: 'abc', names: ['mm', 'in'] },
  coincide: { value: [1, 2, 3], other: 'tieRod.inner' },
  'no-direction': { value: [1, 2, 3], other: 'strut.low' },
  'cannot-close': { value: [1, 2, 3] },
  'looks-like-inches': { value: 29.3 },
  'looks-like-unit': { value: 300, names: ['lb/in'], choices: [52.5] },
  'looks-like-right-corner': { value: -745 },
  'ends-swapped': { value: 300, other: 'tieRod.outer' },
  'too-few': { value: 80, limit: 90 },
  inconsistent: { value: 80, names: ['ball joint, height'] },
  'outside-domain': { value: 80, limit: 60 },
};

describe('explainProblem', () => {
  it.each(Object.entries(EACH))('%s: names field, value and remedy in plain sentences', (code, more) => {
    const problem = { code: code as ProblemCode, path: 'some.path', value: undefined, ...more };
    const text = explainProblem(problem, { label: 'Upper field', otherLabel: 'Lower field' });
    expect(text).toContain('Upper field');
    if ('other' in more) expect(text).toContain('Lower field');
    else if (code !== 'missing') expect(text).toMatch(/abc|NaN|1,500|3 kg|700|“\{|\[1,2,3\]|29\.3|745|300|80/);
    expect(text).toMatch(/[A-Z].*\. .*\.$|Choose one\.$/);
    expect(text).not.toMatch(/undefined|null|\[object|some\.path/);
    expect(explainProblem(problem)).toContain('some.path');
  });

  it('says which words are understood, and to leave out what takes none', () => {
    const problem = { code: 'unknown-name' as const, path: 'units', value: 'inch' };
    expect(explainProblem({ ...problem, names: ['mm', 'in'] })).toBe('units: “inch” is not understood. Use mm or in.');
    expect(explainProblem({ ...problem, names: ['a', 'b', 'c'] })).toMatch(/Use a, b or c\.$/);
    expect(explainProblem({ ...problem, names: [] })).toMatch(/Leave it out\.$/);
  });

  it('of what is said twice, names both places', () => {
    const text = explainProblem({ code: 'wrong-shape', path: 'Heading “y”', value: 'y', other: 'Heading “Y”' });
    expect(text).toBe('Heading “y”: “y” says again what Heading “Y” says. Leave one of them out.');
  });

  it('of links that do not fit and no one value to blame, names no value', () => {
    const text = explainProblem({ code: 'cannot-close', path: 'strut', value: undefined });
    expect(text).toMatch(/^The links do not fit together: strut cannot be reached\. Check/);
  });

  it('shows limits and values in the unit the user reads', () => {
    expect(
      explainProblem(
        { code: 'out-of-range', path: 'drop', value: 200, limit: 150 },
        { label: 'Drop', quantity: 'drop', unitSystem: INCH },
      ),
    ).toBe('Drop is 7.87\u202fin, which is not possible. Enter 5.91\u202fin or less.');
    expect(
      explainProblem({ code: 'out-of-range', path: 'drop', value: '-200', limit: -150 }, { quantity: 'drop' }),
    ).toBe('drop is “-200”, which is not possible. Enter −150\u202fmm or more.');
    expect(
      explainProblem(
        { code: 'outside-domain', path: 'drop', value: 80, limit: 60 },
        { quantity: 'travel', label: 'Drop' },
      ),
    ).toContain('ends at 60\u202fmm. Enter 60\u202fmm or less');
  });

  it('offers both readings of an ambiguous text the way each was meant', () => {
    const sentence = (text: string, quantity: 'camber' | 'drop') => {
      const parsed = parseQuantity(text, quantity, METRIC);
      if (parsed.ok) throw new Error('read without asking');
      return explainProblem(parsed.problem, { quantity });
    };
    expect(sentence('-1.30', 'camber')).toContain('“-1.30” can mean −1.30° or −1°30′');
    expect(sentence('1,234', 'drop')).toContain('“1,234” can mean 1.234\u202fmm or 1234\u202fmm');
  });

  describe('shows how to write a number of that kind, and reads what it shows', () => {
    const hint = (code: ProblemCode, quantity?: Quantity, language = 'en') =>
      /Write it like (.*)\.$/.exec(explainProblem({ code, path: 'x', value: NaN }, { quantity, language }))?.[1];
    const cases: [Quantity | undefined, string, string][] = [
      ['coordinate', '12.5 or 1 1/2', '12,5 or 1 1/2'],
      ['plusMinusLength', '12.5 or 1 1/2', '12,5 or 1 1/2'],
      ['camber', '−1.5 or −0°18′', '−1,5 or −0°18′'],
      ['toe', '−1.5 or −0°18′', '−1,5 or −0°18′'],
      [undefined, '1.5, 1 1/2 or −0°18′', '1,5, 1 1/2 or −0°18′'],
    ];
    it.each(cases)('%s', (quantity, english, german) => {
      for (const code of ['not-a-number', 'not-finite'] as const) {
        expect(hint(code, quantity)).toBe(english);
        expect(hint(code, quantity, 'de')).toBe(german);
      }
      if (!quantity) return;
      for (const text of [...english.split(' or '), ...german.split(' or ')]) {
        expect(parseQuantity(text, quantity, METRIC), text).toMatchObject({ ok: true });
      }
    });
  });

  it('of a figure that is none, says so without arithmetic’s own words for a remedy', () => {
    const sentence = (value: number) => explainProblem({ code: 'not-finite', path: 'drop', value }, { label: 'Drop' });
    expect(sentence(Number.POSITIVE_INFINITY)).toMatch(/^Drop: Infinity is not a number that can be measured\. Write/);
    expect(sentence(Number.NaN)).not.toMatch(/finite/i);
  });

  it('shortens what is too long to repeat, and copes with what cannot be written out', () => {
    expect(explainProblem({ code: 'not-a-number', path: 'a', value: 'x'.repeat(500) }).length).toBeLessThan(150);
    const loop: Record<string, unknown> = {};
    loop.self = loop;
    expect(explainProblem({ code: 'wrong-shape', path: 'a', value: loop })).toContain('“object”');
  });
});
