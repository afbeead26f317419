import fc from 'fast-check';
import type { WheelSpec } from '../../../core/wheel/wheel.js';

/** Invented wheels that need no measured width: every rim is permitted for its tyre, with room to shift by 50 mm. */
export const specs: fc.Arbitrary<WheelSpec> = fc
  .record({
    tyre: fc.constantFrom(
      ...([
        ['195/65R15 91', 6],
        ['205/55R16 91', 6.5],
        ['225/45R17', 7.5],
        ['225/40R18 92', 8],
        ['245/40R18 97', 8.5],
        ['265/35R18', 9.5],
      ] as const),
    ),
    wider: fc.constantFrom(-0.5, 0, 0.5, 1),
    offset: fc.double({ min: 0, max: 60, noNaN: true }),
    spacer: fc.option(fc.double({ min: 0, max: 30, noNaN: true }), { nil: undefined }),
    rimProtector: fc.boolean(),
  })
  .map(({ tyre: [size, rim], wider, offset, spacer, rimProtector }) => ({
    size,
    rimWidthInch: rim + wider,
    offset,
    ...(spacer !== undefined && { spacer }),
    rimProtector,
  }));
