import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PlacedTick, placeTicks, THUMB_RADIUS } from '../../../components/controls/slider-ticks.js';

/** Where a label stands on a slider of this width, CSS px: the same sum as in the stylesheet. */
const box = ({ fraction, shift, labelWidth }: PlacedTick, width: number) => {
  const mark = THUMB_RADIUS + fraction * (width - 2 * THUMB_RADIUS);
  return { mark, left: mark - shift, right: mark - shift + labelWidth };
};

const tick = fc.record({
  at: fc.integer({ min: -60, max: 90 }),
  label: fc.string({ minLength: 1, maxLength: 12 }),
  kind: fc.constantFrom('plain' as const, 'limit' as const, 'turn' as const),
});

describe('placeTicks', () => {
  it('overlaps no labels, keeps each over its mark and inside, at 288 px and on any wider slider', () => {
    fc.assert(
      fc.property(fc.array(tick, { maxLength: 7 }), fc.constantFrom(288, 360, 800), (ticks, width) => {
        const placed = placeTicks(ticks, -60, 90, 288);
        for (const [index, one] of placed.entries()) {
          const { mark, left, right } = box(one, width);
          expect(left).toBeGreaterThanOrEqual(-1e-9);
          expect(right).toBeLessThanOrEqual(width + 1e-9);
          expect(left).toBeLessThanOrEqual(mark + 1e-9);
          expect(right).toBeGreaterThanOrEqual(mark - 1e-9);
          for (const other of placed.slice(index + 1)) {
            if (other.row !== one.row) continue;
            const { left: from, right: to } = box(other, width);
            expect(right <= from || to <= left).toBe(true);
          }
        }
      }),
      { seed: 1 },
    );
  });

  it('puts two close marks side by side rather than into a second row', () => {
    const placed = placeTicks(
      [
        { at: 62, label: 'stop 62', kind: 'limit' },
        { at: 69, label: 'turns 69', kind: 'turn' },
      ],
      0,
      80,
      288,
    );
    expect(placed.map(({ row }) => row)).toEqual([0, 0]);
  });

  it('drops a plain label for want of room, never a limit', () => {
    const placed = placeTicks(
      [
        { at: 60, label: 'sixty millimetres', kind: 'plain' },
        { at: 60, label: 'bump stop touches', kind: 'limit' },
        { at: 61, label: 'camber turns here', kind: 'turn' },
      ],
      0,
      90,
      288,
    );
    expect(placed.map(({ kind }) => kind)).toEqual(['limit', 'turn']);
    expect(new Set(placed.map(({ row }) => row)).size).toBe(2);
  });

  it('leaves out what is not on the slider, and bears a slider without length', () => {
    expect(placeTicks([{ at: 91, label: 'x', kind: 'limit' }], 0, 90, 288)).toEqual([]);
    expect(placeTicks([{ at: 5, label: 'x', kind: 'limit' }], 5, 5, 288)[0]?.fraction).toBe(0);
  });
});
