import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { causeName } from '../../../components/element/causes.words.js';
import { SET_NAMES_DE } from '../../../components/words/de/core/document/set-names.js';
import { EXPLAIN_DE } from '../../../components/words/de/core/quantity/explain.js';
import { QUERY_DE } from '../../../components/words/de/core/quantity/explain-query.js';
import { FORMAT_DE } from '../../../components/words/de/core/quantity/format.js';
import { CAUSES_DE } from '../../../components/words/de/element/causes.js';
import { shimFromToe } from '../../../core/answers/shim.js';
import { fitCurve } from '../../../core/curve/fit.js';
import { curveFromCoefficients } from '../../../core/curve/from-coefficients.js';
import { cornerSources } from '../../../core/curve-sources/corner-doubt.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { withShown } from '../../../core/document/setup-edits.js';
import { DRIVEWAY_FIELDS } from '../../../core/driveway/driveway.js';
import { readSet } from '../../../core/learn/read-set.js';
import { PART_KINDS } from '../../../core/linkage/parts/part-kinds.js';
import { explainProblem } from '../../../core/quantity/explain.js';
import { explainQuery } from '../../../core/quantity/explain-query.js';
import { formatQuantity } from '../../../core/quantity/format.js';
import { parseQuantity } from '../../../core/quantity/parse.js';
import type { Problem, ProblemCode } from '../../../core/quantity/problem.js';
import { METRIC } from '../../../core/quantity/units.js';
import { speak, teach } from '../../../core/quantity/words.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { travelBudget } from '../../../core/travel/budget.js';
import { wishboneCorner } from '../../core/linkage/wishbone-corner.js';

const ENGLISH =
  /\b(?:the|of|and|with|is|are|to|from|than|by|not|it|that|this|at|for|where|one|pass|joint|arm|rod|height)\b/i;

beforeEach(() => {
  teach('de', {
    'document/set-names': SET_NAMES_DE,
    'element/causes': CAUSES_DE,
    'quantity/explain': EXPLAIN_DE,
    'quantity/explain-query': QUERY_DE,
    'quantity/format': FORMAT_DE,
  });
  speak('de');
});
afterEach(() => speak('en'));

describe('a cause of doubt', () => {
  const of = (sources: readonly { label: string }[]) => sources.map(({ label }) => label);
  const doubted = { other: 2 } as const;
  const toldTape = EXAMPLE_READINGS.map((reading) => ({ ...reading, pair: [1, 1] as const }));
  const { solid } = travelBudget({
    limits: { stopGap: 20, stopGapPlusMinus: 2, stopLength: 50, motionRatio: 1 },
    drop: 0,
    lowered: 'springs',
    path: undefined,
  }).bump;
  const LABELS = new Set([
    ...of(cornerSources({ ...EXAMPLE_CORNER, plusMinus: doubted })),
    ...of(cornerSources({ ...wishboneCorner, plusMinus: doubted })),
    ...of(Object.values(DRIVEWAY_FIELDS)),
    ...of(Object.values(PART_KINDS)).map((label) => `tolerance of the ${label}`),
    ...of(fitCurve(EXAMPLE_READINGS).curve.sources),
    ...of(fitCurve(toldTape).curve.sources),
    ...of(
      curveFromCoefficients({
        coefficients: [0, 1e-3, 1e-5],
        domain: [-10, 10],
        standardUncertainties: [0.1, 1e-4, 1e-6],
      }).sources,
    ),
    ...of(
      readSet(
        {
          quantity: 'camber',
          readings: EXAMPLE_READINGS,
          parts: [],
          alignment: 'toe',
          allowances: {},
          inOrder: true,
          raisedBy: 0,
        },
        '1',
      ).nuisances,
    ),
    ...of(
      shimFromToe({
        rate: { value: 0.01, standardUncertainty: 0.001 },
        rodLength: { value: 350, plusMinus: 3 },
        lever: { value: 110, plusMinus: 3 },
        rack: 'behind',
      }).contributions,
    ),
    ...of(solid!.contributions!),
    'the drop',
    'the method',
    'the readings',
    'roll',
    'sideways motion',
    'the place as measured',
    'the toe gauge',
  ]);

  it('is named in the language that is spoken, whatever part of the core it comes from', () => {
    expect(LABELS.size).toBeGreaterThan(60);
    for (const label of LABELS) {
      expect(causeName(label)).not.toBe(label);
      expect(causeName(label)).not.toMatch(ENGLISH);
    }
  });

  it('is called in English as the core calls it, and what nobody has translated keeps its name', () => {
    expect(causeName('something new')).toBe('something new');
    speak('en');
    for (const label of LABELS) expect(causeName(label)).toBe(label);
  });
});

describe('explainProblem', () => {
  const EACH: Record<ProblemCode, Partial<Problem>> = {
    missing: { value: '' },
    'not-a-number': { value: 'abc' },
    'not-finite': { value: Number.NaN },
    ambiguous: { value: '1,500', choices: [1.5, 1500] },
    'wrong-unit': { value: '3 kg' },
    'out-of-range': { value: 700, limit: 600 },
    'wrong-shape': { value: 'y', other: 'Heading “Y”' },
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

  it.each(Object.entries(EACH))('%s: names field, value and remedy in the language that is spoken', (code, more) => {
    const problem = { code: code as ProblemCode, path: 'Heading “x”', value: undefined, ...more };
    const text = explainProblem(problem, { language: 'de' });
    expect(text).toContain('Überschrift „x“');
    expect(text).not.toMatch(ENGLISH);
    expect(text).toMatch(/\. .*\.$/);
    if (!more.other && code !== 'missing') expect(text).toMatch(/abc|NaN|1,500|3 kg|700|\[1,2,3\]|29,3|745|300|80/);
  });

  it('says what is unusual with its figure', () => {
    const query = { code: 'slope', path: 'tieRod.outer', value: -30, quantity: 'linkAngle' } as const;
    const text = explainQuery(query as never, { label: 'Spurstange', language: 'de' });
    expect(text).toMatch(/^Spurstange: die Spurstange fällt zum Rad hin um 30°\./);
  });
});

describe('formatQuantity', () => {
  it('has the words beside a number in the language that is spoken, and parseQuantity reads them', () => {
    for (const [quantity, value, shown] of [
      ['clock', 11, '11\u202fUhr'],
      ['rimInch', 7.5, '7,5\u202fZoll'],
      ['camberRate', -0.015, '−0,150°\u202fpro\u202f10\u202fmm'],
    ] as const) {
      const { text } = formatQuantity(value, quantity, METRIC, { language: 'de' });
      expect(text).toBe(shown);
      const read = parseQuantity(text, quantity, METRIC);
      expect(read.ok && read.value).toBeCloseTo(value, 9);
    }
    expect(formatQuantity(Number.NaN, 'drop', METRIC, { language: 'de' }).text).toBe('nicht bekannt');
  });

  it.each([
    ['16 Zoll', 'coordinate', 406.4],
    ['1,5 Grad', 'camber', 1.5],
    ['18 Minuten', 'camber', 0.3],
  ] as const)('what a German reader types is read: %s', (text, quantity, value) => {
    const read = parseQuantity(text, quantity, METRIC);
    expect(read.ok && read.value).toBeCloseTo(value, 9);
  });
});

it('a set that begins is named in the language that is spoken, and keeps that name', () => {
  const car = withShown(EMPTY_CAR, (setup) => ({ ...setup, degree: 2 }));
  expect(car.setups![0]!.name).toMatch(/, geändert$/);
  speak('en');
  expect(car.setups![0]!.name).toMatch(/^Beispiel.*, geändert$/);
});
