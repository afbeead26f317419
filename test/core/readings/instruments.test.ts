import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { camberFromOrientation, toeDoubt, toeFromDials, toeFromGauge } from '../../../core/readings/instruments.js';

const reference = (name: string) => readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8');

describe('camber from a phone’s orientation', () => {
  // W3C Device Orientation and Motion: the matrix R = Z X Y that it prints, evaluated.
  const { cases } = JSON.parse(reference('device_orientation_cases.json')) as {
    cases: { beta: number; gamma: number; camber_deg_if_back_of_phone_is_on_outer_wheel_face: number }[];
  };
  it.each(cases)(
    'β $beta°, γ $gamma°',
    ({ beta, gamma, camber_deg_if_back_of_phone_is_on_outer_wheel_face: camber }) => {
      expect(camberFromOrientation(beta, gamma)).toBeCloseTo(camber, 9);
    },
  );

  it('is a number for every orientation that an event can carry', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        (beta, gamma) => {
          expect(Math.abs(camberFromOrientation(beta, gamma))).toBeLessThanOrEqual(90);
        },
      ),
      { endOnFailure: true },
    );
  });
});

describe('toe over a base', () => {
  // toe = atan((front − rear)/base), evaluated; u = √2·u_d/base.
  const rows = reference('toe_gauge_cases.csv')
    .trim()
    .split('\n')
    .slice(2)
    .map((line) =>
      line
        .replace(/^"[^"]*",|^[^,]*,/, '')
        .split(',')
        .map(Number),
    );
  it('has cases', () => expect(rows.length).toBeGreaterThan(5));
  it.each(rows)('base %d mm, difference %d mm', (base, difference, toe, _minutes, _small, doubt) => {
    expect(toeFromGauge(difference!, base!)).toBeCloseTo(toe!, 8);
    expect(toeFromDials(3.25 + difference!, 3.25, base!)).toBeCloseTo(toe!, 8);
    expect(toeDoubt(0.01, base!)).toBeCloseTo(doubt!, 7);
  });

  it('only the difference of two dials counts: what moves the plate as a whole leaves toe as it is', () => {
    const mm = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(mm, mm, mm, (front, rear, moved) => {
        expect(toeFromDials(front + moved, rear + moved, 300)).toBeCloseTo(toeFromDials(front, rear, 300), 9);
        expect(toeFromDials(rear, front, 300)).toBeCloseTo(-toeFromDials(front, rear, 300), 12);
      }),
      { endOnFailure: true },
    );
  });

  it('is not known without a base', () => {
    expect(toeFromGauge(1, 0)).toBeNaN();
    expect(toeFromGauge(1, Number.NaN)).toBeNaN();
  });
});
