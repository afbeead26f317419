import { describe, expect, it } from 'vitest';
import { sentence, spoken } from '../../../components/bumpline-geometry/bumpline-geometry.words.js';
import { FIRST } from '../../../components/bumpline-geometry/first.words.js';
import type { WorkbenchAnswer } from '../../../components/bumpline-geometry/geometry-view.js';
import { changesOf } from '../../../components/bumpline-geometry/part-changes.js';
import { charts, numbers } from '../../../components/bumpline-geometry/views.js';
import { textOf } from '../../../components/element/sentence.js';
import { geometry, geometryDoubt } from '../../../core/answers/from-source.js';
import { linksFromStock, outputChange, outputDifference } from '../../../core/answers/geometry-at.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { linkedSets } from '../../../core/document/linked-sets.js';
import type { Setup } from '../../../core/document/setup.js';

const display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const inches = { units: { length: 'in', angle: 'arcminutes' }, language: 'en' } as const;
const corner = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
const links = (source: AnySource) => ({ curves: geometry({ source }), doubt: geometryDoubt({ source }) });
const all = linkedSets(EMPTY_CAR);

function answer(drop: number, of: AnySource & { kind: 'corner' | 'driveway' } = corner, sets = all): WorkbenchAnswer {
  return {
    drop,
    over: 40,
    bare: links(of),
    sets: sets.map((set) => ({ set, ...links({ kind: 'parts', of, parts: set.setup.parts! }) })),
    shown: 0,
  };
}
const said = (drop: number, sets = all) =>
  textOf(sentence(answer(drop, corner, sets), EMPTY_CAR, display)).replaceAll('\u202f', ' ');

