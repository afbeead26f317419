import { describe, expect, it } from 'vitest';
import { chartModel } from '../../../components/bumpline-lowering/views.js';
import { lowering } from '../../../core/answers/lowering.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
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
