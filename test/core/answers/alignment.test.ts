import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnsOf } from '../../../core/alignment/rod-thread.js';
import type { AlignmentRequest } from '../../../core/answers/alignment.js';
import { alignment } from '../../../core/answers/from-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { independentSetting, toeWithRod } from '../../reference/independent-alignment.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';
import { problemsOf } from '../problems-of.js';

const sourceOf = (corner: unknown): AnySource => ({ kind: 'corner', corner });
const asked = (more: Partial<AlignmentRequest<AnySource>> = {}): AlignmentRequest<AnySource> => ({
  source: sourceOf(referenceCorner),
  drop: 30,
  ...more,
});
const example = EXAMPLE_CORNER as StrutCorner;

describe('what is set on a wheel, one thing after another', () => {
  // Source: test/reference/independent-alignment.ts, Newton on the bare constraints.
  const cases = [
    ['the corner of derived_strut_3d.json as its links stand', referenceCorner, { toe: 0.35, toeWanted: 0.05 }, 1e-6],
    ['that corner with camber wanted', referenceCorner, { toe: -0.1, toeWanted: 0.1, camberWanted: -2 }, 1e-6],
    [
      'the example lower, and camber wanted',
      example,
      { toe: 0.1, toeWanted: 0.05, camberWanted: -1.8, lower: 15 },
      1e-6,
    ],
    // The knuckle is leaned about another axis there.
    [
      'the example with both angles read',
      example,
      { camber: -1, toe: 0.2, toeWanted: 0, camberWanted: -1.5, lower: -8 },
      2e-3,
    ],
  ] as const;
  it.each(cases)('agrees with the independent solver: %s', (_, corner, setting, close) => {
    const { lower = 0 } = setting as { lower?: number };
    const found = alignment(asked({ source: sourceOf(corner), ...setting }));
    const reference = independentSetting(corner as IndependentCorner, { travel: 30, lower, ...setting });
    const near = (value: number | undefined, to: number) => expect(Math.abs(value! - to)).toBeLessThan(close);
    near(found.byHeight.camber.value, reference.afterHeight.camber - reference.read.camber);
    near(found.byHeight.toe?.value, reference.afterHeight.toe - reference.read.toe);
    near(found.byCamber.toe?.value, reference.afterCamber.toe - reference.afterHeight.toe);
    near(found.camberAmount.value / 10, reference.moved / 10);
    near(found.rodLonger?.value, reference.rodLonger);
    near(found.toePerNegativeDegree?.value, reference.toePerNegativeDegree);
    near(found.toeChange?.value, setting.toeWanted - reference.afterCamber.toe);
  });

  it('tells turns that bring the independent solver’s rod to the toe that is wanted', () => {
    for (const [pitch, thread] of [
      [1.5, 'one'],
      [1.25, 'pair'],
    ] as const) {
      for (const toeWanted of [-0.3, 0, 0.25]) {
        const { rodLonger } = alignment(asked({ toe: 0.4, toeWanted, lower: 12, camberWanted: -1.6 }));
        const { turns } = turnsOf(rodLonger!, { pitch, thread });
        const { mounted } = independentSetting(referenceCorner as IndependentCorner, {
          travel: 30,
          lower: 12,
          toe: 0.4,
          camberWanted: -1.6,
          toeWanted,
        });
        const longer = turns * pitch * (thread === 'pair' ? 2 : 1);
        expect(toeWithRod(mounted, longer)).toBeCloseTo(toeWanted, 6);
      }
    }
  });

  it('has the toe per mm of rod of the independent solver, by a rod a tenth longer', () => {
    const { toePerMm } = alignment(asked({ toe: 0.1, toeWanted: 0.1 }));
    const { mounted } = independentSetting(referenceCorner as IndependentCorner, {
      travel: 30,
      lower: 0,
      toe: 0.1,
      toeWanted: 0.1,
    });
    expect(toePerMm!.value).toBeCloseTo((toeWithRod(mounted, 0.1) - toeWithRod(mounted, -0.1)) / 0.2, 6);
    // The rod of this corner lies behind the axle: longer is toe-in.
    expect(toePerMm!.value).toBeGreaterThan(0);
  });

  it('changes nothing where what is read is what is wanted, and undoes itself', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -1, max: 1, noNaN: true }), (a, b) => {
        expect(alignment(asked({ toe: a, toeWanted: a })).rodLonger!.value).toBeCloseTo(0, 8);
        const there = alignment(asked({ toe: a, toeWanted: b })).rodLonger!.value;
        const back = alignment(asked({ toe: b, toeWanted: a })).rodLonger!.value;
        expect(there + back).toBeCloseTo(0, 8);
      }),
      { seed: 5, numRuns: 20 },
    );
  });

  it('widens with what is not known of points and gauges: a gauge alone by its ± over the toe per mm', () => {
    const sure = alignment(asked({ toe: 0.4, toeWanted: 0.1 }));
    expect(sure.rodLonger!.plusMinus).toBeUndefined();
    const gauge = alignment(asked({ toe: 0.4, toeWanted: 0.1, toePlusMinus: 0.05 }));
    expect(gauge.rodLonger!.plusMinus).toBeCloseTo(0.05 / gauge.toePerMm!.value, 2);
    const doubtful = sourceOf({ ...referenceCorner, plusMinus: { other: 4 } });
    const both = alignment(asked({ source: doubtful, toe: 0.4, toeWanted: 0.1, toePlusMinus: 0.05 }));
    expect(both.rodLonger!.plusMinus).toBeGreaterThan(gauge.rodLonger!.plusMinus!);
  });

  it('of a driveway tells what height does to camber, and nothing of toe', () => {
    const found = alignment(
      asked({ source: { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY }, toe: 0.2, toeWanted: 0 }),
    );
    expect(found.lowered.camber.value).toBeLessThan(0);
    expect(found.lowered.camber.plusMinus).toBeGreaterThan(0);
    expect([found.lowered.toe, found.byHeight.toe, found.toePerMm, found.rodLonger]).toEqual(Array(4).fill(undefined));
  });

  it('sets a wishbone’s camber by its upper arm', () => {
    const found = alignment(
      asked({ source: sourceOf(wishboneCorner), drop: 10, toe: 0, toeWanted: 0, camberWanted: -1.5 }),
    );
    expect(found.camberAmount.value).toBeLessThan(0);
    expect(Number.isFinite(found.rodLonger!.value)).toBe(true);
  });

  it('names the field of what is wrong: no number, out of reach, no mount that leads there', () => {
    const paths = (more: Partial<AlignmentRequest<AnySource>>) =>
      problemsOf(() => alignment(asked(more))).map(({ path, code }) => `${path} ${code}`);
    expect(paths({ toe: Number.NaN, camberWanted: 40 })).toEqual([
      'alignment.toe not-finite',
      'alignment.camberWanted out-of-range',
    ]);
    expect(paths({ drop: 150, measuredAt: -150 })).toEqual(['drop outside-domain']);
    expect(paths({ drop: 140, lower: 150 })).toEqual(['alignment.lower outside-domain']);
    expect(paths({ camberWanted: -14 })).toEqual(['alignment.camberWanted out-of-range']);
    expect(paths({ source: { kind: 'coefficients', coefficients: [0, 0.01], domain: [-50, 50] } })).toEqual([
      'source wrong-shape',
    ]);
  });
});
