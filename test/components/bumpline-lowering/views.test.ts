import { describe, expect, it } from 'vitest';
import { chartModel, numbers } from '../../../components/bumpline-lowering/views.js';
import { lowering } from '../../../core/answers/from-source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { independentRegression } from '../../reference/independent-regression.js';
import { independentCamberChange } from '../../reference/independent-strut.js';

const reading = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const source = { kind: 'corner', corner: EXAMPLE_CORNER } as const;

describe('the chart of lowering', () => {
  it('shows before and after: at the same bump from where the car stood then and stands now', () => {
    const drop = 30;
    const [before, now] = chartModel(lowering({ source, drop }), reading).series;
    expect([before!.role, now!.role]).toEqual(['before', 'now']);
    const at = (series: typeof now, travel: number) => series!.y[series!.x.indexOf(travel)]!;
    for (const bump of [0, 20, 40]) {
      const then = EXAMPLE_CORNER.camber + independentCamberChange(EXAMPLE_CORNER, bump);
      const after = EXAMPLE_CORNER.camber + independentCamberChange(EXAMPLE_CORNER, drop + bump);
      expect(at(before, drop + bump)).toBeCloseTo(then, 5);
      expect(at(now, drop + bump)).toBeCloseTo(after, 5);
    }
  });

  it('has no ghost where nothing was lowered', () => {
    expect(chartModel(lowering({ source, drop: 0 }), reading).series.map(({ role }) => role)).toEqual(['now']);
  });
});

describe('the chart of lowering by readings', () => {
  const byReadings = { kind: 'readings', readings: EXAMPLE_READINGS, degree: 3, plain: true } as const;
  const answer = lowering({ source: byReadings, drop: 25 });
  const model = chartModel(answer, reading);
  // Student t, 43 degrees of freedom, two-sided 95 %: between the tabulated 2.021 for 40 and 2.000 for 60.
  const t = 2.0167;

  it('draws the curve as far as was measured and hatches the rest', () => {
    const now = model.series.find(({ role }) => role === 'now')!;
    expect([now.x[0], now.x.at(-1)]).toEqual([-35, 50]);
    expect(model.x.domain[0]).toBeLessThan(-35);
    expect(model.x.domain[1]).toBeGreaterThan(50);
    expect(model.regions.map(({ from, to, kind }) => [from, to, kind])).toEqual([
      [Number.NEGATIVE_INFINITY, -35, 'outside'],
      [50, Number.POSITIVE_INFINITY, 'outside'],
    ]);
  });

  it('has a band as wide as few readings make it, in chart and table', () => {
    // Each pass went one way, so its zero holds the way as well.
    const { change } = independentRegression(
      EXAMPLE_READINGS.map(({ going: _, ...one }) => one),
      3,
    );
    const [{ low, high }] = model.bands as [(typeof model.bands)[0]];
    const { x } = model.series.at(-1)!;
    x.forEach((travel, i) => {
      expect((high[i]! - low[i]!) / 2).toBeCloseTo(t * change(travel, 0).standardError, 5);
    });
    for (const [travel, , , plusMinus] of numbers(answer, reading).rows) {
      expect(plusMinus).toBeCloseTo(t * change(travel!, 0).standardError, 5);
    }
  });

  it('marks the readings at the curve’s level', () => {
    const [{ x, y }] = model.points as [NonNullable<typeof model.points>[0]];
    expect([...x]).toEqual(EXAMPLE_READINGS.map(({ travel }) => travel));
    const passMean = (pass: string) => {
      const of = EXAMPLE_READINGS.flatMap((one, i) => (one.pass === pass ? [one.value - y[i]!] : []));
      return of.map((offset) => offset - of[0]!);
    };
    // One zero a pass, and nothing else, was taken off.
    for (const pass of ['Pass 1', 'Pass 2', 'Pass 3'])
      for (const rest of passMean(pass)) expect(rest).toBeCloseTo(0, 9);
  });
});