/** Every word in capitals: what is in small letters then came from somewhere else. */
const CAPITALS = JSON.parse(
  JSON.stringify(FIRST, (_, word) =>
    typeof word === 'string'
      ? word.replace(/(\{\w+\})|([^{]+)/g, (__, name, text = '') => name ?? text.toUpperCase())
      : word,
  ),
) as typeof FIRST;

describe('the sentence of the workbench', () => {
  it('says roll centre, camber and toe at the drop, without and with the set of parts', () => {
    // test/pages/worked-lower-joint.ts has them from a second solver.
    expect(said(25)).toBe(
      ', the roll centre stands 9 ± 10 mm above the ground (75 mm at stock height). With “22 mm joint + rod end” it stands 64 ± 10 mm above, and the next 40 mm of bump change camber by −0.47° ± 0.07° (−0.22° without it) and toe by 0.0° ± 0.3°, too small to tell from zero (0.17° out without it).',
    );
  });

  it('says a roll centre below the ground as one, and no stock height beside itself', () => {
    expect(said(45)).toMatch(/stands 47 ± 11 mm below the ground/);
    expect(said(0)).toMatch(/stands 75 ± 10 mm above the ground\. With/);
  });

  it('says what the bare links do where there are no parts at all', () => {
    expect(said(25, [])).toMatch(
      /^, the roll centre stands 9 ± 10 mm above the ground \(75 mm at stock height\)\. In the next 40 mm of bump camber changes by −0\.22° ± 0\.\d+°/,
    );
  });

  it('gives no toe from a driveway: measure it', () => {
    const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
    expect(textOf(sentence(answer(25, driveway), EMPTY_CAR, display))).toMatch(/Toe: measure it\.$/);
  });

  it('has no word that is not in its record', () => {
    const quiet = all.map((set) => ({ ...set, setup: { ...set.setup, name: 'SET' } as Setup }));
    for (const drop of [-10, 0, 25, 60]) {
      const text = textOf(sentence(answer(drop, corner, quiet), EMPTY_CAR, display, CAPITALS));
      expect(text.match(/\p{Ll}{2,}/gu)?.filter((word) => word !== 'mm') ?? []).toEqual([]);
    }
  });

  it('is spoken whole, with its drop', () => {
    expect(spoken(answer(-10), EMPTY_CAR, display)).toMatch(/^Raised 10\u202fmm, the roll centre stands/);
  });
});

describe('what parts change', () => {
  it('is known better than what they come to: what both share cancels', () => {
    const { bare, sets } = answer(25);
    const change = outputDifference(sets[0]!, bare, 'rollCentreHeight', 25);
    expect(change.value).toBeCloseTo(64.2657 - 8.581, 2);
    expect(change.plusMinus).toBeGreaterThan(1);
    expect(change.plusMinus).toBeLessThan(5);
  });

  it('is told with its own ±, roll centre and camber much closer than what they come to', () => {
    const facts = changesOf(answer(25), EMPTY_CAR, display).map(({ label, text }) => `${label}: ${text}`);
    // test/pages/worked-lower-joint.ts: 64.27 − 8.58 mm, −0.4718 + 0.2236°, −0.0295 + 0.1662°, and at stock height 19.49 − 14.47 mm of scrub radius.
    expect(facts.map((fact) => fact.replaceAll('\u202f', ' '))).toEqual([
      'Roll centre: +56 ± 3 mm',
      'Camber over the next 40 mm of bump: −0.25° ± 0.01°',
      'Toe-in over the same bump: +0.14° ± 0.06°',
      'Scrub radius: +5.1 ± 0.3 mm',
    ]);
    expect(changesOf(answer(25, corner, []), EMPTY_CAR, display)).toEqual([]);
  });

  it('has no ± where none was stated for the points, and of a driveway one for the roll centre that random cars keep to, and no toe', () => {
    const { plusMinus: _, ...bare } = EXAMPLE_CORNER;
    const facts = changesOf(answer(25, { kind: 'corner', corner: bare }), EMPTY_CAR, display);
    expect(facts.map(({ text }) => text).join()).not.toContain('±');
    const [rollCentre, camber, toe] = changesOf(
      answer(25, { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY }),
      EMPTY_CAR,
      display,
    );
    // test/core/driveway/part-coverage.test.ts: cancelling alone would leave less.
    expect(rollCentre!.text).toMatch(/^\+55\s±\s(?:[6-9]|1\d)\smm$/);
    expect(camber!.text).toMatch(/^−0\.2\d?°\s±\s0\.1/);
    expect(toe!.text).toBe('measure it');
  });

  it('is counted from stock height where a lowered car was measured', () => {
    const { bare } = answer(25);
    const moved = linksFromStock(bare, { measuredAt: 25 });
    expect(moved.curves.travel[0]).toBe(bare.curves.travel[0]! + 25);
    expect(outputChange(moved, 'camber', 65, 25).value).toBeCloseTo(outputChange(bare, 'camber', 40, 0).value, 9);
  });
});

describe('charts and numbers', () => {
  it('are of the same outputs, in the reader’s units, with gaps where an instant centre is out of sight', () => {
    const found = answer(25);
    const drawn = charts(found, inches);
    expect(drawn.map(({ id }) => id)).toEqual([
      'camber',
      'toe',
      'rollCentreHeight',
      'scrubRadius',
      'kingpin',
      'caster',
      'casterTrail',
      'halfTrack',
      'motionRatio',
      'instantCentreZ',
      'instantCentreY',
    ]);
    const roll = drawn[2]!.model;
    expect(roll.y.label).toBe('Roll centre above the ground, in');
    expect(roll.y.format(25.4)).toBe('1\u202fin');
    expect(drawn[0]!.model.y.format(-0.5)).toBe('−0°30′');
    const centre = drawn[10]!.model.series[0]!;
    expect(centre.y.some(Number.isNaN)).toBe(true);
    expect(Math.max(...[...centre.y].filter(Number.isFinite).map(Math.abs))).toBeLessThanOrEqual(5000);
    const { columns, rows } = numbers(found, display);
    expect(columns).toHaveLength(1 + 11 * 3);
    expect(columns[7]!.label).toBe('Roll centre above the ground, Without parts');
    const row = rows.find(([travel]) => travel === 25)!;
    expect(row[7]).toBeCloseTo(8.581, 2);
  });

  it('band the set in the sentence by its 95 % and none of the others', () => {
    const camber = charts(answer(25), display)[0]!.model;
    expect(camber.bands.map(({ of }) => of)).toEqual(['1']);
    const [band] = camber.bands;
    const zero = camber.series[1]!.x.indexOf(0);
    const bump = camber.series[1]!.x.indexOf(60);
    expect(band!.high[bump]! - band!.low[bump]!).toBeGreaterThan(0.05);
    expect(band!.high[zero]! - band!.low[zero]!).toBeLessThan(band!.high[bump]! - band!.low[bump]!);
  });
});
