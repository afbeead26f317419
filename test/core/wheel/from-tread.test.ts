import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { tried } from '../../../core/answers/from-source.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { fullBumpOf } from '../../../core/document/full-bump.js';
import { checkPlaces } from '../../../core/wheel/check-places.js';
import type { Place } from '../../../core/wheel/place.js';
import { finished } from '../answers/finished.js';

const lip = (at: Place['at']): Place => ({ name: 'arch lip', fixedTo: 'body', is: 'bodywork', at });
const { lock: _, ...asked } = clearanceRequestOf({ ...EMPTY_CAR, drop: 20 });
const { source } = tried({ source: asked.source });
/** 205/55R16 by hand: code 16 is 406 mm of rim (UN Regulation No. 30), and twice 55 % of 205 mm, halved. */
const FREE_RADIUS = (406 + 2 * 0.55 * 205) / 2;

describe('a place told as a gap from the old tread', () => {
  it('is where the same place told from the hub is, at every hour and with every sidewall', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12 }),
        fc.double({ min: -40, max: 90, noNaN: true }),
        fc.double({ min: -40, max: 60, noNaN: true }),
        fc.constantFrom(undefined, 'outer' as const, 'inner' as const),
        (clock, gap, out, from) => {
          const side = from && { from };
          const places = [
            lip({ clock, distance: gap, beyond: 'tread', out, ...side }),
            lip({ clock, distance: FREE_RADIUS + gap, out, ...side }),
          ];
          const [a, b] = finished(clearanceQuestions.clearanceSteered({ ...asked, source, places })).places;
          expect(a!.worst.gap).toBeCloseTo(b!.worst.gap, 9);
          expect(a!.decisive.plusMinus).toBeCloseTo(b!.decisive.plusMinus, 9);
        },
      ),
      { seed: 211, numRuns: 12 },
    );
  });

  it('goes with the size of the old wheel', () => {
    const places = [lip({ clock: 12, distance: 55, beyond: 'tread' as const, out: 25 })];
    const gapOf = (size: string) =>
      finished(clearanceQuestions.clearanceSteered({ ...asked, source, places, before: { ...asked.before, size } }))
        .places[0]!.ride.gap;
    // 195/60R16: a free radius higher by 0.60 · 195 − 0.55 · 205 = 4.25 mm.
    expect(gapOf('195/60R16') - gapOf('205/55R16')).toBeGreaterThan(1);
  });

  it('may lie below the tread, as a lip over a tucked tyre does; from a hub it may not', () => {
    const good = { clock: 12, out: 5 };
    expect(() => checkPlaces([lip({ ...good, distance: -20, beyond: 'tread' })])).not.toThrow();
    expect(() => checkPlaces([lip({ ...good, distance: -20 })])).toThrow();
    expect(() => checkPlaces([lip({ ...good, distance: 20, beyond: 'hub' as 'tread' })])).toThrow(/beyond/);
  });

  it('gives no height from the hub to raise the corner to: a worn tyre is smaller than its size', () => {
    const car = (at: Place['at']) => ({
      ...EMPTY_CAR,
      fit: { places: [lip(at)] },
      stopGap: 30,
      provenance: { fit: { by: 'user' as const } },
    });
    const solid = { travel: 60, governedBy: 'stop' as const };
    expect(fullBumpOf(car({ clock: 12, distance: 371, out: 25 }), solid, 0)).toHaveProperty('hubToArch');
    expect(fullBumpOf(car({ clock: 12, distance: 55, beyond: 'tread', out: 25 }), solid, 0)).not.toHaveProperty(
      'hubToArch',
    );
  });
});
