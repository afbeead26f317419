import fc from 'fast-check';
import { expect, it } from 'vitest';
import { tried } from '../../../core/answers/from-source.js';
import { type LoweringRequest, loweringOf } from '../../../core/answers/lowering.js';
import { solved } from '../../../core/answers/solved.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { InputError } from '../../../core/quantity/problem.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { createCore } from '../../../core/worker/core-api.js';
import * as base from '../../../core/worker/layers/base.js';
import * as fit from '../../../core/worker/layers/fit.js';
import * as given from '../../../core/worker/layers/given.js';
import * as linkage from '../../../core/worker/layers/linkage.js';
import * as lowering from '../../../core/worker/layers/lowering.js';
import * as points from '../../../core/worker/layers/points.js';
import type { MadeLayer, WireOutcome } from '../../../core/worker/protocol.js';
import { SentSources } from '../../../core/worker/sent-sources.js';

const LAYERS = { base, given, fit, linkage, points, lowering } as unknown as Record<string, MadeLayer>;

/** More than a core keeps, some of them wrong. */
const SOURCES: AnySource[] = [
  ...[3, 5, 8].map((degree) => ({ kind: 'readings', readings: EXAMPLE_READINGS, degree }) as const),
  { kind: 'readings', readings: EXAMPLE_READINGS.slice(0, 1) },
  ...[0, 5, 10, 15].map(
    (mm) =>
      ({ kind: 'driveway', driveway: { ...EXAMPLE_DRIVEWAY, caster: { value: 3 + mm / 5, plusMinus: 0.5 } } }) as const,
  ),
  { kind: 'driveway', driveway: { camber: { value: 80, plusMinus: 1 } } },
  ...[-1, 0, 1].map((camber) => ({ kind: 'corner', corner: { ...EXAMPLE_CORNER, camber } }) as const),
  { kind: 'corner', corner: { ...EXAMPLE_CORNER, camber: 'steep' } },
  ...[1, 2, 3, 4, 5, 6].map(
    (c) => ({ kind: 'coefficients', coefficients: [0, -c / 100], domain: [-50, 60] }) as AnySource,
  ),
  { kind: 'coefficients', coefficients: [Number.NaN], domain: [-50, 60] },
  { kind: 'wheel' } as never,
];

function outcomeOf(ask: () => unknown): unknown {
  try {
    return { ok: true, value: ask() };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ok: false, problems: error.problems };
  }
}

/** What a page and a core of its own say to each other, as the bridge has them do. */
function page() {
  const core = createCore(LAYERS);
  const sent = new SentSources();
  const told: unknown[] = [];
  const ask = (question: string, request: object): WireOutcome<unknown> => {
    const asked = structuredClone(sent.numbered(request));
    told.push(asked);
    const outcome = core.answer(1, question, asked as never) as WireOutcome<unknown>;
    if (!('unknown' in outcome)) return outcome;
    sent.forget(outcome.unknown);
    return ask(question, request);
  };
  return { ask, told };
}

it('nobody can tell from outside whether a source was solved before: every answer is the same to the bit', () => {
  const asked = fc.record({
    at: fc.nat(SOURCES.length - 1),
    drop: fc.constantFrom(-20, 0, 12.5, 30, 900),
    measuredAt: fc.constantFrom(undefined, 15),
    isSolved: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(asked, { minLength: 20, maxLength: 40 }), (requests) => {
      const { ask } = page();
      for (const { at, drop, measuredAt, isSolved } of requests) {
        const source = SOURCES[at]!;
        const request = { source, drop, ...(measuredAt !== undefined && { measuredAt }) } as LoweringRequest<AnySource>;
        const found = isSolved ? ask('solved', { source }) : ask('lowering', request);
        const direct = outcomeOf(() => (isSolved ? solved(tried({ source })) : loweringOf(tried(request))));
        // Numbers by Object.is.
        expect(found).toStrictEqual(direct);
      }
    }),
    { numRuns: 12 },
  );
});

it('a drag sends numbers: no source crosses the wire again', () => {
  const { ask, told } = page();
  const source = SOURCES[0]!;
  for (let drop = 0; drop <= 40; drop++) expect(ask('lowering', { source, drop }).ok).toBe(true);
  expect(told[0]).toMatchObject({ source: { number: 1, given: { kind: 'readings' } } });
  for (const request of told.slice(1)) expect(request).toMatchObject({ source: { number: 1 } });
  expect(told.filter((request) => 'given' in (request as { source: object }).source)).toHaveLength(1);
});

it('the core forgets the source that was asked for least lately, says so, and solves it again', () => {
  const { ask, told } = page();
  const many = Array.from(
    { length: 20 },
    (_, i): AnySource => ({
      kind: 'coefficients',
      coefficients: [i],
      domain: [-10, 10],
    }),
  );
  for (const source of many) ask('lowering', { source, drop: 5 });
  expect(told).toHaveLength(20);
  ask('lowering', { source: many[19], drop: 6 });
  expect(told).toHaveLength(21);
  expect(ask('lowering', { source: many[0], drop: 6 }).ok).toBe(true);
  expect(told.slice(21)).toEqual([
    { source: { number: 1 }, drop: 6 },
    { source: { number: 1, given: many[0] }, drop: 6 },
  ]);
});
