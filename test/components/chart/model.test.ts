import { describe, expect, it } from 'vitest';
import { readAloud, valueAt, yExtent } from '../../../components/chart/model.js';
import { exampleModel } from './example-model.js';

const line = { x: Float64Array.of(-10, 0, 20), y: Float64Array.of(1, 0, 4) };

describe('valueAt', () => {
  it('gives the points themselves and straight lines between them', () => {
    expect([-10, -5, 0, 10, 20].map((x) => valueAt(line, x))).toEqual([1, 0.5, 0, 2, 4]);
  });

  it('is NaN outside the points, in a gap and without points', () => {
    expect(valueAt(line, -10.01)).toBeNaN();
    expect(valueAt(line, 20.01)).toBeNaN();
    expect(valueAt(line, Number.NaN)).toBeNaN();
    expect(valueAt({ x: new Float64Array(), y: new Float64Array() }, 0)).toBeNaN();
    const broken = { x: Float64Array.of(0, 1, 2), y: Float64Array.of(5, Number.NaN, 7) };
    expect(valueAt(broken, 0.5)).toBeNaN();
    expect(valueAt(broken, 2)).toBe(7);
  });
});

describe('yExtent', () => {
  it('covers lines, bands, markers and readings, and only inside the x domain', () => {
    const model = exampleModel();
    model.x.domain = [-10, 10];
    model.series = [{ id: 'a', label: '', role: 'now', x: Float64Array.of(-20, 20), y: Float64Array.of(-2, 2) }];
    model.bands = [];
    model.markers = [{ x: 15, y: 99, label: '', kind: 'turn' }];
    expect(yExtent(model)).toEqual([-1, 1]);
    model.bands = [{ of: 'a', low: Float64Array.of(-4, 0), high: Float64Array.of(0, 4) }];
    expect(yExtent(model)).toEqual([-3, 3]);
    model.markers = [{ x: 5, y: 7, label: '', kind: 'turn' }];
    model.points = [{ x: Float64Array.of(0, 0), y: Float64Array.of(-8, Number.NaN), role: 'now' }];
    expect(yExtent(model)).toEqual([-8, 7]);
  });

  it('is undefined where nothing is drawn', () => {
    const model = exampleModel();
    model.series = [];
    model.markers = [];
    expect(yExtent(model)).toBeUndefined();
  });
});

it('readAloud says travel and every known value with sign and unit', () => {
  expect(readAloud(exampleModel(), 0)).toBe('+0 mm: old arms −0.50°, now −0.50°');
  expect(readAloud({ ...exampleModel(), series: [] }, 5)).toBe('+5 mm');
});
